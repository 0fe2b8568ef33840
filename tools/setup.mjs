// Set-up that every command does first, and that costs nothing when it is already done:
// the packages of the lock file, the generated database client, the compiled code.
import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { node, root, run, step } from './lib/steps.mjs';

const hash = (text) => createHash('sha256').update(text).digest('hex');
const sha = (...files) => hash(files.map((f) => readFileSync(join(root, f))).join('\n'));
/** What is installed follows from the lock file and from whose install scripts may run; a new command changes neither. */
const wanted = () =>
  hash(readFileSync(join(root, 'package-lock.json')) + JSON.stringify(JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')).allowScripts));
const stampFile = (name) => join(root, 'node_modules', '.lathwork', name);
const isStamped = (name, value) => existsSync(stampFile(name)) && readFileSync(stampFile(name), 'utf8') === value;
const stamp = (name, value) => {
  mkdirSync(dirname(stampFile(name)), { recursive: true });
  writeFileSync(stampFile(name), value);
};

/** Installs what package-lock.json lists, unless this very lock file is installed already. */
export async function install() {
  const lock = wanted();
  if (isStamped('install', lock)) return;
  const npm = process.env.npm_execpath;
  await step('installing packages (npm ci)', () =>
    npm && npm.endsWith('.js')
      ? node([npm, 'ci', '--no-audit', '--no-fund'], { log: 'npm-ci.log' })
      : run(process.platform === 'win32' ? 'npm.cmd' : 'npm', ['ci', '--no-audit', '--no-fund'], { log: 'npm-ci.log' }),
  );
  stamp('install', lock);
}

/** Generates the typed database client from prisma/schema.prisma. */
export async function generate() {
  const schema = sha('prisma/schema.prisma', 'package-lock.json');
  const out = join(root, 'apps/api/src/platform/database/generated/client.ts');
  if (existsSync(out) && isStamped('prisma', schema)) return;
  await step('generating the database client', () => node(['tools/prisma.mjs', 'generate'], { log: 'prisma-generate.log' }));
  stamp('prisma', schema);
}

/** Compiles libraries and apps, in their order, from cache where nothing changed. */
export const build = () =>
  step('compiling', () =>
    node(['node_modules/nx/dist/bin/nx.js', 'run-many', '-t', 'build', '--output-style=stream'], { log: 'build.log', env: { NX_DAEMON: 'false' } }),
  );

export async function setUp() {
  await install();
  await generate();
  await build();
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) await setUp();
