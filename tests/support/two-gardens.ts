import type pg from 'pg';

/** Two gardens with the same rows, for tests of what one may see and do of the other. */
export const A = '019a0000-0000-7000-8000-00000000000a';
export const B = '019a0000-0000-7000-8000-00000000000b';

/** The tables that belong to a garden, as `name`. */
export const TENANT_TABLES = `
  SELECT c.relname AS name FROM pg_attribute a JOIN pg_class c ON c.oid = a.attrelid
   WHERE a.attname = 'garden_id' AND c.relkind = 'r' AND c.relnamespace = 'public'::regnamespace ORDER BY 1`;

/** Runs in one transaction of a garden, or of none. */
export const inGarden = async <T extends pg.QueryResultRow>(
  pool: pg.Pool,
  garden: string | null,
  sql: string,
  values: unknown[] = [],
  end: 'COMMIT' | 'ROLLBACK' = 'COMMIT',
): Promise<pg.QueryResult<T>> => {
  const client = await pool.connect();
  try {
    await client.query('BEGIN');
    if (garden) await client.query("SELECT set_config('app.garden_id', $1, true)", [garden]);
    const result = await client.query<T>(sql, values);
    await client.query(end);
    return result;
  } catch (error) {
    await client.query('ROLLBACK');
    throw error;
  } finally {
    client.release();
  }
};

/** One row in every table of a garden, each with the id of the garden. */
export const plantRows = async (app: pg.Pool, garden: string): Promise<void> => {
  const sha = '\\x' + 'ab'.repeat(32);
  const last = garden.slice(-1);
  await inGarden(app, null, `SELECT create_garden($1, 'g', 'en', 'EUR', 'metric', true, $1, null)`, [garden]);
  const mine = (sql: string): Promise<unknown> => inGarden(app, garden, sql.replaceAll('$g', `'${garden}'`));
  await mine(`INSERT INTO api_keys (garden_id, id, name, prefix, sha256, scopes) VALUES ($g, $g, 'k', 'lw_0000000${last}', '${sha}', ARRAY['garden:read'])`);
  await mine(`SELECT set_config('app.account_id', $g, true);
    INSERT INTO accounts (id, email, name) VALUES ($g, 'p${last}@example.org', 'p');
    INSERT INTO members (garden_id, id, account_id, name, roles) VALUES ($g, $g, $g, 'p', ARRAY['member'])`);
  await mine(
    `INSERT INTO invitations (garden_id, id, email, roles, token_sha256, invited_by_id, expires_at) VALUES ($g, $g, 'q@example.org', ARRAY['member'], sha256('${last}'), $g, now())`,
  );
  await mine(
    `INSERT INTO sites (garden_id, id, name, latitude_deg, longitude_deg, elevation_m, time_zone, details) VALUES ($g, $g, 's', 1, 2, 3, 'UTC', '{}')`,
  );
  await mine(`INSERT INTO structures (garden_id, id, name, kind, details) VALUES ($g, $g, 's', 'roundArch', '{}')`);
  await mine(`INSERT INTO stock_items (garden_id, id, tag, kind, material, grade, details) VALUES ($g, $g, 'D1', 'door', 'doorSalvaged', 'A', '{}')`);
  await mine(`INSERT INTO builds (garden_id, id, name, site_id, structure_id, wishes, crew, budget) VALUES ($g, $g, 'b', $g, $g, '{}', '{}', '{}')`);
  await mine(`INSERT INTO stock_claims (garden_id, id, stock_item_id, unit_item, build_id) VALUES ($g, $g, $g, true, $g)`);
  await mine(
    `INSERT INTO prices (garden_id, id, material, unit, pack_amount, pack_price_minor, currency, supplier) VALUES ($g, $g, 'm', 'm', 1, 100, 'EUR', 'yard')`,
  );
  await mine(`INSERT INTO exchange_rates (garden_id, id, from_currency, to_currency, rate, read_on) VALUES ($g, $g, 'EUR', 'USD', 1.1, '2026-01-01')`);
  await mine(
    `INSERT INTO plan_revisions (garden_id, id, build_id, revision, as_of, inputs, inputs_sha256, seed) VALUES ($g, $g, $g, 1, '2026-01-01', '{}', '${'a'.repeat(64)}', 1)`,
  );
  await mine(`INSERT INTO plan_results (garden_id, plan_id, schema_version, engine_version, result, timings, attempt) VALUES ($g, $g, 1, '1', '{}', '{}', 1)`);
  await mine(`INSERT INTO plan_reviews (garden_id, id, plan_id, decision, reviewer) VALUES ($g, $g, $g, 'reviewed', 'r')`);
  await mine(`INSERT INTO plan_staleness (garden_id, id, plan_id, reason) VALUES ($g, $g, $g, 'price')`);
  await mine(`INSERT INTO plan_as_builts (garden_id, id, plan_id, observed_on, details) VALUES ($g, $g, $g, '2026-01-01', '{}')`);
  await mine(
    `INSERT INTO files (garden_id, id, name, media_type, byte_count, sha256, content) VALUES ($g, $g, 'f', 'text/plain', 1, encode(sha256('a'), 'hex'), 'a')`,
  );
  await mine(
    `INSERT INTO photos (garden_id, id, build_id, file_id, width_pixel_count, height_pixel_count, shows_people, uploaded_by_id) VALUES ($g, $g, $g, $g, 1, 1, false, $g)`,
  );
  await mine(`INSERT INTO documents (garden_id, id, plan_id, options, file_id) SELECT $g, $g, $g, '{}', null`);
  await mine(`INSERT INTO spend_requests (garden_id, id, build_id, purpose, amount_minor, currency, requested_by_id) VALUES ($g, $g, $g, 'p', 1, 'EUR', $g)`);
  await mine(
    `INSERT INTO idempotency_answers (garden_id, credential_id, route, idempotency_key, request_sha256, status, body, expires_at) VALUES ($g, $g, 'r', 'k', 's', 201, '{}', now())`,
  );
  await mine(`INSERT INTO jobs (garden_id, id, kind) VALUES ($g, $g, 'probe')`);
  await mine(`INSERT INTO hook_events (garden_id, id, type, object_type, object_id, object_version) VALUES ($g, $g, 'probe.made', 'probe', $g, 1)`);
  await mine(`INSERT INTO webhooks (garden_id, id, url, event_types, secret_sealed) VALUES ($g, $g, 'https://a.example/', ARRAY['probe.made'], 'x')`);
  await mine(`INSERT INTO webhook_deliveries (garden_id, id, webhook_id, event_id, next_attempt_at) VALUES ($g, $g, $g, $g, now())`);
  const words = 'x'.repeat(29);
  await mine(`INSERT INTO consents (garden_id, id, member_id, purpose, given, wording_version, wording) VALUES ($g, $g, $g, 'nameOnPrint', true, 1, 'w')`);
  await mine(`INSERT INTO member_privates (garden_id, member_id, details_sealed) VALUES ($g, $g, '${words}')`);
  await mine(`INSERT INTO garden_exports (garden_id, id, with_files) VALUES ($g, $g, true)`);
};
