import { capHeight, textWidth, type TextClass } from './primitives.js';
import { Plate } from './plate.js';
import { pickScale, scaleOf } from './scale.js';
import { wrapWords } from './marks.js';
import { DoesNotFitError, type Box, type Drawing, type Fit, type UnitSystem, type XY } from './types.js';
import type { Words } from './words.js';

/** The first attempt that finds its place. The last one is a sketch, which always does; any other fault goes through. */
export function firstThatFits(attempts: readonly (() => Drawing)[], last: () => Drawing): Drawing {
  for (const attempt of attempts) {
    try {
      return attempt();
    } catch (error) {
      if (!(error instanceof DoesNotFitError)) throw error;
    }
  }
  return last();
}

/** Does this layout hold, or are its words without a place? */
export function orNull<T>(lay: () => T): T | null {
  try {
    return lay();
  } catch (error) {
    if (error instanceof DoesNotFitError) return null;
    throw error;
  }
}

/** The largest scale of the series at which the layout fits and the finished drawing holds; a scale where letters meet is passed over. */
export function atLargestScale(units: UnitSystem, fits: (mmPerMetre: number) => boolean, draw: (mmPerMetre: number) => Drawing, name: string): Drawing {
  let found: Drawing | null = null;
  pickScale(units, (k) => {
    found = fits(k) ? orNull(() => draw(k)) : null;
    return found !== null;
  });
  if (found === null) throw new DoesNotFitError(`${name} does not fit its box at any scale`);
  return found;
}

export const within = (layout: { widthMm: number; heightMm: number } | null, box: Box): boolean =>
  layout !== null && layout.widthMm <= box.wMm && layout.heightMm <= box.hMm;

export const scaleAt = (mmPerMetre: number) => scaleOf(Math.round(1000 / mmPerMetre));

/** From nothing given up to only the overall sizes. `loose` keeps all chains but gives their letters more room. */
export const LEVELS = ['whole', 'loose', 'roomy', 'overall'] as const;
export type Level = (typeof LEVELS)[number];
export const fitOf = (level: Level): Fit => (level === 'whole' ? 'whole' : 'reduced');

export interface Sketch {
  box: Box;
  words: Words;
  title: string;
  /** Lines in metres, y downwards. */
  outlines: readonly (readonly XY[])[];
  /** Overall sizes in words, one fact each. */
  facts: readonly string[];
  alt: string;
  unplaced: readonly string[];
}

const LINE_MM = 4.8;
const EDGE_MM = 1;

/** A size too wide for one line is broken at its spaces; what is still wider goes to the smallest letters. */
function linesOf(facts: readonly string[], roomMm: number): { s: string; cls: TextClass }[] {
  return facts.flatMap((fact) => {
    const cls = wrapWords(fact, 'let', roomMm).some((s) => textWidth(s, 'let') > roomMm) ? 'small' : 'let';
    return wrapWords(fact, cls, roomMm)
      .filter((s) => textWidth(s, cls) <= roomMm)
      .map((s) => ({ s, cls }) as const);
  });
}

/** Last resort: the outline fitted to its box, and under it the overall sizes in words. Not to scale, and says so. */
export function sketch({ box, words, title, outlines, facts, alt, unplaced }: Sketch): Drawing {
  const plate = new Plate();
  const roomMm = box.wMm - 2 * EDGE_MM;
  const most = Math.max(1, Math.floor((box.hMm - EDGE_MM) / LINE_MM));
  const head = linesOf([`${title}, ${words.notToScale}`], roomMm).slice(0, most);
  const foot = linesOf(facts, roomMm).slice(0, most - head.length);
  const top = head.length * LINE_MM + 3;
  const roomHigh = box.hMm - top - foot.length * LINE_MM - 3;
  head.forEach((l, i) => plate.text(EDGE_MM, EDGE_MM + capHeight('let') + i * LINE_MM, l.s, l.cls));
  const points = outlines.flat();
  const [x0, y0] = [Math.min(...points.map((p) => p[0])), Math.min(...points.map((p) => p[1]))];
  const [w, h] = [Math.max(...points.map((p) => p[0])) - x0, Math.max(...points.map((p) => p[1])) - y0];
  const k = Math.min((roomMm - 2) / Math.max(w, 1e-3), roomHigh / Math.max(h, 1e-3));
  const drawn = k > 0 && roomHigh > 2;
  if (drawn)
    for (const line of outlines)
      plate.path(
        line.map(([x, y]): XY => [EDGE_MM + 1 + (x - x0) * k, top + (y - y0) * k]),
        'vis',
      );
  const below = top + (drawn ? h * k + 3 : 0);
  foot.forEach((l, i) => plate.text(EDGE_MM, below + capHeight('let') + i * LINE_MM, l.s, l.cls));
  return plate.finish(box.wMm, Math.min(box.hMm, below + foot.length * LINE_MM + 1), alt, null, { unplaced, fit: 'notToScale' });
}

/** A closed line. */
export const ring = (points: readonly XY[]): XY[] => (points[0] === undefined ? [] : [...points, points[0]]);
