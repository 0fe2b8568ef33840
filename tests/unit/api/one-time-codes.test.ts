import { describe, expect, it } from '@jest/globals';
import { newRecoveryCodes, recoveryHash } from '../../../apps/api/src/platform/one-time-codes/recovery.js';
import { newTotpSecret, totpStep, totpUri } from '../../../apps/api/src/platform/one-time-codes/totp.js';

/** RFC 6238, appendix B, SHA-1: the ASCII secret 12345678901234567890 in base 32, and the last six of the eight digits. */
const RFC_SECRET = 'GEZDGNBVGY3TQOJQGEZDGNBVGY3TQOJQ';
const RFC_TABLE = [
  [59, '287082', 1],
  [1_111_111_109, '081804', 0x23523ec],
  [1_111_111_111, '050471', 0x23523ed],
  [1_234_567_890, '005924', 0x273ef07],
  [2_000_000_000, '279037', 0x3f940aa],
  [20_000_000_000, '353130', 0x27bc86aa],
] as const;

const at = (seconds: number): Date => new Date(seconds * 1000);

describe('codes by the clock', () => {
  it.each(RFC_TABLE)('at %d s the code of RFC 6238 is %s, of step %d', (seconds, code, step) => {
    expect(totpStep(RFC_SECRET, code, null, at(seconds))).toBe(step);
  });

  it('API2: a code is good in its own thirty seconds and five more, never before', () => {
    // The code of step 1 (30 s to 60 s).
    const good = [30, 45, 59, 60, 64];
    const bad = [0, 29, 66, 90, 120];
    for (const seconds of good) expect([seconds, totpStep(RFC_SECRET, '287082', null, at(seconds))]).toEqual([seconds, 1]);
    for (const seconds of bad) expect([seconds, totpStep(RFC_SECRET, '287082', null, at(seconds))]).toEqual([seconds, null]);
  });

  it('API2: a step that was taken, and every earlier one, is not taken again', () => {
    expect(totpStep(RFC_SECRET, '287082', 0, at(59))).toBe(1);
    expect(totpStep(RFC_SECRET, '287082', 1, at(59))).toBeNull();
    expect(totpStep(RFC_SECRET, '287082', 2, at(59))).toBeNull();
  });

  it('takes six ASCII digits and nothing else', () => {
    for (const odd of ['', '28708', '2870820', ' 287082', '287082\n', '２８７０８２', '287 082', 'abcdef', '-28708'])
      expect([odd, totpStep(RFC_SECRET, odd, null, at(59))]).toEqual([odd, null]);
  });

  it('secrets have 160 bits and differ; the address for the app names this program and the account', () => {
    const secrets = new Set(Array.from({ length: 50 }, newTotpSecret));
    expect(secrets.size).toBe(50);
    for (const secret of secrets) expect(secret).toMatch(/^[A-Z2-7]{32}$/);
    expect(totpUri(RFC_SECRET, 'a+b@example.org')).toBe(`otpauth://totp/Lathwork:a%2Bb%40example.org?secret=${RFC_SECRET}&issuer=Lathwork`);
  });
});

describe('recovery codes', () => {
  it('are ten, differ, and match their hashes however they are typed', () => {
    const { codes, hashes } = newRecoveryCodes();
    expect(new Set(codes).size).toBe(10);
    codes.forEach((code, i) => {
      expect(code).toMatch(/^[a-hjkmnp-z2-9]{4}(-[a-hjkmnp-z2-9]{4}){3}$/);
      for (const typed of [code, code.toUpperCase(), code.replaceAll('-', ''), code.replaceAll('-', ' ')])
        expect(recoveryHash(typed)?.equals(hashes[i] as Buffer)).toBe(true);
    });
    // 31 signs, sixteen of them: log2(31) * 16 bits.
    expect(Math.log2(31) * 16).toBeGreaterThan(64);
  });

  it('nothing else can be one', () => {
    for (const odd of ['', '287082', 'abcd-efgh-jkmn', 'abcd-efgh-jkmn-pqr1', 'l'.repeat(16), 'a'.repeat(10_000)])
      expect([odd.slice(0, 20), recoveryHash(odd)]).toEqual([odd.slice(0, 20), null]);
  });
});
