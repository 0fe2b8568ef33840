import {
  boxesMeet,
  escapeXml,
  hatchLines,
  num,
  overlap,
  textRect,
  textSize,
  turnedCorners,
  turnedRect,
  type Anchor,
  type HatchStyle,
  type Rect,
  type TextClass,
} from './primitives.js';
import { DoesNotFitError, LINE_TYPES, type Drawing, type Fit, type LineType, type Scale, type XY } from './types.js';

/** Classes that are drawn with a line type; `face` and `tag` are outlines filled with paper white. */
export type Stroke = LineType | 'tick' | 'face' | 'facethin' | 'facecut' | 'tag' | 'box' | 'box solid' | 'poche' | 'dot' | 'solid' | 'blank';
const TYPE_OF: Partial<Record<Stroke, LineType>> = { tick: 'vis', face: 'vis', facethin: 'thin', facecut: 'cut', tag: 'vis', box: 'thin', 'box solid': 'thin' };
const isLineType = (s: string): s is LineType => (LINE_TYPES as readonly string[]).includes(s);

interface Lettering {
  x: number;
  y: number;
  s: string;
  cls: TextClass;
  anchor: Anchor;
  turnDeg: number;
}

type Given = { unplaced: readonly string[]; fit: Fit };

/** Corners of what a text inks: capitals above its foot, brackets below, turned as the text is. */
function inkCorners({ x, y, s, cls, anchor, turnDeg }: Lettering): XY[] {
  const { x: left, w } = textRect(0, 0, s, cls, anchor);
  const [top, foot] = [-INK_EM.above * textSize(cls), INK_EM.below * textSize(cls)];
  const t = (turnDeg * Math.PI) / 180;
  const at = (a: number, b: number): XY => [x + a * Math.cos(t) - b * Math.sin(t), y + a * Math.sin(t) + b * Math.cos(t)];
  return [at(left + HAIR_MM, top), at(left + w - HAIR_MM, top), at(left + w - HAIR_MM, foot), at(left + HAIR_MM, foot)];
}
/** Letters that only touch do not lie over each other. */
const HAIR_MM = 0.015;
const INK_EM = { above: 0.68, below: 0.15 };

/**
 * A sheet of paper that is being drawn on. It remembers where letters and marks stand and where lines run, so that
 * what is placed later can keep clear of them.
 */
export class Plate {
  private readonly body: string[] = [];
  private readonly late: string[] = [];
  private readonly used = new Set<LineType>();
  /** Boxes that no letter may enter: letters, marks, small signs. */
  readonly taken: Rect[] = [];
  /** Joints, feet and anchors: a mark keeps off them while it can. */
  readonly avoided: Rect[] = [];
  /** Lines that a mark should rather not cover, and leaders that no leader may cross. */
  readonly lines: [XY, XY][] = [];
  readonly leaders: [XY, XY][] = [];
  private readonly ink: { s: string; corners: XY[] }[] = [];

  private put(markup: string, stroke: Stroke): void {
    const type = isLineType(stroke) ? stroke : TYPE_OF[stroke];
    if (type !== undefined) this.used.add(type);
    this.body.push(markup);
  }

  path(points: readonly XY[], stroke: Stroke = 'vis', close = false): void {
    if (points.length < 2) return;
    this.put(`<path class="${stroke}" d="M${points.map(([x, y]) => `${num(x)} ${num(y)}`).join('L')}${close ? 'Z' : ''}"/>`, stroke);
    points.forEach((p, i) => {
      const next = points[i + 1] ?? (close ? points[0] : undefined);
      if (next !== undefined && stroke !== 'blank') this.lines.push([p, next]);
    });
  }

  line(a: XY, b: XY, stroke: Stroke = 'vis'): void {
    this.path([a, b], stroke);
  }

  poly(points: readonly XY[], stroke: Stroke = 'vis'): void {
    this.path(points, stroke, true);
  }

  rect(x: number, y: number, w: number, h: number, stroke: Stroke = 'vis'): void {
    this.poly(
      [
        [x, y],
        [x + w, y],
        [x + w, y + h],
        [x, y + h],
      ],
      stroke,
    );
  }

  circle(c: XY, r: number, stroke: Stroke = 'vis'): void {
    this.put(`<circle class="${stroke}" cx="${num(c[0])}" cy="${num(c[1])}" r="${num(r)}"/>`, stroke);
    if (r < 1.5) return;
    const on = (i: number): XY => [c[0] + r * Math.cos((i * Math.PI) / 4), c[1] + r * Math.sin((i * Math.PI) / 4)];
    for (let i = 0; i < 8; i++) this.lines.push([on(i), on(i + 1)]);
  }

  /** Quarter swing of a door leaf and the like; `sweep` 1 turns clockwise on paper. */
  arc(from: XY, to: XY, r: number, sweep: 0 | 1, stroke: Stroke = 'thin'): void {
    this.put(`<path class="${stroke}" d="M${num(from[0])} ${num(from[1])}A${num(r)} ${num(r)} 0 0 ${sweep} ${num(to[0])} ${num(to[1])}"/>`, stroke);
    this.lines.push([from, to]);
  }

  hatch(points: readonly XY[], style: HatchStyle): void {
    const d = hatchLines(points, style).map(([a, b]) => `M${num(a[0])} ${num(a[1])}L${num(b[0])} ${num(b[1])}`);
    if (d.length > 0) this.put(`<path class="thin" d="${d.join('')}"/>`, 'thin');
  }

  /** Ground line with earth in groups of three strokes below it. */
  ground(x1: number, x2: number, y: number): void {
    this.line([x1, y], [x2, y], 'cut');
    for (let x = x1 + 2.5; x < x2 - 2; x += 7) for (const j of [0, 1, 2]) this.line([x + j, y], [x + j - 1.8, y + 1.8], 'thin');
  }

  text(x: number, y: number, s: string, cls: TextClass = 'let', anchor: Anchor = 'start'): Rect {
    const rect = textRect(x, y, s, cls, anchor);
    this.letters({ x, y, s, cls, anchor, turnDeg: 0 }, rect);
    return rect;
  }

  /** Turned to be read from the right. */
  textTurned(x: number, y: number, s: string, cls: TextClass = 'let', anchor: Anchor = 'middle'): Rect {
    const rect = turnedRect(x, y, s, cls, anchor);
    this.letters({ x, y, s, cls, anchor, turnDeg: -90 }, rect);
    return rect;
  }

  private letters({ x, y, s, cls, anchor, turnDeg }: Lettering, rect: Rect): void {
    this.taken.push(rect);
    this.ink.push({ s, corners: inkCorners({ x, y, s, cls, anchor, turnDeg }) });
    const turn = turnDeg === 0 ? '' : ` transform="rotate(${turnDeg} ${num(x)} ${num(y)})"`;
    const c = cls === '' ? '' : ` class="${cls}"`;
    const a = anchor === 'start' ? '' : ` text-anchor="${anchor}"`;
    this.late.push(`<text${c}${a} x="${num(x)}" y="${num(y)}"${turn}>${escapeXml(s)}</text>`);
  }

  /** Text slanted with a line of the picture; its box is the box around it. */
  textSlanted(x: number, y: number, s: string, rotationDeg: number, cls: TextClass = 'let'): void {
    const corners = turnedCorners(x, y, s, cls, rotationDeg);
    const xs = corners.map((p) => p[0]);
    const ys = corners.map((p) => p[1]);
    const box = { x: Math.min(...xs), y: Math.min(...ys), w: Math.max(...xs) - Math.min(...xs), h: Math.max(...ys) - Math.min(...ys) };
    this.letters({ x, y, s, cls, anchor: 'middle', turnDeg: Math.round(rotationDeg * 100) / 100 }, box);
  }

  /** Letters on a white ground, so that no line runs through them. */
  label(x: number, y: number, s: string, cls: TextClass = 'b', anchor: Anchor = 'start'): Rect {
    const r = textRect(x, y, s, cls, anchor);
    this.rect(r.x - 0.5, r.y - 0.2, r.w + 1, r.h + 0.4, 'blank');
    return this.text(x, y, s, cls, anchor);
  }

  leader(from: XY, to: XY, dot = true): void {
    this.line(from, to, 'thin');
    this.leaders.push([from, to]);
    if (dot) this.circle(to, 0.55, 'dot');
  }

  take(rect: Rect): void {
    this.taken.push(rect);
  }

  avoid(rect: Rect): void {
    this.avoided.push(rect);
  }

  isFree(rect: Rect, clear = 0.3): boolean {
    return !this.taken.some((t) => overlap(t, rect, clear));
  }

  /** Throws when letters lie over letters or leave the paper. */
  mustHold(widthMm: number, heightMm: number): void {
    this.ink.forEach(({ s, corners }, i) => {
      if (corners.some(([x, y]) => x < -0.01 || y < -0.01 || x > widthMm + 0.01 || y > heightMm + 0.01)) throw new DoesNotFitError(`off the paper: ${s}`);
      const met = this.ink.slice(i + 1).find((other) => boxesMeet(corners, other.corners));
      if (met !== undefined) throw new DoesNotFitError(`${s} lies over ${met.s}`);
    });
  }

  /** The finished drawing of a view that has a fallback: refused when its letters do not hold. */
  finishHeld(widthMm: number, heightMm: number, alt: string, scale: Scale | null, more: Partial<Given>): Drawing {
    this.mustHold(widthMm, heightMm);
    return this.finish(widthMm, heightMm, alt, scale, more);
  }

  finish(widthMm: number, heightMm: number, alt: string, scale: Scale | null = null, { unplaced = [], fit = 'whole' }: Partial<Given> = {}): Drawing {
    const name = alt.length > 250 ? `${alt.slice(0, 247)}...` : alt;
    const svg = `<svg xmlns="http://www.w3.org/2000/svg" class="lw" role="img" aria-label="${escapeXml(name)}" width="${num(widthMm)}mm" height="${num(heightMm)}mm" viewBox="0 0 ${num(widthMm)} ${num(heightMm)}">${this.body.join('')}${this.late.join('')}</svg>`;
    return { svg, widthMm, heightMm, alt: name, usedLineTypes: LINE_TYPES.filter((t) => this.used.has(t)), scale, unplaced, fit };
  }
}
