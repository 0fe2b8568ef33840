import { execFile } from 'node:child_process';
import { promisify } from 'node:util';
import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import pg from 'pg';
import { chainFaults, verifyChains } from '../../apps/api/src/platform/database/audit-chain.js';
import { startApi, type TestApi, type TestGarden, type TestPerson } from '../support/api-app.js';
import { make, makeExample, type ExampleIds } from '../support/example-requests.js';

let api: TestApi;
let garden: TestGarden;
let coordinator: TestPerson;
let ids: ExampleIds;
let owner: pg.Client;
let admin: pg.Client;

interface Entry {
  by: string | null;
  action: string;
  objectId: string;
}

beforeAll(async () => {
  api = await startApi();
  garden = await api.garden();
  coordinator = await api.person(garden.gardenId, ['coordinator']);
  ids = await makeExample(garden.http);
  owner = new pg.Client({ connectionString: api.database.ownerUrl });
  admin = new pg.Client({ connectionString: api.database.adminUrl });
  await Promise.all([owner.connect(), admin.connect()]);
});
afterAll(async () => {
  await Promise.all([owner.end(), admin.end()]);
  await api.stop();
});

describe('S16: the chain of the history', () => {
  it('links every entry, in every garden, once', async () => {
    await api.garden();
    const { gardens, entries, faults } = await verifyChains(owner);
    const { rows } = await admin.query('SELECT count(*)::int AS n FROM audit_entries');
    expect({ gardens, entries, faults }).toEqual({ gardens: 2, entries: rows[0].n, faults: [] });
    expect(entries).toBeGreaterThan(10);
  });

  it('is written with the change or not at all', async () => {
    const { rows: before } = await admin.query('SELECT count(*)::int AS n FROM audit_links');
    expect((await garden.http.post('/v1/structures', { name: 'no shelter' })).status).toBe(400);
    const { rows: after } = await admin.query('SELECT count(*)::int AS n FROM audit_links');
    expect(after).toEqual(before);
  });

  it('does not fork when many changes end at once', async () => {
    const { rows: before } = await admin.query('SELECT max(seq)::int AS n FROM audit_links WHERE garden_id = $1', [garden.gardenId]);
    const price = { material: 'rope', unit: 'm', packAmount: 10, packPrice: { minor: 100, currency: 'EUR' }, readOn: null, supplier: 'yard' };
    const answers = await Promise.all(Array.from({ length: 20 }, () => garden.http.post('/v1/prices', price)));
    const made = answers.filter(({ status }) => status === 201).length;
    const { rows: after } = await admin.query('SELECT max(seq)::int AS n, count(*)::int AS links FROM audit_links WHERE garden_id = $1', [garden.gardenId]);
    expect(after[0]).toEqual({ n: before[0].n + made, links: before[0].n + made });
    expect((await verifyChains(owner)).faults).toEqual([]);
  });

  it('cannot be written by the application, and its entries can be neither changed nor removed by it', async () => {
    const app = new pg.Client({ connectionString: api.database.url });
    await app.connect();
    for (const sql of [
      "UPDATE audit_entries SET action = 'x'",
      'DELETE FROM audit_entries',
      "UPDATE audit_links SET sha256 = 'x'",
      'DELETE FROM audit_links',
      'INSERT INTO audit_links SELECT * FROM audit_links',
      'SELECT link_audit_entry()',
    ])
      await expect(app.query(sql)).rejects.toMatchObject({ code: '42501' });
    await app.end();
  });

  it.each([
    ['a changed entry', "UPDATE audit_entries SET action = 'nothing.happened' WHERE garden_id = $1 AND id = $2", 'changed'],
    ['a changed time', "UPDATE audit_entries SET at = at - interval '1 day' WHERE garden_id = $1 AND id = $2", 'changed'],
    ['a changed doer', 'UPDATE audit_entries SET member_id = id WHERE garden_id = $1 AND id = $2', 'changed'],
    ['a removed link', 'DELETE FROM audit_links WHERE garden_id = $1 AND entry_id = $2', 'missing'],
  ])('tells %s, and where', async (_name, tamper, reason) => {
    const { rows } = await admin.query<{ seq: string; entry_id: string }>('SELECT seq, entry_id FROM audit_links WHERE garden_id = $1 AND seq = 3', [
      garden.gardenId,
    ]);
    await admin.query('BEGIN');
    await admin.query(tamper, [garden.gardenId, rows[0]?.entry_id]);
    const { rows: chain } = await admin.query(
      'SELECT l.seq, l.sha256 AS link_sha256, e.* FROM audit_entries e LEFT JOIN audit_links l ON l.garden_id = e.garden_id AND l.entry_id = e.id WHERE e.garden_id = $1 ORDER BY l.seq NULLS LAST',
      [garden.gardenId],
    );
    await admin.query('ROLLBACK');
    const faults = chainFaults(garden.gardenId, chain);
    expect(faults[0]).toMatchObject({ seq: 3, reason });
  });

  it('is verified by a command, which fails on a broken chain', async () => {
    const verify = () =>
      promisify(execFile)(process.execPath, ['tools/audit-verify.mjs'], {
        env: { ...process.env, DATABASE_URL: api.database.url, DATABASE_OWNER_URL: api.database.ownerUrl },
      });
    expect((await verify()).stdout).toMatch(/^\d+ entries in 2 gardens: every chain holds\n$/);
    await admin.query('UPDATE audit_entries SET object_id = garden_id WHERE id = (SELECT entry_id FROM audit_links WHERE garden_id = $1 AND seq = 2)', [
      garden.gardenId,
    ]);
    await expect(verify()).rejects.toMatchObject({ code: 1, stdout: expect.stringContaining('1 faults'), stderr: expect.stringContaining('entry 2') });
  }, 180_000);
});

describe('the history as people read it', () => {
  it('says who did what, to whom, in order', async () => {
    const { body, status } = await coordinator.http.get(`/v1/history?objectId=${ids.buildId}&limit=100`);
    expect(status).toBe(200);
    expect((body.items as Entry[]).map(({ by, action }) => [by, action])).toEqual([['first', 'build.create']]);
    const member = await api.person(garden.gardenId, ['member']);
    expect((await member.http.get('/v1/history')).status).toBe(403);
  });

  it('says who changed what between two revisions of a plan', async () => {
    await make(garden.http, '/v1/plans', { buildId: ids.buildId }).catch(() => undefined);
    expect((await garden.http.post('/v1/plans', { buildId: ids.buildId })).status).toBe(202);
    const build = await garden.http.get(`/v1/builds/${ids.buildId}`);
    await coordinator.http.patch(`/v1/builds/${ids.buildId}`, build.headers['etag'] as string, { crew: { ...build.body.crew, people: 7 } }).expect(200);
    const structure = await garden.http.get(`/v1/structures/${ids.structureId}`);
    await coordinator.http.patch(`/v1/structures/${ids.structureId}`, structure.headers['etag'] as string, { airLeaks: 'sealed' }).expect(200);
    expect((await garden.http.post('/v1/plans', { buildId: ids.buildId })).status).toBe(202);
    const { body } = await coordinator.http.get(`/v1/builds/${ids.buildId}/history?fromRevision=2&toRevision=3`).expect(200);
    expect(body.changes).toEqual(
      expect.arrayContaining([
        { pointer: '/crew/people', before: build.body.crew.people, after: 7 },
        { pointer: '/structure/airLeaks', before: structure.body.airLeaks, after: 'sealed' },
      ]),
    );
    expect(body.changes).toHaveLength(2);
    const who = (await coordinator.http.get(`/v1/history?objectId=${ids.structureId}`)).body.items.at(-1).by as string;
    expect((body.entries as Entry[]).map(({ by, action }) => [by, action])).toEqual(
      expect.arrayContaining([
        [who, 'build.update'],
        [who, 'structure.update'],
      ]),
    );
    expect(body.to).toMatchObject({ revision: 3, by: 'first' });
    await coordinator.http.get(`/v1/builds/${ids.buildId}/history?fromRevision=2&toRevision=9`).expect(404);
    await coordinator.http.get(`/v1/builds/${ids.buildId}/history?fromRevision=2`).expect(400);
  });
});
