import { applyDecorators, SetMetadata } from '@nestjs/common';
import { ModulesContainer } from '@nestjs/core';
import { ApiBody, ApiConsumes } from '@nestjs/swagger';
import type { INestApplication } from '@nestjs/common';
import type { Request } from 'express';
import { Problem } from '../problems/problem.js';

const RAW = 'lathwork:raw-body';

/** What a route takes that is not JSON. */
export interface RawBody {
  mediaTypes: readonly string[];
  /** The most bytes that are read; the rest is never looked at. */
  limit: number;
  /** A better answer for a media type that people do send and that is not taken. */
  refusal?: (mediaType: string) => Problem | null;
}

/** The route takes bytes. Nothing is read before its handler asks with `readRaw`, so after who is asking is known. */
export const TakesRaw = (rule: RawBody): MethodDecorator =>
  applyDecorators(
    SetMetadata(RAW, rule),
    ApiConsumes(...rule.mediaTypes),
    ApiBody({ required: true, schema: { type: 'string', format: 'binary', maxLength: rule.limit } }),
  );

const METHOD_NAMES = ['GET', 'POST', 'PUT', 'DELETE', 'PATCH'] as const;

const joined = (...parts: (string | undefined)[]): string =>
  `/${parts
    .flatMap((part) => (part ?? '').split('/'))
    .filter(Boolean)
    .join('/')}`;

const patternOf = (path: string): RegExp => new RegExp(`^${path.replaceAll(/[.+^${}()|[\]\\]/g, '\\$&').replaceAll(/:\w+/g, '[^/]+')}/?$`);

/** The routes whose bodies stay unread at the entrance, found from what their handlers say. */
export class RawRoutes {
  private routes: { method: string; pattern: RegExp }[] = [];

  readFrom(app: INestApplication): void {
    const controllers = [...app.get(ModulesContainer).values()].flatMap((module) => [...module.controllers.values()].map(({ metatype }) => metatype));
    this.routes = controllers.flatMap((controller) => {
      const prototype = (controller as { prototype?: Record<string, unknown> } | null)?.prototype ?? {};
      const prefix = Reflect.getMetadata('path', controller as object) as string | undefined;
      return Object.getOwnPropertyNames(prototype).flatMap((name) => {
        const handler = prototype[name];
        if (typeof handler !== 'function' || !Reflect.hasMetadata(RAW, handler)) return [];
        const path = joined(prefix, Reflect.getMetadata('path', handler) as string | undefined);
        return [{ method: METHOD_NAMES[Reflect.getMetadata('method', handler) as number] ?? '', pattern: patternOf(path) }];
      });
    });
  }

  has(request: Request): boolean {
    return this.routes.some(({ method, pattern }) => method === request.method && pattern.test(request.path));
  }
}

const tooLarge = (limit: number): Problem => new Problem('body-too-large', { limit }, [], { Connection: 'close' });

/** Reads the bytes of a request, no more than the rule allows, and says which of the media types they were sent as. */
export const readRaw = async (
  request: Request & { rawBody?: Buffer },
  { mediaTypes, limit, refusal }: RawBody,
): Promise<{ bytes: Buffer; mediaType: string }> => {
  const mediaType = (request.get('content-type') ?? '').toLowerCase().split(';')[0]?.trim() ?? '';
  if (!mediaTypes.includes(mediaType) || request.get('content-encoding') !== undefined) {
    request.resume();
    throw refusal?.(mediaType) ?? new Problem('media-type-unsupported', { wanted: mediaTypes.join(' or ') });
  }
  if (Number(request.get('content-length') ?? 0) > limit) {
    request.resume();
    throw tooLarge(limit);
  }
  const bytes = await collect(request, limit);
  request.rawBody = bytes;
  return { bytes, mediaType };
};

const collect = async (request: Request, limit: number): Promise<Buffer> => {
  const chunks: Buffer[] = [];
  let size = 0;
  try {
    for await (const chunk of request.iterator({ destroyOnReturn: false }) as AsyncIterable<Buffer>) {
      size += chunk.length;
      if (size > limit) break;
      chunks.push(chunk);
    }
  } catch {
    throw new Problem('malformed-request');
  }
  if (size <= limit) return Buffer.concat(chunks);
  // The rest is thrown away unread, so that the answer can still be heard.
  request.resume();
  throw tooLarge(limit);
};
