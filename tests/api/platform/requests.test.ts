import { randomUUID } from 'node:crypto';
import { afterAll, beforeAll, describe, expect, test } from '@jest/globals';
import pg from 'pg';
import type { Response } from 'supertest';
import { makeKey } from '../../../apps/api/src/platform/access/key.js';
import { OPERATOR_TOKEN, startApi, type TestApi, type TestGarden } from '../../support/api-app.js';
import { ProbeModule } from '../../support/platform-probe.js';

let api: TestApi;
let garden: TestGarden;
let other: TestGarden;
let admin: pg.Client;
beforeAll(async () => {
  api = await startApi({ extra: [ProbeModule] });
  [garden, other] = [await api.garden(), await api.garden()];
  admin = new pg.Client({ connectionString: api.database.adminUrl });
  await admin.connect();
});
afterAll(async () => {
  await admin.end();
  await api.stop();
});

const rows = async (name: string): Promise<number> => (await admin.query('SELECT count(*)::int AS n FROM sites WHERE name = $1', [name])).rows[0].n;
const probe = (name: string = randomUUID()) => ({ name, elevationM: 5 });

describe('access', () => {
  test('no key, a broken key, a made-up key and the operator token are refused alike', async () => {
    const last = garden.key.at(-1) === 'a' ? 'b' : 'a';
    for (const key of [garden.key.slice(0, -1) + last, makeKey().key, 'lw_', '%'])
      expect((await api.as(key).get('/v1/probe').expect(401)).body.type).toBe('/v1/problems/unauthenticated');
    const answer = await api.anyone.get('/v1/probe').expect(401);
    expect(answer.headers['www-authenticate']).toBe('Bearer realm="lathwork"');
    expect((await api.operator.get('/v1/probe').expect(403)).body.type).toBe('/v1/problems/garden-only');
  });

  test('a key with a wrong checksum is refused without asking the database', async () => {
    const { Credentials } = await import('../../../apps/api/src/platform/access/credentials.js');
    const untouchable = { query: () => Promise.reject(new Error('asked')) } as unknown as pg.Pool;
    const credentials = new Credentials(untouchable);
    expect(await credentials.actorOf(garden.key.slice(0, -1) + (garden.key.at(-1) === 'a' ? 'b' : 'a'))).toBeNull();
    await expect(credentials.actorOf(garden.key)).rejects.toThrow('asked');
  });

  test('a key in the address is not a key', async () => {
    await api.anyone.get(`/v1/probe?authorization=Bearer%20${garden.key}`).expect(401);
  });

  test('a scope that is missing is named', async () => {
    const reader = api.as(await api.keyOf(garden.gardenId, ['sites:read']));
    await reader.get('/v1/probe').expect(200);
    expect((await reader.post('/v1/probe', probe()).expect(403)).body.detail).toContain('sites:write');
  });

  test('a route that says nothing about access is closed', async () => {
    await garden.http.get('/v1/probe/open').expect(401);
  });

  test('the operator route takes the operator only', async () => {
    expect((await garden.http.post('/v1/probe/operator').expect(403)).body.type).toBe('/v1/problems/operator-only');
    await api.as(`${OPERATOR_TOKEN}x`).post('/v1/probe/operator').expect(401);
    await api.operator.post('/v1/probe/operator').expect(201);
  });

  test('S15: revoked, expired and archived end a key; its use is noted at most once a minute', async () => {
    const key = await api.keyOf(garden.gardenId, ['sites:read']);
    const used = async (): Promise<Date | null> =>
      (await admin.query('SELECT last_used_at FROM api_keys WHERE prefix = $1', [key.slice(0, 11)])).rows[0].last_used_at;
    expect(await used()).toBeNull();
    await api.as(key).get('/v1/probe').expect(200);
    const first = await used();
    expect(first).not.toBeNull();
    await api.as(key).get('/v1/probe').expect(200);
    expect(await used()).toEqual(first);
    const set = (what: string) => admin.query(`UPDATE api_keys SET ${what} WHERE prefix = $1`, [key.slice(0, 11)]);
    await set("expires_at = now() - interval '1 second'");
    await api.as(key).get('/v1/probe').expect(401);
    await set("expires_at = now() + interval '1 hour'");
    await api.as(key).get('/v1/probe').expect(200);
    await set('revoked_at = now()');
    await api.as(key).get('/v1/probe').expect(401);
    const closed = await api.garden();
    await admin.query('UPDATE gardens SET archived_at = now() WHERE id = $1', [closed.gardenId]);
    await closed.http.get('/v1/probe').expect(401);
  });

  test('S15: no key stands in the database', async () => {
    const { rows: found } = await admin.query('SELECT * FROM api_keys');
    expect(found.length).toBeGreaterThan(1);
    expect(JSON.stringify(found)).not.toContain(garden.key.slice(11));
  });
});

describe('validation', () => {
  test('A10: all faults of one body come together, each with its place', async () => {
    const { body } = await garden.http.post('/v1/probe', { name: 7, elevationM: 1.5, gardenId: other.gardenId }).expect(400);
    expect(body.type).toBe('/v1/problems/validation-failed');
    expect(body.errors.map((fault: { pointer: string; code: string }) => [fault.pointer, fault.code]).sort()).toEqual([
      ['/elevationM', 'wrong-type'],
      ['/gardenId', 'unknown-field'],
      ['/name', 'wrong-type'],
    ]);
  });

  test('A10: at most fifty faults are told', async () => {
    const { body } = await garden.http.post('/v1/probe', Object.fromEntries(Array.from({ length: 80 }, (_one, at) => [`x${at}`, 1]))).expect(400);
    expect(body.errors).toHaveLength(50);
  });

  test.each(['0', '-1', '101', '1e1', 'x', ''])('a limit of "%s" is refused', async (limit) => {
    const { body } = await garden.http.get(`/v1/probe?limit=${limit}`).expect(400);
    expect(body.errors).toEqual([expect.objectContaining({ pointer: '/limit', in: 'query', code: 'out-of-range' })]);
  });

  test('a malformed id is 400, an unknown one and one of another garden are the same 404', async () => {
    const { body: made } = await other.http.post('/v1/probe', probe()).expect(201);
    await garden.http.get('/v1/probe/ABC').expect(400);
    const [unknown, theirs] = await Promise.all([
      garden.http.get(`/v1/probe/${randomUUID()}`).expect(404),
      garden.http.get(`/v1/probe/${made.id}`).expect(404),
    ]);
    expect({ ...theirs.body, requestId: '' }).toEqual({ ...unknown.body, requestId: '' });
    await other.http.get(`/v1/probe/${made.id}`).expect(200);
  });

  test('A9: an error inside tells nothing of the inside', async () => {
    const { body } = await garden.http.get('/v1/probe/breaks').expect(500);
    expect(body).toEqual({
      type: '/v1/problems/internal',
      title: expect.any(String),
      status: 500,
      detail: expect.any(String),
      remedy: expect.any(String),
      requestId: expect.any(String),
    });
    expect(JSON.stringify(body)).not.toMatch(/read-only|site|prisma/i);
  });
});

describe('versions', () => {
  const make = async (): Promise<{ path: string; etag: string }> => {
    const { headers } = await garden.http.post('/v1/probe', probe()).expect(201);
    return { path: headers['location'] as string, etag: headers['etag'] as string };
  };

  test('A12: a tag is strong, changes with every change, and saves a second reading', async () => {
    const { path, etag } = await make();
    expect(etag).toBe('"1"');
    const again = await garden.http.get(path).set('If-None-Match', etag).expect(304);
    expect([again.text, again.headers['etag']]).toEqual(['', etag]);
    await garden.http.get(path).set('If-None-Match', `W/${etag}, "x"`).expect(304);
    const { headers, body } = await garden.http.patch(path, etag, { elevationM: -3 }).expect(200);
    expect([headers['etag'], body.elevationM]).toEqual(['"2"', -3]);
    await garden.http.get(path).set('If-None-Match', etag).expect(200);
  });

  test('A13: a change without a version is 428, with an old or weak one 412, and changes nothing', async () => {
    const { path, etag } = await make();
    const bare = garden.http.request('patch', path).set('Content-Type', 'application/merge-patch+json').send('{"elevationM":1}');
    expect((await bare.expect(428)).body.type).toBe('/v1/problems/if-match-required');
    await garden.http.patch(path, '"99"', { elevationM: 1 }).expect(412);
    await garden.http.patch(path, `W/${etag}`, { elevationM: 1 }).expect(412);
    await garden.http.get(path).set('If-None-Match', etag).expect(304);
    await garden.http.patch(path, '*', { elevationM: 1 }).expect(200);
  });

  test('A13: of twenty writers with the same version one wins', async () => {
    const { path, etag } = await make();
    const answers = await Promise.all(Array.from({ length: 20 }, (_one, at) => garden.http.patch(path, etag, { elevationM: at })));
    expect(answers.filter(({ status }) => status === 200)).toHaveLength(1);
    expect(answers.filter(({ status }) => status === 412)).toHaveLength(19);
  });

  test('A15: a patch is checked as a whole: null removes, so a required field is missed', async () => {
    const { path, etag } = await make();
    const { body } = await garden.http.patch(path, etag, { name: null, extra: 1 }).expect(400);
    expect(body.errors.map((fault: { pointer: string }) => fault.pointer).sort()).toEqual(['/extra', '/name']);
    await garden.http.request('patch', path).set('If-Match', etag).set('Content-Type', 'application/json').send('{}').expect(415);
  });
});

describe('idempotency', () => {
  test('A16: a repeat gets the same answer, byte for byte, and makes nothing', async () => {
    const body = probe();
    const first = await garden.http.post('/v1/probe', body, 'one').expect(201);
    const second = await garden.http.post('/v1/probe', body, '"one"').expect(201);
    expect(first.headers['idempotency-replayed']).toBeUndefined();
    expect(second.headers['idempotency-replayed']).toBe('true');
    expect([second.text, second.headers['location'], second.headers['etag']]).toEqual([first.text, first.headers['location'], first.headers['etag']]);
    expect(await rows(body.name)).toBe(1);
  });

  test('A16: another body under the same key is refused; another key, credential or garden is another request', async () => {
    const body = probe();
    await garden.http.post('/v1/probe', body, 'two').expect(201);
    expect((await garden.http.post('/v1/probe', probe(), 'two').expect(422)).body.type).toBe('/v1/problems/idempotency-conflict');
    await other.http.post('/v1/probe', probe(), 'two').expect(201);
    await api
      .as(await api.keyOf(garden.gardenId, ['sites:write']))
      .post('/v1/probe', probe(), 'two')
      .expect(201);
  });

  test('A16: fifty at once make one row; who comes while it runs is told so', async () => {
    const answers = await Promise.all(Array.from({ length: 50 }, () => garden.http.post('/v1/probe', { name: 'slow', elevationM: 1 }, 'fifty')));
    expect(await rows('slow')).toBe(1);
    expect(new Set(answers.map(({ status }) => status))).toEqual(new Set([201, 409]));
    expect(new Set(answers.filter(({ status }) => status === 409).map(({ body }) => body.type))).toEqual(new Set(['/v1/problems/idempotency-running']));
  });

  test('A16: what fails is not kept: neither the row nor the answer nor the history', async () => {
    await garden.http.post('/v1/probe', { name: 'fails', elevationM: 1 }, 'three').expect(409);
    expect(await rows('fails')).toBe(0);
    await garden.http.post('/v1/probe', probe(), 'three').expect(201);
  });

  test('A16: keys have 1 to 255 characters; none is no promise', async () => {
    await garden.http.post('/v1/probe', probe(), 'k'.repeat(255)).expect(201);
    expect((await garden.http.post('/v1/probe', probe(), 'k'.repeat(256)).expect(400)).body.type).toBe('/v1/problems/idempotency-key-invalid');
    await garden.http.post('/v1/probe', probe(), '""').expect(400);
    await garden.http.request('post', '/v1/probe').send(probe()).expect(201);
  });

  test('A16: after a day the key is free again', async () => {
    await garden.http.post('/v1/probe', probe(), 'old').expect(201);
    const { rows: kept } = await admin.query(
      "SELECT extract(epoch FROM expires_at - created_at)::int AS s FROM idempotency_answers WHERE idempotency_key = 'old'",
    );
    expect(kept[0].s).toBeGreaterThanOrEqual(24 * 3600 - 5);
    await admin.query("UPDATE idempotency_answers SET expires_at = now() - interval '1 second' WHERE idempotency_key = 'old'");
    expect((await garden.http.post('/v1/probe', probe(), 'old').expect(201)).headers['idempotency-replayed']).toBeUndefined();
  });

  test('a secret is replayed to its caller, and cannot be read in the database', async () => {
    const first = await garden.http.post('/v1/probe/secret', {}, 'hush').expect(201);
    const second = await garden.http.post('/v1/probe/secret', {}, 'hush').expect(201);
    expect([second.text, second.headers['idempotency-replayed']]).toEqual([first.text, 'true']);
    const { rows: kept } = await admin.query("SELECT body, encrypted FROM idempotency_answers WHERE idempotency_key = 'hush'");
    expect(kept[0].encrypted).toBe(true);
    expect(Buffer.from(kept[0].body, 'base64url').toString('latin1')).not.toContain('canary');
  });

  test('the operator’s requests are kept apart from every garden', async () => {
    const first = await api.operator.post('/v1/probe/operator', {}, 'op').expect(201);
    expect((await api.operator.post('/v1/probe/operator', {}, 'op').expect(201)).text).toBe(first.text);
  });

  test('S16: the history names key, request and object, and holds hashes only', async () => {
    const { body } = await garden.http.post('/v1/probe', probe('Hawthorn corner')).set('X-Request-Id', 'history-1').expect(201);
    const { rows: entries } = await admin.query("SELECT * FROM audit_entries WHERE request_id = 'history-1'");
    expect(entries).toEqual([
      expect.objectContaining({
        garden_id: garden.gardenId,
        key_id: garden.actor.keyId,
        action: 'site.create',
        object_type: 'site',
        object_id: body.id,
        after_sha256: expect.stringMatching(/^[0-9a-f]{64}$/),
      }),
    ]);
    expect(JSON.stringify(entries)).not.toContain('Hawthorn');
  });
});

describe('pages', () => {
  let walker: TestGarden;
  beforeAll(async () => {
    walker = await api.garden();
    for (let at = 0; at < 45; at += 1) await walker.http.post('/v1/probe', probe(`p${String(at).padStart(2, '0')}`)).expect(201);
  });

  test('A17: every row once, in order of making, by following the links', async () => {
    const names: string[] = [];
    let path: string | undefined = '/v1/probe?limit=7&flavour=a';
    for (let at = 0; path; at += 1) {
      const { body, headers }: Response = await walker.http.get(path).expect(200);
      names.push(...body.items.map((one: { name: string }) => one.name));
      if (at === 2) await walker.http.post('/v1/probe', probe('p45')).expect(201);
      expect(headers['link']).toContain('</v1/probe?limit=7&flavour=a>; rel="first"');
      path = /<([^>]+)>; rel="next"/.exec(headers['link'] as string)?.[1];
      expect(path === undefined).toBe(body.next === null);
    }
    expect(names).toEqual(Array.from({ length: 46 }, (_one, at) => `p${String(at).padStart(2, '0')}`));
  });

  test('A17: twenty unless asked, a hundred at most', async () => {
    expect((await walker.http.get('/v1/probe').expect(200)).body.items).toHaveLength(20);
    expect((await walker.http.get('/v1/probe?limit=100').expect(200)).body.items).toHaveLength(46);
  });

  test('A18: a cursor of another garden, with other filters or changed anywhere is refused', async () => {
    const { next } = (await walker.http.get('/v1/probe?limit=5&flavour=a').expect(200)).body as { next: string };
    const refused = async (test: Promise<{ status: number; body: { type: string } }>): Promise<void> => {
      const { status, body } = await test;
      expect([status, body.type]).toEqual([400, '/v1/problems/cursor-invalid']);
    };
    await refused(other.http.get(`/v1/probe?flavour=a&cursor=${next}`));
    await refused(walker.http.get(`/v1/probe?flavour=b&cursor=${next}`));
    await refused(walker.http.get(`/v1/probe?cursor=${next}`));
    await walker.http.get(`/v1/probe?limit=9&flavour=a&cursor=${next}`).expect(200);
    for (let at = 0; at < next.length; at += 1)
      for (const swap of ['A', '_', '7'])
        if (next[at] !== swap) await refused(walker.http.get(`/v1/probe?flavour=a&cursor=${next.slice(0, at)}${swap}${next.slice(at + 1)}`));
    await refused(walker.http.get('/v1/probe?flavour=a&cursor=x'));
  });
});
