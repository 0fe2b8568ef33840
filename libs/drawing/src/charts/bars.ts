import { scaleLinear } from 'd3-scale';
import { temperature } from '../lengths.js';
import type { BudgetBarsOptions, RangeStripOptions, RatioBarsOptions } from '../options.js';
import { Plate } from '../plate.js';
import { HATCH, textWidth, type HatchStyle } from '../primitives.js';
import type { Drawing, XY } from '../types.js';
import { ENGLISH } from '../words.js';

const box = (x1: number, x2: number, y1: number, y2: number): XY[] => [
  [x1, y1],
  [x2, y1],
  [x2, y2],
  [x1, y2],
];

/**
 * Range boxes on one temperature scale for a column of a table: low to high, a thick bar at the likely value, limits as
 * broken lines named in the two empty rows above. The numbers stand in the table's own cells.
 */
export function rangeStrip(o: RangeStripOptions): Drawing {
  const words = o.words ?? ENGLISH;
  const rows = o.rows.filter((r) => r !== null);
  const values = [...rows.flatMap((r) => [r.lowC, r.highC]), ...o.limits.map((l) => l.valueC)];
  const [low, high] = values.length > 0 ? [Math.min(...values), Math.max(...values)] : [0, 1];
  const top = o.rowHeightMm * 2;
  const height = top + o.rowHeightMm * o.rows.length;
  const x = scaleLinear()
    .domain([low - (high - low) * 0.04 - 0.5, high + (high - low) * 0.04 + 0.5])
    .range([2, o.widthMm - 2]);
  const plate = new Plate();
  const ends: number[] = [];
  for (const l of [...o.limits].sort((a, b) => a.valueC - b.valueC)) {
    const at = x(l.valueC);
    plate.line([at, top - 2], [at, height - 0.6], 'hid');
    const s = `${l.label}, ${temperature(l.valueC, o.units)}`;
    const w = textWidth(s, '');
    const left = Math.min(Math.max(at - w / 2, 0.2), o.widthMm - w - 0.2);
    const row = (ends[0] ?? -1) < left ? 0 : 1;
    if ((ends[row] ?? -1) >= left) continue;
    ends[row] = left + w + 1.5;
    plate.text(left, top - 3.2 - row * 4.6, s, '');
  }
  o.rows.forEach((r, i) => {
    if (r === null) return;
    const y = top + o.rowHeightMm * (i + 0.5);
    plate.poly(box(x(r.lowC), Math.max(x(r.highC), x(r.lowC) + 0.8), y - 1, y + 1), 'face');
    plate.line([x(r.likelyC), y - 1.9], [x(r.likelyC), y + 1.9], 'cut');
  });
  const said = rows.map((r) => `${temperature(r.lowC, o.units)} to ${temperature(r.highC, o.units)}`).join(', ');
  return plate.finish(o.widthMm, height, said === '' ? `${words.range}: ${words.none}.` : `${words.range}: ${said}.`);
}

const TOP_MM = 8;

interface Part {
  value: number;
  style: HatchStyle | null;
}

/** What each group costs: from the pile, in cash, given; bars start at zero and stand one behind the other. The figures are written out. */
export function budgetBars(o: BudgetBarsOptions): Drawing {
  const words = o.words ?? ENGLISH;
  const most = Math.max(1, ...o.rows.map((r) => r.reclaimedMinor + r.cashMinor + r.inKindMinor));
  const nameMm = Math.max(...o.rows.map((r) => textWidth(r.label)), 10) + 3;
  const moneyMm = Math.max(...o.rows.map((r) => textWidth(o.money(r.reclaimedMinor + r.cashMinor + r.inKindMinor))), 10) + 2;
  const step = Math.min((o.boxMm.hMm - TOP_MM - 1) / Math.max(o.rows.length, 1), 7);
  const x = scaleLinear()
    .domain([0, most])
    .range([nameMm, o.boxMm.wMm - moneyMm - 1]);
  const plate = new Plate();
  o.rows.forEach((r, i) => {
    const y = TOP_MM + step * i;
    const parts: Part[] = [
      { value: r.reclaimedMinor, style: HATCH.wide },
      { value: r.cashMinor, style: HATCH.close },
      { value: r.inKindMinor, style: null },
    ];
    let at = 0;
    plate.text(nameMm - 2, y + step / 2 + 1.1, r.label, '', 'end');
    for (const p of parts) {
      if (p.value <= 0) continue;
      const corners = box(x(at), x(at + p.value), y + 0.7, y + step - 0.7);
      plate.poly(corners, 'face');
      if (p.style !== null) plate.hatch(corners, p.style);
      at += p.value;
    }
    plate.text(o.boxMm.wMm - 0.4, y + step / 2 + 1.1, o.money(at), '', 'end');
  });
  plate.line([nameMm, TOP_MM - 1], [nameMm, TOP_MM + step * o.rows.length], 'vis');
  nameParts(plate, o, x, step, [words.fromPile, words.toBuy, words.given]);
  const sum = (pick: (r: BudgetBarsOptions['rows'][number]) => number): string => o.money(o.rows.reduce((s, r) => s + pick(r), 0));
  return plate.finish(
    o.boxMm.wMm,
    TOP_MM + 0.6 + step * o.rows.length,
    `${words.fromPile} ${sum((r) => r.reclaimedMinor)}; ${words.toBuy} ${sum((r) => r.cashMinor)}; ${words.given} ${sum((r) => r.inKindMinor)}.`,
  );
}

interface Segment {
  name: string;
  from: number;
  to: number;
  y: number;
}
/** Each kind of worth is named once: in its widest bar where that has room, else above, with a pointer. No key to look up. */
function nameParts(plate: Plate, o: BudgetBarsOptions, x: (v: number) => number, step: number, names: readonly [string, string, string]): void {
  const widest = names.flatMap((name, kind): Segment[] => {
    const all = o.rows.map((r, i): Segment => {
      const amounts = [r.reclaimedMinor, r.cashMinor, r.inKindMinor];
      const before = amounts.slice(0, kind).reduce((a, b) => a + b, 0);
      return { name, from: x(before), to: x(before + (amounts[kind] ?? 0)), y: TOP_MM + step * (i + 0.5) };
    });
    const best = all.reduce((a, b) => (b.to - b.from > a.to - a.from ? b : a));
    return best.to - best.from > 0 ? [best] : [];
  });
  let end = x(0) - 2;
  for (const s of widest.sort((a, b) => a.from + a.to - b.from - b.to)) {
    const w = textWidth(s.name, 'b');
    const middle = (s.from + s.to) / 2;
    if (w + 3 < s.to - s.from && step > 5) {
      plate.label(middle, s.y + 1.2, s.name, 'b', 'middle');
      continue;
    }
    const left = Math.min(Math.max(middle - w / 2, end + 2), o.boxMm.wMm - w - 0.5);
    plate.leader([Math.min(Math.max(middle, left + 1), left + w - 1), 4.6], [middle, s.y]);
    plate.text(left, 3.6, s.name, 'b');
    end = left + w;
  }
}

/** Demand over capacity, from zero; the broken line stands at 1. What could not be assessed has no bar and says so. */
const share = (ratio: number): string => `${Math.round(ratio * 100)} %`;
export function ratioBars(o: RatioBarsOptions): Drawing {
  const words = o.words ?? ENGLISH;
  const known = o.rows.map((r) => r.ratio).filter((r): r is number => r !== null);
  const most = Math.max(1.25, ...known);
  const nameMm = Math.max(...o.rows.map((r) => textWidth(r.label)), 8) + 3;
  const step = Math.min((o.boxMm.hMm - 7) / Math.max(o.rows.length, 1), 7);
  const x = scaleLinear()
    .domain([0, most])
    .range([nameMm, o.boxMm.wMm - 14]);
  const plate = new Plate();
  const bottom = 6 + step * o.rows.length;
  plate.text(x(1), 3.6, `${words.limit} 100 %`, 'b', 'middle');
  plate.line([x(1), 4.8], [x(1), bottom], 'hid');
  plate.line([nameMm, 5.2], [nameMm, bottom], 'vis');
  o.rows.forEach((r, i) => {
    const y = 6 + step * i;
    plate.text(nameMm - 2, y + step / 2 + 1.1, r.label, '', 'end');
    if (r.ratio === null) {
      plate.label(nameMm + 1.5, y + step / 2 + 1.1, words.notAssessed, '');
      return;
    }
    const corners = box(nameMm, x(Math.max(r.ratio, 0)), y + 0.7, y + step - 0.7);
    plate.poly(corners, 'face');
    plate.hatch(corners, r.ratio > 1 ? HATCH.close : HATCH.wide);
    plate.label(x(Math.max(r.ratio, 0)) + 1.6, y + step / 2 + 1.1, share(r.ratio), '');
  });
  const said = o.rows.map((r) => `${r.label} ${r.ratio === null ? words.notAssessed : share(r.ratio)}`).join(', ');
  return plate.finish(o.boxMm.wMm, bottom + 1, `${said}; ${words.limit} 100 %.`);
}
