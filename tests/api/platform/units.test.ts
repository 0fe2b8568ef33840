import { readFileSync } from 'node:fs';
import { Writable } from 'node:stream';
import { describe, expect, test } from '@jest/globals';
import fc from 'fast-check';
import { isWellFormedKey, makeKey, prefixOf, sameSecret, sha256 } from '../../../apps/api/src/platform/access/key.js';
import { SCOPES } from '../../../apps/api/src/platform/access/scopes.js';
import { newId } from '../../../apps/api/src/platform/database/ids.js';
import { stationRows } from '../../../apps/api/src/platform/database/seed.js';
import { alreadyHas, assertMatch } from '../../../apps/api/src/platform/http/etag.js';
import { jsonFault } from '../../../apps/api/src/platform/http/json-guard.js';
import { mergePatch } from '../../../apps/api/src/platform/http/merge-patch.js';
import { makeLog } from '../../../apps/api/src/platform/logging/log.js';
import { CATALOGUE } from '../../../apps/api/src/platform/problems/catalogue.js';
import { toProblem } from '../../../apps/api/src/platform/problems/problem.filter.js';
import { Problem } from '../../../apps/api/src/platform/problems/problem.js';

describe('keys', () => {
  test('have the form lw_ + 30 random + 6 checksum, and differ', () => {
    const keys = Array.from({ length: 2000 }, makeKey);
    for (const { key, prefix, sha256: digest } of keys) {
      expect(key).toMatch(/^lw_[0-9A-Za-z]{36}$/);
      expect([prefix, isWellFormedKey(key)]).toEqual([key.slice(0, 11), true]);
      expect(digest.equals(sha256(key))).toBe(true);
    }
    expect(new Set(keys.map(({ prefix }) => prefix)).size).toBe(2000);
  });

  // CRC-32 finds every single change of a character.
  test('any one changed character breaks the checksum', () => {
    const { key } = makeKey();
    for (let at = 3; at < key.length; at += 1) {
      const other = key[at] === 'x' ? 'y' : 'x';
      expect(isWellFormedKey(key.slice(0, at) + other + key.slice(at + 1))).toBe(false);
    }
  });

  test('the checksum is CRC-32 in base 62', () => {
    // CRC-32 by its bit-wise definition (reflected polynomial 0xEDB88320), written out apart from the library that the key uses.
    let crc = 0xffffffff;
    for (const byte of Buffer.from('0'.repeat(30))) {
      crc ^= byte;
      for (let bit = 0; bit < 8; bit += 1) crc = crc & 1 ? (crc >>> 1) ^ 0xedb88320 : crc >>> 1;
    }
    const digits = '0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz';
    let rest = (crc ^ 0xffffffff) >>> 0;
    let text = '';
    for (let at = 0; at < 6; at += 1) {
      text = digits[rest % 62] + text;
      rest = Math.floor(rest / 62);
    }
    expect(isWellFormedKey(`lw_${'0'.repeat(30)}${text}`)).toBe(true);
    expect(prefixOf(`lw_${'0'.repeat(36)}`)).toBe('lw_00000000');
  });

  test('secrets of different lengths compare without a fault', () => {
    expect([sameSecret('a', 'a'), sameSecret('a', 'ab'), sameSecret('', 'a')]).toEqual([true, false, false]);
  });
});

test('ids are UUID version 7 and sort by the time they were made', () => {
  const ids = Array.from({ length: 100_000 }, newId);
  for (const id of ids) if (!/^[0-9a-f]{8}-[0-9a-f]{4}-7[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/.test(id)) throw new Error(id);
  expect([...ids].sort()).toEqual(ids);
  expect(new Set(ids).size).toBe(100_000);
});

describe('JSON guard', () => {
  test('lets through whatever JSON.stringify makes of plain values, without raising a hand', () => {
    const names = fc
      .string({ unit: 'grapheme' })
      .filter((name) => !['__proto__', 'constructor', 'prototype'].includes(name) && !name.includes('\u0000') && !/\p{Cs}/u.test(name));
    const { tree } = fc.letrec((tie) => ({
      tree: fc.oneof(
        { depthSize: 'small' },
        fc.double({ noNaN: true, noDefaultInfinity: true }),
        fc.boolean(),
        fc.constant(null),
        names,
        fc.array(tie('tree'), { maxLength: 5 }),
        fc.dictionary(names, tie('tree'), { maxKeys: 5 }),
      ),
    }));
    fc.assert(
      fc.property(tree, (value) => jsonFault(JSON.stringify(value)) === null || JSON.stringify(value).length > 10_000),
      { numRuns: 500 },
    );
  });

  test.each([
    ['{"a":{"b":1},"a":2}', /stands twice/],
    ['[{"a":1},{"a":1}]', null],
    ['{"a":{"a":{"a":1}}}', null],
    ['{"a":"b","b":"a"}', null],
    ['{"x":"\\ud83d\\ude00"}', null],
    ['{"x":"\\ude00\\ud83d"}', /half/],
    ['-1e999', /cannot be held/],
    ['1e308', null],
    ['"tab\there"', /not closed/],
    ['{"a":"__proto__"}', null],
    ['{"\\u005f_proto__":1}', /not allowed/],
    ['['.repeat(32) + ']'.repeat(32), null],
    ['['.repeat(33) + ']'.repeat(33), /nested/],
  ])('%s', (text, wanted) => {
    const fault = jsonFault(text);
    if (wanted) expect(fault).toMatch(wanted);
    else expect(fault).toBeNull();
  });
});

/** A record shows a value that is not there as null. */
const withoutNulls = (value: unknown): unknown =>
  typeof value !== 'object' || value === null || Array.isArray(value)
    ? value
    : Object.fromEntries(Object.entries(value).flatMap(([key, inner]) => (inner === null ? [] : [[key, withoutNulls(inner)]])));

describe('merge patch', () => {
  // The table of RFC 7396, appendix A, where a value that is taken away is null here.
  test.each([
    [{ a: 'b' }, { a: 'c' }, { a: 'c' }],
    [{ a: 'b' }, { b: 'c' }, { a: 'b', b: 'c' }],
    [{ a: 'b' }, { a: null }, {}],
    [{ a: 'b', b: 'c' }, { a: null }, { b: 'c' }],
    [{ a: ['b'] }, { a: 'c' }, { a: 'c' }],
    [{ a: 'c' }, { a: ['b'] }, { a: ['b'] }],
    [{ a: { b: 'c' } }, { a: { b: 'd', c: null } }, { a: { b: 'd' } }],
    [{ a: [{ b: 'c' }] }, { a: [1] }, { a: [1] }],
    [
      ['a', 'b'],
      ['c', 'd'],
      ['c', 'd'],
    ],
    [{ a: 'b' }, ['c'], ['c']],
    [{ a: 'foo' }, null, null],
    [{ a: 'foo' }, 'bar', 'bar'],
    [{ e: null }, { a: 1 }, { e: null, a: 1 }],
    [[1, 2], { a: 'b', c: null }, { a: 'b' }],
    [{}, { a: { bb: { ccc: null } } }, { a: { bb: {} } }],
  ])('%j with %j', (target, patch, wanted) => expect(withoutNulls(mergePatch(target, patch))).toEqual(withoutNulls(wanted)));

  test('what is taken away is null', () => expect(mergePatch({ a: { b: 1, c: 2 } }, { a: { b: null }, d: null })).toEqual({ a: { b: null, c: 2 }, d: null }));

  test('twice is the same as once, and the arguments stay as they were', () => {
    fc.assert(
      fc.property(fc.dictionary(fc.string(), fc.jsonValue()), fc.dictionary(fc.string(), fc.jsonValue()), (target, patch) => {
        const before = JSON.stringify([target, patch]);
        const once = mergePatch(target, patch);
        expect(mergePatch(once, patch)).toEqual(once);
        expect(JSON.stringify([target, patch])).toBe(before);
      }),
    );
  });
});

describe('tags', () => {
  test.each([
    ['"1"', true],
    ['"2", "1"', true],
    ['*', true],
    ['W/"1"', false],
    ['"11"', false],
    ['1', false],
  ])('If-Match %s', (header, fits) => {
    const check = (): void => assertMatch(header, { version: 1 });
    if (fits) expect(check).not.toThrow();
    else expect(check).toThrow(new Problem('version-stale'));
  });

  test('If-None-Match compares weakly', () => {
    expect([alreadyHas('W/"1"', '"1"'), alreadyHas('"2"', '"1"'), alreadyHas(undefined, '"1"'), alreadyHas('*', '"1"')]).toEqual([true, false, false, true]);
  });
});

describe('problems', () => {
  test('every entry is complete, and its parameters are filled', () => {
    for (const [key, entry] of Object.entries(CATALOGUE)) {
      expect(key).toMatch(/^[a-z]+(-[a-z]+)*$/);
      expect([key, entry.status >= 400 && entry.status < 600, entry.title.length > 0, entry.remedy.length > 0]).toEqual([key, true, true, true]);
    }
    expect(new Problem('not-found', { what: 'site' }).toBody().detail).toBe('There is no site with this id in this garden.');
  });

  test('an unknown error tells nothing; a lost database is 503', () => {
    expect(JSON.stringify(toProblem(new Error('canary')).toBody())).not.toContain('canary');
    expect(toProblem(Object.assign(new Error('x'), { code: 'ECONNREFUSED' })).status).toBe(503);
    expect(toProblem(new Error('x', { cause: { originalCode: '57P01' } })).status).toBe(503);
    expect(toProblem(new Error('x')).status).toBe(500);
  });
});

test('log lines hide secrets and exact places, and no input can forge one', () => {
  const lines: string[] = [];
  const log = makeLog('info', new Writable({ write: (chunk: Buffer, _encoding, done) => (lines.push(chunk.toString()), done()) }));
  log.info(
    { headers: { authorization: 'Bearer canary' }, site: { latitudeDeg: 51.123456, secret: 'canary' }, url: 'postgresql://a:canary@h/d' },
    'one\n{"level":30,"msg":"forged"}',
  );
  log.error({ err: new Error('cannot reach postgresql://a:canary@h/d') }, 'two');
  expect(lines).toHaveLength(2);
  expect(lines.join('')).not.toMatch(/canary|51\.12/);
  for (const line of lines) expect(line.trim().split('\n')).toHaveLength(1);
});

test('a broken seed table is told by line, and nothing of it is loaded', () => {
  const lines = readFileSync('prisma/seed/stations.csv', 'utf8').trimEnd().split('\n');
  const head = lines.findIndex((line) => line.startsWith('id,'));
  const [columns = '', first = '', second = ''] = lines.slice(head, head + 3);
  expect(stationRows([columns, first, second].join('\n'))).toHaveLength(2);
  const north = second.split(',').map((field, at) => (at === 3 ? '91' : field));
  expect(() => stationRows(['# a remark', columns, first.replace(/,[^,]*$/, ''), north.join(',')].join('\n'))).toThrow(
    /^stations.csv has 2 faults\nline 3: .* fields, the header has .*\nline 4: latitude_deg is 91, outside -90 to 90$/,
  );
  expect(() => stationRows(first)).toThrow('the table has no column id');
});

test('scopes are unique', () => expect(new Set(SCOPES).size).toBe(SCOPES.length));
