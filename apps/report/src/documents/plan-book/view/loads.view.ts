import type { TableSpec } from '../../../parts/table.js';
import { common, ANCHOR_WORDS, BASIS_WORDS, VERDICT_WORDS } from '../../../words/en/common.js';
import { pages } from '../../../words/en/pages.js';
import { percent, whole } from '../../../words/figures.js';
import { fill, listing } from '../../../words/fill.js';
import { noteText } from '../../../words/notes.js';
import type { Context } from './context.js';

const w = pages.loads;

export interface LoadsView {
  summary: TableSpec;
  /** Share of each limit that is used, for the bars; and what they show. */
  shares: readonly { label: string; ratio: number | null }[];
  finding: string;
  wind: readonly string[];
  snow: readonly string[];
  anchors: readonly string[];
  unrated: boolean;
  would: readonly string[];
  posts: TableSpec;
}

const orNone = (value: string | null): string => value ?? common.none;

const share = (demand: number | null, capacity: number | null | undefined): number | null =>
  demand === null || capacity === null || capacity === undefined || capacity <= 0 ? null : demand / capacity;

/** The strongest pulled zone of the film and what one of its screws must take. */
function filmScrew(ctx: Context): { demandN: number | null; capacityN: number | null } {
  const zone = [...ctx.result.fastening.zones].sort((a, b) => (b.lineLoadNPerM ?? 0) - (a.lineLoadNPerM ?? 0))[0];
  if (zone === undefined) return { demandN: null, capacityN: null };
  return { demandN: zone.lineLoadNPerM === null ? null : (zone.lineLoadNPerM * zone.spacingMm) / 1000, capacityN: zone.screwCapacityN };
}

function shares(ctx: Context): LoadsView['shares'] {
  const { snow, anchorage } = ctx.result;
  const worst = anchorage.posts.find((p) => p.postId === anchorage.worstPostId);
  const screw = filmScrew(ctx);
  return [
    { label: w.bars.anchor, ratio: share(anchorage.worstDemandN, worst?.capacityN) },
    { label: w.bars.snow, ratio: share(snow.bowMomentNm, snow.bowCapacityNm) },
    { label: w.bars.film, ratio: share(screw.demandN, screw.capacityN) },
  ];
}

function finding(rows: LoadsView['shares']): string {
  const over = rows.filter((r) => r.ratio !== null && r.ratio > 1).map((r) => r.label.toLowerCase());
  const open = rows.filter((r) => r.ratio === null).map((r) => r.label.toLowerCase());
  const said = over.length > 0 ? fill(w.barsOver, { list: listing(over) }) : w.barsNone;
  return open.length === 0 ? said : `${said} ${fill(w.barsOpen, { list: listing(open) })}`;
}

function summary(ctx: Context): TableSpec {
  const { wind, snow, anchorage, fastening } = ctx.result;
  const { fig } = ctx;
  const ratio = (demand: number | null, capacity: number | null): string => {
    const used = share(demand, capacity);
    return used === null ? common.none : percent(used);
  };
  const worst = anchorage.posts.find((p) => p.postId === anchorage.worstPostId);
  const screw = filmScrew(ctx);
  const n = (value: number | null | undefined): string | null => (value === null || value === undefined ? null : fig.force(value));
  const rows = [
    { cells: [w.rows.whole, orNone(n(wind.totalUpliftN)), common.none, common.none, VERDICT_WORDS[wind.verdict]] },
    {
      cells: [
        fill(w.rows.uplift, { post: anchorage.worstPostId ?? common.none }),
        orNone(n(anchorage.worstDemandN)),
        orNone(n(worst?.capacityN)),
        ratio(anchorage.worstDemandN, worst?.capacityN ?? null),
        VERDICT_WORDS[anchorage.verdict],
      ],
    },
    {
      cells: [
        w.rows.snow,
        snow.bowMomentNm === null ? common.none : fig.moment(snow.bowMomentNm),
        snow.bowCapacityNm === null ? common.unknown : fig.moment(snow.bowCapacityNm),
        ratio(snow.bowMomentNm, snow.bowCapacityNm),
        VERDICT_WORDS[snow.verdict],
      ],
    },
    { cells: [w.rows.film, orNone(n(screw.demandN)), orNone(n(screw.capacityN)), ratio(screw.demandN, screw.capacityN), VERDICT_WORDS[fastening.verdict]] },
  ];
  return {
    caption: w.what,
    columns: [
      { head: w.cols.check, widthMm: null, left: true },
      { head: w.cols.demand, widthMm: 33 },
      { head: w.cols.capacity, widthMm: 33 },
      { head: w.cols.ratio, widthMm: 18 },
      { head: w.cols.word, widthMm: 40, left: true },
    ],
    rows,
  };
}

function windText(ctx: Context): string[] {
  const { wind } = ctx.result;
  const why = ctx.result.notes.find((n) => n.room === 'wind');
  if (wind.gustMPerS === null || wind.velocityPressurePa === null || wind.totalUpliftN === null)
    return [fill(w.windNone, { why: why === undefined ? common.unknown : noteText(why, ctx.fig).replace(/\.$/, '') })];
  return [
    fill(w.windText, { gust: ctx.fig.speed(wind.gustMPerS), pressure: ctx.fig.pressure(wind.velocityPressurePa), uplift: ctx.fig.force(wind.totalUpliftN) }),
    ...(wind.liftsUnanchoredAtMPerS === null ? [] : [fill(w.lifts, { gust: ctx.fig.speed(wind.liftsUnanchoredAtMPerS) })]),
    ...(wind.standard === 'none' ? [] : [fill(w.standard, { standard: wind.standard })]),
  ];
}

function snowText(ctx: Context): string[] {
  const { snow } = ctx.result;
  const roof = snow.slopedPa ?? snow.flatRoofPa;
  return [
    ...(snow.groundPa === null || roof === null
      ? [`${VERDICT_WORDS[snow.verdict]}.`.replace(/^./, (c) => c.toUpperCase())]
      : [fill(w.snowText, { ground: ctx.fig.pressure(snow.groundPa), roof: ctx.fig.pressure(roof) })]),
    snow.clearAt === null ? w.clearAny : fill(w.clearAt, { light: ctx.fig.length(snow.clearAt.lightM), wet: ctx.fig.length(snow.clearAt.wetM) }),
    ...(snow.driftFlag ? [w.drift] : []),
  ];
}

function would(ctx: Context): string[] {
  return ctx.result.anchorage.wouldHold.map((o) => {
    const count = o.count === null ? '' : fill(w.ballastCount, { count: o.count });
    if (o.kind === 'augerTorque') return fill(w.options.augerTorque, { torque: o.torqueNm === null ? common.unknown : ctx.fig.moment(o.torqueNm) });
    if (o.kind === 'drivenPipe') return fill(w.options.drivenPipe, { count: o.count === null ? common.unknown : whole(o.count) });
    const mass = o.massKg === null ? common.unknown : ctx.fig.mass(o.massKg);
    return o.kind === 'ballast' ? fill(w.options.ballast, { mass, count }) : fill(w.options.concretePier, { mass });
  });
}

function posts(ctx: Context): TableSpec {
  const f = (value: number | null): string => (value === null ? common.notAssessed : ctx.fig.forceColumns(value).first);
  const rows = ctx.result.anchorage.posts.map((p) => ({
    cells: [
      p.postId,
      f(p.demandN),
      p.capacityN === null ? common.unknown : f(p.capacityN),
      p.demandRatio === null ? common.none : percent(p.demandRatio),
      VERDICT_WORDS[p.verdict],
    ],
  }));
  return {
    caption: fill(w.postsTable, { unit: ctx.fig.forceUnits.first }),
    columns: [
      { head: w.postCols.post, widthMm: 20 },
      { head: w.postCols.must, widthMm: 32 },
      { head: w.postCols.can, widthMm: 32 },
      { head: w.postCols.ratio, widthMm: 22 },
      { head: w.postCols.word, widthMm: null, left: true },
    ],
    rows,
    thirds: true,
  };
}

export function loadsView(ctx: Context): LoadsView {
  const { anchorage } = ctx.result;
  const kind = (ANCHOR_WORDS as Record<string, string>)[anchorage.anchorKind] ?? anchorage.anchorKind;
  const capacity =
    anchorage.capacityEachN === null
      ? []
      : [
          `${kind.replace(/^./, (c) => c.toUpperCase())}. ${fill(w.capacity, { each: ctx.fig.force(anchorage.capacityEachN), basis: BASIS_WORDS[anchorage.capacityBasis] })}`,
        ];
  const bars = shares(ctx);
  return {
    summary: summary(ctx),
    shares: bars,
    finding: finding(bars),
    wind: windText(ctx),
    snow: snowText(ctx),
    anchors: capacity,
    unrated: !anchorage.rated,
    would: would(ctx),
    posts: posts(ctx),
  };
}
