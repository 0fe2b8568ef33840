import type { FilePlace, HourlyFile, HourlyValue } from './climate-file.js';
import { numberOf, rounded } from './csv.js';
import { HOURLY_LIMITS, HourlyYear, type HourValues } from './hourly.js';
import { judgeColumns, ownFormatOf, OwnHead, ownValue, plainNumber, type OwnColumn } from './own-head.js';
import { FieldReader, type FormatDoor, type LineParser, type ParserContext } from './parser.js';
import { Table } from './table.js';

/** Our own form of a year of hours, documented in docs/formats/own-csv.md. Hours run from 1 to 24, each the hour that ends. */
const FORMAT = 'lathwork-hours-1';
const KEYS = ['year', 'month', 'day', 'hour_ending'];
const named = (figure: HourlyValue, name: string, unit?: OwnColumn<HourlyValue>['unit']): OwnColumn<HourlyValue> => ({
  name,
  figure,
  limits: HOURLY_LIMITS[figure],
  ...(unit ? { unit } : {}),
});
export const OWN_HOUR_COLUMNS: readonly OwnColumn<HourlyValue>[] = [
  named('airC', 'air_c', 'celsius'),
  named('airC', 'air_f', 'fahrenheit'),
  named('dewPointC', 'dew_point_c', 'celsius'),
  named('dewPointC', 'dew_point_f', 'fahrenheit'),
  named('relativeHumidityFrac', 'relative_humidity_frac'),
  named('relativeHumidityFrac', 'relative_humidity_percent', 'percent'),
  named('pressurePa', 'pressure_pa'),
  named('skyInfraredWPerM2', 'sky_infrared_w_per_m2'),
  named('globalWPerM2', 'global_w_per_m2'),
  named('beamNormalWPerM2', 'beam_normal_w_per_m2'),
  named('diffuseWPerM2', 'diffuse_w_per_m2'),
  named('windFromDeg', 'wind_from_deg'),
  named('windMPerS', 'wind_m_per_s'),
  named('totalCloudFrac', 'total_cloud_frac'),
  named('opaqueCloudFrac', 'opaque_cloud_frac'),
  named('snowDepthM', 'snow_depth_m'),
  named('albedoFrac', 'albedo_frac'),
  named('rainMm', 'rain_mm'),
  named('rainMm', 'rain_in', 'inch'),
];

class OwnHours implements LineParser {
  private readonly head: OwnHead;
  private readonly table: Table;
  private readonly reader: FieldReader;
  private readonly year: HourlyYear;
  private place: FilePlace | null = null;

  constructor(private readonly context: ParserContext) {
    this.head = new OwnHead('own-hours', FORMAT, context);
    this.table = new Table(context, ['month', 'day', 'hour_ending'], (name) => name.toLowerCase());
    this.reader = new FieldReader(context.faults);
    this.year = new HourlyYear(context);
  }

  line(text: string, line: number): boolean {
    if (text.trim() === '' || text.startsWith('#') || /^[\s,]+$/.test(text)) return true;
    if (this.table.hasHeader) return this.row(text, line);
    if (!/^"?(?:year|month)"?\s*,/i.test(text)) this.head.line(text, line);
    else return this.header(text, line);
    return true;
  }

  private header(text: string, line: number): boolean {
    const fine = this.table.header(text, line);
    judgeColumns(this.table.columns, OWN_HOUR_COLUMNS, KEYS, { line, context: this.context });
    if (!this.table.has('air_c') && !this.table.has('air_f'))
      this.context.faults.add({
        line,
        column: 'air_c',
        code: 'missing-column',
        message: 'there is no column air_c or air_f',
        remedy: 'Give the air temperature of each hour.',
      });
    this.place = this.head.place(line, ['zone_h']);
    return fine && this.place !== null;
  }

  private row(text: string, line: number): boolean {
    const fields = this.table.row(text, line);
    if (!fields) return true;
    const values: HourValues = {};
    for (const column of OWN_HOUR_COLUMNS) {
      const raw = this.table.field(fields, column.name);
      if (raw === '') continue;
      const value = this.reader.number(raw, { line, column: column.name });
      if (value !== null) values[column.figure] = rounded(ownValue(value, column.unit, this.context), 4);
    }
    const date = (column: string): number => plainNumber(this.table.field(fields, column));
    return this.year.add(
      { line, year: numberOf(this.table.field(fields, 'year')), month: date('month'), day: date('day'), hourEnding: date('hour_ending') },
      values,
    );
  }

  end(at: { cutOff: boolean }): HourlyFile | null {
    if (!this.place) {
      if (this.context.faults.count === 0)
        this.context.faults.add({ line: 0, code: 'truncated', message: 'the file ends before the first hour', remedy: 'Send the whole file.' });
      return null;
    }
    return this.year.finish({ place: this.place, source: this.head.source('ownRecord'), groundTemperatures: [] }, this.head.lineOf('longitude_deg'), at.cutOff);
  }
}

export const ownHours: FormatDoor = {
  id: 'own-hours',
  fits: (head) => (ownFormatOf(head)?.startsWith('lathwork-hours-') ? 'the first line names our own form of hours' : null),
  start: (context) => new OwnHours(context),
};
