import { createHash } from 'node:crypto';
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import pg from 'pg';
import { prismaDir } from './migrate.js';

const SEED_LOCK = 72_707_371;
const MONTHS = ['01', '02', '03', '04', '05', '06', '07', '08', '09', '10', '11', '12'] as const;

/** Which columns of the file make which member of a month. */
const MONTH_MEMBERS = {
  tMaxC: 't_max_c',
  tMinC: 't_min_c',
  vapourPressurePa: 'vapour_pressure_pa',
  precipitationMm: 'precipitation_mm',
  sunshineH: 'sunshine_h',
  absoluteMinMeanC: 'absolute_min_mean_c',
} as const;

const STATED = { period: '2003-2021 means', kind: 'means', credit: 'Datenbasis: Deutscher Wetterdienst, Einzelwerte gemittelt' } as const;

type Row = Readonly<Record<string, string>>;

/** The table is ours and plain: no quotes, no commas inside a field. Anything else is a fault of the file, told by line. */
export const readTable = (text: string): Row[] => {
  const lines = text.split('\n').map((line, at) => ({ line: line.replace(/\r$/, ''), number: at + 1 }));
  const [head, ...rows] = lines.filter(({ line }) => line !== '' && !line.startsWith('#'));
  const names = (head?.line ?? '').split(',');
  return rows.map(({ line, number }) => {
    const fields = line.split(',');
    if (fields.length !== names.length || line.includes('"')) throw new Error(`line ${number} has ${fields.length} fields, ${names.length} are wanted`);
    return Object.fromEntries(names.map((name, at) => [name, fields[at] ?? '']));
  });
};

/** No record is null; a text that is no number is a fault, never a zero. */
const figure = (row: Row, column: string): number | null => {
  const text = row[column];
  if (text === undefined) throw new Error(`the column ${column} is missing`);
  if (text === '') return null;
  const value = Number(text);
  if (!Number.isFinite(value)) throw new Error(`station ${row['id']}: ${column} is "${text}", not a number`);
  return value;
};

const stationOf = (row: Row) => ({
  id: row['id'],
  name: row['name'],
  country: row['country'],
  latitude_deg: figure(row, 'latitude_deg'),
  longitude_deg: figure(row, 'longitude_deg'),
  elevation_m: figure(row, 'elevation_m'),
  annual_extreme_min_c: figure(row, 'annual_extreme_min_c'),
  annual_extreme_min_years_count: figure(row, 'annual_extreme_min_years_count'),
  ...STATED,
  months: MONTHS.map((month) => Object.fromEntries(Object.entries(MONTH_MEMBERS).map(([member, column]) => [member, figure(row, `${column}_${month}`)]))),
});

const INSERT = `
  INSERT INTO climate_stations (id, name, country, latitude_deg, longitude_deg, elevation_m, period, kind, credit, annual_extreme_min_c, annual_extreme_min_years_count, months)
  SELECT id, name, country, latitude_deg, longitude_deg, elevation_m, period, kind, credit, annual_extreme_min_c, annual_extreme_min_years_count, months
    FROM jsonb_to_recordset($1::jsonb) AS s(id text, name text, country text, latitude_deg float8, longitude_deg float8, elevation_m float8, period text, kind text,
      credit text, annual_extreme_min_c float8, annual_extreme_min_years_count int, months jsonb)
  ON CONFLICT (id) DO UPDATE SET (name, country, latitude_deg, longitude_deg, elevation_m, period, kind, credit, annual_extreme_min_c, annual_extreme_min_years_count, months)
    = (excluded.name, excluded.country, excluded.latitude_deg, excluded.longitude_deg, excluded.elevation_m, excluded.period, excluded.kind, excluded.credit,
       excluded.annual_extreme_min_c, excluded.annual_extreme_min_years_count, excluded.months)`;

/**
 * Fills the table of weather stations from prisma/seed/stations.csv in one statement, when the file is not the one
 * that filled it. A station that left the file stays, because a site may have chosen it. Gives the number of rows
 * written; zero when nothing had changed.
 */
export const seedTables = async (ownerUrl: string, dir = prismaDir): Promise<number> => {
  const file = join(dir, 'seed', 'stations.csv');
  if (!existsSync(file)) return 0;
  const text = readFileSync(file, 'utf8');
  const sha256 = createHash('sha256').update(JSON.stringify(STATED)).update(text).digest('hex');
  const client = new pg.Client({ connectionString: ownerUrl });
  await client.connect();
  try {
    await client.query('BEGIN');
    await client.query('SELECT pg_advisory_xact_lock($1)', [SEED_LOCK]);
    const { rowCount: unchanged } = await client.query("SELECT 1 FROM seed_states WHERE name = 'climate_stations' AND sha256 = $1", [sha256]);
    const stations = unchanged ? [] : readTable(text).map(stationOf);
    if (stations.length > 0) {
      await client.query(INSERT, [JSON.stringify(stations)]);
      await client.query(
        "INSERT INTO seed_states (name, sha256) VALUES ('climate_stations', $1) ON CONFLICT (name) DO UPDATE SET sha256 = excluded.sha256, loaded_at = now()",
        [sha256],
      );
    }
    await client.query('COMMIT');
    return stations.length;
  } finally {
    await client.end();
  }
};
