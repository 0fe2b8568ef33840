import pg from 'pg';
import { newId } from '../../apps/api/src/platform/database/ids.js';

/** Rows of a build, for tests that need a revision to work on and nothing of what is in it. */
export const plantBuild = async (adminUrl: string, gardenId: string): Promise<string> => {
  const client = new pg.Client({ connectionString: adminUrl });
  await client.connect();
  const id = newId();
  try {
    await client.query(
      `INSERT INTO sites (garden_id, id, name, latitude_deg, longitude_deg, elevation_m, time_zone, details) VALUES ($1, $2, $3, 1, 2, 3, 'UTC', '{}')`,
      [gardenId, id, `build ${id}`],
    );
    await client.query(`INSERT INTO structures (garden_id, id, name, kind, details) VALUES ($1, $2, $3, 'roundArch', '{}')`, [gardenId, id, `build ${id}`]);
    await client.query(`INSERT INTO builds (garden_id, id, name, site_id, structure_id, wishes, crew, budget) VALUES ($1, $2, $3, $2, $2, '{}', '{}', '{}')`, [
      gardenId,
      id,
      `build ${id}`,
    ]);
  } finally {
    await client.end();
  }
  return id;
};

let revision = 0;

/** Values of a revision that is waiting to be computed. */
export const waitingRevision = (gardenId: string, buildId: string) => ({
  gardenId,
  id: newId(),
  buildId,
  revision: (revision += 1),
  asOf: new Date('2026-01-01'),
  inputs: {},
  inputsSha256: 'a'.repeat(64),
  seed: 1n,
});
