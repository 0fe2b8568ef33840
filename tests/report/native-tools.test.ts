import { execFileSync, spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from '@jest/globals';
import type { ReportApp } from '../../apps/report/src/app.js';
import { checkRequest } from '../../apps/report/src/http/validate.js';
import { reportApp, sampleRequest } from './support.js';

// The extra leg: the same PDF through other people's readers, where the machine has them. A tool that is not there is
// said aloud in the test's title, never passed over in silence.
const has = (tool: string): boolean => spawnSync('which', [tool]).status === 0;
const withTool = (tool: string, title: string, check: () => void): void => {
  if (has(tool)) test(`${tool}: ${title}`, check);
  else test.skip(`${tool} is not on this machine: ${title}`, () => undefined);
};

const folder = mkdtempSync(join(tmpdir(), 'lathwork-native-'));
const file = join(folder, 'book.pdf');
let app: ReportApp;
let pages = 0;

beforeAll(async () => {
  app = reportApp();
  const checked = checkRequest(JSON.parse(JSON.stringify(sampleRequest())) as unknown);
  if (!checked.ok) throw new Error('the sample request is not valid');
  const made = await app.renderer.render(checked.request);
  pages = made.pages;
  writeFileSync(file, made.bytes);
}, 120_000);
afterAll(async () => {
  await app.stop();
  rmSync(folder, { recursive: true, force: true });
}, 30_000);

const out = (tool: string, ...args: string[]): string => execFileSync(tool, args, { encoding: 'utf8', maxBuffer: 1 << 26 });

withTool('qpdf', 'the file has no syntax or stream errors', () => {
  expect(out('qpdf', '--check', file)).toContain('No syntax or stream encoding errors found');
});
withTool('pdfinfo', 'tagged, titled, with the pages that were counted, and no form or script', () => {
  const info = out('pdfinfo', file);
  expect(info).toMatch(/Tagged:\s+yes/);
  expect(info).toMatch(new RegExp(`Pages:\\s+${pages}\\b`));
  expect(info).toMatch(/JavaScript:\s+no/);
  expect(info).toMatch(/Form:\s+none/);
});
withTool('pdffonts', 'every font is embedded, subset and has a way back to text', () => {
  const rows = out('pdffonts', file).trim().split('\n').slice(2);
  expect(rows.length).toBeGreaterThan(0);
  for (const row of rows) expect(row).toMatch(/\byes\s+yes\s+yes\s+\d+\s+\d+\s*$/);
});
withTool('pdftotext', 'the last page says its number', () => {
  expect(out('pdftotext', '-f', String(pages), '-l', String(pages), file, '-')).toContain(`Page ${pages} of ${pages}`);
});
