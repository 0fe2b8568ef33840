import type { AnnualFile, FilePlace, FileSource, MonthlyFile, MonthRecord } from './climate-file.js';
import { fieldsOf } from './csv.js';
import { shown } from './faults.js';
import { tidyName } from './lines.js';
import { frostOf } from './ncei-frost.js';
import { NceiRow, type Layout } from './ncei-row.js';
import { emptyMonths, FieldReader, judgeMonths, LIMITS, type FormatDoor, type LineParser, type ParserContext } from './parser.js';
import { coordinatesOf, judgeTemperatures } from './place.js';
import { Table } from './table.js';

/**
 * U.S. Climate Normals of NOAA's National Centers for Environmental Information, one station a file, layouts of 1991-2020,
 * 2006-2020 and 1981-2010. Columns are found by name because their order and the order of the two flags differ from file to
 * file. Temperatures are Fahrenheit, rain and snow inches; the layout of 1981-2010 has tenths of a degree, hundredths of an
 * inch of rain and tenths of an inch of snow, without a decimal point.
 */
const PUBLISHER = 'NOAA National Centers for Environmental Information';
const LICENCE = 'Work of the U.S. Government, no copyright in the United States; the publisher asks to be named.';

const countryOf = (name: string): string | null => (/,\s/.test(name) ? (/\b([A-Z]{2})$/.exec(name)?.[1] ?? null) : null);

/** Things that both parsers need: the header, the station, and that there is only one. */
class NceiTable {
  readonly table: Table;
  layout: Layout = '1991-2020';
  place: FilePlace | null = null;
  private stationId: string | null = null;

  constructor(private readonly context: ParserContext) {
    this.table = new Table(context, ['STATION', 'LATITUDE', 'LONGITUDE']);
  }

  header(text: string, line: number): boolean {
    const fine = this.table.header(text, line);
    if (this.table.columns.some((c) => c.endsWith('_ATTRIBUTES'))) this.layout = '1981-2010';
    return fine;
  }

  row(text: string, line: number): NceiRow | null {
    const fields = this.table.row(text, line);
    if (!fields) return null;
    const row = new NceiRow(this.table, fields, line, this.layout, this.context);
    const id = row.text('STATION');
    if (this.stationId === null) {
      this.stationId = id;
      this.place = this.placeOf(row);
    } else if (this.stationId !== id) {
      this.context.faults.add({
        line,
        column: 'STATION',
        code: 'several-stations',
        message: `station ${shown(id)} follows ${shown(this.stationId)}`,
        remedy: 'Send the by-station file of one station.',
      });
      return null;
    }
    return row;
  }

  private placeOf(row: NceiRow): FilePlace | null {
    const reader = new FieldReader(this.context.faults);
    const read = (column: string): number | null => reader.number(row.text(column), { line: row.line, column });
    const [latitudeDeg, longitudeDeg] = [read('LATITUDE'), read('LONGITUDE')];
    const elevation = row.text('ELEVATION') === '' ? null : read('ELEVATION');
    if (latitudeDeg === null || longitudeDeg === null) return null;
    const at = coordinatesOf({ latitudeDeg, longitudeDeg }, row.line, this.context);
    const name = tidyName(row.text('NAME'));
    if (!at) return null;
    return {
      stationId: tidyName(row.text('STATION'), 40),
      stationName: name === '' ? tidyName(row.text('STATION'), 40) : name,
      country: countryOf(name),
      ...at,
      elevationM: elevation === null || elevation <= -999 ? null : reader.within(elevation, LIMITS.elevationM, { line: row.line, column: 'ELEVATION' }),
      zoneH: null,
    };
  }
}

/** Which run of years, from the counts of years: the newer two layouts have the same columns and do not say. */
const periodOf = (layout: Layout, years: readonly number[], standardWithFew: boolean): string | null => {
  if (layout === '1981-2010') return '1981-2010';
  const most = Math.max(0, ...years);
  if (most > 15) return '1991-2020';
  return most === 15 || standardWithFew ? '2006-2020' : null;
};

const sourceOf = (formatId: FileSource['formatId'], period: string | null): FileSource => ({
  formatId,
  variant: period ?? '1991-2020 or 2006-2020',
  publisher: PUBLISHER,
  period,
  kind: 'normals',
  licenceNote: LICENCE,
  credit: `${PUBLISHER}, U.S. Climate Normals ${period ?? ''}`.trim(),
  statements: [],
});

/** Years and flags of every variable that is looked at, to tell the run of years. */
class YearCounts {
  readonly all: number[] = [];
  standardWithFew = false;
  add(row: NceiRow, variables: readonly string[]): void {
    for (const variable of variables) {
      const years = row.years(variable);
      if (years === null) continue;
      this.all.push(years);
      if (row.completeness(variable) === 'S' && years <= 15) this.standardWithFew = true;
    }
  }
}

const MONTHLY_VARIABLES = ['MLY-TMAX-NORMAL', 'MLY-TMIN-NORMAL', 'MLY-TAVG-NORMAL', 'MLY-PRCP-NORMAL', 'MLY-SNOW-NORMAL'];

class NceiMonthly implements LineParser {
  private readonly ncei: NceiTable;
  private readonly months: MonthRecord[] = emptyMonths();
  private readonly lines: (number | undefined)[] = Array.from({ length: 12 }, () => undefined);
  private readonly years = new YearCounts();

  constructor(private readonly context: ParserContext) {
    this.ncei = new NceiTable(context);
  }

  line(text: string, number: number): boolean {
    if (text.trim() === '') return true;
    if (!this.ncei.table.hasHeader) return this.ncei.header(text, number);
    const row = this.ncei.row(text, number);
    if (row) this.month(row);
    return true;
  }

  private month(row: NceiRow): void {
    const raw = this.ncei.table.has('month') ? row.text('month') : row.text('DATE');
    const month = /^(?:\d{4}-)?(0?[1-9]|1[0-2])$/.exec(raw)?.[1];
    if (month === undefined) {
      this.context.faults.add({
        line: row.line,
        column: this.ncei.table.has('month') ? 'month' : 'DATE',
        code: 'not-a-date',
        message: `"${shown(raw)}" is not a month from 01 to 12`,
        remedy: 'Send the file as it was published.',
      });
      return;
    }
    const at = Number(month) - 1;
    if (this.lines[at] !== undefined) {
      this.context.faults.add({
        line: row.line,
        code: 'duplicate-row',
        message: `month ${at + 1} stands on line ${this.lines[at]} already`,
        remedy: 'Keep one row a month.',
      });
      return;
    }
    this.lines[at] = row.line;
    this.years.add(row, MONTHLY_VARIABLES);
    this.months[at] = {
      ...this.months[at]!,
      tMaxC: row.celsius('MLY-TMAX-NORMAL', LIMITS.tMaxC),
      tMinC: row.celsius('MLY-TMIN-NORMAL', LIMITS.tMinC),
      tMeanC: row.celsius('MLY-TAVG-NORMAL', LIMITS.tMaxC),
      tMinYearToYearK: row.kelvins('MLY-TMIN-STDDEV'),
      precipitationMm: row.millimetres('MLY-PRCP-NORMAL', 100, LIMITS.monthMm),
      snowfallMm: row.millimetres('MLY-SNOW-NORMAL', 10, LIMITS.snowfallMm),
      frostDaysD: row.days('MLY-TMIN-AVGNDS-LSTH032', LIMITS.daysD),
      yearsCount: row.years('MLY-TMIN-NORMAL') ?? row.years('MLY-PRCP-NORMAL'),
    };
  }

  /** A by-station file has twelve rows; rows that are absent up to its end say that it was cut off. */
  private judgeEnd(): void {
    const last = Math.max(...this.lines.flatMap((line, m) => (line === undefined ? [] : [m])));
    if (last === 11 || !Number.isFinite(last)) return;
    const line = this.lines[last] ?? 0;
    this.context.faults.add({
      line,
      code: 'truncated',
      message: `the file ends after month ${last + 1} on line ${line}`,
      remedy: 'Send the whole file again: it has a row for each month.',
    });
  }

  end(): MonthlyFile | null {
    const { faults } = this.context;
    const { place } = this.ncei;
    if (!place && faults.count === 0) faults.add({ line: 0, code: 'truncated', message: 'no row follows the header', remedy: 'Send the whole file.' });
    if (!place) return null;
    this.judgeEnd();
    judgeMonths(
      this.months,
      this.lines.map((l) => l ?? 0),
      this.context,
    );
    judgeTemperatures(place, this.months, this.context);
    const period = periodOf(this.ncei.layout, this.years.all, this.years.standardWithFew);
    return {
      kind: 'monthly',
      place,
      source: sourceOf('ncei-normals-monthly', period),
      months: this.months,
      annualExtremeMinC: null,
      annualExtremeMinYearsCount: null,
      series: [],
    };
  }
}

const ANNUAL_VARIABLES = ['ANN-TMAX-NORMAL', 'ANN-TMIN-NORMAL', 'ANN-TAVG-NORMAL', 'ANN-PRCP-NORMAL', 'ANN-SNOW-NORMAL'];

class NceiAnnual implements LineParser {
  private readonly ncei: NceiTable;
  private readonly years = new YearCounts();
  private row: NceiRow | null = null;

  constructor(private readonly context: ParserContext) {
    this.ncei = new NceiTable(context);
  }

  line(text: string, number: number): boolean {
    if (text.trim() === '') return true;
    if (!this.ncei.table.hasHeader) return this.ncei.header(text, number);
    const row = this.ncei.row(text, number);
    if (!row) return true;
    if (this.row) {
      this.context.faults.add({
        line: number,
        code: 'duplicate-row',
        message: 'a second row of yearly figures',
        remedy: 'Send the by-station file of one station.',
      });
      return false;
    }
    this.row = row;
    return true;
  }

  end(): AnnualFile | null {
    const { faults } = this.context;
    const { row } = this;
    const { place } = this.ncei;
    if (!row || !place) {
      if (faults.count === 0) faults.add({ line: 0, code: 'truncated', message: 'no row follows the header', remedy: 'Send the whole file.' });
      return null;
    }
    this.years.add(row, ANNUAL_VARIABLES);
    const frost = frostOf(row, this.ncei.table.columns, this.context);
    const file: AnnualFile = {
      kind: 'annual',
      place,
      source: sourceOf('ncei-normals-annual', periodOf(this.ncei.layout, this.years.all, this.years.standardWithFew)),
      tMeanC: row.celsius('ANN-TAVG-NORMAL', LIMITS.tMaxC),
      tMaxC: row.celsius('ANN-TMAX-NORMAL', LIMITS.tMaxC),
      tMinC: row.celsius('ANN-TMIN-NORMAL', LIMITS.tMinC),
      precipitationMm: row.millimetres('ANN-PRCP-NORMAL', 100, { min: 0, max: 20_000 }),
      snowfallMm: row.millimetres('ANN-SNOW-NORMAL', 10, { min: 0, max: 60_000 }),
      frostDaysD: row.days('ANN-TMIN-AVGNDS-LSTH032', { min: 0, max: 366 }),
      frost,
    };
    if (frost.length === 0 && file.tMeanC === null && file.tMinC === null && file.precipitationMm === null)
      faults.add({
        line: row.line,
        code: 'nothing-usable',
        message: 'neither frost dates nor temperatures nor rain of the year',
        remedy: 'Choose a station with a record of temperatures.',
      });
    return file;
  }
}

/** A head that was cut within a quoted name still tells. */
const headerLine = (head: readonly string[]): string[] => {
  const first = head.find((l) => l.trim() !== '') ?? '';
  return fieldsOf(first) ?? fieldsOf(`${first}"`) ?? [];
};
const isNcei = (names: readonly string[]): boolean => ['STATION', 'LATITUDE', 'LONGITUDE'].every((n) => names.includes(n));

export const nceiMonthly: FormatDoor = {
  id: 'ncei-normals-monthly',
  fits: (head) => {
    const names = headerLine(head);
    return isNcei(names) && names.some((n) => n.startsWith('MLY-')) ? 'the header names STATION, LATITUDE, LONGITUDE and MLY- variables' : null;
  },
  start: (context) => new NceiMonthly(context),
};

export const nceiAnnual: FormatDoor = {
  id: 'ncei-normals-annual',
  fits: (head) => {
    const names = headerLine(head);
    return isNcei(names) && names.some((n) => n.startsWith('ANN-')) ? 'the header names STATION, LATITUDE, LONGITUDE and ANN- variables' : null;
  },
  start: (context) => new NceiAnnual(context),
};
