import { UNIT_BY_SUFFIX, type UnitSuffix, type UnitSymbol } from './quantity.js';

const LONGEST_FIRST = (Object.keys(UNIT_BY_SUFFIX) as UnitSuffix[]).sort((a, b) => b.length - a.length);

/**
 * The unit that a field's name carries, by its longest matching suffix; undefined where it carries none.
 * A suffix begins a word of its own, so `spanM` is in metres and `ITEM` in nothing.
 */
export const unitOfName = (fieldName: string): UnitSymbol | undefined => {
  const suffix = LONGEST_FIRST.find((s) => fieldName.endsWith(s) && /[a-z0-9]/.test(fieldName.at(-s.length - 1) ?? ''));
  return suffix && UNIT_BY_SUFFIX[suffix];
};
