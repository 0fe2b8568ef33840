import type { DynamicModule } from '@nestjs/common';
import { NestFactory } from '@nestjs/core';
import { ExpressAdapter, type NestExpressApplication } from '@nestjs/platform-express';
import { AppModule } from './app.module.js';
import { buildOpenApi, documentText } from './openapi-document.js';
import { ServingState } from './platform/health/state.js';
import { readBody } from './platform/http/body.js';
import { PublishedDocument } from './platform/http/docs.controller.js';
import { entrance, SECURITY_HEADERS } from './platform/http/entrance.js';
import { RawRoutes } from './platform/http/raw-body.js';
import { RouteTable } from './platform/http/route-table.js';
import { frameworkLog } from './platform/logging/framework-log.js';
import { addressGate } from './platform/limits/address-gate.js';
import { RateLimits } from './platform/limits/rate-limits.js';
import { metricsDoor } from './platform/metrics/metrics-door.js';
import { Metrics } from './platform/metrics/metrics.js';
import type { Surroundings } from './platform/platform.module.js';
import { refuseBroken } from './platform/problems/broken-requests.js';
import { ProblemFilter } from './platform/problems/problem.filter.js';

/** The application, complete but not yet listening. Main, the generator of the OpenAPI file and the tests all start here. */
export const createApi = async (surroundings: Surroundings, root: DynamicModule = AppModule.with(surroundings)): Promise<NestExpressApplication> => {
  const app = await NestFactory.create<NestExpressApplication>(root, new ExpressAdapter(), {
    bodyParser: false,
    logger: frameworkLog(surroundings.log),
    abortOnError: false,
  });
  app.set('etag', false);
  app.set('query parser', 'simple');
  app.disable('x-powered-by');
  const { config, log } = surroundings;
  const metrics = app.get(Metrics);
  if (config.trustedProxies > 0) app.set('trust proxy', config.trustedProxies);
  app.use(entrance({ log, cursorSecret: config.cursorSecret, metrics, state: app.get(ServingState) }));
  app.use(metricsDoor(metrics, config.metricsToken));
  app.use(addressGate(app.get(RateLimits)));
  const raw = new RawRoutes();
  app.use(readBody(raw));
  const filter = new ProblemFilter(surroundings.log);
  app.useGlobalFilters(filter);
  refuseBroken(app.getHttpServer(), SECURITY_HEADERS);
  const published = app.get(PublishedDocument);
  published.document = buildOpenApi(app);
  published.text = documentText(published.document);
  await app.init();
  raw.readFrom(app);
  filter.routes = new RouteTable(app.getHttpAdapter().getInstance() as unknown as ConstructorParameters<typeof RouteTable>[0]);
  return app;
};
