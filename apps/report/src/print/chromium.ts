import { chmodSync, createReadStream, createWriteStream, existsSync, mkdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { pipeline } from 'node:stream/promises';
import { brotliDecompressSync, createBrotliDecompress } from 'node:zlib';

/** A browser that can be started: its file and the few environment variables it needs to find its own libraries. */
export interface BrowserFile {
  executablePath: string;
  env: Record<string, string>;
  origin: 'named' | 'bundled' | 'system';
}

const SYSTEM_BROWSERS = [
  '/usr/bin/chromium-headless-shell',
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
];

const require = createRequire(import.meta.url);

/** Unpacks the regular files of a ustar archive; the package's archives hold nothing else. */
function untar(archive: Buffer, folder: string): void {
  for (let at = 0; at + 512 <= archive.length && archive[at] !== 0;) {
    const field = (offset: number, length: number): string => {
      const raw = archive.toString('utf8', at + offset, at + offset + length);
      const end = raw.indexOf('\0');
      return end < 0 ? raw : raw.slice(0, end);
    };
    const size = Number.parseInt(field(124, 12), 8) || 0;
    const type = field(156, 1);
    const name = join(folder, field(0, 100));
    if (!name.startsWith(folder)) throw new Error('an archive entry points outside its folder');
    if (type === '5') mkdirSync(name, { recursive: true });
    else if (type === '0' || type === '') {
      mkdirSync(dirname(name), { recursive: true });
      writeFileSync(name, archive.subarray(at + 512, at + 512 + size), { mode: 0o755 });
    }
    at += 512 + Math.ceil(size / 512) * 512;
  }
}

/** The package lays out its folders differently between major versions, so walk up until bin/ is found. */
function packageRoot(): string | null {
  let folder: string;
  try {
    folder = dirname(require.resolve('@sparticuz/chromium'));
  } catch {
    return null;
  }
  while (!existsSync(join(folder, 'bin', 'chromium.br'))) {
    if (folder === dirname(folder)) return null;
    folder = dirname(folder);
  }
  return folder;
}

const fontsConf = (folder: string): string =>
  `<?xml version="1.0"?><!DOCTYPE fontconfig SYSTEM "fonts.dtd"><fontconfig><dir>${join(folder, 'fonts')}</dir><cachedir>${join(folder, 'fc-cache')}</cachedir></fontconfig>`;

/** Unpacks beside the target and renames, so that two processes starting together never see half a browser. */
async function unpack(root: string, folder: string): Promise<void> {
  const beside = `${folder}.${process.pid}.tmp`;
  rmSync(beside, { recursive: true, force: true });
  mkdirSync(beside, { recursive: true });
  const shell = join(beside, 'headless_shell');
  await pipeline(createReadStream(join(root, 'bin/chromium.br')), createBrotliDecompress(), createWriteStream(shell));
  chmodSync(shell, 0o755);
  for (const file of ['al2023.tar.br', 'fonts.tar.br']) untar(brotliDecompressSync(readFileSync(join(root, 'bin', file))), beside);
  writeFileSync(join(beside, 'fonts.conf'), fontsConf(folder));
  try {
    renameSync(beside, folder);
  } catch (error) {
    if (!existsSync(folder)) throw error;
    rmSync(beside, { recursive: true, force: true });
  }
}

async function bundled(cacheFolder: string): Promise<BrowserFile | null> {
  if (process.platform !== 'linux' || process.arch !== 'x64') return null;
  const root = packageRoot();
  if (root === null) return null;
  const { version } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as { version: string };
  const folder = join(cacheFolder, `chromium-${version}`);
  if (!existsSync(folder)) await unpack(root, folder);
  return {
    executablePath: join(folder, 'headless_shell'),
    env: { LD_LIBRARY_PATH: join(folder, 'lib'), FONTCONFIG_FILE: join(folder, 'fonts.conf') },
    origin: 'bundled',
  };
}

/** Most specific first: the one that was named, the one the npm package carries, one that is on the machine. */
export async function findBrowser(named: string | null, cacheFolder: string): Promise<BrowserFile> {
  if (named !== null) return { executablePath: named, env: {}, origin: 'named' };
  const packed = await bundled(cacheFolder);
  if (packed !== null) return packed;
  const system = SYSTEM_BROWSERS.find((path) => existsSync(path));
  if (system !== undefined) return { executablePath: system, env: {}, origin: 'system' };
  throw new Error('No browser found. Set PUPPETEER_EXECUTABLE_PATH to a Chromium or Chrome file, or install the optional package @sparticuz/chromium.');
}
