import pg from 'pg';
import type { ClimateInputs } from '@lathwork/model';
import { denverMeans, invercargillMeans, stornowayMeans } from './climates.js';

const STATIONS: readonly ClimateInputs[] = [denverMeans, stornowayMeans, invercargillMeans];

/** Three stations, so that a test does not hang on which table the server was set up with. */
export const seedStations = async (ownerUrl: string, stations: readonly ClimateInputs[] = STATIONS): Promise<void> => {
  const client = new pg.Client({ connectionString: ownerUrl });
  await client.connect();
  try {
    await client.query('DELETE FROM climate_stations');
    for (const s of stations)
      await client.query(
        `INSERT INTO climate_stations (id, name, country, latitude_deg, longitude_deg, elevation_m, period, kind, credit, annual_extreme_min_c, annual_extreme_min_years_count, months)
         VALUES ($1,$2,$3,$4,$5,$6,$7,$8,$9,$10,$11,$12)`,
        [
          s.stationId,
          s.stationName,
          s.country,
          s.stationLatitudeDeg,
          s.stationLongitudeDeg,
          s.stationElevationM,
          s.period,
          s.kind,
          s.credit,
          s.annualExtremeMinC,
          s.annualExtremeMinYearsCount,
          JSON.stringify(s.months),
        ],
      );
  } finally {
    await client.end();
  }
};
