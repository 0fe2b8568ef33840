import { ucumOfUnit, type UnitSymbol } from '@lathwork/units';

type Json = Record<string, unknown>;

const isJson = (value: unknown): value is Json => typeof value === 'object' && value !== null && !Array.isArray(value);

/** How long a text of a format can be. */
const FORMAT_LENGTH: Readonly<Record<string, number>> = { date: 10, 'date-time': 35, uuid: 36, email: 254, uri: 2000 };

const SHORT = 10;

/** A pattern of single characters, classes and counted repeats says itself how long a text can be; null when it does not. */
export const lengthOfPattern = (pattern: string): number | null => {
  const inner = /^\^(.*)\$$/.exec(pattern)?.[1];
  if (inner === undefined) return null;
  let rest = inner;
  let length = 0;
  while (rest !== '') {
    const part = /^(?:\[[^\]]+\]|\\d|[A-Za-z0-9_-])(?:\{(?:\d+,)?(\d+)\})?(?![*+?{])/.exec(rest);
    if (!part) return null;
    length += Number(part[1] ?? 1);
    rest = rest.slice(part[0].length);
  }
  return length;
};

const INT32 = 2 ** 31;
const fitsInt32 = ({ minimum, maximum, exclusiveMinimum }: Json): boolean => Number(minimum ?? exclusiveMinimum) >= -INT32 && Number(maximum) < INT32;

const stringLimits = (schema: Json): Json => {
  if (schema['maxLength'] !== undefined || schema['enum'] !== undefined || schema['const'] !== undefined) return schema;
  const byFormat = FORMAT_LENGTH[String(schema['format'])];
  const byPattern = typeof schema['pattern'] === 'string' ? lengthOfPattern(schema['pattern']) : null;
  const maxLength = byFormat ?? byPattern;
  return maxLength === null || maxLength === undefined ? schema : { ...schema, maxLength: Math.max(maxLength, 1) };
};

/** Other programs know units by their UCUM codes. */
const withUcum = (schema: Json): Json => (typeof schema['x-unit'] === 'string' ? { ...schema, 'x-ucum': ucumOfUnit(schema['x-unit'] as UnitSymbol) } : schema);

const tidySchema = (plain: Json): Json => {
  const schema = withUcum(plain);
  if (schema['type'] === 'integer') return { ...schema, format: schema['format'] ?? (fitsInt32(schema) ? 'int32' : 'int64') };
  if (schema['type'] === 'string') return stringLimits(schema);
  const all = schema['allOf'];
  // In 3.1 a reference may have a description beside it, so a list of one is never needed.
  if (!Array.isArray(all) || all.length !== 1 || !isJson(all[0])) return schema;
  const { allOf: _one, ...beside } = schema;
  return 'properties' in beside ? { allOf: [all[0], beside] } : { ...all[0], ...beside };
};

const isSchemaMap = (key: string): boolean => key === 'properties' || key === 'patternProperties' || key === '$defs';

/** Every schema inside with its integer format and text limit said; examples and defaults are data and stay as they are. */
export const tidySchemas = (value: unknown, key = '', parentKey = ''): unknown => {
  if (Array.isArray(value)) return value.map((one) => tidySchemas(one, '', key));
  if (!isJson(value)) return value;
  const isData = !isSchemaMap(parentKey) && (key === 'example' || key === 'examples' || key === 'default' || key === 'const');
  if (isData) return value;
  const inner = Object.fromEntries(Object.entries(value).map(([name, one]) => [name, tidySchemas(one, name, key)]));
  return isSchemaMap(key) ? inner : tidySchema(inner);
};

const PREFIX = '#/components/schemas/';

/**
 * In a merge patch the objects inside are patches too: none of their fields is required. The framework makes only the outer
 * fields optional, so the inner shapes get a partial twin of their own. A list is replaced whole, so its entries stay whole.
 */
export const withPatchTwins = (schemas: Readonly<Record<string, Json>>): Record<string, Json> => {
  const all: Record<string, Json> = { ...schemas };
  const twinOf = (ref: string): string => {
    const name = ref.slice(PREFIX.length);
    const twin = `${name.replace(/Request$/, '')}Patch`;
    if (!(twin in all)) {
      all[twin] = {};
      const { required: _required, ...rest } = all[name] ?? {};
      all[twin] = inner(rest);
    }
    return PREFIX + twin;
  };
  const part = (schema: Json): Json => {
    const choices = ['anyOf', 'oneOf', 'allOf'].filter((key) => Array.isArray(schema[key])).map((key) => [key, (schema[key] as Json[]).map(part)]);
    return { ...schema, ...Object.fromEntries(choices), ...(typeof schema['$ref'] === 'string' ? { $ref: twinOf(schema['$ref']) } : {}) };
  };
  const inner = (schema: Json): Json => ({
    ...schema,
    properties: Object.fromEntries(Object.entries((schema['properties'] as Record<string, Json> | undefined) ?? {}).map(([key, one]) => [key, part(one)])),
  });
  for (const [name, schema] of Object.entries(schemas)) if (name.endsWith('Patch')) all[name] = inner(schema);
  return all;
};

/** What each part of the API is about, in the order a newcomer meets them. */
const TAGS: readonly (readonly [string, string])[] = [
  ['documentation', 'The description of this API, for programs.'],
  ['problems', 'Every refusal this API can give, with what to do about it.'],
  ['health', 'Whether the server lives and is ready for requests.'],
  ['accounts', 'People: signing up, signing in, passwords, second factors, and going away.'],
  ['gardens', 'The garden itself: its name, language, currency and units; and the keys with which programs speak for it.'],
  ['members', 'Who belongs to a garden, with which roles, and who is invited.'],
  ['sites', 'Places to build on, with wind, snow and soil.'],
  ['climate', 'Weather stations and what is known of their nights and days.'],
  ['structures', 'Shelters: frame, openings, cover and anchors.'],
  ['stock', 'The pile of reclaimed things, and which build holds what.'],
  ['prices', 'Prices and exchange rates that somebody read on a day.'],
  ['builds', 'A member’s build: site, structure, wishes, crew and budget together.'],
  ['plans', 'Computed revisions, their reviews, and what was really built.'],
  ['overview', 'Views over builds and the garden for the store, the treasury, safety and a funder.'],
  ['spending', 'Asking for money, and somebody else deciding.'],
  ['documents', 'Print-ready plan books.'],
  ['files', 'Photos, tables and calendars for other programs, and a whole garden to take along.'],
  ['jobs', 'Long work: its state, its progress, and how to cancel it.'],
  ['webhooks', 'Calls that this server makes to yours when something happened.'],
  ['history', 'Who changed what, and when.'],
];

/** The tags that operations really carry, each with its description. One that is not described above fails the lint. */
export const tagsOf = (used: ReadonlySet<string>): { name: string; description: string }[] =>
  TAGS.filter(([name]) => used.has(name)).map(([name, description]) => ({ name, description }));

interface Facts {
  method: string;
  operation: Json & { parameters?: Json[]; responses: Record<string, Json> };
}

const list = (words: readonly string[]): string => (words.length < 2 ? (words[0] ?? '') : `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`);

const spaced = (role: string): string => role.replaceAll(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);

const accessSentences = (operation: Json): string[] => {
  if (operation['x-public'] === true) return ['Needs no credentials.'];
  const schemes = ((operation['security'] as Json[] | undefined) ?? []).flatMap((one) => Object.keys(one));
  const scope = operation['x-scope'];
  const roles = operation['x-roles'];
  const grants = isJson(roles) ? Object.entries(roles) : [];
  const named = (wanted: string): string[] => grants.filter(([, grant]) => grant === wanted).map(([role]) => spaced(role));
  return [
    ...(typeof scope === 'string' ? [`A key needs the scope \`${scope}\`.`] : []),
    ...(named('all').length > 0 ? [`Roles: ${list(named('all'))}.`] : []),
    ...(named('own').length > 0 ? [`For what is their own or shared: ${list(named('own'))}.`] : []),
    ...(typeof scope !== 'string' && schemes.includes('operatorToken') ? ['The operator token opens it.'] : []),
    ...(typeof scope !== 'string' && schemes.includes('session') ? ['Whoever is signed in may call it.'] : []),
  ];
};

/** What holds for an operation beyond its summary, in sentences: who may call it and which headers make it dependable. */
export const describe = ({ method, operation }: Facts): string => {
  const takes = (name: string): boolean => operation.parameters?.some((one) => one['name'] === name) ?? false;
  const sentences = [
    ...accessSentences(operation),
    ...(takes('cursor') ? ['Gives one page; follow `next` or the `Link` header for more.'] : []),
    ...(takes('Idempotency-Key') ? ['Send an `Idempotency-Key`, and a repeat makes nothing twice.'] : []),
    ...(takes('If-Match') ? ['Send the `ETag` you read as `If-Match`; when somebody was faster nothing is changed and the answer is 412.'] : []),
    ...(takes('Prefer') ? ['Answers 202 with the address to ask at, or the finished thing when it is done within the wait that `Prefer` asks for.'] : []),
    ...(method === 'get' && isJson(operation.responses['200']?.['headers']) && 'ETag' in operation.responses['200']['headers']
      ? ['Send `If-None-Match` with the `ETag` you have, and an unchanged thing answers 304 without a body.']
      : []),
  ];
  return sentences.join(' ');
};

const header = (description: string, maxLength: number, example: string): Json => ({ description, schema: { type: 'string', maxLength }, example });

const RETRY_AFTER: Json = {
  description: 'Seconds to wait before the next try',
  schema: { type: 'integer', minimum: 0, maximum: 86_400 },
  example: 30,
};

/** What every limited answer says of the limits (drafts of the IETF's HTTP API group); as structured fields. */
const LIMIT_HEADERS = (): Record<string, Json> => ({
  RateLimit: header('What is left of each limit now', 200, '"garden";r=598;t=30'),
  'RateLimit-Policy': header('The limits that count for this request', 200, '"garden";q=600;w=60'),
});

/** What every answer of an operation says that will go away (RFC 9745, RFC 8594). */
const DEPRECATION_HEADERS: Record<string, Json> = {
  Deprecation: header('Since when it is advised against', 40, '@1777593600'),
  Sunset: header('When it goes', 40, 'Sat, 31 Oct 2026 00:00:00 GMT'),
  Link: header('What to use instead (relation "deprecation"), beside other links', 2000, '</v1/docs#deprecation>; rel="deprecation"; type="text/html"'),
};

/** Adds to each answer the headers that belong to its status. */
export const withStatusHeaders = (status: string, response: Json, about: { isLimited: boolean; isDeprecated: boolean }): Json => {
  const extra = {
    ...(about.isLimited && /^[24]/.test(status) ? LIMIT_HEADERS() : {}),
    ...(about.isDeprecated && status.startsWith('2') ? DEPRECATION_HEADERS : {}),
    ...(status === '429' || status === '503' ? { 'Retry-After': RETRY_AFTER } : {}),
    ...(status === '401' ? { 'WWW-Authenticate': header('How to say who is asking', SHORT * 20, 'Bearer realm="lathwork"') } : {}),
  };
  return Object.keys(extra).length === 0 ? response : { ...response, headers: { ...(isJson(response['headers']) ? response['headers'] : {}), ...extra } };
};
