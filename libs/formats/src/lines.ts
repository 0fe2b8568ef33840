import { shown, type FileFault } from './faults.js';

export interface LineLimits {
  bytesLimit: number;
  lineBytesLimit: number;
}
export const DEFAULT_BYTES_LIMIT = 8 * 1024 * 1024;
/** The longest line of the formats read here is 58,000 bytes (a year of U.S. normals is one line). */
export const DEFAULT_LINE_BYTES_LIMIT = 512 * 1024;

/** First bytes of files that are often sent in place of the text inside them. */
const MAGIC: readonly (readonly [string, readonly number[], string])[] = [
  ['a zip archive or a workbook (xlsx, ods)', [0x50, 0x4b, 0x03, 0x04], 'Unpack it and send the text file that is inside; save a workbook as CSV.'],
  ['an empty zip archive', [0x50, 0x4b, 0x05, 0x06], 'Send the text file itself.'],
  ['a gzip file', [0x1f, 0x8b], 'Unpack it (gunzip) and send the text file.'],
  ['a bzip2 file', [0x42, 0x5a, 0x68], 'Unpack it and send the text file.'],
  ['an xz file', [0xfd, 0x37, 0x7a, 0x58, 0x5a], 'Unpack it and send the text file.'],
  ['a zstd file', [0x28, 0xb5, 0x2f, 0xfd], 'Unpack it and send the text file.'],
  ['a 7z archive', [0x37, 0x7a, 0xbc, 0xaf], 'Unpack it and send the text file.'],
  ['a rar archive', [0x52, 0x61, 0x72, 0x21], 'Unpack it and send the text file.'],
  ['a PDF document', [0x25, 0x50, 0x44, 0x46], 'Send the data file, not its description.'],
  ['an old workbook or document (xls, doc)', [0xd0, 0xcf, 0x11, 0xe0], 'Save it as CSV and send that.'],
  ['a PNG picture', [0x89, 0x50, 0x4e, 0x47], 'Send the data file.'],
  ['a JPEG picture', [0xff, 0xd8, 0xff], 'Send the data file.'],
  ['an SQLite database', [0x53, 0x51, 0x4c, 0x69, 0x74, 0x65, 0x20, 0x66], 'Export the table as CSV and send that.'],
  ['a Parquet file', [0x50, 0x41, 0x52, 0x31], 'Export the table as CSV and send that.'],
  ['an HDF5 or NetCDF file', [0x89, 0x48, 0x44, 0x46], 'Export the point that you want as CSV.'],
  ['a NetCDF file', [0x43, 0x44, 0x46], 'Export the point that you want as CSV.'],
];
const HEAD_BYTES = 8;

/** The name of a file that is not text, by its first bytes; null where nothing speaks against text. */
export const notText = (head: Uint8Array): { name: string; remedy: string } | null => {
  for (const [name, bytes, remedy] of MAGIC) if (head.length >= bytes.length && bytes.every((b, i) => head[i] === b)) return { name, remedy };
  return null;
};

const ASCII_PIECE = 8192;
/** Applied and not spread, because a spread walks the bytes one by one. */
const codesToText = (codes: Uint8Array): string => {
  let text = '';
  for (let i = 0; i < codes.length; i += ASCII_PIECE) text += Reflect.apply(String.fromCharCode, null, codes.subarray(i, i + ASCII_PIECE));
  return text;
};
const isAscii = (bytes: Uint8Array): boolean => {
  for (let i = 0; i < bytes.length; i++) if ((bytes[i] ?? 0) >= 0x80) return false;
  return true;
};

/** Length of the UTF-8 character that starts with this byte; 0 where none does. */
const utf8Length = (first: number): number =>
  first < 0x80 ? 1 : first >= 0xc2 && first < 0xe0 ? 2 : first >= 0xe0 && first < 0xf0 ? 3 : first >= 0xf0 && first < 0xf5 ? 4 : 0;
const LEAST = [0, 0, 0x80, 0x800, 0x10000];

/** Strict UTF-8: null where the bytes are not UTF-8 (overlong forms and surrogates included). */
const utf8Text = (bytes: Uint8Array): string | null => {
  let text = '';
  for (let i = 0; i < bytes.length;) {
    const first = bytes[i] ?? 0;
    const length = utf8Length(first);
    if (length === 0 || i + length > bytes.length) return null;
    let code = length === 1 ? first : first & (0xff >> (length + 1));
    for (let k = 1; k < length; k++) {
      const next = bytes[i + k] ?? 0;
      if ((next & 0xc0) !== 0x80) return null;
      code = (code << 6) | (next & 0x3f);
    }
    if (code < (LEAST[length] ?? 0) || code > 0x10ffff || (code >= 0xd800 && code <= 0xdfff)) return null;
    text += String.fromCodePoint(code);
    i += length;
  }
  return text;
};

export interface Decoded {
  text: string;
  encoding: 'ascii' | 'utf-8' | 'latin-1';
}

/** One line's bytes as text: ASCII, else UTF-8, else Latin-1, which cannot fail. */
export const decodeLine = (bytes: Uint8Array): Decoded => {
  if (isAscii(bytes)) return { text: codesToText(bytes), encoding: 'ascii' };
  const text = utf8Text(bytes);
  return text === null ? { text: codesToText(bytes), encoding: 'latin-1' } : { text, encoding: 'utf-8' };
};

const CR = 13;
const LF = 10;

/**
 * Cuts bytes that come in pieces of any size into lines. A line ends with LF, CR LF or a lone CR. Gives each line to `take`,
 * which answers false when it wants no more. A file that is not text, too large or has an endless line ends it with `fault`.
 */
export class LineReader {
  bytesCount = 0;
  linesCount = 0;
  latin1LinesCount = 0;
  firstLatin1Line = 0;
  hasUtf8 = false;
  fault: FileFault | null = null;
  /** True when the last line ended with a line end, as a whole file's does. */
  endedWithNewline = false;
  private rest: Uint8Array[] = [];
  private restLength = 0;
  private afterCr = false;
  private readonly head: number[] = [];
  private headChecked = false;
  private fedCount = 0;
  private wanted = true;

  constructor(
    private readonly take: (text: string, number: number) => boolean,
    private readonly limits: LineLimits,
  ) {}

  /** False when no more bytes are wanted. */
  push(chunk: Uint8Array): boolean {
    if (!this.open || chunk.length === 0) return this.open;
    this.bytesCount += chunk.length;
    if (this.bytesCount > this.limits.bytesLimit)
      return this.stop(
        'too-large',
        `the file is larger than ${this.limits.bytesLimit} bytes`,
        'Cut the file to one station and one year, or ask for a larger limit.',
      );
    if (this.headChecked) return this.feed(chunk);
    this.head.push(...chunk.subarray(0, HEAD_BYTES));
    if (this.head.length < HEAD_BYTES) return true;
    const rest = chunk.subarray(HEAD_BYTES);
    return this.checkHead() && this.feed(Uint8Array.from(this.head)) && (rest.length === 0 || this.feed(rest));
  }

  private feed(chunk: Uint8Array): boolean {
    let from = 0;
    for (let i = 0; i < chunk.length && this.open; i++) {
      const byte = chunk[i];
      if (byte === 0)
        return this.stop(
          'not-text',
          `a zero byte at byte ${this.fedCount + i + 1}: this is not a text file`,
          'Save the data as plain text (CSV, UTF-8) and send that.',
        );
      if (byte !== LF && byte !== CR) {
        this.afterCr = false;
        continue;
      }
      if (byte === LF && this.afterCr) this.afterCr = false;
      else {
        this.line(chunk.subarray(from, i));
        this.afterCr = byte === CR;
      }
      from = i + 1;
    }
    if (this.open && from < chunk.length) this.keep(chunk.subarray(from));
    this.endedWithNewline = from === chunk.length;
    this.fedCount += chunk.length;
    return this.open;
  }

  end(): void {
    if (this.open && !this.headChecked && this.checkHead()) this.feed(Uint8Array.from(this.head));
    if (!this.open) return;
    if (this.restLength > 0) this.line(new Uint8Array(0));
    if (this.bytesCount === 0) this.stop('empty', 'the file is empty', 'Send the file again; an upload may have been cut off.');
  }

  /** False when the taker wanted no more lines. */
  get readToEnd(): boolean {
    return this.wanted;
  }

  private get open(): boolean {
    return this.wanted && this.fault === null;
  }

  private stop(code: FileFault['code'], message: string, remedy: string): false {
    this.fault ??= { line: this.linesCount + 1, code, message, remedy };
    return false;
  }

  private keep(piece: Uint8Array): void {
    // A copy: the caller may fill the same buffer again.
    this.rest.push(piece.slice());
    this.restLength += piece.length;
    if (this.restLength > this.limits.lineBytesLimit)
      this.stop(
        'line-too-long',
        `line ${this.linesCount + 1} is longer than ${this.limits.lineBytesLimit} bytes`,
        'Send the file as it was published, with its line ends.',
      );
  }

  private joined(last: Uint8Array): Uint8Array {
    if (this.rest.length === 0) return last;
    const whole = new Uint8Array(this.restLength + last.length);
    let at = 0;
    for (const piece of [...this.rest, last]) {
      whole.set(piece, at);
      at += piece.length;
    }
    return whole;
  }

  /** Before any line is given: an archive's first bytes may hold a line end. */
  private checkHead(): boolean {
    this.headChecked = true;
    const known = notText(Uint8Array.from(this.head));
    if (known) return this.stop('not-text', `this is ${known.name}, not a text file`, known.remedy);
    if ((this.head[0] === 0xff && this.head[1] === 0xfe) || (this.head[0] === 0xfe && this.head[1] === 0xff))
      return this.stop('wrong-encoding', 'the text is UTF-16', 'Save it as UTF-8 text (in a spreadsheet: "CSV UTF-8").');
    return true;
  }

  private line(last: Uint8Array): void {
    let bytes = this.joined(last);
    this.rest = [];
    this.restLength = 0;
    if (bytes.length > this.limits.lineBytesLimit) {
      this.stop(
        'line-too-long',
        `line ${this.linesCount + 1} is longer than ${this.limits.lineBytesLimit} bytes`,
        'Send the file as it was published, with its line ends.',
      );
      return;
    }
    if (this.linesCount === 0 && bytes[0] === 0xef && bytes[1] === 0xbb && bytes[2] === 0xbf) bytes = bytes.subarray(3);
    this.linesCount++;
    const { text, encoding } = decodeLine(bytes);
    if (encoding === 'latin-1' && this.latin1LinesCount++ === 0) this.firstLatin1Line = this.linesCount;
    if (encoding === 'utf-8') this.hasUtf8 = true;
    if (!this.take(text, this.linesCount)) this.wanted = false;
  }
}

/** Text as UTF-8 bytes, for callers that hold a string already. A lone surrogate becomes the replacement mark. */
export const bytesOf = (text: string): Uint8Array => {
  const out: number[] = [];
  for (const mark of text) {
    const code = mark.codePointAt(0) ?? 0;
    const point = code >= 0xd800 && code <= 0xdfff ? 0xfffd : code;
    if (point < 0x80) out.push(point);
    else if (point < 0x800) out.push(0xc0 | (point >> 6), 0x80 | (point & 0x3f));
    else if (point < 0x10000) out.push(0xe0 | (point >> 12), 0x80 | ((point >> 6) & 0x3f), 0x80 | (point & 0x3f));
    else out.push(0xf0 | (point >> 18), 0x80 | ((point >> 12) & 0x3f), 0x80 | ((point >> 6) & 0x3f), 0x80 | (point & 0x3f));
  }
  return Uint8Array.from(out);
};

/** A name out of a file, fit to be stored and printed. */
export const tidyName = (raw: string, most = 120): string => shown(raw.replaceAll(/\s+/g, ' ').trim(), most);
