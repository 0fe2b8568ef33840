import { execFileSync } from 'node:child_process';
import { existsSync, readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from '@jest/globals';
import { parse } from 'yaml';

interface Compose {
  services: Record<string, { build?: { dockerfile: string }; environment?: Record<string, string>; networks?: string[] }>;
  networks: Record<string, { internal?: boolean }>;
}
const files = readdirSync('docker').filter((f) => f.endsWith('.Dockerfile'));
const compose = parse(readFileSync('docker/compose.yaml', 'utf8')) as Compose;

test.each(files)('%s passes the linter and starts a file that the build makes', (file) => {
  const report = execFileSync(process.execPath, ['node_modules/dockerfilelint/bin/dockerfilelint', '-o', 'json', join('docker', file)], { encoding: 'utf8' });
  expect((JSON.parse(report) as { totalIssues: number }).totalIssues).toBe(0);
  const text = readFileSync(join('docker', file), 'utf8');
  const script = /CMD \["node", "(.+)"\]/.exec(text)?.[1] ?? '';
  expect(existsSync(script.replace('/dist/', '/src/').replace(/\.js$/, '.ts'))).toBe(true);
  // Every workspace's package.json is copied before npm ci, or the install would differ from the lock file.
  const wanted = ['apps', 'libs'].flatMap((d) => readdirSync(d).map((n) => `${d}/${n}/package.json`));
  for (const path of wanted) expect(text).toContain(`COPY ${path} ${path}`);
  expect(text).toContain('USER node');
});

test('compose: every variable is one that an app reads, and the report app has no way out', () => {
  const known = ['apps/api/src/platform/config/config.ts', 'apps/report/src/config.ts'].map((f) => readFileSync(f, 'utf8')).join('\n');
  for (const name of ['api', 'report']) {
    for (const variable of Object.keys(compose.services[name]?.environment ?? {})) expect(known).toMatch(new RegExp(`\\b${variable}\\b`));
  }
  const nets = compose.services['report']?.networks ?? [];
  expect(nets.length).toBeGreaterThan(0);
  expect(nets.every((n) => compose.networks[n]?.internal === true)).toBe(true);
  for (const { build } of Object.values(compose.services)) if (build) expect(existsSync(build.dockerfile)).toBe(true);
});
