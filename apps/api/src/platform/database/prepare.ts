import pg from 'pg';
import type { Logger } from 'pino';
import { PlainError, type Config } from '../config/config.js';
import { migrateQueue } from '../jobs/runner.js';
import type { Addresses } from './addresses.js';
import { startEmbedded } from './embedded.js';
import { migrate } from './migrate.js';
import { unfitToServe } from './roles.js';
import { seedTables } from './seed.js';

/** The application cannot serve with what it was given. Said in one line; the process ends with 1. */
export class StartError extends PlainError {}

export interface PreparedDatabase {
  addresses: Addresses;
  /** Stops the embedded server if it was started here. */
  stop(): Promise<void>;
}

const refuseUnfit = async (url: string): Promise<void> => {
  const client = new pg.Client({ connectionString: url, connectionTimeoutMillis: 10_000 });
  await client.connect();
  try {
    const reason = await unfitToServe(client);
    if (reason) throw new StartError(`refusing to serve: ${reason}. Give the API a role that owns nothing (NOSUPERUSER NOBYPASSRLS).`);
  } finally {
    await client.end();
  }
};

/** Brings one database to the state this code needs, and checks that the serving role cannot step over the walls. */
export const bringUpToDate = async (addresses: Addresses, log: Logger): Promise<void> => {
  await refuseUnfit(addresses.url);
  const applied = await migrate(addresses.ownerUrl, decodeURIComponent(new URL(addresses.url).username));
  await migrateQueue(addresses.queueUrl);
  const seeded = await seedTables(addresses.ownerUrl);
  log.info({ applied: applied.length, seeded }, 'database is up to date');
};

/** Finds or starts the database of this process. */
export const prepareDatabase = async (config: Config, log: Logger): Promise<PreparedDatabase> => {
  if (config.database) {
    await bringUpToDate(config.database, log);
    return { addresses: config.database, stop: () => Promise.resolve() };
  }
  const embedded = await startEmbedded({ dir: config.embeddedDir, durable: config.embeddedDurable });
  const addresses = { url: embedded.url, ownerUrl: embedded.ownerUrl, queueUrl: embedded.ownerUrl };
  log.info({ reused: embedded.reused }, 'embedded database runs');
  try {
    await bringUpToDate(addresses, log);
  } catch (error) {
    await embedded.stop();
    throw error;
  }
  return { addresses, stop: embedded.stop };
};
