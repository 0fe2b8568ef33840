import type { FilePlace, HourlyFile, HourlyValue } from './climate-file.js';
import { fieldsOf, numberOf } from './csv.js';
import { shown } from './faults.js';
import { HourlyYear, type HourValues } from './hourly.js';
import { tidyName } from './lines.js';
import { FieldReader, LIMITS, type FormatDoor, type LineParser, type ParserContext } from './parser.js';
import { coordinatesOf, judgeStationNumber, unitAnswer } from './place.js';

/**
 * EPW hourly weather (EnergyPlus weather file, data dictionary of the EnergyPlus auxiliary programs). Header lines are known
 * by their first word, not by their number; 35 fields a row of which the last few may be absent. A value at or over its code
 * for missing is missing. Irradiation of an hour in Wh/m2 is its mean in W/m2. Design conditions in the header are licensed
 * and are dropped.
 */
interface EpwField {
  at: number;
  name: HourlyValue;
  /** At or over this, the value is missing. */
  missing: number;
  factor: number;
}
const f = (at: number, name: HourlyValue, missing: number, factor = 1): EpwField => ({ at, name, missing, factor });
const FIELDS: readonly EpwField[] = [
  f(6, 'airC', 99.9),
  f(7, 'dewPointC', 99.9),
  f(8, 'relativeHumidityFrac', 999, 0.01),
  f(9, 'pressurePa', 999_999),
  f(12, 'skyInfraredWPerM2', 9999),
  f(13, 'globalWPerM2', 9999),
  f(14, 'beamNormalWPerM2', 9999),
  f(15, 'diffuseWPerM2', 9999),
  f(20, 'windFromDeg', 999),
  f(21, 'windMPerS', 999),
  f(22, 'totalCloudFrac', 99, 0.1),
  f(23, 'opaqueCloudFrac', 99, 0.1),
  f(30, 'snowDepthM', 999, 0.01),
  f(32, 'albedoFrac', 999),
  f(33, 'rainMm', 999),
];
/** Codes for missing of other formats, met in files that were converted carelessly. */
const FOREIGN_MISSING = new Set([-999, -9999, -9900]);
const RAIN_HOURS_FIELD = 34;
const RAIN_HOURS_MISSING = 99;
const NEEDED_FIELDS = 22;
const MOST_FIELDS = 36;
const KEYWORDS = [
  'LOCATION',
  'DESIGN CONDITIONS',
  'TYPICAL/EXTREME PERIODS',
  'GROUND TEMPERATURES',
  'HOLIDAYS/DAYLIGHT SAVING',
  'COMMENTS 1',
  'COMMENTS 2',
  'DATA PERIODS',
];

/** Latitude, longitude, zone and height of a LOCATION line: at their places, or, where a field was put in, the last four numbers. */
const locationNumbers = (fields: readonly string[]): number[] | null => {
  const read = (from: number): number[] | null => {
    const list = fields.slice(from, from + 4).map((x) => numberOf(x));
    return list.length === 4 && list.every((x) => x !== null) ? (list as number[]) : null;
  };
  const usual = read(6);
  if (usual && Math.abs(usual[2] ?? 99) <= 14) return usual;
  for (let from = fields.length - 4; from > 4; from--) {
    const list = read(from);
    if (list) return list;
  }
  return null;
};

class Epw implements LineParser {
  private readonly year: HourlyYear;
  private readonly reader: FieldReader;
  private place: FilePlace | null = null;
  private placeLine = 0;
  private provider = '';
  private readonly statements: string[] = [];
  private ground: HourlyFile['groundTemperatures'] = [];
  private inRows = false;
  private hasPeriods = false;
  private readonly toCelsius: (t: number) => number;

  constructor(private readonly context: ParserContext) {
    this.year = new HourlyYear(context);
    this.reader = new FieldReader(context.faults);
    this.toCelsius = unitAnswer(context.options.answers);
  }

  line(text: string, number: number): boolean {
    if (text.trim() === '') return true;
    const fields = fieldsOf(text);
    if (!fields) {
      this.context.faults.add({
        line: number,
        code: 'unclosed-quote',
        message: 'a quoted field is not closed on its line',
        remedy: 'Close the quote, or look whether the line is cut off.',
      });
      return true;
    }
    if (!this.inRows && !/^\d{4}$/.test(fields[0] ?? '')) return this.header(fields, number);
    if (!this.inRows && !this.startRows(number)) return false;
    return this.row(fields, number);
  }

  private header(fields: readonly string[], line: number): boolean {
    const word = (fields[0] ?? '').toUpperCase();
    if (word === 'LOCATION') this.location(fields, line);
    else if (word === 'GROUND TEMPERATURES') this.groundTemperatures(fields);
    else if (word === 'DATA PERIODS') return this.periods(fields, line);
    else if (word === 'DESIGN CONDITIONS') {
      if (fields.slice(2).some((x) => x !== ''))
        this.context.remarks.add('design-conditions-left-out', 'design conditions in the header are licensed and are not kept', { line });
    } else if (word === 'COMMENTS 1' || word === 'COMMENTS 2') {
      const comment = tidyName(
        fields
          .slice(1)
          .filter((x) => x !== '')
          .join(', '),
        300,
      );
      if (comment !== '') this.statements.push(comment);
    } else if (!KEYWORDS.some((k) => word.startsWith(k))) {
      this.context.faults.add({
        line,
        code: 'missing-header',
        message: `"${shown(word)}" is no header word of this format`,
        remedy: 'Send the file as it was published.',
      });
      return false;
    }
    return true;
  }

  private location(fields: readonly string[], line: number): void {
    const numbers = locationNumbers(fields);
    if (!numbers) {
      this.context.faults.add({
        line,
        column: 'LOCATION',
        code: 'not-a-number',
        message: 'latitude, longitude, time zone and height are not four numbers',
        remedy: 'Correct the LOCATION line.',
      });
      return;
    }
    const [latitudeDeg = 0, longitudeDeg = 0, zone = 0, elevation = 0] = numbers;
    const at = coordinatesOf({ latitudeDeg, longitudeDeg }, line, this.context);
    const zoneH = this.reader.within(zone, LIMITS.zoneH, { line, column: 'time zone' });
    const elevationM = this.reader.within(elevation, LIMITS.elevationM, { line, column: 'elevation' });
    const text = (i: number, most: number): string | null => {
      const value = tidyName(fields[i] ?? '', most);
      return value === '' || value === '-' || value.toLowerCase() === 'unknown' ? null : value;
    };
    this.provider = text(4, 80) ?? '';
    this.placeLine = line;
    if (!at || zoneH === null) return;
    this.place = { stationId: text(5, 40), stationName: text(1, 120) ?? 'not named', country: text(3, 80), ...at, elevationM, zoneH };
    judgeStationNumber(this.place, line, this.context);
  }

  /** Sets of depth, three soil properties (often blank) and twelve months; a broken set is left out, it is only shown. */
  private groundTemperatures(fields: readonly string[]): void {
    const sets = Math.min(20, numberOf(fields[1] ?? '') ?? 0);
    for (let k = 0; k < sets; k++) {
      const set = fields.slice(2 + 16 * k, 18 + 16 * k).map((x) => numberOf(x));
      const depthM = set[0];
      const monthsC = set.slice(4).filter((x) => x !== null);
      if (typeof depthM === 'number' && monthsC.length === 12) this.ground.push({ depthM, monthsC });
    }
    if (this.ground.length > 0)
      this.context.remarks.add('ground-temperatures', 'ground temperatures in the header are computed means down to the depth, under undisturbed ground');
  }

  private periods(fields: readonly string[], line: number): boolean {
    this.hasPeriods = true;
    const [periods, perHour] = [numberOf(fields[1] ?? ''), numberOf(fields[2] ?? '')];
    if (periods === 1 && perHour === 1) return true;
    this.context.faults.add({
      line,
      column: 'DATA PERIODS',
      code: 'not-hourly',
      message: `${shown(fields[1] ?? '')} data periods with ${shown(fields[2] ?? '')} rows an hour, where one with one row is read`,
      remedy: 'Send one period of hourly rows.',
    });
    return false;
  }

  private startRows(line: number): boolean {
    this.inRows = true;
    const { faults } = this.context;
    if (!this.place && faults.count === 0)
      faults.add({
        line,
        column: 'LOCATION',
        code: 'missing-header',
        message: 'no LOCATION line stands before the rows',
        remedy: 'Send the file with its eight header lines.',
      });
    if (!this.hasPeriods)
      faults.add({
        line,
        column: 'DATA PERIODS',
        code: 'missing-header',
        message: 'no DATA PERIODS line stands before the rows',
        remedy: 'Send the file with its eight header lines.',
      });
    return this.place !== null && this.hasPeriods;
  }

  private row(fields: readonly string[], line: number): boolean {
    const { faults, remarks } = this.context;
    if (fields.length < NEEDED_FIELDS || fields.length > MOST_FIELDS) {
      faults.add({
        line,
        code: 'field-count',
        message: `${fields.length} fields where a row has 35 (22 at the least)`,
        remedy: 'Look whether the line is cut off.',
      });
      return true;
    }
    const minute = fields[4] ?? '';
    if (minute !== '0' && minute !== '00' && minute !== '60')
      remarks.add('minute-field', `the minute field is "${shown(minute, 8)}": it is not used`, { line });
    const values: HourValues = {};
    for (const { at, name, missing, factor } of FIELDS) {
      const raw = fields[at] ?? '';
      if (raw === '' || (name === 'rainMm' && !this.isOneHour(fields))) continue;
      const value = this.reader.number(raw, { line, column: name });
      if (value === null || value >= missing || FOREIGN_MISSING.has(value)) continue;
      values[name] = name === 'airC' || name === 'dewPointC' ? this.toCelsius(value) : factor === 1 ? value : Math.round(value * factor * 1e6) / 1e6;
    }
    return this.year.add({ line, year: numberOf(fields[0] ?? ''), month: Number(fields[1]), day: Number(fields[2]), hourEnding: Number(fields[3]) }, values);
  }

  /** Rain of six hours or of a day stands in the row of its last hour: it is no hour's rain. */
  private isOneHour(fields: readonly string[]): boolean {
    const hours = numberOf(fields[RAIN_HOURS_FIELD] ?? '');
    if (hours === null || hours <= 1 || hours >= RAIN_HOURS_MISSING) return true;
    this.context.remarks.add('not-believed', 'rain of more than one hour in one row was left out', { column: 'rainMm' });
    return false;
  }

  end(at: { cutOff: boolean }): HourlyFile | null {
    if (!this.place) {
      if (this.context.faults.count === 0)
        this.context.faults.add({ line: 1, code: 'missing-header', message: 'no LOCATION line', remedy: 'Send the whole file.' });
      return null;
    }
    return this.year.finish(
      {
        place: this.place,
        source: {
          formatId: 'epw',
          variant: this.provider === '' ? 'EPW' : `EPW, ${this.provider}`,
          publisher: this.provider === '' ? 'not stated in the file' : this.provider,
          period: /(\d{4}\s*-\s*\d{4})/.exec(this.statements.join(' '))?.[1]?.replaceAll(' ', '') ?? null,
          kind: 'typicalYear',
          licenceNote: "Terms are those of the file's publisher: some forbid passing the file on. The figures are kept for this garden only.",
          credit: [this.provider, ...this.statements]
            .filter((s) => s !== '')
            .join('; ')
            .slice(0, 200),
          statements: this.statements,
        },
        groundTemperatures: this.ground,
      },
      this.placeLine,
      at.cutOff,
    );
  }
}

export const epw: FormatDoor = {
  id: 'epw',
  fits: (head) => (/^"?\s*LOCATION"?\s*,/i.test(head.find((l) => l.trim() !== '') ?? '') ? 'the first line is LOCATION' : null),
  start: (context) => new Epw(context),
};
