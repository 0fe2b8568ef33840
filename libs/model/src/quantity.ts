import { Type, type Static, type TSchema, type TUnsafe } from '@sinclair/typebox';
import type { Quantity, UnitSymbol } from '@lathwork/units';

interface QuantityOptions {
  minimum?: number;
  maximum?: number;
  description?: string;
}

/** Schema of one number in one unit. The unit is written into the JSON Schema as `unit`. */
export const quantity = <U extends UnitSymbol>(unit: U, options: QuantityOptions = {}): TUnsafe<Quantity<U>> =>
  Type.Unsafe<Quantity<U>>(Type.Number({ unit, ...options }));

/** A value that may honestly be unknown. `unknown` is never replaced by a default. */
export const orUnknown = <T extends TSchema>(schema: T) => Type.Union([schema, Type.Literal('unknown')]);

/** A value that may have no record (a missing climate month, a price nobody has asked for). */
export const orNull = <T extends TSchema>(schema: T) => Type.Union([schema, Type.Null()]);

export const oneOf = <T extends string>(...values: readonly T[]) => Type.Unsafe<T>(Type.Union(values.map((v) => Type.Literal(v))));

export const object = <P extends Record<string, TSchema>>(properties: P) => Type.Object(properties, { additionalProperties: false });

export const list = <T extends TSchema>(schema: T, maxItems = 1000) => Type.Array(schema, { maxItems });

/** Low, likely and high ends of an estimate: the 10th, 50th and 90th percentile of the runs behind it. */
export const range = <U extends UnitSymbol>(unit: U) => object({ p10: quantity(unit), p50: quantity(unit), p90: quantity(unit) });
export interface Range<U extends UnitSymbol> {
  p10: Quantity<U>;
  p50: Quantity<U>;
  p90: Quantity<U>;
}

export const uuid = () => Type.String({ format: 'uuid' });
export const isoDate = () => Type.String({ format: 'date' });
export const text = (maxLength: number) => Type.String({ minLength: 1, maxLength });

/** Money is whole minor units (cents, pence, fils) of one ISO 4217 currency. */
export const MoneySchema = object({ minor: Type.Integer(), currency: Type.String({ pattern: '^[A-Z]{3}$' }) });
export type Money = Static<typeof MoneySchema>;
