/** Names whose values never reach a log line, at whatever depth they stand; compared without case, dashes and underscores. */
const HIDDEN_NAMES =
  /^(authorization|cookie|setcookie|(api)?keys?|idempotencykey|e?mails?|(mail)?address|phone|latitude(deg)?|longitude(deg)?|lat|lon|lng|coordinates|location|connectionstring|body|query|params|headers)$/;
const HIDDEN_ENDINGS = /(?:password|passphrase|secret|token|credential)s?$|code$|url$/;
/** Ids and counts under such a name tell nothing. */
const HARMLESS_NAMES = /^(keyid|.*count|code|statuscode)$/;

const HIDDEN = '[hidden]';

/** Texts that give something away wherever they stand: each is replaced, the rest of the text stays. */
const GIVE_AWAY: readonly [RegExp, string][] = [
  [/\b(postgres(?:ql)?|https?|smtps?):\/\/[^\s/@"']{1,300}@[^\s"']{0,300}/gi, '[address]'],
  [/\bpostgres(?:ql)?:\/\/[^\s"']{1,500}/gi, '[address]'],
  [/\blws?_[0-9A-Za-z]{8,60}/g, '[key]'],
  [/\bwhsec_[\w+/=-]{8,200}/g, '[secret]'],
  [/\b(Bearer|Basic) +[^\s"',]{1,300}/gi, '$1 [hidden]'],
  // The search begins at the beginning of a word only, so that a long word is looked at once.
  [/(?<![^\s"'<>()[\]{},;:=/@])[^\s"'<>()[\]{},;:=/@]+@[^\s"'<>()[\]{},;:=/@]+/g, '[mail address]'],
  // A number with three decimals or more is a place to within some hundred metres, or tells nobody anything.
  [/-?\b\d{1,3}\.\d{3,}/g, '[number]'],
];

export const scrubText = (text: string): string => GIVE_AWAY.reduce((so, [pattern, instead]) => so.replace(pattern, instead), text);

const isHidden = (name: string): boolean => {
  const plain = name.toLowerCase().replaceAll(/[-_]/g, '');
  return (HIDDEN_NAMES.test(plain) || HIDDEN_ENDINGS.test(plain)) && !HARMLESS_NAMES.test(plain);
};

const MOST_DEPTH = 6;
const MOST_MEMBERS = 60;
const MOST_TEXT = 1_000;

const scrubValue = (value: unknown, depth: number): unknown => {
  if (typeof value === 'string') return scrubText(value.slice(0, MOST_TEXT));
  if (typeof value !== 'object' || value === null) return value;
  if (value instanceof Error) return errorOf(value);
  if (value instanceof Date) return value;
  if (depth > MOST_DEPTH || ArrayBuffer.isView(value)) return HIDDEN;
  if (Array.isArray(value)) return value.slice(0, MOST_MEMBERS).map((one) => scrubValue(one, depth + 1));
  const members = Object.entries(value).slice(0, MOST_MEMBERS);
  return Object.fromEntries(members.map(([name, one]) => [name, isHidden(name) && one !== null ? HIDDEN : scrubValue(one, depth + 1)]));
};

/** What is logged of an object: nothing under a hidden name, and no text that gives something away. */
export const scrub = (object: Record<string, unknown>): Record<string, unknown> => scrubValue(object, 0) as Record<string, unknown>;

/** Words in quotes are names of columns and tables, or what somebody typed; only what looks like a name of ours stays. */
const withoutValues = (message: string): string =>
  message.replaceAll(/(["'`])((?:(?!\1).){0,300})\1/g, (whole, _mark, inner: string) => (/^[a-z_]{1,40}(\.[a-z_]{1,40})?$/.test(inner) ? whole : '"…"'));

/** The database quotes the very value that was wrong with it: classes 22 (data) and 23 (constraints). */
const quotesValues = (code: string | undefined): boolean => code !== undefined && /^2[23]/.test(code);

const messageOf = (message: string, code: string | undefined): string => {
  // The tools put what was asked before the last line, and what went wrong on it.
  const last = message.split('\n').at(-1)?.slice(0, 300) ?? '';
  return quotesValues(code) ? last.replaceAll(/(["'`]).*\1/g, '"…"') : scrubText(withoutValues(last));
};

const codeOf = (error: Error): string | undefined => {
  const { code } = error as { code?: unknown };
  return typeof code === 'string' ? code.slice(0, 40) : undefined;
};

/** An error without the values that were in the query or the request: its kind, code and stack. */
export function errorOf(error: unknown): object {
  if (!(error instanceof Error)) return { kind: typeof error };
  const code = codeOf(error);
  const where = (error.stack ?? '')
    .split('\n')
    .filter((line) => /^\s+at /.test(line))
    .slice(0, 12)
    .map((line) => line.trim());
  const cause = error.cause instanceof Error ? messageOf(error.cause.message, codeOf(error.cause)) : null;
  return { kind: error.name, ...(code ? { code } : {}), message: messageOf(error.message, code), where, ...(cause ? { cause } : {}) };
}
