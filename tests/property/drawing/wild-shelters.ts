import fc from 'fast-check';
import type { Opening, StructureInputs } from '@lathwork/model';
import { computeGeometry } from '@lathwork/calc';
import type { Shelter } from '@lathwork/drawing';
import { inlandCanopy } from '../../support/gardens.js';

const metres = (min: number, max: number) => fc.double({ min, max, noNaN: true });

const anOpening = (number: number) =>
  fc
    .record({
      kind: fc.constantFrom('door' as const, 'window' as const, 'vent' as const),
      wall: fc.constantFrom('front' as const, 'back' as const, 'left' as const, 'right' as const),
      offset: metres(0, 0.8),
      bottomM: metres(0, 1.5),
      widthM: metres(0.3, 1.5),
      heightM: metres(0.3, 2.2),
      hinge: fc.constantFrom('left' as const, 'right' as const, 'top' as const, 'none' as const),
      tagged: fc.boolean(),
    })
    .map((r) => ({ ...r, number }));

const bowsOf = (lengthM: number, count: number, uneven: readonly number[]): number[] => {
  const at = Array.from({ length: count }, (_, k) => (k * lengthM) / (count - 1));
  // A bow set by eye stands up to a third of a bay off its place.
  return at.map((y, k) => (k === 0 || k === count - 1 ? y : y + (uneven[k % Math.max(uneven.length, 1)] ?? 0) * (lengthM / (count - 1))));
};

/** Anything the contract lets through: sheds narrower than a door, 60 m tunnels, ridges below the eave, openings that do not fit. */
export const wildShelters = fc
  .record({
    kind: fc.constantFrom('gableCanopy' as const, 'roundArch' as const, 'leanTo' as const),
    widthM: metres(0.9, 12),
    lengthM: metres(0.9, 60),
    eaveM: fc.oneof(fc.constant(0), metres(0, 4)),
    riseM: metres(-0.5, 3),
    bows: fc.integer({ min: 2, max: 60 }),
    uneven: fc.array(metres(-0.33, 0.33), { maxLength: 5 }),
    frontFacesDeg: metres(0, 359.9),
    outsideMm: fc.oneof(metres(20, 60), fc.constant('unknown' as const)),
    braced: fc.constantFrom('none' as const, 'endBays' as const, 'everyBay' as const),
    bedsFrac: metres(0, 0.5),
    rollWidthM: metres(1, 12),
    openings: fc.tuple(anOpening(1), anOpening(2), anOpening(3), anOpening(4), anOpening(5), anOpening(6)),
    drawn: fc.integer({ min: 0, max: 6 }),
    hostHighM: metres(1, 10),
  })
  .map((r): Shelter => {
    const openings = r.openings.slice(0, r.drawn).map(({ offset, number, tagged, ...o }): Opening => ({
      ...o,
      openingId: `${{ door: 'D', window: 'W', vent: 'V' }[o.kind]}${number}`,
      offsetM: offset * (o.wall === 'front' || o.wall === 'back' ? r.widthM : r.lengthM),
      freeOpenFrac: 0.5,
      glazing: 'none',
      largestPaneM2: 0,
      stockTag: tagged ? 'XX-001' : null,
    }));
    const structure: StructureInputs = {
      ...inlandCanopy.structure,
      kind: r.kind,
      widthM: r.widthM,
      lengthM: r.lengthM,
      eaveM: r.eaveM,
      ridgeM: Math.min(7, Math.max(0.9, r.eaveM + r.riseM)),
      frontFacesDeg: r.frontFacesDeg,
      bowsAtM: bowsOf(r.lengthM, r.bows, r.uneven),
      measuredRaftersM: null,
      tube: { ...inlandCanopy.structure.tube, outsideMm: r.outsideMm },
      cover: { ...inlandCanopy.structure.cover, rollWidthM: r.rollWidthM },
      braced: r.braced,
      bedsM2: r.widthM * r.lengthM * r.bedsFrac,
      openings,
      hostWall: r.kind === 'leanTo' ? { material: 'masonry', heightM: r.hostHighM, roofShedsOntoIt: 'no' } : null,
    };
    return { structure, geometry: computeGeometry({ structure }).result };
  });
