/** A piece of a page that is HTML already. Everything else is text and is escaped when it is put into one. */
export class Html {
  constructor(readonly text: string) {}
}

export type Piece = Html | string | number | null | undefined | false | readonly Piece[];

const ENTITIES: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;', "'": '&#39;' };

const textOf = (piece: Piece): string => {
  if (piece instanceof Html) return piece.text;
  if (piece === null || piece === undefined || piece === false) return '';
  if (typeof piece === 'object') return piece.map(textOf).join('');
  return String(piece).replaceAll(/[&<>"']/g, (sign) => ENTITIES[sign] ?? sign);
};

/** A page is written as a template; whatever is put into it is escaped, so no text can become markup. */
export const html = (parts: TemplateStringsArray, ...values: readonly Piece[]): Html =>
  new Html(parts.map((part, at) => part + (at < values.length ? textOf(values[at]) : '')).join(''));

export const joined = (pieces: readonly Piece[], between: Piece): Html =>
  new Html(
    pieces
      .map(textOf)
      .filter((text) => text !== '')
      .join(textOf(between)),
  );

/** Text in which `words between backticks` are code, as descriptions in the document have them. */
export const prose = (text: unknown): Html =>
  new Html(
    String(text ?? '')
      .split('`')
      .map((part, at) => (at % 2 === 1 ? `<code>${textOf(part)}</code>` : textOf(part)))
      .join(''),
  );
