import 'reflect-metadata';
import { rm } from 'node:fs/promises';
import type { Server } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Type } from '@nestjs/common';
import type { NestExpressApplication } from '@nestjs/platform-express';
import type { Logger } from 'pino';
import { OPERATOR, type Actor } from '../../apps/api/src/platform/access/actor.js';
import { createGarden, type NewGarden } from '../../apps/api/src/platform/access/credentials.js';
import { makeKey, makeSessionToken } from '../../apps/api/src/platform/access/key.js';
import type { Role } from '../../apps/api/src/platform/access/roles.js';
import { SCOPES, type Scope } from '../../apps/api/src/platform/access/scopes.js';
import { AppModule } from '../../apps/api/src/app.module.js';
import { createApi } from '../../apps/api/src/create-api.js';
import { parseConfig, type Config } from '../../apps/api/src/platform/config/config.js';
import { Database } from '../../apps/api/src/platform/database/database.js';
import { newId } from '../../apps/api/src/platform/database/ids.js';
import { JobRunner } from '../../apps/api/src/platform/jobs/runner.js';
import { makeLog } from '../../apps/api/src/platform/logging/log.js';
import { HttpClient } from './http-client.js';
import { freshDatabase, type TestDatabase } from './template-database.js';

export const OPERATOR_TOKEN = 'operator-token-of-the-test-run-0123456789';
export const REPORT_SECRET = 'report-secret-of-the-test-run-0123456789';

export interface TestGarden {
  gardenId: string;
  key: string;
  actor: Actor;
  http: HttpClient;
}

export interface TestPerson {
  accountId: string;
  memberId: string;
  email: string;
  token: string;
  http: HttpClient;
}

export interface TestApi {
  app: NestExpressApplication;
  database: TestDatabase;
  server: Server;
  config: Config;
  anyone: HttpClient;
  operator: HttpClient;
  get<T>(what: Type<T> | (abstract new (...args: never[]) => T)): T;
  /** Another garden with a key of the given scopes (all, unless told). */
  garden(scopes?: readonly Scope[], garden?: Partial<NewGarden>): Promise<TestGarden>;
  /** Another key of the same garden. */
  keyOf(gardenId: string, scopes: readonly Scope[]): Promise<string>;
  as(key: string): HttpClient;
  /** A signed-in person with these roles in a garden, on an account of their own unless one is given. */
  person(gardenId: string, roles: readonly Role[], accountId?: string): Promise<TestPerson>;
  stop(): Promise<void>;
}

export interface TestApiOptions {
  env?: Record<string, string>;
  /** Work the job queue off in this process too. */
  jobs?: boolean;
  /** More modules beside the domains: probes of the platform. */
  extra?: Type[];
  /** Where the log goes, for tests that read it. */
  log?: Logger;
}

/** Tests of other things are not slowed down by limits; those of limits set their own. */
export const UNLIMITED = {
  RATE_PER_ADDRESS: '1000000000',
  RATE_PER_CREDENTIAL: '1000000000',
  RATE_PER_GARDEN: '1000000000',
  RATE_COSTLY: '1000000000',
  JOBS_WAITING: '10000',
};

const configFor = (database: TestDatabase, env: Record<string, string>): Config =>
  parseConfig({
    DATABASE_URL: database.url,
    DATABASE_OWNER_URL: database.ownerUrl,
    LATHWORK_OPERATOR_TOKEN: OPERATOR_TOKEN,
    REPORT_SECRET,
    ACCOUNT_SECRET: 'account-secret-of-the-test-run-0123456789',
    MAIL_DIR: join(tmpdir(), `lathwork-mail-${database.name}`),
    REPORT_URL: 'http://127.0.0.1:9',
    DATABASE_POOL: '6',
    LOG_LEVEL: 'silent',
    ...UNLIMITED,
    ...env,
  });

const makeGarden = async (
  database: Database,
  scopes: readonly Scope[],
  wanted: Partial<NewGarden>,
): Promise<{ gardenId: string; key: string; keyId: string }> => {
  const key = makeKey();
  const id = newId();
  const garden: NewGarden = { id, name: 'Yarrow plot', locale: 'en', currency: 'EUR', unitSystem: 'metric', invented: true, ...wanted };
  const { founderId } = await database.inTransaction(OPERATOR, (db) => createGarden(db, garden, { name: 'first', scopes, key }));
  return { gardenId: garden.id, key: key.key, keyId: founderId };
};

const addKey = async (database: Database, gardenId: string, scopes: readonly Scope[]): Promise<string> => {
  const key = makeKey();
  await database.inTransaction({ gardenId }, (db) =>
    db.apiKey.create({
      data: { gardenId, id: newId(), name: 'another', prefix: key.prefix, sha256: new Uint8Array(key.sha256), scopes: [...scopes] },
      select: { id: true },
    }),
  );
  return key.key;
};

const actorOf = ({ gardenId, keyId }: { gardenId: string; keyId: string }, scopes: readonly Scope[]): Actor => ({
  gardenId,
  kind: 'key',
  credentialId: keyId,
  principalId: keyId,
  keyId,
  accountId: null,
  memberId: null,
  roles: [],
  scopes,
  reach: 'all',
});

/** Straight into the tables, without mail and passwords: tests of signing in go the long way themselves. */
const makePerson = async (database: Database, gardenId: string, roles: readonly Role[], known?: string) => {
  const accountId = known ?? newId();
  const memberId = newId();
  const email = `${accountId}@example.org`;
  const { key: token, sha256 } = makeSessionToken();
  await database.inTransaction({ gardenId, accountId }, async (db) => {
    if (!known) await db.account.create({ data: { id: accountId, email, name: `Person ${memberId.slice(-4)}`, emailConfirmedAt: new Date() } });
    await db.member.create({ data: { gardenId, id: memberId, accountId, name: `Person ${memberId.slice(-4)}`, roles: [...roles] } });
    const expiresAt = new Date(Date.now() + 3_600_000);
    await db.accountSession.create({ data: { accountId, id: newId(), tokenSha256: new Uint8Array(sha256), label: 'test', expiresAt } });
  });
  return { accountId, memberId, email, token };
};

/** The whole API in this process, on a database of its own. */
export const startApi = async ({ env = {}, jobs = false, extra = [], log }: TestApiOptions = {}): Promise<TestApi> => {
  const database = await freshDatabase();
  const config = configFor(database, env);
  const surroundings = { config, addresses: database, log: log ?? makeLog(config.logLevel) };
  const whole = AppModule.with(surroundings);
  const app = await createApi(surroundings, { ...whole, imports: [...(whole.imports ?? []), ...extra] });
  if (jobs) await app.get(JobRunner).start();
  const server = (await app.listen(0, '127.0.0.1')) as Server;
  const handle = app.get(Database);
  return {
    app,
    database,
    server,
    config,
    anyone: new HttpClient(server, null),
    operator: new HttpClient(server, OPERATOR_TOKEN),
    get: (what) => app.get(what as Type<never>, { strict: false }),
    as: (key) => new HttpClient(server, key),
    keyOf: (gardenId, scopes) => addKey(handle, gardenId, scopes),
    async person(gardenId, roles, accountId) {
      const person = await makePerson(handle, gardenId, roles, accountId);
      return { ...person, http: new HttpClient(server, person.token, gardenId) };
    },
    async garden(scopes = SCOPES, wanted = {}) {
      const made = await makeGarden(handle, scopes, wanted);
      return { gardenId: made.gardenId, key: made.key, actor: actorOf(made, scopes), http: new HttpClient(server, made.key) };
    },
    async stop() {
      await app.close();
      await database.drop();
      await rm(config.mailDir, { recursive: true, force: true });
    },
  };
};
