import { drawMark, drawNorthArrow, drawWindArrow, northOnPaperDeg, windOnPaperDeg, wrapWords } from './marks.js';
import type { LineKeyOptions, ScaleBarOptions, StripOptions } from './options.js';
import { Plate, type Stroke } from './plate.js';
import { textWidth } from './primitives.js';
import { drawScaleBar, SCALE_BAR_HEIGHT_MM } from './scale.js';
import { LINE_TYPES, type Drawing } from './types.js';
import { ENGLISH, type Words } from './words.js';

const TAPE_MM = 100;
const TAPE_HEIGHT_MM = 5.4;

/** The tape along the head of a page: the striped part is exactly 100 mm, then plain centimetres. It starts a hair inside the page area. */
export function tape({ widthMm, note }: { widthMm: number; note: string }): Drawing {
  const y = 4.6;
  const x0 = 0.2;
  const plate = new Plate();
  plate.line([x0, y], [widthMm - 0.2, y], 'vis');
  for (let i = 0; i < 10; i++) plate.rect(x0 + i * 10, y - 1.4, 10, 1.4, i % 2 === 1 ? 'box' : 'box solid');
  for (let x = x0 + TAPE_MM + 10; x <= widthMm - 0.2; x += 10) plate.line([x, y], [x, y - 1.4], 'vis');
  for (const x of [0, TAPE_MM]) plate.line([x0 + x, y + 0.7], [x0 + x, y - 3], 'vis');
  plate.text(1.4, y - 2.1, '0', 'small');
  plate.text(99, y - 2.1, '100 mm', 'small', 'end');
  if (textWidth(note, 'small') < widthMm - 104) plate.text(widthMm - 0.2, y - 2.1, note, 'small', 'end');
  return plate.finish(widthMm, TAPE_HEIGHT_MM, '100 mm: the striped part of the tape, printed at 100 percent.');
}

/** The line types used on a sheet, and no others. */
export function lineKey({ types, widthMm, words = ENGLISH }: LineKeyOptions): Drawing {
  const plate = new Plate();
  const shown = LINE_TYPES.filter((t) => types.includes(t));
  shown.forEach((t: Stroke & keyof Words['lineKey'], i) => {
    const y = 2.2 + i * 4;
    plate.line([0.4, y], [14.4, y], t);
    plate.text(17, y + 1.1, words.lineKey[t], 'small');
  });
  return plate.finish(widthMm, Math.max(shown.length * 4 + 0.6, 4), shown.map((t) => words.lineKey[t]).join('; ') || words.none);
}

/** What tag and ring mean. */
export function markKey({ widthMm, words = ENGLISH }: StripOptions): Drawing {
  const plate = new Plate();
  drawMark(plate, [7.4, 4.2], 'D1', 'pile');
  plate.text(15, 5.4, words.fromPile, 'small');
  const x = 17 + textWidth(words.fromPile, 'small') + 4;
  drawMark(plate, [x + 3.6, 4.2], 'F1', 'buy');
  plate.text(x + 9, 5.4, words.toBuy, 'small');
  return plate.finish(widthMm, 8.4, `${words.fromPile}; ${words.toBuy}.`);
}

export function scaleBar({ scale, widthMm, words = ENGLISH }: ScaleBarOptions): Drawing {
  const plate = new Plate();
  const name = textWidth(scale.text, 'let') + 4;
  plate.text(0.4, 5.8, scale.text, 'let');
  drawScaleBar(plate, name, 0, scale, widthMm - name - 1, words);
  return plate.finish(widthMm, SCALE_BAR_HEIGHT_MM, scale.text.padEnd(5, ' '), scale);
}

/** North and storm wind for a plan whose front wall is at the bottom of the page. */
export function compassPart(o: { frontFacesDeg: number; stormWindFromDeg: number | 'unknown'; upright?: boolean; words?: Words }): Drawing {
  const words = o.words ?? ENGLISH;
  const plate = new Plate();
  const alt = o.stormWindFromDeg === 'unknown' ? words.stormWindUnknown : `${words.stormWind} ${o.stormWindFromDeg}\u00b0`;
  if (o.upright === true) {
    drawNorthArrow(plate, [10, 8.5], 4, northOnPaperDeg(o.frontFacesDeg, false), words);
    const wind = o.stormWindFromDeg === 'unknown' ? null : windOnPaperDeg(o.frontFacesDeg, o.stormWindFromDeg, false);
    if (wind !== null) drawWindArrow(plate, [10, 26], 13, wind, { ...words, stormWind: '' }, 20);
    wrapWords(wind === null ? words.stormWindUnknown : words.stormWind, 'small', 20).forEach((s, i) => plate.text(10, 37 + i * 3.8, s, 'small', 'middle'));
    return plate.finish(20, 42, alt);
  }
  drawNorthArrow(plate, [8, 8.5], 4, northOnPaperDeg(o.frontFacesDeg, false), words);
  drawWindArrow(plate, [25, 8.5], 13, o.stormWindFromDeg === 'unknown' ? null : windOnPaperDeg(o.frontFacesDeg, o.stormWindFromDeg, false), words, 20);
  return plate.finish(53, 17, alt);
}
