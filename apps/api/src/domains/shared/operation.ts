import { applyDecorators, HttpCode, Delete, Get, Patch, Post, type Type as Class } from '@nestjs/common';
import { ApiBody, ApiConsumes, ApiHeader, ApiOperation, ApiParam, ApiResponse } from '@nestjs/swagger';
import { OperatorOnly, Requires } from '../../platform/access/access.decorators.js';
import type { Scope } from '../../platform/access/scopes.js';
import { MERGE_PATCH } from '../../platform/http/body.js';
import { WantsIfMatch } from '../../platform/http/etag.js';
import { S, type JsonSchema } from '../../platform/http/response-schema.js';

type Method = 'get' | 'post' | 'patch' | 'delete';
const ROUTE = { get: Get, post: Post, patch: Patch, delete: Delete } as const;

interface Operation {
  id: string;
  summary: string;
  /** A scope of the garden's keys, or the operator alone. */
  access: Scope | 'operator';
  body?: Class;
  /** What comes back; null for an answer without a body. */
  answer: JsonSchema | null;
  status?: 200 | 201 | 202 | 204;
  /** One page of a list. */
  page?: boolean;
  /** A creating request that may carry an Idempotency-Key. */
  creating?: boolean;
  /** A change that must name the version it changes. */
  ifMatch?: boolean;
  /** A creating request that may be asked to wait for its job. */
  waits?: boolean;
  /** Parameters of the controller's own address. */
  params?: readonly string[];
  mediaType?: string;
  /** Statuses beyond those that follow from the rest. */
  problems?: readonly number[];
}

const TITLES: Record<number, string> = {
  400: 'The request is not valid',
  401: 'No valid key',
  403: 'Not allowed',
  404: 'Not found',
  406: 'No such form',
  409: 'In the way of something else',
  412: 'Changed meanwhile',
  413: 'Too large',
  415: 'Media type not taken',
  422: 'Cannot be done with these figures',
  428: 'If-Match is required',
  429: 'Too many at once',
  500: 'A mistake of the server',
  503: 'Not available now',
};

const PROBLEM = { $ref: '#/components/schemas/Problem' };

const problem = (status: number): MethodDecorator =>
  ApiResponse({ status, description: TITLES[status] ?? 'Refused', content: { 'application/problem+json': { schema: PROBLEM } } });

const text = (description: string, maxLength = 200) => ({ description, schema: { type: 'string', maxLength } as const });

const headersOf = (operation: Operation, single: boolean) => ({
  ...(single ? { ETag: text('Strong tag of this version') } : {}),
  ...(operation.creating ? { Location: text('Address of what was made', 500), 'Idempotency-Replayed': text('true when this is an earlier answer', 10) } : {}),
  ...(operation.page ? { Link: text('Links to the first and next page (RFC 8288)', 2000) } : {}),
  ...(operation.waits ? { 'Preference-Applied': text('The wait that was honoured', 40) } : {}),
});

const pageOf = (item: JsonSchema): JsonSchema => S.object({ items: S.list(item, 100), next: S.orNull(S.text(500)) });

const success = (operation: Operation, status: number): MethodDecorator => {
  if (operation.answer === null) return ApiResponse({ status, description: 'Done' });
  const schema = operation.page ? pageOf(operation.answer) : operation.answer;
  return ApiResponse({
    status,
    description: operation.summary,
    headers: headersOf(operation, !operation.page),
    content: { [operation.mediaType ?? 'application/json']: { schema } },
  } as Parameters<typeof ApiResponse>[0]);
};

const paramsOf = (operation: Operation, path: string): string[] => [
  ...new Set([...(operation.params ?? []), ...[...path.matchAll(/:(\w+)/g)].map((match) => match[1] ?? '')]),
];

const hasParams = (operation: Operation, path: string): boolean => paramsOf(operation, path).length > 0;

const statusesOf = (operation: Operation, method: Method, path: string): number[] => [
  ...new Set([
    ...(operation.body || operation.page || hasParams(operation, path) || operation.creating ? [400] : []),
    401,
    403,
    ...(hasParams(operation, path) || method === 'patch' ? [404] : []),
    406,
    ...(operation.body ? [413, 415, 422] : []),
    ...(operation.creating ? [409, 422] : []),
    ...(method === 'patch' ? [409] : []),
    ...(operation.ifMatch ? [409, 412, 428] : []),
    429,
    500,
    503,
    ...(operation.problems ?? []),
  ]),
];

const bodyOf = (operation: Operation, method: Method): MethodDecorator[] =>
  operation.body ? [ApiBody({ type: operation.body, required: true }), ApiConsumes(method === 'patch' ? MERGE_PATCH : 'application/json')] : [];

/** One route: its address, who may call it, and everything that can come back, said once. */
export const Operation = (method: Method, path: string, operation: Operation): MethodDecorator => {
  const status = operation.status ?? (method === 'post' ? 201 : method === 'delete' ? 204 : 200);
  return applyDecorators(
    ROUTE[method](path),
    HttpCode(status),
    ApiOperation({ operationId: operation.id, summary: operation.summary }),
    operation.access === 'operator' ? OperatorOnly() : Requires(operation.access),
    ...bodyOf(operation, method),
    ...paramsOf(operation, path).map((name) => ApiParam({ name, schema: { type: 'string', maxLength: 60 } })),
    ...(operation.ifMatch ? [WantsIfMatch()] : []),
    ...(operation.creating
      ? [
          ApiHeader({
            name: 'Idempotency-Key',
            required: false,
            description: 'Repeat with the same key and body to get the same answer, for 24 hours',
            schema: { type: 'string', minLength: 1, maxLength: 257 },
          }),
        ]
      : []),
    ...(operation.waits
      ? [
          ApiHeader({
            name: 'Prefer',
            required: false,
            description: 'wait=10 holds the answer back until the job is done, at most so many seconds',
            schema: { type: 'string', maxLength: 100 },
          }),
        ]
      : []),
    success(operation, status),
    ...(operation.waits ? [success(operation, 201)] : []),
    ...statusesOf(operation, method, path).map(problem),
  );
};
