import { UNIT_BY_SUFFIX, type UnitSuffix, type UnitSymbol } from './quantity.js';

/** Where the house writes a unit otherwise than the Unified Code for Units of Measure does. All others are UCUM as they stand. */
const OTHERWISE: Partial<Record<UnitSymbol, string>> = {
  degC: 'Cel',
  // An annotation holds no spaces; both are counts of something.
  '{minor currency unit}': '{minor}',
};

/** The UCUM code of a unit that a field may be in. */
export const ucumOfUnit = (unit: UnitSymbol): string => OTHERWISE[unit] ?? unit;

/** The UCUM code for the suffix of a field's name: the closed list of units that other programs meet. */
export const ucumOfSuffix = (suffix: UnitSuffix): string => ucumOfUnit(UNIT_BY_SUFFIX[suffix]);
