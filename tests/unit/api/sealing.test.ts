import { mkdtempSync, readFileSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from '@jest/globals';
import type { Config } from '../../../apps/api/src/platform/config/config.js';
import { Sealer } from '../../../apps/api/src/platform/sealing/sealer.js';

const withSecret = (accountSecret: string | null, dataDir = '/nowhere'): Sealer => new Sealer({ accountSecret, dataDir } as Config);

const SECRET = 'a secret of at least thirty-two characters';

describe('sealing', () => {
  const sealer = withSecret(SECRET);

  it('opens with the same secret, purpose and row only', () => {
    const sealed = sealer.seal('mail', 'row 1', 'Hello Sörrel');
    expect(sealer.open('mail', 'row 1', sealed)).toBe('Hello Sörrel');
    expect(withSecret(SECRET).open('mail', 'row 1', sealed)).toBe('Hello Sörrel');
    expect(() => sealer.open('mail', 'row 2', sealed)).toThrow();
    expect(() => sealer.open('second factor', 'row 1', sealed)).toThrow();
    expect(() => withSecret(`${SECRET}!`).open('mail', 'row 1', sealed)).toThrow();
  });

  it('notices every changed or missing byte', () => {
    const sealed = sealer.seal('mail', 'row 1', 'Hello');
    for (let i = 0; i < sealed.length; i += 1) {
      const changed = Buffer.from(sealed);
      changed.writeUInt8((sealed[i] as number) ^ 1, i);
      expect(() => sealer.open('mail', 'row 1', changed)).toThrow();
      expect(() => sealer.open('mail', 'row 1', sealed.subarray(0, i))).toThrow();
    }
  });

  it('never gives the same bytes twice, and nothing of the text', () => {
    const [one, two] = [sealer.seal('mail', 'row 1', 'Hello Sorrel'), sealer.seal('mail', 'row 1', 'Hello Sorrel')];
    expect(one.equals(two)).toBe(false);
    expect(one.toString('latin1')).not.toContain('Sorrel');
  });

  it('without a secret keeps one in the data folder, for this account alone', () => {
    const dir = mkdtempSync(join(tmpdir(), 'lathwork-sealing-'));
    try {
      const sealed = withSecret(null, dir).seal('mail', 'row 1', 'Hello');
      expect(withSecret(null, dir).open('mail', 'row 1', sealed)).toBe('Hello');
      const file = join(dir, 'account-secret');
      expect(statSync(file).mode & 0o777).toBe(0o600);
      expect(readFileSync(file, 'utf8').length).toBeGreaterThanOrEqual(43);
    } finally {
      rmSync(dir, { recursive: true, force: true });
    }
  });
});
