// What the comparison of two documents needs to know of JSON Schema.

const merged = (parts) =>
  parts.reduce(
    (all, part) => ({
      ...all,
      ...part,
      ...(all.properties || part.properties ? { properties: { ...all.properties, ...part.properties } } : {}),
      ...(all.required || part.required ? { required: [...(all.required ?? []), ...(part.required ?? [])] } : {}),
    }),
    {},
  );

/** Follows references into a document. */
export const resolver = (document) => (value) => {
  let here = value;
  for (let hops = 0; typeof here?.$ref === 'string'; hops += 1) {
    if (hops > 20) throw new Error(`${here.$ref} leads in a circle`);
    const { $ref, ...beside } = here;
    const target = $ref
      .slice(2)
      .split('/')
      .reduce((inside, key) => inside?.[key], document);
    if (target === undefined) throw new Error(`${$ref} leads nowhere`);
    here = Object.keys(beside).length === 0 ? target : merged([target, beside]);
  }
  return here;
};

const withType = (schema) => {
  if (schema.type !== undefined) return schema;
  const word = schema.const ?? schema.enum?.[0];
  const type = word === undefined ? (schema.properties ? 'object' : undefined) : word === null ? 'null' : typeof word;
  return type === undefined ? schema : { ...schema, type };
};

/** The ways in which a value can fit a schema, each of one type, without references or compositions. */
export const variantsOf = (schema, resolve) => {
  const whole = resolve(schema ?? {});
  const { anyOf, oneOf, allOf, ...rest } = whole;
  if (allOf) return variantsOf(merged([...allOf.map((part) => resolve(part)), rest]), resolve);
  const choices = anyOf ?? oneOf;
  if (choices) return choices.flatMap((one) => variantsOf(one, resolve));
  if (Array.isArray(rest.type)) return rest.type.map((type) => ({ ...rest, type }));
  return [withType(rest)];
};

/** Whether the type is still the same for whoever sends (request) or reads (answer). A whole number is a number. */
export const sameType = (before, after, mode) => {
  if (before.type === after.type) return true;
  if (mode === 'request') return after.type === undefined || (before.type === 'integer' && after.type === 'number');
  return before.type === undefined || (before.type === 'number' && after.type === 'integer');
};

const FORMAT_LENGTH = { date: 10, 'date-time': 35, uuid: 36, email: 254, uri: 2000 };

/** How long a text can be at most, also when only its form says so; Infinity when nothing does. */
export const lengthOf = (schema) => {
  if (schema.maxLength !== undefined) return schema.maxLength;
  if (schema.format in FORMAT_LENGTH) return FORMAT_LENGTH[schema.format];
  let rest = /^\^(.*)\$$/.exec(schema.pattern ?? '')?.[1];
  if (rest === undefined) return Infinity;
  let length = 0;
  while (rest !== '') {
    const part = /^(?:\[[^\]]+\]|\\d|[A-Za-z0-9_-])(?:\{(?:\d+,)?(\d+)\})?(?![*+?{])/.exec(rest);
    if (!part) return Infinity;
    length += Number(part[1] ?? 1);
    rest = rest.slice(part[0].length);
  }
  return length;
};

const lowest = ({ minimum, exclusiveMinimum }) => Math.max(minimum ?? -Infinity, exclusiveMinimum ?? -Infinity);
const highest = ({ maximum, exclusiveMaximum }) => Math.min(maximum ?? Infinity, exclusiveMaximum ?? Infinity);
const isWhole = ({ type, format }) => type === 'integer' || format === 'int32' || format === 'int64';
const INT = { int32: 2 ** 31, int64: 2 ** 63 };

const lessRoom = [
  ['minLength', (a, b) => (b.minLength ?? 0) > (a.minLength ?? 0)],
  ['maxLength', (a, b) => lengthOf(b) < lengthOf(a)],
  ['minimum', (a, b) => lowest(b) > lowest(a) || (lowest(b) === lowest(a) && b.exclusiveMinimum !== undefined && a.exclusiveMinimum === undefined)],
  ['maximum', (a, b) => highest(b) < highest(a) || (highest(b) === highest(a) && b.exclusiveMaximum !== undefined && a.exclusiveMaximum === undefined)],
  ['minItems', (a, b) => (b.minItems ?? 0) > (a.minItems ?? 0)],
  ['maxItems', (a, b) => (b.maxItems ?? Infinity) < (a.maxItems ?? Infinity)],
  ['uniqueItems', (a, b) => b.uniqueItems === true && a.uniqueItems !== true],
  ['multipleOf', (a, b) => b.multipleOf !== undefined && b.multipleOf !== a.multipleOf],
  ['pattern', (a, b) => b.pattern !== undefined && b.pattern !== a.pattern],
  ['unknown fields', (a, b) => b.additionalProperties === false && a.additionalProperties !== false],
];

/** A number format says nothing new when the limits that stood already keep to it. */
const newFormat = (before, after) => {
  if (after.format === undefined || after.format === before.format) return false;
  const limit = INT[after.format];
  return !(limit && isWhole(before) && lowest(before) >= -limit && highest(before) < limit);
};

/** What the new schema refuses that the old one took. */
export const refuses = (before, after) => [
  ...lessRoom.filter(([, isLess]) => isLess(before, after)).map(([name]) => `${name} leaves less room`),
  ...(newFormat(before, after) ? [`the format ${after.format} is wanted`] : []),
];
