// npm run licences: writes docs/security/packages.csv, the packages of the lock file with version and licence.
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { root } from './lib/steps.mjs';

const PATH = 'docs/security/packages.csv';
const cell = (text) => (/[",\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text);

/** Name, version, licence and use of every package that the lock file can install, each once, in order. */
export const packagesText = () => {
  const { packages } = JSON.parse(readFileSync(join(root, 'package-lock.json'), 'utf8'));
  const rows = Object.entries(packages)
    .filter(([path, { link }]) => path.includes('node_modules/') && !link)
    .map(([path, { version, license, dev }]) => [
      path.slice(path.lastIndexOf('node_modules/') + 13),
      version,
      license ?? 'not stated',
      dev ? 'tests and tools' : 'product',
    ]);
  const lines = [...new Set(rows.map((row) => row.map(cell).join(',')))].sort();
  return ['package,version,licence,use', ...lines, ''].join('\n');
};

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  writeFileSync(join(root, PATH), packagesText());
  console.log(`wrote ${PATH}`);
}
