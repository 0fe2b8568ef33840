type Json = Record<string, unknown>;
type Operation = Json & { parameters?: Json[]; responses: Record<string, Json & { headers?: Record<string, Json> }> };

const isJson = (value: unknown): value is Json => typeof value === 'object' && value !== null && !Array.isArray(value);

/** Keys in a fixed order, so that the same routes give the same bytes. */
export const ordered = (value: unknown): unknown => {
  if (Array.isArray(value)) return value.map(ordered);
  if (!isJson(value)) return value;
  return Object.fromEntries(
    Object.entries(value)
      .sort(([a], [b]) => (a < b ? -1 : a > b ? 1 : 0))
      .map(([key, inner]) => [key, ordered(inner)]),
  );
};

/** One shelf of components: the same thing is kept once, under the first name that is free for it. */
class Shelf {
  readonly kept: Record<string, Json> = {};
  private readonly names = new Map<string, string>();

  constructor(private readonly kind: 'responses' | 'parameters' | 'headers') {}

  put(value: Json, wanted: string): Json {
    const text = JSON.stringify(ordered(value));
    const name = this.names.get(text) ?? this.free(wanted.replaceAll(/[^A-Za-z0-9]/g, ''));
    this.names.set(text, name);
    this.kept[name] = value;
    return { $ref: `#/components/${this.kind}/${name}` };
  }

  private free(wanted: string): string {
    for (let number = 2, name = wanted; ; number += 1) {
      if (!(name in this.kept)) return name;
      name = `${wanted}${number}`;
    }
  }
}

const operationsOf = (paths: Record<string, unknown>): Operation[] =>
  Object.values(paths).flatMap((item) => Object.values(item as Json).filter((one): one is Operation => isJson(one) && 'responses' in one));

const parameterName = (parameter: Json): string => {
  const place = parameter['in'] === 'header' ? '' : String(parameter['in']);
  return `${String(parameter['name'])}${place.slice(0, 1).toUpperCase()}${place.slice(1)}`;
};

const problemName = (status: string, response: Json): string => {
  const content = response['content'] as Record<string, { schema?: { $ref?: string } }> | undefined;
  const schema = content?.['application/problem+json']?.schema?.$ref?.split('/').at(-1);
  return `${schema ?? 'Refused'}${status}`;
};

/**
 * Refusals, parameters and headers that many operations have are written once and referred to. Takes the document's paths
 * as they are and changes them; gives the components that they now refer to.
 */
export const shareComponents = (paths: Record<string, unknown>): Record<'responses' | 'parameters' | 'headers', Record<string, Json>> => {
  const [responses, parameters, headers] = [new Shelf('responses'), new Shelf('parameters'), new Shelf('headers')];
  for (const operation of operationsOf(paths)) {
    if (operation.parameters) operation.parameters = operation.parameters.map((one) => parameters.put(one, parameterName(one)));
    for (const [status, response] of Object.entries(operation.responses)) {
      if (response.headers) response.headers = Object.fromEntries(Object.entries(response.headers).map(([name, header]) => [name, headers.put(header, name)]));
      const content = response['content'];
      if (/^[45]/.test(status) && isJson(content) && 'application/problem+json' in content)
        operation.responses[status] = responses.put(response, problemName(status, response));
    }
  }
  return { responses: responses.kept, parameters: parameters.kept, headers: headers.kept };
};

const WIDTH = 140;

/** JSON that people can read and compare: whatever fits on one line stands on one line. */
export const jsonText = (value: unknown, indent = ''): string => {
  const flat = JSON.stringify(value);
  if (typeof value !== 'object' || value === null || indent.length + flat.length <= WIDTH) return flat;
  const inner = `${indent} `;
  const lines = Array.isArray(value)
    ? value.map((one) => inner + jsonText(one, inner))
    : Object.entries(value).map(([key, one]) => `${inner}${JSON.stringify(key)}: ${jsonText(one, inner)}`);
  const [open, close] = Array.isArray(value) ? ['[', ']'] : ['{', '}'];
  return `${open}\n${lines.join(',\n')}\n${indent}${close}`;
};
