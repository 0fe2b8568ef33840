import { applyDecorators, Injectable, SetMetadata, type CallHandler, type ExecutionContext, type NestInterceptor } from '@nestjs/common';
import { Reflector } from '@nestjs/core';
import { ApiExtension } from '@nestjs/swagger';
import type { Response } from 'express';
import { tap, type Observable } from 'rxjs';
import { Metrics } from '../metrics/metrics.js';

/** An operation that will go away. */
export interface Deprecated {
  /** The day from which on it should not be used in anything new: 2026-05-01. */
  since: string;
  /** The day on which it goes, at least half a year later. */
  sunset: string;
  /** A page that says what to use instead. */
  link: string;
}

export const DEPRECATED = 'lathwork:deprecated';

/** Whoever builds on the API has this long to change, counted in days. */
export const NOTICE_DAYS = 180;

const momentOf = (day: string): number => {
  const at = Date.parse(`${day}T00:00:00Z`);
  if (!/^\d{4}-\d{2}-\d{2}$/.test(day) || !Number.isFinite(at)) throw new Error(`${day} is not a day`);
  return at;
};

/** The headers of RFC 9745 (Deprecation, a structured-field date) and RFC 8594 (Sunset, an HTTP date). */
export const deprecationHeaders = ({ since, sunset }: Deprecated): Readonly<Record<'Deprecation' | 'Sunset', string>> => ({
  Deprecation: `@${momentOf(since) / 1000}`,
  Sunset: new Date(momentOf(sunset)).toUTCString(),
});

/** Marks an operation that will go away. Too short a notice does not start. */
export const Deprecates = (about: Deprecated): MethodDecorator => {
  const days = (momentOf(about.sunset) - momentOf(about.since)) / 86_400_000;
  if (days < NOTICE_DAYS) throw new Error(`an operation is deprecated for ${days} days only; whoever uses it needs ${NOTICE_DAYS}`);
  return applyDecorators(SetMetadata(DEPRECATED, about), ApiExtension('x-deprecated', { ...about }));
};

const nameOf = (handler: object): string =>
  (Reflect.getMetadata('swagger/apiOperation', handler) as { operationId?: string } | undefined)?.operationId ?? 'unnamed';

/** Tells every caller of a deprecated operation so, and counts them. */
@Injectable()
export class DeprecationInterceptor implements NestInterceptor {
  constructor(
    private readonly reflector: Reflector,
    private readonly metrics: Metrics,
  ) {}

  intercept(context: ExecutionContext, next: CallHandler): Observable<unknown> {
    const about = this.reflector.get<Deprecated | undefined>(DEPRECATED, context.getHandler());
    if (!about) return next.handle();
    const response = context.switchToHttp().getResponse<Response>();
    response.set(deprecationHeaders(about));
    this.metrics.deprecatedUses.inc({ operation: nameOf(context.getHandler()) });
    // After the answer has been written: a page sets links of its own.
    return next.handle().pipe(tap(() => response.append('Link', `<${about.link}>; rel="deprecation"; type="text/html"`)));
  }
}
