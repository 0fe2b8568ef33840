import { readFileSync } from 'node:fs';
import { describe, expect, test } from '@jest/globals';
import { readClimateFile } from '@lathwork/formats';
import { OWN_HOUR_COLUMNS } from '../../../libs/formats/src/own-hours.js';
import { OWN_MONTH_COLUMNS } from '../../../libs/formats/src/own-months.js';

/* The page of our own forms lists what the parsers take, no more and no less. */
const page = readFileSync('docs/formats/own-csv.md', 'utf8');
/** Names in the first cells of the table under a heading. */
const listed = (heading: string): string[] => {
  const part = page.split(new RegExp(`^## ${heading}$`, 'm'))[1]?.split(/^## /m)[0] ?? '';
  return part
    .split('\n')
    .filter((l) => l.startsWith('| `'))
    .flatMap((l) => [...(l.split('|')[1] ?? '').matchAll(/`([a-z0-9_]+)`/g)].map((m) => m[1] ?? ''))
    .sort();
};

describe('the page of our own forms', () => {
  test('lists every column of the months', () => {
    expect(listed('Months')).toEqual([...OWN_MONTH_COLUMNS.map((c) => c.name), 'years_count'].sort());
  });

  test('lists every column of the hours', () => {
    expect(listed('Hours')).toEqual([...OWN_HOUR_COLUMNS.map((c) => c.name), 'year'].sort());
  });

  test('lists every key that the parser names when it refuses one', () => {
    const result = readClimateFile('format,lathwork-months-1\nperoid,2010-2021\nmonth,t_max_c\n');
    const refused = result.outcome === 'faults' ? result.faults.find((f) => f.code === 'unknown-column') : undefined;
    expect([refused?.line, refused?.column]).toEqual([2, 'peroid']);
    const named = [...(refused?.remedy ?? '').matchAll(/[a-z]+(?:_[a-z]+)*(?=,|\.)/g)].map((m) => m[0]);
    expect(named.length).toBeGreaterThan(10);
    expect(listed('Keys above the table')).toEqual([...named].sort());
  });
});
