import type { OpenAPIObject } from '@nestjs/swagger';
import { resolved } from '../http/document-ref.js';

export type Json = Record<string, unknown>;
export type Content = Record<string, { schema?: Json; example?: unknown }>;

export interface Parameter {
  name: string;
  in: 'path' | 'query' | 'header' | 'cookie';
  required?: boolean;
  description?: string;
  example?: unknown;
  schema?: Json;
}

export interface AnswerOf {
  status: string;
  description: string;
  headers: readonly { name: string; description: string }[];
  content: Content;
}

/** One operation of the document as the pages need it: every reference to a shared part in place. */
export interface Described {
  id: string;
  method: string;
  path: string;
  domain: string;
  summary: string;
  description: string;
  deprecated: { since?: string; sunset?: string; link?: string } | null;
  parameters: readonly Parameter[];
  body: Content | null;
  answers: readonly AnswerOf[];
}

const METHODS = ['get', 'post', 'put', 'patch', 'delete'] as const;

const answerOf = (document: OpenAPIObject, status: string, answer: Json): AnswerOf => {
  const whole = resolved(document, answer);
  return {
    status,
    description: String(whole['description'] ?? ''),
    headers: Object.entries((whole['headers'] as Record<string, Json> | undefined) ?? {}).map(([name, header]) => ({
      name,
      description: String(resolved(document, header)['description'] ?? ''),
    })),
    content: (whole['content'] as Content | undefined) ?? {},
  };
};

const describedOf = (document: OpenAPIObject, path: string, method: string, operation: Json): Described => ({
  id: String(operation['operationId']),
  method,
  path,
  domain: String((operation['tags'] as string[] | undefined)?.[0] ?? 'other'),
  summary: String(operation['summary'] ?? ''),
  description: String(operation['description'] ?? ''),
  deprecated: operation['deprecated'] === true ? ((operation['x-deprecated'] as Described['deprecated']) ?? {}) : null,
  parameters: ((operation['parameters'] as Json[] | undefined) ?? []).map((one) => resolved(document, one) as unknown as Parameter),
  body: (operation['requestBody'] as { content?: Content } | undefined)?.content ?? null,
  answers: Object.entries((operation['responses'] as Record<string, Json> | undefined) ?? {}).map(([status, answer]) => answerOf(document, status, answer)),
});

/** All operations, in the order of the document. */
export const operationsOf = (document: OpenAPIObject): Described[] =>
  Object.entries(document.paths).flatMap(([path, item]) =>
    METHODS.flatMap((method) => {
      const operation = (item as unknown as Record<string, Json | undefined>)[method];
      return operation ? [describedOf(document, path, method, operation)] : [];
    }),
  );

export interface Domain {
  name: string;
  description: string;
  operations: readonly Described[];
}

/** What is about the API itself, and what somebody who builds on it seeks last. */
const LAST = ['documentation', 'problems', 'health'];

/** The operations by domain, in the order in which the document names the domains. */
export const domainsOf = (document: OpenAPIObject): Domain[] => {
  const operations = operationsOf(document);
  const said = new Map((document.tags ?? []).map(({ name, description }) => [name, description ?? '']));
  const names = [...new Set([...said.keys(), ...operations.map(({ domain }) => domain)])];
  return [...names.filter((name) => !LAST.includes(name)), ...LAST]
    .map((name) => ({ name, description: said.get(name) ?? '', operations: operations.filter((one) => one.domain === name) }))
    .filter((domain) => domain.operations.length > 0);
};
