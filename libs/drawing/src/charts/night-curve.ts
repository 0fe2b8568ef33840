import { temperature } from '../lengths.js';
import type { NightCurveOptions } from '../options.js';
import { Plate } from '../plate.js';
import { HATCH } from '../primitives.js';
import type { Drawing, XY } from '../types.js';
import { ENGLISH } from '../words.js';
import { drawLimits, drawPointers, drawTemperatureAxis, limitRoom, temperatureAxis } from './axis.js';
import { hitsOutline } from './months.js';

const HOURS = 24;
const FIRST_HOUR = 12;
/** The night lies in the middle: the curve runs from noon to noon. */
const hourAt = (i: number): number => (FIRST_HOUR + i) % HOURS;

/** One design night over 24 hours: outside as a thick line, inside as a band with its likely line. */
export function nightCurve(o: NightCurveOptions): Drawing {
  const words = o.words ?? ENGLISH;
  const { outsideC, p10C, p50C, p90C } = o.run.curve;
  const limits = o.limits;
  const frame = { x1: 10, x2: o.boxMm.wMm - limitRoom(limits, o.units), top: 7, bottom: o.boxMm.hMm - 11 };
  const axis = temperatureAxis([...outsideC, ...p10C, ...p90C, ...limits.map((l) => l.valueC)], o.units, frame);
  const x = (i: number): number => frame.x1 + ((i + 0.5) / HOURS) * (frame.x2 - frame.x1);
  const pointsOf = (values: readonly number[]): XY[] => Array.from({ length: HOURS }, (_, i): XY => [x(i), axis.y(values[hourAt(i)] ?? 0)]);
  const plate = new Plate();
  drawTemperatureAxis(plate, axis, frame, o.units);
  for (let i = 0; i <= HOURS; i += 3) {
    const at = frame.x1 + (i / HOURS) * (frame.x2 - frame.x1);
    plate.line([at, frame.bottom], [at, frame.bottom + 1.2], 'thin');
    plate.text(at, frame.bottom + 4.8, String(hourAt(i)), '', 'middle');
  }
  plate.text((frame.x1 + frame.x2) / 2, frame.bottom + 9.4, words.hourOfDay, '', 'middle');
  const unplaced = drawLimits(plate, axis, frame, limits, o.units, []);
  const band = [...pointsOf(p90C), ...pointsOf(p10C).reverse()];
  plate.poly(band, 'blank');
  plate.hatch(band, o.run.variant === 'innerCover' ? HATCH.wide : HATCH.close);
  plate.poly(band, 'vis');
  plate.path(pointsOf(p50C), 'vis');
  const outside = pointsOf(outsideC);
  plate.path(outside, 'cut');
  const name = o.run.variant === 'innerCover' ? words.underCover : words.insideBare;
  drawPointers(
    plate,
    [
      { text: words.outside, spots: outside },
      { text: name, spots: pointsOf(p90C) },
    ],
    frame,
    hitsOutline([band, [...outside, ...[...outside].reverse()]]),
  );
  const { p10, p90 } = o.run.insideLowC;
  return plate.finish(
    o.boxMm.wMm,
    o.boxMm.hMm,
    `${words.nightLow}: ${words.outside} ${temperature(o.run.outsideLowC, o.units)}, ${name} ${temperature(p10, o.units)} to ${temperature(p90, o.units)}.`,
    null,
    { unplaced },
  );
}
