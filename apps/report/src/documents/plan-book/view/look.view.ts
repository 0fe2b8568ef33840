import type { Range } from '@lathwork/model';
import { common, GROUP_WORDS } from '../../../words/en/common.js';
import { RISK_HEADS } from '../../../words/en/notes.js';
import { pages } from '../../../words/en/pages.js';
import { hours, moneyWhole } from '../../../words/figures.js';
import { fill } from '../../../words/fill.js';
import { noteText } from '../../../words/notes.js';
import type { Context } from './context.js';

const w = pages.look;

export interface ExpectRow {
  label: string;
  low: string;
  likely: string;
  high: string;
  unit: string;
  /** Temperatures for the common scale; null for hours and money. */
  rangeC: Range<'degC'> | null;
}

export interface LookView {
  facts: readonly (readonly [string, string])[];
  expect: readonly ExpectRow[];
  costTitle: string;
  costRows: readonly (readonly string[])[];
  costTotal: readonly string[];
  unpriced: string | null;
  willNot: readonly string[];
  asks: readonly string[];
  risks: readonly { head: string; text: string }[];
}

const dash = (minor: number, currency: string): string => (minor === 0 ? common.none : moneyWhole(minor, currency));

function facts(ctx: Context): [string, string][] {
  const { structure } = ctx.inputs;
  const { schedule, geometry } = ctx.result;
  const film = w.filmKinds[structure.cover.film];
  const age = structure.cover.ageY;
  const cover = age === 'unknown' ? fill(w.coverUnknown, { film }) : age === 0 ? fill(w.coverNew, { film }) : fill(w.coverUsed, { film, age: Math.round(age) });
  return [
    [w.floor, fill(w.floorText, { area: ctx.fig.area(geometry.footprintM2), beds: ctx.fig.area(structure.bedsM2) })],
    [w.frame, structure.frameStockTag === null ? w.frameBought : fill(w.frameReclaimed, { tag: structure.frameStockTag })],
    [
      w.cover,
      [cover, ...(structure.cover.secondFilm ? [w.secondFilm] : []), ...(structure.cover.innerCover ? [w.inner] : [])].join(', ').replace(', and', ' and'),
    ],
    [w.crew, fill(w.crewText, { best: schedule.crewBest, min: schedule.crewMin })],
    [w.time, fill(w.timeText, { low: schedule.workDays.low, high: schedule.workDays.high })],
  ];
}

function expectRows(ctx: Context): ExpectRow[] {
  const { schedule, budget, thermal } = ctx.result;
  const { fig } = ctx;
  const rows: ExpectRow[] = [
    {
      label: w.hoursRow,
      low: hours(Math.round(schedule.totalHours.lowH)),
      likely: hours(Math.round(schedule.totalHours.likelyH)),
      high: hours(Math.round(schedule.totalHours.highH)),
      unit: w.hoursUnit,
      rangeC: null,
    },
    {
      label: w.moneyRow,
      low: moneyWhole(budget.cashLowMinor, budget.currency),
      likely: moneyWhole(budget.cashMinor, budget.currency),
      high: moneyWhole(budget.cashHighMinor, budget.currency),
      unit: budget.currency,
      rangeC: null,
    },
  ];
  const add = (label: string, r: Range<'degC'> | undefined): void => {
    if (r !== undefined) rows.push({ label, low: fig.t(r.p10), likely: fig.t(r.p50), high: fig.t(r.p90), unit: fig.degree, rangeC: r });
  };
  const bare = thermal.designNights.find((n) => n.variant === 'bare') ?? thermal.designNights.find((n) => n.variant === 'asPlanned');
  const inner = thermal.designNights.find((n) => n.variant === 'innerCover');
  const closed = thermal.clearDays.find((d) => d.variant === 'closed');
  if (bare !== undefined) add(fill(w.nightRow, { t: fig.temperature(bare.outsideLowC) }), bare.insideLowC);
  add(w.coverRow, inner?.insideLowC);
  if (closed !== undefined) add(fill(w.shutRow, { t: fig.temperature(closed.outsideHighC) }), closed.insideHighC);
  add(w.openRow, thermal.clearDays.find((d) => d.variant === 'opened')?.insideHighC);
  return rows;
}

function willNot(ctx: Context): string[] {
  const night = ctx.result.thermal.designNights.find((n) => n.variant === 'bare') ?? ctx.result.thermal.designNights[0];
  const lift = night === undefined ? null : ctx.fig.difference(Math.max(0, night.liftK.p50));
  const out = [lift === null || (night?.liftK.p50 ?? 0) < 0.5 ? w.wontFrostNone : fill(w.wontFrost, { lift })];
  out.push(ctx.inputs.wishes.ventsOpenedBy === 'nobody' ? w.wontTendNobody : w.wontTend);
  if (ctx.result.snow.verdict !== 'noRedFlag') out.push(w.wontSnow);
  out.push(w.wontStorm);
  return out;
}

const ASKS_SHOWN = [3, 2, 1, 0, 0, 0, 0] as const;
export const LOOK_SHORTENINGS = ASKS_SHOWN.length;
/** In its shortest form a risk is told by its first sentence. */
const firstSentence = (text: string): string => /^.*?[.?!](?=\s|$)/.exec(text)?.[0] ?? text;

export function lookView(ctx: Context, shortening = 0): LookView {
  const { budget, notes, risks } = ctx.result;
  const cells = (label: string, a: number, b: number, c: number): string[] => [
    label,
    dash(a, budget.currency),
    dash(b, budget.currency),
    dash(c, budget.currency),
  ];
  return {
    facts: facts(ctx),
    expect: expectRows(ctx),
    costTitle: budget.oldestPriceOn === null ? w.costsNoDate : fill(w.costs, { date: budget.oldestPriceOn }),
    // A row of nothing but dashes goes first when the page is full.
    costRows: budget.lines
      .filter((l) => shortening < 5 || l.reclaimedMinor !== 0 || l.cashMinor !== 0 || l.inKindMinor !== 0)
      .map((l) => cells(GROUP_WORDS[l.group], l.reclaimedMinor, l.cashMinor, l.inKindMinor)),
    costTotal: cells(w.total, budget.reclaimedMinor, budget.cashMinor, budget.inKindMinor),
    unpriced: budget.unpricedCount === 0 ? null : budget.unpricedCount === 1 ? w.unpricedOne : fill(w.unpriced, { count: budget.unpricedCount }),
    willNot: willNot(ctx).slice(0, shortening >= 6 ? 2 : shortening >= 4 ? 3 : undefined),
    asks: notes
      .filter((n) => n.severity === 'ask')
      .slice(0, ASKS_SHOWN[shortening] ?? 0)
      .map((n) => noteText(n, ctx.fig)),
    risks: risks.map((risk) => {
      const note = notes.find((n) => n.code === risk.code);
      return {
        head: RISK_HEADS[risk.room],
        text: note === undefined || shortening >= 6 ? '' : shortening >= 1 ? firstSentence(noteText(note, ctx.fig)) : noteText(note, ctx.fig),
      };
    }),
  };
}
