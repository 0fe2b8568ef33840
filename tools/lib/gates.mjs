// The gates that are not tests, and the test run, in one place: npm test and npm run check both use them.
import { spawn } from 'node:child_process';
import { mkdirSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { root } from './steps.mjs';

export const gates = [
  ['format', ['node_modules/prettier/bin/prettier.cjs', '--check', '.', '--log-level', 'warn']],
  ['lint', ['node_modules/eslint/bin/eslint.js', '.', '--max-warnings', '0']],
  [
    'dependency rules',
    ['node_modules/dependency-cruiser/bin/dependency-cruise.mjs', '--config', '.dependency-cruiser.mjs', 'apps', 'libs', 'prisma', 'tests', 'tools', 'docs'],
  ],
  ['type check of the examples', ['node_modules/typescript/bin/tsc', '-p', 'docs/examples']],
  ['type check of the tests', ['node_modules/typescript/bin/tsc', '-p', 'tests', '--noEmit']],
];

/** Runs jest on these folders (all when none is named), showing its output, and counts what passed and failed. */
export function jest(folders, env = {}) {
  const report = join(root, '.data', 'jest-result.json');
  mkdirSync(join(root, '.data'), { recursive: true });
  rmSync(report, { force: true });
  return new Promise((resolve) => {
    const child = spawn(
      process.execPath,
      [
        '--experimental-vm-modules',
        '--no-warnings=ExperimentalWarning',
        'node_modules/jest/bin/jest.js',
        ...folders,
        '--json',
        `--outputFile=${report}`,
        '--maxWorkers=2',
      ],
      {
        cwd: root,
        env: { ...process.env, ...env },
        stdio: ['ignore', 'ignore', 'inherit'],
      },
    );
    child.on('close', () => {
      let counted;
      try {
        counted = JSON.parse(readFileSync(report, 'utf8'));
      } catch {
        return resolve({ passed: 0, failed: 1, skipped: 0, skippedTitles: [] });
      }
      const all = counted.testResults.flatMap((f) => f.assertionResults);
      resolve({
        passed: counted.numPassedTests,
        // A file that did not even load holds no failed test, and is a failure all the same.
        failed: counted.numFailedTests + counted.testResults.filter((f) => f.status === 'failed' && f.assertionResults.length === 0).length,
        skipped: counted.numPendingTests,
        skippedTitles: all.filter((t) => t.status === 'pending').map((t) => t.fullName),
      });
    });
  });
}
