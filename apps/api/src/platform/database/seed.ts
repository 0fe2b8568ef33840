import { createHash } from 'node:crypto';
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseStations, STATION_CREDIT, STATION_KIND, STATION_PERIOD } from '@lathwork/formats';
import pg from 'pg';
import { prismaDir } from './migrate.js';

const SEED_LOCK = 72_707_371;
const MOST_FAULTS = 20;
const STATED = { period: STATION_PERIOD, kind: STATION_KIND, credit: STATION_CREDIT } as const;

/** The rows of the table of means. One fault anywhere and nothing is loaded: each is told with its line. */
export const stationRows = (text: string) => {
  const { stations, faults } = parseStations(text);
  if (faults.length > 0) {
    const told = faults.slice(0, MOST_FAULTS).map(({ line, message }) => `line ${line}: ${message}`);
    throw new Error(`stations.csv has ${faults.length} faults\n${told.join('\n')}`);
  }
  return stations.map((station) => ({
    id: station.stationId,
    name: station.name,
    country: station.country,
    latitude_deg: station.latitudeDeg,
    longitude_deg: station.longitudeDeg,
    elevation_m: station.elevationM,
    annual_extreme_min_c: station.annualExtremeMinC,
    annual_extreme_min_years_count: station.annualExtremeMinYearsCount,
    ...STATED,
    months: station.months,
  }));
};

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
    const stations = unchanged ? [] : stationRows(text);
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
