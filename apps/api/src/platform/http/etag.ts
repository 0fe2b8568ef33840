import { createParamDecorator, applyDecorators, type ExecutionContext } from '@nestjs/common';
import { ApiHeader } from '@nestjs/swagger';
import type { Request } from 'express';
import { fail } from '../problems/problem.js';

/** Strong tag of a row: its version, which rises at every change and only then. */
export const etagOf = (row: { version: number }): string => `"${row.version}"`;

/** Strong tag of something that moves through states without a version of its own. */
export const etagOfParts = (...parts: (string | number)[]): string => `"${parts.join('-').replaceAll(/[^\w.-]/g, '_')}"`;

/** The If-Match header of a change, as it was sent. Give it to `assertMatch`. */
export const IfMatch = createParamDecorator((_none: unknown, context: ExecutionContext): string | undefined =>
  context.switchToHttp().getRequest<Request>().get('if-match'),
);

/** Documents that a route wants If-Match. */
export const WantsIfMatch = (): MethodDecorator =>
  applyDecorators(
    ApiHeader({ name: 'If-Match', required: true, description: 'ETag of the version that is changed', schema: { type: 'string', maxLength: 200 } }),
  );

const tagsOf = (header: string): string[] => header.match(/(?:W\/)?"[^"]*"|\*/g) ?? [];

/** Refuses a change that does not name the version it changes (428), or names an old one (412). Comparison is strong. */
export const assertMatch = (ifMatch: string | undefined, etag: string | { version: number }): void => {
  if (ifMatch === undefined || ifMatch.trim() === '') fail('if-match-required');
  const current = typeof etag === 'string' ? etag : etagOf(etag);
  const tags = tagsOf(ifMatch ?? '');
  if (!tags.includes('*') && !tags.includes(current)) fail('version-stale');
};

/** Whether the caller already has this version (If-None-Match, weak comparison). */
export const alreadyHas = (ifNoneMatch: string | undefined, etag: string): boolean => {
  const plain = (tag: string): string => tag.replace(/^W\//, '');
  return tagsOf(ifNoneMatch ?? '').some((tag) => tag === '*' || plain(tag) === plain(etag));
};
