import { Module, type DynamicModule, type Provider } from '@nestjs/common';
import { APP_GUARD, APP_INTERCEPTOR, APP_PIPE } from '@nestjs/core';
import type { Logger } from 'pino';
import { AccessGuard } from './access/access.guard.js';
import { Credentials } from './access/credentials.js';
import { Sessions } from './access/sessions.js';
import { ComputePool } from './compute/compute-pool.js';
import { CONFIG, type Config } from './config/config.js';
import { ADDRESSES, type Addresses } from './database/addresses.js';
import { Database } from './database/database.js';
import { makePool, makeSidePool, POOL, SIDE_POOL } from './database/pool.js';
import { FileStore, PostgresFileStore } from './files/file-store.js';
import { HealthController } from './health/health.controller.js';
import { Readiness } from './health/readiness.js';
import { ServingState } from './health/state.js';
import { AnswersInterceptor } from './http/answers.interceptor.js';
import { DeprecationInterceptor } from './http/deprecation.js';
import { DocsController, PublishedDocument } from './http/docs.controller.js';
import { RequestPipe } from './http/validate.js';
import { Idempotency } from './idempotency/idempotency.js';
import { JobFeed } from './jobs/feed.js';
import { Tasks } from './jobs/jobs.js';
import { JobRunner, RunnerTools } from './jobs/runner.js';
import { JobWatch } from './jobs/watch.js';
import { Leases } from './limits/leases.js';
import { LimitsInterceptor } from './limits/limits.interceptor.js';
import { PermitStore } from './limits/permit-store.js';
import { RateLimits } from './limits/rate-limits.js';
import { LOG } from './logging/log.js';
import { Metrics } from './metrics/metrics.js';
import { MailSender } from './mail/sender.js';
import { Outbox } from './mail/outbox.js';
import { Passwords } from './passwords/passwords.js';
import { ProblemsController } from './problems/problems.controller.js';
import { Sealer } from './sealing/sealer.js';
import { Throttle } from './throttle/throttle.js';
import { Outbound } from './outbound/outbound.js';
import { ReportClient } from './report-client/report-client.js';
import { Pictures } from './uploads/pictures.js';

export interface Surroundings {
  config: Config;
  addresses: Addresses;
  log: Logger;
}

const SHARED: Provider[] = [
  Database,
  Credentials,
  Sessions,
  Passwords,
  Throttle,
  Sealer,
  Outbox,
  MailSender,
  Idempotency,
  Tasks,
  JobFeed,
  JobWatch,
  RunnerTools,
  JobRunner,
  ComputePool,
  ReportClient,
  Pictures,
  Outbound,
  ServingState,
  Metrics,
  Readiness,
  PermitStore,
  Leases,
  RateLimits,
  PublishedDocument,
  { provide: FileStore, useClass: PostgresFileStore },
];

/** Everything that belongs to no domain. Imported once; every domain may ask for its parts. */
@Module({})
export class PlatformModule {
  static with({ config, addresses, log }: Surroundings): DynamicModule {
    return {
      module: PlatformModule,
      global: true,
      controllers: [HealthController, ProblemsController, DocsController],
      providers: [
        { provide: CONFIG, useValue: config },
        { provide: ADDRESSES, useValue: addresses },
        { provide: LOG, useValue: log },
        { provide: POOL, useFactory: () => makePool(addresses.url, config.databasePool) },
        { provide: SIDE_POOL, useFactory: () => makeSidePool(addresses.url) },
        ...SHARED,
        { provide: APP_GUARD, useClass: AccessGuard },
        { provide: APP_PIPE, useClass: RequestPipe },
        // The first interceptor is the outermost: every answer tells what goes away; then, no permit, no work.
        { provide: APP_INTERCEPTOR, useClass: DeprecationInterceptor },
        { provide: APP_INTERCEPTOR, useClass: LimitsInterceptor },
        { provide: APP_INTERCEPTOR, useClass: AnswersInterceptor },
      ],
      exports: [CONFIG, LOG, POOL, SIDE_POOL, ...SHARED],
    };
  }
}
