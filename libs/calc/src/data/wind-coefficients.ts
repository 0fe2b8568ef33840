import type { SourceId } from '../sources/bibliography.js';
import { cited } from '../sources/cite.js';

export type Exposure = 'B' | 'C' | 'D';
export type Curve = readonly (readonly [number, number])[];

const FT = 0.3048;
/** A row of a printed table: argument, value, argument, value … every value cited alike. */
const curve = (source: SourceId, where: string, ...pairs: readonly (readonly [number, number])[]): Curve =>
  pairs.map(([x, y]) => [x, cited(y, '1', source, where)] as const);
/** Rows whose argument is an area printed in square feet. */
const areaCurve = (source: SourceId, where: string, ...pairs: readonly (readonly [number, number])[]): Curve =>
  pairs.map(([ft2, y]) => [ft2 * FT * FT, cited(y, '1', source, where)] as const);

/** q = 0.613 Kz Kzt Kd Ke V^2, N/m2 with V in m/s (0.00256 in psf and mph: 0.06 per cent more). */
export const VELOCITY_PRESSURE = cited(0.613, 'kg/m3', 'ASCE7-16', 'eq. 26.10-1.SI');
export const KD = cited(0.85, '1', 'ASCE7-16', 'table 26.6-1, buildings');
export const GUST_FACTOR = cited(0.85, '1', 'ASCE7-16', '26.11.1, rigid');
export const GCPI = {
  enclosed: cited(0.18, '1', 'ASCE7-16', 'table 26.13-1'),
  partiallyEnclosed: cited(0.55, '1', 'ASCE7-16', 'table 26.13-1'),
} as const;
export const SERVICE_WIND = cited(0.6, '1', 'ASCE7-16', '2.4.1, 0.6D + 0.6W');
export const SERVICE_DEAD = cited(0.6, '1', 'ASCE7-16', '2.4.1, 0.6D + 0.6W');
export const LOWEST_Z_M = cited(15 * FT, 'm', 'ASCE7-16', 'table 26.10-1 note 1: not under 15 ft');

export const TERRAIN: Readonly<Record<Exposure, { alpha: number; gradientM: number }>> = {
  B: { alpha: cited(7, '1', 'ASCE7-16', 'table 26.11-1'), gradientM: cited(365.76, 'm', 'ASCE7-16', 'table 26.11-1') },
  C: { alpha: cited(9.5, '1', 'ASCE7-16', 'table 26.11-1'), gradientM: cited(274.32, 'm', 'ASCE7-16', 'table 26.11-1') },
  D: { alpha: cited(11.5, '1', 'ASCE7-16', 'table 26.11-1'), gradientM: cited(213.36, 'm', 'ASCE7-16', 'table 26.11-1') },
};
/** Components and cladding in exposure B are not given the shelter of the main frame. */
export const KZ_FLOOR_CLADDING_B = cited(0.7, '1', 'ASCE7-16', 'table 26.10-1, exposure B, 30 ft');
export const ELEVATION_PER_M = cited(0.000_119, '1/m', 'ASCE7-16', 'table 26.9-1 note: exp(-0.000119 zg), zg in m');

/** K1 against H/Lh, gamma, and mu up and down the wind. */
export const HILLS = {
  ridge: {
    k1: curve('ASCE7-16', 'fig. 26.8-1, ridge', [0.2, 0.29], [0.25, 0.36], [0.3, 0.43], [0.35, 0.51], [0.4, 0.58], [0.45, 0.65], [0.5, 0.72]),
    gamma: 3,
    muUp: 1.5,
    muDown: 1.5,
  },
  escarpment: {
    k1: curve('ASCE7-16', 'fig. 26.8-1, escarpment', [0.2, 0.17], [0.25, 0.21], [0.3, 0.26], [0.35, 0.3], [0.4, 0.34], [0.45, 0.38], [0.5, 0.43]),
    gamma: 2.5,
    muUp: 1.5,
    muDown: 4,
  },
  hill: {
    k1: curve('ASCE7-16', 'fig. 26.8-1, axisymmetric hill', [0.2, 0.21], [0.25, 0.26], [0.3, 0.32], [0.35, 0.37], [0.4, 0.42], [0.45, 0.47], [0.5, 0.53]),
    gamma: 4,
    muUp: 1.5,
    muDown: 1.5,
  },
} as const;

const MAIN = 'fig. 27.3-1';
export const WALL_WINDWARD = cited(0.8, '1', 'ASCE7-16', MAIN);
export const WALL_SIDE = cited(-0.7, '1', 'ASCE7-16', MAIN);
/** Leeward wall by L/B. */
export const WALL_LEEWARD = curve('ASCE7-16', MAIN, [1, -0.5], [2, -0.3], [4, -0.2]);

export interface RoofRow {
  /** h/L of the row. */
  heightOverLength: number;
  /** Windward slope by pitch: the suction value and the other value. */
  suction: Curve;
  other: Curve;
  leeward: Curve;
}
export const ROOF: readonly RoofRow[] = [
  {
    heightOverLength: 0.25,
    suction: curve('ASCE7-16', MAIN, [10, -0.7], [15, -0.5], [20, -0.3], [25, -0.2], [30, -0.2], [35, 0]),
    other: curve('ASCE7-16', MAIN, [10, -0.18], [15, 0], [20, 0.2], [25, 0.3], [30, 0.3], [35, 0.4], [45, 0.4], [60, 0.6]),
    leeward: curve('ASCE7-16', MAIN, [10, -0.3], [15, -0.5], [20, -0.6]),
  },
  {
    heightOverLength: 0.5,
    suction: curve('ASCE7-16', MAIN, [10, -0.9], [15, -0.7], [20, -0.4], [25, -0.3], [30, -0.2], [35, -0.2], [45, 0]),
    other: curve('ASCE7-16', MAIN, [10, -0.18], [15, -0.18], [20, 0], [25, 0.2], [30, 0.2], [35, 0.3], [45, 0.4], [60, 0.6]),
    leeward: curve('ASCE7-16', MAIN, [10, -0.5], [15, -0.5], [20, -0.6]),
  },
  {
    heightOverLength: 1,
    suction: curve('ASCE7-16', MAIN, [10, -1.3], [15, -1], [20, -0.7], [25, -0.5], [30, -0.3], [35, -0.2], [45, 0]),
    other: curve('ASCE7-16', MAIN, [10, -0.18], [15, -0.18], [20, -0.18], [25, 0], [30, 0.2], [35, 0.2], [45, 0.3], [60, 0.6]),
    leeward: curve('ASCE7-16', MAIN, [10, -0.7], [15, -0.6], [20, -0.6]),
  },
];
/** Wind along the ridge, or a pitch under 10 degrees: suction by distance from the windward edge, in mean roof heights. */
export const ROOF_ALONG = [
  { toHeights: 0.5, low: cited(-0.9, '1', 'ASCE7-16', MAIN), tall: cited(-1.3, '1', 'ASCE7-16', MAIN) },
  { toHeights: 1, low: cited(-0.9, '1', 'ASCE7-16', MAIN), tall: cited(-0.7, '1', 'ASCE7-16', MAIN) },
  { toHeights: 2, low: cited(-0.5, '1', 'ASCE7-16', MAIN), tall: cited(-0.7, '1', 'ASCE7-16', MAIN) },
  { toHeights: Infinity, low: cited(-0.3, '1', 'ASCE7-16', MAIN), tall: cited(-0.7, '1', 'ASCE7-16', MAIN) },
] as const;
export const ROOF_ALONG_OTHER = cited(-0.18, '1', 'ASCE7-16', MAIN);
/** Strength-level least pressures on the projected wall and roof. */
export const LEAST_WALL_PA = cited(766.08, 'Pa', 'ASCE7-16', '27.1.5, 16 psf');
export const LEAST_ROOF_PA = cited(383.04, 'Pa', 'ASCE7-16', '27.1.5, 8 psf');
export const LEAST_CLADDING_PA = cited(766.08, 'Pa', 'ASCE7-16-MEMORY', '30.2.2, 16 psf');

/** Pitched free roofs: net coefficients of the windward and leeward half by pitch. */
const FREE = 'fig. 27.4-5';
export const FREE_ROOF = {
  A: {
    clear: {
      windward: curve('ASCE7-10', FREE, [7.5, 1.1], [15, 1.1], [22.5, 1.1], [30, 1.3], [37.5, 1.3], [45, 1.1]),
      leeward: curve('ASCE7-10', FREE, [7.5, -0.3], [15, -0.4], [22.5, 0.1], [30, 0.3], [37.5, 0.6], [45, 0.9]),
    },
    obstructed: {
      windward: curve('ASCE7-10', FREE, [7.5, -1.6], [15, -1.2], [22.5, -1.2], [30, -0.7], [37.5, -0.6], [45, -0.5]),
      leeward: curve('ASCE7-10', FREE, [7.5, -1], [15, -1], [22.5, -1.2], [30, -0.7], [37.5, -0.6], [45, -0.5]),
    },
  },
  B: {
    clear: {
      windward: curve('ASCE7-10', FREE, [7.5, 0.2], [15, 0.1], [22.5, -0.1], [30, -0.1], [37.5, -0.2], [45, -0.3]),
      leeward: curve('ASCE7-10', FREE, [7.5, -1.2], [15, -1.1], [22.5, -0.8], [30, -0.9], [37.5, -0.6], [45, -0.5]),
    },
    obstructed: {
      windward: curve('ASCE7-10', FREE, [7.5, -0.9], [15, -0.6], [22.5, -0.8], [30, -0.2], [37.5, -0.3], [45, -0.3]),
      leeward: curve('ASCE7-10', FREE, [7.5, -1.7], [15, -1.6], [22.5, -1.7], [30, -1.1], [37.5, -0.9], [45, -0.7]),
    },
  },
} as const;

/** Arched roofs, recalled: the demand found with them is raised by a fifth. */
export const ARCH_SOURCE = 'ASCE7-16-MEMORY' satisfies SourceId;
export const MEMORY_RAISE = cited(1.2, '1', 'JUDGEMENT-LOADS', 'demand found with recalled coefficients is raised by 20 per cent');

/** External suction on components by zone and effective area (m2). */
export interface CladdingRow {
  upToPitchDeg: number;
  field: Curve;
  edge: Curve;
  corner: Curve;
}
const CC = 'fig. 30.3-1 and 30.3-2B to D, as digitised';
export const CLADDING_WALL = {
  field: areaCurve('ASCE7-16', CC, [10, -1.1], [20, -1.05], [50, -0.97], [100, -0.93], [200, -0.85], [500, -0.8]),
  corner: areaCurve('ASCE7-16', CC, [10, -1.4], [20, -1.3], [50, -1.15], [100, -1.05], [200, -0.93], [500, -0.8]),
} as const;
export const CLADDING_ROOF: readonly CladdingRow[] = [
  {
    upToPitchDeg: 20,
    field: areaCurve('ASCE7-16', CC, [10, -2], [20, -2], [50, -1.17], [100, -0.5]),
    edge: areaCurve('ASCE7-16', CC, [10, -3], [20, -2.57], [50, -2], [100, -1.6], [200, -1.1], [250, -1]),
    corner: areaCurve('ASCE7-16', CC, [10, -3.6], [20, -3.05], [50, -2.34], [100, -1.8]),
  },
  {
    upToPitchDeg: 27,
    field: areaCurve('ASCE7-16', CC, [10, -1.5], [20, -1.5], [50, -1.25], [100, -1.06], [200, -0.89], [300, -0.8]),
    edge: areaCurve('ASCE7-16', CC, [10, -2.5], [20, -2.15], [50, -1.7], [100, -1.38], [150, -1.2]),
    corner: areaCurve('ASCE7-16', CC, [4, -3.6], [10, -2.73], [20, -2.35], [50, -1.8]),
  },
  {
    upToPitchDeg: 90,
    field: areaCurve('ASCE7-16', CC, [10, -1.8], [20, -1.5], [50, -1.1], [100, -0.8]),
    edge: areaCurve('ASCE7-16', CC, [10, -2], [20, -1.77], [50, -1.45], [100, -1.23], [200, -1]),
    corner: areaCurve('ASCE7-16', CC, [2, -3.2], [10, -2.5], [20, -2.2], [50, -1.8], [100, -1.5], [300, -1]),
  },
];
/** A batten screw answers for well under ten square feet of film. */
export const FILM_AREA_M2 = cited(10 * FT * FT, 'm2', 'JUDGEMENT-LOADS', 'effective area of film and battens, 10 ft2');

/** EN terrain: roughness length and least height. */
export const EN_TERRAIN: Readonly<Record<'0' | 'I' | 'II' | 'III' | 'IV', { roughnessM: number; lowestM: number }>> = {
  '0': { roughnessM: cited(0.003, 'm', 'EN1991-1-4-MEMORY', 'table 4.1'), lowestM: cited(1, 'm', 'EN1991-1-4-MEMORY', 'table 4.1') },
  I: { roughnessM: cited(0.01, 'm', 'EN1991-1-4-MEMORY', 'table 4.1'), lowestM: cited(1, 'm', 'EN1991-1-4-MEMORY', 'table 4.1') },
  II: { roughnessM: cited(0.05, 'm', 'EN1991-1-4', 'table 4.1'), lowestM: cited(2, 'm', 'EN1991-1-4', 'table 4.1') },
  III: { roughnessM: cited(0.3, 'm', 'EN1991-1-4', 'table 4.1'), lowestM: cited(5, 'm', 'EN1991-1-4', 'table 4.1') },
  IV: { roughnessM: cited(1, 'm', 'EN1991-1-4', 'table 4.1'), lowestM: cited(10, 'm', 'EN1991-1-4', 'table 4.1') },
};
export const EN_AIR_DENSITY = cited(1.25, 'kg/m3', 'EN1991-1-4', '4.5(1) note 2');
/** Duopitch, wind on the slope: zones F G H (windward), I J (leeward) by pitch; suction set and pressure set. */
const DUO = 'table 7.4a';
const duo = (...v: readonly (readonly [number, number])[]): Curve => curve('EN1991-1-4', DUO, ...v);
export const EN_DUOPITCH = {
  F: { suction: duo([15, -0.9], [30, -0.5], [45, 0]), pressure: duo([15, 0.2], [30, 0.7], [45, 0.7]) },
  G: { suction: duo([15, -0.8], [30, -0.5], [45, 0]), pressure: duo([15, 0.2], [30, 0.7], [45, 0.7]) },
  H: { suction: duo([15, -0.3], [30, -0.2], [45, 0]), pressure: duo([15, 0.2], [30, 0.4], [45, 0.6]) },
  I: { suction: duo([15, -0.4], [30, -0.4], [45, -0.2]), pressure: duo([15, 0], [45, 0]) },
  J: { suction: duo([15, -1], [30, -0.5], [45, -0.3]), pressure: duo([15, 0], [45, 0]) },
} as const;
/** Duopitch, wind along the ridge. */
export const EN_DUOPITCH_ALONG = {
  F: curve('EN1991-1-4', 'table 7.4b', [15, -1.3], [30, -1.1]),
  G: curve('EN1991-1-4', 'table 7.4b', [15, -1.3], [30, -1.4]),
  H: curve('EN1991-1-4', 'table 7.4b', [15, -0.6], [30, -0.8]),
  I: curve('EN1991-1-4', 'table 7.4b', [15, -0.5], [30, -0.5]),
} as const;
export const EN_WALLS = {
  windward: cited(0.8, '1', 'EN1991-1-4-MEMORY', 'table 7.1, D'),
  leeward: cited(-0.5, '1', 'EN1991-1-4-MEMORY', 'table 7.1, E'),
} as const;
/** Inside: +0.2 closed; with an opening that rules, 0.90 of the pressure at it. */
export const EN_INSIDE = {
  enclosed: cited(0.2, '1', 'EN1991-1-4-MEMORY', '7.2.9(6)'),
  partiallyEnclosed: cited(0.72, '1', 'EN1991-1-4-MEMORY', '7.2.9(5), 0.90 of +0.8'),
} as const;
export const EN_WIND_FACTOR = cited(1.5, '1', 'EN1990-MEMORY', 'table A1.2, variable actions');
/** Canopies: overall force coefficients by pitch; least value for blockage 0 and 1. */
export const EN_MONO_CANOPY = {
  max: curve('EN1991-1-4', 'table 7.6', [0, 0.2], [5, 0.4], [10, 0.5], [15, 0.7], [20, 0.8], [25, 1], [30, 1.2]),
  open: curve('EN1991-1-4', 'table 7.6', [0, -0.5], [5, -0.7], [10, -0.9], [15, -1.1], [20, -1.3], [25, -1.6], [30, -1.8]),
  blocked: curve('EN1991-1-4', 'table 7.6', [0, -1.3], [5, -1.4], [30, -1.4]),
} as const;
export const EN_DUO_CANOPY = {
  max: curve('EN1991-1-4', 'table 7.7', [-20, 0.7], [-15, 0.5], [-10, 0.4], [-5, 0.3], [5, 0.3], [10, 0.4], [15, 0.4], [20, 0.6]),
  open: curve('EN1991-1-4', 'table 7.7', [-20, -0.7], [-15, -0.6], [-10, -0.6], [-5, -0.5], [5, -0.6], [10, -0.7], [15, -0.8], [20, -0.9]),
  blocked: curve('EN1991-1-4', 'table 7.7', [-20, -1.3], [-15, -1.4], [-10, -1.4], [-5, -1.3], [20, -1.3]),
} as const;

/** Three-second gust over a mean: an hour (Durst), and the upper end for means of two to ten minutes. */
export const GUST_OVER_HOUR = cited(1.53, '1', 'GUST-RATIO', 'Durst curve, 3 s over 3600 s');
export const GUST_OVER_TEN_MINUTES = cited(1.55, '1', 'GUST-RATIO', '3 s over 2 to 10 minutes, upper end', { min: 1.4, max: 1.55 });
/** A pipe, tent or map reading over 300 km/h is a slip of the pen. */
export const GUST_LIMIT_MPERS = cited(300 / 3.6, 'm/s', 'JUDGEMENT-LOADS', 'over 300 km/h is refused');

const MPH = 0.44704;
/** Winds as people name them: the printed range in miles an hour. */
export const BEAUFORT: Readonly<Record<number, { fromMPerS: number; toMPerS: number }>> = Object.fromEntries(
  (
    [
      [4, 13, 18],
      [5, 19, 24],
      [6, 25, 31],
      [7, 32, 38],
      [8, 39, 46],
      [9, 47, 54],
      [10, 55, 63],
      [11, 64, 72],
    ] as const
  ).map(([b, from, to]) => [b, { fromMPerS: cited(from * MPH, 'm/s', 'BEAUFORT', `force ${b}`), toMPerS: cited(to * MPH, 'm/s', 'BEAUFORT', `force ${b}`) }]),
);
