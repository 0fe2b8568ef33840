import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { homedir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import puppeteer, { type Browser, type Page } from 'puppeteer-core';
import { findBrowser } from '../../apps/report/src/print/chromium.js';
import { browserEnvironment } from '../../apps/report/src/print/launch.js';
import { startApi, type TestApi } from '../support/api-app.js';
import { asAdmin, PASSWORD, signedUp, type SignedUp } from '../support/people.js';

interface Seen {
  path: string;
  method: string;
  site: string;
  cookie: boolean;
  status: number;
}

let api: TestApi;
let elsewhere: Server;
let browser: Browser;
let person: SignedUp;
let home: string;
const seen: Seen[] = [];

const portOf = (server: Server): number => (server.address() as AddressInfo).port;

beforeAll(async () => {
  api = await startApi();
  person = await signedUp(api);
  api.server.on('request', (request, response) => {
    response.on('finish', () =>
      seen.push({
        path: request.url ?? '',
        method: request.method ?? '',
        site: String(request.headers['sec-fetch-site'] ?? ''),
        cookie: (request.headers.cookie ?? '').includes('__Host-lathwork-session=lws_'),
        status: response.statusCode,
      }),
    );
  });
  // A page of somebody else, on every name and port of this machine but ours.
  elsewhere = createServer((_request, response) => response.setHeader('Content-Type', 'text/html').end('<!doctype html><title>elsewhere</title>')).listen(
    0,
    '127.0.0.1',
  );
  await new Promise((resolve) => elsewhere.once('listening', resolve));
  const file = await findBrowser(
    process.env['PUPPETEER_EXECUTABLE_PATH'] ?? null,
    join(process.env['XDG_CACHE_HOME'] ?? join(homedir(), '.cache'), 'lathwork'),
  );
  browser = await puppeteer.launch({
    executablePath: file.executablePath,
    headless: 'shell',
    pipe: true,
    env: browserEnvironment(file),
    args: ['--no-sandbox', '--disable-gpu', '--disable-dev-shm-usage', '--no-first-run', '--host-resolver-rules=MAP localhost 127.0.0.1'],
    timeout: 30_000,
  });
  home = `http://localhost:${portOf(api.server)}`;
}, 120_000);

afterAll(async () => {
  await browser?.close();
  elsewhere?.close();
  await api.stop();
});

/** A page of ours, signed in by its own request; scripts in the page never see the cookie. */
const signedInPage = async (): Promise<Page> => {
  const page = await browser.newPage();
  await page.setBypassCSP(true);
  await page.goto(`${home}/v1/problems`);
  const status = await page.evaluate(
    async (email, password) => {
      const headers = { 'Content-Type': 'application/json' };
      return (await fetch('/v1/sessions', { method: 'POST', headers, body: JSON.stringify({ email, password }) })).status;
    },
    person.email,
    PASSWORD,
  );
  expect(status).toBe(201);
  return page;
};

const lastOf = (path: string): Seen | undefined => seen.filter((one) => one.path === path).at(-1);

describe('a real browser', () => {
  it('S14: keeps the cookie from scripts and sends it to us, so that a change from our own page goes through', async () => {
    const page = await signedInPage();
    expect(await page.evaluate('document.cookie')).toBe('');
    const [cookie] = (await browser.cookies()).filter(({ name }) => name === '__Host-lathwork-session');
    expect(cookie).toMatchObject({ httpOnly: true, secure: true, path: '/', sameSite: 'Lax' });
    const status = await page.evaluate(async () => (await fetch('/v1/sessions', { method: 'DELETE' })).status);
    expect(status).toBe(204);
    expect(lastOf('/v1/sessions')).toMatchObject({ site: 'same-origin', cookie: true, status: 204 });
    await page.close();
  });

  it.each([
    // The same host on another port is the same site: Lax lets the cookie through, and only our own check stands in the way.
    ['another port of our host', 'localhost', true, 'same-site'],
    ['another site', '127.0.0.1', false, 'cross-site'],
  ])('S14: a POST that a page of %s makes it send changes nothing', async (_what, host, withCookie, site) => {
    const ours = await signedInPage();
    const page = await browser.newPage();
    await page.goto(`http://${host}:${portOf(elsewhere)}/`);
    const before = await asAdmin(api, 'SELECT id, revoked_at FROM account_sessions ORDER BY id');
    await page.evaluate(async (to) => {
      await fetch(`${to}/v1/account/password`, { method: 'POST', mode: 'no-cors', credentials: 'include' }).catch(() => undefined);
    }, home);
    const sent = lastOf('/v1/account/password');
    expect(sent).toMatchObject({ method: 'POST', site, cookie: withCookie, status: withCookie ? 403 : 401 });
    // With a body of the right type the browser asks first, and gets no leave.
    const thrown = await page.evaluate(async (to) => {
      const headers = { 'Content-Type': 'application/json' };
      return fetch(`${to}/v1/account/factor`, { method: 'POST', credentials: 'include', headers, body: '{}' }).then(
        () => 'answered',
        () => 'stopped',
      );
    }, home);
    expect(thrown).toBe('stopped');
    expect(seen.filter(({ path, method }) => path === '/v1/account/factor' && method === 'POST')).toEqual([]);
    // A form that takes the whole page along.
    await Promise.all([
      page.waitForNavigation(),
      page.evaluate((to) => {
        const { document } = globalThis as unknown as { document: { body: { innerHTML: string }; forms: { submit(): void }[] } };
        document.body.innerHTML = `<form method="post" action="${to}/v1/account/factor/confirm"></form>`;
        document.forms[0]?.submit();
      }, home),
    ]);
    expect(lastOf('/v1/account/factor/confirm')?.status).toBeGreaterThanOrEqual(401);
    expect(await asAdmin(api, 'SELECT id, revoked_at FROM account_sessions ORDER BY id')).toEqual(before);
    await page.close();
    await ours.close();
  });

  it('S14: nor can another page read what the cookie opens', async () => {
    const ours = await signedInPage();
    const page = await browser.newPage();
    await page.goto(`http://localhost:${portOf(elsewhere)}/`);
    const read = await page.evaluate(async (to) => {
      try {
        return await (await fetch(`${to}/v1/account`, { credentials: 'include' })).text();
      } catch {
        return 'stopped';
      }
    }, home);
    expect(read).toBe('stopped');
    await page.close();
    await ours.close();
  });
});
