import { randomBytes } from 'node:crypto';
import { chmodSync, existsSync, mkdirSync, readFileSync, renameSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import { jest } from '@jest/globals';
import pg from 'pg';
import type { Addresses } from '../../apps/api/src/platform/database/addresses.js';
import { startEmbedded } from '../../apps/api/src/platform/database/embedded.js';
import { bringUpToDate } from '../../apps/api/src/platform/database/prepare.js';
import { OWNER_ROLE } from '../../apps/api/src/platform/database/roles.js';
import { makeLog } from '../../apps/api/src/platform/logging/log.js';

// The first file that asks waits for the server; on a busy machine that is longer than the usual five seconds.
jest.setTimeout(120_000);

const TEMPLATE = 'lathwork_template';

interface Server {
  adminUrl: string;
  url: string;
  ownerUrl: string;
}

export interface TestDatabase extends Addresses {
  name: string;
  adminUrl: string;
  /** Drops the database; whoever still holds a connection loses it. */
  drop(): Promise<void>;
}

const serverDir = (): string => {
  const dir = process.env['LATHWORK_TEST_DATABASE_DIR'];
  if (!dir) throw new Error('tests/support/global-setup.mjs did not run: jest.config.mjs must name it as globalSetup');
  return dir;
};

const startOnce = async (dir: string): Promise<void> => {
  // The folder of the run is made 0700; the account that the server runs as must be able to enter it.
  chmodSync(dir, 0o755);
  const server = await startEmbedded({ dir, database: TEMPLATE, durable: false });
  const { url, ownerUrl, adminUrl } = server;
  await bringUpToDate({ url, ownerUrl, queueUrl: ownerUrl }, makeLog('silent'));
  writeFileSync(join(dir, 'ready.tmp'), JSON.stringify({ url, ownerUrl, adminUrl }), { mode: 0o600 });
  renameSync(join(dir, 'ready.tmp'), join(dir, 'ready.json'));
};

/** One server for the whole run: the first file that asks starts it, the others wait until it is migrated. */
const serverOfRun = async (): Promise<Server> => {
  const dir = serverDir();
  const ready = join(dir, 'ready.json');
  const failed = join(dir, 'failed');
  let mine = false;
  try {
    mkdirSync(join(dir, 'starting'));
    mine = true;
  } catch {
    // Another worker was first.
  }
  if (mine)
    await startOnce(dir).catch((error: unknown) => {
      writeFileSync(failed, String(error instanceof Error ? error.stack : error));
      throw error;
    });
  for (const until = Date.now() + 90_000; !existsSync(ready); await sleep(30)) {
    if (existsSync(failed)) throw new Error(`the database server of this run did not start: ${readFileSync(failed, 'utf8')}`);
    if (Date.now() > until) throw new Error('the database server of this run did not start in time');
  }
  return JSON.parse(readFileSync(ready, 'utf8')) as Server;
};

const asAdmin = async (adminUrl: string, sql: string): Promise<void> => {
  const client = new pg.Client({ connectionString: adminUrl });
  await client.connect();
  try {
    await client.query(sql);
  } finally {
    await client.end();
  }
};

const at = (url: string, name: string): string => Object.assign(new URL(url), { pathname: `/${name}` }).href;

/** Another file may be copying the template at this moment; then it is tried again. */
const copyTemplate = async (adminUrl: string, name: string): Promise<void> => {
  for (let tries = 1; ; tries += 1) {
    try {
      return await asAdmin(adminUrl, `CREATE DATABASE ${name} TEMPLATE ${TEMPLATE} OWNER ${OWNER_ROLE}`);
    } catch (error) {
      if ((error as { code?: string }).code !== '55006' || tries > 100) throw error;
      await sleep(50);
    }
  }
};

/** A migrated and seeded database of its own for one test file, copied from the template. */
export const freshDatabase = async (): Promise<TestDatabase> => {
  const server = await serverOfRun();
  const name = `t_${randomBytes(8).toString('hex')}`;
  await copyTemplate(server.adminUrl, name);
  return {
    name,
    url: at(server.url, name),
    ownerUrl: at(server.ownerUrl, name),
    queueUrl: at(server.ownerUrl, name),
    adminUrl: at(server.adminUrl, name),
    drop: () => asAdmin(server.adminUrl, `DROP DATABASE IF EXISTS ${name} WITH (FORCE)`),
  };
};
