import { chmodSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from '@jest/globals';
import * as mupdf from 'mupdf';

interface Api {
  get: (path: string) => Promise<Record<string, unknown>>;
}
interface Product {
  apiUrl: string;
  operatorToken: string;
  stop: () => Promise<void>;
}
interface Example {
  file: string;
  garden: { name: string; currency: string };
  site: { latitudeDeg: number };
  documents: { build: string; paper: string; units: string }[];
}

// The compiled product, as `npm start` and `npm run demo` run it: two processes and an embedded database.
const { startProduct } = (await import('../../tools/lib/services.mjs' as string)) as { startProduct: (o: object) => Promise<Product> };
const { exampleGardens, loadGarden, plan, document } = (await import('../../tools/lib/example.mjs' as string)) as {
  exampleGardens: () => Example[];
  loadGarden: (url: string, token: string, example: Example) => Promise<{ key: string; api: Api; builds: { id: string; name: string }[] }>;
  plan: (api: Api, buildId: string) => Promise<{ id: string; state: string }>;
  document: (api: Api, planId: string, options: object) => Promise<{ record: { pages: number; sha256: string }; bytes: Buffer }>;
};

const database = mkdtempSync(join(tmpdir(), 'lathwork-e2e-'));
let product: Product;

beforeAll(async () => {
  chmodSync(database, 0o755);
  product = await startProduct({ embeddedDir: database, durable: false });
}, 120_000);

afterAll(async () => {
  await product?.stop();
  rmSync(database, { recursive: true, force: true });
}, 60_000);

test('from an empty database to a printed plan, twice the same file, and hidden from the neighbours', async () => {
  const [first, second] = exampleGardens() as [Example, Example];
  const mine = await loadGarden(product.apiUrl, product.operatorToken, second);
  const build = mine.builds[0] as { id: string; name: string };
  const ready = await plan(mine.api, build.id);
  const wish = second.documents.find((d) => d.build === build.name) as object;
  const [a, b] = [await document(mine.api, ready.id, wish), await document(mine.api, ready.id, wish)];

  expect(a.bytes.subarray(0, 5).toString()).toBe('%PDF-');
  expect(a.record.pages).toBeGreaterThan(15);
  expect(b.record.sha256).toBe(a.record.sha256);
  const pdf = mupdf.Document.openDocument(a.bytes, 'application/pdf');
  expect(pdf.countPages()).toBe(a.record.pages);
  const cover = pdf.loadPage(0).toStructuredText('preserve-whitespace').asText().replaceAll(/\s+/g, ' ');
  expect(cover).toContain(second.garden.name);
  expect(cover).toMatch(/not an engineer.s design/i);

  // The stored result keeps a coarse place and no names.
  const result = JSON.stringify(await mine.api.get(`/v1/plans/${ready.id}/result`));
  expect(result).not.toContain(second.garden.name);

  const neighbour = await loadGarden(product.apiUrl, product.operatorToken, { ...first, builds: [] } as Example);
  for (const path of [`/v1/plans/${ready.id}`, `/v1/builds/${build.id}`]) await expect(neighbour.api.get(path)).rejects.toThrow(/404/);
}, 180_000);
