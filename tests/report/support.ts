import * as mupdf from 'mupdf';
import type { DocumentRequest, PlanInputs, PlanResult } from '@lathwork/model';
import { createApp, type ReportApp } from '../../apps/report/src/app.js';
import { readConfig } from '../../apps/report/src/config.js';
import { sampleInputs } from '../support/sample-inputs.js';
import { sampleResult } from '../support/sample-result.js';

export const SECRET = 'a-secret-for-tests-only';

export const reportApp = (extra: Record<string, string> = {}): ReportApp =>
  createApp(readConfig({ ...process.env, REPORT_SECRET: SECRET, REPORT_PORT: '0', ...extra }), () => undefined);

export interface RequestChanges {
  paper?: 'a4' | 'letter';
  units?: 'metric' | 'us';
  names?: Partial<DocumentRequest['names']>;
  datedOn?: string;
  inputs?: PlanInputs;
  result?: PlanResult;
}

/** A whole request made from the hand-made plan. */
export function sampleRequest(changes: RequestChanges = {}): DocumentRequest {
  const inputs = changes.inputs ?? sampleInputs();
  return {
    options: { kind: 'planBook', language: 'en', paper: changes.paper ?? 'a4', units: changes.units ?? 'metric' },
    names: {
      garden: 'Clover Lane Garden',
      build: 'Plot Marigold',
      site: 'Clover Lane, east end',
      drawnBy: 'Plan service',
      checkedBy: null,
      invented: true,
      ...changes.names,
    },
    planNumber: 'LW-0107',
    datedOn: changes.datedOn ?? '2026-03-14',
    status: 'draft',
    stale: [],
    inputs,
    result: changes.result ?? sampleResult(inputs),
  };
}

export const openPdf = (bytes: Uint8Array): mupdf.PDFDocument => mupdf.Document.openDocument(bytes, 'application/pdf') as mupdf.PDFDocument;

export const pageTexts = (document: mupdf.Document): string[] =>
  Array.from({ length: document.countPages() }, (_, i) => document.loadPage(i).toStructuredText('preserve-whitespace').asText());

const MM_PER_PT = 25.4 / 72;

export interface PageInk {
  smallestPt: number;
  /** Upright strokes: where they stand and how long they are, mm. */
  uprights: { xMm: number; topMm: number; lengthMm: number }[];
  strokeWidthsMm: Set<string>;
  colours: Set<string>;
}

type Matrix = [number, number, number, number, number, number];
const apply = (m: Matrix, x: number, y: number): [number, number] => [m[0] * x + m[2] * y + m[4], m[1] * x + m[3] * y + m[5]];

/** What the page draws, read by walking its drawing commands in an independent PDF library. */
export function inkOf(document: mupdf.Document, index: number): PageInk {
  const ink: PageInk = { smallestPt: Infinity, uprights: [], strokeWidthsMm: new Set(), colours: new Set() };
  const noteColour = (colour: number[]): void => void ink.colours.add(colour.map((c) => c.toFixed(2)).join(' '));
  const device = new mupdf.Device({
    fillText(text: mupdf.Text, ctm: mupdf.Matrix, _space: mupdf.ColorSpace, colour: number[]) {
      noteColour(colour);
      const m = ctm as Matrix;
      text.walk({
        showGlyph(_font: mupdf.Font, trm: mupdf.Matrix, _glyph: number, unicode: number) {
          const t = trm as Matrix;
          if (unicode > 32) ink.smallestPt = Math.min(ink.smallestPt, Math.hypot(t[2], t[3]) * Math.hypot(m[2], m[3]));
        },
      });
    },
    strokePath(path: mupdf.Path, stroke: mupdf.StrokeState, ctm: mupdf.Matrix, _space: mupdf.ColorSpace, colour: number[]) {
      noteColour(colour);
      const m = ctm as Matrix;
      ink.strokeWidthsMm.add((stroke.getLineWidth() * Math.hypot(m[0], m[1]) * MM_PER_PT).toFixed(2));
      let from: [number, number] = [0, 0];
      path.walk({
        moveTo(x: number, y: number) {
          from = apply(m, x, y);
        },
        lineTo(x: number, y: number) {
          const to = apply(m, x, y);
          if (Math.abs(to[0] - from[0]) < 0.01)
            ink.uprights.push({ xMm: to[0] * MM_PER_PT, topMm: Math.min(from[1], to[1]) * MM_PER_PT, lengthMm: Math.abs(to[1] - from[1]) * MM_PER_PT });
          from = to;
        },
      });
    },
    fillPath(_path: mupdf.Path, _evenOdd: boolean, _ctm: mupdf.Matrix, _space: mupdf.ColorSpace, colour: number[]) {
      noteColour(colour);
    },
  });
  document.loadPage(index).run(device, mupdf.Matrix.identity);
  device.close();
  return ink;
}

/** Dark pixels nearer to the paper's edge than this. */
export function inkNearEdge(document: mupdf.Document, index: number, edgeMm: number): number {
  const pixelsPerMm = 4;
  const scale = pixelsPerMm * MM_PER_PT;
  const pixmap = document.loadPage(index).toPixmap(mupdf.Matrix.scale(scale, scale), mupdf.ColorSpace.DeviceGray);
  const [w, h, stride, pixels] = [pixmap.getWidth(), pixmap.getHeight(), pixmap.getStride(), pixmap.getPixels()];
  const edge = edgeMm * pixelsPerMm;
  let dark = 0;
  for (let y = 0; y < h; y += 1)
    for (let x = 0; x < w; x += 1) if ((x < edge || y < edge || x >= w - edge || y >= h - edge) && (pixels[y * stride + x] ?? 255) < 200) dark += 1;
  return dark;
}

/** Structure element types of a finished file, with their children's types. */
export function structureOf(document: mupdf.PDFDocument): { type: string; kids: string[]; alt: string | null }[] {
  const out: { type: string; kids: string[]; alt: string | null }[] = [];
  const typeOf = (o: mupdf.PDFObject): string | null => (o.isDictionary() && o.get('S').isName() ? o.get('S').asName() : null);
  const kidsOf = (o: mupdf.PDFObject): mupdf.PDFObject[] => {
    const k = o.get('K');
    if (k.isNull()) return [];
    return k.isArray() ? Array.from({ length: k.length }, (_, i) => k.get(i)) : [k];
  };
  const walk = (o: mupdf.PDFObject): void => {
    const type = typeOf(o);
    if (type === null) return;
    const alt = o.get('Alt');
    out.push({ type, kids: kidsOf(o).map((k) => typeOf(k) ?? '#'), alt: alt.isString() ? alt.asString() : null });
    for (const kid of kidsOf(o)) walk(kid);
  };
  for (const kid of kidsOf(document.getTrailer().get('Root').get('StructTreeRoot'))) walk(kid);
  return out;
}
