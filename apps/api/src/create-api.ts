import type { DynamicModule } from '@nestjs/common';
import { NestFactory } from '@nestjs/core';
import { ExpressAdapter, type NestExpressApplication } from '@nestjs/platform-express';
import { AppModule } from './app.module.js';
import { buildOpenApi, documentText } from './openapi-document.js';
import { readBody } from './platform/http/body.js';
import { PublishedDocument } from './platform/http/docs.controller.js';
import { entrance } from './platform/http/entrance.js';
import { RouteTable } from './platform/http/route-table.js';
import type { Surroundings } from './platform/platform.module.js';
import { ProblemFilter } from './platform/problems/problem.filter.js';

/** The application, complete but not yet listening. Main, the generator of the OpenAPI file and the tests all start here. */
export const createApi = async (surroundings: Surroundings, root: DynamicModule = AppModule.with(surroundings)): Promise<NestExpressApplication> => {
  const app = await NestFactory.create<NestExpressApplication>(root, new ExpressAdapter(), {
    bodyParser: false,
    logger: ['error', 'fatal'],
    abortOnError: false,
  });
  app.set('etag', false);
  app.set('query parser', 'simple');
  app.disable('x-powered-by');
  app.use(entrance(surroundings.log, surroundings.config.cursorSecret));
  app.use(readBody);
  const filter = new ProblemFilter(surroundings.log);
  app.useGlobalFilters(filter);
  const published = app.get(PublishedDocument);
  published.document = buildOpenApi(app);
  published.text = documentText(published.document);
  await app.init();
  filter.routes = new RouteTable(app.getHttpAdapter().getInstance() as unknown as ConstructorParameters<typeof RouteTable>[0]);
  return app;
};
