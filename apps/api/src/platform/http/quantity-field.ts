import { exampleOf, parseQuantity, type UnitSymbol } from '@lathwork/units';
import { applyDecorators } from '@nestjs/common';
import { Transform } from 'class-transformer';
import { documented, fieldRule, passStandIns, REQUIRED, type Presence, type ValueFault } from './field-rule.js';

export interface QuantityOptions extends Presence {
  min: number;
  max: number;
}

const TYPED_MAX_LENGTH = 40;

const allowedOf = (unit: UnitSymbol, { min, max }: QuantityOptions): string => (unit === '1' ? `${min} to ${max}` : `${min} to ${max} ${unit}`);

/** A typed text that this very field takes: the usual one of its unit, or one from the middle of what is allowed. */
const exampleWithin = (unit: UnitSymbol, { min, max }: QuantityOptions): string => {
  const usual = parseQuantity(unit, exampleOf(unit));
  if (usual.ok && usual.value >= min && usual.value <= max) return exampleOf(unit);
  const middle = String(Number(((min + max) / 2).toPrecision(3)));
  return unit === '1' ? middle : `${middle} ${unit}`;
};

const remedyOf = (unit: UnitSymbol): string =>
  unit === '1'
    ? 'Send a plain number such as 0.25, or text such as "25 %".'
    : `Send a number of ${unit}, or text with its own unit such as "${exampleOf(unit)}".`;

const settle = (unit: UnitSymbol, value: unknown): unknown => {
  if (typeof value !== 'string' || value === 'unknown') return value;
  const typed = parseQuantity(unit, value);
  // A reading that is probably a slip (5' 14") is asked back, so the text stays and is refused below.
  return typed.ok && !typed.warning ? typed.value : value;
};

/** What is wrong with one value that should be a quantity. A text that still stands here could not be read. */
const faultOf = (unit: UnitSymbol, options: QuantityOptions, value: unknown): ValueFault | null => {
  const about = { unit, allowed: allowedOf(unit, options), remedy: remedyOf(unit) };
  if (value === undefined) return { ...REQUIRED, ...about };
  if (typeof value === 'string') {
    if (value.length > TYPED_MAX_LENGTH) return { code: 'too-long', detail: `A typed quantity has at most ${TYPED_MAX_LENGTH} characters.`, ...about };
    const typed = parseQuantity(unit, value);
    if (!typed.ok) return { code: typed.code, detail: typed.message, ...about };
    return {
      code: 'confirm-reading',
      detail: typed.warning?.message ?? 'A quantity is wanted here.',
      ...about,
      remedy: `Type it as it is meant${typed.warning ? `, for example ${typed.warning.reading}` : ''}.`,
    };
  }
  if (typeof value !== 'number' || !Number.isFinite(value)) return { code: 'wrong-type', detail: 'A quantity is wanted here.', ...about };
  return value < options.min || value > options.max ? { code: 'out-of-range', detail: `The value must be ${about.allowed}.`, ...about } : null;
};

const schemaOf = (unit: UnitSymbol, options: QuantityOptions) => {
  const { min, max } = options;
  const number = { type: 'number', minimum: min, maximum: max, 'x-unit': unit };
  return {
    oneOf: [
      number,
      {
        type: 'string',
        minLength: 1,
        maxLength: TYPED_MAX_LENGTH,
        description: `Text with its own unit; allowed ${allowedOf(unit, { min, max })}.`,
        examples: [exampleWithin(unit, options)],
      },
    ],
    'x-unit': unit,
  };
};

/**
 * A quantity in a request: a number in the unit that the field's name carries, or text that carries its own unit.
 * A text without a unit is refused, because a bare 3 may be feet or metres.
 */
export const QuantityField = (unit: UnitSymbol, options: QuantityOptions): PropertyDecorator =>
  applyDecorators(
    Transform(({ value }) => settle(unit, value), { toClassOnly: true }),
    passStandIns(options),
    fieldRule((value) => faultOf(unit, options, value)),
    documented(schemaOf(unit, options), options),
  );

interface QuantitiesOptions extends QuantityOptions {
  minItems: number;
  maxItems: number;
}

/** A list of quantities, each a number or typed text. */
export const QuantitiesField = (unit: UnitSymbol, options: QuantitiesOptions): PropertyDecorator => {
  const allowed = `${options.minItems} to ${options.maxItems} entries`;
  return applyDecorators(
    Transform(({ value }) => (Array.isArray(value) ? value.map((one) => settle(unit, one)) : value), { toClassOnly: true }),
    passStandIns(options),
    fieldRule((value) => {
      if (value === undefined) return REQUIRED;
      if (!Array.isArray(value)) return { code: 'wrong-type', detail: 'A list is wanted here.' };
      if (value.length < options.minItems || value.length > options.maxItems)
        return { code: 'wrong-length', detail: `The list must have ${allowed}.`, allowed };
      for (const [index, one] of value.entries()) {
        const fault = faultOf(unit, options, one);
        if (fault) return { ...fault, detail: `Entry ${index}: ${fault.detail}` };
      }
      return null;
    }),
    documented({ type: 'array', items: schemaOf(unit, options), minItems: options.minItems, maxItems: options.maxItems }, options),
  );
};

/** What people typed where a number is kept, by JSON Pointer: `{"/widthM": "10 ft"}`. */
export type AsTyped = Record<string, string>;

/** Finds the typed texts by walking what was sent beside what it became. */
export const collectAsTyped = (sent: unknown, became: unknown, pointer = ''): AsTyped => {
  if (typeof sent === 'string' && typeof became === 'number') return { [pointer]: sent };
  if (typeof sent !== 'object' || sent === null || typeof became !== 'object' || became === null) return {};
  return Object.assign(
    {},
    ...Object.entries(sent).map(([key, value]) => collectAsTyped(value, (became as Record<string, unknown>)[key], `${pointer}/${key}`)),
  ) as AsTyped;
};
