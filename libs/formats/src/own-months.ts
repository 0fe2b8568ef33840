import type { FilePlace, MonthlyFile, MonthRecord } from './climate-file.js';
import { shown } from './faults.js';
import { judgeColumns, ownFormatOf, OwnHead, ownValue, plainNumber, type OwnColumn } from './own-head.js';
import { emptyMonths, FieldReader, judgeMonths, LIMITS, type FormatDoor, type LineParser, type ParserContext } from './parser.js';
import { judgeTemperatures } from './place.js';
import { Table } from './table.js';

/** Our own form of twelve months, documented in docs/formats/own-csv.md. An empty field is "no record" and stays so. */
const FORMAT = 'lathwork-months-1';
type Figure = Exclude<keyof MonthRecord, 'yearsCount'>;
export const OWN_MONTH_COLUMNS: readonly OwnColumn<Figure>[] = [
  { name: 't_max_c', figure: 'tMaxC', limits: LIMITS.readC, unit: 'celsius' },
  { name: 't_max_f', figure: 'tMaxC', limits: LIMITS.readC, unit: 'fahrenheit' },
  { name: 't_min_c', figure: 'tMinC', limits: LIMITS.readC, unit: 'celsius' },
  { name: 't_min_f', figure: 'tMinC', limits: LIMITS.readC, unit: 'fahrenheit' },
  { name: 't_mean_c', figure: 'tMeanC', limits: LIMITS.readC, unit: 'celsius' },
  { name: 't_mean_f', figure: 'tMeanC', limits: LIMITS.readC, unit: 'fahrenheit' },
  { name: 'absolute_min_mean_c', figure: 'absoluteMinMeanC', limits: LIMITS.readC, unit: 'celsius' },
  { name: 'absolute_min_mean_f', figure: 'absoluteMinMeanC', limits: LIMITS.readC, unit: 'fahrenheit' },
  { name: 'night_deviation_k', figure: 'nightDeviationK', limits: LIMITS.spreadK },
  { name: 'vapour_pressure_pa', figure: 'vapourPressurePa', limits: LIMITS.vapourPressurePa },
  { name: 'relative_humidity_frac', figure: 'relativeHumidityFrac', limits: LIMITS.frac },
  { name: 'relative_humidity_percent', figure: 'relativeHumidityFrac', limits: LIMITS.frac, unit: 'percent' },
  { name: 'precipitation_mm', figure: 'precipitationMm', limits: LIMITS.monthMm },
  { name: 'precipitation_in', figure: 'precipitationMm', limits: LIMITS.monthMm, unit: 'inch' },
  { name: 'sunshine_h', figure: 'sunshineH', limits: LIMITS.sunshineH },
  { name: 'radiation_mj_per_m2', figure: 'radiationMJPerM2', limits: LIMITS.dayMJPerM2 },
  { name: 'frost_days_d', figure: 'frostDaysD', limits: LIMITS.daysD },
  { name: 'wind_m_per_s', figure: 'windMPerS', limits: LIMITS.windMPerS },
];
const YEARS = 'years_count';
const EXTREME = 'annual_extreme_min_c';
const EXTREME_YEARS = 'annual_extreme_min_years_count';

class OwnMonths implements LineParser {
  private readonly head: OwnHead;
  private readonly table: Table;
  private readonly reader: FieldReader;
  private readonly months: MonthRecord[] = emptyMonths();
  private readonly lines: number[] = Array.from({ length: 12 }, () => 0);
  private place: FilePlace | null = null;

  constructor(private readonly context: ParserContext) {
    this.head = new OwnHead('own-months', FORMAT, context, [EXTREME, EXTREME_YEARS]);
    this.table = new Table(context, ['month'], (name) => name.toLowerCase());
    this.reader = new FieldReader(context.faults);
  }

  line(text: string, line: number): boolean {
    if (text.trim() === '' || text.startsWith('#') || /^[\s,]+$/.test(text)) return true;
    if (this.table.hasHeader) this.row(text, line);
    else if (/^"?month"?\s*,/i.test(text)) return this.header(text, line);
    else this.head.line(text, line);
    return true;
  }

  private header(text: string, line: number): boolean {
    const fine = this.table.header(text, line);
    judgeColumns(this.table.columns, OWN_MONTH_COLUMNS, ['month', YEARS], { line, context: this.context });
    this.place = this.head.place(line);
    return fine;
  }

  private row(text: string, line: number): void {
    const fields = this.table.row(text, line);
    if (!fields) return;
    const number = plainNumber(this.table.field(fields, 'month'));
    const month = this.months[number - 1];
    if (!month) {
      this.context.faults.add({
        line,
        column: 'month',
        code: 'not-a-date',
        message: `"${shown(this.table.field(fields, 'month'))}" is not a month from 1 to 12`,
        remedy: 'Number the months from 1 to 12.',
      });
      return;
    }
    if (this.lines[number - 1] !== 0) {
      this.context.faults.add({
        line,
        code: 'duplicate-row',
        message: `month ${number} stands on line ${this.lines[number - 1]} already`,
        remedy: 'Keep one row a month.',
      });
      return;
    }
    this.lines[number - 1] = line;
    for (const column of OWN_MONTH_COLUMNS) {
      const raw = this.table.field(fields, column.name);
      if (raw === '') continue;
      const at = { line, column: column.name };
      const value = this.reader.number(raw, at);
      month[column.figure] = this.reader.within(value === null ? null : ownValue(value, column.unit, this.context), column.limits, at);
    }
    const years = this.table.field(fields, YEARS);
    if (years !== '') month.yearsCount = this.reader.within(this.reader.number(years, { line, column: YEARS }), LIMITS.yearsCount, { line, column: YEARS });
  }

  end(): MonthlyFile | null {
    const { faults } = this.context;
    const last = this.lines.findLastIndex((l) => l > 0);
    if (!this.table.hasHeader || last < 0) {
      if (faults.count === 0) faults.add({ line: 0, code: 'truncated', message: 'the file ends before the first month', remedy: 'Send the whole file.' });
      return null;
    }
    if (last < 11)
      faults.add({
        line: this.lines[last] ?? 0,
        code: 'truncated',
        message: `the file ends after month ${last + 1}`,
        remedy: 'Give all twelve months; leave the fields of a month without a record empty.',
      });
    if (!this.place) return null;
    const extreme = this.head.number(EXTREME, LIMITS.tMinC);
    const extremeYears = this.head.number(EXTREME_YEARS, { min: 1, max: 300 });
    judgeMonths(this.months, this.lines, this.context);
    judgeTemperatures(this.place, this.months, this.context);
    return {
      kind: 'monthly',
      place: this.place,
      source: this.head.source(this.head.text('kind') === 'normals' ? 'normals' : 'means'),
      months: this.months,
      annualExtremeMinC: extreme === null ? null : ownValue(extreme, 'celsius', this.context),
      annualExtremeMinYearsCount: extreme === null || extremeYears === null ? null : Math.round(extremeYears),
      series: [],
    };
  }
}

export const ownMonths: FormatDoor = {
  id: 'own-months',
  fits: (head) => (ownFormatOf(head)?.startsWith('lathwork-months-') ? 'the first line names our own form of months' : null),
  start: (context) => new OwnMonths(context),
};
