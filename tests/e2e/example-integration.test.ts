import { execFileSync, spawn } from 'node:child_process';
import { chmodSync, cpSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from '@jest/globals';
import * as mupdf from 'mupdf';

interface Product {
  apiUrl: string;
  stop: () => Promise<void>;
}
interface Run {
  code: number | null;
  out: string;
  errors: string;
}

const { startProduct } = (await import('../../tools/lib/services.mjs' as string)) as { startProduct: (o: object) => Promise<Product> };
const EXAMPLE = resolve('docs/examples');

describe('the example as a reader sees it', () => {
  const folder = mkdtempSync(join(tmpdir(), 'lathwork-example-'));
  afterAll(() => rmSync(folder, { recursive: true, force: true }));

  /** Type faults of a copy of the example, after a change to one of its files. */
  const faults = (file?: string, change: (text: string) => string = (text) => text): string[] => {
    cpSync(EXAMPLE, folder, { recursive: true });
    if (file) writeFileSync(join(folder, file), change(readFileSync(join(folder, file), 'utf8')));
    const config = JSON.parse(readFileSync(join(EXAMPLE, 'tsconfig.json'), 'utf8')) as { compilerOptions: object };
    const compilerOptions = {
      ...config.compilerOptions,
      typeRoots: [resolve('node_modules/@types')],
      paths: { '@lathwork/client': [resolve('libs/client/src/index.ts')] },
    };
    writeFileSync(join(folder, 'tsconfig.json'), JSON.stringify({ ...config, extends: resolve('tsconfig.base.json'), compilerOptions }));
    try {
      return [execFileSync(process.execPath, ['node_modules/typescript/bin/tsc', '-p', folder, '--pretty', 'false'], { encoding: 'utf8' })].filter(Boolean);
    } catch (error) {
      return (error as { stdout: string }).stdout.trim().split('\n');
    }
  };

  test('A35: its types are those of the API document', () => expect(faults()).toEqual([]));

  test('A35: a slip in what it sends or reads is a type fault', () => {
    const slips = faults('shelter.mjs', (text) => text.replace("soilClass: '4A'", 'soilClass: 4'));
    expect(slips).toEqual([expect.stringMatching(/shelter\.mjs\(\d+,\d+\): error TS2322/)]);
  });

  test('its page names every file, and every name on the page is in the files', () => {
    const page = readFileSync(join(EXAMPLE, 'README.md'), 'utf8');
    const files = readdirSync(EXAMPLE).filter((name) => name.endsWith('.mjs'));
    const code = files.map((name) => readFileSync(join(EXAMPLE, name), 'utf8')).join('\n');
    const named = [...page.matchAll(/^\|[^|]*\|(.*)\|$/gm)].flatMap((row) => [...(row[1] ?? '').matchAll(/`([\w/.-]+)`/g)].map((match) => match[1] ?? ''));
    expect(files.filter((name) => !page.includes(`\`${name}\``))).toEqual([]);
    expect(named.length).toBeGreaterThan(8);
    expect(named.filter((name) => !files.includes(name) && !code.includes(name))).toEqual([]);
  });
});

describe('the example as a reader runs it', () => {
  const folder = mkdtempSync(join(tmpdir(), 'lathwork-example-'));
  const outbox = join(folder, 'outbox');
  let product: Product;

  beforeAll(async () => {
    chmodSync(folder, 0o755);
    // Whatever this process has in its environment, the product gets too.
    const before = process.env['MAIL_DIR'];
    process.env['MAIL_DIR'] = outbox;
    product = await startProduct({ embeddedDir: join(folder, 'postgres'), durable: false });
    if (before === undefined) delete process.env['MAIL_DIR'];
    else process.env['MAIL_DIR'] = before;
  }, 120_000);

  afterAll(async () => {
    await product?.stop();
    rmSync(folder, { recursive: true, force: true });
  }, 60_000);

  const run = (email: string, file: string, env: Record<string, string> = {}): Promise<Run> =>
    new Promise((done) => {
      const child = spawn(process.execPath, ['docs/examples/plan-and-print.mjs', email, file], {
        env: { PATH: process.env['PATH'] ?? '', LATHWORK_URL: product.apiUrl, MAIL_DIR: outbox, ...env },
      });
      let [out, errors] = ['', ''];
      child.stdout.on('data', (chunk: Buffer) => (out += chunk.toString()));
      child.stderr.on('data', (chunk: Buffer) => (errors += chunk.toString()));
      child.on('close', (code) => done({ code, out, errors }));
    });

  test('A35: sign up, garden, site, structure, plan, plan book, share; and again as somebody who has an account', async () => {
    const [first, second] = [join(folder, 'first.pdf'), join(folder, 'second.pdf')];
    expect(await run('sorrel@example.org', first)).toMatchObject({ code: 0, errors: '', out: expect.stringMatching(/is shared in the garden/) });
    const mails = readdirSync(outbox).length;
    expect(await run('sorrel@example.org', second)).toMatchObject({ code: 0, errors: '' });
    // The second time nobody signs up: one mail more, to the neighbour who is invited.
    expect(readdirSync(outbox)).toHaveLength(mails + 1);
    for (const file of [first, second]) {
      const pdf = mupdf.Document.openDocument(readFileSync(file), 'application/pdf');
      const text = Array.from({ length: pdf.countPages() }, (_, i) => pdf.loadPage(i).toStructuredText('preserve-whitespace').asText().replaceAll(/\s+/g, ' '));
      expect(text.length).toBeGreaterThan(15);
      expect(text[0]).toContain('Tool Library Garden');
      expect(text[0]).toMatch(/not an engineer.s design/i);
      expect(text.join(' ')).toContain('Seedling house');
    }
  }, 180_000);

  test('a refusal is told in words, with its request, and ends with 1', async () => {
    const refused = await run('not an address', join(folder, 'none.pdf'));
    expect(refused).toMatchObject({ code: 1, out: '' });
    expect(refused.errors).toMatch(/POST \/v1\/sessions: 4\d\d .*\n {4}\/email: /);
    expect(refused.errors).toMatch(/request [\w.-]{8,64}/);
    expect(refused.errors).not.toMatch(/ {4}at /);
  });

  test('so is a server that is not there', async () => {
    const alone = await run('sorrel@example.org', join(folder, 'none.pdf'), { LATHWORK_URL: 'http://127.0.0.1:1' });
    expect(alone).toMatchObject({ code: 1, out: '', errors: expect.stringMatching(/^POST \/v1\/sessions: no answer after 1 attempt/) });
  });
});
