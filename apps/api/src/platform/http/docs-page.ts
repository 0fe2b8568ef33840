import type { OpenAPIObject } from '@nestjs/swagger';
import { resolved } from './document-ref.js';

type Json = Record<string, unknown>;
type Resolve = <T>(value: T) => T;

const escape = (text: unknown): string =>
  String(text ?? '')
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;');

const METHODS = ['get', 'post', 'put', 'patch', 'delete'] as const;

const STYLE = `body{font:16px/1.5 system-ui,sans-serif;max-width:60rem;margin:2rem auto;padding:0 1rem;color:#1b1b1b}
h1,h2,h3{line-height:1.2}h2{border-top:2px solid #1b1b1b;padding-top:1rem;margin-top:3rem}h3 code{font-size:1.05rem}
table{border-collapse:collapse;width:100%;margin:.5rem 0}td,th{border:1px solid #999;padding:.25rem .5rem;text-align:left;vertical-align:top}
code{font:.95em ui-monospace,monospace}details{margin:.5rem 0}pre{background:#f3f3f0;padding:.75rem;overflow:auto;font-size:.85rem}nav li{margin:.15rem 0}`;

const nameOfRef = (ref: string): string => ref.split('/').at(-1) ?? ref;

const typeOf = (schema: Json | undefined): string => {
  if (!schema) return '';
  if (typeof schema['$ref'] === 'string') return `<a href="#schema-${escape(nameOfRef(schema['$ref']))}">${escape(nameOfRef(schema['$ref']))}</a>`;
  const choices = (schema['anyOf'] ?? schema['oneOf']) as Json[] | undefined;
  if (choices) return choices.map(typeOf).join(' or ');
  if (Array.isArray(schema['enum'])) return schema['enum'].map((one) => `<code>${escape(one)}</code>`).join(', ');
  if (schema['const'] !== undefined) return `<code>${escape(schema['const'])}</code>`;
  if (schema['type'] === 'array') return `list of ${typeOf(schema['items'] as Json)}`;
  const limits = ['format', 'minimum', 'exclusiveMinimum', 'maximum', 'maxLength', 'pattern', 'x-unit']
    .filter((key) => schema[key] !== undefined)
    .map((key) => `${key.replace('x-', '')} ${escape(schema[key])}`);
  return [escape([schema['type'] ?? 'any'].flat().join(' or ')), ...limits].join(', ');
};

const rows = (schema: Json): string => {
  const required = (schema['required'] as string[] | undefined) ?? [];
  return Object.entries((schema['properties'] as Record<string, Json> | undefined) ?? {})
    .map(
      ([name, value]) =>
        `<tr><td><code>${escape(name)}</code>${required.includes(name) ? ' *' : ''}</td><td>${typeOf(value)}</td><td>${escape(value['description'])}</td></tr>`,
    )
    .join('');
};

const bodyOf = (content: Record<string, { schema?: Json }> | undefined): string =>
  Object.entries(content ?? {})
    .map(([type, { schema }]) => `${typeOf(schema)} <small>${escape(type)}</small>`)
    .join('<br>');

const parametersOf = (operation: Json, resolve: Resolve): string => {
  const parameters = ((operation['parameters'] as Json[] | undefined) ?? []).map(resolve);
  if (parameters.length === 0) return '';
  const lines = parameters.map(
    (one) =>
      `<tr><td><code>${escape(one['name'])}</code>${one['required'] ? ' *' : ''}</td><td>${escape(one['in'])}</td><td>${typeOf(one['schema'] as Json)}</td><td>${escape(one['description'])}</td></tr>`,
  );
  return `<table><tr><th>parameter</th><th>in</th><th>type</th><th></th></tr>${lines.join('')}</table>`;
};

const operationOf = (path: string, method: string, operation: Json, resolve: Resolve): string => {
  const request = operation['requestBody'] as { content?: Record<string, { schema?: Json }> } | undefined;
  const responses = operation['responses'] as Record<string, { description?: string; content?: Record<string, { schema?: Json }> }>;
  const answers = Object.entries(responses).map(([status, answer]) => [status, resolve(answer)] as const);
  return `<section id="${escape(operation['operationId'])}"><h3><code>${method.toUpperCase()} ${escape(path)}</code></h3>
<p>${escape(operation['summary'])}${operation['x-scope'] ? ` Needs the scope <code>${escape(operation['x-scope'])}</code>.` : ''}</p>${operation['description'] ? `<p>${escape(operation['description'])}</p>` : ''}
${parametersOf(operation, resolve)}${request ? `<p>Body: ${bodyOf(request.content)}</p>` : ''}
<details><summary>Answers</summary><table>${answers.map(([status, answer]) => `<tr><td>${escape(status)}</td><td>${escape(answer.description)}</td><td>${bodyOf(answer.content)}</td></tr>`).join('')}</table></details></section>`;
};

/** The API reference as one page of plain HTML, made from the very document that is published. */
export const docsPage = (document: OpenAPIObject): string => {
  const operations = Object.entries(document.paths).flatMap(([path, item]) =>
    METHODS.flatMap((method) => {
      const operation = (item as unknown as Record<string, Json | undefined>)[method];
      return operation ? [{ path, method, operation, tag: String((operation['tags'] as string[] | undefined)?.[0] ?? 'other') }] : [];
    }),
  );
  const tags = [...new Set(operations.map(({ tag }) => tag))];
  const parts = tags.map(
    (tag) =>
      `<h2>${escape(tag)}</h2>${operations
        .filter((one) => one.tag === tag)
        .map((one) => operationOf(one.path, one.method, one.operation, (value) => resolved(document, value)))
        .join('')}`,
  );
  const index = operations.map(
    ({ path, method, operation }) =>
      `<li><a href="#${escape(operation['operationId'])}"><code>${method.toUpperCase()} ${escape(path)}</code></a> ${escape(operation['summary'])}</li>`,
  );
  const schemas = Object.entries((document.components?.schemas ?? {}) as Record<string, Json>).map(
    ([name, schema]) =>
      `<section id="schema-${escape(name)}"><h3>${escape(name)}</h3><p>${escape(schema['description'])}</p><table>${rows(schema)}</table><details><summary>JSON Schema</summary><pre>${escape(JSON.stringify(schema, null, 1))}</pre></details></section>`,
  );
  return `<!doctype html><html lang="en"><head><meta charset="utf-8"><title>${escape(document.info.title)}</title><style>${STYLE}</style></head><body>
<h1>${escape(document.info.title)} ${escape(document.info.version)}</h1><p>${escape(document.info.description)}</p><p>The same as data: <a href="/v1/openapi.json">openapi.json</a>. A star marks what is required.</p>
<nav><ul>${index.join('')}</ul></nav>${parts.join('')}<h2>Schemas</h2>${schemas.join('')}</body></html>`;
};
