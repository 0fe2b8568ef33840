import { readdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { generateSync } from 'otplib';
import pg from 'pg';
import { startApi, type TestApi, type TestGarden, type TestPerson } from '../support/api-app.js';
import { cold, firstBuild, make } from '../support/example-requests.js';
import type { HttpClient } from '../support/http-client.js';
import { asAdmin, lastMailTo, PASSWORD, problemOf, send, signedUp, signIn, type SignedUp } from '../support/people.js';
import { jpegOf } from '../support/privacy-fixtures.js';

/** Words that stand nowhere else: whoever finds one has found the person. */
const NAME = 'Zephyrine Quillfeather';
const CALLED = 'Zeph (the "Quill") Canarybird';
const EMAIL = 'zephyrine.quillfeather.canary@example.org';
const PHONE = '+44 20 7946 0719';
const NOTE = 'Canarynote: knees that dislike ladders';
const PLACE = 'Canaryroost behind the mill';
const CANARIES = ['Quillfeather', 'Canarybird', 'quillfeather.canary', '7946 0719', 'Canarynote', 'Canaryroost', '39.934177', '104.582639'];

let api: TestApi;
let garden: TestGarden;
let elsewhere: TestGarden;
let coordinator: TestPerson;
let canary: SignedUp;
let member: HttpClient;
let memberId: string;
let accountId: string;
let secret: string;

/** Every column of every table, those of the queue too: the text of each row, and the bytes of each column of bytes. */
const hits = async (): Promise<string[]> => {
  const client = new pg.Client({ connectionString: api.database.adminUrl });
  await client.connect();
  try {
    const { rows: tables } = await client.query<{ name: string; bytes: string[] }>(
      `SELECT format('%I.%I', n.nspname, c.relname) AS name,
              ARRAY(SELECT quote_ident(a.attname) FROM pg_attribute a WHERE a.attrelid = c.oid AND a.attnum > 0 AND a.atttypid = 'bytea'::regtype AND NOT a.attisdropped) AS bytes
         FROM pg_class c JOIN pg_namespace n ON n.oid = c.relnamespace
        WHERE c.relkind IN ('r', 'm') AND n.nspname NOT IN ('pg_catalog', 'information_schema', 'pg_toast') AND c.relname <> 'climate_stations' ORDER BY 1`,
    );
    const found: string[] = [];
    for (const { name, bytes } of tables)
      for (const word of CANARIES) {
        const inBytes = bytes.map((column) => `position(convert_to($1, 'UTF8') IN ${column}) > 0`);
        const { rows } = await client.query<{ n: number }>(
          `SELECT count(*)::int AS n FROM ${name} t WHERE ${[`position(lower($1) IN lower(t::text)) > 0`, ...inBytes].join(' OR ')}`,
          [word],
        );
        if ((rows[0]?.n ?? 0) > 0) found.push(`${name}: ${word}`);
      }
    return found;
  } finally {
    await client.end();
  }
};

const mailHits = async (): Promise<number> => {
  const names = await readdir(api.config.mailDir);
  const texts = await Promise.all(names.map((name) => readFile(join(api.config.mailDir, name), 'utf8')));
  return texts.filter((text) => CANARIES.some((word) => text.includes(word))).length;
};

const code = (): string => generateSync({ secret });
const erase = (http: HttpClient, body: object) => send(http, '/v1/account/erasure', body);

/** The account, with a second factor, a mail that waits, and an invitation to a garden that was never joined. */
const liveAccount = async (): Promise<void> => {
  canary = await signedUp(api, NAME, EMAIL);
  accountId = ((await canary.http.get('/v1/account')).body as { id: string }).id;
  secret = ((await send(canary.http, '/v1/account/factor', { password: PASSWORD })).body as { secret: string }).secret;
  expect((await send(canary.http, '/v1/account/factor/confirm', { code: code() })).status).toBe(200);
  await asAdmin(api, 'UPDATE account_factors SET last_step = last_step - 10');
  const token = await signIn(api, EMAIL, PASSWORD, code());
  canary = { ...canary, token, http: api.as(token) };
  expect((await elsewhere.http.post('/v1/invitations', { email: EMAIL, roles: ['member'] })).status).toBe(201);
  expect((await send(api.anyone, '/v1/password-resets', { email: EMAIL })).status).toBe(202);
};

/** A plan that is finished and printed, and what people wrote about it. */
const livePlan = async (buildId: string): Promise<void> => {
  const plan = await member.post('/v1/plans', { buildId });
  expect(plan.status).toBe(202);
  const { id } = plan.body as { id: string };
  const { gardenId } = garden;
  await asAdmin(api, `UPDATE plan_revisions SET state = 'ready', finished_at = now() WHERE id = $1`, [id]);
  await asAdmin(
    api,
    `INSERT INTO plan_results (garden_id, plan_id, schema_version, engine_version, result, timings, attempt) VALUES ($1, $2, 1, 'x', jsonb_build_object('label', $3::text), '{}', 1)`,
    [gardenId, id, `lent by ${CALLED}`],
  );
  const theirs = await coordinator.http.post(`/v1/plans/${id}/reviews`, {
    decision: 'changesWanted',
    reviewer: 'Ash',
    comment: `Ask ${NAME} about the anchors.`,
  });
  expect([theirs.status, theirs.body]).toEqual([201, expect.anything()]);
  await asAdmin(
    api,
    `INSERT INTO plan_reviews (garden_id, id, plan_id, decision, reviewer, comment, created_by_id) VALUES ($1, gen_random_uuid(), $2, 'changesWanted', $3, 'Mind the gap.', $4)`,
    [gardenId, (await anothersPlan()).planId, `Z. ${CALLED}`, memberId],
  );
  expect((await member.post(`/v1/plans/${id}/as-built`, { observedOn: '2026-05-01', measures: [], remark: `${NAME} measured it` })).status).toBe(201);
  await asAdmin(
    api,
    `WITH f AS (INSERT INTO files (garden_id, id, name, media_type, byte_count, sha256, content) SELECT $1, gen_random_uuid(), 'plan.pdf', 'application/pdf', length(c), encode(sha256(c), 'hex'), c
       FROM convert_to($3, 'UTF8') AS c RETURNING id)
     INSERT INTO documents (garden_id, id, plan_id, state, options, sha256, pages, engine_version, file_id, finished_at) SELECT $1, gen_random_uuid(), $2, 'ready', '{}', repeat('a', 64), 1, 'x', id, now() FROM f`,
    [gardenId, id, `%PDF drawn by ${NAME} for ${PLACE}`],
  );
};

const anothersPlan = async (): Promise<{ planId: string }> => {
  const site = await make(coordinator.http, '/v1/sites', { ...cold.site, name: 'Common' });
  const structure = await make(coordinator.http, '/v1/structures', { name: 'Common', ...firstBuild().structure });
  const { wishes, crew, budget } = firstBuild();
  const build = await make(coordinator.http, '/v1/builds', { name: 'Common', siteId: site.id, structureId: structure.id, wishes, crew, budget });
  return { planId: ((await coordinator.http.post('/v1/plans', { buildId: build.id })).body as { id: string }).id };
};

beforeAll(async () => {
  api = await startApi();
  [garden, elsewhere] = [await api.garden(), await api.garden()];
  coordinator = await api.person(garden.gardenId, ['coordinator']);
  await liveAccount();
  const person = await api.person(garden.gardenId, ['member', 'coordinator'], accountId);
  ({ memberId, http: member } = { memberId: person.memberId, http: person.http });
  expect((await coordinator.http.patch(`/v1/members/${memberId}`, '"1"', { name: CALLED, roles: ['member'] })).status).toBe(200);

  const at = { latitudeDeg: '39.9341773 deg', longitudeDeg: -104.5826391, name: PLACE };
  const wind = { ...(cold.site.wind as object), source: `asked ${NAME}` };
  const site = await make(member, '/v1/sites', { ...cold.site, ...at, wind });
  const structure = await make(member, '/v1/structures', { ...firstBuild().structure, name: `${NAME}’s frame` });
  const { wishes, crew, budget } = firstBuild();
  const inKind = [{ label: `lath of ${CALLED}`, value: { minor: 100, currency: budget.currency } }];
  const build = await make(member, '/v1/builds', {
    name: `${NAME}’s house`,
    siteId: site.id,
    structureId: structure.id,
    wishes,
    crew,
    budget: { ...budget, inKind },
    shared: true,
  });
  await livePlan(build.id);
  const photo = await member
    .request('post', `/v1/builds/${build.id}/photos?showsPeople=true&caption=${encodeURIComponent(`${NAME} waves`)}`)
    .set('Content-Type', 'image/jpeg')
    .send(await jpegOf());
  expect([photo.status, photo.body]).toEqual([201, expect.anything()]);
  const other = await coordinator.http
    .request('post', `/v1/builds/${build.id}/photos?showsPeople=false&caption=${encodeURIComponent(`the gate of ${NAME}`)}`)
    .set('Content-Type', 'image/jpeg')
    .send(await jpegOf());
  expect(other.status).toBe(201);
  expect((await member.patch('/v1/members/me/private-details', '"0"', { phone: PHONE, address: PLACE, healthNotes: NOTE })).status).toBe(200);
  expect((await send(member, '/v1/members/me/consents', { purpose: 'exactLocation', wordingVersion: 1 })).status).toBe(200);
  expect((await coordinator.http.post('/v1/spending', { purpose: `screws for ${NAME}`, amount: { minor: 100, currency: 'EUR' } })).status).toBe(201);
  await asAdmin(
    api,
    `INSERT INTO api_keys (garden_id, id, name, prefix, sha256, scopes, created_by_member_id) VALUES ($1, gen_random_uuid(), $2, 'lw_canary01', sha256('x'), ARRAY['sites:read'], $3)`,
    [garden.gardenId, `${NAME}’s phone`, memberId],
  );
});
afterAll(() => api.stop());

describe('erasing a person', () => {
  it('S38: the search finds the person in many tables before; sealed details it does not find even then', async () => {
    const tables = new Set((await hits()).map((hit) => hit.split(':')[0]));
    for (const table of [
      'accounts',
      'members',
      'sites',
      'structures',
      'builds',
      'plan_revisions',
      'plan_results',
      'plan_reviews',
      'plan_as_builts',
      'files',
      'photos',
      'api_keys',
      'invitations',
      'idempotency_answers',
      'mail_outbox',
      'spend_requests',
    ])
      expect([...tables]).toContain(`public.${table}`);
    expect([...tables]).not.toContain('public.member_privates');
    expect(await mailHits()).toBeGreaterThan(0);
  });

  it('S38: needs the password and the code, and a last coordinator must hand over first', async () => {
    expect(problemOf(await erase(canary.http, { password: 'nine thirsty cabbages in May', code: code() }))).toBe('password-wrong');
    expect(problemOf(await erase(canary.http, { password: PASSWORD }))).toBe('password-wrong');
    await asAdmin(api, `UPDATE members SET roles = CASE WHEN id = $1 THEN ARRAY['coordinator'] ELSE ARRAY['member'] END WHERE garden_id = $2`, [
      memberId,
      garden.gardenId,
    ]);
    await asAdmin(api, 'UPDATE account_factors SET last_step = last_step - 10');
    const hindered = await erase(canary.http, { password: PASSWORD, code: code() });
    expect([hindered.status, hindered.body]).toEqual([409, expect.objectContaining({ type: '/v1/problems/last-coordinator' })]);
    expect(JSON.stringify(hindered.body)).toContain(garden.gardenId);
    expect((await canary.http.get('/v1/account')).status).toBe(200);
    await asAdmin(api, `UPDATE members SET roles = CASE WHEN id = $1 THEN ARRAY['member'] ELSE ARRAY['coordinator'] END WHERE garden_id = $2`, [
      memberId,
      garden.gardenId,
    ]);
  });

  it('S38: a garden with nobody else in it stands in the way until it may be closed', async () => {
    const lone = await signedUp(api, 'Lone Marigold');
    const made = await lone.http.post('/v1/gardens', { name: 'Alone', locale: 'en', currency: 'EUR', unitSystem: 'metric' });
    expect(made.status).toBe(201);
    expect(problemOf(await erase(lone.http, { password: PASSWORD }))).toBe('last-member');
    expect((await erase(lone.http, { password: PASSWORD, closeEmptyGardens: true })).status).toBe(204);
    const [row] = await asAdmin<{ archived: boolean }>(api, 'SELECT archived_at IS NOT NULL AS archived FROM gardens WHERE id = $1', [
      (made.body as { garden: { id: string } }).garden.id,
    ]);
    expect(row).toEqual({ archived: true });
  });

  it('S38: afterwards neither the database nor the mail holds a word of the person', async () => {
    await lastMailTo(api, EMAIL);
    await asAdmin(api, 'UPDATE account_factors SET last_step = last_step - 10');
    const done = await erase(canary.http, { password: PASSWORD, code: code() });
    expect([done.status, done.body]).toEqual([204, {}]);
    expect(await hits()).toEqual([]);
    expect(await mailHits()).toBe(0);
  });

  it('S38: sessions and keys are dead, and nobody can sign in; the address is free again', async () => {
    expect((await canary.http.get('/v1/account')).status).toBe(401);
    expect((await member.get('/v1/sites')).status).toBe(401);
    await expect(signIn(api, EMAIL, PASSWORD)).rejects.toThrow('401');
    expect((await signedUp(api, 'Somebody Else', EMAIL)).token).toMatch(/^lws_/);
  });

  it('S38: what must be kept of money and safety is kept without a name, and the history holds and tells no content', async () => {
    const [reviews] = await asAdmin<{ all: number; former: number }>(
      api,
      `SELECT count(*)::int AS all, count(*) FILTER (WHERE reviewer = 'former member')::int AS former FROM plan_reviews`,
    );
    expect(reviews).toEqual({ all: 2, former: 1 });
    expect((await coordinator.http.get('/v1/spending')).text).toContain('screws for former member');
    const plans = await asAdmin(api, `SELECT 1 FROM plan_revisions p JOIN plan_results r USING (garden_id) WHERE r.plan_id = p.id`);
    expect(plans).toHaveLength(1);
    expect((await coordinator.http.get(`/v1/members/${memberId}`)).body).toMatchObject({ name: 'former member', leftAt: expect.any(String) });
    const [site] = await asAdmin<{ latitude_deg: number; archived: boolean }>(
      api,
      `SELECT latitude_deg, archived_at IS NOT NULL AS archived FROM sites WHERE name LIKE 'former member%'`,
    );
    expect(site).toEqual({ latitude_deg: 39.93, archived: true });
    const entries = await asAdmin<{ action: string }>(api, `SELECT action FROM audit_entries WHERE object_id = $1 ORDER BY at`, [memberId]);
    expect(entries.at(-1)).toEqual({ action: 'member.erase' });
  });

  it('S38: somebody who is called like a word of the plans takes nothing out of them', async () => {
    const [row] = await asAdmin<{ text: string; json: unknown }>(
      api,
      `SELECT without_names('Ask Door about the door, or door@example.org', ARRAY['Door', 'door@example.org']) AS text,
              json_without_names('{"door": "Door", "by": "Clay Door"}', ARRAY['Door', 'Clay Door']) AS json`,
    );
    expect(row).toEqual({ text: 'Ask former member about the door, or former member', json: { door: 'Door', by: 'former member' } });
  });
});
