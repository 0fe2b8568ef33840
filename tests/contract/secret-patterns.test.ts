import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { expect, it } from '@jest/globals';
import { isSessionToken, isWellFormedKey, makeKey, makeSessionToken } from '../../apps/api/src/platform/access/key.js';

const { patterns } = JSON.parse(readFileSync('docs/security/secret-patterns.json', 'utf8')) as { patterns: { name: string; regex: string }[] };

const found = (text: string): string[] => patterns.flatMap(({ regex }) => text.match(new RegExp(regex, 'g')) ?? []);

/** A chance match has no right checksum. */
const real = (text: string): string[] => found(text).filter((one) => isWellFormedKey(one) || isSessionToken(one));

it('S15: the patterns for secret scanners find every key and token, once each', () => {
  for (let i = 0; i < 20; i += 1)
    for (const { key } of [makeKey(), makeSessionToken()]) {
      expect(found(`Authorization: Bearer ${key}\n`)).toEqual([key]);
      expect(found(`url?key=${key}&x`)).toEqual([key]);
      expect(found(`"${key}x"`)).toEqual([]);
    }
});

it('S15: no tracked file holds a real key or token', () => {
  const { stdout } = spawnSync('git', ['ls-files', '-z'], { encoding: 'utf8', maxBuffer: 1 << 26 });
  const files = stdout.split('\0').filter((name) => name !== '' && !/\.(png|jpg|pdf|woff2?|ttf|gz|br)$/.test(name));
  expect(files.length).toBeGreaterThan(200);
  const holding = files.filter((name) => {
    try {
      return real(readFileSync(name, 'utf8')).length > 0;
    } catch {
      // Removed in the working tree, and so not there to be read.
      return false;
    }
  });
  expect(holding).toEqual([]);
});
