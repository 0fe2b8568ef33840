import type { UnitSymbol } from './quantity.js';

/**
 * Exact conversion factors. The foot, the pound and standard gravity are exact by definition (1959 agreement; 3rd CGPM),
 * the US gallon is 231 cubic inches and the imperial gallon 4.54609 L; everything else here follows from them.
 */
export const FOOT_M = 0.3048;
export const INCH_M = 0.0254;
export const MIL_M = 0.0000254;
export const YARD_M = 0.9144;
export const POUND_KG = 0.45359237;
export const OUNCE_KG = 0.028349523125;
export const GRAVITY_M_PER_S2 = 9.80665;
export const POUND_FORCE_N = 4.4482216152605;
export const GALLON_US_L = 3.785411784;
export const GALLON_IMPERIAL_L = 4.54609;
export const MILE_M = 1609.344;
export const KNOT_M_PER_S = 1852 / 3600;
export const PSF_PA = POUND_FORCE_N / FOOT_M ** 2;
export const PSI_PA = POUND_FORCE_N / INCH_M ** 2;
export const MPH_M_PER_S = MILE_M / 3600;
export const CFM_M3_PER_S = FOOT_M ** 3 / 60;

/** Spellings of a unit and what one of it is worth; `offset` is added before the factor (temperatures only). */
export interface Spelling {
  names: readonly string[];
  factor: number;
  offset?: number;
}

const u = (factor: number, ...names: string[]): Spelling => ({ names, factor });

const LENGTH: readonly Spelling[] = [
  u(1, 'm', 'metre', 'metres', 'meter', 'meters'),
  u(0.01, 'cm', 'centimetre', 'centimetres', 'centimeter', 'centimeters'),
  u(0.001, 'mm', 'millimetre', 'millimetres', 'millimeter', 'millimeters'),
  u(1000, 'km'),
  u(1e-6, 'um', 'micron', 'microns', 'micrometre', 'micrometer'),
  u(FOOT_M, 'ft', 'foot', 'feet', "'"),
  u(INCH_M, 'in', 'inch', 'inches', '"'),
  u(MIL_M, 'mil', 'mils', 'thou'),
  u(YARD_M, 'yd', 'yard', 'yards'),
];
const AREA: readonly Spelling[] = [
  u(1, 'm2', 'sq m', 'sqm', 'square metres', 'square meters'),
  u(1e-4, 'cm2', 'sq cm'),
  u(FOOT_M ** 2, 'ft2', 'sq ft', 'sqft', 'square feet', 'square foot'),
  u(INCH_M ** 2, 'in2', 'sq in', 'sqin', 'square inches'),
  u(YARD_M ** 2, 'yd2', 'sq yd', 'square yards'),
];
const VOLUME: readonly Spelling[] = [
  u(1, 'm3', 'cu m', 'cubic metres', 'cubic meters'),
  u(0.001, 'l', 'litre', 'litres', 'liter', 'liters'),
  u(1e-6, 'ml', 'cm3'),
  u(FOOT_M ** 3, 'ft3', 'cu ft', 'cubic feet', 'cubic foot'),
  u(YARD_M ** 3, 'yd3', 'cu yd', 'cubic yards'),
  u(GALLON_US_L / 1000, 'gal', 'gal us', 'us gal', 'gallon', 'gallons', 'us gallons'),
  u(GALLON_IMPERIAL_L / 1000, 'gal imp', 'imp gal', 'imperial gallons'),
];
const scaled = (table: readonly Spelling[], by: number): Spelling[] => table.map((s) => ({ ...s, factor: s.factor * by }));

/** What may be typed for each stored unit. A unit that is missing here takes plain numbers only. */
export const SPELLINGS: Partial<Record<UnitSymbol, readonly Spelling[]>> = {
  m: LENGTH,
  mm: scaled(LENGTH, 1000),
  m2: AREA,
  m3: VOLUME,
  L: scaled(VOLUME, 1000),
  kg: [
    u(1, 'kg', 'kilogram', 'kilograms'),
    u(0.001, 'g', 'gram', 'grams'),
    u(1000, 't', 'tonne', 'tonnes'),
    u(POUND_KG, 'lb', 'lbs', 'pound', 'pounds'),
    u(OUNCE_KG, 'oz', 'ounce', 'ounces'),
  ],
  'kg/m': [u(1, 'kg/m'), u(POUND_KG / FOOT_M, 'lb/ft')],
  'kg/m3': [u(1, 'kg/m3'), u(POUND_KG / FOOT_M ** 3, 'lb/ft3', 'pcf')],
  N: [
    u(1, 'n', 'newton', 'newtons'),
    u(1000, 'kn'),
    u(POUND_FORCE_N, 'lb', 'lbs', 'lbf', 'pound', 'pounds'),
    u(1000 * POUND_FORCE_N, 'kip', 'kips'),
    u(GRAVITY_M_PER_S2, 'kgf'),
  ],
  'N/m': [u(1, 'n/m'), u(1000, 'kn/m'), u(POUND_FORCE_N / FOOT_M, 'plf', 'lb/ft', 'lbf/ft')],
  'N.m': [
    u(1, 'n.m', 'nm', 'n m'),
    u(1000, 'kn.m', 'knm'),
    u(POUND_FORCE_N * FOOT_M, 'ft-lb', 'ft.lb', 'ft lb', 'ft-lbf', 'lb-ft', 'lb ft', 'lbf.ft'),
    u(POUND_FORCE_N * INCH_M, 'in-lb', 'in.lb', 'in lb', 'lb-in'),
  ],
  Pa: [
    u(1, 'pa', 'n/m2'),
    u(1000, 'kpa', 'kn/m2'),
    u(100, 'hpa', 'mbar', 'mb'),
    u(PSF_PA, 'psf', 'lb/ft2', 'lb/sq ft', 'lbf/ft2'),
    u(PSI_PA, 'psi', 'lb/in2', 'lbf/in2'),
    u(GRAVITY_M_PER_S2, 'kgf/m2'),
  ],
  'm/s': [
    u(1, 'm/s', 'mps'),
    u(1 / 3.6, 'km/h', 'kmh', 'kph'),
    u(MPH_M_PER_S, 'mph', 'mi/h'),
    u(KNOT_M_PER_S, 'kn', 'kt', 'kts', 'knot', 'knots'),
    u(FOOT_M, 'ft/s', 'fps'),
  ],
  'm3/s': [u(1, 'm3/s'), u(1 / 3600, 'm3/h'), u(0.001, 'l/s'), u(CFM_M3_PER_S, 'cfm', 'ft3/min')],
  degC: [
    { names: ['degc', 'c', 'deg c', 'celsius'], factor: 1 },
    { names: ['degf', 'f', 'deg f', 'fahrenheit'], factor: 5 / 9, offset: -32 },
    { names: ['k', 'kelvin'], factor: 1, offset: -273.15 },
  ],
  K: [u(1, 'k', 'kelvin', 'degc', 'c', 'deg c', 'cdeg'), u(5 / 9, 'degf', 'f', 'deg f', 'fdeg')],
  deg: [u(1, 'deg', 'degree', 'degrees'), u(180 / Math.PI, 'rad', 'radian', 'radians')],
  s: [u(1, 's', 'sec', 'seconds'), u(60, 'min', 'minutes'), u(3600, 'h', 'hours')],
  min: [u(1, 'min', 'minute', 'minutes'), u(60, 'h', 'hr', 'hour', 'hours')],
  h: [u(1, 'h', 'hr', 'hrs', 'hour', 'hours'), u(1 / 60, 'min', 'minute', 'minutes')],
  d: [u(1, 'd', 'day', 'days'), u(7, 'week', 'weeks')],
  a: [u(1, 'a', 'y', 'yr', 'year', 'years'), u(1 / 12, 'month', 'months')],
  W: [u(1, 'w', 'watt', 'watts'), u(1000, 'kw'), u(0.29307107017222, 'btu/h')],
  '1': [u(1, ''), u(0.01, '%', 'percent')],
};
