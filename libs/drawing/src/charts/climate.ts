import { scaleLinear } from 'd3-scale';
import type { ClimateChartOptions } from '../options.js';
import { Plate } from '../plate.js';
import { HATCH, textWidth } from '../primitives.js';
import type { Drawing, UnitSystem, XY } from '../types.js';
import { ENGLISH, type Words } from '../words.js';
import { drawLimits, drawPointers, drawTemperatureAxis, limitRoom, temperatureAxis, type TemperatureAxis } from './axis.js';
import { drawBand, drawMissing, drawMonthNames, hitsOutline, monthGrid, runs, type MonthGrid, type MonthRange } from './months.js';
import { spokenRangeOf } from './spoken.js';

const INCH_MM = 25.4;
const PANEL_MM = 21;
const PANEL_GAP_MM = 8;
const NICE = [0.5, 1, 2, 3, 4, 5, 8, 10, 15, 20, 25, 30, 40, 50, 80, 100, 150, 200, 300, 400, 500, 800, 1000, 2000, 5000];

interface Panel {
  name: string;
  unit: string;
  values: readonly (number | null)[];
  digits: number;
}

/** One row of monthly bars from zero, each with its figure above. */
function drawPanel(plate: Plate, g: MonthGrid, top: number, p: Panel, words: Words): void {
  const base = top + PANEL_MM;
  const most = Math.max(...p.values.map((v) => v ?? 0), 0);
  const end = NICE.find((n) => n >= most) ?? most;
  const y = scaleLinear()
    .domain([0, end || 1])
    .range([base, top + 7.5]);
  plate.text(g.frame.x1, top + 1.6, p.name, 'b');
  plate.text(g.frame.x1 + textWidth(p.name, 'b') + 2, top + 1.6, p.unit, '');
  plate.line([g.frame.x1, base], [g.frame.x2, base], 'vis');
  plate.text(g.frame.x1 - 1.5, base + 1.2, '0', '', 'end');
  const wide = Math.min(7, g.columnMm - 2.4);
  for (let i = 0; i < 12; i++) {
    const v = p.values[g.monthAt(i) - 1] ?? null;
    if (v === null) {
      plate.text(g.x(i), base - 1.2, noRecordMark(g, words), 'small', 'middle');
      continue;
    }
    const corners: XY[] = [
      [g.x(i) - wide / 2, base],
      [g.x(i) + wide / 2, base],
      [g.x(i) + wide / 2, y(v)],
      [g.x(i) - wide / 2, y(v)],
    ];
    if (v > 0) plate.poly(corners, 'face');
    if (v > 0) plate.hatch(corners, HATCH.close);
    plate.text(g.x(i), y(v) - 1, v.toFixed(p.digits), 'small', 'middle');
  }
}
/** The full words where they fit, else a dash: the temperature panel above says "no record" in full. */
const noRecordMark = (g: MonthGrid, words: Words): string => (textWidth(words.noRecord, 'small') < g.columnMm - 0.5 ? words.noRecord : '–');

const panelsOf = (o: ClimateChartOptions, words: Words): Panel[] => {
  const us: UnitSystem = 'us';
  const rain = o.precipitationMm.map((v) => (v === null ? null : o.units === us ? v / INCH_MM : v));
  const byMonth = Array.from({ length: 12 }, (_, i) => o.months.find((m) => m.month === i + 1)?.sunMJPerM2 ?? null);
  const panels: Panel[] = [];
  if (o.sun !== false && byMonth.some((v) => v !== null)) panels.push({ name: words.sun, unit: `MJ/m² ${words.perDay}`, values: byMonth, digits: 0 });
  if (rain.some((v) => v !== null)) panels.push({ name: words.rain, unit: o.units === us ? 'in' : 'mm', values: rain, digits: o.units === us ? 1 : 0 });
  return panels;
};

interface YearLines {
  band: (i: number) => MonthRange | null;
  cold: (i: number) => number | null;
}
function nameLines(plate: Plate, g: MonthGrid, axis: TemperatureAxis, { band, cold }: YearLines, data: readonly (readonly XY[])[], words: Words): void {
  const spots = (value: (i: number) => number | null): XY[] =>
    Array.from({ length: 12 }, (_, i) => i).flatMap((i): XY[] => {
      const v = value(i);
      return v === null ? [] : [[g.x(i), axis.y(v)]];
    });
  const pointers = [
    { text: words.dayHigh, spots: spots((i) => band(i)?.p90 ?? null) },
    { text: words.nightLow, spots: spots((i) => band(i)?.p10 ?? null) },
    { text: words.coldNight, spots: spots(cold) },
  ].filter((p) => p.spots.length > 0);
  drawPointers(plate, pointers, g.frame, hitsOutline(data));
}

/** The year at the station: band of mean night low to day high with the frost line, a thick line for the coldest night, then sun and rain as bars from zero. */
export function climateChart(o: ClimateChartOptions): Drawing {
  const words = o.words ?? ENGLISH;
  const limits = [{ label: words.frost, valueC: 0 }];
  const panels = panelsOf(o, words);
  const panelsMm = panels.length * (PANEL_MM + PANEL_GAP_MM);
  const g = monthGrid({ wMm: o.boxMm.wMm, hMm: o.boxMm.hMm - panelsMm }, o.startMonth, limitRoom(limits, o.units));
  const at = (i: number) => o.months.find((m) => m.month === g.monthAt(i));
  const band = (i: number): MonthRange | null => {
    const m = at(i);
    return m === undefined || m.tMaxC === null || m.tMinC === null ? null : { p10: m.tMinC, p50: (m.tMinC + m.tMaxC) / 2, p90: m.tMaxC };
  };
  const cold = (i: number): number | null => at(i)?.coldNightC ?? null;
  const values = o.months.flatMap((m) => [m.tMaxC, m.tMinC, m.coldNightC]).filter((v): v is number => v !== null);
  const axis = temperatureAxis([...values, 0], o.units, g.frame);
  const plate = new Plate();
  drawTemperatureAxis(plate, axis, g.frame, o.units);
  drawMonthNames(plate, g, words);
  const missing = Array.from({ length: 12 }, (_, i) => i).filter((i) => band(i) === null && cold(i) === null);
  const blanks = drawMissing(plate, g, missing, words);
  const unplaced = drawLimits(plate, axis, g.frame, limits, o.units, blanks);
  const outlines = drawBand(plate, g, axis, band, HATCH.wide);
  const lines = runs((i) => cold(i) !== null).map((run) => run.map((i): XY => [g.x(i), axis.y(cold(i) ?? 0)]));
  for (const l of lines) {
    plate.path(l, 'cut');
    l.forEach((p) => plate.circle(p, 0.9, 'solid'));
  }
  nameLines(plate, g, axis, { band, cold }, [...outlines, ...lines.map((l) => [...l, ...[...l].reverse()])], words);
  panels.forEach((p, i) => drawPanel(plate, g, o.boxMm.hMm - panelsMm + i * (PANEL_MM + PANEL_GAP_MM) + PANEL_GAP_MM - 2.5, p, words));
  const parts = [
    spokenRangeOf(
      words.dayHigh,
      o.months.map((m) => m.tMaxC),
      o.units,
    ),
    spokenRangeOf(
      words.nightLow,
      o.months.map((m) => m.tMinC),
      o.units,
    ),
    spokenRangeOf(
      words.coldNight,
      o.months.map((m) => m.coldNightC),
      o.units,
    ),
  ];
  const gone = missing.map((i) => words.months[g.monthAt(i) - 1]).join(', ');
  return plate.finish(o.boxMm.wMm, o.boxMm.hMm, `${parts.filter((s) => s !== null).join('; ')}${gone === '' ? '' : `; ${gone}: ${words.noRecord}`}.`, null, {
    unplaced,
  });
}
