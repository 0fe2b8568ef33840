import { randomUUID } from 'node:crypto';
import type { NextFunction, Request, Response } from 'express';
import type { Logger } from 'pino';
import { NIL_ID } from '../access/actor.js';
import type { ServingState } from '../health/state.js';
import type { Metrics } from '../metrics/metrics.js';
import { contexts, type RequestContext } from './context.js';
import { traceFrom } from './trace.js';

/** The same for every answer: nothing is cached, framed, sniffed or run. */
export const SECURITY_HEADERS = {
  'Cache-Control': 'no-store',
  'Content-Security-Policy': "default-src 'none'; frame-ancestors 'none'; base-uri 'none'; form-action 'none'",
  'Cross-Origin-Resource-Policy': 'same-origin',
  'Referrer-Policy': 'no-referrer',
  'Strict-Transport-Security': 'max-age=31536000; includeSubDomains',
  'X-Content-Type-Options': 'nosniff',
  'X-Frame-Options': 'DENY',
} as const;

const GIVEN_ID = /^[\w.-]{1,64}$/;

/** The template of the route: never the path, which may hold anything, nor the query, which may hold coordinates. */
const routeOf = (request: Request): string | null => {
  const path = (request.route as { path?: unknown } | undefined)?.path;
  return typeof path === 'string' ? path : null;
};

/** Whoever holds a connection open learns with the last answer on it that it ends, also when the answer had begun to be worked on before. */
const closeWhenDraining = (response: Response, state: ServingState): void => {
  const writeHead = response.writeHead.bind(response) as (...args: unknown[]) => Response;
  response.writeHead = ((...args: unknown[]) => {
    if (state.draining && !response.headersSent) response.setHeader('Connection', 'close');
    return writeHead(...args);
  }) as typeof response.writeHead;
};

export interface Entrance {
  log: Logger;
  cursorSecret: string;
  metrics: Metrics;
  state: ServingState;
}

/** The first thing every request meets: an id and a place in a trace, the fixed headers, its context, and a log line at its end. */
export const entrance =
  ({ log, cursorSecret, metrics, state }: Entrance) =>
  (request: Request, response: Response, next: NextFunction): void => {
    const started = performance.now();
    const given = request.get('x-request-id');
    const requestId = given && GIVEN_ID.test(given) ? given : randomUUID();
    const store: RequestContext = {
      requestId,
      trace: traceFrom(request.get('traceparent')),
      actor: null,
      path: request.path,
      query: new URL(request.originalUrl, 'http://local').searchParams,
      cursorSecret,
    };
    response.set({ ...SECURITY_HEADERS, 'X-Request-Id': requestId });
    closeWhenDraining(response, state);
    let ended = false;
    const atEnd = (whole: boolean) => (): void => {
      if (ended) return;
      ended = true;
      const route = routeOf(request);
      const ms = performance.now() - started;
      metrics.request(request.method, route, response.statusCode, ms);
      log.info(
        lineOf(store, { method: request.method, route, status: response.statusCode, ms: Math.round(ms), ...(whole ? {} : { cutOff: true }) }),
        'request',
      );
    };
    response.on('finish', atEnd(true));
    response.on('close', atEnd(false));
    contexts.run(store, next);
  };

const lineOf = ({ requestId, trace, actor }: RequestContext, about: object): object => ({
  requestId,
  traceId: trace.traceId,
  spanId: trace.spanId,
  ...about,
  gardenId: actor && actor.gardenId !== NIL_ID ? actor.gardenId : null,
  keyId: actor?.keyId ?? null,
  memberId: actor?.memberId ?? null,
});
