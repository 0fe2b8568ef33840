import { spawn } from 'node:child_process';
import { chmodSync, mkdirSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from '@jest/globals';
import * as mupdf from 'mupdf';

interface Product {
  apiUrl: string;
  operatorToken: string;
  stop: () => Promise<void>;
}

const { startProduct } = (await import('../../tools/lib/services.mjs' as string)) as { startProduct: (o: object) => Promise<Product> };
const { exampleGardens, loadGarden } = (await import('../../tools/lib/example.mjs' as string)) as {
  exampleGardens: () => [unknown];
  loadGarden: (url: string, token: string, example: unknown) => Promise<{ key: string }>;
};

const PAGE = readFileSync('docs/api/README.md', 'utf8');
const SERVED = 'http://127.0.0.1:8080';

/** The commands of the page that belong together, in their order, as they stand. */
const commands = (name: string): string =>
  [...PAGE.matchAll(/<!-- run: (\w+) -->\n```sh\n([\s\S]*?)```/g)].flatMap((match) => (match[1] === name ? [match[2] ?? ''] : [])).join('\n');

describe('docs/api/README.md as a reader follows it', () => {
  const folder = mkdtempSync(join(tmpdir(), 'lathwork-way-in-'));
  let product: Product;

  beforeAll(async () => {
    // A folder that looks like the project: its documents, and a data folder of its own.
    chmodSync(folder, 0o755);
    symlinkSync(resolve('docs'), join(folder, 'docs'));
    mkdirSync(join(folder, '.data'));
    const before = process.env['MAIL_DIR'];
    process.env['MAIL_DIR'] = join(folder, '.data', 'outbox');
    product = await startProduct({ embeddedDir: join(folder, 'postgres'), durable: false });
    if (before === undefined) delete process.env['MAIL_DIR'];
    else process.env['MAIL_DIR'] = before;
    const { key } = await loadGarden(product.apiUrl, product.operatorToken, exampleGardens()[0]);
    writeFileSync(join(folder, '.data', 'demo-key'), key);
  }, 180_000);

  afterAll(async () => {
    await product?.stop();
    rmSync(folder, { recursive: true, force: true });
  }, 60_000);

  const run = (name: string): Promise<{ code: number | null; out: string; errors: string }> =>
    new Promise((done) => {
      const script = commands(name).replaceAll(SERVED, product.apiUrl);
      const child = spawn('sh', ['-eu', '-c', script], { cwd: folder, env: { PATH: process.env['PATH'] ?? '', HOME: folder } });
      let [out, errors] = ['', ''];
      child.stdout.on('data', (chunk: Buffer) => (out += chunk.toString()));
      child.stderr.on('data', (chunk: Buffer) => (errors += chunk.toString()));
      child.on('close', (code) => done({ code, out, errors }));
    });

  test('every command of the page is run', () => {
    expect(PAGE.match(/^```sh$/gm)).toHaveLength(PAGE.match(/^<!-- run: (demo|garden) -->\n```sh$/gm)?.length ?? 0);
    expect([commands('demo'), commands('garden')].every((text) => text.includes(SERVED))).toBe(true);
  });

  test('A35: five minutes: a plan of the demo garden', async () => {
    expect(await run('demo')).toEqual({ code: 0, errors: '', out: 'ready\n' });
  }, 120_000);

  test('A35: an hour: account, garden, site, pile, structure, build, plan, plan book, key', async () => {
    const { code, out, errors } = await run('garden');
    expect({ code, errors }).toEqual({ code: 0, errors: '' });
    expect(out).toMatch(/EX-1\nEX-2\nEX-3\nEX-4\n/);
    expect(out.trimEnd().split('\n').at(-1)).toBe('ready');
    const pdf = mupdf.Document.openDocument(readFileSync(join(folder, 'out', 'plan-book.pdf')), 'application/pdf');
    expect(pdf.countPages()).toBeGreaterThan(15);
    expect(pdf.loadPage(0).toStructuredText('preserve-whitespace').asText().replaceAll(/\s+/g, ' ')).toContain('Behind the tool library');
  }, 180_000);

  test('its links lead somewhere', () => {
    const anchors = [...PAGE.matchAll(/^#+ (.*)$/gm)].map((match) =>
      (match[1] ?? '')
        .toLowerCase()
        .replaceAll(/[^\w\s-]/g, '')
        .replaceAll(' ', '-'),
    );
    const targets = [...PAGE.matchAll(/\]\(([^)]+)\)/g)].map((match) => match[1] ?? '');
    const broken = targets.filter((target) => {
      if (target.startsWith('#')) return !anchors.includes(target.slice(1));
      try {
        return readFileSync(join('docs/api', target)).length === 0;
      } catch {
        return true;
      }
    });
    expect(targets.length).toBeGreaterThan(10);
    expect(broken).toEqual([]);
  });
});
