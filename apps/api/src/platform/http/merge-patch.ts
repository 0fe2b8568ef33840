type Plain = Record<string, unknown>;
const isPlain = (value: unknown): value is Plain => typeof value === 'object' && value !== null && !Array.isArray(value);

/**
 * A merge patch (RFC 7396) on a record: lists are replaced whole, objects are merged, null takes a value away. Our records
 * show a value that is not there as null, so null is what stays; whether it may be absent is for the check of the whole.
 * Neither argument is changed.
 */
export const mergePatch = (target: unknown, patch: unknown): unknown => {
  if (!isPlain(patch)) return patch;
  const before: Plain = isPlain(target) ? target : {};
  // Entries become own fields whatever they are called; an assignment to __proto__ would not.
  const changed = Object.entries(patch).map(([key, value]): [string, unknown] => [
    key,
    value === null ? null : mergePatch(Object.hasOwn(before, key) ? before[key] : undefined, value),
  ]);
  return Object.fromEntries([...Object.entries(before), ...changed]);
};
