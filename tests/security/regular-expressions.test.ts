import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { parseQuantity } from '@lathwork/units';
import { openApiText } from '../../apps/api/src/openapi.js';
import { scrubText } from '../../apps/api/src/platform/logging/scrub.js';
import { fileNameOf } from '../../apps/api/src/platform/files/disposition.js';
import { jsonFault } from '../../apps/api/src/platform/http/json-guard.js';

interface Judged {
  at: string;
  source: string | null;
  flags: string;
  status: 'safe' | 'vulnerable' | 'unknown' | 'built';
  complexity?: string | null;
  built?: string;
}

/** Built at start from what is written in code: the first is a pattern of the document too, the others are the addresses, which are judged as such. */
const BUILT = ['apps/api/src/domains/climate/climate.dto.ts', 'apps/api/src/platform/http/raw-body.ts', 'apps/api/src/platform/http/route-table.ts'];

const folder = mkdtempSync(join(tmpdir(), 'expressions-'));
let all: Judged[] = [];

beforeAll(async () => {
  const path = join(folder, 'openapi.json');
  writeFileSync(path, await openApiText());
  const { status, stdout, stderr } = spawnSync(process.execPath, ['tools/contract/regexes.mjs', path], {
    encoding: 'utf8',
    maxBuffer: 1 << 26,
  });
  if (status !== 0) throw new Error(`the expressions were not judged: ${stderr.slice(0, 2000)}`);
  all = JSON.parse(stdout) as Judged[];
}, 300_000);
afterAll(() => rmSync(folder, { recursive: true }));

describe('regular expressions', () => {
  it('S25: every one in the source, every pattern of the description and every address is judged safe', () => {
    const found = all.filter(({ status }) => status !== 'safe' && status !== 'built');
    expect(found.map(({ at, source, status, complexity }) => `${at} ${status} ${complexity ?? ''} /${source}/`)).toEqual([]);
    expect(all.filter(({ at }) => at.startsWith('apps/') || at.startsWith('libs/')).length).toBeGreaterThan(200);
    expect(all.filter(({ at }) => at.startsWith('#')).length).toBeGreaterThan(20);
  });

  it('S25: what is built at run time is built from what stands in the code', () => {
    expect(all.filter(({ status }) => status === 'built').map(({ at }) => at.replace(/:\d+$/, ''))).toEqual(BUILT);
  });

  it('S25: the judge really judges', () => {
    const path = join(folder, 'evil.json');
    writeFileSync(path, JSON.stringify({ paths: {}, pattern: '^(a+)+$' }));
    const { stdout } = spawnSync(process.execPath, ['tools/contract/regexes.mjs', path], {
      encoding: 'utf8',
    });
    expect((JSON.parse(stdout) as Judged[]).find(({ at }) => at === '#/pattern')?.status).toBe('vulnerable');
  }, 300_000);

  const LONG = 100_000;
  const NASTY: [string, (text: string) => unknown][] = [
    ['a typed quantity', (text) => parseQuantity('m', text)],
    ['a line of the log', (text) => scrubText(text)],
    ['a file name', (text) => fileNameOf(text, 'pdf')],
    ['a body', (text) => jsonFault(`{"a":${JSON.stringify(text)}}`)],
  ];
  it.each(NASTY)('S25: %s of 100 kB takes no time, whatever it repeats', (_what, read) => {
    const repeats = ['1', '1,', '1 ', "1'", '.', ' ', '1/', 'a@', 'a.', '//', 'x', '\u00bd', '-', 'https://a:'];
    const slow = repeats.flatMap((part) => {
      const text = `${part.repeat(LONG / part.length)}!`;
      const started = performance.now();
      read(text);
      const ms = performance.now() - started;
      // The standard asks for 50 ms on an idle machine; a busy one gets more, and a quadratic search would take minutes.
      return ms < 500 ? [] : [`${part}: ${Math.round(ms)} ms`];
    });
    expect(slow).toEqual([]);
  });
});
