import type { Quantity, UnitSymbol } from '@lathwork/units';
import { BIBLIOGRAPHY, type SourceId } from './bibliography.js';

/**
 * The only way a constant enters a formula: its value, its unit, the source it comes from and where in that source.
 * Returns the bare number, typed with its unit. A value outside its stated bounds, or an unknown source, stops the
 * program at load time, so that a slip of the finger in a table cannot reach a plan.
 *
 * @param value the figure as used here, already in `unit`
 * @param unit  SI unit symbol
 * @param sourceId key of the bibliography
 * @param where table, figure, equation or page in that source
 * @param bounds the range the source gives for it, where it gives one
 */
export const cited = <U extends UnitSymbol>(
  value: number,
  unit: U,
  sourceId: SourceId,
  where: string,
  bounds?: { min?: number; max?: number },
): Quantity<U> => {
  if (!(sourceId in BIBLIOGRAPHY)) throw new Error(`cited: no source '${sourceId}' (${where})`);
  if (where === '') throw new Error(`cited: say where in ${sourceId} the value ${value} ${unit} stands`);
  if (!Number.isFinite(value)) throw new Error(`cited: ${sourceId} ${where} is not a finite number`);
  if (bounds?.min !== undefined && value < bounds.min) throw new Error(`cited: ${value} ${unit} is under ${bounds.min} (${sourceId} ${where})`);
  if (bounds?.max !== undefined && value > bounds.max) throw new Error(`cited: ${value} ${unit} is over ${bounds.max} (${sourceId} ${where})`);
  return value;
};
