import { homedir } from 'node:os';
import { join } from 'node:path';
import type { AddressInfo } from 'node:net';
import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import puppeteer, { type Browser, type Page } from 'puppeteer-core';
import { findBrowser } from '../../apps/report/src/print/chromium.js';
import { browserEnvironment } from '../../apps/report/src/print/launch.js';
import { PublishedDocument } from '../../apps/api/src/platform/http/docs.controller.js';
import { startApi, type TestApi } from '../support/api-app.js';

let api: TestApi;
let browser: Browser;
let page: Page;
let base: string;
const asked: string[] = [];
const complaints: string[] = [];

beforeAll(async () => {
  api = await startApi();
  if (!api.server.listening) await new Promise<void>((resolve) => api.server.listen(0, '127.0.0.1', resolve));
  base = `http://127.0.0.1:${(api.server.address() as AddressInfo).port}`;
  const file = await findBrowser(
    process.env['PUPPETEER_EXECUTABLE_PATH'] ?? null,
    join(process.env['XDG_CACHE_HOME'] ?? join(homedir(), '.cache'), 'lathwork'),
  );
  browser = await puppeteer.launch({
    executablePath: file.executablePath,
    headless: 'shell',
    pipe: true,
    env: browserEnvironment(file),
    args: ['--no-sandbox', '--disable-gpu', '--disable-dev-shm-usage', '--no-first-run'],
    timeout: 30_000,
  });
  page = await browser.newPage();
  page.on('request', (request) => asked.push(request.url()));
  page.on('console', (message) => complaints.push(message.text()));
  page.on('pageerror', (error) => complaints.push(String(error)));
}, 90_000);
afterAll(async () => {
  await browser?.close();
  await api.stop();
});

const addresses = (): string[] => [
  '/v1/docs',
  ...api.get(PublishedDocument).pages.domainNames.map((name) => `/v1/docs/${name}`),
  '/v1/problems',
  '/v1/problems/validation-failed',
];

describe('the pages for people in a browser', () => {
  it.each([360, 800, 1280])(
    'fit a window %d pixels wide with everything unfolded, and each column of a table has room for its words',
    async (width) => {
      await page.setViewport({ width, height: 900 });
      const wrong: unknown[] = [];
      for (const address of addresses()) {
        await page.goto(base + address);
        const seen = await page.evaluate(() => {
          for (const one of document.querySelectorAll('details')) one.open = true;
          const cells = [...document.querySelectorAll('main td')].filter((cell) => cell.textContent?.trim());
          return {
            tooWide: document.documentElement.scrollWidth - window.innerWidth,
            narrow: cells.filter((cell) => cell.getBoundingClientRect().width < 30).length,
            type: getComputedStyle(document.body).fontFamily,
          };
        });
        if (seen.tooWide > 0 || seen.narrow > 0 || !seen.type.includes('sans-serif')) wrong.push([address, seen]);
      }
      expect(wrong).toEqual([]);
    },
    120_000,
  );

  it('S28: ask for nothing but themselves, and break no rule of their own policy', () => {
    expect(asked.length).toBeGreaterThan(60);
    expect(asked.filter((url) => !addresses().includes(url.slice(base.length)) && !url.endsWith('/favicon.ico'))).toEqual([]);
    expect(complaints.filter((text) => !text.includes('favicon'))).toEqual([]);
  });

  it('lead from the first page to an operation and from there to what its refusals mean', async () => {
    await page.setViewport({ width: 1280, height: 900 });
    await page.goto(`${base}/v1/docs`);
    await Promise.all([page.waitForNavigation(), page.click('a[href="/v1/docs/plans#createPlan"]')]);
    expect(await page.$eval(':target h2', (heading) => heading.textContent)).toBe('Ask for a new revision of the plan of a build');
    await Promise.all([page.waitForNavigation(), page.click('#createPlan a[href="/v1/problems#status-409"]')]);
    expect(await page.$eval(':target h2', (heading) => heading.textContent)).toMatch(/^409/);
    await Promise.all([page.waitForNavigation(), page.click(':target a[href="/v1/problems/archived"]')]);
    expect(await page.$eval('h1', (heading) => heading.textContent)).toBe('Archived');
  }, 60_000);
});
