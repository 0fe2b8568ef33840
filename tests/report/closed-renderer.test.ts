import { readFileSync, readlinkSync } from 'node:fs';
import { createServer, type Server, type Socket } from 'node:net';
import type { AddressInfo } from 'node:net';
import { afterAll, beforeAll, describe, expect, test } from '@jest/globals';
import type { Browser } from 'puppeteer-core';
import { readConfig } from '../../apps/report/src/config.js';
import { findBrowser } from '../../apps/report/src/print/chromium.js';
import { browserEnvironment, browserFlags, launchConfined } from '../../apps/report/src/print/launch.js';
import { printPdf } from '../../apps/report/src/print/render.js';
import { openPdf, pageTexts, SECRET } from './support.js';

let server: Server;
let connections = 0;
let base = '';
let browser: Browser;
let layers: readonly string[];
const sockets = new Set<Socket>();

beforeAll(async () => {
  server = createServer((socket) => {
    connections += 1;
    sockets.add(socket);
    socket.end('HTTP/1.1 200 OK\r\ncontent-length: 0\r\n\r\n');
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  base = `http://127.0.0.1:${(server.address() as AddressInfo).port}`;
  const config = readConfig({ ...process.env, REPORT_SECRET: SECRET });
  ({ browser, layers } = await launchConfined(await findBrowser(config.browserPath, config.cacheFolder)));
}, 60_000);
afterAll(async () => {
  await browser.close();
  for (const socket of sockets) socket.destroy();
  await new Promise((resolve) => server.close(resolve));
}, 30_000);

/** No content policy of ours around it: the other layers must hold alone. */
const VECTORS: Record<string, (url: string) => string> = {
  img: (u) => `<img src="${u}/a.png">`,
  srcset: (u) => `<img srcset="${u}/a.png 2x">`,
  'picture source': (u) => `<picture><source srcset="${u}/a.webp"><img></picture>`,
  stylesheet: (u) => `<link rel="stylesheet" href="${u}/a.css">`,
  'style import': (u) => `<style>@import "${u}/b.css";</style>`,
  'background image': (u) => `<p style="background:url(${u}/c.png)">x</p>`,
  font: (u) => `<style>@font-face{font-family:q;src:url(${u}/q.woff2)}p{font-family:q}</style><p>x</p>`,
  script: (u) => `<script src="${u}/a.js"></script>`,
  'inline fetch': (u) => `<script>fetch("${u}/d")</script>`,
  'event handler': (u) => `<img src="data:," onerror="fetch('${u}/e')">`,
  iframe: (u) => `<iframe src="${u}/f"></iframe>`,
  object: (u) => `<object data="${u}/g"></object>`,
  embed: (u) => `<embed src="${u}/h">`,
  video: (u) => `<video src="${u}/i" poster="${u}/j" autoplay></video>`,
  'svg image': (u) => `<svg><image href="${u}/k.png" width="9" height="9"/></svg>`,
  'svg use': (u) => `<svg><use href="${u}/l.svg#x"/></svg>`,
  'meta refresh': (u) => `<meta http-equiv="refresh" content="0;url=${u}/m">`,
  preconnect: (u) => `<link rel="preconnect" href="${u}">`,
  prefetch: (u) => `<link rel="prefetch" href="${u}/n"><link rel="dns-prefetch" href="${u}">`,
  'list image': (u) => `<ul style="list-style-image:url(${u}/o.png)"><li>x</li></ul>`,
  'css content': (u) => `<style>p::before{content:url(${u}/p.png)}</style><p>x</p>`,
  base: (u) => `<base href="${u}/"><img src="q.png">`,
  'form and frame': (u) => `<form action="${u}/r"><input type="image" src="${u}/s.png"></form>`,
};

describe('the renderer is closed', () => {
  test.each(Object.keys(VECTORS))(
    '%s reaches nobody',
    async (name) => {
      const vector = VECTORS[name];
      if (vector === undefined) throw new Error('no such vector');
      const before = connections;
      const pdf = await printPdf(
        browser,
        `<!doctype html><title>t</title><section class="page" style="height:200px;width:400px">${vector(base)}<p>still here</p></section>`,
        20_000,
      );
      expect(pageTexts(openPdf(pdf)).join('')).toContain('still here');
      expect(connections).toBe(before);
    },
    30_000,
  );

  test('the counting server does count: a plain connection is seen', async () => {
    const before = connections;
    await fetch(`${base}/self-check`);
    expect(connections).toBe(before + 1);
  });

  test('a file of this machine cannot be shown', async () => {
    const pdf = await printPdf(
      browser,
      `<!doctype html><title>t</title><section class="page" style="height:400px;width:400px"><iframe src="file:///etc/passwd"></iframe><object data="file:///etc/passwd"></object><p>end</p></section>`,
      20_000,
    );
    const text = pageTexts(openPdf(pdf)).join('');
    expect(text).toContain('end');
    expect(text).not.toMatch(/root:|daemon/);
  }, 30_000);

  test('the browser is given no environment of ours, a dead proxy, and no sandbox flag unless root', () => {
    const environment = browserEnvironment({ executablePath: '/x', env: { LD_LIBRARY_PATH: '/lib' }, origin: 'bundled' });
    expect(Object.keys(environment).sort()).toEqual(['HOME', 'LANG', 'LD_LIBRARY_PATH', 'TMPDIR', 'TZ']);
    expect(browserFlags(true)).not.toContain('--no-sandbox');
    expect(browserFlags(false)).toContain('--no-sandbox');
    expect(browserFlags(false)).toContain('--proxy-bypass-list=<-loopback>');
  });
});

describe('the layers that need privileges', () => {
  const isRoot = process.platform === 'linux' && process.getuid?.() === 0;
  const onlyAsRoot = isRoot ? test : test.skip;

  onlyAsRoot('as root on Linux the browser runs as another account, in a network of its own (skipped elsewhere)', () => {
    expect(layers).toContain('otherUser');
    const pid = browser.process()?.pid as number;
    const status = readFileSync(`/proc/${pid}/status`, 'utf8');
    expect(Number(/^Uid:\s+(\d+)/m.exec(status)?.[1])).not.toBe(0);
    expect(Number(/^Gid:\s+(\d+)/m.exec(status)?.[1])).not.toBe(0);
    expect(/^NoNewPrivs:\s+1/m.test(status)).toBe(true);
    if (layers.includes('noNetwork')) expect(readlinkSync(`/proc/${pid}/ns/net`)).not.toBe(readlinkSync('/proc/self/ns/net'));
  });

  test('an ordinary user keeps the sandbox of the browser on', () => {
    if (!isRoot) expect(layers).toContain('sandbox');
    expect(layers.length).toBeGreaterThan(0);
  });
});
