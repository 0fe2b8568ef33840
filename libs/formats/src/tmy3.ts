import type { FilePlace, HourlyFile, HourlyValue } from './climate-file.js';
import { fieldsOf, numberOf } from './csv.js';
import { shown } from './faults.js';
import { HourlyYear, type HourValues } from './hourly.js';
import { tidyName } from './lines.js';
import { FieldReader, LIMITS, type FormatDoor, type LineParser, type ParserContext } from './parser.js';
import { coordinatesOf, judgeStationNumber, unitAnswer } from './place.js';
import { Table } from './table.js';

/**
 * TMY3 hourly CSV of the U.S. National Renewable Energy Laboratory: a line with the station, a line of names (68, or 71 with
 * present weather), rows `MM/DD/YYYY,HH:MM` with 24:00 as the last hour of a day. -9900 is missing; pressure is in millibar.
 */
const MISSING = -9900;
const DATE = 'Date (MM/DD/YYYY)';
const TIME = 'Time (HH:MM)';
const COLUMNS: readonly (readonly [column: string, name: HourlyValue, factor: number])[] = [
  ['GHI (W/m^2)', 'globalWPerM2', 1],
  ['DNI (W/m^2)', 'beamNormalWPerM2', 1],
  ['DHI (W/m^2)', 'diffuseWPerM2', 1],
  ['TotCld (tenths)', 'totalCloudFrac', 0.1],
  ['OpqCld (tenths)', 'opaqueCloudFrac', 0.1],
  ['Dry-bulb (C)', 'airC', 1],
  ['Dew-point (C)', 'dewPointC', 1],
  ['RHum (%)', 'relativeHumidityFrac', 0.01],
  ['Pressure (mbar)', 'pressurePa', 100],
  ['Wdir (degrees)', 'windFromDeg', 1],
  ['Wspd (m/s)', 'windMPerS', 1],
  ['Alb (unitless)', 'albedoFrac', 1],
  ['Lprecip depth (mm)', 'rainMm', 1],
];

class Tmy3 implements LineParser {
  private readonly year: HourlyYear;
  private readonly reader: FieldReader;
  private readonly table: Table;
  private place: FilePlace | null = null;
  private placeLine = 0;
  private readonly toCelsius: (t: number) => number;

  constructor(private readonly context: ParserContext) {
    this.year = new HourlyYear(context);
    this.reader = new FieldReader(context.faults);
    this.table = new Table(context, [DATE, TIME, 'GHI (W/m^2)', 'DNI (W/m^2)', 'DHI (W/m^2)', 'Dry-bulb (C)']);
    this.toCelsius = unitAnswer(context.options.answers);
  }

  line(text: string, number: number): boolean {
    if (text.trim() === '') return true;
    if (!this.placeLine) return this.station(text, number);
    if (!this.table.hasHeader) return this.table.header(text, number);
    const fields = this.table.row(text, number);
    return fields ? this.row(fields, number) : true;
  }

  private station(text: string, line: number): boolean {
    this.placeLine = line;
    const fields = fieldsOf(text) ?? [];
    const [zone, latitudeDeg, longitudeDeg, elevation] = [3, 4, 5, 6].map((i) => numberOf(fields[i] ?? ''));
    if (typeof zone !== 'number' || typeof latitudeDeg !== 'number' || typeof longitudeDeg !== 'number' || typeof elevation !== 'number') {
      this.context.faults.add({
        line,
        code: 'not-a-number',
        message: 'the first line is not id, name, state, time zone, latitude, longitude, height',
        remedy: 'Send the file with its station line.',
      });
      return false;
    }
    const at = coordinatesOf({ latitudeDeg, longitudeDeg }, line, this.context);
    const zoneH = this.reader.within(zone, LIMITS.zoneH, { line, column: 'time zone' });
    const elevationM = this.reader.within(elevation, LIMITS.elevationM, { line, column: 'elevation' });
    if (!at || zoneH === null) return false;
    this.place = {
      stationId: tidyName(fields[0] ?? '', 40),
      stationName: tidyName(`${fields[1] ?? ''}, ${fields[2] ?? ''}`),
      country: 'US',
      ...at,
      elevationM,
      zoneH,
    };
    judgeStationNumber(this.place, line, this.context);
    return true;
  }

  private row(fields: readonly string[], line: number): boolean {
    const date = /^(\d{1,2})\/(\d{1,2})\/(\d{4})$/.exec(this.table.field(fields, DATE));
    const time = /^(\d{1,2}):(\d{2})$/.exec(this.table.field(fields, TIME));
    if (!date || !time) {
      this.context.faults.add({
        line,
        column: date ? TIME : DATE,
        code: 'not-a-date',
        message: `"${shown(this.table.field(fields, date ? TIME : DATE))}" is not of the form ${date ? 'HH:MM' : 'MM/DD/YYYY'}`,
        remedy: 'Send the file as it was published.',
      });
      return true;
    }
    if (time[2] !== '00') {
      this.context.faults.add({
        line,
        column: TIME,
        code: 'not-hourly',
        message: `${shown(time[0])} is not a full hour`,
        remedy: 'Send hourly rows that end at full hours.',
      });
      return true;
    }
    const values: HourValues = {};
    for (const [column, name, factor] of COLUMNS) {
      const raw = this.table.field(fields, column);
      if (raw === '' || (name === 'rainMm' && !this.isOneHour(fields))) continue;
      const value = this.reader.number(raw, { line, column });
      if (value === null || value <= MISSING) continue;
      values[name] = name === 'airC' || name === 'dewPointC' ? this.toCelsius(value) : factor === 1 ? value : Math.round(value * factor * 1e6) / 1e6;
    }
    return this.year.add({ line, year: Number(date[3]), month: Number(date[1]), day: Number(date[2]), hourEnding: Number(time[1]) }, values);
  }

  /** Rain of six hours or of a day stands in the row of its last hour: it is no hour's rain. */
  private isOneHour(fields: readonly string[]): boolean {
    const hours = this.table.field(fields, 'Lprecip quantity (hr)');
    if (hours === '' || numberOf(hours) === 1 || numberOf(hours) === MISSING) return true;
    this.context.remarks.add('not-believed', 'rain of more than one hour in one row was left out', { column: 'rainMm' });
    return false;
  }

  end(at: { cutOff: boolean }): HourlyFile | null {
    if (!this.place) {
      if (this.context.faults.count === 0)
        this.context.faults.add({ line: 1, code: 'missing-header', message: 'no station line', remedy: 'Send the whole file.' });
      return null;
    }
    return this.year.finish(
      {
        place: this.place,
        source: {
          formatId: 'tmy3',
          variant: this.table.columns.length > 68 ? 'TMY3 with present weather' : 'TMY3',
          publisher: 'National Renewable Energy Laboratory, U.S. Department of Energy',
          period: null,
          kind: 'typicalYear',
          licenceNote: 'Work of the U.S. Government and its laboratory, free to use; the publisher asks to be named.',
          credit: 'National Renewable Energy Laboratory, typical meteorological year TMY3',
          statements: [],
        },
        groundTemperatures: [],
      },
      this.placeLine,
      at.cutOff,
    );
  }
}

export const tmy3: FormatDoor = {
  id: 'tmy3',
  fits: (head) => (head.slice(0, 5).some((l) => l.includes(DATE) && l.includes(TIME)) ? `the header names "${DATE}" and "${TIME}"` : null),
  start: (context) => new Tmy3(context),
};
