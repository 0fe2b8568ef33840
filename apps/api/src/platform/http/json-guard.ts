/** Why a text is not JSON as this API takes it, or null. Looks at the text before anything is built from it. */
export const JSON_LIMITS = { bytes: 1_048_576, depth: 32, keys: 1000, keysInAll: 50_000 } as const;

// Every name that an object has without being given it: such a key is overlooked by some code, or changes other objects.
const FORBIDDEN_KEYS = new Set([...Object.getOwnPropertyNames(Object.prototype), 'prototype']);
// The exact string form of RFC 8259; a regular expression without nested repeats, so its time grows with the text only.
// eslint-disable-next-line no-control-regex -- control characters are exactly what must be escaped in JSON
const STRING = /"(?:[^"\\\u0000-\u001f]|\\["\\/bfnrt]|\\u[0-9a-fA-F]{4})*"/y;
// With the u flag a whole pair is one character, so only a lone half can match.
const HALF_PAIR = /\p{Cs}/u;
const NUMBER = /-?\d[\d.eE+-]*/y;
const BLANKS = /[ \t\r\n]+/y;

interface Level {
  keys: Set<string> | null;
  wantsKey: boolean;
}

class Scanner {
  private at = 0;
  private keysInAll = 0;
  private readonly levels: Level[] = [];

  constructor(private readonly text: string) {}

  fault(): string | null {
    while (this.at < this.text.length) {
      const reason = this.step(this.text[this.at] ?? '');
      if (reason) return reason;
    }
    return null;
  }

  private step(char: string): string | null {
    if (char === '"') return this.string();
    if (char === '{' || char === '[') return this.open(char);
    if (char === '-' || (char >= '0' && char <= '9')) return this.number();
    if (char === ' ' || char === '\t' || char === '\r' || char === '\n') return this.blanks();
    const level = this.levels.at(-1);
    if (char === '}' || char === ']') this.levels.pop();
    if (char === ',' && level?.keys) level.wantsKey = true;
    this.at += 1;
    return null;
  }

  private open(char: string): string | null {
    if (this.levels.length >= JSON_LIMITS.depth) return `it is nested deeper than ${JSON_LIMITS.depth} levels`;
    this.levels.push(char === '{' ? { keys: new Set(), wantsKey: true } : { keys: null, wantsKey: false });
    this.at += 1;
    return null;
  }

  private blanks(): null {
    BLANKS.lastIndex = this.at;
    this.at += BLANKS.exec(this.text)?.[0].length ?? 1;
    return null;
  }

  private number(): string | null {
    NUMBER.lastIndex = this.at;
    const number = NUMBER.exec(this.text)?.[0] ?? '';
    // A minus without a digit is no number, and would be looked at for ever.
    if (number === '') return 'a minus sign stands without a number';
    this.at += number.length;
    return Number.isFinite(Number(number)) ? null : `the number ${number.slice(0, 20)} cannot be held`;
  }

  private string(): string | null {
    STRING.lastIndex = this.at;
    const raw = STRING.exec(this.text)?.[0];
    if (raw === undefined) return 'a text is not closed, or has a character that must be escaped';
    this.at += raw.length;
    const value = raw.includes('\\') ? (JSON.parse(raw) as string) : raw.slice(1, -1);
    if (value.includes('\u0000')) return 'a text holds a NUL character';
    if (HALF_PAIR.test(value)) return 'a text holds half of a character pair';
    const level = this.levels.at(-1);
    if (!level?.keys || !level.wantsKey) return null;
    level.wantsKey = false;
    return this.key(value, level.keys);
  }

  private key(key: string, keys: Set<string>): string | null {
    if (FORBIDDEN_KEYS.has(key)) return `the key "${key}" is not allowed`;
    if (keys.has(key)) return `the key "${key.slice(0, 60)}" stands twice in one object`;
    keys.add(key);
    this.keysInAll += 1;
    return keys.size > JSON_LIMITS.keys || this.keysInAll > JSON_LIMITS.keysInAll ? 'it has too many keys' : null;
  }
}

export const jsonFault = (text: string): string | null => new Scanner(text).fault();
