import { randomUUID } from 'node:crypto';
import type { NextFunction, Request, Response } from 'express';
import type { Logger } from 'pino';
import { contexts, type RequestContext } from './context.js';

/** The same for every answer: nothing is cached, framed, sniffed or run. */
const SECURITY_HEADERS = {
  'Cache-Control': 'no-store',
  'Content-Security-Policy': "default-src 'none'; frame-ancestors 'none'; base-uri 'none'; form-action 'none'",
  'Cross-Origin-Resource-Policy': 'same-origin',
  'Referrer-Policy': 'no-referrer',
  'Strict-Transport-Security': 'max-age=31536000; includeSubDomains',
  'X-Content-Type-Options': 'nosniff',
  'X-Frame-Options': 'DENY',
} as const;

const GIVEN_ID = /^[\w.-]{1,64}$/;

/** The first thing every request meets: an id, the fixed headers, its context, and a log line at its end. */
export const entrance =
  (log: Logger, cursorSecret: string) =>
  (request: Request, response: Response, next: NextFunction): void => {
    const started = performance.now();
    const given = request.get('x-request-id');
    const requestId = given && GIVEN_ID.test(given) ? given : randomUUID();
    const store: RequestContext = {
      requestId,
      actor: null,
      path: request.path,
      query: new URL(request.originalUrl, 'http://local').searchParams,
      cursorSecret,
    };
    response.set({ ...SECURITY_HEADERS, 'X-Request-Id': requestId });
    response.on('finish', () => {
      // The template of the route, never the raw query: a query may hold coordinates.
      const route = (request.route as { path?: string } | undefined)?.path ?? request.path.slice(0, 200);
      log.info(
        {
          requestId,
          method: request.method,
          route,
          status: response.statusCode,
          ms: Math.round(performance.now() - started),
          keyId: store.actor?.keyId ?? null,
        },
        'request',
      );
    });
    contexts.run(store, next);
  };
