import type { INestApplication } from '@nestjs/common';
import { DocumentBuilder, SwaggerModule, type OpenAPIObject } from '@nestjs/swagger';
import { MERGE_PATCH } from './platform/http/body.js';
import { jsonText, ordered, shareComponents } from './openapi-components.js';
import { withExamples } from './openapi-examples.js';
import { describe, tagsOf, tidySchemas, withPatchTwins, withStatusHeaders } from './openapi-tidy.js';
import { namedSchemas } from './platform/http/response-schema.js';
import { CATALOGUE } from './platform/problems/catalogue.js';
import { refusal, type RefusalStatus } from './platform/problems/refusals.js';

type Json = Record<string, unknown>;
type Operation = Json & { responses: Record<string, Json>; parameters?: Json[]; requestBody?: { content: Record<string, Json> }; security?: unknown[] };

const text = (maxLength: number): Json => ({ type: 'string', maxLength });

const FAULT: Json = {
  type: 'object',
  required: ['pointer', 'code', 'detail'],
  properties: {
    pointer: { ...text(500), description: 'JSON Pointer into the body, or the parameter' },
    code: text(60),
    detail: text(500),
    in: { type: 'string', enum: ['query', 'path', 'header'] },
    unit: text(20),
    allowed: text(2000),
    remedy: text(500),
  },
};

const PROBLEM: Json = {
  type: 'object',
  description: 'A refusal by RFC 9457. Its type leads to what can be done about it.',
  required: ['type', 'title', 'status', 'detail', 'remedy'],
  properties: {
    type: { type: 'string', enum: Object.keys(CATALOGUE).map((key) => `/v1/problems/${key}`) },
    title: text(200),
    status: { type: 'integer', minimum: 400, maximum: 599 },
    detail: text(1000),
    remedy: text(500),
    errors: { type: 'array', maxItems: 50, items: { $ref: '#/components/schemas/FieldFault' } },
    requestId: text(64),
  },
};

/** Which refusals an operation can answer with, from what it is and what it takes. */
const refusalsOf = (method: string, path: string, operation: Operation): RefusalStatus[] => {
  const has = (name: string): boolean => operation.parameters?.some((one) => one['name'] === name) ?? false;
  const takes = Object.keys(operation.requestBody?.content ?? {}).length > 0;
  const isPublic = operation['x-public'] === true;
  const statuses: [boolean, RefusalStatus[]][] = [
    // Any address can be sent with a broken percent sign.
    [true, [400]],
    [!isPublic, [401, 403]],
    [!isProbe(path), [429]],
    [path.includes('{'), [404]],
    [method !== 'get', [409, 422]],
    [has('If-Match'), [412, 428]],
    [takes, [413, 415]],
    [true, [406, 500, 503]],
  ];
  return statuses.flatMap(([applies, those]) => (applies ? those : []));
};

/** The probes of whoever keeps the server running: they are never limited. */
const isProbe = (path: string): boolean => !path.startsWith('/v1/');

const complete = (method: string, path: string, operation: Operation): void => {
  if (method === 'patch' && operation.requestBody?.content['application/json'])
    operation.requestBody.content = { [MERGE_PATCH]: operation.requestBody.content['application/json'] };
  for (const status of refusalsOf(method, path, operation)) operation.responses[status] ??= refusal(status);
  if (operation['x-public'] === true) operation.security = [];
  if (operation['x-deprecated']) operation['deprecated'] = true;
  for (const [status, response] of Object.entries(operation.responses))
    operation.responses[status] = withStatusHeaders(status, response, { isLimited: !isProbe(path), isDeprecated: operation['deprecated'] === true });
  operation['description'] = [operation['description'], describe({ method, operation })].filter(Boolean).join(' ');
  withExamples(operation);
};

const SESSION = {
  type: 'apiKey',
  in: 'cookie',
  description: 'The session of a signed-in browser; say which garden with the header Lathwork-Garden',
} as const;

const settings = () =>
  new DocumentBuilder()
    .setOpenAPIVersion('3.1.0')
    .setTitle('Lathwork planning API')
    .setDescription(
      'Plans low-cost growing shelters: loads, nights and days, materials, budget, print-ready build plans. Every number carries its unit in its name; a request may give a quantity as a number in that unit or as text with its own unit, such as "10 ft". A plan is a screening, not an engineer’s approval.',
    )
    .setVersion('0.2.0')
    .addServer('/')
    .addSecurity('gardenKey', { type: 'http', scheme: 'bearer', bearerFormat: 'lw_ key', description: 'A key of one garden: lw_...' })
    .addSecurity('operatorToken', { type: 'http', scheme: 'bearer', bearerFormat: 'opaque', description: 'The token of whoever runs this server' })
    .addCookieAuth('__Host-lathwork-session', SESSION, 'session')
    .addSecurity('sessionToken', { type: 'http', scheme: 'bearer', bearerFormat: 'lws_ token', description: 'The same session for a program: lws_...' })
    .build();

/** What the builder has no words for: the licence by its identifier, tags with descriptions, and that the server is not an inner one. */
const withHead = (document: OpenAPIObject): OpenAPIObject => {
  const operations = Object.values(document.paths).flatMap((item) => Object.values(item as Json) as Operation[]);
  const used = new Set(operations.flatMap((operation) => (operation?.['tags'] as string[] | undefined) ?? []));
  return {
    ...document,
    info: { ...document.info, license: { name: 'All rights reserved', identifier: 'LicenseRef-All-rights-reserved' } as never },
    servers: [{ url: '/', description: 'The server that this document comes from: production, staging or local', 'x-internal': false } as never],
    tags: tagsOf(used),
  };
};

/** Describes exactly the routes that the application has. */
export const buildOpenApi = (app: INestApplication): OpenAPIObject => {
  const document = SwaggerModule.createDocument(app, settings(), { operationIdFactory: (_controller, method) => method });
  const schemas = { ...document.components?.schemas, ...(namedSchemas() as never as object), FieldFault: FAULT, Problem: PROBLEM };
  document.components = { ...document.components, schemas: withPatchTwins(schemas as never) as never };
  for (const [path, item] of Object.entries(document.paths))
    for (const [method, operation] of Object.entries(item as Json))
      if (typeof operation === 'object' && operation !== null && 'responses' in operation) complete(method, path, operation as Operation);
  document.components = { ...document.components, ...(shareComponents(document.paths as Record<string, unknown>) as object) };
  return withHead(tidySchemas(document) as OpenAPIObject);
};

/** The document as it is committed and served. */
export const documentText = (document: OpenAPIObject): string => {
  const { openapi, info, ...rest } = ordered(document) as Json;
  return `${jsonText({ openapi, info, ...rest })}\n`;
};
