import type { TakeOffLine } from '@lathwork/model';
import type { Row, TableSpec } from '../../../parts/table.js';
import { common, AMOUNT_WORDS, GROUP_WORDS, HAZARD_WORDS, MATERIAL_WORDS, SHEET_WORDS, USE_WORDS, ZONE_WORDS } from '../../../words/en/common.js';
import { pages } from '../../../words/en/pages.js';
import { decimal, moneyWhole, percent, rough, whole } from '../../../words/figures.js';
import { fill, listing } from '../../../words/fill.js';
import type { Context } from './context.js';

const NBSP = '\u00a0';

/** An amount in the unit the list counts in; lengths and areas follow the edition. */
export function amount(value: number, unit: TakeOffLine['unit'], ctx: Context): string {
  if (unit === 'm' && !ctx.fig.isMetric) return `${rough(value / 0.3048)}${NBSP}ft`;
  if (unit === 'm2' && !ctx.fig.isMetric) return `${rough(value / 0.09290304)}${NBSP}sq${NBSP}ft`;
  if (unit === 'm3' && !ctx.fig.isMetric) return `${rough(value / 0.764554857984)}${NBSP}cu${NBSP}yd`;
  if (unit === 'L' && !ctx.fig.isMetric) return `${rough(value / 3.785411784)}${NBSP}gal`;
  if (unit === 'kg' && !ctx.fig.isMetric) return `${rough(value / 0.45359237)}${NBSP}lb`;
  const word = AMOUNT_WORDS[unit];
  const figure = unit === 'each' || unit === 'set' || unit === 'lump' ? whole(Math.ceil(value - 1e-9)) : rough(value);
  return word === '' ? figure : `${figure}${NBSP}${word}`;
}

const isListed = (line: TakeOffLine): boolean => line.material !== 'contingency' && line.wanted > 0;
const dashed = (value: number, unit: TakeOffLine['unit'], ctx: Context): string => (value <= 0 ? common.none : amount(value, unit, ctx));

function grouped(lines: readonly TakeOffLine[], row: (line: TakeOffLine) => Row): Row[] {
  const out: Row[] = [];
  let last = '';
  for (const line of lines) {
    if (line.group !== last) out.push({ cells: [GROUP_WORDS[line.group]], group: true });
    last = line.group;
    out.push(row(line));
  }
  return out;
}

/** Cells to write in what each anchor took. */
export function anchorLogTable(ctx: Context): TableSpec | null {
  // Without a demand there is still a pull to write down; a lean-to's wall side is not anchored in the ground.
  const unassessed = ctx.result.geometry.posts
    .filter((p) => ctx.inputs.structure.kind !== 'leanTo' || p.row === 'A')
    .map((p) => ({ postId: p.postId, demandN: null }));
  const posts = ctx.result.anchorage.posts.length > 0 ? ctx.result.anchorage.posts : ctx.inputs.structure.anchor.kind === 'none' ? [] : unassessed;
  if (posts.length === 0) return null;
  const c = pages.anchors.cols;
  const pen = '\u00a0';
  const rows = posts.map((p) => ({ cells: [p.postId, p.demandN === null ? common.notAssessed : ctx.fig.force(p.demandN), pen, pen, pen, pen] }));
  return {
    caption: pages.anchors.log,
    columns: [
      { head: c.post, widthMm: 11 },
      { head: c.demand, widthMm: 31 },
      { head: c.depth, widthMm: 15 },
      { head: c.pulled, widthMm: 17 },
      { head: c.held, widthMm: 13 },
      { head: c.by, widthMm: null, left: true },
    ],
    rows,
    pen: true,
  };
}

const m = pages.materials;

export function allTable(ctx: Context): TableSpec {
  const rows = grouped(ctx.result.takeOff.lines.filter(isListed), (l) => {
    const have = l.reclaimed.reduce((sum, r) => sum + r.amount, 0);
    const tags = l.reclaimed.map((r) => r.tag);
    const from = have <= 0 ? common.none : `${amount(have, l.unit, ctx)} (${tags.length > 4 ? `${tags.slice(0, 4).join(', ')} \u2026` : tags.join(', ')})`;
    return { cells: [l.mark ?? common.none, MATERIAL_WORDS[l.material], amount(l.wanted, l.unit, ctx), from, dashed(l.toBuy, l.unit, ctx)] };
  });
  const c = m.allCols;
  return {
    caption: m.all,
    columns: [
      { head: c.mark, widthMm: 14 },
      { head: c.what, widthMm: null, left: true },
      { head: c.need, widthMm: 24 },
      { head: c.pile, widthMm: 48, left: true },
      { head: c.buy, widthMm: 24, key: true },
    ],
    rows,
  };
}

export function shopTable(ctx: Context): TableSpec | null {
  const lines = ctx.result.takeOff.lines.filter((l) => isListed(l) && l.toBuy > 0);
  if (lines.length === 0) return null;
  const c = m.shopCols;
  const rows = grouped(lines, (l) => {
    return {
      cells: [
        l.mark ?? common.none,
        MATERIAL_WORDS[l.material],
        amount(l.boughtAmount > 0 ? l.boughtAmount : l.toBuy, l.unit, ctx),
        l.packs > 0 ? whole(l.packs) : common.none,
        l.cash === null ? common.priceUnknown : `${moneyWhole(l.cash.minor, l.cash.currency)}`,
        l.supplier ?? common.none,
        l.priceReadOn === null ? (l.cash === null ? common.none : m.noDate) : `${l.priceReadOn}${l.priceStale ? ` ${m.stale}` : ''}`,
      ],
    };
  });
  return {
    caption: m.shop,
    columns: [
      { head: c.mark, widthMm: 11 },
      { head: c.what, widthMm: null, left: true, whole: true },
      { head: c.buy, widthMm: 18, key: true, whole: true },
      { head: c.packs, widthMm: 13 },
      { head: `${c.cash}, ${ctx.result.budget.currency}`, widthMm: 20 },
      { head: c.where, widthMm: 25, left: true },
      { head: c.read, widthMm: 31, left: true, whole: true },
    ],
    rows,
  };
}

export function yardTable(ctx: Context): TableSpec | null {
  const c = m.yardCols;
  const taken = ctx.result.takeOff.lines.flatMap((l) => l.reclaimed.map((r) => ({ line: l, ...r })));
  if (taken.length === 0) return null;
  const rows: Row[] = taken
    .sort((a, b) => a.tag.localeCompare(b.tag, 'en', { numeric: true }))
    .map((t) => {
      const item = ctx.inputs.stock.find((s) => s.tag === t.tag);
      return {
        cells: [
          t.tag,
          MATERIAL_WORDS[t.line.material],
          amount(t.amount, t.line.unit, ctx),
          item?.grade ?? common.unknown,
          item === undefined || item.hazards.length === 0 ? common.none : item.hazards.map((h) => HAZARD_WORDS[h]).join('; '),
          '\u00a0',
        ],
      };
    });
  return {
    caption: m.yard,
    columns: [
      { head: c.tag, widthMm: 17, key: true },
      { head: c.what, widthMm: 71, left: true, whole: true },
      { head: c.amount, widthMm: 18, whole: true },
      { head: c.grade, widthMm: 12 },
      { head: c.hazard, widthMm: null, left: true },
      { head: c.got, widthMm: 10 },
    ],
    rows,
    thirds: true,
  };
}

const cut = pages.cutting;

export function partsTable(ctx: Context, unplaced: boolean): TableSpec | null {
  const parts = unplaced ? ctx.result.cutting.unplaced : ctx.result.cutting.parts;
  if (parts.length === 0) return null;
  const rows = parts.map((p) => ({
    cells: [p.letter, USE_WORDS[p.use], p.forOpening ?? common.none, ctx.fig.sizeText(p.lengthMm / 1000), whole(p.count), MATERIAL_WORDS[p.material]],
  }));
  const c = cut.cols;
  return {
    caption: unplaced ? cut.unplaced : cut.parts,
    columns: [
      { head: c.letter, widthMm: 10 },
      { head: c.use, widthMm: 28, left: true },
      { head: c.forWhat, widthMm: 11, left: true },
      { head: c.size, widthMm: 38, key: true, whole: true },
      { head: c.count, widthMm: 14 },
      { head: c.from, widthMm: null, left: true, whole: true },
    ],
    rows,
    thirds: true,
  };
}

export function cuttingFinding(ctx: Context): string[] {
  const { cutting } = ctx.result;
  const kerf = cutting.boards[0]?.kerfMm;
  return [
    fill(cut.finding, { boards: cutting.boards.length, bought: cutting.boughtBoards, least: cutting.lowerBoundBoards }),
    ...(kerf === undefined ? [] : [fill(cut.kerf, { kerf: ctx.fig.spacing(kerf) })]),
  ];
}

const b = pages.budget;

export function budgetTable(ctx: Context): TableSpec {
  const { budget } = ctx.result;
  const d = (minor: number): string => (minor === 0 ? common.none : moneyWhole(minor, budget.currency));
  return {
    caption: fill(b.table, { currency: budget.currency }),
    columns: [
      { head: b.cols.what, widthMm: null },
      { head: b.cols.pile, widthMm: 34 },
      { head: b.cols.buy, widthMm: 34, key: true },
      { head: b.cols.given, widthMm: 34 },
    ],
    rows: budget.lines.map((l) => ({ cells: [GROUP_WORDS[l.group], d(l.reclaimedMinor), d(l.cashMinor), d(l.inKindMinor)] })),
    foot: { cells: [pages.look.total, d(budget.reclaimedMinor), d(budget.cashMinor), d(budget.inKindMinor)] },
  };
}

export function budgetSentences(ctx: Context): { verdict: string; lines: string[] } {
  const { budget } = ctx.result;
  const cash = (minor: number): string => moneyWhole(minor, budget.currency);
  return {
    verdict: fill(b.verdict[budget.verdict], {
      cap: budget.capMinor === null ? '' : `${cash(budget.capMinor)} ${budget.currency}`,
      over: `${cash(budget.overCapMinor)} ${budget.currency}`,
    }),
    lines: [
      fill(b.range, { low: cash(budget.cashLowMinor), high: cash(budget.cashHighMinor), likely: cash(budget.cashMinor), currency: budget.currency }),
      fill(b.basis, { consumables: percent(budget.consumablesFrac), reserve: percent(budget.contingencyFrac) }),
      b.keep,
      ...(budget.unpricedCount === 0 ? [] : [budget.unpricedCount === 1 ? pages.look.unpricedOne : fill(pages.look.unpriced, { count: budget.unpricedCount })]),
      ...(budget.otherCurrencies.length === 0
        ? []
        : [fill(b.other, { list: listing(budget.otherCurrencies.map((o) => `${moneyWhole(o.minor, o.currency)} ${o.currency}`)) })]),
    ],
  };
}

const f = pages.film;

export function filmTables(ctx: Context): TableSpec[] {
  const { geometry, fastening } = ctx.result;
  const sheets: Row[] = geometry.filmSheets.map((s) => ({
    cells: [
      s.sheetId,
      SHEET_WORDS[s.covers],
      `${ctx.fig.sizeText(s.lengthM)} \u00d7 ${ctx.fig.sizeText(s.widthM)}`,
      whole(s.strips),
      s.seams === 0 ? common.none : fill(f.lap, { seams: s.seams, lap: ctx.fig.spacing(s.seamLapM * 1000) }),
    ],
  }));
  const zones: Row[] = fastening.zones.map((z) => ({
    cells: [
      ZONE_WORDS[z.zone],
      z.suctionPa === null ? common.notAssessed : ctx.fig.pressure(z.suctionPa),
      z.lineLoadNPerM === null ? common.notAssessed : ctx.fig.lineLoad(z.lineLoadNPerM),
      ctx.fig.spacing(z.spacingMm),
      ctx.fig.run(z.runM),
      whole(z.screws),
    ],
  }));
  return [
    {
      caption: f.order,
      columns: [
        { head: f.cols.mark, widthMm: 14 },
        { head: f.cols.covers, widthMm: 30, left: true },
        { head: f.cols.size, widthMm: 82, key: true },
        { head: f.cols.strips, widthMm: 14 },
        { head: f.cols.seams, widthMm: null, left: true },
      ],
      rows: sheets,
    },
    {
      caption: f.fasten,
      columns: [
        { head: f.fcols.zone, widthMm: 18 },
        { head: f.fcols.suction, widthMm: 36 },
        { head: f.fcols.line, widthMm: 40 },
        { head: f.fcols.spacing, widthMm: null, key: true },
        { head: f.fcols.run, widthMm: 22 },
        { head: f.fcols.screws, widthMm: 18 },
      ],
      rows: zones,
    },
  ];
}

export function filmSentences(ctx: Context): string[] {
  const { geometry, fastening } = ctx.result;
  const { cover } = ctx.inputs.structure;
  const s = fastening.screw;
  return [
    fill(f.girth, { girth: ctx.fig.sizeText(geometry.girthM) }),
    fill(f.roll, { roll: ctx.fig.sizeText(cover.rollWidthM), wrap: ctx.fig.spacing(cover.wrapM * 1000) }),
    fill(f.screw, { diameter: decimal(s.diameterMm, 1), length: whole(s.lengthMm), thread: whole(s.threadInWoodMm), gauge: s.gauge }),
    fill(f.total, { screws: whole(fastening.screwsCount), run: ctx.fig.run(fastening.battenM), tube: whole(fastening.tubeScrewsCount) }),
  ];
}
