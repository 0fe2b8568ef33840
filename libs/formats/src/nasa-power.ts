import type { FormatId, MonthlyFile, MonthRecord } from './climate-file.js';
import { DAYS_IN_MONTH, rounded } from './csv.js';
import { shown } from './faults.js';
import { emptyMonths, FieldReader, judgeMonths, LIMITS, type Limits, type ParserContext } from './parser.js';
import { coordinatesOf, judgeTemperatures, unitAnswer } from './place.js';

/**
 * Climatology of NASA POWER (monthly means of a model of the atmosphere and of satellites, one cell of the grid, not a
 * station), as CSV and as JSON. -999 is missing. Highest and lowest temperatures of this source have been means of the days
 * in some releases and extremes of the month in others: where the daily range does not settle it, the sender is asked.
 */
export const POWER_MONTHS = ['JAN', 'FEB', 'MAR', 'APR', 'MAY', 'JUN', 'JUL', 'AUG', 'SEP', 'OCT', 'NOV', 'DEC'] as const;
export const POWER_MISSING = -999;
const MJ_PER_KWH = 3.6;
/** A mean daily range and the difference of mean highest and lowest are one thing; extremes of a month lie further apart. */
const RANGE_AGREES_K = 1;
const RAIN_AGREES_FRAC = 0.2;

/** One parameter: unit as the file writes it, twelve months, null where missing. */
export interface PowerParameter {
  line: number;
  unit: string | null;
  months: (number | null)[];
}
export interface PowerFile {
  formatId: FormatId;
  latitudeDeg: number;
  longitudeDeg: number;
  elevationM: number | null;
  placeLine: number;
  period: string | null;
  statements: string[];
  parameters: ReadonlyMap<string, PowerParameter>;
}

type Figure = Exclude<keyof MonthRecord, 'yearsCount'>;
type Units = Readonly<Record<string, number>>;
/** Units without blanks, marks or case, with what each is multiplied by. */
const CELSIUS: Units = { c: 1, degc: 1, degreescelsius: 1, celsius: 1 };
const RADIATION: Units = { kwhrm2day: MJ_PER_KWH, kwhm2day: MJ_PER_KWH, mjm2day: 1 };
interface Wanted {
  name: string;
  figure: Figure;
  units: Units;
  limits: Limits;
  temperature?: true;
}
const WANTED: readonly Wanted[] = [
  { name: 'T2M', figure: 'tMeanC', units: CELSIUS, limits: LIMITS.readC, temperature: true },
  { name: 'RH2M', figure: 'relativeHumidityFrac', units: { '%': 0.01 }, limits: LIMITS.frac },
  { name: 'WS10M', figure: 'windMPerS', units: { ms: 1 }, limits: LIMITS.windMPerS },
  { name: 'ALLSKY_SFC_SW_DWN', figure: 'radiationMJPerM2', units: RADIATION, limits: LIMITS.dayMJPerM2 },
  { name: 'FROST_DAYS', figure: 'frostDaysD', units: { days: 1, day: 1 }, limits: LIMITS.daysD },
];
const READ_APART = ['T2M_MAX', 'T2M_MIN', 'T2M_RANGE', 'PRECTOTCORR', 'PRECTOTCORR_SUM'];

const plainUnit = (unit: string): string => unit.toLowerCase().replaceAll(/[\s\-^/()]/g, '');

class PowerMonths {
  readonly months = emptyMonths();
  private readonly reader: FieldReader;

  constructor(
    private readonly file: PowerFile,
    private readonly context: ParserContext,
  ) {
    this.reader = new FieldReader(context.faults);
  }

  fill(wanted: Wanted): void {
    const parameter = this.file.parameters.get(wanted.name);
    if (!parameter) return;
    const factor = this.factor(wanted.name, parameter, wanted.units);
    if (factor === null) return;
    const convert = wanted.temperature ? unitAnswer(this.context.options.answers) : (v: number) => v;
    parameter.months.forEach((value, m) => {
      const month = this.months[m];
      if (!month || value === null) return;
      const figure = rounded(convert(value * factor), wanted.figure === 'relativeHumidityFrac' ? 4 : 2);
      month[wanted.figure] = this.reader.within(figure, wanted.limits, { line: parameter.line, column: `${wanted.name} ${POWER_MONTHS[m] ?? ''}` });
    });
  }

  private factor(name: string, parameter: PowerParameter, units: Units): number | null {
    const factor = parameter.unit === null ? undefined : units[plainUnit(parameter.unit)];
    if (factor !== undefined) return factor;
    this.context.faults.add({
      line: parameter.line,
      column: name,
      code: 'unknown-unit',
      message:
        parameter.unit === null ? `no unit is given for ${name}` : `${name} is in "${shown(parameter.unit)}", which is not a unit that this parameter has`,
      remedy: 'Send the answer of the service whole, with its header.',
    });
    return null;
  }

  /** Mean highest and lowest, or the records of the month, or a question. */
  temperatures(): void {
    const { parameters } = this.file;
    const [max, min] = [parameters.get('T2M_MAX'), parameters.get('T2M_MIN')];
    if (!max || !min) return;
    const kind = this.context.options.answers?.powerMaxMin ?? this.kindByRange(max, min);
    if (kind === null) {
      this.context.faults.add({
        line: max.line,
        column: 'T2M_MAX',
        code: 'maybe-extremes',
        message: 'T2M_MAX and T2M_MIN may be means of each day or the extremes of the month; the file does not settle it',
        remedy: 'Look up the definition on the page where the file was made and say which, or ask the service for T2M_RANGE as well.',
        ask: { answer: 'powerMaxMin', choices: ['dailyMean', 'monthExtreme'] },
      });
      return;
    }
    const asMean = kind === 'dailyMean';
    if (!asMean)
      this.context.remarks.add('power-extremes', 'T2M_MAX and T2M_MIN are extremes of the month: there are no mean highest and lowest', { line: max.line });
    this.fill({ name: 'T2M_MAX', figure: asMean ? 'tMaxC' : 'recordMaxC', units: CELSIUS, limits: LIMITS.readC, temperature: true });
    this.fill({ name: 'T2M_MIN', figure: asMean ? 'tMinC' : 'recordMinC', units: CELSIUS, limits: LIMITS.readC, temperature: true });
  }

  private kindByRange(max: PowerParameter, min: PowerParameter): 'dailyMean' | 'monthExtreme' | null {
    const range = this.file.parameters.get('T2M_RANGE');
    const apart = max.months.flatMap((high, m) => {
      const [low, mean] = [min.months[m], range?.months[m]];
      return high === null || typeof low !== 'number' || typeof mean !== 'number' ? [] : [Math.abs(high - low - mean)];
    });
    if (apart.length < 6) return null;
    return apart.every((k) => k <= RANGE_AGREES_K) ? 'dailyMean' : 'monthExtreme';
  }

  /** From the rate in mm a day; a sum alone cannot be checked and was seen ten times too large. */
  rain(): void {
    const [rate, sum] = [this.file.parameters.get('PRECTOTCORR'), this.file.parameters.get('PRECTOTCORR_SUM')];
    if (rate && this.factor('PRECTOTCORR', rate, { mmday: 1 }) !== null)
      rate.months.forEach((value, m) => {
        const month = this.months[m];
        if (!month || value === null) return;
        const monthMm = rounded(value * (m === 1 ? 28.25 : (DAYS_IN_MONTH[m] ?? 30)), 1);
        month.precipitationMm = this.reader.within(monthMm, LIMITS.monthMm, { line: rate.line, column: `PRECTOTCORR ${POWER_MONTHS[m] ?? ''}` });
      });
    if (!sum) return;
    const agrees = sum.months.every((value, m) => {
      const mm = this.months[m]?.precipitationMm;
      return value === null || (typeof mm === 'number' && Math.abs(value - mm) <= RAIN_AGREES_FRAC * mm + 1);
    });
    if (!agrees) this.context.remarks.add('power-rain-sum', 'PRECTOTCORR_SUM is left out: no daily rate stands beside it that agrees', { line: sum.line });
  }
}

export const powerMonthly = (file: PowerFile, context: ParserContext): MonthlyFile | null => {
  const at = coordinatesOf(file, file.placeLine, context);
  const figures = new PowerMonths(file, context);
  for (const wanted of WANTED) figures.fill(wanted);
  figures.temperatures();
  figures.rain();
  const { months } = figures;
  const others = [...file.parameters.keys()].filter((p) => !READ_APART.includes(p) && !WANTED.some((w) => w.name === p));
  if (others.length > 0) context.remarks.add('parameter-not-read', `not used: ${shown(others.join(', '), 120)}`, { count: others.length });
  if (!at) return null;
  const elevationM = new FieldReader(context.faults).within(file.elevationM, LIMITS.elevationM, { line: file.placeLine, column: 'elevation' });
  const place = { stationId: null, stationName: `grid cell ${at.latitudeDeg}, ${at.longitudeDeg}`, country: null, ...at, elevationM, zoneH: null };
  judgeMonths(
    months,
    Array.from({ length: 12 }, () => file.parameters.get('T2M_MIN')?.line ?? 0),
    context,
  );
  judgeTemperatures(place, months, context);
  return {
    kind: 'monthly',
    place,
    source: {
      formatId: file.formatId,
      variant: 'climatology of a grid cell',
      publisher: 'NASA Langley Research Center, POWER project',
      period: file.period,
      kind: 'means',
      licenceNote: 'Work of the U.S. Government, free to use; the publisher asks to be named.',
      credit: 'NASA Langley Research Center (LaRC) POWER project, funded through the NASA Earth Science/Applied Science Program',
      statements: file.statements,
    },
    months,
    annualExtremeMinC: null,
    annualExtremeMinYearsCount: null,
    series: [],
  };
};

/** "2001-2020" out of "January 2001 - December 2020" or "20010101" and "20201231". */
export const powerPeriod = (text: string): string | null => {
  const years = /\b(\d{4})\b\D{1,30}\b(\d{4})\b/.exec(text);
  return years ? `${years[1]}-${years[2]}` : null;
};
