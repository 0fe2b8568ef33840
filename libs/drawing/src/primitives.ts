import { BOLD, MEDIUM } from './glyph-widths.js';
import { TEXT_MM } from './style.js';
import type { XY } from './types.js';

export type TextClass = 'let' | 'let b' | '' | 'b' | 'small' | 'small b' | 'head';
export type Anchor = 'start' | 'middle' | 'end';

/** An axis-parallel box on paper. */
export interface Rect {
  x: number;
  y: number;
  w: number;
  h: number;
}

const round = (v: number): number => {
  if (!Number.isFinite(v)) throw new Error('a drawing has a coordinate that is not a number');
  return Math.round(v * 1000) / 1000 + 0;
};
export const num = (v: number): string => String(round(v));

/** Characters that XML forbids are dropped; the rest is escaped. */
export const escapeXml = (s: string): string =>
  [...s]
    .filter((c) => c >= ' ' || c === '\t' || c === '\n')
    .join('')
    .replace(/&/g, '&amp;')
    .replace(/</g, '&lt;')
    .replace(/>/g, '&gt;')
    .replace(/"/g, '&quot;');

const widthsOf = (table: typeof MEDIUM): ReadonlyMap<string, number> =>
  new Map(table.flatMap(([w, chars]) => [...chars].map((c) => [c, w] as const)).concat([['\u00a0', 200]]));
const WIDTHS = { medium: widthsOf(MEDIUM), bold: widthsOf(BOLD) };
/** A letter outside the table is taken as wide as a wide one, so that it can only get too much room. */
const UNKNOWN_MILLI_EM = 760;

export const textSize = (cls: TextClass): number =>
  cls.startsWith('let') ? TEXT_MM.let : cls === 'head' ? TEXT_MM.head : cls.startsWith('small') ? TEXT_MM.small : TEXT_MM.label;

/** Width in mm that the browser will give this text. */
export function textWidth(s: string, cls: TextClass = 'let'): number {
  const table = cls === 'head' || cls.endsWith('b') ? WIDTHS.bold : WIDTHS.medium;
  return ([...s].reduce((sum, c) => sum + (table.get(c) ?? UNKNOWN_MILLI_EM), 0) / 1000) * textSize(cls);
}

const CAPITAL_EM = 0.66;
export const capHeight = (cls: TextClass): number => textSize(cls) * CAPITAL_EM;

/** The box that the ink of a text can fill, before any rotation; descenders included. */
export function textRect(x: number, y: number, s: string, cls: TextClass, anchor: Anchor): Rect {
  const w = textWidth(s, cls);
  const size = textSize(cls);
  const left = anchor === 'start' ? x : anchor === 'middle' ? x - w / 2 : x - w;
  return { x: left, y: y - size * 0.72, w, h: size * 0.92 };
}

/** Box of the same text turned by 90 degrees to the left about its anchor: read from the right. */
export function turnedRect(x: number, y: number, s: string, cls: TextClass, anchor: Anchor): Rect {
  const r = textRect(0, 0, s, cls, anchor);
  return { x: x + r.y, y: y - r.x - r.w, w: r.h, h: r.w };
}

export const overlap = (a: Rect, b: Rect, clear = 0): boolean =>
  a.x < b.x + b.w + clear && b.x < a.x + a.w + clear && a.y < b.y + b.h + clear && b.y < a.y + a.h + clear;
export const inside = (a: Rect, outer: Rect): boolean =>
  a.x >= outer.x - 1e-6 && a.y >= outer.y - 1e-6 && a.x + a.w <= outer.x + outer.w + 1e-6 && a.y + a.h <= outer.y + outer.h + 1e-6;

/** Corners of a text turned about its middle foot. */
export function turnedCorners(x: number, y: number, s: string, cls: TextClass, turnDeg: number): XY[] {
  const r = textRect(0, 0, s, cls, 'middle');
  const t = (turnDeg * Math.PI) / 180;
  return (
    [
      [r.x, r.y],
      [r.x + r.w, r.y],
      [r.x + r.w, r.y + r.h],
      [r.x, r.y + r.h],
    ] as const
  ).map(([a, b]): XY => [x + a * Math.cos(t) - b * Math.sin(t), y + a * Math.sin(t) + b * Math.cos(t)]);
}

/** Do two turned boxes share ground? Separating axes of both. */
export function boxesMeet(a: readonly XY[], b: readonly XY[]): boolean {
  const apart = (p: XY | undefined, q: XY | undefined): boolean => {
    if (!p || !q) return true;
    const d: XY = [q[0] - p[0], q[1] - p[1]];
    const on = (box: readonly XY[]): number[] => box.map((c) => c[0] * d[0] + c[1] * d[1]);
    const [pa, pb] = [on(a), on(b)];
    return Math.max(...pa) <= Math.min(...pb) || Math.max(...pb) <= Math.min(...pa);
  };
  return !(apart(a[0], a[1]) || apart(a[1], a[2]) || apart(b[0], b[1]) || apart(b[1], b[2]));
}

/** Does the piece from a to b touch the box? Liang and Barsky's clipping. */
export function segmentHits(a: XY, b: XY, r: Rect): boolean {
  let t0 = 0;
  let t1 = 1;
  const d: XY = [b[0] - a[0], b[1] - a[1]];
  const edges: [number, number][] = [
    [-d[0], a[0] - r.x],
    [d[0], r.x + r.w - a[0]],
    [-d[1], a[1] - r.y],
    [d[1], r.y + r.h - a[1]],
  ];
  for (const [p, q] of edges) {
    if (p === 0) {
      if (q < 0) return false;
    } else if (p < 0) t0 = Math.max(t0, q / p);
    else t1 = Math.min(t1, q / p);
  }
  return t0 <= t1;
}

/** Do two pieces cross? Touching counts. */
export function segmentsCross(a: XY, b: XY, c: XY, d: XY): boolean {
  const side = (p: XY, q: XY, r: XY): number => (q[0] - p[0]) * (r[1] - p[1]) - (q[1] - p[1]) * (r[0] - p[0]);
  return (
    side(a, b, c) * side(a, b, d) <= 0 &&
    side(c, d, a) * side(c, d, b) <= 0 &&
    segmentHits(a, b, { x: Math.min(c[0], d[0]), y: Math.min(c[1], d[1]), w: Math.abs(c[0] - d[0]), h: Math.abs(c[1] - d[1]) })
  );
}

export interface HatchStyle {
  /** Slant of the strokes as seen on paper, counter-clockwise from level. */
  angleDeg: number;
  gapMm: number;
}
/** Bare or shut: close strokes. Under cover: wide ones with the other slant. */
export const HATCH = { close: { angleDeg: 45, gapMm: 1.1 }, wide: { angleDeg: -45, gapMm: 2.2 } } as const satisfies Record<string, HatchStyle>;

/** Parallel strokes clipped to a polygon: the only way areas are filled. Returns pieces. */
export function hatchLines(points: readonly XY[], { angleDeg, gapMm }: HatchStyle): [XY, XY][] {
  const t = (-angleDeg * Math.PI) / 180;
  const c = Math.cos(t);
  const s = Math.sin(t);
  const q = points.map(([x, y]): XY => [x * c + y * s, -x * s + y * c]);
  const ys = q.map((p) => p[1]);
  const out: [XY, XY][] = [];
  if (q.length < 3) return out;
  for (let y = Math.ceil(Math.min(...ys) / gapMm) * gapMm + 1e-4; y < Math.max(...ys); y += gapMm) {
    const xs: number[] = [];
    q.forEach(([x1, y1], i) => {
      const [x2, y2] = q[(i + 1) % q.length] ?? [x1, y1];
      if (y1 > y !== y2 > y) xs.push(x1 + ((y - y1) / (y2 - y1)) * (x2 - x1));
    });
    xs.sort((a, b) => a - b);
    for (let i = 0; i + 1 < xs.length; i += 2) {
      const from = xs[i] ?? 0;
      const to = xs[i + 1] ?? 0;
      if (to - from > 0.15)
        out.push([
          [from * c - y * s, from * s + y * c],
          [to * c - y * s, to * s + y * c],
        ]);
    }
  }
  return out;
}
