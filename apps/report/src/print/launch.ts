import { tmpdir } from 'node:os';
import puppeteer, { type Browser } from 'puppeteer-core';
import type { BrowserFile } from './chromium.js';

/**
 * Each network flag is one layer of several: every request is aborted (render.ts), the page is offline and its content
 * policy forbids loading; and should all of those fail, there is no resolver and the only proxy is a closed port.
 */
const FLAGS = [
  '--disable-gpu',
  '--disable-dev-shm-usage',
  '--font-render-hinting=none',
  '--force-color-profile=srgb',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-default-apps',
  '--disable-domain-reliability',
  '--disable-extensions',
  '--disable-sync',
  '--disable-quic',
  '--dns-prefetch-disable',
  '--no-first-run',
  '--no-pings',
  '--proxy-server=127.0.0.1:9',
  '--proxy-bypass-list=<-loopback>',
  '--host-resolver-rules=MAP * ~NOTFOUND',
  '--lang=en-US',
];

/** The browser inherits nothing: no secret of this process can be printed from its environment. */
export const browserEnvironment = (file: BrowserFile): Record<string, string> => ({ HOME: tmpdir(), TMPDIR: tmpdir(), TZ: 'UTC', LANG: 'C.UTF-8', ...file.env });

export const browserFlags = (isRoot: boolean): string[] => (isRoot ? ['--no-sandbox', ...FLAGS] : [...FLAGS]);

export const launchBrowser = (file: BrowserFile): Promise<Browser> =>
  puppeteer.launch({
    executablePath: file.executablePath,
    headless: 'shell',
    pipe: true,
    env: browserEnvironment(file),
    args: browserFlags(process.getuid?.() === 0),
    handleSIGINT: false,
    handleSIGTERM: false,
    handleSIGHUP: false,
    timeout: 20_000,
  });
