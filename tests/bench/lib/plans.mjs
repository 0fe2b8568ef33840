// Plan rows made by SQL: gardens with one site, structure and build each, revisions with inputs of a few bytes and
// results of about 2 kB in a table of their own.
import pg from 'pg';

/** As a user of the tables' owner: row security is kept, so every garden is named before its rows are made. */
export const fill = async (ownerUrl, gardens, plansEach, { bodyBytes = 2000, owners = false } = {}) => {
  const client = new pg.Client({ connectionString: ownerUrl });
  await client.connect();
  try {
    await client.query('SET synchronous_commit = off');
    for (const garden of gardens) {
      await client.query('BEGIN');
      await client.query("SELECT set_config('app.garden_id', $1, true)", [garden]);
      await fillOne(client, garden, plansEach, bodyBytes, owners);
      await client.query('COMMIT');
    }
  } finally {
    await client.end();
  }
};

const uuid = '(md5(random()::text || n))::uuid';

const fillOne = async (client, garden, plans, bodyBytes, owner) => {
  const builds = Math.max(1, Math.ceil(plans / 50));
  await client.query(
    `INSERT INTO sites (garden_id, id, name, latitude_deg, longitude_deg, elevation_m, time_zone, details) VALUES ($1, $1, 'bench site', 39.9, -104.6, 1600, 'UTC', '{}')
     ON CONFLICT DO NOTHING`,
    [garden],
  );
  await client.query(`INSERT INTO structures (garden_id, id, name, kind, details) VALUES ($1, $1, 'bench shelter', 'roundArch', '{}') ON CONFLICT DO NOTHING`, [
    garden,
  ]);
  await client.query(
    `INSERT INTO builds (garden_id, id, name, site_id, structure_id, wishes, crew, budget, owner_member_id)
     SELECT $1, ${uuid}, 'bench build ' || n, $1, $1, '{}', '{}', '{}', CASE WHEN n % 2 = 0 THEN $3::uuid END FROM generate_series(1, $2::int) n`,
    [garden, builds, owner || null],
  );
  await client.query(
    `WITH b AS (SELECT id, row_number() OVER (ORDER BY id) - 1 AS at FROM builds WHERE garden_id = $1 AND name LIKE 'bench build %')
     INSERT INTO plan_revisions (garden_id, id, build_id, revision, state, as_of, inputs, inputs_sha256, seed, attempt, started_at, finished_at)
     SELECT $1, ${uuid}, b.id, 1 + (n / $3::int), 'ready', '2026-01-01', '{}', repeat('a', 64), n, 1, now(), now()
       FROM generate_series(0, $2::int - 1) n JOIN b ON b.at = n % $3::int`,
    [garden, plans, builds],
  );
  // Random text, so that it is not packed to nothing.
  await client.query(
    `INSERT INTO plan_results (garden_id, plan_id, schema_version, engine_version, result, timings, attempt)
     SELECT $1, id, 1, 'bench', jsonb_build_object('schemaVersion', 1, 'engineVersion', 'bench', 'reviewBlocked', false,
         'body', (SELECT string_agg(md5(random()::text || id || k), '') FROM generate_series(1, $2::int / 32) k)), '{}', 1
       FROM plan_revisions WHERE garden_id = $1`,
    [garden, bodyBytes],
  );
};
