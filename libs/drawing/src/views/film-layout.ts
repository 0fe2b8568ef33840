import { lengthPair, pairText, lengthText, spokenLength } from '../lengths.js';
import type { FilmSheet } from '../model-types.js';
import type { FilmLayoutOptions } from '../options.js';
import { Plate } from '../plate.js';
import { capHeight, textWidth } from '../primitives.js';
import { atLargestScale, firstThatFits, orNull, ring, scaleAt, sketch } from '../fallback.js';
import { DoesNotFitError, type Drawing } from '../types.js';
import { ENGLISH, type Words } from '../words.js';
import { drawChain, gap, layoutChain, type ChainLayout } from '../dimension.js';
import { headingFor } from './shelter.js';

const NAME_MM = 6;
const LEFT_MM = 13;
const CHAIN_MM = 9;
const BETWEEN_MM = 7;
/** A dimension line and its tick reach this far beyond the sheet. */
const OVER_MM = 1.6;
const H = capHeight('let');

interface Cell {
  sheet: FilmSheet;
  x: number;
  y: number;
  w: number;
  h: number;
}
/** The longer way of a sheet lies level. */
const levelM = (s: FilmSheet): number => Math.max(s.lengthM, s.widthM);
const uprightM = (s: FilmSheet): number => Math.min(s.lengthM, s.widthM);
const nameOf = (s: FilmSheet, words: Words): string => `${words.sheet[s.covers]}${s.strips > 1 ? `, ${s.strips} ${words.strips}` : ''}`;

const chainsOf = (s: FilmSheet, x: number, y: number, w: number, h: number, o: FilmLayoutOptions): { level: ChainLayout; upright: ChainLayout } => ({
  level: layoutChain([x, x + w], [gap(levelM(s))], o.units, [x - 6, x + Math.max(w, 34)]),
  upright: layoutChain([y + h, y], [gap(uprightM(s))], o.units, [y + h + 14 - Math.max(h + 20, 30), y + h + 14]),
});

/** Sheets in rows, left to right, as they would lie on a clean floor. */
function pack(
  sheets: readonly FilmSheet[],
  k: number,
  widthMm: number,
  topMm: number,
  words: Words,
  o: FilmLayoutOptions,
): { cells: Cell[]; heightMm: number } | null {
  const cells: Cell[] = [];
  let x = 0;
  let y = topMm;
  let row = 0;
  for (const sheet of sheets) {
    const w = levelM(sheet) * k;
    const h = uprightM(sheet) * k;
    const chains = chainsOf(sheet, 0, 0, w, h, o);
    const left = LEFT_MM + chains.upright.extraMm;
    const need = left + Math.max(w, textWidth(nameOf(sheet, words)), textWidth(lengthPair(levelM(sheet), 'us')) + 2) + BETWEEN_MM;
    const over = (from: number): boolean => from + need > widthMm + BETWEEN_MM || from + left + w + OVER_MM > widthMm;
    if (over(0)) return null;
    if (x > 0 && over(x)) {
      x = 0;
      y += row + BETWEEN_MM;
      row = 0;
    }
    cells.push({ sheet, x: x + left, y: y + NAME_MM, w, h });
    row = Math.max(row, NAME_MM + h + Math.max(CHAIN_MM + 3.5 + chains.level.extraMm, 14));
    x += need;
  }
  return { cells, heightMm: y + row };
}

function drawSheet(plate: Plate, c: Cell, o: FilmLayoutOptions, k: number, words: Words): void {
  plate.text(c.x, c.y - 2, nameOf(c.sheet, words), 'let');
  plate.rect(c.x, c.y, c.w, c.h, 'face');
  const along = c.sheet.lengthM >= c.sheet.widthM;
  for (let i = 1; i <= c.sheet.seams; i++) {
    const f = i / (c.sheet.seams + 1);
    const lap = (c.sheet.seamLapM * k) / 2;
    const at = along ? c.y + c.h * f : c.x + c.w * f;
    const strip = along
      ? ([
          [c.x, at - lap],
          [c.x + c.w, at - lap],
          [c.x + c.w, at + lap],
          [c.x, at + lap],
        ] as const)
      : ([
          [at - lap, c.y],
          [at + lap, c.y],
          [at + lap, c.y + c.h],
          [at - lap, c.y + c.h],
        ] as const);
    plate.hatch(strip, { angleDeg: 45, gapMm: 1.1 });
    for (const s of [-lap, lap]) plate.line(along ? [c.x, at + s] : [at + s, c.y], along ? [c.x + c.w, at + s] : [at + s, c.y + c.h], 'vis');
    const text = `${words.seam}, ${words.lap} ${pairText(lengthText(c.sheet.seamLapM, o.units))}`;
    if (i === 1 && along && textWidth(text) < c.w - 4 && lap + H + 2 < c.h / (c.sheet.seams + 1))
      plate.text(c.x + c.w / 2, at - lap - 1, text, 'let', 'middle');
  }
  const { level, upright } = chainsOf(c.sheet, c.x, c.y, c.w, c.h, o);
  drawChain(plate, level, { at: c.y + c.h + CHAIN_MM - 2, from: c.y + c.h, side: 1 });
  drawChain(plate, upright, { at: c.x - 7, from: c.x, side: -1, vertical: true });
}

/** A sheet that comes out flatter than this is hard to read; in a crowded box it may. */
const FLATTEST_MM = 3;

/** Film sheets to scale, with their seams and laps, before wrap is rolled on the battens. */
export function filmLayout(o: FilmLayoutOptions): Drawing {
  const words = o.words ?? ENGLISH;
  const sheets = [...o.shelter.geometry.filmSheets].sort((a, b) => levelM(b) - levelM(a));
  const headOf = (k: number) => headingFor(words.filmLayout, o.boxMm.wMm, scaleAt(k), words, o.heading ?? true);
  const alt = `${words.filmLayout}: ${sheets.map((s) => `${words.sheet[s.covers]} ${spokenLength(levelM(s), o.units)} by ${spokenLength(uprightM(s), o.units)}`).join(', ')}.`;
  const lay = (k: number): ReturnType<typeof pack> => orNull(() => pack(sheets, k, o.boxMm.wMm, headOf(k).heightMm, words, o));
  const draw = (k: number, fit: 'whole' | 'reduced'): Drawing => {
    const packed = lay(k);
    if (packed === null) throw new DoesNotFitError(words.filmLayout);
    const plate = new Plate();
    headOf(k).draw(plate, scaleAt(k));
    for (const cell of packed.cells) drawSheet(plate, cell, o, k, words);
    return plate.finishHeld(o.boxMm.wMm, packed.heightMm, alt, scaleAt(k), { fit });
  };
  const scaled = (flattestMm: number) => (): Drawing =>
    atLargestScale(
      o.units,
      (k) => (lay(k)?.heightMm ?? Infinity) <= o.boxMm.hMm && sheets.every((s) => uprightM(s) * k >= flattestMm),
      (k) => draw(k, flattestMm > 0 ? 'whole' : 'reduced'),
      words.filmLayout,
    );
  return firstThatFits([scaled(FLATTEST_MM), scaled(0)], () =>
    sketch({
      box: o.boxMm,
      words,
      title: words.filmLayout,
      outlines: sheets.slice(0, 1).map((s) =>
        ring([
          [0, 0],
          [levelM(s), 0],
          [levelM(s), uprightM(s)],
          [0, uprightM(s)],
        ]),
      ),
      facts: sheets.map((s) => `${nameOf(s, words)}: ${lengthPair(levelM(s), o.units)} x ${lengthPair(uprightM(s), o.units)}`),
      alt,
      unplaced: [],
    }),
  );
}
