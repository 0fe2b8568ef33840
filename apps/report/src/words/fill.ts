/** Names in curly brackets of a wording: `{postId}` -> "postId". */
export const placeholders = (wording: string): string[] => [...wording.matchAll(/\{(\w+)\}/g)].map((m) => m[1] ?? '');

/** Puts values into a wording. A placeholder without a value is a fault of ours and is said aloud, never printed. */
export function fill(wording: string, values: Readonly<Record<string, string | number>>): string {
  return wording.replace(/\{(\w+)\}/g, (_, key: string) => {
    const value = values[key];
    if (value === undefined) throw new Error(`no value for {${key}} in: ${wording}`);
    return String(value);
  });
}

/** "a, b and c". */
export function listing(items: readonly string[], and = 'and'): string {
  if (items.length < 2) return items.join('');
  return `${items.slice(0, -1).join(', ')} ${and} ${items.at(-1) ?? ''}`;
}
