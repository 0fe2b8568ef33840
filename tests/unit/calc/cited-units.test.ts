import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from '@jest/globals';
import { unitOfName } from '@lathwork/units';

const ROOT = join(process.cwd(), 'libs', 'calc', 'src');
const files = readdirSync(ROOT, { recursive: true, encoding: 'utf8' }).filter(
  (f) => f.endsWith('.ts') && !f.includes('bibliography') && !f.endsWith('cite.ts'),
);

/** `LAPSE_K_PER_M` says its unit as `lapseKPerM` does. */
const asField = (name: string): string =>
  /^[A-Z0-9_]+$/.test(name)
    ? name
        .toLowerCase()
        .split('_')
        .map((w, i) => (i === 0 ? w : w.charAt(0).toUpperCase() + w.slice(1)))
        .join('')
    : name;

interface Cited {
  file: string;
  name: string;
  unit: string;
  where: string;
}

const cites: Cited[] = files.flatMap((file) =>
  [...readFileSync(join(ROOT, file), 'utf8').matchAll(/(\w+)(?: =|:)\s+cited\(\s*[^']+?,\s*'([^']+)',\s*'[A-Z0-9-]+',\s*(?:'([^']*)'|`([^`]*)`)/g)].map(
    (m) => ({
      file,
      name: m[1] ?? '',
      unit: m[2] ?? '',
      where: m[3] ?? m[4] ?? '',
    }),
  ),
);

describe('constants say the unit they are in', () => {
  test('a name that carries a unit carries the one that is cited', () => {
    expect(cites.length).toBeGreaterThan(120);
    const named = cites.filter((c) => unitOfName(asField(c.name)) !== undefined);
    expect(named.length).toBeGreaterThan(60);
    expect(named.filter((c) => unitOfName(asField(c.name)) !== c.unit)).toEqual([]);
  });

  test('no pure number whose text says it has a unit', () => {
    const numbers = cites.filter((c) => c.unit === '1');
    expect(numbers.length).toBeGreaterThan(60);
    expect(numbers.filter((c) => /\bm2 K\/W|\bper metre|\bper litre|\bW per\b|\bkelvin\b|\bpcf\b|psf\/ft|\bper ft\b/.test(c.where))).toEqual([]);
  });

  test('the check would notice', () => {
    expect(unitOfName(asField('LAPSE_K_PER_M'))).toBe('K/m');
    expect(unitOfName(asField('GAP_M2_K_PER_W'))).toBe('m2.K/W');
    expect(unitOfName('storeJPerM2K')).toBe('J/(m2.K)');
  });
});
