import type { CropKey, NightRun, ThermalMonth } from '@lathwork/model';
import type { TableSpec } from '../../../parts/table.js';
import { common, CROP_WORDS, MONTHS, MONTHS_SHORT, PLURAL_CROPS } from '../../../words/en/common.js';
import { pages } from '../../../words/en/pages.js';
import { percent, whole } from '../../../words/figures.js';
import { fill, listing } from '../../../words/fill.js';
import { chartMonths, monthRuns, type Context } from './context.js';

const w = pages.nights;

export interface Limit {
  crop: CropKey;
  label: string;
  limitC: number;
}

export interface NightsView {
  nightFinding: string;
  dayFinding: string | null;
  coldLimits: readonly Limit[];
  heatLimit: Limit | null;
  table: TableSpec;
  notes: readonly string[];
}

const MAX_LIMITS = 3;

function limits(ctx: Context): { cold: Limit[]; heat: Limit | null } {
  const all = ctx.result.thermal.crops.map((c) => ({
    crop: c.crop,
    kind: c.kind,
    label: fill(w.limits[c.kind], { crop: CROP_WORDS[c.crop] }),
    limitC: c.limitC,
  }));
  const cold: Limit[] = [];
  // One limit a crop, the one at which damage begins if there is one; lines closer than 2 degrees would lie over each other.
  for (const limit of all.filter((l) => l.kind !== 'heatHurts').sort((a, b) => Number(a.kind === 'usuallyKilled') - Number(b.kind === 'usuallyKilled'))) {
    if (cold.length < MAX_LIMITS && !cold.some((c) => c.crop === limit.crop || Math.abs(c.limitC - limit.limitC) < 4)) cold.push(limit);
  }
  const heat = all.filter((l) => l.kind === 'heatHurts').sort((a, b) => a.limitC - b.limitC)[0] ?? null;
  return { cold: cold.sort((a, b) => b.limitC - a.limitC), heat };
}

/** Likely inside low of a month: under the inner cover where the plan has one. */
const likelyLow = (m: ThermalMonth, inner: boolean): number | null => (inner ? m.innerCoverLowC : m.insideLowC)?.p50 ?? null;

function nightFinding(ctx: Context, cold: readonly Limit[]): string {
  const order = chartMonths(ctx);
  const inner = ctx.inputs.structure.cover.innerCover;
  const lead = inner ? w.under : w.bare;
  const lows = ctx.result.thermal.months.map((m) => ({ month: m.month, low: likelyLow(m, inner) }));
  const limit = [...cold].sort((a, b) => a.limitC - b.limitC)[0];
  const coldest = lows.filter((l) => l.low !== null).sort((a, b) => (a.low ?? 0) - (b.low ?? 0))[0];
  if (limit === undefined)
    return coldest === undefined ? common.noRecord : fill(w.noLimits, { low: ctx.fig.temperature(coldest.low ?? 0), month: MONTHS[coldest.month - 1] ?? '' });
  const hurt = lows.filter((l) => l.low !== null && l.low < limit.limitC).map((l) => l.month);
  const crop = CROP_WORDS[limit.crop].toLowerCase();
  if (hurt.length === 0) return lead + fill(w.lives, { crop }).replace('lives', PLURAL_CROPS.has(limit.crop) ? 'live' : 'lives');
  return lead + fill(w.hurt, { crop, verb: PLURAL_CROPS.has(limit.crop) ? 'are' : 'is', months: listing(monthRuns(hurt, order, (m) => MONTHS[m - 1] ?? '')) });
}

function dayFinding(ctx: Context, heat: Limit | null): string | null {
  if (heat === null) return null;
  const order = chartMonths(ctx);
  const over = (pick: (m: ThermalMonth) => number | undefined): string[] =>
    monthRuns(
      ctx.result.thermal.months.filter((m) => (pick(m) ?? -99) > heat.limitC).map((m) => m.month),
      order,
      (m) => MONTHS[m - 1] ?? '',
    );
  const shut = over((m) => m.closedHighC?.p90);
  const opened = over((m) => m.openedHighC?.p90);
  const t = ctx.fig.temperature(heat.limitC);
  if (shut.length === 0) return fill(w.hotNone, { t });
  return `${fill(w.hotAll, { t, months: listing(shut) })} ${opened.length === 0 ? w.hotOpenedNone : fill(w.hotOpened, { months: listing(opened) })}`;
}

function table(ctx: Context): TableSpec {
  const { fig } = ctx;
  const inner = ctx.result.thermal.months.some((m) => m.innerCoverLowC !== null);
  const rows = chartMonths(ctx).map((month) => {
    const m = ctx.result.thermal.months.find((x) => x.month === month);
    const name = MONTHS_SHORT[month - 1] ?? '';
    if (m === undefined || m.outsideLowC === null) return { cells: [name], spanned: common.noRecord };
    return {
      cells: [
        name,
        fig.t(m.outsideLowC),
        fig.range(m.insideLowC),
        ...(inner ? [m.innerCoverLowC === null ? common.none : fig.range(m.innerCoverLowC)] : []),
        fig.range(m.closedHighC),
        fig.range(m.openedHighC),
      ],
    };
  });
  const heads = [w.cols.out, w.cols.bare, ...(inner ? [w.cols.inner] : []), w.cols.shut, w.cols.open];
  return {
    caption: fill(w.table, { unit: fig.degree }),
    columns: [{ head: '', widthMm: null }, ...heads.map((head) => ({ head, widthMm: 31 }))],
    rows,
    thirds: true,
  };
}

export function nightsView(ctx: Context): NightsView {
  const { cold, heat } = limits(ctx);
  const { thermal, climate } = ctx.result;
  const missing = climate.months.filter((m) => !m.hasRecord).map((m) => m.month);
  const missingText = missing.length === 0 ? '' : fill(w.missing, { months: listing(monthRuns(missing, chartMonths(ctx), (m) => MONTHS[m - 1] ?? '')) });
  return {
    nightFinding: nightFinding(ctx, cold),
    dayFinding: dayFinding(ctx, heat),
    coldLimits: cold,
    heatLimit: heat,
    table: table(ctx),
    notes: [
      fill(w.vents, { free: ctx.fig.area(thermal.vents.freeM2), floor: percent(thermal.vents.floorFrac), wanted: percent(thermal.vents.wantedFrac) }),
      ...(thermal.drivers.length > 0 ? [fill(w.drivers, { list: listing(thermal.drivers.slice(0, 3).map((d) => w.driverWords[d.input])) })] : []),
      fill(w.note, { station: ctx.inputs.climate.stationName, period: ctx.inputs.climate.period, missing: missingText }).trim(),
    ],
  };
}

export interface ColdNight {
  run: NightRun;
  finding: string;
}

/** The nights worth a curve: the shelter without its inner cover, and with it where there is one. */
export function coldNights(ctx: Context): { nights: ColdNight[]; table: TableSpec } {
  const { fig } = ctx;
  const runs = ctx.result.thermal.designNights;
  const shown = runs.filter((r) => r.variant !== 'asPlanned');
  const nights = (shown.length > 0 ? shown : runs).slice(0, 2).map((run) => {
    const lows = run.curve.p50C;
    const hour = lows.indexOf(Math.min(...lows));
    return {
      run,
      finding: fill(w.coldFinding, {
        name: w.variants[run.variant],
        hour,
        low: fig.t(run.insideLowC.p10),
        high: fig.temperatureShort(run.insideLowC.p90),
        out: fig.temperatureShort(run.outsideLowC),
      }),
    };
  });
  const gain = (r: NightRun): string => `${whole(fig.isMetric ? r.liftK.p10 : r.liftK.p10 * 1.8)} to ${whole(fig.isMetric ? r.liftK.p90 : r.liftK.p90 * 1.8)}`;
  const rows = (shown.length > 0 ? shown : runs).map((r) => ({
    cells: [w.variants[r.variant], fig.t(r.outsideLowC), fig.range(r.insideLowC), fig.range(r.leafLowC), gain(r)],
  }));
  const c = w.coldCols;
  return {
    nights,
    table: {
      caption: fill(w.coldTable, { unit: fig.degree }),
      columns: [{ head: '', widthMm: null }, ...[c.out, c.air, c.leaf, c.gain].map((head) => ({ head, widthMm: 30 }))],
      rows,
    },
  };
}
