type Json = Record<string, unknown>;
const isJson = (value: unknown): value is Json => typeof value === 'object' && value !== null && !Array.isArray(value);

/** What a reference into the document leads to; anything else is given back as it is. */
export const resolved = <T>(document: unknown, value: T): T => {
  const ref = isJson(value) ? value['$ref'] : undefined;
  if (typeof ref !== 'string') return value;
  const found = ref
    .slice(2)
    .split('/')
    .reduce<unknown>((inside, key) => (isJson(inside) ? inside[key] : undefined), document);
  return found as T;
};
