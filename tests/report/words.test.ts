import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from '@jest/globals';
import { GENERAL_SAFETY, STORM_CARD, TASK_CARDS } from '../../apps/report/src/words/en/cards.js';
import { NOTE_WORDS } from '../../apps/report/src/words/en/notes.js';
import { climatePages } from '../../apps/report/src/words/en/pages-climate.js';
import { pages } from '../../apps/report/src/words/en/pages.js';
import { IMPORTED_TEXT } from '../../apps/report/src/words/en/stale.js';
import { Figures, whole } from '../../apps/report/src/words/figures.js';
import { lengthPair } from '@lathwork/drawing';
import { placeholders } from '../../apps/report/src/words/fill.js';

interface Listed {
  code: string;
  params: Set<string>;
}

const NOTES_FOLDER = join(process.cwd(), 'docs', 'notes');

/** The lists the rooms' authors keep: `code | severity | params | meaning`, one a line. */
const listed: Listed[] = readdirSync(NOTES_FOLDER)
  .filter((name) => name.endsWith('.md'))
  .flatMap((name) => readFileSync(join(NOTES_FOLDER, name), 'utf8').split('\n'))
  .map((line) =>
    line
      .replace(/^[-|\s]+/, '')
      .replace(/`/g, '')
      .split('|')
      .map((cell) => cell.trim()),
  )
  .filter((cells) => cells.length >= 4 && /^[a-z]+(\.[a-z0-9-]+)+$/.test(cells[0] ?? ''))
  .map((cells) => ({
    code: cells[0] ?? '',
    params: new Set(
      (cells[2] ?? '')
        .replace(/\([^)]*\)/g, '')
        .split(/[,;:\s]+/)
        .filter((p) => p !== '' && p !== 'none'),
    ),
  }));

describe('every note has a wording', () => {
  test('there are notes to check', () => expect(listed.length).toBeGreaterThan(20));
  test.each(listed.map((l) => [l.code, l] as const))('%s', (code, { params }) => {
    const wording = NOTE_WORDS[code];
    expect(wording).toBeDefined();
    for (const name of placeholders(wording ?? '')) if (name !== 'subject') expect([...params, 'sourceId', 'sourceYear']).toContain(name);
  });
});

const sentences = (text: string): string[] =>
  text
    .split(/(?<=[.!?])\s+/)
    .map((s) => s.trim())
    .filter((s) => s !== '');
const stringsOf = (value: unknown): string[] =>
  typeof value === 'string' ? [value] : typeof value === 'object' && value !== null ? Object.values(value).flatMap(stringsOf) : [];

test('sentences stay under 20 words, and no page says please or should', () => {
  const all = [
    ...Object.values(NOTE_WORDS),
    ...GENERAL_SAFETY,
    ...stringsOf(TASK_CARDS),
    ...stringsOf(STORM_CARD),
    ...stringsOf(pages),
    ...stringsOf(climatePages),
    IMPORTED_TEXT,
  ];
  expect(all.length).toBeGreaterThan(200);
  for (const sentence of all.flatMap(sentences)) {
    expect({ sentence, words: sentence.split(/\s+/).length }).toEqual({ sentence, words: Math.min(20, sentence.split(/\s+/).length) });
    expect(sentence).not.toMatch(/\bplease\b|\bshould\b/i);
  }
});

describe('figures', () => {
  // Exact by definition: 1 ft = 0.3048 m, 1 in = 25.4 mm, 0 C = 32 F, 1 lbf = 4.4482216 N.
  test('lengths to 1/8 inch with full-size fractions', () => {
    const feetInches = (metres: number): string => new Figures('us').size(metres).first;
    expect(feetInches(3.048)).toBe('10\u2032-0\u2033');
    expect(feetInches(2.0955)).toBe('6\u2032-10 1/2\u2033');
    expect(feetInches(0.0031)).toBe('1/8\u2033');
    expect(feetInches(0.3047)).toBe('1\u2032-0\u2033');
    // A nought inch is written out, in a list as on a drawing.
    expect(feetInches(0.936625)).toBe('3\u2032-0 7/8\u2033');
    expect(feetInches(0.936625)).toBe(lengthPair(0.936625, 'us').split(' [')[0]);
  });
  test('temperatures, differences and signs', () => {
    const metric = new Figures('metric');
    const us = new Figures('us');
    expect(metric.temperature(-40)).toBe('\u221240\u00a0\u00b0C (\u221240\u00a0\u00b0F)');
    expect(us.temperature(100)).toBe('212\u00a0\u00b0F (100\u00a0\u00b0C)');
    expect(us.difference(5)).toBe('9\u00a0\u00b0F');
    expect(metric.t(-0.2)).toBe('0');
    expect(whole(-1234.4)).toBe('\u22121,234');
    expect(metric.range({ p10: -7.4, p50: -6, p90: 0.4 })).toBe('\u22127 to 0');
  });
  test('the two systems say the same', () => {
    expect(new Figures('us').force(7000)).toBe('1,570\u00a0lb (7.0\u00a0kN)');
    expect(new Figures('metric').speed(10)).toBe('36\u00a0km/h (22\u00a0mph)');
    expect(new Figures('metric').pressure(1000)).toBe('1.00\u00a0kPa (21\u00a0lb/sq ft)');
    expect(new Figures('us').size(3.048)).toEqual({ first: '10\u2032-0\u2033', second: '[3048]' });
  });
});
