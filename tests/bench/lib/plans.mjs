// Plan rows made by SQL: gardens with one site and one structure, builds of fifty revisions each, and results of about
// 2 kB in the table of results.
import { createHash, randomUUID } from 'node:crypto';
import pg from 'pg';

const BODIES = 500;
const PLANS_OF_A_BUILD = 50;

/** Runs `work` on one connection of the tables' owner. Row security binds it too: each garden is named before its rows are made. */
const asOwner = async (ownerUrl, work) => {
  const client = new pg.Client({ connectionString: ownerUrl });
  await client.connect();
  try {
    await client.query('SET synchronous_commit = off');
    return await work(client);
  } finally {
    await client.end();
  }
};

const named = (client, garden, account = '') =>
  client.query("SELECT set_config('app.garden_id', $1, true), set_config('app.account_id', $2, true)", [garden, account]);

const inGarden = async (client, garden, work) => {
  await client.query('BEGIN');
  await named(client, garden);
  await work();
  await client.query('COMMIT');
};

/** Texts that do not pack, of which each result gets one. */
const makeBodies = async (client, bytes) => {
  await client.query('CREATE TEMPORARY TABLE bodies (at integer PRIMARY KEY, body text NOT NULL)');
  await client.query(
    `INSERT INTO bodies SELECT n, (SELECT string_agg(md5(n || ' ' || k || random()), '') FROM generate_series(1, $2::int / 32) k)
       FROM generate_series(0, $1::int - 1) n`,
    [BODIES, bytes],
  );
};

const ID = 'md5(random()::text || clock_timestamp() || n)::uuid';

/** One garden's plans. Every second build belongs to `owner`, every other one to the garden. */
const fillGarden = async (client, garden, plans, owner) => {
  const builds = Math.max(1, Math.ceil(plans / PLANS_OF_A_BUILD));
  const mine = (sql, values = []) => client.query(sql, [garden, ...values]);
  await mine(
    `INSERT INTO sites (garden_id, id, name, latitude_deg, longitude_deg, elevation_m, time_zone, details)
     VALUES ($1, $1, 'bench', 39.9, -104.6, 1600, 'UTC', '{}')`,
  );
  await mine("INSERT INTO structures (garden_id, id, name, kind, details) VALUES ($1, $1, 'bench', 'roundArch', '{}')");
  await mine(
    `INSERT INTO builds (garden_id, id, name, site_id, structure_id, wishes, crew, budget, owner_member_id)
     SELECT $1, ${ID}, 'bench ' || n, $1, $1, '{}', '{}', '{}', CASE WHEN n % 2 = 0 THEN $3::uuid END FROM generate_series(1, $2::int) n`,
    [builds, owner],
  );
  await mine(
    `WITH b AS (SELECT id, row_number() OVER (ORDER BY id) - 1 AS at FROM builds WHERE garden_id = $1)
     INSERT INTO plan_revisions (garden_id, id, build_id, revision, state, as_of, inputs, inputs_sha256, seed, attempt, started_at, finished_at)
     SELECT $1, ${ID}, b.id, 1 + n / $3::int, 'ready', '2026-01-01', '{}', repeat('a', 64), n, 1, now(), now()
       FROM generate_series(0, $2::int - 1) n JOIN b ON b.at = n % $3::int`,
    [plans, builds],
  );
  await mine(
    `INSERT INTO plan_results (garden_id, plan_id, schema_version, engine_version, result, timings, attempt)
     SELECT $1, p.id, 1, 'bench', jsonb_build_object('schemaVersion', 1, 'engineVersion', 'bench', 'reviewBlocked', false, 'body', b.body), '{}', 1
       FROM plan_revisions p JOIN bodies b ON b.at = p.seed % $2::int WHERE p.garden_id = $1`,
    [BODIES],
  );
};

/** Plans for gardens that there are already. */
export const fill = (ownerUrl, gardens, plansEach, { bodyBytes = 2000, owner = null } = {}) =>
  asOwner(ownerUrl, async (client) => {
    await makeBodies(client, bodyBytes);
    for (const garden of gardens) await inGarden(client, garden, () => fillGarden(client, garden, plansEach, owner));
    await client.query('ANALYZE');
  });

/** So many more gardens with so many plans each. */
export const fillOthers = (ownerUrl, count, plansEach) =>
  asOwner(ownerUrl, async (client) => {
    await makeBodies(client, 2000);
    for (let i = 0; i < count; i++) {
      const garden = randomUUID();
      await inGarden(client, garden, async () => {
        await client.query("INSERT INTO gardens (id, name, locale, currency, unit_system, invented) VALUES ($1, 'bench', 'en', 'EUR', 'metric', true)", [
          garden,
        ]);
        await fillGarden(client, garden, plansEach, null);
      });
    }
    await client.query('ANALYZE');
  });

/** A member of the garden who is signed in with this token: reaches own and shared rows only. */
export const makeMember = (ownerUrl, garden, token) =>
  asOwner(ownerUrl, async (client) => {
    const [account, member] = [randomUUID(), randomUUID()];
    await client.query('BEGIN');
    await named(client, garden, account);
    await client.query("INSERT INTO accounts (id, email, name, email_confirmed_at) VALUES ($1, $2, 'Bench', now())", [account, `${account}@example.org`]);
    await client.query("INSERT INTO members (garden_id, id, account_id, name, roles) VALUES ($1, $2, $3, 'Bench', ARRAY['member'])", [garden, member, account]);
    await client.query(
      "INSERT INTO account_sessions (account_id, id, token_sha256, label, expires_at) VALUES ($1, $2, $3, 'bench', now() + interval '1 day')",
      [account, randomUUID(), createHash('sha256').update(token).digest()],
    );
    await client.query('COMMIT');
    return member;
  });
