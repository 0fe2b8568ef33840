import { afterAll, beforeAll, describe, expect, test } from '@jest/globals';
import type { PDFDocument } from 'mupdf';
import type { ReportApp } from '../../apps/report/src/app.js';
import { countUnmarkedPaint } from '../../apps/report/src/print/finish/content.js';
import type { Rendered } from '../../apps/report/src/print/renderer.js';
import { inkNearEdge, inkOf, openPdf, pageTexts, reportApp, sampleRequest, structureOf } from './support.js';

const PAPERS = { a4: { w: 210, h: 297 }, letter: { w: 215.9, h: 279.4 } } as const;
const LANDSCAPE = /Build to the written sizes/;
const ACCENT = '0.61 0.17 0.06';

let app: ReportApp;
beforeAll(() => {
  app = reportApp();
});
afterAll(() => app.stop(), 30_000);

describe.each([
  ['a4', 'metric'],
  ['letter', 'us'],
] as const)('a plan book on %s in %s units', (paper, units) => {
  let made: Rendered;
  let pdf: PDFDocument;
  let texts: string[];
  beforeAll(async () => {
    made = await app.renderer.render(sampleRequest({ paper, units }));
    pdf = openPdf(made.bytes);
    texts = pageTexts(pdf);
  }, 60_000);

  test('has the pages it says it has, each of exactly this paper', () => {
    expect(pdf.countPages()).toBe(made.pages);
    expect(made.pages).toBeGreaterThan(20);
    const { w, h } = PAPERS[paper];
    texts.forEach((text, i) => {
      const [x0, y0, x1, y1] = pdf.loadPage(i).getBounds();
      const size = [(x1 - x0) * (25.4 / 72), (y1 - y0) * (25.4 / 72)];
      const want = LANDSCAPE.test(text) ? [h, w] : [w, h];
      expect(Math.abs((size[0] ?? 0) - (want[0] ?? 0))).toBeLessThan(0.2);
      expect(Math.abs((size[1] ?? 0) - (want[1] ?? 0))).toBeLessThan(0.2);
    });
    expect(texts.filter((t) => LANDSCAPE.test(t)).length).toBeGreaterThanOrEqual(3);
  });

  test('numbers every page n of N with plan number, revision, date and status line', () => {
    texts.forEach((text, i) => {
      expect(text).toContain(`Page ${i + 1} of ${made.pages}`);
      expect(text).toContain('LW-0107 rev 2, 2026-03-14');
      expect(text).toContain('Invented example: do not build from it');
    });
  });

  test('has a tape of 100 mm at the head of every page', () => {
    for (let i = 0; i < made.pages; i += 1) {
      // The two end ticks are the only upright strokes 3.7 mm long near the top of the page.
      const ticks = inkOf(pdf, i).uprights.filter((u) => Math.abs(u.lengthMm - 3.7) < 0.05 && u.topMm < 25);
      expect(ticks).toHaveLength(2);
      expect(Math.abs(Math.abs((ticks[0]?.xMm ?? 0) - (ticks[1]?.xMm ?? 0)) - 100)).toBeLessThanOrEqual(0.2);
    }
  });

  test('sets nothing under 9 pt, nothing within 10 mm of the edge, and only black, white and the one accent', () => {
    for (let i = 0; i < made.pages; i += 1) {
      const ink = inkOf(pdf, i);
      expect(ink.smallestPt).toBeGreaterThanOrEqual(8.99);
      expect(inkNearEdge(pdf, i, 10)).toBe(0);
      for (const colour of ink.colours) expect(['0.00 0.00 0.00', '1.00 1.00 1.00', '0.00', '1.00', ACCENT]).toContain(colour);
      for (const width of ink.strokeWidthsMm) expect(['0.18', '0.35', '0.70', '0.26', '0.53', '0.79']).toContain(width);
    }
  });

  test('prints no NaN, undefined, null, -0 or placeholder', () => {
    for (const text of texts) {
      expect(text).not.toMatch(/NaN|undefined|\bnull\b|Infinity|\[object|\{\w+\}/);
      // A nought with a sign; the hyphen of feet and inches (10 ft-0 in) is none.
      expect(text).not.toMatch(/(?:\u2212|(?<=^|\s)-)0(?![\d.,])/m);
    }
  });

  test('embeds every font as a subset', () => {
    let fonts = 0;
    for (let i = 1; i < pdf.countObjects(); i += 1) {
      const object = pdf.newIndirect(i).resolve();
      if (!object.isDictionary() || !object.get('Type').isName() || object.get('Type').asName() !== 'FontDescriptor') continue;
      fonts += 1;
      expect(object.get('FontFile2').isNull()).toBe(false);
      expect(object.get('FontName').asName()).toMatch(/^[A-Z]{6}\+SourceSans3/);
    }
    expect(fonts).toBeGreaterThanOrEqual(3);
  });

  test('is tagged: lists with bodies, tables with captions, figures with words, all paint marked', () => {
    const structure = structureOf(pdf);
    const of = (type: string): ReturnType<typeof structureOf> => structure.filter((s) => s.type === type);
    expect(of('H1')).toHaveLength(1);
    expect(of('H2').length).toBeGreaterThan(10);
    expect(of('Table').length).toBeGreaterThan(8);
    for (const table of of('Table')) expect(table.kids[0]).toBe('Caption');
    expect(of('LI').length).toBeGreaterThan(20);
    for (const item of of('LI')) expect(item.kids).toContain('LBody');
    const figures = of('Figure');
    expect(figures.length).toBeGreaterThan(made.pages);
    for (const figure of figures) expect((figure.alt ?? '').length).toBeGreaterThanOrEqual(5);
    for (let i = 0; i < made.pages; i += 1) expect(countUnmarkedPaint(pdf.loadPage(i).getObject().get('Contents').readStream().asString())).toBe(0);
  });

  test('carries our title, dates and language, an id, and no name of the browser', () => {
    const trailer = pdf.getTrailer();
    const info = trailer.get('Info');
    expect(info.get('Title').asString()).toMatch(/^Plan book: Gable shelter .* Plot Marigold, Clover Lane Garden$/);
    expect(info.get('CreationDate').asString()).toBe('D:20260314000000Z');
    expect(info.get('ModDate').asString()).toBe('D:20260314000000Z');
    expect(info.get('Producer').asString()).toMatch(/^Lathwork report/);
    expect(info.get('Creator').asString()).toMatch(/^Lathwork report/);
    expect(trailer.get('Root').get('Lang').asString()).toBe('en');
    expect(trailer.get('ID').length).toBe(2);
    const xmp = trailer.get('Root').get('Metadata').readStream().asString();
    expect(xmp).toContain('Plot Marigold');
    expect(xmp).not.toMatch(/chrom|skia/i);
  });

  test('has bookmarks that read like their headings', () => {
    const titles: string[] = [];
    const walk = (items: { title?: string | undefined; down?: unknown }[] | null): void => {
      for (const item of items ?? []) {
        titles.push(item.title ?? '');
        walk((item.down as typeof items) ?? null);
      }
    };
    walk(pdf.loadOutline() as Parameters<typeof walk>[0]);
    for (const wanted of ['Plan book', 'One-look sheet', 'Site and climate', 'Nights and days', 'Materials', 'Budget']) expect(titles).toContain(wanted);
  });

  test('lists each part on the page where it stands', () => {
    const cover = texts[0] ?? '';
    for (const [title, page] of [...cover.matchAll(/^(One-look sheet|Site and climate|Nights and days|Budget|Cut list|Materials)\s+(\d+)$/gm)].map(
      (m) => [m[1] ?? '', Number(m[2])] as const,
    ))
      expect(texts[page - 1]).toContain(title);
    expect(cover).toMatch(/One-look sheet\s+2/);
  });

  test('says what it is not, and uses no word that promises strength', () => {
    expect(texts[0]).toContain('not an engineer\u2019s design');
    const all = texts.join('\n');
    expect(all).toContain('no record');
    expect(all).not.toMatch(/\bis safe\b|\bare safe\b|\bOK\b|guarantee/i);
  });
});
