import { randomBytes } from 'node:crypto';
import { chmodSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from '@jest/globals';
import pg from 'pg';
import { startEmbedded, type Embedded } from '../../../apps/api/src/platform/database/embedded.js';
import { OPERATOR_TOKEN, REPORT_SECRET } from '../../support/api-app.js';
import { killAll, refused, start } from '../../support/api-process.js';

// Somebody else's PostgreSQL server, set up with the very lines of README.md: no role, database or right but those.

interface Example {
  exampleGardens: () => { file: string }[];
  loadGarden: (apiUrl: string, operatorToken: string, example: object) => Promise<{ api: object; builds: { id: string }[] }>;
  plan: (api: object, buildId: string, asOf: string) => Promise<{ state: string; id: string }>;
}
const { exampleGardens, loadGarden, plan } = (await import('../../../tools/lib/example.mjs' as string)) as Example;

const OURS = ['lathwork_owner', 'lathwork_app'];
const README = readFileSync('README.md', 'utf8').split('## Your own PostgreSQL')[1]?.split('\n## ')[0] ?? '';
const block = (language: string): string[] =>
  (new RegExp(`\`\`\`${language}\\n([\\s\\S]*?)\`\`\``).exec(README)?.[1] ?? '').split('\n').filter((line) => line.trim() !== '');

let dir = '';
let server: Embedded;
let env: Record<string, string>;

/** The lines of the shell block, as variables; `...` is a password and `host:5432` the server. */
const variables = (passwords: Record<string, string>, hostAndPort: string): Record<string, string> =>
  Object.fromEntries(
    block('sh').flatMap((line) => {
      const [, name = '', url = ''] = /^export (\w+)=(\S+)/.exec(line) ?? [];
      const role = /\/\/(\w+):/.exec(url)?.[1] ?? '';
      return name ? [[name, url.replace('...', passwords[role] ?? '').replace('host:5432', hostAndPort)]] : [];
    }),
  );

beforeAll(async () => {
  dir = mkdtempSync(join(tmpdir(), 'lathwork-external-'));
  chmodSync(dir, 0o755);
  server = await startEmbedded({ dir: join(dir, 'server'), durable: false });
  const admin = new pg.Client({ connectionString: server.adminUrl });
  await admin.connect();
  // Back to a server that knows nothing of us.
  await admin.query('DROP DATABASE lathwork');
  for (const role of OURS) await admin.query(`DROP ROLE ${role}`);
  const passwords = Object.fromEntries(OURS.map((role) => [role, randomBytes(12).toString('hex')]));
  for (const line of block('sql')) await admin.query(line.replace("'...'", `'${passwords[/ROLE (\w+)/.exec(line)?.[1] ?? '']}'`));
  await admin.end();
  env = { ...variables(passwords, new URL(server.adminUrl).host), REPORT_SECRET, LATHWORK_OPERATOR_TOKEN: OPERATOR_TOKEN, LOG_LEVEL: 'info' };
});
afterAll(async () => {
  killAll();
  await server.stop();
  rmSync(dir, { recursive: true, force: true });
});

test('README has the lines that this test follows', () => {
  expect([block('sql').length, Object.keys(env).slice(0, 2).sort()]).toEqual([3, ['DATABASE_OWNER_URL', 'DATABASE_URL']]);
});

test('the empty database is not served as its owner, nor touched', async () => {
  const { code, errors } = await refused({ ...env, DATABASE_URL: env['DATABASE_OWNER_URL'] ?? '' });
  expect([code, errors]).toEqual([1, expect.stringContaining('lathwork_owner of DATABASE_URL owns the database')]);
  const client = new pg.Client({ connectionString: env['DATABASE_OWNER_URL'] });
  await client.connect();
  const { rows } = await client.query("SELECT count(*)::int AS n FROM pg_tables WHERE schemaname = 'public'");
  await client.end();
  expect(rows).toEqual([{ n: 0 }]);
});

test('an example garden is loaded and planned on it, and a second start changes nothing', async () => {
  const first = await start(env);
  const [example] = exampleGardens();
  const { api, builds } = await loadGarden(first.url, OPERATOR_TOKEN, example ?? {});
  expect(await plan(api, builds[0]?.id ?? '', '2026-03-15')).toMatchObject({ state: 'ready' });
  first.child.kill('SIGTERM');
  expect(await first.exit).toBe(0);
  const second = await start(env);
  expect(second.lines.find((line) => line.includes('database is up to date'))).toMatch(/"applied":0,"seeded":0/);
  second.child.kill('SIGTERM');
  expect(await second.exit).toBe(0);
});

test('nor is it served as its owner once there are tables', async () => {
  const { code, errors } = await refused({ ...env, DATABASE_URL: env['DATABASE_OWNER_URL'] ?? '' });
  expect([code, errors]).toEqual([1, expect.stringMatching(/lathwork_owner of DATABASE_URL owns \d+ tables/)]);
});
