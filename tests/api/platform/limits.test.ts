import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import pg from 'pg';
import { parseList, type BareItem } from 'structured-headers';
import { PIVOT } from '../../../apps/api/src/platform/access/pivot.js';
import { isCostly } from '../../../apps/api/src/platform/limits/limits.interceptor.js';
import { networkOf } from '../../../apps/api/src/platform/limits/rate-limits.js';
import { startApi, type TestApi, type TestApiOptions } from '../../support/api-app.js';
import { ProbeModule } from '../../support/platform-probe.js';

const running: TestApi[] = [];
const apiWith = async (env: Record<string, string>, more: TestApiOptions = {}): Promise<TestApi> => {
  const api = await startApi({ env, extra: [ProbeModule], ...more });
  running.push(api);
  return api;
};
afterAll(() => Promise.all(running.map((api) => api.stop())));

type Fields = Map<string, Map<string, BareItem>>;

/** A field as the standard for structured fields reads it: a list of names, each with its figures. */
const fieldOf = (headers: Record<string, string>, name: string): Fields =>
  new Map(
    parseList(headers[name] ?? '').map((item) => {
      const [value, parameters] = item as [BareItem, Map<string, BareItem>];
      if (typeof value !== 'string') throw new Error(`${name} names a policy by something that is not a string`);
      return [value, parameters];
    }),
  );

interface Answer {
  status: number;
  headers: Record<string, string>;
  body: Record<string, unknown>;
}

const checkFields = ({ headers }: Answer): { policies: Fields; limits: Fields } => {
  const [policies, limits] = [fieldOf(headers, 'ratelimit-policy'), fieldOf(headers, 'ratelimit')];
  expect([...limits.keys()]).toEqual([...policies.keys()]);
  for (const [name, figures] of limits) {
    const [r, t, q] = [figures.get('r'), figures.get('t'), policies.get(name)?.get('q')] as [number, number, number];
    for (const figure of [r, t, q]) expect(Number.isInteger(figure)).toBe(true);
    expect(r).toBeGreaterThanOrEqual(0);
    expect(r).toBeLessThanOrEqual(q);
    expect(t).toBeGreaterThanOrEqual(0);
  }
  return { policies, limits };
};

const checkRefusal = (answer: Answer, policy: string): void => {
  expect([answer.status, answer.body['type'], answer.body['violated-policies']]).toEqual([429, '/v1/problems/rate-limited', [policy]]);
  expect(answer.headers['content-type']).toContain('application/problem+json');
  const t = checkFields(answer).limits.get(policy)?.get('t') as number;
  expect(Number(answer.headers['retry-after'])).toBeGreaterThanOrEqual(Math.max(1, t));
};

describe('request limits', () => {
  it('A19: of q + 1 requests of one credential the last is refused; every answer says what is left, and it falls by one', async () => {
    const api = await apiWith({ RATE_PER_CREDENTIAL: '20' });
    const garden = await api.garden();
    const left: number[] = [];
    for (let at = 0; at < 20; at += 1) {
      const answer: Answer = await garden.http.get('/v1/probe').expect(200);
      const { policies, limits } = checkFields(answer);
      expect([...policies.keys()]).toEqual(['address', 'credential', 'garden']);
      expect(policies.get('credential')).toEqual(
        new Map([
          ['q', 20],
          ['w', 60],
        ]),
      );
      left.push(limits.get('credential')?.get('r') as number);
    }
    expect(left).toEqual(Array.from({ length: 20 }, (_one, at) => 19 - at));
    checkRefusal(await garden.http.get('/v1/probe'), 'credential');
    // Another key of the same garden has a count of its own.
    const other = api.as(await api.keyOf(garden.gardenId, ['sites:read']));
    await other.get('/v1/probe').expect(200);
  });

  it('A19: an address is counted before anybody is known, also when nobody is let in, and before the body is read', async () => {
    const api = await apiWith({ RATE_PER_ADDRESS: '10' });
    for (let at = 0; at < 10; at += 1) {
      const answer: Answer = await api.anyone.get(at % 2 ? '/v1/sites' : '/v1/nowhere');
      expect([401, 404]).toContain(answer.status);
      expect(checkFields(answer).limits.get('address')?.get('r')).toBe(9 - at);
    }
    checkRefusal(await api.anyone.get('/v1/sites'), 'address');
    checkRefusal(await api.anyone.request('post', '/v1/sites').set('Content-Type', 'application/json').send('{"half":'), 'address');
    checkRefusal(await (await api.garden()).http.get('/v1/sites'), 'address');
  });

  it('A19: the keys of a garden have a quota together, and another garden has its own', async () => {
    const api = await apiWith({ RATE_PER_GARDEN: '6' });
    const [garden, other] = [await api.garden(), await api.garden()];
    const keys = await Promise.all([1, 2, 3].map(() => api.keyOf(garden.gardenId, ['sites:read'])));
    for (let at = 0; at < 6; at += 1)
      await api
        .as(keys[at % 3] as string)
        .get('/v1/probe')
        .expect(200);
    for (const key of keys) checkRefusal(await api.as(key).get('/v1/probe'), 'garden');
    await other.http.get('/v1/probe').expect(200);
  });

  it('A20: costly requests have a class of their own; reading goes on when it is used up', async () => {
    const api = await apiWith({ RATE_COSTLY: '3' });
    const garden = await api.garden();
    const ask = async (): Promise<Answer> => garden.http.post('/v1/plans', { buildId: '019a0000-0000-7000-8000-000000000001' });
    for (let at = 0; at < 3; at += 1) {
      const answer = await ask();
      expect(answer.status).toBe(404);
      expect([...checkFields(answer).policies.keys()]).toEqual(['address', 'credential', 'garden', 'costly']);
    }
    checkRefusal(await ask(), 'costly');
    await garden.http.get('/v1/plans').expect(200);
  });

  it('A20: plans, documents, exports and calculations are the costly ones, and nothing that only reads', () => {
    const costly = Object.keys(PIVOT).filter(isCostly);
    expect(costly).toEqual(expect.arrayContaining(['createPlan', 'createDocument']));
    expect(costly.filter((id) => /^(list|get|update|archive|restore)/.test(id))).toEqual([]);
    expect(Object.keys(PIVOT).filter((id) => /export|calculat|simulat/i.test(id) && !/^(list|get)/.test(id) && !isCostly(id))).toEqual([]);
  });

  it('health, numbers and pages for people are never refused', async () => {
    const api = await apiWith({ RATE_PER_ADDRESS: '1', METRICS_TOKEN: 'm'.repeat(32) });
    await api.anyone.get('/v1/nowhere').expect(404);
    await api.anyone.get('/v1/nowhere').expect(429);
    for (const path of ['/livez', '/v1/docs', '/v1/openapi.json', '/v1/problems', '/v1/problems/rate-limited']) {
      const { headers } = await api.anyone.get(path).expect(200);
      expect(headers['ratelimit']).toBeUndefined();
    }
    expect([200, 503]).toContain((await api.anyone.get('/readyz')).status);
    await api.as('m'.repeat(32)).get('/metrics').expect(200);
  });

  it('permits come back when Retry-After says so', async () => {
    const api = await apiWith({ RATE_PER_CREDENTIAL: '5', RATE_WINDOW_S: '2' });
    const garden = await api.garden();
    for (let at = 0; at < 5; at += 1) await garden.http.get('/v1/probe').expect(200);
    const { headers } = await garden.http.get('/v1/probe').expect(429);
    await new Promise((resolve) => setTimeout(resolve, Number(headers['retry-after']) * 1000));
    await garden.http.get('/v1/probe').expect(200);
  });

  it('a caller cannot get a count of its own by naming another address, unless a proxy is trusted', async () => {
    const api = await apiWith({ RATE_PER_ADDRESS: '4' });
    const from = (one: TestApi, address: string) => one.anyone.get('/v1/nowhere').set('X-Forwarded-For', address);
    for (let at = 0; at < 4; at += 1) await from(api, `192.0.2.${at}`).expect(404);
    await from(api, '192.0.2.77').expect(429);
    const behind = await apiWith({ RATE_PER_ADDRESS: '1', TRUSTED_PROXIES: '1' });
    for (let at = 0; at < 4; at += 1) await from(behind, `192.0.2.${at}`).expect(404);
    // What the caller wrote in front of the proxy's own word does not count.
    await from(behind, '198.51.100.1, 192.0.2.3').expect(429);
  });

  it.each([
    ['192.0.2.7', '192.0.2.7'],
    ['::ffff:192.0.2.7', '192.0.2.7'],
    ['2001:db8:1:2:3:4:5:6', '2001:db8:1:2::/64'],
    ['2001:db8:1:2::1', '2001:db8:1:2::/64'],
    ['not an address', 'unknown'],
  ])('%s is counted as %s', (address, network) => expect(networkOf(address)).toBe(network));
});

describe('the shared count', () => {
  let api: TestApi;
  let admin: pg.Client;
  beforeAll(async () => {
    api = await apiWith({});
    admin = new pg.Client({ connectionString: api.database.adminUrl });
    await admin.connect();
  });
  afterAll(() => admin.end());

  interface Row {
    granted: number;
    remaining: number;
    in_slice: string;
    returns_ms: number;
  }
  const take = async (bucket: number, quota: number, windowMs: number, wanted: number, unused = 0, slice = '0', sweep = false): Promise<Row> => {
    const { rows } = await admin.query<Row>(
      'SELECT * FROM take_permits(ARRAY[$1::bytea], ARRAY[$2::int], ARRAY[$3::int], ARRAY[$4::int], ARRAY[$5::int], ARRAY[$6::bigint], $7)',
      [Buffer.alloc(16, bucket), quota, windowMs, wanted, unused, slice, sweep],
    );
    return rows[0] as Row;
  };

  it('gives no more than there is, and takes back what was not used', async () => {
    const first = await take(1, 100, 60_000, 70);
    expect([first.granted, first.remaining]).toEqual([70, 30]);
    expect(first.returns_ms).toBeGreaterThan(60_000);
    expect(first.returns_ms).toBeLessThanOrEqual(62_400);
    expect(await take(1, 100, 60_000, 70)).toMatchObject({ granted: 30, remaining: 0 });
    expect(await take(1, 100, 60_000, 5)).toMatchObject({ granted: 0, remaining: 0 });
    expect(await take(1, 100, 60_000, 5, 20, first.in_slice)).toMatchObject({ granted: 5, remaining: 15 });
    // A slice that is over, or never was, gives nothing back.
    expect(await take(1, 100, 60_000, 0, 50, '1')).toMatchObject({ remaining: 15 });
    expect(await take(1, 100, 60_000, 0, 50, String(Number(first.in_slice) + 1000))).toMatchObject({ remaining: 15 });
  });

  it('a clock of the database that was set back or forward leaves nobody locked out', async () => {
    await take(2, 10, 60_000, 10);
    for (const hours of [2, -2]) {
      await admin.query('UPDATE permit_counts SET slice = slice + $1::bigint * 3000 WHERE bucket = $2', [hours, Buffer.alloc(16, 2)]);
      expect(await take(2, 10, 60_000, 10)).toMatchObject({ granted: 10 });
    }
  });

  it('forgets who has not asked for two windows', async () => {
    await take(3, 10, 1_000, 1);
    await admin.query("UPDATE permit_counts SET ends_at = now() - interval '1 second' WHERE bucket = $1", [Buffer.alloc(16, 3)]);
    await take(4, 10, 1_000, 1, 0, '0', true);
    const { rows } = await admin.query<{ n: number }>('SELECT count(*)::int AS n FROM permit_counts WHERE bucket = $1', [Buffer.alloc(16, 3)]);
    expect(rows[0]?.n).toBe(0);
  });

  it('cannot be read or changed by the application except by taking', async () => {
    const app = new pg.Client({ connectionString: api.database.url });
    await app.connect();
    for (const sql of ['SELECT * FROM permit_counts', 'DELETE FROM permit_counts', 'UPDATE permit_counts SET slice = 0'])
      await expect(app.query(sql)).rejects.toMatchObject({ code: '42501' });
    await app.end();
    const { rows } = await admin.query("SELECT relpersistence FROM pg_class WHERE relname = 'permit_counts'");
    expect(rows).toEqual([{ relpersistence: 'u' }]);
  });

  it('holds no address and no id of anybody', async () => {
    const garden = await api.garden();
    await garden.http.get('/v1/probe').expect(200);
    const { rows } = await admin.query<{ text: string }>("SELECT bucket::text || ' ' || encode(bucket, 'escape') AS text FROM permit_counts");
    const all = rows.map(({ text }) => text).join('\n');
    for (const trace of ['127.0.0.1', garden.gardenId, garden.actor.credentialId, garden.gardenId.replaceAll('-', '')]) expect(all).not.toContain(trace);
  });
});
