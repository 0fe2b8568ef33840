import type { Opening, StructureInputs } from '@lathwork/model';
import { inlandCanopy } from './gardens.js';

const FT = 0.3048;

export const opening = (over: Partial<Opening>): Opening => ({
  openingId: 'W1',
  kind: 'window',
  wall: 'front',
  offsetM: 0.5,
  bottomM: 0.9,
  widthM: 0.6,
  heightM: 0.6,
  hinge: 'top',
  freeOpenFrac: 0.35,
  glazing: 'plastic',
  largestPaneM2: 0.36,
  stockTag: null,
  ...over,
});

export const structureWith = (over: Partial<StructureInputs>): StructureInputs => ({
  ...inlandCanopy.structure,
  openings: [],
  measuredRaftersM: null,
  ...over,
});

/**
 * The reference case of the trade: 10 x 20 ft canopy, gable, 6.5 ft eave, 2.5 ft rise, one door of about 32 x 80 in,
 * four windows of 2 x 3 ft, 1.5 ft of film wrap at each edge.
 */
export const referenceCanopy: StructureInputs = structureWith({
  kind: 'gableCanopy',
  widthM: 10 * FT,
  lengthM: 20 * FT,
  eaveM: 6.5 * FT,
  ridgeM: 9 * FT,
  bowsAtM: [0, 10 * FT, 20 * FT],
  cover: { ...inlandCanopy.structure.cover, wrapM: 1.5 * FT, rollWidthM: 28 * FT },
  openings: [
    opening({
      openingId: 'D1',
      kind: 'door',
      wall: 'front',
      offsetM: 3.5 * FT,
      bottomM: 0,
      widthM: 3 * FT,
      heightM: 6.5 * FT,
      glazing: 'none',
      freeOpenFrac: 1,
    }),
    opening({ openingId: 'W1', wall: 'back', offsetM: 2 * FT, bottomM: 3 * FT, widthM: 2 * FT, heightM: 3 * FT }),
    opening({ openingId: 'W2', wall: 'back', offsetM: 6 * FT, bottomM: 3 * FT, widthM: 2 * FT, heightM: 3 * FT }),
    opening({ openingId: 'W3', wall: 'left', offsetM: 9 * FT, bottomM: 3 * FT, widthM: 2 * FT, heightM: 3 * FT }),
    opening({ openingId: 'W4', wall: 'right', offsetM: 9 * FT, bottomM: 3 * FT, widthM: 2 * FT, heightM: 3 * FT }),
  ],
});
