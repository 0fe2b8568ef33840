import { existsSync, readFileSync } from 'node:fs';
import { expect, test } from '@jest/globals';

interface Promised {
  item: string;
  asks: string;
  status: string;
  tests: { file: string; title: string }[];
  remark: string;
}

const { checklist, notRun, ranAs } = (await import('../../tools/lib/checklist.mjs' as string)) as {
  checklist: () => Promised[];
  notRun: (result: { testResults: { name: string; assertionResults: { status: string; fullName: string }[] }[] }) => string[];
  ranAs: (title: string) => RegExp;
};
const rows = checklist();

test('every item of both lists stands in it once', () => {
  const wanted = ['A', 'S'].flatMap((list) => Array.from({ length: 40 }, (_, i) => `${list}${i + 1}`));
  expect(rows.map(({ item }) => item)).toEqual(wanted);
});

test('each passes by named tests, or says why not', () => {
  for (const { item, status, tests, remark, asks } of rows) {
    expect([item, ['pass', 'part', 'open', 'not applicable'].includes(status), asks !== '']).toEqual([item, true, true]);
    if (status === 'pass' || status === 'part') expect([item, tests.length > 0]).toEqual([item, true]);
    if (status !== 'pass') expect([item, remark.length > 10]).toEqual([item, true]);
  }
});

test('every named test exists where it is said to be', () => {
  const missing = rows.flatMap(({ item, tests }) =>
    tests.filter(({ file, title }) => !existsSync(file) || !readFileSync(file, 'utf8').includes(title)).map(({ file, title }) => `${item}: ${file} > ${title}`),
  );
  expect(missing).toEqual([]);
});

test('a named test that did not run, or failed, is found out after the run', () => {
  const [first] = rows.flatMap(({ tests }) => tests);
  if (!first) throw new Error('the list names no test');
  const result = (status: string) => ({
    testResults: rows
      .flatMap(({ tests }) => tests)
      .map(({ file, title }) => ({
        name: `/somewhere/${file}`,
        assertionResults: [{ fullName: `group ${title}`, status: file === first.file && title === first.title ? status : 'passed' }],
      })),
  });
  expect(notRun(result('passed'))).toEqual([]);
  expect(notRun(result('failed'))).toEqual([expect.stringContaining(first.title)]);
  expect(ranAs('a limit of %s is (not) taken').test('a limit of 0 is (not) taken')).toBe(true);
  expect(ranAs('a limit of %s').test('no limit')).toBe(false);
});
