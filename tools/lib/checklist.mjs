// The list of promises about the API and its security (docs/security/checklist.csv): what each asks, how it stands, and the
// tests that hold it. Read by the test of the list and, after a whole run, to see that every named test ran and passed.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parse } from 'csv-parse/sync';
import { root } from './steps.mjs';

/**
 * @typedef {{ file: string, title: string }} NamedTest
 * @typedef {{ item: string, asks: string, status: string, tests: NamedTest[], remark: string }} Promised
 * @returns {Promised[]}
 */
export const checklist = () =>
  parse(readFileSync(join(root, 'docs/security/checklist.csv'), 'utf8'), { columns: true }).map((row) => ({
    item: row.item,
    asks: row.asks,
    status: row.status,
    remark: row.remark,
    tests: row.tests
      .split('\n')
      .filter((line) => line !== '')
      .map((line) => {
        const at = line.indexOf(' > ');
        return { file: line.slice(0, at), title: line.slice(at + 3) };
      }),
  }));

const escaped = (text) => text.replaceAll(/[.*+?^${}()|[\]\\]/g, '\\$&');

/** A title as it stands in the source, with its places for values, as a pattern for titles as they ran. */
export const ranAs = (title) => new RegExp(escaped(title).replaceAll(/%[sipdj]|\\\$\w+/g, '.*'));

/** Named tests that did not run, or did not pass, in a jest result. */
export const notRun = (jestResult) => {
  const passed = jestResult.testResults.flatMap((file) =>
    file.assertionResults.filter(({ status }) => status === 'passed').map(({ fullName }) => ({ file: file.name, fullName })),
  );
  return checklist().flatMap(({ item, tests }) =>
    tests
      .filter(({ file, title }) => !passed.some((one) => one.file.endsWith(`/${file}`) && ranAs(title).test(one.fullName)))
      .map(({ file, title }) => `${item}: ${file} > ${title}`),
  );
};
