import { get as httpGet, request as httpRequest, type OutgoingHttpHeaders } from 'node:http';
import type { AddressInfo } from 'node:net';
import { afterAll, beforeAll, describe, expect, it, jest } from '@jest/globals';
import type pg from 'pg';
import { makeKey } from '../../apps/api/src/platform/access/key.js';
import { POOL } from '../../apps/api/src/platform/database/pool.js';
import { startApi, type TestApi } from '../support/api-app.js';
import { asAdmin, lastMailTo, newAddress, OTHER_PASSWORD, PASSWORD, problemOf, send, signedUp, signIn, type SignedUp } from '../support/people.js';

let api: TestApi;
let person: SignedUp;

const COOKIE = '__Host-lathwork-session';

beforeAll(async () => {
  api = await startApi({ env: { SIGN_UPS_PER_HOUR: '1000' } });
  person = await signedUp(api);
});
afterAll(() => api.stop());

const port = (): number => (api.server.address() as AddressInfo).port;

interface Answer {
  status: number;
  body: Record<string, unknown>;
  headers: Record<string, unknown>;
}

/** A sign-in from one of the machine's own loopback addresses, so that the server sees another caller. */
const signInFrom = (localAddress: string, email: string, password: string): Promise<Answer> =>
  new Promise((resolve, reject) => {
    const body = JSON.stringify({ email, password, as: 'token' });
    const headers = { 'Content-Type': 'application/json', 'Content-Length': Buffer.byteLength(body) };
    const request = httpRequest({ host: '127.0.0.1', port: port(), path: '/v1/sessions', method: 'POST', localAddress, headers }, (answer) => {
      let text = '';
      answer.on('data', (chunk: Buffer) => (text += chunk.toString()));
      answer.on('end', () => resolve({ status: answer.statusCode ?? 0, body: JSON.parse(text) as Record<string, unknown>, headers: answer.headers }));
    });
    request.on('error', reject);
    request.end(body);
  });

const clearTries = () => asAdmin(api, 'DELETE FROM attempts');
const median = (list: number[]): number => [...list].sort((a, b) => a - b)[Math.floor(list.length / 2)] as number;

describe('guessing passwords', () => {
  it('API2: 100 wrong passwords from 10 addresses against one account: after ten it is slowed, from wherever', async () => {
    const victim = await signedUp(api);
    await clearTries();
    const answers: Answer[] = [];
    for (let i = 0; i < 100; i += 1) answers.push(await signInFrom(`127.0.0.${2 + (i % 10)}`, victim.email, `wrong guess number ${i}`));
    expect(answers.slice(0, 10).map(({ status }) => status)).toEqual(Array.from({ length: 10 }, () => 401));
    const checked = answers.filter(({ status }) => status === 401).length;
    expect(checked).toBeLessThanOrEqual(14);
    const slowed = answers.filter(({ status }) => status === 429);
    expect(slowed.length).toBe(100 - checked);
    for (const answer of slowed) {
      expect(problemOf(answer)).toBe('slowed-down');
      expect(Number(answer.headers['retry-after'])).toBeGreaterThanOrEqual(1);
    }
    // The right password is not looked at either while it is slowed; after the wait it opens, and all is forgotten.
    expect((await signInFrom('127.0.0.99', victim.email, PASSWORD)).status).toBe(429);
    await asAdmin(api, `UPDATE attempts SET last_at = last_at - interval '10 minutes'`);
    expect((await signInFrom('127.0.0.99', victim.email, PASSWORD)).status).toBe(201);
    expect((await signInFrom('127.0.0.99', victim.email, 'wrong again')).status).toBe(401);
  });

  it('API2: 40 at the same moment get no further than 40 one after the other', async () => {
    const victim = await signedUp(api);
    await clearTries();
    const answers = await Promise.all(Array.from({ length: 40 }, (_none, i) => signInFrom(`127.0.0.${2 + (i % 10)}`, victim.email, `wrong guess number ${i}`)));
    expect(answers.filter(({ status }) => status === 401).length).toBeLessThanOrEqual(12);
    expect(answers.every(({ status }) => status === 401 || status === 429)).toBe(true);
  });

  it('API2: an address that nobody has is slowed just the same', async () => {
    const nobody = newAddress();
    const answers: Answer[] = [];
    for (let i = 0; i < 13; i += 1) answers.push(await signInFrom('127.0.0.30', nobody, `wrong guess number ${i}`));
    expect(answers.slice(0, 10).every(({ status }) => status === 401)).toBe(true);
    expect(answers.slice(10).some(({ status }) => status === 429)).toBe(true);
  });

  it('API2: one network that tries many accounts is slowed too, and never shut out for long', async () => {
    await clearTries();
    let status = 0;
    let tries = 0;
    for (; tries < 70 && status !== 429; tries += 1) status = (await signInFrom('127.0.0.40', newAddress(), 'wrong guess of all')).status;
    expect(tries).toBe(61);
    expect((await signInFrom('127.0.0.41', person.email, PASSWORD)).status).toBe(201);
  });

  it('API2: the answer comes as late for an unknown address as for a wrong password (medians within 10 %)', async () => {
    const known = await signedUp(api);
    const rounds = async (): Promise<number> => {
      const [mine, nobodys]: [number[], number[]] = [[], []];
      for (let i = 0; i < 15; i += 1) {
        await clearTries();
        for (const [email, times] of [
          [known.email, mine],
          [newAddress(), nobodys],
        ] as const) {
          const from = performance.now();
          expect((await signInFrom('127.0.0.50', email, 'wrong guess of all')).status).toBe(401);
          times.push(performance.now() - from);
        }
      }
      return Math.abs(median(mine) - median(nobodys)) / Math.max(median(mine), median(nobodys));
    };
    // On a busy machine one round may be off by chance; a real difference is there every time.
    const gaps: number[] = [];
    do gaps.push(await rounds());
    while (gaps.length < 8 && Math.min(...gaps) > 0.1);
    expect(Math.min(...gaps)).toBeLessThanOrEqual(0.1);
  }, 120_000);

  it('API2: the words for an unknown address and a wrong password are the same', async () => {
    await clearTries();
    const [a, b] = [await signInFrom('127.0.0.51', person.email, 'wrong guess'), await signInFrom('127.0.0.51', newAddress(), 'wrong guess')];
    expect({ ...a.body, requestId: null }).toEqual({ ...b.body, requestId: null });
  });
});

describe('credentials in the wrong place', () => {
  it('API2, S15: keys and sessions in the address, the body or another header open nothing', async () => {
    const { key } = await api.garden();
    for (const secret of [key, person.token])
      for (const path of ['/v1/sites', '/v1/account'])
        for (const name of ['key', 'api_key', 'token', 'access_token', 'authorization'])
          expect([name, (await api.anyone.get(`${path}?${name}=${secret}`)).status]).toEqual([name, 401]);
    for (const name of ['X-Api-Key', 'X-Auth-Token', 'Proxy-Authorization'])
      expect([name, (await api.anyone.get('/v1/sites').set(name, `Bearer ${key}`)).status]).toEqual([name, 401]);
    // A key of a garden is no session cookie.
    expect((await api.anyone.get('/v1/sites').set('Cookie', `${COOKIE}=${key}`)).status).toBe(401);
  });

  it('S15: a key with a bad checksum is refused without asking the database', async () => {
    const { key } = await api.garden();
    const bad = `${key.slice(0, -1)}${key.endsWith('0') ? '1' : '0'}`;
    const pool = api.app.get<pg.Pool>(POOL);
    const asked = jest.spyOn(pool, 'query');
    const lookups = (): number => asked.mock.calls.filter(([query]) => JSON.stringify(query).includes('find_credential')).length;
    try {
      for (let i = 0; i < 5; i += 1) expect((await api.as(bad).get('/v1/sites')).status).toBe(401);
      expect(lookups()).toBe(0);
      // One that is well-formed and not ours does ask, so the count means something.
      expect((await api.as(makeKey().key).get('/v1/sites')).status).toBe(401);
      expect(lookups()).toBe(1);
    } finally {
      asked.mockRestore();
    }
  });

  it('API2: signing out, a new password and a reset each end a session for good', async () => {
    const someone = await signedUp(api);
    const token = await signIn(api, someone.email, PASSWORD);
    await api.as(token).request('delete', '/v1/sessions/current');
    expect((await api.as(token).get('/v1/account')).status).toBe(401);
    await send(api.anyone, '/v1/password-resets', { email: someone.email });
    const { code } = await lastMailTo(api, someone.email);
    expect((await send(api.anyone, '/v1/password-resets/redeem', { code, password: OTHER_PASSWORD })).status).toBe(204);
    expect((await someone.http.get('/v1/account')).status).toBe(401);
  });
});

describe('a cookie that another site makes the browser send', () => {
  let cookie: string;

  beforeAll(async () => {
    await clearTries();
    const answer = await send(api.anyone, '/v1/sessions', { email: person.email, password: PASSWORD });
    cookie = ((answer.headers['set-cookie'] as unknown as string[])[0] ?? '').split(';')[0] as string;
  });

  const change = (headers: OutgoingHttpHeaders) => {
    const request = api.anyone.request('delete', '/v1/sessions').set('Cookie', cookie);
    for (const [name, value] of Object.entries(headers)) request.set(name, String(value));
    return request;
  };

  it.each([
    ['says it is cross-site', { 'Sec-Fetch-Site': 'cross-site' }],
    ['says it is of a sibling host', { 'Sec-Fetch-Site': 'same-site' }],
    ['says cross-site with a right Origin', { 'Sec-Fetch-Site': 'cross-site', Origin: 'http://127.0.0.1' }],
    ['says nothing and names another Origin', { Origin: 'https://elsewhere.example' }],
    ['says nothing and has an opaque Origin', { Origin: 'null' }],
    ['says nothing at all', {}],
  ])('S14: is refused for a change when the browser %s', async (_what, headers) => {
    const answer = await change(headers);
    expect([answer.status, problemOf(answer)]).toEqual([403, 'cross-site']);
  });

  it('S14: is taken from the same origin, and for reading', async () => {
    expect((await change({ 'Sec-Fetch-Site': 'same-origin' })).status).toBe(204);
    expect((await change({ Origin: `http://127.0.0.1:${port()}`, Host: `127.0.0.1:${port()}` })).status).toBe(204);
    expect((await api.anyone.get('/v1/account').set('Cookie', cookie)).status).toBe(200);
  });

  it('S14: a key or a token in the header is not asked where it comes from', async () => {
    const { http } = await api.garden();
    expect((await http.post('/v1/keys', { name: 'x', scopes: ['sites:read'] }).set('Sec-Fetch-Site', 'cross-site')).status).toBe(201);
    const token = await signIn(api, person.email, PASSWORD);
    expect((await api.as(token).request('delete', '/v1/sessions').set('Origin', 'https://elsewhere.example')).status).toBe(204);
  });

  it('S14: no site can sign a browser in under its own account', async () => {
    const answer = await send(api.anyone, '/v1/sessions', { email: person.email, password: PASSWORD }).set('Sec-Fetch-Site', 'cross-site');
    expect(problemOf(answer)).toBe('cross-site');
  });

  it('S14: with a public origin named, only that one counts, whatever host the request claims', async () => {
    const named = await startApi({ env: { PUBLIC_ORIGIN: 'https://garden.example' } });
    try {
      const someone = await signedUp(named);
      const answer = await send(named.anyone, '/v1/sessions', { email: someone.email, password: PASSWORD });
      const theirs = ((answer.headers['set-cookie'] as unknown as string[])[0] ?? '').split(';')[0] as string;
      const from = (origin: string, host: string) => named.anyone.request('delete', '/v1/sessions').set({ Cookie: theirs, Origin: origin, Host: host });
      expect((await from('https://evil.example', 'evil.example')).status).toBe(403);
      expect((await from('https://garden.example', 'garden.example')).status).toBe(204);
    } finally {
      await named.stop();
    }
  });
});

describe('the server under the attack', () => {
  it('API2: stays reachable while passwords are guessed', async () => {
    await clearTries();
    const flood = Array.from({ length: 30 }, (_none, i) => signInFrom(`127.0.0.${60 + i}`, newAddress(), 'wrong guess of all'));
    const from = performance.now();
    const alive = await new Promise<number>((resolve, reject) => {
      httpGet({ host: '127.0.0.1', port: port(), path: '/livez' }, (answer) => {
        answer.resume();
        resolve(answer.statusCode ?? 0);
      }).on('error', reject);
    });
    const waited = performance.now() - from;
    expect(alive).toBe(200);
    await Promise.all(flood);
    // Generous: it is answered while the thirty still wait, also on a busy machine.
    expect(waited).toBeLessThan(10_000);
  });
});
