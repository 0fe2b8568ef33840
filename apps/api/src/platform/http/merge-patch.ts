type Json = unknown;

const isObject = (value: Json): value is Record<string, Json> => typeof value === 'object' && value !== null && !Array.isArray(value);

/** RFC 7396: null removes, objects merge, everything else replaces. Neither argument is changed. */
export const mergePatch = (target: Json, patch: Json): Json => {
  if (!isObject(patch)) return patch;
  const merged: Record<string, Json> = isObject(target) ? { ...target } : {};
  for (const [key, value] of Object.entries(patch)) {
    if (value === null) delete merged[key];
    else merged[key] = mergePatch(merged[key], value);
  }
  return merged;
};
