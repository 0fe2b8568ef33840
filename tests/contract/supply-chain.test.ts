import { existsSync, readFileSync } from 'node:fs';
import { describe, expect, it } from '@jest/globals';

interface Locked {
  version?: string;
  resolved?: string;
  integrity?: string;
  hasInstallScript?: boolean;
  link?: boolean;
  license?: string;
  dev?: boolean;
}

const { packagesText } = (await import('../../tools/licences.mjs' as string)) as { packagesText: () => string };
const json = <T>(path: string): T => JSON.parse(readFileSync(path, 'utf8')) as T;
const locked = Object.entries(json<{ packages: Record<string, Locked> }>('package-lock.json').packages).filter(
  ([path, { link }]) => path.includes('node_modules/') && !link,
);
const nameOf = (path: string): string => path.slice(path.lastIndexOf('node_modules/') + 13);

describe('S40: what the product is made of', () => {
  it('S40: every package is pinned with its version and its hash', () => {
    expect(locked.length).toBeGreaterThan(500);
    expect(locked.filter(([, { version, integrity }]) => !version || !integrity?.startsWith('sha512-')).map(([path]) => path)).toEqual([]);
    for (const file of ['package.json', 'apps/api/package.json', 'apps/report/package.json', 'libs/client/package.json']) {
      const { dependencies = {}, devDependencies = {} } = json<Record<string, Record<string, string>>>(file);
      for (const [name, version] of Object.entries({ ...dependencies, ...devDependencies }))
        expect([file, name, /^\d/.test(version)]).toEqual([file, name, true]);
    }
  });

  it('S40: no install script runs', () => {
    expect(readFileSync('.npmrc', 'utf8')).toMatch(/^ignore-scripts=true$/m);
    expect(Object.values(json<{ allowScripts: Record<string, boolean> }>('package.json').allowScripts).filter(Boolean)).toEqual([]);
  });

  it('S40: the list of packages and licences is that of the lock file, and none of the product asks for more than notice', () => {
    expect(readFileSync('docs/security/packages.csv', 'utf8')).toBe(packagesText());
    const shares = locked.filter(([, { license, dev }]) => !dev && /\b(A?GPL|SSPL|BUSL)/.test((license ?? '').replaceAll('LGPL', '')));
    expect(shares.map(([path]) => nameOf(path))).toEqual([]);
  });

  it('S40: the browser that prints is a pinned package, and says its version with every document', () => {
    expect(readFileSync('apps/report/package.json', 'utf8')).toMatch(/"@sparticuz\/chromium": "\d+\.\d+\.\d+"/);
    expect(readFileSync('prisma/schema.prisma', 'utf8')).toMatch(/engineVersion +String\? +@map\("engine_version"\)/);
  });

  it('S40: the policy, the threat model and the accepted risks are there, and their links lead somewhere', () => {
    for (const file of ['SECURITY.md', 'docs/security/threat-model.md', 'docs/security/accepted-risks.md']) {
      const text = readFileSync(file, 'utf8');
      const folder = file.includes('/') ? file.slice(0, file.lastIndexOf('/')) : '.';
      for (const [, link = ''] of text.matchAll(/\]\(([^)]+)\)/g)) expect([file, link, existsSync(`${folder}/${link}`)]).toEqual([file, link, true]);
    }
    const policy = readFileSync('SECURITY.md', 'utf8');
    for (const figure of ['72 hours', '7 days', '30 (high)', '90 (moderate)', '180 (low)']) expect(policy).toContain(figure);
  });
});
