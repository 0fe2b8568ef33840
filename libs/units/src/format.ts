import { currencyDigits } from './currency.js';
import { FOOT_M, GALLON_US_L, INCH_M, MPH_M_PER_S, POUND_FORCE_N, POUND_KG, PSF_PA } from './factors.js';

export type UnitSystem = 'metric' | 'us';

/** Marks of a locale. A grouping of '' prints none. */
export interface Separators {
  decimal: string;
  group: string;
}
export const ENGLISH: Separators = { decimal: '.', group: ',' };

const MINUS = '\u2212';
const PRIME = '\u2032';
const DOUBLE_PRIME = '\u2033';
const NO_BREAK = '\u00a0';

/** A figure that is not a number must never reach paper, so it stops the printing. */
const finite = (value: number): number => {
  if (!Number.isFinite(value)) throw new RangeError(`a figure to print is ${value}`);
  return value;
};

/** Rounds half away from zero, so that plus and minus print alike. */
const roundAway = (value: number, digits: number): number => {
  const scale = 10 ** digits;
  return (Math.sign(value) * Math.round(Math.abs(value) * scale + 1e-9)) / scale;
};

/** A number with a fixed count of decimals, a true minus sign, groups of three from 10,000 up (from 1,000 in money). A zero has no sign. */
export const formatNumber = (value: number, digits = 0, marks: Separators = ENGLISH, groupFrom = 10_000): string => {
  const rounded = roundAway(finite(value), digits);
  const [whole = '0', part] = Math.abs(rounded).toFixed(digits).split('.');
  const grouped = Math.abs(rounded) >= groupFrom ? whole.replace(/\B(?=(?:\d{3}){1,10}$)/g, marks.group) : whole;
  return `${rounded < 0 ? MINUS : ''}${grouped}${part === undefined ? '' : marks.decimal + part}`;
};

const eighthsText = (eighths: number): string => {
  if (eighths === 0) return '';
  const down = eighths % 4 === 0 ? 4 : eighths % 2 === 0 ? 2 : 1;
  return `${eighths / down}/${8 / down}`;
};

/** Feet and inches from whole eighths of an inch: 10′-0″, 6′-10 1/2″, under a foot 7 1/4″. */
export const formatEighths = (eighths: number): string => {
  const all = Math.abs(Math.round(finite(eighths)));
  const feet = Math.floor(all / 96);
  const inches = Math.floor((all % 96) / 8);
  const part = eighthsText(all % 8);
  const inchText = part === '' ? `${inches}` : inches === 0 && feet === 0 ? part : `${inches} ${part}`;
  return `${eighths < 0 && all > 0 ? MINUS : ''}${feet > 0 ? `${feet}${PRIME}-` : ''}${inchText}${DOUBLE_PRIME}`;
};

/** A length in feet and inches to an eighth of an inch. */
export const formatFeetInches = (lengthM: number): string => formatEighths(roundAway((finite(lengthM) / INCH_M) * 8, 0));

/** A length in whole millimetres, without its unit: for dimension lines. */
export const formatMillimetres = (lengthM: number, marks: Separators = ENGLISH): string => formatNumber(lengthM * 1000, 0, marks);

export const formatLength = (lengthM: number, system: UnitSystem, marks: Separators = ENGLISH): string =>
  system === 'us' ? formatFeetInches(lengthM) : `${formatMillimetres(lengthM, marks)}${NO_BREAK}mm`;

/** How a kind of quantity is printed in each system: factor, decimals, unit. */
const KINDS = {
  area: { metric: [1, 1, 'm²'], us: [FOOT_M ** 2, 0, 'sq ft'] },
  volume: { metric: [1, 1, 'm³'], us: [FOOT_M ** 3, 0, 'cu ft'] },
  liquid: { metric: [1, 0, 'L'], us: [GALLON_US_L, 0, 'gal'] },
  mass: { metric: [1, 0, 'kg'], us: [POUND_KG, 0, 'lb'] },
  force: { metric: [1000, 2, 'kN'], us: [POUND_FORCE_N, 0, 'lb'] },
  pressure: { metric: [1000, 2, 'kPa'], us: [PSF_PA, 1, 'psf'] },
  speed: { metric: [1 / 3.6, 0, 'km/h'], us: [MPH_M_PER_S, 0, 'mph'] },
  longDistance: { metric: [1000, 0, 'km'], us: [1609.344, 0, 'mi'] },
  height: { metric: [1, 0, 'm'], us: [FOOT_M, 0, 'ft'] },
  temperatureDifference: { metric: [1, 0, '°C'], us: [5 / 9, 0, '°F'] },
} as const satisfies Record<string, Record<UnitSystem, readonly [number, number, string]>>;
export type QuantityKind = keyof typeof KINDS;

/** A quantity given in SI, printed in the reader's system with its unit. */
export const formatQuantity = (kind: QuantityKind, value: number, system: UnitSystem, marks: Separators = ENGLISH): string => {
  const [factor, digits, unit] = KINDS[kind][system];
  return `${formatNumber(value / factor, digits, marks)}${NO_BREAK}${unit}`;
};

const toScale = (airC: number, system: UnitSystem): number => (system === 'us' ? airC * 1.8 + 32 : airC);

/** A temperature in whole degrees with its scale. For a difference use the kind `temperatureDifference`. */
export const formatTemperature = (airC: number, system: UnitSystem): string =>
  `${formatNumber(toScale(airC, system))}${NO_BREAK}${system === 'us' ? '°F' : '°C'}`;

/** `18 to 24`, in words because a dash between numbers reads as a minus; one number where both ends print alike. */
export const formatRange = (low: number, high: number, digits = 0, marks: Separators = ENGLISH): string => {
  const [a, b] = [formatNumber(low, digits, marks), formatNumber(high, digits, marks)];
  return a === b ? a : `${a} to ${b}`;
};

export const formatTemperatureRange = (lowC: number, highC: number, system: UnitSystem): string =>
  `${formatRange(toScale(lowC, system), toScale(highC, system))}${NO_BREAK}${system === 'us' ? '°F' : '°C'}`;

/** A force as a reader needs it: kN to one decimal, below that N in tens; pounds in tens, below a hundred in ones. */
export const formatForce = (newtons: number, system: UnitSystem): string => {
  const pounds = finite(newtons) / POUND_FORCE_N;
  const coarse = (value: number): string => formatNumber(Math.abs(value) < 100 ? value : roundAway(value / 10, 0) * 10, 0, ENGLISH, 1000);
  if (system === 'us') return `${coarse(pounds)}${NO_BREAK}lb`;
  return Math.abs(newtons) >= 1000 ? `${formatNumber(newtons / 1000, 1)}${NO_BREAK}kN` : `${coarse(newtons)}${NO_BREAK}N`;
};

/** Money from whole minor units, with the currency's own count of decimals: `USD 1,234.50`. A currency that is not in the table stops it. */
export const formatMoney = (minor: number, currency: string, marks: Separators = ENGLISH): string => {
  const digits = currencyDigits(currency);
  if (digits === undefined) throw new RangeError(`currency ${currency} is not in the table`);
  if (!Number.isSafeInteger(minor)) throw new RangeError(`money is whole minor units, got ${minor}`);
  return `${currency}${NO_BREAK}${formatNumber(minor / 10 ** digits, digits, marks, 1000)}`;
};
