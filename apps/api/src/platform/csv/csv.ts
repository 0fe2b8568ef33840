/** What stands in one cell. Null is an empty cell. */
export type Cell = string | number | boolean | null;

/** One column: its name in the header row, and what stands in it. The order of the columns is the order of the file. */
export interface Column<T> {
  name: string;
  of: (row: T) => Cell;
}

export const CSV_TYPE = 'text/csv; charset=utf-8; header=present';

// What makes a spreadsheet take a text for a formula or lose its beginning, also in full width. A text that begins with
// quotes before such a sign gets one more, so that taking one away always gives back what was written.
// eslint-disable-next-line no-control-regex -- control characters are part of what is guarded against
const DANGEROUS = /^'*[=+\-@\t\r\n\u0000\uff1d\uff0b\uff0d\uff20]/;
// eslint-disable-next-line no-control-regex -- the same signs behind at least one quote
const GUARDED = /^'+[=+\-@\t\r\n\u0000\uff1d\uff0b\uff0d\uff20]/;

/** A text that no spreadsheet takes for a formula. */
export const guardText = (text: string): string => (DANGEROUS.test(text) ? `'${text}` : text);

/** The text that was guarded, as it was written. */
export const unguardText = (cell: string): string => (GUARDED.test(cell) ? cell.slice(1) : cell);

const quoted = (text: string): string => (/[",\r\n]|^\s|\s$/.test(text) ? `"${text.replaceAll('"', '""')}"` : text);

const written = (cell: Cell): string => {
  if (cell === null) return '';
  if (typeof cell === 'string') return quoted(guardText(cell));
  if (typeof cell === 'number' && !Number.isFinite(cell)) throw new Error('a number that is none cannot be written');
  // A number is written as it is, so that a spreadsheet can calculate with it; a minus is no formula there.
  return Object.is(cell, -0) ? '0' : String(cell);
};

/** Rows as RFC 4180 has them: a header row, commas, CRLF at every end, quotes where they are needed. */
export const toCsv = <T>(columns: readonly Column<T>[], rows: readonly T[]): string =>
  [columns.map(({ name }) => quoted(name)), ...rows.map((row) => columns.map(({ of }) => written(of(row))))].map((cells) => `${cells.join(',')}\r\n`).join('');
