import { ApiProperty, type ApiPropertyOptions } from '@nestjs/swagger';
import { registerDecorator, ValidateIf, type ValidationArguments, type ValidationError } from 'class-validator';

/** What is wrong with one value: a stable code, a sentence, and what would put it right. */
export interface ValueFault {
  code: string;
  detail: string;
  unit?: string;
  allowed?: string;
  remedy?: string;
}

/** A fault with the place it was found at, as a JSON Pointer into the request body. */
export interface PlacedFault extends ValueFault {
  pointer: string;
}

export type Check = (value: unknown) => ValueFault | null;

/**
 * Who may stand in for a value: nothing at all, `null`, or the honest word "unknown". What may be left out may also be
 * sent as null, which in a merge patch is the way to take it away.
 */
export interface Presence {
  optional?: boolean;
  nullable?: boolean;
  unknown?: boolean;
  /** A query parameter: it can be left out, but there is no null in an address. */
  parameter?: boolean;
  description?: string;
}

type JsonSchema = Record<string, unknown>;

export const REQUIRED: ValueFault = { code: 'required', detail: 'This field is required.', remedy: 'Send the field.' };

const asksForCheck =
  (presence: Presence) =>
  (_owner: unknown, value: unknown): boolean =>
    !((presence.optional && (value === undefined || value === null)) || (presence.nullable && value === null) || (presence.unknown && value === 'unknown'));

/** Lets the listed stand-ins pass every validator of the property. */
export const passStandIns = (presence: Presence): PropertyDecorator => ValidateIf(asksForCheck(presence));

/** The stand-ins as they appear in the OpenAPI document. */
export const withStandIns = (schema: JsonSchema, presence: Presence): JsonSchema => {
  const extra: JsonSchema[] = [];
  if (presence.unknown) extra.push({ type: 'string', const: 'unknown' });
  if (presence.nullable || (presence.optional && !presence.parameter)) extra.push({ type: 'null' });
  const note = presence.description ? { description: presence.description } : {};
  if (extra.length === 0) return { ...schema, ...note };
  const choices = Array.isArray(schema['oneOf']) ? (schema['oneOf'] as JsonSchema[]) : [schema];
  const { oneOf: _oneOf, ...beside } = Array.isArray(schema['oneOf']) ? schema : { oneOf: null };
  return { ...beside, anyOf: [...choices, ...extra], ...note };
};

/** Writes a ready JSON Schema of the property into the OpenAPI document. */
export const documented = (schema: JsonSchema, presence: Presence): PropertyDecorator =>
  ApiProperty({ ...withStandIns(schema, presence), required: !presence.optional } as ApiPropertyOptions);

/** One class-validator rule whose verdict is a fault with a code, so that the answer can say more than a sentence. */
export const fieldRule =
  (check: Check): PropertyDecorator =>
  (target, key) => {
    registerDecorator({
      name: 'fieldRule',
      target: target.constructor,
      propertyName: String(key),
      options: { context: { check } },
      validator: {
        validate: (value: unknown) => check(value) === null,
        defaultMessage: (args?: ValidationArguments) => check(args?.value)?.detail ?? '',
      },
    });
  };

const escapePointer = (key: string): string => key.replaceAll('~', '~0').replaceAll('/', '~1');

const faultOfConstraint = (name: string, message: string, error: ValidationError): ValueFault => {
  const check = (error.contexts?.[name] as { check?: Check } | undefined)?.check;
  const own = check?.(error.value);
  if (own) return own;
  if (name === 'whitelistValidation') return { code: 'unknown-field', detail: 'This field is not known here.', remedy: 'Leave it out.' };
  if (error.value === undefined) return REQUIRED;
  if (name === 'nestedValidation' || name === 'isObject') return { code: 'wrong-type', detail: 'An object is wanted here.' };
  return { code: name.replaceAll(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`), detail: message };
};

const ownFaults = (error: ValidationError, pointer: string): PlacedFault[] => {
  const [first] = Object.entries(error.constraints ?? {});
  return first ? [{ pointer, ...faultOfConstraint(first[0], first[1], error) }] : [];
};

/** Flattens class-validator's tree into faults with JSON Pointers, one per field. */
export const placeFaults = (errors: readonly ValidationError[], parent = ''): PlacedFault[] => {
  const placed = errors.map((error) => {
    const pointer = `${parent}/${escapePointer(error.property)}`;
    return { error, pointer, own: ownFaults(error, pointer) };
  });
  // What lies inside a value of the wrong type has nothing to say; it may come as an error of its own for the same field.
  const wrong = new Set(placed.flatMap(({ own }) => own.filter(({ code }) => code === 'wrong-type').map(({ pointer }) => pointer)));
  return placed.flatMap(({ error, pointer, own }) => (wrong.has(pointer) ? own : [...own, ...placeFaults(error.children ?? [], pointer)]));
};
