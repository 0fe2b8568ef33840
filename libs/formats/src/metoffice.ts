import type { FilePlace, MonthlyFile, MonthRecord, YearMonth } from './climate-file.js';
import { numberOf, rounded } from './csv.js';
import { shown } from './faults.js';
import { tidyName } from './lines.js';
import { emptyMonth, FieldReader, judgeMonths, LIMITS, type FormatDoor, type Limits, type LineParser, type ParserContext } from './parser.js';
import { coordinatesOf, judgeTemperatures, unitAnswer } from './place.js';

/**
 * UK Met Office historic station data: a name, one to three lines with the place (stations have moved), an explanation of
 * flags, a header `yyyy mm tmax tmin af rain sun` with a line of units, then one row a month. `---` is missing, `*` estimated,
 * `#` sunshine of an automatic sensor, a trailing "Provisional" is not final. The file is a series, not a normal: the means of
 * a stated run of years are taken here, from final figures only, and a month with too few years has no mean.
 */
type Column = 'yyyy' | 'mm' | 'tmax' | 'tmin' | 'af' | 'rain' | 'sun';
const NEEDED: readonly Column[] = ['yyyy', 'mm', 'tmax', 'tmin'];
const UNITS: Partial<Record<string, string>> = { tmax: 'degc', tmin: 'degc', af: 'days', rain: 'mm', sun: 'hours' };
const COLUMN_LIMITS: Record<'tmax' | 'tmin' | 'af' | 'rain' | 'sun', Limits> = {
  tmax: LIMITS.readC,
  tmin: LIMITS.readC,
  af: LIMITS.daysD,
  rain: LIMITS.monthMm,
  sun: LIMITS.sunshineH,
};
export const MEANS_FROM_YEAR = 1991;
export const MEANS_TO_YEAR = 2020;
/** WMO asks for ten years before it speaks of a provisional normal. */
export const MEANS_LEAST_YEARS = 10;

const isHeader = (text: string): boolean => /^\s*yyyy\s+mm\s/.test(text);
const LATITUDE = /\bLat(?:itude)?:?\s*(-?\d{1,3}(?:\.\d+)?)/i;
const LONGITUDE = /\bLon(?:gitude)?:?\s*(-?\d{1,3}(?:\.\d+)?)/i;
const HEIGHT = /(-?\d{1,4})\s*m(?:etres?)?\s+amsl/i;

const meanOf = (values: readonly (number | null)[], least: number, decimals: number): { mean: number | null; count: number } => {
  const known = values.filter((v) => v !== null);
  return { mean: known.length < least ? null : rounded(known.reduce((a, b) => a + b, 0) / known.length, decimals), count: known.length };
};

/** Means of a run of years from a series by year; provisional figures are left out. */
export const meansOfSeries = (series: readonly YearMonth[], x: { fromYear: number; toYear: number; leastYears: number }): MonthRecord[] =>
  Array.from({ length: 12 }, (_, m) => {
    const rows = series.filter((r) => r.month === m + 1 && r.year >= x.fromYear && r.year <= x.toYear && !r.provisional);
    const mean = (pick: (r: YearMonth) => number | null, decimals = 2): number | null => meanOf(rows.map(pick), x.leastYears, decimals).mean;
    const both = rows.filter((r) => r.tMaxC !== null && r.tMinC !== null).length;
    return {
      ...emptyMonth(),
      tMaxC: mean((r) => r.tMaxC),
      tMinC: mean((r) => r.tMinC),
      frostDaysD: mean((r) => r.frostDaysD),
      precipitationMm: mean((r) => r.precipitationMm),
      sunshineH: mean((r) => r.sunshineH),
      yearsCount: both,
    };
  });

class MetOffice implements LineParser {
  private readonly reader: FieldReader;
  private name = '';
  private readonly locations: { text: string; line: number }[] = [];
  private columns: string[] | null = null;
  private unitsRead = false;
  private readonly series: YearMonth[] = [];
  private readonly seen = new Map<number, number>();
  private readonly lastLineOfMonth: number[] = Array.from({ length: 12 }, () => 0);
  private provisionalCount = 0;
  private closed = false;

  constructor(private readonly context: ParserContext) {
    this.reader = new FieldReader(context.faults);
  }

  line(text: string, number: number): boolean {
    if (text.trim() === '') return true;
    if (this.columns) this.row(text, number);
    else if (isHeader(text)) this.header(text, number);
    else if (this.name === '') this.name = tidyName(text);
    else if (LATITUDE.test(text) || HEIGHT.test(text)) this.locations.push({ text, line: number });
    return true;
  }

  private header(text: string, line: number): void {
    this.columns = text.trim().split(/\s+/);
    for (const column of NEEDED)
      if (!this.columns.includes(column))
        this.context.faults.add({
          line,
          column,
          code: 'missing-column',
          message: `there is no column ${column}`,
          remedy: 'Send the file as it was published.',
        });
  }

  private units(words: readonly string[], line: number): void {
    this.unitsRead = true;
    const columns = (this.columns ?? []).slice(2);
    words.forEach((word, i) => {
      const column = columns[i] ?? '';
      const unit = UNITS[column];
      if (unit !== undefined && word.toLowerCase() !== unit)
        this.context.faults.add({
          line,
          column,
          code: 'unknown-unit',
          message: `${column} is in "${shown(word)}", not in ${unit}`,
          remedy: 'Send the file as it was published.',
        });
    });
  }

  private row(text: string, line: number): void {
    const words = text.trim().split(/\s+/);
    if (!this.unitsRead && /^[a-z]/i.test(words[0] ?? '')) return this.units(words, line);
    this.unitsRead = true;
    const { faults } = this.context;
    if (/closed/i.test(text) && !/^\d{4}$/.test(words[0] ?? '')) {
      this.closed = true;
      return;
    }
    const columns = this.columns ?? [];
    const provisional = /^provisional$/i.test(words.at(-1) ?? '');
    if (provisional) words.pop();
    if (words.length !== columns.length) {
      faults.add({
        line,
        code: 'field-count',
        message: `${words.length} figures where the header has ${columns.length}`,
        remedy: 'Look whether the line is cut off.',
      });
      return;
    }
    const word = (column: Column): string => words[columns.indexOf(column)] ?? '---';
    const [year, month] = [Number(word('yyyy')), Number(word('mm'))];
    if (!/^\d{4}$/.test(word('yyyy')) || !/^\d{1,2}$/.test(word('mm')) || month < 1 || month > 12) {
      faults.add({
        line,
        column: 'mm',
        code: 'not-a-date',
        message: `"${shown(word('yyyy'))} ${shown(word('mm'))}" is not a year and a month`,
        remedy: 'Send the file as it was published.',
      });
      return;
    }
    const before = this.seen.get(year * 12 + month);
    if (before !== undefined) {
      faults.add({ line, code: 'duplicate-row', message: `${year}-${month} stands on line ${before} already`, remedy: 'Keep one row a month.' });
      return;
    }
    this.seen.set(year * 12 + month, line);
    this.lastLineOfMonth[month - 1] = line;
    this.keep(word, { year, month, line, provisional, raw: text });
  }

  private keep(word: (column: Column) => string, x: { year: number; month: number; line: number; provisional: boolean; raw: string }): void {
    const convert = unitAnswer(this.context.options.answers);
    const value = (column: 'tmax' | 'tmin' | 'af' | 'rain' | 'sun'): number | null => {
      const raw = word(column);
      if (/^-{3}[*#$]*$/.test(raw)) return null;
      const at = { line: x.line, column };
      const number = this.reader.number(raw.replace(/(?<![*#$])[*#$]+$/, ''), at);
      return this.reader.within(number === null ? null : column === 'tmax' || column === 'tmin' ? convert(number) : number, COLUMN_LIMITS[column], at);
    };
    if (x.provisional) this.provisionalCount++;
    this.series.push({
      year: x.year,
      month: x.month,
      tMaxC: value('tmax'),
      tMinC: value('tmin'),
      frostDaysD: value('af'),
      precipitationMm: value('rain'),
      sunshineH: value('sun'),
      estimated: x.raw.includes('*'),
      provisional: x.provisional,
    });
  }

  /** The last of the places: a station that moved stands where the newest figures were taken. */
  private placeOf(): FilePlace | null {
    const at = this.locations.findLast((l) => LATITUDE.test(l.text) && LONGITUDE.test(l.text));
    const [latitude, longitude] = [numberOf(LATITUDE.exec(at?.text ?? '')?.[1] ?? ''), numberOf(LONGITUDE.exec(at?.text ?? '')?.[1] ?? '')];
    if (!at || latitude === null || longitude === null) {
      this.context.faults.add({
        line: this.locations[0]?.line ?? 2,
        code: 'missing-header',
        message: 'no line gives "Lat" and "Lon"',
        remedy: 'Send the file as it was published.',
      });
      return null;
    }
    const height = this.locations.findLast((l) => HEIGHT.test(l.text));
    const coordinates = coordinatesOf({ latitudeDeg: latitude, longitudeDeg: longitude }, at.line, this.context);
    return (
      coordinates && {
        stationId: null,
        stationName: this.name,
        country: 'United Kingdom',
        ...coordinates,
        elevationM: numberOf(HEIGHT.exec(height?.text ?? '')?.[1] ?? ''),
        zoneH: null,
      }
    );
  }

  end(): MonthlyFile | null {
    const { faults, remarks, options } = this.context;
    if (!this.columns || this.series.length === 0) {
      if (faults.count === 0) faults.add({ line: 0, code: 'truncated', message: 'no row of figures follows the header', remedy: 'Send the whole file.' });
      return null;
    }
    const place = this.placeOf();
    if (!place) return null;
    const [fromYear, toYear] = [options.meansFromYear ?? MEANS_FROM_YEAR, options.meansToYear ?? MEANS_TO_YEAR];
    const leastYears = options.meansLeastYears ?? MEANS_LEAST_YEARS;
    const months = meansOfSeries(this.series, { fromYear, toYear, leastYears });
    const few = months.filter((m) => (m.yearsCount ?? 0) < leastYears).length;
    if (few > 0) remarks.add('few-years', `${few} months have fewer than ${leastYears} years within ${fromYear}-${toYear}`, { count: few });
    if (this.provisionalCount > 0)
      remarks.add('provisional-left-out', 'provisional months are in the series and not in the means', { count: this.provisionalCount });
    const estimated = this.series.filter((r) => r.estimated).length;
    if (estimated > 0) remarks.add('estimated', 'months with an estimated figure', { count: estimated });
    judgeMonths(months, this.lastLineOfMonth, this.context);
    judgeTemperatures(place, months, this.context);
    return {
      kind: 'monthly',
      place,
      source: {
        formatId: 'metoffice-historic',
        variant: this.closed ? 'closed station' : 'historic station data',
        publisher: 'Met Office, United Kingdom',
        period: `${fromYear}-${toYear}`,
        kind: 'means',
        licenceNote: 'UK Open Government Licence v3.0',
        credit: 'Contains public sector information of the Met Office, licensed under the Open Government Licence v3.0',
        statements: this.locations.map((l) => tidyName(l.text, 200)),
      },
      months,
      annualExtremeMinC: null,
      annualExtremeMinYearsCount: null,
      series: this.series,
    };
  }
}

export const metOffice: FormatDoor = {
  id: 'metoffice-historic',
  fits: (head) => (head.some((l) => isHeader(l) && /tmax\s+tmin/.test(l)) ? 'the header "yyyy mm tmax tmin" of a historic station' : null),
  start: (context) => new MetOffice(context),
};
