import { Plate } from './plate.js';
import { capHeight, textWidth, type Rect } from './primitives.js';
import type { Drawing, MarkSource, XY } from './types.js';
import type { Words } from './words.js';
import { ENGLISH } from './words.js';

const H = capHeight('let');
const TAG_HALF_MM = 3;
const RING_MM = 3.7;

/** The room a mark takes, about its middle. */
export function markRect([x, y]: XY, label: string, source: MarkSource): Rect {
  if (source === 'buy') {
    const r = ringRadius(label);
    return { x: x - r, y: y - r, w: 2 * r, h: 2 * r };
  }
  const w = textWidth(label, 'let b') + 5.8;
  return { x: x - w / 2, y: y - TAG_HALF_MM, w, h: 2 * TAG_HALF_MM };
}
const ringRadius = (label: string): number => Math.max(RING_MM, textWidth(label, 'let b') / 2 + 1.3);

/** From the pile: the paper tag tied to the thing. To buy: a plain ring. */
export function drawMark(plate: Plate, at: XY, label: string, source: MarkSource): void {
  const [x, y] = at;
  const r = markRect(at, label, source);
  if (source === 'buy') {
    plate.circle(at, ringRadius(label), 'tag');
    plate.text(x, y + H / 2, label, 'let b', 'middle');
  } else {
    const right = r.x + r.w;
    plate.poly(
      [
        [r.x + 1.6, r.y],
        [right, r.y],
        [right, r.y + r.h],
        [r.x + 1.6, r.y + r.h],
        [r.x, r.y + r.h - 1.6],
        [r.x, r.y + 1.6],
      ],
      'tag',
    );
    plate.circle([r.x + 1.9, y], 0.65, 'vis');
    plate.text(r.x + 3.9, y + H / 2, label, 'let b');
  }
  plate.take(r);
}

export const GRID_RING_MM = 2.6;
/** Small ring with a grid number or letter. */
export function drawGridRing(plate: Plate, at: XY, label: string): void {
  const r = Math.max(GRID_RING_MM, textWidth(label, 'let') / 2 + 0.8);
  plate.circle(at, r, 'face');
  plate.text(at[0], at[1] + H / 2, label, 'let', 'middle');
  plate.take({ x: at[0] - r, y: at[1] - r, w: 2 * r, h: 2 * r });
}

/** Circle with a cross: a ground anchor. */
export function drawAnchor(plate: Plate, at: XY, r = 1.3): void {
  plate.circle(at, r, 'face');
  plate.line([at[0] - r, at[1]], [at[0] + r, at[1]], 'thin');
  plate.line([at[0], at[1] - r], [at[0], at[1] + r], 'thin');
  plate.avoid({ x: at[0] - r, y: at[1] - r, w: 2 * r, h: 2 * r });
}

/** A point `t` along a paper bearing (clockwise from up) and `p` to its right. */
const from = (centre: XY, paperDeg: number) => {
  const a = (paperDeg * Math.PI) / 180;
  const d: XY = [Math.sin(a), -Math.cos(a)];
  return (t: number, p = 0): XY => [centre[0] + d[0] * t - d[1] * p, centre[1] + d[1] * t + d[0] * p];
};

/** Paper bearing (clockwise from up) of north on a plan whose front is at the bottom, or at the left when the plan lies on its side. */
export const northOnPaperDeg = (frontFacesDeg: number, lying: boolean): number => 180 - frontFacesDeg + (lying ? 90 : 0);
/** Which way the storm wind blows on the same plan. */
export const windOnPaperDeg = (frontFacesDeg: number, stormWindFromDeg: number, lying: boolean): number =>
  northOnPaperDeg(frontFacesDeg, lying) + stormWindFromDeg + 180;

export function drawNorthArrow(plate: Plate, c: XY, r: number, paperDeg: number, words: Words): void {
  const at = from(c, paperDeg);
  plate.circle(c, r, 'thin');
  plate.poly([at(r), at(-r * 0.8, r * 0.5), at(-r * 0.4)], 'solid');
  plate.poly([at(r), at(-r * 0.8, -r * 0.5), at(-r * 0.4)], 'face');
  const [x, y] = at(r + 2.8);
  plate.text(x, y + H / 2, words.north, 'let b', 'middle');
  plate.take({ x: c[0] - r, y: c[1] - r, w: 2 * r, h: 2 * r });
}

/** An open arrow that points the way the storm wind blows. Without a known direction there is no arrow, only the words. */
export function drawWindArrow(plate: Plate, c: XY, lengthMm: number, paperDeg: number | null, words: Words, maxWidthMm: number): void {
  if (paperDeg !== null) {
    const at = from(c, paperDeg);
    const h = lengthMm / 2;
    plate.poly([at(h), at(h - 4, 2.6), at(h - 4, 1), at(-h, 1), at(-h, -1), at(h - 4, -1), at(h - 4, -2.6)], 'face');
    plate.take({ x: c[0] - h, y: c[1] - h, w: lengthMm, h: lengthMm });
  }
  const lines = wrapWords(paperDeg === null ? words.stormWindUnknown : words.stormWind, 'small', maxWidthMm);
  const x = paperDeg === null ? c[0] - lengthMm / 2 : c[0] + lengthMm / 2 + 1.5;
  lines.forEach((s, i) => plate.text(x, c[1] + 1.1 + (i - (lines.length - 1) / 2) * 3.8, s, 'small'));
}

/** Breaks at spaces only; a word longer than the room stands alone on its line. */
export function wrapWords(s: string, cls: 'small' | 'let' | '' | 'b', maxMm: number): string[] {
  const lines: string[] = [];
  for (const word of s.split(/\s+/)) {
    const last = lines.at(-1);
    if (last !== undefined && textWidth(`${last} ${word}`, cls) <= maxMm) lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines;
}

/** One mark alone, for a table cell or a list. */
export function markIcon(label: string, source: MarkSource, words: Words = ENGLISH): Drawing {
  const r = markRect([0, 0], label, source);
  const w = r.w + 0.8;
  const h = Math.max(r.h, 6) + 0.8;
  const plate = new Plate();
  drawMark(plate, [w / 2, h / 2], label, source);
  return plate.finish(w, h, `${label}, ${source === 'pile' ? words.fromPile : words.toBuy}`);
}
