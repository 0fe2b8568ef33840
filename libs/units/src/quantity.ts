/**
 * A number that remembers its unit at compile time.
 *
 * A plain number may be given where a quantity is wanted (so literals and arithmetic stay easy to read),
 * but one quantity may not be given where another is wanted: metres are refused for square metres and
 * degrees Celsius for kelvin differences. Arithmetic returns a plain number, which takes on the unit of
 * the place it is stored in.
 */
export type Quantity<U extends UnitSymbol> = number & { readonly __unit?: U };

/**
 * Every unit that a stored, sent or computed number may carry, by the suffix its name must end with.
 * The suffix is the law of the house: `spanM`, `nightMinC`, `warmUpK`, `upliftN`. "Per" is spelled.
 */
export const UNIT_BY_SUFFIX = {
  M: 'm',
  Mm: 'mm',
  M2: 'm2',
  M3: 'm3',
  L: 'L',
  Kg: 'kg',
  KgPerM: 'kg/m',
  KgPerM3: 'kg/m3',
  N: 'N',
  Nm: 'N.m',
  NPerM: 'N/m',
  Pa: 'Pa',
  PaPerM: 'Pa/m',
  PaPerK: 'Pa/K',
  NPerM3: 'N/m3',
  C: 'degC',
  K: 'K',
  KPerM: 'K/m',
  KD: 'K.d',
  S: 's',
  Min: 'min',
  H: 'h',
  D: 'd',
  Y: 'a',
  Deg: 'deg',
  MPerS: 'm/s',
  M3PerS: 'm3/s',
  W: 'W',
  WPerK: 'W/K',
  WPerM2: 'W/m2',
  WPerMK: 'W/(m.K)',
  WPerM2K: 'W/(m2.K)',
  M2KPerW: 'm2.K/W',
  KM2PerMJ: 'K.m2/MJ',
  KJPerM2K: 'kJ/(m2.K)',
  MJPerM2: 'MJ/m2',
  MJPerM3K: 'MJ/(m3.K)',
  JPerK: 'J/K',
  JPerLK: 'J/(L.K)',
  JPerM2K: 'J/(m2.K)',
  JPerM3K: 'J/(m3.K)',
  LPerM2: 'L/m2',
  Cm2PerM2: 'cm2/m2',
  PerM: '1/m',
  PerM2: '1/m2',
  PerY: '1/a',
  PerH: '1/h',
  Frac: '1',
  Ratio: '1',
  Count: '{count}',
  Minor: '{minor currency unit}',
} as const;

export type UnitSuffix = keyof typeof UNIT_BY_SUFFIX;
/** Units that only coefficients of empirical formulas carry; no field of a plan is in them. */
type CoefficientUnit = '(L/s)2/(cm4.K)' | '(L/s)2/(cm4.(m/s)2)' | '1/K(1/2)';
export type UnitSymbol = (typeof UNIT_BY_SUFFIX)[UnitSuffix] | CoefficientUnit;

export type Metres = Quantity<'m'>;
export type Millimetres = Quantity<'mm'>;
export type SquareMetres = Quantity<'m2'>;
export type CubicMetres = Quantity<'m3'>;
export type Litres = Quantity<'L'>;
export type Kilograms = Quantity<'kg'>;
export type Newtons = Quantity<'N'>;
export type NewtonMetres = Quantity<'N.m'>;
export type NewtonsPerMetre = Quantity<'N/m'>;
export type Pascals = Quantity<'Pa'>;
export type Celsius = Quantity<'degC'>;
export type Kelvins = Quantity<'K'>;
export type Degrees = Quantity<'deg'>;
export type Hours = Quantity<'h'>;
export type MetresPerSecond = Quantity<'m/s'>;
export type WattsPerKelvin = Quantity<'W/K'>;
export type WattsPerSquareMetre = Quantity<'W/m2'>;
export type Fraction = Quantity<'1'>;
