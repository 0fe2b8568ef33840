import { applyDecorators, HttpCode, Delete, Get, Patch, Post, type Type as Class } from '@nestjs/common';
import { ApiBody, ApiConsumes, ApiHeader, ApiOperation, ApiParam, ApiResponse } from '@nestjs/swagger';
import { Requires } from '../../platform/access/access.decorators.js';
import type { OperationId } from '../../platform/access/pivot.js';
import { MERGE_PATCH } from '../../platform/http/body.js';
import { Deprecates, type Deprecated } from '../../platform/http/deprecation.js';
import { WantsIfMatch } from '../../platform/http/etag.js';
import { refusal, type RefusalStatus } from '../../platform/problems/refusals.js';
import { S, type JsonSchema } from '../../platform/http/response-schema.js';

type Method = 'get' | 'post' | 'patch' | 'delete';
const ROUTE = { get: Get, post: Post, patch: Patch, delete: Delete } as const;

interface Operation {
  /** Its row in the table of roles, which says who may call it. */
  id: OperationId;
  summary: string;
  body?: Class;
  /** What comes back; null for an answer without a body. */
  answer: JsonSchema | null;
  status?: 200 | 201 | 202 | 204;
  /** One page of a list. */
  page?: boolean;
  /** The answer is a view of several things and has no version, so no ETag; and what is made has no one address. */
  untagged?: boolean;
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
  problems?: readonly RefusalStatus[];
  /** It will go away: since when it is advised against, when it goes, and where that is explained. */
  deprecated?: Deprecated;
  /** What a 409 carries beyond a plain problem. */
  conflict?: JsonSchema;
}

const problem = (status: RefusalStatus, schema?: JsonSchema): MethodDecorator => ApiResponse({ status, ...refusal(status, schema) });

const text = (description: string, maxLength = 200) => ({ description, schema: { type: 'string', maxLength } as const });

const headersOf = (operation: Operation, single: boolean) => ({
  ...(single ? { ETag: text('Strong tag of this version') } : {}),
  ...(operation.creating && single ? { Location: text('Address of what was made', 500) } : {}),
  ...(operation.creating ? { 'Idempotency-Replayed': text('true when this is an earlier answer', 10) } : {}),
  ...(operation.page ? { Link: text('Links to the first and next page (RFC 8288)', 2000) } : {}),
  ...(operation.waits
    ? {
        Link: text('The job that can be watched (relation "monitor")'),
        'Retry-After': text('Seconds after which to ask again, while it is not done'),
        'Preference-Applied': text('The wait that was honoured', 40),
      }
    : {}),
});

const pageOf = (item: JsonSchema): JsonSchema => S.object({ items: S.list(item, 100), next: S.orNull(S.text(500)) });

const success = (operation: Operation, status: number): MethodDecorator => {
  if (operation.answer === null) return ApiResponse({ status, description: 'Done' });
  const schema = operation.page ? pageOf(operation.answer) : operation.answer;
  return ApiResponse({
    status,
    description: operation.summary,
    headers: headersOf(operation, !operation.page && !operation.untagged),
    content: { [operation.mediaType ?? 'application/json']: { schema } },
  } as Parameters<typeof ApiResponse>[0]);
};

const paramsOf = (operation: Operation, path: string): string[] => [
  ...new Set([...(operation.params ?? []), ...[...path.matchAll(/:(\w+)/g)].map((match) => match[1] ?? '')]),
];

const statusesOf = (operation: Operation, method: Method, path: string): RefusalStatus[] => {
  const named = paramsOf(operation, path).length > 0;
  const statuses: [boolean, readonly RefusalStatus[]][] = [
    [named || method === 'patch', [404]],
    [Boolean(operation.body), [413, 415, 422]],
    [Boolean(operation.creating), [409, 422]],
    [method === 'patch', [409]],
    [Boolean(operation.ifMatch), [409, 412, 428]],
    [true, [400, 401, 403, 406, 429, 500, 503, ...(operation.problems ?? [])]],
  ];
  return [...new Set(statuses.flatMap(([applies, those]) => (applies ? those : [])))];
};

const bodyOf = (operation: Operation, method: Method): MethodDecorator[] =>
  operation.body ? [ApiBody({ type: operation.body, required: true }), ApiConsumes(method === 'patch' ? MERGE_PATCH : 'application/json')] : [];

/** One route: its address, who may call it, and everything that can come back, said once. */
export const Operation = (method: Method, path: string, operation: Operation): MethodDecorator => {
  const status = operation.status ?? (method === 'post' ? 201 : method === 'delete' ? 204 : 200);
  return applyDecorators(
    ROUTE[method](path),
    HttpCode(status),
    ApiOperation({ operationId: operation.id, summary: operation.summary }),
    Requires(operation.id),
    ...bodyOf(operation, method),
    ...paramsOf(operation, path).map((name) => ApiParam({ name, schema: { type: 'string', maxLength: 60 } })),
    ...(operation.deprecated ? [Deprecates(operation.deprecated)] : []),
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
    ...statusesOf(operation, method, path).map((refused) => problem(refused, refused === 409 ? operation.conflict : undefined)),
  );
};
