import type { VNode } from 'preact';
import { compassPart, DoesNotFitError, ENGLISH, type Drawing, type Fit } from '@lathwork/drawing';
import type { FixedPart } from '../../../layout/book.js';
import { Drawn } from '../../../parts/parts.js';
import { scaleBarSvg } from '../../../parts/svg.js';
import { Table, type TableSpec } from '../../../parts/table.js';
import { pages } from '../../../words/en/pages.js';
import { fill } from '../../../words/fill.js';
import type { Box, Drawings } from '../drawings.js';
import { anchorLogTable } from '../view/lists.view.js';
import type { Context } from '../view/context.js';
import { compassWord } from '../view/site.view.js';
import { fieldOf, sheetPart, type Area, type Stood, type TitleBlock } from './sheet-frame.js';

const w = pages.sheets;
const PAD_MM = 2;

type ViewMaker = (box: Area) => Drawing | null;

const stand = (drawing: Drawing, leftMm: number, topMm: number): Stood => ({
  node: <Drawn svg={drawing.svg} />,
  leftMm,
  topMm,
  usedLineTypes: drawing.usedLineTypes,
});

/** Shares of the width for the first view that are tried; the one that lets the views stand largest wins. */
const SHARES = [0.4, 0.45, 0.5, 0.55, 0.6, 0.65, 0.7, 0.35, 0.75] as const;
/** A view smaller than this is hard to read on site, and counts for more: two middling views are better than one large and one tiny. */
const COARSE = 50;
/** A view that had to give up dimensions or its scale stands behind every one that is whole. */
const GIVEN_UP: Record<Fit, number> = { whole: 0, reduced: 100, notToScale: 1000 };
const sizeOf = (d: Drawing): number => {
  const denominator = d.scale?.denominator ?? 1000;
  return GIVEN_UP[d.fit] + Math.log(denominator) + 2 * Math.max(0, Math.log(denominator / COARSE));
};

interface Layout {
  stood: Stood[];
  /** Sum of the logarithms of the scales: the smaller, the larger the views stand. */
  cost: number;
}

function placeAt(field: Area, makers: readonly ViewMaker[], shares: readonly number[]): Layout {
  const hMm = field.hMm - 2 * PAD_MM;
  let left = PAD_MM;
  let cost = 0;
  const stood = makers.flatMap((draw, i) => {
    const wMm = (field.wMm - PAD_MM * (makers.length + 1)) * (shares[i] ?? 0);
    const at = left;
    left += wMm + PAD_MM;
    const drawing = draw({ wMm, hMm });
    if (drawing === null) return [];
    cost += sizeOf(drawing);
    return [stand(drawing, at + Math.max(0, (wMm - drawing.widthMm) / 2), PAD_MM + Math.max(0, (hMm - drawing.heightMm) / 2))];
  });
  return { stood, cost };
}

/** The layout that lets its views stand largest; a layout that cannot be set at all is left out. */
function best(layouts: readonly (() => Layout | null)[]): Layout {
  let found: Layout | null = null;
  let refusal: unknown = null;
  for (const lay of layouts) {
    try {
      const tried = lay();
      if (tried !== null && tried.cost < (found?.cost ?? Infinity) - 1e-9) found = tried;
    } catch (error) {
      if (!(error instanceof DoesNotFitError)) throw error;
      refusal = error;
    }
  }
  if (found === null) throw refusal ?? new DoesNotFitError('no layout of the sheet fits');
  return found;
}

/** One view, or two side by side, each centred in its own field. The share of a second view may be all that the first one leaves. */
function sideBySide(field: Area, makers: readonly ViewMaker[]): Layout {
  if (makers.length === 1) return placeAt(field, makers, [1]);
  const snug = (): Layout | null => {
    const [first, second] = makers;
    const a = first?.({ wMm: field.wMm * 0.72, hMm: field.hMm - 2 * PAD_MM });
    if (a === null || a === undefined || second === undefined) return null;
    const share = (a.widthMm + 0.05) / (field.wMm - 3 * PAD_MM);
    return placeAt(field, makers, [share, 1 - share]);
  };
  return best([...SHARES.map((share) => () => placeAt(field, makers, [share, 1 - share])), snug]);
}

const Heading = ({ title, drawing, barMm = 38 }: { title: string; drawing: Drawing; barMm?: number }): VNode => (
  <>
    <p class="word" style="white-space:nowrap;text-wrap:nowrap;padding-bottom:1mm">{`${title}, ${drawing.scale?.text ?? ENGLISH.notToScale}`}</p>
    {drawing.scale === null ? null : <Drawn svg={scaleBarSvg(drawing.scale.denominator, fill(w.scaleBar, { scale: drawing.scale.text }), barMm)} />}
  </>
);

const HEADING_MM = { wMm: 44, hMm: 16 };
const COMPASS = { wMm: 53, hMm: 17 };
/** The same things one under the other, in a strip between the two views. */
const NARROW_MM = 23;
const NARROW_BAR_MM = 18;

/** Title, scale bar, north and storm wind of the plan, one under the other. */
function planHeading(ctx: Context, plan: Drawing, leftMm: number, topMm: number, upright: boolean): Stood[] {
  const compass = compassPart({ frontFacesDeg: ctx.inputs.structure.frontFacesDeg, stormWindFromDeg: ctx.inputs.site.stormWindFromDeg, upright });
  return [
    { node: <Heading title={ENGLISH.plan} drawing={plan} barMm={upright ? NARROW_BAR_MM : 38} />, leftMm, topMm, usedLineTypes: [] },
    stand(compass, leftMm - (upright ? 0 : 3), topMm + HEADING_MM.hMm),
  ];
}

type HeadingPlace = 'between' | 'narrow' | 'above';
/** What the heading of the plan takes from the width and the height of the elevation. */
const TAKES: Record<HeadingPlace, Box> = {
  between: { wMm: COMPASS.wMm, hMm: 0 },
  narrow: { wMm: NARROW_MM, hMm: 0 },
  above: { wMm: 0, hMm: HEADING_MM.hMm + COMPASS.hMm },
};
const EDGE_MM = 1;

/** Plan upright at the right edge, elevation standing on the foot of the field at its left, headings in what is left free. */
function planBesideFront(ctx: Context, d: Drawings, field: Area, heading: HeadingPlace): Layout {
  const hMm = field.hMm - 2 * PAD_MM;
  const plan = d.barePlan({ wMm: field.wMm * 0.55, hMm });
  const planLeft = field.wMm - EDGE_MM - plan.widthMm;
  const takes = TAKES[heading];
  const front = d.elevation('front', { wMm: planLeft - 2 * EDGE_MM - takes.wMm, hMm: hMm - takes.hMm }, { heading: false });
  const free = planLeft - EDGE_MM - front.widthMm - takes.wMm;
  const frontLeft = EDGE_MM + Math.max(0, free / 2);
  const blockLeft = heading === 'narrow' ? frontLeft + front.widthMm + Math.max(0.5, free / 2) : planLeft - COMPASS.wMm + 2;
  return {
    stood: [
      {
        node: <Heading title={`${ENGLISH.elevation.front}, ${compassWord(ctx.inputs.structure.frontFacesDeg)}`} drawing={front} />,
        leftMm: PAD_MM + 1,
        topMm: 1.5,
        usedLineTypes: [],
      },
      ...planHeading(ctx, plan, blockLeft, 1.5, heading === 'narrow'),
      stand(front, frontLeft, field.hMm - PAD_MM - front.heightMm),
      stand(plan, planLeft, PAD_MM + Math.max(0, hMm - plan.heightMm) / 2),
    ],
    cost: sizeOf(front) + sizeOf(plan),
  };
}

function frontSheet(ctx: Context, d: Drawings, field: Area): readonly Stood[] {
  return best([
    () => planBesideFront(ctx, d, field, 'between'),
    () => planBesideFront(ctx, d, field, 'above'),
    () => planBesideFront(ctx, d, field, 'narrow'),
    () => sideBySide(field, [(box) => d.elevation('front', box, { heading: true }), (box) => d.planView(box)]),
  ]).stood;
}

const LOG_MIN_MM = 96;
const LOG_ROW_MM = 9.2;
const LOG_HEAD_MM = 18;

/** Map at the left, its heading and the log at the right; or the map under its own heading where the log needs all the height. */
function mapBesideLog(d: Drawings, field: Area, log: TableSpec, headingOverLog: boolean): Layout | null {
  const hMm = field.hMm - 2 * PAD_MM;
  const logTop = headingOverLog ? HEADING_MM.hMm + 5 : 0;
  if (logTop + LOG_HEAD_MM + log.rows.length * LOG_ROW_MM > hMm) return null;
  const map = d.anchorMap({ wMm: field.wMm - LOG_MIN_MM - 4 * PAD_MM, hMm }, { blanks: false, heading: !headingOverLog });
  const left = map.widthMm + 3 * PAD_MM;
  return {
    stood: [
      stand(map, PAD_MM, PAD_MM + (hMm - map.heightMm) / 2),
      ...(headingOverLog ? [{ node: <Heading title={w.anchors} drawing={map} />, leftMm: left, topMm: 2 * PAD_MM, usedLineTypes: [] }] : []),
      { node: <Table spec={log} />, leftMm: left, topMm: logTop + PAD_MM + 1.5, widthMm: field.wMm - left - 2 * PAD_MM, usedLineTypes: [] },
    ],
    cost: sizeOf(map),
  };
}

/** The map with the log beside it, where both fit. */
function anchorLayout(ctx: Context, d: Drawings, field: Area): { stood: Stood[]; hasLog: boolean } {
  const log = anchorLogTable(ctx);
  if (log !== null) {
    try {
      const beside = best([() => mapBesideLog(d, field, log, true), () => mapBesideLog(d, field, log, false)]);
      if (beside.cost < GIVEN_UP.reduced) return { stood: beside.stood, hasLog: true };
    } catch (error) {
      if (!(error instanceof DoesNotFitError)) throw error;
    }
  }
  return { stood: sideBySide(field, [(box) => d.anchorMap(box, { blanks: true, heading: true })]).stood, hasLog: false };
}

/** Does the anchor log stand on the sheet of the map? If not it gets a page of its own. */
export const logOnAnchorSheet = (ctx: Context, d: Drawings): boolean => anchorLayout(ctx, d, fieldOf(ctx)).hasLog;

const NAME_AND_CHAIN_MM = 24;
const SKETCH_MIN_MM = 52;

/** The film sheets at the top; the zones of the batten screws in the corner that the smaller sheets leave free. */
function filmSheet(ctx: Context, d: Drawings, field: Area): readonly Stood[] {
  const hMm = field.hMm - 2 * PAD_MM;
  const film = d.filmLayout({ wMm: field.wMm - 2 * PAD_MM, hMm });
  if (film === null) return [];
  const alone = [stand(film, PAD_MM, PAD_MM + Math.max(0, (hMm - film.heightMm) / 2))];
  const mm = (metres: number): number => (metres * 1000) / (film.scale?.denominator ?? 1);
  const [first, ...others] = [...ctx.result.geometry.filmSheets].sort((a, b) => Math.max(b.lengthM, b.widthM) - Math.max(a.lengthM, a.widthM));
  if (first === undefined || others.length === 0) return alone;
  const left = mm(Math.max(first.lengthM, first.widthM)) + NAME_AND_CHAIN_MM;
  const top = HEADING_MM.hMm + NAME_AND_CHAIN_MM + Math.max(...others.map((o) => mm(Math.min(o.lengthM, o.widthM))));
  const box = { wMm: Math.min(field.wMm - left - PAD_MM, 150), hMm: hMm - top };
  // Only where the sheets stand in one row, so that the corner under the small ones is free.
  const oneRow = film.heightMm < HEADING_MM.hMm + NAME_AND_CHAIN_MM + mm(Math.min(first.lengthM, first.widthM)) + 4;
  const sketch = oneRow && box.hMm >= SKETCH_MIN_MM && box.wMm > 100 ? d.fastenZones(box) : null;
  if (sketch === null) return alone;
  return [
    stand(film, PAD_MM, PAD_MM),
    { node: <p class="word">{pages.film.sketch}</p>, leftMm: left, topMm: top, usedLineTypes: [] },
    stand(sketch, left, top + 6),
  ];
}

/** The walls with openings that no other sheet shows. */
function otherSides(ctx: Context, d: Drawings): ViewMaker[] {
  const has = (wall: string): boolean => ctx.result.geometry.openings.some((o) => o.wall === wall);
  const sides = (['left', 'back'] as const).filter(has);
  // Eave and ridge stand on the sheet before; left out here where two views share the width.
  return sides.map((side) => (box) => d.elevation(side, box, { heading: true, heights: sides.length === 1 }));
}

/** The drawing sheets, on their side, each with frame, line key and title block. */
export function sheetParts(ctx: Context, d: Drawings): { arrangement: FixedPart[]; anchors: FixedPart; film: FixedPart | null } {
  const field = fieldOf(ctx);
  const hasFilm = d.filmLayout({ wMm: field.wMm - 2 * PAD_MM, hMm: field.hMm - 2 * PAD_MM }) !== null;
  const others = otherSides(ctx, d);
  const total = 3 + (others.length > 0 ? 1 : 0) + (hasFilm ? 1 : 0);
  let index = 0;
  const block = (name: string, title: string): TitleBlock => ({ name, title, index: (index += 1), total });
  const arrangement = [
    sheetPart(ctx, block('sheet-front', w.front), (f) => frontSheet(ctx, d, f)),
    sheetPart(ctx, block('sheet-sides', w.sides), (f) => sideBySide(f, [(box) => d.elevation('right', box, { heading: true }), (box) => d.section(box)]).stood),
    ...(others.length === 0 ? [] : [sheetPart(ctx, block('sheet-others', w.others), (f) => sideBySide(f, others).stood)]),
  ];
  return {
    arrangement,
    anchors: sheetPart(ctx, block('sheet-anchors', w.anchors), (f) => anchorLayout(ctx, d, f).stood),
    film: hasFilm ? sheetPart(ctx, block('sheet-film', w.film), (f) => filmSheet(ctx, d, f)) : null,
  };
}
