import type { DocumentOptions, Money, Range } from '@lathwork/model';

/** A number in two systems: the edition's own first, the other one in brackets. */
export interface Pair {
  first: string;
  second: string;
}

const MINUS = '\u2212';
const NBSP = '\u00a0';
const INCH_M = 0.0254;
const FOOT_M = 0.3048;

/** Whole numbers with thousands set apart and a true minus sign; never "-0". */
export function whole(value: number): string {
  const rounded = Math.round(value);
  const digits = String(Math.abs(rounded)).replace(/\B(?=(\d{3})+$)/g, ',');
  return rounded < 0 ? MINUS + digits : digits;
}

/** At most `digits` decimals, trailing noughts kept so that columns line up. */
export function decimal(value: number, digits: number): string {
  const text = Math.abs(value).toFixed(digits);
  const isNought = Number(text) === 0;
  const [before = '0', after] = text.split('.');
  const joined = before.replace(/\B(?=(\d{3})+$)/g, ',') + (after === undefined ? '' : `.${after}`);
  return value < 0 && !isNought ? MINUS + joined : joined;
}

/** Three figures are as many as any load or area here is worth. */
export function rough(value: number): string {
  const size = Math.abs(value);
  if (size >= 1000) return whole(Math.round(value / 10) * 10);
  if (size >= 20) return whole(value);
  return decimal(value, size >= 1 ? 1 : 2);
}

export const percent = (fraction: number): string => `${whole(fraction * 100)}${NBSP}%`;

/** Feet and inches to the nearest 1/8 inch, with full-size fraction figures. */
export function feetInches(metres: number): string {
  const eighths = Math.round(Math.abs(metres) / INCH_M * 8);
  const sign = metres < 0 && eighths > 0 ? MINUS : '';
  const feet = Math.floor(eighths / 96);
  const inches = Math.floor((eighths % 96) / 8);
  let part = eighths % 8;
  let of = 8;
  while (part > 0 && part % 2 === 0) {
    part /= 2;
    of /= 2;
  }
  const inchText = part === 0 ? `${inches}` : `${inches > 0 ? `${inches} ` : ''}${part}/${of}`;
  return sign + (feet > 0 ? `${feet}\u2032-${inchText}\u2033` : `${inchText}\u2033`);
}

const toF = (c: number): number => c * 1.8 + 32;
const unit = (value: string, symbol: string): string => `${value}${NBSP}${symbol}`;

/** Turns SI numbers into what this edition prints. All rounding of the report happens here. */
export class Figures {
  readonly isMetric: boolean;

  constructor(units: DocumentOptions['units']) {
    this.isMetric = units === 'metric';
  }

  private pair(metric: string, us: string): Pair {
    return this.isMetric ? { first: metric, second: us } : { first: us, second: metric };
  }

  private both(metric: string, us: string): string {
    const { first, second } = this.pair(metric, us);
    return `${first} (${second})`;
  }

  get degree(): string {
    return this.isMetric ? '\u00b0C' : '\u00b0F';
  }

  /** A temperature in the edition's unit, without the unit. */
  t(celsius: number): string {
    return whole(this.isMetric ? celsius : toF(celsius));
  }

  temperature(celsius: number): string {
    return this.both(unit(whole(celsius), '\u00b0C'), unit(whole(toF(celsius)), '\u00b0F'));
  }

  temperatureShort(celsius: number): string {
    return unit(this.t(celsius), this.degree);
  }

  /** A difference of temperature: 1 K is 1.8 F degrees, without the 32. */
  difference(kelvin: number): string {
    const text = whole(this.isMetric ? kelvin : kelvin * 1.8);
    return unit(text, this.degree);
  }

  range(range: Range<'degC'> | null): string {
    return range === null ? '' : `${this.t(range.p10)} to ${this.t(range.p90)}`;
  }

  /** A written size on a drawing or a list: mm whole [ft-in to 1/8 in], or the other way round. */
  size(metres: number): Pair {
    // Written sizes carry no thousands mark: a comma in the sun reads as a point.
    const { first, second } = this.pair(whole(metres * 1000).replace(/,/g, ''), feetInches(metres));
    return { first, second: `[${second}]` };
  }

  sizeText(metres: number): string {
    const { first, second } = this.size(metres);
    return `${first}${NBSP}${second}`;
  }

  sizeUnit(): string {
    return this.isMetric ? 'mm [ft-in]' : 'ft-in [mm]';
  }

  /** A length in running text. */
  length(metres: number): string {
    const size = Math.abs(metres);
    if (size < 0.3) return this.both(unit(whole(metres * 1000), 'mm'), unit(decimal(metres / INCH_M, 1), 'in'));
    return this.both(unit(decimal(metres, size < 10 ? 2 : 1), 'm'), unit(decimal(metres / FOOT_M, size < 3 ? 1 : 0), 'ft'));
  }

  distance(metres: number): string {
    return this.both(unit(decimal(metres / 1000, metres < 10_000 ? 1 : 0), 'km'), unit(decimal(metres / 1609.344, metres < 16_000 ? 1 : 0), 'miles'));
  }

  height(metres: number): string {
    return this.both(unit(whole(metres), 'm'), unit(whole(metres / FOOT_M), 'ft'));
  }

  run(metres: number): string {
    return this.isMetric ? unit(decimal(metres, 1), 'm') : unit(decimal(metres / FOOT_M, 1), 'ft');
  }

  area(squareMetres: number): string {
    return this.both(unit(decimal(squareMetres, 1), 'm\u00b2'), unit(whole(squareMetres / FOOT_M ** 2), 'sq ft'));
  }

  force(newtons: number): string {
    const kilo = Math.abs(newtons) >= 1000;
    return this.both(kilo ? unit(decimal(newtons / 1000, 1), 'kN') : unit(whole(Math.round(newtons / 10) * 10), 'N'), unit(whole(Math.round(newtons / 4.448222 / 10) * 10), 'lb'));
  }

  forceColumns(newtons: number): Pair {
    return this.pair(decimal(newtons / 1000, 2), whole(Math.round(newtons / 4.448222 / 5) * 5));
  }

  get forceUnits(): Pair {
    return this.pair('kN', 'lb');
  }

  lineLoad(newtonsPerMetre: number): string {
    return this.both(unit(decimal(newtonsPerMetre / 1000, 2), 'kN/m'), unit(whole(newtonsPerMetre / 14.5939), 'lb/ft'));
  }

  pressure(pascals: number): string {
    return this.both(unit(decimal(pascals / 1000, 2), 'kPa'), unit(decimal(pascals / 47.88026, Math.abs(pascals) < 470 ? 1 : 0), 'lb/sq ft'));
  }

  moment(newtonMetres: number): string {
    return this.both(unit(whole(newtonMetres), 'N\u00b7m'), unit(whole(newtonMetres / 1.355818), 'ft-lb'));
  }

  speed(metresPerSecond: number): string {
    return this.both(unit(whole(metresPerSecond * 3.6), 'km/h'), unit(whole(metresPerSecond * 2.236936), 'mph'));
  }

  speedPair(metresPerSecond: number): Pair {
    return this.pair(unit(whole(metresPerSecond * 3.6), 'km/h'), unit(whole(metresPerSecond * 2.236936), 'mph'));
  }

  mass(kilograms: number): string {
    return this.both(unit(whole(kilograms), 'kg'), unit(whole(kilograms * 2.204623), 'lb'));
  }

  volume(litres: number): string {
    return this.both(unit(whole(litres), 'L'), unit(whole(litres / 3.785412), 'gal'));
  }

  sun(megajoules: number): string {
    return decimal(megajoules, 0);
  }

  spacing(millimetres: number): string {
    if (Math.abs(millimetres) < 10) return this.both(unit(decimal(millimetres, 1), 'mm'), unit(decimal(millimetres / 25.4, 2), 'in'));
    return this.both(unit(whole(millimetres), 'mm'), `${feetInches(millimetres / 1000)}`);
  }
}

/** Currencies without minor units, and with three; all others have two (ISO 4217). */
const MINOR_DIGITS: Record<string, number> = { JPY: 0, KRW: 0, CLP: 0, ISK: 0, VND: 0, XAF: 0, XOF: 0, PYG: 0, UGX: 0, KWD: 3, BHD: 3, OMR: 3, JOD: 3, TND: 3 };

/** Whole currency units: a budget of a build is not good to the cent. */
export const moneyWhole = (minor: number, currency: string): string => whole(minor / 10 ** (MINOR_DIGITS[currency] ?? 2));

export const money = (value: Money): string => unit(moneyWhole(value.minor, value.currency), value.currency);

export const hours = (value: number): string => (value < 10 && value % 1 !== 0 ? decimal(value, 1) : whole(value));
