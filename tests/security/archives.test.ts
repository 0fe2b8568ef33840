import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import { Problem } from '../../apps/api/src/platform/problems/problem.js';
import { ARCHIVE_LIMITS, nameFault, readArchive, type ArchiveLimits } from '../../apps/api/src/platform/uploads/archive.js';
import { renamed, withField, zipOf } from '../support/archives.js';

const reasonOf = async (bytes: Buffer, limits: Partial<ArchiveLimits> = {}): Promise<string> => {
  try {
    const files = await readArchive(bytes, limits);
    return `taken: ${files.map(({ name }) => name).join(', ')}`;
  } catch (error) {
    if (!(error instanceof Problem)) throw error;
    expect(error.key).toBe('archive-refused');
    return String(error.params['reason']);
  }
};

describe('an archive that is opened', () => {
  it('S22: gives back its files to the last byte, packed or not, with folders dropped', async () => {
    const noise = Buffer.from(Array.from({ length: 5000 }, (_none, i) => (i * 7919) % 251));
    const files = await readArchive(
      await zipOf([
        ['manifest.json', '{"schema":1}'],
        ['data/sites.csv', 'name\r\nA\r\n', { compress: false }],
        ['plans/niño 🌱.bin', noise],
      ]),
    );
    expect(files.map(({ name }) => name)).toEqual(['manifest.json', 'data/sites.csv', 'plans/niño 🌱.bin']);
    expect(files[2]?.bytes.equals(noise)).toBe(true);
    expect(files[0]?.bytes.toString()).toBe('{"schema":1}');
  });

  it('S22: may hold a thousand files and not one more', async () => {
    const many = (count: number) => zipOf(Array.from({ length: count }, (_none, i) => [`f${i}`, String(i)] as const));
    expect(await readArchive(await many(ARCHIVE_LIMITS.entries))).toHaveLength(1000);
    expect(await reasonOf(await many(ARCHIVE_LIMITS.entries + 1))).toMatch(/more than 1000 files/);
  });
});

describe('an archive that is not opened', () => {
  it('S22: a bomb of one file, of many files, and of files that lie on top of each other', async () => {
    expect(await reasonOf(await zipOf([['zeros', Buffer.alloc(10_000_000)]]))).toMatch(/more than 100 to 1/);
    const near = Array.from({ length: 30 }, (_none, i) => [`z${i}`, Buffer.alloc(1_000_000)] as const);
    expect(await reasonOf(await zipOf(near))).toMatch(/100 to 1/);
    // Both entries of the table of contents point at the packed bytes of the first: much out of little.
    const two = await zipOf([
      ['one', Buffer.alloc(300, 'abcdefgh')],
      ['two', Buffer.alloc(300, 'abcdefgh')],
    ]);
    expect(await reasonOf(withField(two, 42, (entry) => entry.writeUInt32LE(0)))).toMatch(/on top of each other/);
  });

  it('S22: more bytes in all, or in one file, than the limit', async () => {
    const half = Buffer.from(Array.from({ length: 600 }, (_none, i) => (i * 31) % 256));
    expect(await reasonOf(await zipOf([['a', half]]), { entryBytes: 599 })).toMatch(/larger than 599/);
    expect(
      await reasonOf(
        await zipOf([
          ['a', half],
          ['b', half],
        ]),
        { totalBytes: 1199 },
      ),
    ).toMatch(/more than 1199/);
    expect(await reasonOf(await zipOf([['a', half]]), { entryBytes: 600, totalBytes: 600 })).toBe('taken: a');
  });

  it('S22: a size that is a lie, smaller or larger than what comes out', async () => {
    const packed = await zipOf([['liar', Buffer.alloc(3000, 'lattice and lath ')]]);
    for (const said of [10, 2999, 3001, 3500])
      expect([said, await reasonOf(withField(packed, 24, (entry) => entry.writeUInt32LE(said)))]).toEqual([said, expect.not.stringMatching(/^taken/)]);
  });

  it('S22: names that lead elsewhere: up, from the root, by drive, backwards, hidden in control characters', async () => {
    const slips: [string, string][] = [
      ['aa/etc/pass', '../etc/pass'],
      ['aaaa/pass', '/etc/pass'],
      ['ok/aa/bb', 'ok/../bb'],
      ['ok/aaa', 'ok/./a'],
      ['ok/aaa', 'ok//aa'],
      ['aabb.txt', 'C:bb.txt'],
      ['aabbcc.txt', '..\\cc.txtt'],
      ['aa\u0041bb', 'aa\u0000bb'],
      ['aa\u0041bb', 'aa\u000abb'],
      ['ok/aa', 'ok/..'],
    ].map(([from, to]) => [from ?? '', to ?? '']);
    for (const [from, to] of slips) {
      if (Buffer.byteLength(from) !== Buffer.byteLength(to)) continue;
      const archive = renamed(await zipOf([[from, 'x']]), from, to);
      expect([to, await reasonOf(archive)]).toEqual([to, expect.stringMatching(/^a name in it/)]);
    }
    expect(slips.filter(([from, to]) => Buffer.byteLength(from) === Buffer.byteLength(to)).length).toBeGreaterThanOrEqual(8);
    expect(
      await reasonOf(
        renamed(await zipOf([['caf\u00e9', 'x']]), 'caf\u00e9', 'caf\u00ff\u00ff'.slice(0, 4)).map((byte) => (byte === 0xc3 ? 0xff : byte)) as Buffer,
      ),
    ).not.toMatch(/^taken/);
  });

  it('S22: no name that is taken leads out of a folder, whatever it is made of', () => {
    const piece = fc.constantFrom('..', '.', '', 'a', 'b c', '/', '\\', 'C:', '\u0000', 'ñ', '...');
    fc.assert(
      fc.property(
        fc.array(piece, { maxLength: 6 }).map((parts) => parts.join('/')),
        (name) => {
          if (nameFault(name) !== null) return;
          const inside = new URL(encodeURI(name), 'file:///box/').pathname;
          expect(inside.startsWith('/box/')).toBe(true);
          // eslint-disable-next-line no-control-regex -- NUL is one of the characters that must not get through
          expect(name).not.toMatch(/\\|\u0000|^\/|\/\//);
        },
      ),
      { numRuns: 2000 },
    );
  });

  it('S22: links and devices', async () => {
    for (const mode of [0o120777, 0o020666, 0o060666, 0o010644, 0o140755])
      expect(await reasonOf(await zipOf([['link', '/etc/passwd', { mode }]]))).toMatch(/link or a device/);
  });

  it('S22: two files of one name, also when only their letters differ in size', async () => {
    expect(
      await reasonOf(
        await zipOf([
          ['Plan.json', '1'],
          ['plan.json', '2'],
        ]),
      ),
    ).toMatch(/same name/);
  });

  it('S22: what is encrypted, packed in an unusual way, cut off, or no ZIP', async () => {
    const plain = await zipOf([['a.txt', 'hello hello hello hello']]);
    expect(await reasonOf(withField(plain, 8, (entry) => entry.writeUInt16LE(1)))).toMatch(/encrypted/);
    expect(await reasonOf(withField(plain, 10, (entry) => entry.writeUInt16LE(14)))).toMatch(/unusual/);
    for (const cut of [0, 1, 30, plain.length - 30, plain.length - 1])
      expect([cut, await reasonOf(plain.subarray(0, cut))]).toEqual([cut, expect.not.stringMatching(/^taken/)]);
    expect(await reasonOf(Buffer.from('{"not":"a zip"}'))).toMatch(/no ZIP/);
  });

  it('S22: bytes changed at random are refused or read, and never break anything', async () => {
    const whole = await zipOf([
      ['a.txt', 'hello hello hello hello'],
      ['b/c.txt', 'more'],
    ]);
    await fc.assert(
      fc.asyncProperty(fc.array(fc.tuple(fc.nat(whole.length - 1), fc.nat(255)), { minLength: 1, maxLength: 4 }), async (changes) => {
        const broken = Buffer.from(whole);
        for (const [at, byte] of changes) broken[at] = byte;
        expect(typeof (await reasonOf(broken))).toBe('string');
      }),
      { numRuns: 300 },
    );
  });
});
