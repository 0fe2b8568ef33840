import type { DocumentOptions, Money, Range } from '@lathwork/model';
import { currencyDigits, FOOT_M, formatFeetInches, formatForce, formatNumber, INCH_M } from '@lathwork/units';

/** A number in two systems: the edition's own first, the other one in brackets. */
export interface Pair {
  first: string;
  second: string;
}

const NBSP = '\u00a0';

/** Lists set thousands apart; sizes and single figures do so from ten thousand. */
const GROUP_FROM = 1000;
export const whole = (value: number): string => formatNumber(value, 0, undefined, GROUP_FROM);
/** Noughts at the end are kept, so that columns line up. */
export const decimal = (value: number, digits: number): string => formatNumber(value, digits, undefined, GROUP_FROM);

/** Three figures are as many as any load or area here is worth. */
export function rough(value: number): string {
  const size = Math.abs(value);
  if (size >= 1000) return whole(Math.round(value / 10) * 10);
  if (size >= 20) return whole(value);
  return decimal(value, size >= 1 ? 1 : 2);
}

export const percent = (fraction: number): string => `${whole(fraction * 100)}${NBSP}%`;

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

  /** The finest step of a temperature in print. */
  get oneDegree(): string {
    return unit('1', this.degree);
  }

  /** Degree-days, to the ten: they are sums of estimates. */
  degreeDays(kelvinDays: number): string {
    return unit(whole(Math.round((this.isMetric ? kelvinDays : kelvinDays * 1.8) / 10) * 10), this.isMetric ? '\u00b0C\u00b7days' : '\u00b0F\u00b7days');
  }

  range(range: Range<'degC'> | null): string {
    return range === null ? '' : `${this.t(range.p10)} to ${this.t(range.p90)}`;
  }

  /** A written size on a drawing or a list: mm whole [ft-in to 1/8 in], or the other way round. */
  size(metres: number): Pair {
    // Written sizes carry no thousands mark: a comma in the sun reads as a point.
    const { first, second } = this.pair(whole(metres * 1000).replace(/,/g, ''), formatFeetInches(metres));
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
    return this.both(formatForce(newtons, 'metric'), formatForce(newtons, 'us'));
  }

  forceColumns(newtons: number): Pair {
    return this.pair(decimal(newtons / 1000, 2), whole(Math.round(newtons / 4.448222 / 10) * 10));
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

  get rainUnit(): string {
    return this.isMetric ? 'mm' : 'in';
  }

  rain(millimetres: number): string {
    return this.isMetric ? whole(millimetres) : decimal(millimetres / 25.4, 1);
  }

  sun(megajoules: number): string {
    return decimal(megajoules, 0);
  }

  spacing(millimetres: number): string {
    if (Math.abs(millimetres) < 10) return this.both(unit(decimal(millimetres, 1), 'mm'), unit(decimal(millimetres / 25.4, 2), 'in'));
    return this.both(unit(whole(millimetres), 'mm'), `${formatFeetInches(millimetres / 1000)}`);
  }
}

/** Whole currency units: a budget of a build is not good to the cent. */
export const moneyWhole = (minor: number, currency: string): string => whole(minor / 10 ** (currencyDigits(currency) ?? 2));

export const money = (value: Money): string => unit(moneyWhole(value.minor, value.currency), value.currency);

export const hours = (value: number): string => (value < 10 && value % 1 !== 0 ? decimal(value, 1) : whole(value));
