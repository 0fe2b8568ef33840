import type { FilePlace, MonthlyFile, MonthRecord } from './climate-file.js';
import { fieldsOf, numberOf, rounded } from './csv.js';
import { shown } from './faults.js';
import { tidyName } from './lines.js';
import { emptyMonths, FieldReader, judgeMonths, LIMITS, type FormatDoor, type Limits, type LineParser, type ParserContext } from './parser.js';
import { coordinatesOf, judgeStationNumber, judgeTemperatures, unitAnswer } from './place.js';

/**
 * WMO Climatological Standard Normals 1991-2020, one station a CSV: a heading, the station, then one block for each parameter.
 * Blocks are found by scanning for `Parameter_Code`, since the count of blank lines between them varies, and are told apart by
 * code and name, since some codes stand in several blocks. No code for missing is used: an empty field is no value.
 */
const TITLE = 'World Meteorological Organization Climate Normals for';
const MONTH_COLUMNS = ['January', 'February', 'March', 'April', 'May', 'June', 'July', 'August', 'September', 'October', 'November', 'December'] as const;

type Figure = Exclude<keyof MonthRecord, 'yearsCount'>;
interface Wanted {
  code: string;
  name: RegExp;
  row: string;
  figure: Figure;
  unit: string;
  /** Into SI. */
  factor: number;
  limits: Limits;
  temperature?: true;
}
const WANTED: readonly Wanted[] = [
  { code: '1', name: /^Precipitation/i, row: 'Sum', figure: 'precipitationMm', unit: 'mm', factor: 1, limits: LIMITS.monthMm },
  { code: '3', name: /Maximum_Temperature/i, row: 'Mean', figure: 'tMaxC', unit: 'Deg_C', factor: 1, limits: LIMITS.readC, temperature: true },
  { code: '4', name: /Minimum_Temperature/i, row: 'Mean', figure: 'tMinC', unit: 'Deg_C', factor: 1, limits: LIMITS.readC, temperature: true },
  { code: '5', name: /Mean_Temperature/i, row: 'Mean', figure: 'tMeanC', unit: 'Deg_C', factor: 1, limits: LIMITS.readC, temperature: true },
  { code: '7', name: /Vapou?r_Pressure/i, row: 'Mean', figure: 'vapourPressurePa', unit: 'hPa', factor: 100, limits: LIMITS.vapourPressurePa },
  { code: '8', name: /Sunshine/i, row: 'Sum', figure: 'sunshineH', unit: 'hours', factor: 1, limits: LIMITS.sunshineH },
  { code: '13', name: /Minimum_Temperature_<=_0_/i, row: 'Count', figure: 'frostDaysD', unit: 'count', factor: 1, limits: LIMITS.daysD },
  { code: '22', name: /Maximum/i, row: 'Max', figure: 'recordMaxC', unit: 'Deg_C', factor: 1, limits: LIMITS.readC, temperature: true },
  { code: '23', name: /Minimum/i, row: 'Min', figure: 'recordMinC', unit: 'Deg_C', factor: 1, limits: LIMITS.readC, temperature: true },
];
const UNITS: Record<string, readonly string[]> = {
  hours: ['hours', 'hour', 'h'],
  Deg_C: ['deg_c', 'degc', 'c'],
  hPa: ['hpa'],
  mm: ['mm'],
  count: ['count', 'days'],
};

const ANGLE = /^(\d{1,3})\|(\d{1,2})\|(\d{1,2}(?:\.\d+)?)\|([NSEW])$/;
/** Degrees of "53|18|24|N"; null where it is not of that form. */
export const degreesOf = (raw: string): number | null => {
  const parts = ANGLE.exec(raw.replaceAll(' ', ''));
  if (!parts) return null;
  const [minutes, seconds] = [Number(parts[2]), Number(parts[3])];
  if (minutes >= 60 || seconds >= 60) return null;
  const value = Number(parts[1]) + minutes / 60 + seconds / 3600;
  return rounded(parts[4] === 'S' || parts[4] === 'W' ? -value : value, 5);
};

class Clino implements LineParser {
  private readonly months: MonthRecord[] = emptyMonths();
  private readonly reader: FieldReader;
  private country: string | null = null;
  private name = '';
  private period: string | null = null;
  private place: FilePlace | null = null;
  private stationLine = 0;
  private expect: 'station' | 'parameter' | null = null;
  private wanted: readonly Wanted[] = [];
  private columns: string[] = [];
  private readonly lines: number[] = Array.from({ length: 12 }, () => 0);
  private readonly filled = new Set<string>();

  constructor(private readonly context: ParserContext) {
    this.reader = new FieldReader(context.faults);
  }

  line(text: string, number: number): boolean {
    const fields = fieldsOf(text);
    if (!fields) {
      this.context.faults.add({ line: number, code: 'unclosed-quote', message: 'a quoted field is not closed on its line', remedy: 'Close the quote.' });
      return true;
    }
    const [first, second] = [fields[0] ?? '', fields[1] ?? ''];
    if (fields.every((f) => f === '')) return true;
    if (first.startsWith(TITLE)) this.period = /(\d{4}-\d{4})/.exec(first)?.[1] ?? null;
    else if (first === 'Country_Name') this.country = tidyName(second, 80);
    else if (first === 'Station_Name') this.name = tidyName(second);
    else if (first === 'WMO_Number' && second === 'Latitude') this.expect = 'station';
    else if (first === 'Parameter_Code') this.expect = 'parameter';
    else if (first === 'WMO_Number' && second === 'Parameter_Code') this.columns = fields;
    else if (this.expect === 'station') this.station(fields, number);
    else if (this.expect === 'parameter') this.parameter(fields, number);
    else if (this.columns.length > 0 && this.wanted.length > 0) this.row(fields, number);
    return true;
  }

  private station(fields: readonly string[], line: number): void {
    this.expect = null;
    const [latitudeDeg, longitudeDeg] = [degreesOf(fields[1] ?? ''), degreesOf(fields[2] ?? '')];
    if (latitudeDeg === null || longitudeDeg === null) {
      this.context.faults.add({
        line,
        column: latitudeDeg === null ? 'Latitude' : 'Longitude',
        code: 'not-a-number',
        message: `"${shown(fields[latitudeDeg === null ? 1 : 2] ?? '')}" is not degrees|minutes|seconds|N, S, E or W`,
        remedy: 'Send the file as it was published.',
      });
      return;
    }
    const swapped = /[EW]\s*$/.test(fields[1] ?? '') && /[NS]\s*$/.test(fields[2] ?? '');
    const at = coordinatesOf(swapped ? { latitudeDeg: longitudeDeg, longitudeDeg: latitudeDeg } : { latitudeDeg, longitudeDeg }, line, this.context);
    const height = fields[3] ?? '';
    const elevationM =
      height === ''
        ? null
        : this.reader.within(this.reader.number(height, { line, column: 'Station_Height' }), LIMITS.elevationM, { line, column: 'Station_Height' });
    this.stationLine = line;
    if (at) this.place = { stationId: tidyName(fields[0] ?? '', 40), stationName: this.name, country: this.country, ...at, elevationM, zoneH: null };
  }

  private parameter(fields: readonly string[], line: number): void {
    this.expect = null;
    this.columns = [];
    const [code, name, unit] = [fields[0] ?? '', fields[1] ?? '', (fields[2] ?? '').toLowerCase()];
    this.wanted = WANTED.filter((w) => w.code === code && w.name.test(name.replaceAll(' ', '_')));
    for (const w of this.wanted)
      if (!UNITS[w.unit]?.includes(unit)) {
        this.context.faults.add({
          line,
          column: 'Units',
          code: 'unknown-unit',
          message: `${shown(name, 60)} is in "${shown(unit)}", not in ${w.unit}`,
          remedy: 'Send the file as it was published.',
        });
        this.wanted = [];
      }
  }

  private row(fields: readonly string[], line: number): void {
    if (fields.length < 16) {
      this.context.faults.add({
        line,
        code: 'field-count',
        message: `${fields.length} fields where a row has 17`,
        remedy: 'Look whether the line is cut off.',
      });
      return;
    }
    const kind = fields[2] ?? '';
    if (kind === 'NOY' && this.wanted.some((w) => w.figure === 'tMinC' || w.figure === 'tMaxC')) this.years(fields);
    for (const wanted of this.wanted.filter((w) => w.row === kind)) {
      if (this.filled.has(wanted.figure)) {
        this.context.faults.add({
          line,
          code: 'duplicate-row',
          message: `${wanted.row} of parameter ${wanted.code} stands twice`,
          remedy: 'Send the file as it was published.',
        });
        continue;
      }
      this.filled.add(wanted.figure);
      this.figure(fields, line, wanted);
    }
  }

  private monthFields(fields: readonly string[]): string[] {
    return MONTH_COLUMNS.map((m) => fields[this.columns.indexOf(m)] ?? '');
  }

  private years(fields: readonly string[]): void {
    this.monthFields(fields).forEach((raw, m) => {
      const years = numberOf(raw);
      const month = this.months[m];
      if (years !== null && month) month.yearsCount = Math.min(month.yearsCount ?? Infinity, Math.round(years));
    });
  }

  private figure(fields: readonly string[], line: number, wanted: Wanted): void {
    const convert = wanted.temperature ? unitAnswer(this.context.options.answers) : (v: number) => v;
    this.monthFields(fields).forEach((raw, m) => {
      const month = this.months[m];
      if (raw === '' || !month) return;
      const at = { line, column: MONTH_COLUMNS[m] ?? '' };
      const value = this.reader.number(raw, at);
      month[wanted.figure] = this.reader.within(value === null ? null : convert(rounded(value * wanted.factor, 2)), wanted.limits, at);
      if (wanted.figure === 'tMinC') this.lines[m] = line;
    });
  }

  end(at: { cutOff: boolean; lastGoodLine: number }): MonthlyFile | null {
    const { faults } = this.context;
    if (!this.place) {
      if (faults.count === 0)
        faults.add({
          line: 0,
          code: 'missing-header',
          message: 'no station with WMO_Number, Latitude and Longitude',
          remedy: 'Send the single-station file as it was published.',
        });
      return null;
    }
    const inBlock = this.expect !== null || (this.wanted.length > 0 && this.wanted.some((w) => !this.filled.has(w.figure)));
    if (inBlock)
      faults.add({
        line: at.lastGoodLine,
        code: 'truncated',
        message: `the file ends within a block of figures, after line ${at.lastGoodLine}`,
        remedy: 'Send the whole file again.',
      });
    judgeMonths(this.months, this.lines, this.context);
    judgeTemperatures(this.place, this.months, this.context);
    judgeStationNumber(this.place, this.stationLine, this.context);
    return {
      kind: 'monthly',
      place: this.place,
      source: {
        formatId: 'wmo-clino',
        variant: this.period ?? 'no period in the title',
        publisher: 'World Meteorological Organization and the national weather service',
        period: this.period,
        kind: 'normals',
        licenceNote: 'Terms are those of the national weather service that gave the figures: look them up before printing for others.',
        credit: `WMO Climatological Standard Normals ${this.period ?? ''}, ${this.country ?? 'country not stated'}`,
        statements: [],
      },
      months: this.months,
      annualExtremeMinC: null,
      annualExtremeMinYearsCount: null,
      series: [],
    };
  }
}

export const clino: FormatDoor = {
  id: 'wmo-clino',
  fits: (head) => (head.some((l) => l.startsWith(TITLE) || l.startsWith(`"${TITLE}`)) ? `the title "${TITLE}"` : null),
  start: (context) => new Clino(context),
};
