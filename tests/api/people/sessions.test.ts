import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { Sessions } from '../../../apps/api/src/platform/access/sessions.js';
import { startApi, type TestApi } from '../../support/api-app.js';
import { asAdmin, OTHER_PASSWORD, PASSWORD, problemOf, send, signedUp, signIn, type SignedUp } from '../../support/people.js';

let api: TestApi;
let person: SignedUp;

const MINUTE_MS = 60_000;
const COOKIE = '__Host-lathwork-session';

beforeAll(async () => {
  api = await startApi({ env: { SIGN_UPS_PER_HOUR: '1000' } });
  person = await signedUp(api);
});
afterAll(() => api.stop());

const cookieOf = (answer: { headers: Record<string, unknown> }): string => ((answer.headers['set-cookie'] as unknown as string[] | undefined) ?? [])[0] ?? '';
const signInWithCookie = (email: string) => send(api.anyone, '/v1/sessions', { email, password: PASSWORD });
const valueOf = (cookie: string): string => cookie.slice(COOKIE.length + 1, cookie.indexOf(';'));

describe('signing in', () => {
  it('S14: gives a browser a cookie that only this host, TLS and no script get, and no token beside it', async () => {
    const answer = await signInWithCookie(person.email);
    expect(answer.status).toBe(201);
    const [first, ...flags] = cookieOf(answer).split('; ');
    expect(first).toMatch(new RegExp(`^${COOKIE}=lws_[0-9A-Za-z]{36}$`));
    expect(flags.sort()).toEqual(['HttpOnly', 'Max-Age=43200', 'Path=/', 'SameSite=Lax', 'Secure']);
    expect((answer.body as { token: unknown }).token).toBeNull();
    expect(answer.text).not.toContain(valueOf(cookieOf(answer)));
    const shown = await api.anyone.get('/v1/account').set('Cookie', `theme=dark; ${first}`);
    expect(shown.body).toMatchObject({ email: person.email });
    expect(shown.headers['cache-control']).toBe('no-store');
  });

  it('gives a program a token and no cookie', async () => {
    const answer = await send(api.anyone, '/v1/sessions', { email: person.email, password: PASSWORD, as: 'token' });
    expect(cookieOf(answer)).toBe('');
    expect((await api.as((answer.body as { token: string }).token).get('/v1/account')).status).toBe(200);
  });

  it('S13: gives a new session each time, and ends the one the browser had', async () => {
    const first = await signInWithCookie(person.email);
    const header = { Cookie: `${COOKIE}=${valueOf(cookieOf(first))}` };
    const second = await send(api.anyone, '/v1/sessions', { email: person.email, password: PASSWORD }).set(header);
    expect((second.body as { id: string }).id).not.toBe((first.body as { id: string }).id);
    expect(valueOf(cookieOf(second))).not.toBe(valueOf(cookieOf(first)));
    expect((await api.anyone.get('/v1/account').set(header)).status).toBe(401);
  });

  it('S13: takes no session id that the caller brings', async () => {
    const planted = `lws_${'A'.repeat(36)}`;
    const answer = await send(api.anyone, '/v1/sessions', { email: person.email, password: PASSWORD }).set('Cookie', `${COOKIE}=${planted}`);
    expect(answer.status).toBe(201);
    expect(valueOf(cookieOf(answer))).not.toBe(planted);
    expect((await api.as(planted).get('/v1/account')).status).toBe(401);
  });

  it('refuses all wrong things with one and the same answer', async () => {
    const strip = (answer: { status: number; body: unknown }): unknown => [answer.status, { ...(answer.body as object), requestId: null }];
    const wrong = await send(api.anyone, '/v1/sessions', { email: person.email, password: OTHER_PASSWORD });
    const nobody = await send(api.anyone, '/v1/sessions', { email: 'nobody.at.all@example.org', password: OTHER_PASSWORD });
    expect(strip(wrong)).toEqual(strip(nobody));
    expect(problemOf(wrong)).toBe('sign-in-failed');
    expect(wrong.headers['www-authenticate']).toBe(nobody.headers['www-authenticate']);
    expect(wrong.headers['www-authenticate']).toBeDefined();
  });

  it('refuses an account that was blocked, in the same words', async () => {
    const blocked = await signedUp(api);
    await asAdmin(api, 'UPDATE accounts SET blocked_at = now() WHERE email = $1', [blocked.email]);
    expect(problemOf(await send(api.anyone, '/v1/sessions', { email: blocked.email, password: PASSWORD }))).toBe('sign-in-failed');
    expect((await blocked.http.get('/v1/account')).status).toBe(401);
  });

  it('API2: takes no session from the address', async () => {
    for (const name of ['token', 'access_token', 'session', 'authorization', 'key'])
      expect([name, (await api.anyone.get(`/v1/account?${name}=${person.token}`)).status]).toEqual([name, 401]);
  });

  it('S13: a token has at least 128 random bits', async () => {
    const tokens = await Promise.all(Array.from({ length: 4 }, () => signIn(api, person.email, PASSWORD)));
    expect(new Set(tokens.map((token) => token.slice(0, 34))).size).toBe(4);
    // Thirty signs of 62: log2(62) * 30 bits.
    for (const token of tokens) expect(token).toMatch(/^lws_[0-9A-Za-z]{36}$/);
    expect(Math.log2(62) * 30).toBeGreaterThan(128);
  });
});

describe('own sessions', () => {
  it('S13: are listed, ended one by one, and ended everywhere else', async () => {
    const { email } = await signedUp(api);
    const [a, b, c] = [await signIn(api, email, PASSWORD), await signIn(api, email, PASSWORD), await signIn(api, email, PASSWORD)];
    const list = async (token: string) =>
      ((await api.as(token).get('/v1/sessions')).body as { items: { id: string; current: boolean; label: string }[] }).items;
    const all = await list(a);
    expect(all).toHaveLength(4);
    expect(all.filter(({ current }) => current)).toHaveLength(1);
    expect(JSON.stringify(all)).not.toContain('lws_');
    const other = (await list(b)).find(({ current }) => current)?.id as string;
    expect((await api.as(a).request('delete', `/v1/sessions/${other}`)).status).toBe(204);
    expect((await api.as(b).get('/v1/account')).status).toBe(401);
    expect((await api.as(a).request('delete', `/v1/sessions/${other}`)).status).toBe(404);
    expect((await api.as(a).request('delete', '/v1/sessions')).status).toBe(204);
    expect((await api.as(c).get('/v1/account')).status).toBe(401);
    expect(await list(a)).toHaveLength(1);
  });

  it('API1: nobody ends or sees a session of somebody else', async () => {
    const stranger = await signedUp(api);
    const { items } = (await person.http.get('/v1/sessions')).body as { items: { id: string }[] };
    for (const { id } of items) expect((await stranger.http.request('delete', `/v1/sessions/${id}`)).status).toBe(404);
    expect((await person.http.get('/v1/account')).status).toBe(200);
    const theirs = (await stranger.http.get('/v1/sessions')).text;
    for (const { id } of items) expect(theirs).not.toContain(id);
  });

  it('API2, S13: signing out ends the session at the server within a second, and takes the cookie back', async () => {
    const answer = await signInWithCookie(person.email);
    const header = { Cookie: `${COOKIE}=${valueOf(cookieOf(answer))}`, Origin: 'http://127.0.0.1', 'Sec-Fetch-Site': 'same-origin' };
    const started = performance.now();
    const out = await api.anyone.request('delete', '/v1/sessions/current').set(header);
    expect(out.status).toBe(204);
    expect(cookieOf(out)).toMatch(new RegExp(`^${COOKIE}=; Path=/; Max-Age=0; `));
    expect((await api.anyone.get('/v1/account').set(header)).status).toBe(401);
    expect(performance.now() - started).toBeLessThan(1000);
  });

  it('S13: end after half an hour without use, and after twelve hours whatever happens', async () => {
    const token = await signIn(api, person.email, PASSWORD);
    const sessions = api.get(Sessions);
    const at = (minutes: number): Date => new Date(Date.now() + minutes * MINUTE_MS);
    expect(await sessions.personOf(token, undefined, at(29))).not.toBeNull();
    expect(await sessions.personOf(token, undefined, at(31))).toBeNull();
    const setTo = (idle: number, old: number) =>
      asAdmin(
        api,
        `UPDATE account_sessions SET last_seen_at = now() - $1 * interval '1 minute', expires_at = now() + $2 * interval '1 minute' WHERE token_sha256 = sha256($3)`,
        [idle, 720 - old, token],
      );
    // Used every twenty minutes, it lives on; the use is noted and the half hour begins again.
    await setTo(20, 700);
    expect((await api.as(token).get('/v1/account')).status).toBe(200);
    expect(await sessions.personOf(token, undefined, at(11))).not.toBeNull();
    // Past its end it is over, however busy.
    expect(await sessions.personOf(token, undefined, at(21))).toBeNull();
    await setTo(0, 721);
    expect((await api.as(token).get('/v1/account')).status).toBe(401);
    await setTo(31, 60);
    expect((await api.as(token).get('/v1/account')).status).toBe(401);
  });

  it('S13: a new password ends every other session and replaces the one that changed it', async () => {
    const someone = await signedUp(api);
    const other = await signIn(api, someone.email, PASSWORD);
    expect(problemOf(await send(someone.http, '/v1/account/password', { password: OTHER_PASSWORD, newPassword: OTHER_PASSWORD }))).toBe('password-wrong');
    const answer = await send(someone.http, '/v1/account/password', { password: PASSWORD, newPassword: OTHER_PASSWORD });
    expect(answer.status).toBe(200);
    const { token } = answer.body as { token: string };
    expect(token).not.toBe(someone.token);
    for (const old of [someone.token, other]) expect((await api.as(old).get('/v1/account')).status).toBe(401);
    expect((await api.as(token).get('/v1/account')).status).toBe(200);
    await signIn(api, someone.email, OTHER_PASSWORD);
  });
});
