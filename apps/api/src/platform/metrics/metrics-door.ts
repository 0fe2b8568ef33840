import { createServer, type Server } from 'node:http';
import type { NextFunction, Request, Response } from 'express';
import { sameSecret } from '../access/key.js';
import { Problem } from '../problems/problem.js';
import type { Metrics } from './metrics.js';

const PATH = '/metrics';
const BEARER = /^Bearer +(\S{1,200})$/i;

/** GET /metrics beside the API: only where a token was set, and only with it. Without one the address does not exist. */
export const metricsDoor =
  (metrics: Metrics, token: string | null) =>
  (request: Request, response: Response, next: NextFunction): void => {
    if (token === null || request.path !== PATH || request.method !== 'GET') return next();
    // No router has seen it, and it is no unknown address.
    request.route = { path: PATH };
    const given = BEARER.exec(request.get('authorization') ?? '')?.[1];
    if (given === undefined || !sameSecret(given, token)) return next(new Problem('unauthenticated', {}, [], { 'WWW-Authenticate': 'Bearer realm="metrics"' }));
    metrics.registry.metrics().then((text) => response.type(metrics.registry.contentType).send(text), next);
  };

/** The same on a port of its own that is reached from this machine only; there no token is asked for. */
export const serveMetrics = (metrics: Metrics, port: number): Promise<Server> =>
  new Promise((resolve, reject) => {
    const server = createServer((request, response) => {
      if (request.url !== PATH || request.method !== 'GET') return void response.writeHead(404).end();
      metrics.registry.metrics().then(
        (text) => response.writeHead(200, { 'Content-Type': metrics.registry.contentType }).end(text),
        () => response.writeHead(503).end(),
      );
    });
    server.once('error', reject);
    server.listen(port, '127.0.0.1', () => resolve(server.unref()));
  });
