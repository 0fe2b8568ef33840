import { Ajv2020, type ValidateFunction } from 'ajv/dist/2020.js';
import addFormatsModule from 'ajv-formats';
import { openApiText } from '../../apps/api/src/openapi.js';
import { resolved } from '../../apps/api/src/platform/http/document-ref.js';

export type Json = Record<string, unknown>;
export const isJson = (value: unknown): value is Json => typeof value === 'object' && value !== null && !Array.isArray(value);

export type Method = 'get' | 'post' | 'put' | 'patch' | 'delete';
export const METHODS: readonly Method[] = ['get', 'post', 'put', 'patch', 'delete'];

export interface Media {
  schema?: Json;
  example?: unknown;
}

export interface Parameter {
  name: string;
  in: 'path' | 'query' | 'header' | 'cookie';
  required?: boolean;
  example?: unknown;
  schema: Json;
}

export interface Answer {
  description?: string;
  headers?: Record<string, Json>;
  content?: Record<string, Media>;
}

/** One operation of the document, with its shared parameters, answers and headers in place. */
export interface Described {
  id: string;
  method: Method;
  path: string;
  tag: string;
  isPublic: boolean;
  scope: string | null;
  /** Names of the security schemes that open it. */
  schemes: string[];
  deprecated: boolean;
  parameters: Parameter[];
  body: Record<string, Media> | null;
  responses: Record<string, Answer>;
}

export interface Contract {
  text: string;
  document: Json & { openapi: string; paths: Record<string, Record<string, Json>>; components: Record<string, Record<string, Json>> };
  operations: Described[];
  of(id: string): Described;
  /** A check of any value against a schema of the document. */
  check(schema: Json): ValidateFunction;
}

const inPlace = (document: Json, one: Json, path: string, method: Method): Described => {
  const responses = Object.entries((one['responses'] as Record<string, Json>) ?? {}).map(([status, answer]): [string, Answer] => {
    const whole = resolved(document, answer) as Answer;
    const headers = Object.entries(whole.headers ?? {}).map(([name, header]): [string, Json] => [name, resolved(document, header)]);
    return [status, { ...whole, headers: Object.fromEntries(headers) }];
  });
  return {
    id: String(one['operationId']),
    method,
    path,
    tag: String((one['tags'] as string[] | undefined)?.[0]),
    isPublic: one['x-public'] === true,
    scope: typeof one['x-scope'] === 'string' ? one['x-scope'] : null,
    schemes: ((one['security'] as Json[] | undefined) ?? []).flatMap((scheme) => Object.keys(scheme)),
    deprecated: one['deprecated'] === true,
    parameters: ((one['parameters'] as Json[] | undefined) ?? []).map((parameter) => resolved(document, parameter) as unknown as Parameter),
    body: (one['requestBody'] as { content?: Record<string, Media> } | undefined)?.content ?? null,
    responses: Object.fromEntries(responses),
  };
};

/** Any OpenAPI document made ready for tests. */
export const contractOf = (text: string): Contract => {
  const document = JSON.parse(text) as Contract['document'];
  const operations = Object.entries(document.paths).flatMap(([path, item]) =>
    METHODS.flatMap((method) => (item[method] ? [inPlace(document, item[method], path, method)] : [])),
  );
  const ajv = new Ajv2020({ strict: false, allErrors: false });
  (addFormatsModule as unknown as (target: Ajv2020) => void)(ajv);
  const base = 'https://contract.invalid/api';
  ajv.addSchema({ $id: base, components: document.components });
  // References inside a schema are relative to the document that holds them.
  const rebased = (value: unknown): unknown => {
    if (Array.isArray(value)) return value.map(rebased);
    if (!isJson(value)) return value;
    return Object.fromEntries(
      Object.entries(value).map(([key, one]) => [key, key === '$ref' && typeof one === 'string' && one.startsWith('#') ? base + one : rebased(one)]),
    );
  };
  const compiled = new Map<Json, ValidateFunction>();
  const check = (schema: Json): ValidateFunction => {
    const known = compiled.get(schema) ?? ajv.compile(rebased(schema) as Json);
    compiled.set(schema, known);
    return known;
  };
  const of = (id: string): Described => {
    const found = operations.find((one) => one.id === id);
    if (!found) throw new Error(`the document has no operation ${id}`);
    return found;
  };
  return { text, document, operations, of, check };
};

/** The contract of the code as it stands. */
export const currentContract = async (): Promise<Contract> => contractOf(await openApiText());

/** Everything in a value that has a place, with that place. */
export const walk = (value: unknown, see: (json: Json, at: string, key: string) => void, at = '#', key = ''): void => {
  if (typeof value !== 'object' || value === null) return;
  if (isJson(value)) see(value, at, key);
  for (const [name, inner] of Object.entries(value)) walk(inner, see, `${at}/${name}`, name);
};
