import { ApiExtraModels, ApiSchema, getSchemaPath } from '@nestjs/swagger';
import { applyDecorators, type Type as Class } from '@nestjs/common';
import { Type } from 'class-transformer';
import { ValidateNested } from 'class-validator';
import { documented, fieldRule, passStandIns, REQUIRED, type Check, type Presence, type ValueFault } from '../../platform/http/field-rule.js';

/** Every request field of every domain is declared with one of these, so that its limits are checked and documented alike. */
const field = (check: Check, schema: Record<string, unknown>, presence: Presence): PropertyDecorator =>
  applyDecorators(passStandIns(presence), fieldRule(check), documented(schema, presence));

const wrongType = (wanted: string): ValueFault => ({ code: 'wrong-type', detail: `${wanted} is wanted here.` });

// NUL cannot be stored, and a lone surrogate would be changed in silence.
const unstorable = (text: string): boolean => text.includes('\u0000') || /\p{Surrogate}/u.test(text);
// A name is one line; a longer text may have several. Nothing else that steers a terminal, a printer or a header is taken.
// eslint-disable-next-line no-control-regex -- control characters are exactly what is refused
const STEERING = { line: /[\u0000-\u001f\u007f-\u009f\u2028\u2029]/, lines: /[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f-\u009f]/ } as const;
const LONGEST_LINE = 200;

/** Why a text is not taken; null when it is. */
export const textFault = (value: unknown, maxLength: number): ValueFault | null => {
  if (value === undefined) return REQUIRED;
  if (typeof value !== 'string') return wrongType('Text');
  if (value.trim() === '') return { code: 'empty', detail: 'The text is empty.', allowed: `1 to ${maxLength} characters` };
  if (value.length > maxLength)
    return { code: 'too-long', detail: `The text is longer than ${maxLength} characters.`, allowed: `1 to ${maxLength} characters` };
  if (unstorable(value))
    return { code: 'unstorable-text', detail: 'The text holds a character that cannot be stored.', remedy: 'Remove NUL characters and broken pairs.' };
  const steering = maxLength > LONGEST_LINE ? STEERING.lines : STEERING.line;
  return steering.test(value)
    ? { code: 'control-character', detail: 'The text holds a control character or, where one line is wanted, a line end.', remedy: 'Remove it.' }
    : null;
};

export const TextField = (maxLength: number, presence: Presence = {}): PropertyDecorator =>
  field((value) => textFault(value, maxLength), { type: 'string', minLength: 1, maxLength }, presence);

export const PatternField = (pattern: RegExp, maxLength: number, example: string, presence: Presence = {}): PropertyDecorator =>
  field(
    (value) => {
      if (value === undefined) return REQUIRED;
      if (typeof value !== 'string') return wrongType('Text');
      return value.length <= maxLength && pattern.test(value)
        ? null
        : { code: 'wrong-form', detail: `The text does not have the form wanted, for example ${example}.`, allowed: pattern.source };
    },
    { type: 'string', pattern: pattern.source, maxLength, examples: [example] },
    presence,
  );

export const CurrencyField = (presence: Presence = {}): PropertyDecorator =>
  PatternField(/^[A-Z]{3}$/, 3, 'EUR', { description: 'ISO 4217 code', ...presence });

export const ChoiceField = (choices: readonly string[], presence: Presence = {}): PropertyDecorator =>
  field(
    (value) => {
      if (value === undefined) return REQUIRED;
      const allowed = [...choices, ...(presence.unknown ? ['unknown'] : [])].join(', ');
      return typeof value === 'string' && choices.includes(value) ? null : { code: 'not-a-choice', detail: 'The value is not one of the choices.', allowed };
    },
    { type: 'string', enum: [...choices] },
    presence,
  );

export const ChoicesField = (choices: readonly string[], maxItems: number, presence: Presence & { minItems?: number } = {}): PropertyDecorator =>
  field(
    (value) => {
      if (value === undefined) return REQUIRED;
      if (!Array.isArray(value)) return wrongType('A list');
      if (value.length > maxItems) return { code: 'too-many', detail: `At most ${maxItems} entries are allowed.`, allowed: `0 to ${maxItems} entries` };
      if (value.length < (presence.minItems ?? 0)) return { code: 'empty', detail: 'At least one entry is wanted here.', allowed: choices.join(', ') };
      const odd = value.findIndex((one) => typeof one !== 'string' || !choices.includes(one));
      return odd < 0 ? null : { code: 'not-a-choice', detail: `Entry ${odd} is not one of the choices.`, allowed: choices.join(', ') };
    },
    { type: 'array', items: { type: 'string', enum: [...choices] }, ...(presence.minItems ? { minItems: presence.minItems } : {}), maxItems },
    presence,
  );

export const BooleanField = (presence: Presence = {}): PropertyDecorator =>
  field((value) => (value === undefined ? REQUIRED : typeof value === 'boolean' ? null : wrongType('true or false')), { type: 'boolean' }, presence);

interface Bounds {
  min: number;
  max: number;
  /** The lowest value itself is not allowed. */
  above?: boolean;
}

/** A number that is a count or a ratio and so has no unit to type. */
export const NumberField = (bounds: Bounds, presence: Presence = {}): PropertyDecorator =>
  field(numberCheck(bounds, false), numberSchema(bounds, 'number'), presence);

export const IntegerField = (bounds: Bounds, presence: Presence = {}): PropertyDecorator =>
  field(numberCheck(bounds, true), numberSchema(bounds, 'integer'), presence);

const numberSchema = (bounds: Bounds, type: 'number' | 'integer') =>
  bounds.above ? { type, exclusiveMinimum: bounds.min, maximum: bounds.max } : { type, minimum: bounds.min, maximum: bounds.max };

const numberCheck =
  (bounds: Bounds, whole: boolean): Check =>
  (value) => {
    if (value === undefined) return REQUIRED;
    if (typeof value !== 'number' || !Number.isFinite(value)) return wrongType(whole ? 'A whole number' : 'A number');
    if (whole && !Number.isInteger(value)) return wrongType('A whole number');
    const low = bounds.above ? value <= bounds.min : value < bounds.min;
    const allowed = bounds.above ? `more than ${bounds.min}, at most ${bounds.max}` : `${bounds.min} to ${bounds.max}`;
    return low || value > bounds.max ? { code: 'out-of-range', detail: `The value must be ${allowed}.`, allowed } : null;
  };

const DAY = /^\d{4}-\d{2}-\d{2}$/;
export const isDay = (text: string): boolean => {
  if (!DAY.test(text)) return false;
  const at = Date.parse(`${text}T00:00:00Z`);
  return Number.isFinite(at) && new Date(at).toISOString().startsWith(text);
};

/** A calendar day without a time. 30 February is refused, not rolled over. */
export const DayField = (presence: Presence = {}): PropertyDecorator =>
  field(
    (value) =>
      value === undefined
        ? REQUIRED
        : typeof value === 'string' && isDay(value)
          ? null
          : { code: 'not-a-day', detail: 'A calendar day is wanted, written like 2026-04-30.', remedy: 'Write year-month-day.' },
    { type: 'string', format: 'date', maxLength: 10 },
    presence,
  );

const UUID = /^[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}$/;

export const IdField = (presence: Presence = {}): PropertyDecorator =>
  field(
    (value) =>
      value === undefined
        ? REQUIRED
        : typeof value === 'string' && UUID.test(value)
          ? null
          : { code: 'not-an-id', detail: 'An id is wanted: a lower-case UUID.' },
    { type: 'string', format: 'uuid', maxLength: 36 },
    presence,
  );

const refer =
  (type: () => Class): PropertyDecorator =>
  (target) => {
    ApiExtraModels(type())(target.constructor);
  };

/** An object of its own class. */
export const ObjectField = (type: () => Class, presence: Presence = {}): PropertyDecorator =>
  applyDecorators(
    passStandIns(presence),
    fieldRule((value) =>
      value === undefined ? REQUIRED : typeof value === 'object' && value !== null && !Array.isArray(value) ? null : wrongType('An object'),
    ),
    ValidateNested(),
    Type(type),
    refer(type),
    (target: object, key: string | symbol) => documented({ allOf: [{ $ref: getSchemaPath(type()) }] }, presence)(target, key),
  );

/** A list of objects of one class. */
export const ListField = (type: () => Class, size: { min?: number; max: number }, presence: Presence = {}): PropertyDecorator =>
  applyDecorators(
    passStandIns(presence),
    fieldRule((value) => {
      if (value === undefined) return REQUIRED;
      if (!Array.isArray(value)) return wrongType('A list');
      const allowed = `${size.min ?? 0} to ${size.max} entries`;
      if (value.length < (size.min ?? 0) || value.length > size.max) return { code: 'wrong-length', detail: `The list must have ${allowed}.`, allowed };
      // The validator takes a list inside the list for more entries, and would find nothing wrong with an empty one.
      const odd = value.findIndex((one) => Array.isArray(one));
      return odd < 0 ? null : { code: 'wrong-type', detail: `Entry ${odd} is a list where an object is wanted.` };
    }),
    ValidateNested({ each: true }),
    Type(type),
    refer(type),
    (target: object, key: string | symbol) =>
      documented({ type: 'array', items: { $ref: getSchemaPath(type()) }, minItems: size.min ?? 0, maxItems: size.max }, presence)(target, key),
  );

/** Marks a request class: no field beyond those listed is taken. */
export const Shape = (name: string, description?: string): ClassDecorator =>
  ApiSchema({ name, ...(description ? { description } : {}), additionalProperties: false } as Parameters<typeof ApiSchema>[0]);
