import {
  CLADDING_ROOF,
  CLADDING_WALL,
  EN_DUO_CANOPY,
  EN_MONO_CANOPY,
  FREE_ROOF,
  ROOF,
  ROOF_ALONG,
  WALL_LEEWARD,
  type Curve,
  type RoofRow,
} from '../data/wind-coefficients.js';
import { linear, logLinear } from '../physics/statics.js';

/** External coefficient of the leeward wall; length is along the wind. */
export const leewardWallCp = (lengthOverWidth: number): number => linear(lengthOverWidth, WALL_LEEWARD);

const between = (heightOverLength: number, pick: (row: RoofRow) => number): number =>
  linear(
    heightOverLength,
    ROOF.map((row) => [row.heightOverLength, pick(row)] as const),
  );

/**
 * Windward slope, wind across the ridge: the suction value and the other one (both are to be run). Straight between
 * pitches, then between h/L. Beyond the end of a row the last value holds; over 60 degrees it is 0.01 times the pitch.
 */
export const windwardRoofCp = (pitchDeg: number, heightOverLength: number): { suction: number; other: number } => ({
  suction: between(heightOverLength, (row) => linear(pitchDeg, row.suction)),
  other: pitchDeg > 60 ? Math.min(0.01 * pitchDeg, 0.8) : between(heightOverLength, (row) => linear(pitchDeg, row.other)),
});
export const leewardRoofCp = (pitchDeg: number, heightOverLength: number): number => between(heightOverLength, (row) => linear(pitchDeg, row.leeward));

/** Suction on a roof along the wind: bands from the windward edge, cut off at the length. */
export const alongRoofBands = (heightM: number, lengthM: number): { fromM: number; toM: number; cp: number }[] => {
  const tall = Math.min(Math.max((heightM / lengthM - 0.5) / 0.5, 0), 1);
  let from = 0;
  return ROOF_ALONG.flatMap((band) => {
    const fromM = from;
    const toM = Math.min(band.toHeights * heightM, lengthM);
    from = toM;
    return toM > fromM ? [{ fromM, toM, cp: band.low + tall * (band.tall - band.low) }] : [];
  });
};

/** Net coefficients of an open pitched roof, windward and leeward half, 7.5 to 45 degrees. */
export const freeRoofCn = (pitchDeg: number, flow: 'clear' | 'obstructed', loadCase: 'A' | 'B'): { windward: number; leeward: number } => ({
  windward: linear(pitchDeg, FREE_ROOF[loadCase][flow].windward),
  leeward: linear(pitchDeg, FREE_ROOF[loadCase][flow].leeward),
});

/** Arched roofs (recalled): windward quarter, centre half, leeward quarter of the span. Several sets where the figure gives a choice. */
export const archCp = (riseOverSpan: number, springing: 'ground' | 'elevated'): [number, number, number][] => {
  const r = riseOverSpan;
  const rest = [-0.7 - r, -0.5] as const;
  if (springing === 'ground') return [[1.4 * r, ...rest]];
  if (r < 0.2) return [[-0.9, ...rest]];
  if (r < 0.3)
    return [
      [1.5 * r - 0.3, ...rest],
      [6 * r - 2.1, ...rest],
    ];
  return [[2.75 * r - 0.7, ...rest]];
};

/** External suction on film and battens by zone; the area enters by its logarithm. */
export const claddingWallGcp = (zone: 'field' | 'corner', areaM2: number): number => logLinear(areaM2, CLADDING_WALL[zone]);
export const claddingRoofGcp = (pitchDeg: number, zone: 'field' | 'edge' | 'corner', areaM2: number): number => {
  // A roof of just 20 degrees is read from the figure for 20 to 27, as the worked example does.
  const row = CLADDING_ROOF.find((r) => pitchDeg < r.upToPitchDeg - 1e-6) ?? CLADDING_ROOF.at(-1);
  if (!row) throw new Error('no cladding rows');
  return logLinear(areaM2, row[zone]);
};

/** EN canopies: largest and least overall force coefficient by pitch and blockage (0 open, 1 blocked). */
const canopy = (pitchDeg: number, blockage: number, t: { max: Curve; open: Curve; blocked: Curve }) => ({
  max: linear(pitchDeg, t.max),
  min: (1 - blockage) * linear(pitchDeg, t.open) + blockage * linear(pitchDeg, t.blocked),
});
export const enMonoCanopyCf = (pitchDeg: number, blockage: number) => canopy(pitchDeg, blockage, EN_MONO_CANOPY);
export const enDuoCanopyCf = (pitchDeg: number, blockage: number) => canopy(pitchDeg, blockage, EN_DUO_CANOPY);
