import { tmpdir } from 'node:os';
import { join } from 'node:path';
import puppeteer, { type Browser } from 'puppeteer-core';
import type { BrowserFile } from './chromium.js';
import { confine, type Confinement } from './confine.js';

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
export const browserEnvironment = (file: BrowserFile, folder = tmpdir()): Record<string, string> => ({
  HOME: folder,
  TMPDIR: folder,
  TZ: 'UTC',
  LANG: 'C.UTF-8',
  ...file.env,
});

export const browserFlags = (sandbox: boolean): string[] => (sandbox ? [...FLAGS] : ['--no-sandbox', ...FLAGS]);

const start = (file: BrowserFile, confinement: Confinement | null, sandbox: boolean): Promise<Browser> =>
  puppeteer.launch({
    executablePath: confinement?.executablePath ?? file.executablePath,
    headless: 'shell',
    pipe: true,
    env: browserEnvironment(file, confinement?.folder),
    args: browserFlags(sandbox),
    ...(confinement === null ? {} : { userDataDir: join(confinement.folder, 'profile') }),
    handleSIGINT: false,
    handleSIGTERM: false,
    handleSIGHUP: false,
    timeout: 20_000,
  });

export interface Launched {
  browser: Browser;
  /** What stands around the browser here beside the layers that need no privileges. */
  layers: readonly ('otherUser' | 'noNetwork' | 'sandbox')[];
}

/**
 * Starts the browser with every layer that this machine allows. Its own sandbox does not work as root; handed to
 * another account it works where that account may make user namespaces, so it is tried first and done without second.
 */
export async function launchConfined(file: BrowserFile): Promise<Launched> {
  const confinement = confine(file);
  const isRoot = process.getuid?.() === 0;
  const [browser, sandbox] =
    isRoot && confinement === null
      ? [await start(file, null, false), false]
      : await start(file, confinement, true).then(
          (b) => [b, true] as const,
          async () => [await start(file, confinement, false), false] as const,
        );
  browser.once('disconnected', () => confinement?.wipe());
  return { browser, layers: [...(confinement?.layers ?? []), ...(sandbox ? (['sandbox'] as const) : [])] };
}

export const launchBrowser = async (file: BrowserFile): Promise<Browser> => (await launchConfined(file)).browser;
