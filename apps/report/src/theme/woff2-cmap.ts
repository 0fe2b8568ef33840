import { brotliDecompressSync } from 'node:zlib';

/** Position of `cmap` in the table of known tags of the WOFF2 file format (W3C Recommendation, section 4.1). */
const CMAP_TAG = 0;
/** `glyf` and `loca` are transformed unless their version says otherwise; for these two, version 3 is "not transformed". */
const GLYF_TAG = 10;
const LOCA_TAG = 11;
const UNKNOWN_TAG = 63;
const HEADER_BYTES = 48;

/** Variable-length number of the WOFF2 format (UIntBase128): seven bits a byte, high bit says "more". */
function readBase128(bytes: Buffer, at: number): { value: number; next: number } {
  let value = 0;
  for (let i = 0; i < 5; i += 1) {
    const byte = bytes.readUInt8(at + i);
    value = value * 128 + (byte & 0x7f);
    if ((byte & 0x80) === 0) return { value, next: at + i + 1 };
  }
  throw new Error('font file: a number is longer than the format allows');
}

/** The decompressed cmap table. Tables lie one behind the other in the order of the directory. */
function cmapTable(file: Buffer): Buffer {
  if (file.toString('latin1', 0, 4) !== 'wOF2') throw new Error('font file: not WOFF2');
  const tables = file.readUInt16BE(12);
  const compressedBytes = file.readUInt32BE(20);
  let at = HEADER_BYTES;
  let offset = 0;
  let found: { offset: number; length: number } | null = null;
  for (let i = 0; i < tables; i += 1) {
    const flags = file.readUInt8(at);
    const known = flags & 0x3f;
    const version = flags >> 6;
    at += known === UNKNOWN_TAG ? 5 : 1;
    const original = readBase128(file, at);
    at = original.next;
    let length = original.value;
    const isTransformed = known === GLYF_TAG || known === LOCA_TAG ? version !== 3 : version !== 0;
    if (isTransformed) {
      const transformed = readBase128(file, at);
      at = transformed.next;
      length = transformed.value;
    }
    if (known === CMAP_TAG) found = { offset, length };
    offset += length;
  }
  if (found === null) throw new Error('font file: no cmap table');
  const data = brotliDecompressSync(file.subarray(at, at + compressedBytes));
  return data.subarray(found.offset, found.offset + found.length);
}

function format4(table: Buffer, at: number, into: Set<number>): void {
  const segments = table.readUInt16BE(at + 6) / 2;
  const ends = at + 14;
  const starts = ends + segments * 2 + 2;
  const deltas = starts + segments * 2;
  const offsets = deltas + segments * 2;
  for (let i = 0; i < segments; i += 1) {
    const start = table.readUInt16BE(starts + i * 2);
    const end = table.readUInt16BE(ends + i * 2);
    const delta = table.readUInt16BE(deltas + i * 2);
    const rangeOffset = table.readUInt16BE(offsets + i * 2);
    for (let code = start; code <= end && code < 0xffff; code += 1) {
      const glyph = rangeOffset === 0 ? (code + delta) & 0xffff : table.readUInt16BE(offsets + i * 2 + rangeOffset + (code - start) * 2);
      if (glyph !== 0) into.add(code);
    }
  }
}

function format12(table: Buffer, at: number, into: Set<number>): void {
  const groups = table.readUInt32BE(at + 12);
  for (let i = 0; i < groups; i += 1) {
    const start = table.readUInt32BE(at + 16 + i * 12);
    const end = table.readUInt32BE(at + 20 + i * 12);
    for (let code = start; code <= end; code += 1) into.add(code);
  }
}

/** Every character the font file has a glyph for, read from the file itself: a declared range may promise more than it holds. */
export function charactersOf(file: Buffer): ReadonlySet<number> {
  const table = cmapTable(file);
  const characters = new Set<number>();
  const count = table.readUInt16BE(2);
  for (let i = 0; i < count; i += 1) {
    const at = table.readUInt32BE(4 + i * 8 + 4);
    const format = table.readUInt16BE(at);
    if (format === 4) format4(table, at, characters);
    else if (format === 12) format12(table, at, characters);
  }
  return characters;
}
