import { cited } from '../sources/cite.js';

const PSF = 47.880_26;
const FT = 0.3048;

/** Presumptive soil of IBC table 1806.2: bearing, lateral pressure for each metre of depth, friction of a dead weight on it. */
export interface PresumptiveSoil {
  bearingPa: number;
  lateralPaPerM: number;
  /** Null where the table gives cohesion in its place. */
  frictionRatio: number | null;
  cohesionPa: number | null;
}
const soil = (bearingPsf: number, lateralPsfPerFt: number, friction: number | null, cohesionPsf: number | null): PresumptiveSoil => ({
  bearingPa: cited(bearingPsf * PSF, 'Pa', 'IBC-1806', 'table 1806.2, bearing'),
  lateralPaPerM: cited((lateralPsfPerFt * PSF) / FT, 'Pa/m', 'IBC-1806', 'table 1806.2, lateral, psf/ft'),
  frictionRatio: friction === null ? null : cited(friction, '1', 'IBC-1806', 'table 1806.2, sliding'),
  cohesionPa: cohesionPsf === null ? null : cited(cohesionPsf * PSF, 'Pa', 'IBC-1806', 'table 1806.2, cohesion'),
});
/** Rows of the table: 1 crystalline rock, 2 sedimentary rock, 3 gravel, 4 sands, 5 clays and silts. */
export const PRESUMPTIVE_SOILS: Readonly<Record<1 | 2 | 3 | 4 | 5, PresumptiveSoil>> = {
  1: soil(12_000, 1200, 0.7, null),
  2: soil(4000, 400, 0.35, null),
  3: soil(3000, 200, 0.35, null),
  4: soil(2000, 150, 0.25, null),
  5: soil(1500, 100, null, 130),
};

/** Friction under a dead weight, by soil class of 24 CFR 3285.202: the sand row for all but rock and dense gravel. */
export const FRICTION_RATIO: Readonly<Record<'1' | '2' | '3' | '4A' | '4B' | '5', number>> = {
  '1': cited(0.35, '1', 'IBC-1806', 'table 1806.2, rock and gravel'),
  '2': cited(0.35, '1', 'IBC-1806', 'table 1806.2, sandy gravel'),
  '3': cited(0.25, '1', 'IBC-1806', 'table 1806.2, sands'),
  '4A': cited(0.25, '1', 'IBC-1806', 'table 1806.2, sands'),
  '4B': cited(0.25, '1', 'IBC-1806', 'table 1806.2, sands'),
  '5': cited(0.25, '1', 'IBC-1806', 'table 1806.2, sands; soft ground may have less'),
};

/** Footings go about six inches below the frost. */
export const BELOW_FROST_M = cited(0.15, 'm', 'CFR-3285', '3285.404 and practice: six inches under the frost line');
