/** One value that is not the same in two documents. Absent is null, so that a reader needs no third word. */
export interface Difference {
  /** JSON Pointer (RFC 6901). Members of a list that have an id or a tag are found by it, not by their place. */
  pointer: string;
  before: unknown;
  after: unknown;
}

const isObject = (value: unknown): value is Record<string, unknown> => typeof value === 'object' && value !== null && !Array.isArray(value);

const escaped = (key: string): string => key.replaceAll('~', '~0').replaceAll('/', '~1');

/** What people tell members of the lists of a plan apart by. */
const NAMES = ['stockItemId', 'tag', 'priceId', 'openingId', 'stationId', 'month', 'from'] as const;

const nameIn = (list: readonly unknown[]): ((member: unknown) => string) | null => {
  const key = NAMES.find((name) => list.length > 0 && list.every((member) => isObject(member) && ['string', 'number'].includes(typeof member[name])));
  if (!key) return null;
  const name = (member: unknown): string => String((member as Record<string, unknown>)[key]);
  return new Set(list.map(name)).size === list.length ? name : null;
};

const asObject = (list: readonly unknown[], name: ((member: unknown) => string) | null): Record<string, unknown> =>
  Object.fromEntries(list.map((member, i) => [name ? name(member) : String(i), member]));

/** Every place where two JSON documents differ, in the order of the documents' keys, at most `limit` of them. */
export const differences = (before: unknown, after: unknown, limit: number, pointer = '', out: Difference[] = []): Difference[] => {
  if (out.length >= limit) return out;
  if (Array.isArray(before) && Array.isArray(after)) {
    const name = nameIn([...before, ...after].length > 0 && nameIn(before) && nameIn(after) ? before : []);
    return differences(asObject(before, name), asObject(after, name), limit, pointer, out);
  }
  if (isObject(before) && isObject(after)) {
    for (const key of new Set([...Object.keys(before), ...Object.keys(after)]))
      differences(before[key] ?? null, after[key] ?? null, limit, `${pointer}/${escaped(key)}`, out);
    return out;
  }
  if (JSON.stringify(before) !== JSON.stringify(after)) out.push({ pointer, before, after });
  return out;
};
