import { readFileSync } from 'node:fs';
import { packFirstFit } from '@lathwork/calc';
import { dataFile } from '../../support/data-folder.js';
import { referenceTable, type ReferenceCheck } from '../../support/reference.js';

interface Problem {
  name: string;
  capacity: number;
  best: number;
  sizes: number[];
}

const file = dataFile('cutting/or-library-binpack1.txt');

const problems = (): Problem[] => {
  const words = readFileSync(file.path, 'utf8').trim().split(/\s+/);
  let at = 1;
  return Array.from({ length: Number(words[0]) }, () => {
    const [name = '', capacity, items, best] = words.slice(at, at + 4);
    const sizes = words.slice(at + 4, at + 4 + Number(items)).map(Number);
    at += 4 + Number(items);
    return { name, capacity: Number(capacity), best: Number(best), sizes };
  });
};

const packed = (name: string) => {
  const problem = problems().find((p) => p.name === name);
  if (!problem) throw new Error(`no problem ${name}`);
  const out = packFirstFit(
    problem.sizes.map((lengthMm, i) => ({ key: String(i), lengthMm })),
    [],
    problem.capacity,
    0,
  );
  return { ...out, best: problem.best };
};

const NAMES: readonly [string, number][] = [
  ['u120_00', 48],
  ['u120_01', 49],
  ['u120_05', 48],
  ['u120_10', 52],
  ['u120_19', 49],
];
const SOURCE = 'OR-Library (Beasley), one-dimensional bin packing, file binpack1: best known number of bins';

referenceTable('cutting against published packing problems', [
  ...NAMES.map(([name, best]): ReferenceCheck => ({
    id: `cut.orlib.${name}`,
    room: 'cutting',
    kind: 'published',
    source: SOURCE,
    unit: 'boards',
    expected: best,
    tolerance: { abs: 1, why: 'first fit decreasing is a rule of thumb: on these problems it is known to end within one bin of the best' },
    got: () => packed(name).boughtCount,
    skip: file.skip,
  })),
  {
    id: 'cut.orlib.bound',
    room: 'cutting',
    kind: 'published',
    source: SOURCE,
    unit: 'count of problems whose bound exceeds the best known plan',
    expected: 0,
    tolerance: { abs: 0, why: 'a lower bound above a known plan would be wrong' },
    got: () =>
      problems().filter(
        (p) =>
          packFirstFit(
            p.sizes.map((lengthMm, i) => ({ key: String(i), lengthMm })),
            [],
            p.capacity,
            0,
          ).lowerBoundCount > p.best,
      ).length,
    skip: file.skip,
  },
]);
