import { spawnSync } from 'node:child_process';
import { expect, it, jest } from '@jest/globals';

jest.setTimeout(180_000);

const FILES = ['tests/unit/api/times.test.ts', 'tests/api/times.test.ts'];

it.each(['UTC', 'America/New_York', 'Asia/Kathmandu'])('A21: the tests of days and moments pass where the server stands in %s', (TZ) => {
  const { LATHWORK_TEST_DATABASE_DIR: _shared, ...env } = process.env;
  const { status, stderr } = spawnSync(
    process.execPath,
    ['--experimental-vm-modules', '--no-warnings=ExperimentalWarning', 'node_modules/jest/bin/jest.js', '--runInBand', '--runTestsByPath', ...FILES],
    { env: { ...env, TZ }, encoding: 'utf8' },
  );
  expect([status, status === 0 ? '' : stderr.slice(-3000)]).toEqual([0, '']);
  // Both files ran, and none was skipped.
  expect(stderr).toMatch(new RegExp(`Test Suites: ${FILES.length} passed, ${FILES.length} total`));
});

it('A21: the zone of a child process is really another one', () => {
  const hourIn = (TZ: string): string =>
    spawnSync(process.execPath, ['-p', 'new Date(0).getHours() + ":" + new Date(0).getMinutes()'], {
      env: { ...process.env, TZ },
      encoding: 'utf8',
    }).stdout.trim();
  expect([hourIn('UTC'), hourIn('America/New_York'), hourIn('Asia/Kathmandu')]).toEqual(['0:0', '19:0', '5:30']);
});
