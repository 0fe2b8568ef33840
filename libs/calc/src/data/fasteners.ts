import { cited } from '../sources/cite.js';

const IN = 0.0254;

/** Outside diameter of wood and sheet-metal screws by number. */
export const SCREW_DIAMETER_M: Readonly<Record<6 | 7 | 8 | 9 | 10 | 12 | 14, number>> = {
  6: cited(0.138 * IN, 'm', 'AISI-S100', 'screw sizes'),
  7: cited(0.151 * IN, 'm', 'AISI-S100', 'screw sizes'),
  8: cited(0.164 * IN, 'm', 'AISI-S100', 'screw sizes'),
  9: cited(0.177 * IN, 'm', 'NDS-MEMORY', '0.060 + 0.013 N'),
  10: cited(0.19 * IN, 'm', 'AISI-S100', 'screw sizes'),
  12: cited(0.216 * IN, 'm', 'AISI-S100', 'screw sizes'),
  14: cited(0.242 * IN, 'm', 'AISI-S100', 'screw sizes'),
};
/** Steel sheet by gauge as a design sheet gives it: tube makers use other walls, so the wall is measured, not looked up. */
export const GAUGE_M: Readonly<Record<12 | 14 | 16 | 18 | 20 | 22 | 25, number>> = {
  25: cited(0.019 * IN, 'm', 'AISI-S100', 'design thickness'),
  22: cited(0.028 * IN, 'm', 'AISI-S100', 'design thickness'),
  20: cited(0.035 * IN, 'm', 'AISI-S100', 'design thickness'),
  18: cited(0.045 * IN, 'm', 'AISI-S100', 'design thickness'),
  16: cited(0.057 * IN, 'm', 'AISI-S100', 'design thickness'),
  14: cited(0.071 * IN, 'm', 'AISI-S100', 'design thickness'),
  12: cited(0.102 * IN, 'm', 'AISI-S100', 'design thickness'),
};
/** Batten screw: number 8, 2 in long, through a 19 mm batten; the tip counts as thread in a wood screw. */
export const BATTEN_SCREW = {
  gauge: 8,
  lengthM: cited(2 * IN, 'm', 'LOADS-PRACTICE', 'batten screws 1-5/8 to 2-1/2 in'),
  headM: cited(0.3 * IN, 'm', 'NDS-MEMORY', 'head of a number 8 screw'),
  battenM: cited(0.019, 'm', 'LOADS-PRACTICE', 'lath over film, 3/4 in'),
} as const;
export const TUBE_SCREW_GAUGE = 10;
export const SCREW_OMEGA = cited(3, '1', 'AISI-S100', 'factor on screws');
/** Reclaimed tube of unknown steel, rust scraped off. */
export const UNKNOWN_TUBE_ULTIMATE_PA = cited(40_000 * 6894.757, 'Pa', 'JUDGEMENT-LOADS', 'ultimate stress of rusty tube of unknown grade, 40 ksi');
/** Widest spacing of batten screws, for the film tears and the lath bends before the screw pulls. */
export const SPACING_CAP_M = {
  field: cited(0.3, 'm', 'LOADS-PRACTICE', '12 in'),
  edge: cited(0.2, 'm', 'LOADS-PRACTICE', 'edges 150 to 200 mm'),
  corner: cited(0.15, 'm', 'LOADS-PRACTICE', 'corners 150 mm'),
} as const;
/** Closer than this the lath splits: the bay is too wide or the wind too strong for battens. */
export const SPACING_LEAST_M = cited(0.075, 'm', 'JUDGEMENT-LOADS', 'least screw spacing in a lath');
export const NAILER_SPACING_M = cited(0.4, 'm', 'LOADS-PRACTICE', 'boards on tubes, 16 in');
