import type { ClimateInputs, ClimateMonthInputs } from '@lathwork/model';
import { fieldsOf } from './csv.js';

/** One station of the table of means. `null` is "no record" and is never filled in. */
export interface StationRecord {
  stationId: string;
  name: string;
  country: string;
  latitudeDeg: number;
  longitudeDeg: number;
  elevationM: number;
  yearsCount: number;
  /** January to December. */
  months: ClimateMonthInputs[];
  annualExtremeMinC: number | null;
  annualExtremeMinYearsCount: number | null;
}

export interface LineFault {
  line: number;
  column: string | null;
  code: 'missing-column' | 'field-count' | 'not-a-number' | 'out-of-range' | 'empty' | 'duplicate' | 'no-header' | 'unclosed-quote';
  message: string;
}

export interface StationTable {
  stations: StationRecord[];
  faults: LineFault[];
}

export const STATION_PERIOD = '2003-2021 means';
export const STATION_KIND = 'means';
export const STATION_CREDIT = 'Datenbasis: Deutscher Wetterdienst, Einzelwerte gemittelt';

interface Field {
  min: number;
  max: number;
  required?: true;
  whole?: true;
}
const SITE_FIELDS = {
  latitude_deg: { min: -90, max: 90, required: true },
  longitude_deg: { min: -180, max: 180, required: true },
  elevation_m: { min: -430, max: 9000, required: true },
  annual_extreme_min_c: { min: -90, max: 50 },
  annual_extreme_min_years_count: { min: 1, max: 300, whole: true },
  years_count: { min: 1, max: 300, required: true, whole: true },
} as const satisfies Record<string, Field>;
/** The limits are those of the plan's own inputs, so that a record that passes here is taken there. */
const MONTH_FIELDS = {
  t_max_c: { min: -80, max: 60 },
  t_min_c: { min: -90, max: 50 },
  vapour_pressure_pa: { min: 0, max: 6000 },
  precipitation_mm: { min: 0, max: 5000 },
  sunshine_h: { min: 0, max: 750 },
  absolute_min_mean_c: { min: -90, max: 50 },
} as const satisfies Record<string, Field>;

const MONTHS = Array.from({ length: 12 }, (_, m) => String(m + 1).padStart(2, '0'));
const TEXT_FIELDS = ['id', 'name', 'country'] as const;
const COLUMNS: readonly string[] = [...TEXT_FIELDS, ...Object.keys(SITE_FIELDS), ...Object.keys(MONTH_FIELDS).flatMap((f) => MONTHS.map((m) => `${f}_${m}`))];

class Line {
  readonly faults: LineFault[] = [];
  constructor(
    private readonly number: number,
    private readonly at: ReadonlyMap<string, number>,
    private readonly fields: readonly string[],
  ) {}

  text(column: string): string {
    const value = this.fields[this.at.get(column) ?? -1] ?? '';
    if (value === '') this.fault(column, 'empty', `${column} is empty`);
    return value;
  }

  value(column: string, limits: Field): number | null {
    const raw = this.fields[this.at.get(column) ?? -1] ?? '';
    if (raw === '') {
      if (limits.required) this.fault(column, 'empty', `${column} is empty`);
      return null;
    }
    if (!/^[-+]?\d+(\.\d+)?$/.test(raw) || (limits.whole && !/^\d+$/.test(raw))) {
      this.fault(column, 'not-a-number', `${column} is "${raw.slice(0, 20)}", not a ${limits.whole ? 'whole ' : ''}number`);
      return null;
    }
    const value = Number(raw);
    if (value < limits.min || value > limits.max) this.fault(column, 'out-of-range', `${column} is ${raw}, outside ${limits.min} to ${limits.max}`);
    return value === 0 ? 0 : value;
  }

  private fault(column: string, code: LineFault['code'], message: string): void {
    this.faults.push({ line: this.number, column, code, message });
  }
}

const stationOf = (line: Line): StationRecord => ({
  stationId: line.text('id'),
  name: line.text('name'),
  country: line.text('country'),
  latitudeDeg: line.value('latitude_deg', SITE_FIELDS.latitude_deg) ?? 0,
  longitudeDeg: line.value('longitude_deg', SITE_FIELDS.longitude_deg) ?? 0,
  elevationM: line.value('elevation_m', SITE_FIELDS.elevation_m) ?? 0,
  yearsCount: line.value('years_count', SITE_FIELDS.years_count) ?? 0,
  months: MONTHS.map((m) => ({
    tMaxC: line.value(`t_max_c_${m}`, MONTH_FIELDS.t_max_c),
    tMinC: line.value(`t_min_c_${m}`, MONTH_FIELDS.t_min_c),
    vapourPressurePa: line.value(`vapour_pressure_pa_${m}`, MONTH_FIELDS.vapour_pressure_pa),
    precipitationMm: line.value(`precipitation_mm_${m}`, MONTH_FIELDS.precipitation_mm),
    sunshineH: line.value(`sunshine_h_${m}`, MONTH_FIELDS.sunshine_h),
    absoluteMinMeanC: line.value(`absolute_min_mean_c_${m}`, MONTH_FIELDS.absolute_min_mean_c),
  })),
  annualExtremeMinC: line.value('annual_extreme_min_c', SITE_FIELDS.annual_extreme_min_c),
  annualExtremeMinYearsCount: line.value('annual_extreme_min_years_count', SITE_FIELDS.annual_extreme_min_years_count),
});

const headerOf = (line: number, names: readonly string[]): { at: Map<string, number>; faults: LineFault[] } => {
  const at = new Map(names.map((name, i) => [name, i]));
  const faults = COLUMNS.filter((c) => !at.has(c)).map((column): LineFault => ({
    line,
    column,
    code: 'missing-column',
    message: `the table has no column ${column}`,
  }));
  return { at, faults };
};

/**
 * Reads the table of station means. Columns are found by name; lines that begin with # are remarks. A line with a fault
 * gives no record, and every fault of it is told with its line number, so that nothing half-read goes on.
 */
export const parseStations = (text: string): StationTable => {
  const stations: StationRecord[] = [];
  const faults: LineFault[] = [];
  const seen = new Set<string>();
  let at: Map<string, number> | null = null;
  for (const [index, raw] of text
    .replace(/^\uFEFF/, '')
    .split(/\r?\n/)
    .entries()) {
    if (raw.trim() === '' || raw.startsWith('#')) continue;
    const number = index + 1;
    const fields = fieldsOf(raw);
    if (!fields) {
      faults.push({ line: number, column: null, code: 'unclosed-quote', message: 'a quoted field is not closed on its line' });
    } else if (at === null) {
      const header = headerOf(number, fields);
      if (header.faults.length > 0) return { stations: [], faults: header.faults };
      at = header.at;
    } else if (fields.length !== at.size) {
      faults.push({ line: number, column: null, code: 'field-count', message: `${fields.length} fields, the header has ${at.size}` });
    } else {
      const line = new Line(number, at, fields);
      const station = stationOf(line);
      if (line.faults.length > 0) faults.push(...line.faults);
      else if (seen.has(station.stationId))
        faults.push({ line: number, column: 'id', code: 'duplicate', message: `station ${station.stationId} stands twice` });
      else stations.push(station);
      seen.add(station.stationId);
    }
  }
  if (at === null && faults.length === 0) faults.push({ line: 1, column: null, code: 'no-header', message: 'the table has no header line' });
  return { stations, faults };
};

/** A station as the climate of a plan, with its distance to the site. */
export const climateInputsOf = (station: StationRecord, distanceM: number): ClimateInputs => ({
  stationId: station.stationId,
  stationName: station.name,
  country: station.country,
  stationLatitudeDeg: station.latitudeDeg,
  stationLongitudeDeg: station.longitudeDeg,
  stationElevationM: station.elevationM,
  distanceM,
  period: STATION_PERIOD,
  kind: STATION_KIND,
  credit: STATION_CREDIT,
  months: station.months,
  annualExtremeMinC: station.annualExtremeMinC,
  annualExtremeMinYearsCount: station.annualExtremeMinYearsCount,
});
