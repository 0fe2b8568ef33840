/** Plain JSON Schema, as OpenAPI 3.1 takes it. */
export type JsonSchema = Record<string, unknown>;

const named = new Map<string, JsonSchema>();

/** Gives a response schema a name in the document and returns a reference to it. */
export const namedSchema = (name: string, schema: JsonSchema): JsonSchema => {
  named.set(name, schema);
  return { $ref: `#/components/schemas/${name}` };
};

/** Every named response schema, for the document builder. */
export const namedSchemas = (): Record<string, JsonSchema> => Object.fromEntries([...named].sort(([a], [b]) => (a < b ? -1 : 1)));

const isWord = (schema: unknown): schema is { const: string } => typeof (schema as { const?: unknown } | null)?.const === 'string';

// A union of single words is shorter, and gives better client types, as one list of words.
const joinWords = (choices: readonly unknown[]): JsonSchema => {
  const words = choices.filter(isWord).map((choice) => choice.const);
  const others = choices.filter((choice) => !isWord(choice));
  const list = { type: 'string', enum: words };
  if (words.length === 0) return { anyOf: others };
  return others.length === 0 ? list : { anyOf: [...others, list] };
};

// JSON holds whole numbers exactly up to here.
const wholeLimits = (schema: JsonSchema): JsonSchema => ({
  minimum: schema['minimum'] ?? Number.MIN_SAFE_INTEGER,
  maximum: schema['maximum'] ?? Number.MAX_SAFE_INTEGER,
});

const asWritten = (value: unknown): unknown => {
  if (Array.isArray(value)) return value.map(asWritten);
  if (typeof value !== 'object' || value === null) return value;
  const { $id: _id, anyOf, unit, ...rest } = value as JsonSchema;
  const plain = Object.fromEntries(Object.entries(rest).map(([key, inner]) => [key, asWritten(inner)]));
  return {
    ...plain,
    ...(plain['type'] === 'integer' ? wholeLimits(plain) : {}),
    ...(typeof unit === 'string' ? { 'x-unit': unit } : unit === undefined ? {} : { unit: asWritten(unit) }),
    ...(Array.isArray(anyOf) ? joinWords(anyOf.map(asWritten)) : {}),
  };
};

/** Fields that an answer may leave out, known by the schema object itself. */
const leftOut = new WeakSet<JsonSchema>();

export const S = {
  object: (properties: Record<string, JsonSchema>, optional: readonly string[] = []): JsonSchema => ({
    type: 'object',
    properties,
    required: Object.entries(properties)
      .filter(([key, schema]) => !optional.includes(key) && !leftOut.has(schema))
      .map(([key]) => key),
    additionalProperties: false,
  }),
  /** The same schema, of a field that may be absent. */
  sometimes: (schema: JsonSchema): JsonSchema => {
    leftOut.add(schema);
    return schema;
  },
  list: (items: JsonSchema, maxItems: number): JsonSchema => ({ type: 'array', items, maxItems }),
  text: (maxLength: number): JsonSchema => ({ type: 'string', maxLength }),
  choice: (...values: readonly string[]): JsonSchema => ({ type: 'string', enum: values }),
  id: (): JsonSchema => ({ type: 'string', format: 'uuid', maxLength: 36 }),
  moment: (): JsonSchema => ({ type: 'string', format: 'date-time', maxLength: 30 }),
  day: (): JsonSchema => ({ type: 'string', format: 'date', maxLength: 10 }),
  whole: (minimum: number, maximum: number): JsonSchema => ({ type: 'integer', minimum, maximum }),
  number: (unit: string, minimum: number, maximum: number): JsonSchema => ({ type: 'number', minimum, maximum, 'x-unit': unit }),
  flag: (): JsonSchema => ({ type: 'boolean' }),
  orNull: (schema: JsonSchema): JsonSchema => ({ anyOf: [schema, { type: 'null' }] }),
  /** A schema made by the model library is JSON Schema already; it is only written the way the rest of the document is. */
  model: (schema: object): JsonSchema => asWritten(JSON.parse(JSON.stringify(schema))) as JsonSchema,
};
