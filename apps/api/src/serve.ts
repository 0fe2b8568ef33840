import 'reflect-metadata';
import { setTimeout as pause } from 'node:timers/promises';
import type { NestExpressApplication } from '@nestjs/platform-express';
import type { Logger } from 'pino';
import { createApi } from './create-api.js';
import type { Config } from './platform/config/config.js';
import { prepareDatabase, type PreparedDatabase } from './platform/database/prepare.js';
import { ServingState } from './platform/health/state.js';
import { JobRunner } from './platform/jobs/runner.js';
import { makeLog } from './platform/logging/log.js';
import { serveMetrics } from './platform/metrics/metrics-door.js';
import { Metrics } from './platform/metrics/metrics.js';

/**
 * On the first signal: not ready at once, so that whoever sends requests looks elsewhere, while for a short time they are
 * still taken; then running requests and jobs finish, and the process ends with 0. More signals change nothing.
 */
const drainOnSignal = (app: NestExpressApplication, database: PreparedDatabase, config: Config, log: Logger, refuse: (error: unknown) => never): void => {
  const state = app.get(ServingState);
  const drain = async (): Promise<void> => {
    if (state.draining) return;
    state.draining = true;
    log.info('draining');
    const limit = setTimeout(() => process.exit(0), config.drainDelayMs + config.shutdownGraceMs);
    await pause(config.drainDelayMs);
    await app.close();
    await database.stop();
    clearTimeout(limit);
    log.info('stopped');
    process.exit(0);
  };
  const onSignal = (): void => void drain().catch(refuse);
  process.on('SIGTERM', onSignal);
  process.on('SIGINT', onSignal);
};

export const serve = async (config: Config, refuse: (error: unknown) => never): Promise<void> => {
  const log = makeLog(config.logLevel);
  const database = await prepareDatabase(config, log);
  const app = await createApi({ config, addresses: database.addresses, log });
  drainOnSignal(app, database, config, log, refuse);
  await app.get(JobRunner).start();
  const server = await app.listen(config.port, config.host);
  const address = server.address() as { port: number };
  if (config.metricsPort !== null) await serveMetrics(app.get(Metrics), config.metricsPort);
  log.info({ host: config.host, port: address.port }, 'listening');
};
