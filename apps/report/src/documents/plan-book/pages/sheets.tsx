import type { VNode } from 'preact';
import { DoesNotFitError, ENGLISH, type Drawing, type LineType } from '@lathwork/drawing';
import type { FixedPart } from '../../../layout/book.js';
import { Drawn } from '../../../parts/parts.js';
import { line, markSvg, path, scaleBarSvg, svg, text } from '../../../parts/svg.js';
import { common } from '../../../words/en/common.js';
import { pages } from '../../../words/en/pages.js';
import { fill } from '../../../words/fill.js';
import type { Drawings } from '../drawings.js';
import { LINE_WORDS } from '../drawings.js';
import type { Context } from '../view/context.js';
import { compassWord } from '../view/site.view.js';

const w = pages.sheets;
const TAPE_MM = 5.4;
const STRIP_MM = 24;
const MARKS_MM = 46;
const KEY_MM = 58;
/** Keeps the thick frame whole: a stroke on the page edge is cut in half. */
const INSET_MM = 0.35;

/** Frame and the lines of the strip at the foot, one drawing under the sheet. */
function frameSvg(widthMm: number, heightMm: number): string {
  const top = heightMm - STRIP_MM;
  const x0 = MARKS_MM + KEY_MM;
  const foot = heightMm - 0.4;
  const cell = (widthMm - x0) / 6;
  const row = STRIP_MM / 3;
  const upright: [number, number][] = [[3, 0], [5, 0], [2, 1], [4, 1], [5, 1], [1, 2], [3, 2], [4, 2], [5, 2]];
  return svg(
    widthMm,
    heightMm,
    '',
    path([[INSET_MM, -0.8], [INSET_MM, foot], [widthMm - INSET_MM, foot], [widthMm - INSET_MM, -0.8]], 'cut') +
      line([0, top], [widthMm, top], 'cut') +
      line([MARKS_MM, top], [MARKS_MM, foot]) +
      line([x0, top], [x0, foot]) +
      line([x0, top + row], [widthMm, top + row], 'thin') +
      line([x0, top + 2 * row], [widthMm, top + 2 * row], 'thin') +
      upright.map(([i, r]) => line([x0 + i * cell, top + r * row], [x0 + i * cell, Math.min(top + (r + 1) * row, foot)], 'thin')).join(''),
  );
}

function keySvg(used: readonly LineType[]): string {
  const step = used.length > 5 ? 3.4 : 4.2;
  return svg(KEY_MM - 6, 21, w.key, used.slice(0, 6).map((kind, i) => line([0, 1.9 + i * step], [13, 1.9 + i * step], kind) + text(15.5, 3 + i * step, LINE_WORDS[kind], 'small')).join(''));
}

const Cell = ({ name, value, span = 1, big = false, heading }: { name: string; value: string; span?: number; big?: boolean; heading?: string | undefined }): VNode => (
  <div class={big ? 'big' : ''} style={`grid-column:span ${span}`}>
    <dt>{name}</dt>
    <dd>{heading === undefined ? value : <h2 id={heading}>{value}</h2>}</dd>
  </div>
);

interface TitleBlock {
  name: string;
  title: string;
  index: number;
  total: number;
}

/** The fields of ISO 7200. "Checked by" says that no engineer did, unless one did. */
const TitleBlockStrip = ({ ctx, block, used }: { ctx: Context; block: TitleBlock; used: readonly LineType[] }): VNode => {
  const { request } = ctx;
  const t = w.tblock;
  return (
    <div class="strip" style={`height:${STRIP_MM}mm;grid-template-columns:${MARKS_MM}mm ${KEY_MM}mm minmax(0,1fr)`}>
      <div style="display:grid;grid-template-columns:18mm minmax(0,1fr);align-content:center;row-gap:1mm;padding-left:3mm;align-items:center" class="small">
        <Drawn svg={markSvg('D1', 'pile')} />
        <span>{w.pile}</span>
        <Drawn svg={markSvg('F1', 'buy')} />
        <span>{w.buy}</span>
      </div>
      <Drawn svg={`<div style="padding:1.4mm 3mm 0">${keySvg(used)}</div>`} />
      <dl class="tblock">
        <Cell name={t.title} value={block.title} span={3} big heading={block.name} />
        <Cell name={t.number} value={`${request.planNumber}-${String(block.index).padStart(2, '0')}`} span={2} big />
        <Cell name={t.rev} value={String(request.inputs.revision)} big />
        <Cell name={t.owner} value={request.names.garden} span={2} />
        <Cell name={t.type} value={w.type} span={2} />
        <Cell name={t.date} value={request.datedOn} />
        <Cell name={t.units} value={ctx.fig.sizeUnit()} />
        <Cell name={t.drawn} value={request.names.drawnBy} />
        <Cell name={t.checked} value={request.names.checkedBy ?? common.notByEngineer} span={2} />
        <Cell name={t.status} value={ctx.status} />
        <Cell name={t.sheet} value={fill(w.sheetOf, { n: block.index, total: block.total })} />
        <Cell name={t.language} value={request.options.language} />
      </dl>
    </div>
  );
};

const PAD_MM = 2;

interface Placed {
  drawing: Drawing;
  /** Set in the corner of the field when the view has no heading of its own. */
  heading: string | null;
  fieldLeftMm: number;
  leftMm: number;
  topMm: number;
}

interface Area {
  wMm: number;
  hMm: number;
}

interface ViewMaker {
  draw: (box: Area) => Drawing | null;
  /** The same view without heading, which may stand larger, and the heading to set beside its gable. */
  bare?: (box: Area) => Drawing;
  heading?: string;
}

/** The larger of the two ways to set a view. */
function larger(maker: ViewMaker, box: Area): { drawing: Drawing; heading: string | null } | null {
  const whole = maker.draw(box);
  if (whole === null) return null;
  const bare = maker.bare?.(box);
  const size = (d: Drawing): number => d.scale?.denominator ?? 1;
  return bare !== undefined && maker.heading !== undefined && size(bare) < size(whole) ? { drawing: bare, heading: maker.heading } : { drawing: whole, heading: null };
}

/** Shares of the width for the first view that are tried; the one that lets the views stand largest wins. */
const SHARES = [0.4, 0.45, 0.5, 0.55, 0.6, 0.65, 0.7, 0.35, 0.75] as const;
/** A view that cannot be set at all in its share. */
const NO_ROOM = 1e6;

function placeAt(area: Area, makers: readonly ViewMaker[], shares: readonly number[]): { placed: Placed[]; cost: number } {
  const hMm = area.hMm - 2 * PAD_MM;
  let left = PAD_MM;
  let cost = 0;
  const placed = makers.flatMap((maker, i) => {
    const wMm = (area.wMm - PAD_MM * (makers.length + 1)) * (shares[i] ?? 0);
    const at = left;
    left += wMm + PAD_MM;
    const set = larger(maker, { wMm, hMm });
    if (set === null) return [];
    const { drawing } = set;
    cost += Math.log(drawing.scale?.denominator ?? 1);
    return [{ ...set, fieldLeftMm: at, leftMm: at + Math.max(0, (wMm - drawing.widthMm) / 2), topMm: PAD_MM + Math.max(0, (hMm - drawing.heightMm) / 2) }];
  });
  return { placed, cost };
}

/** Views side by side, as large as the sheet lets them stand, each centred in its own field. */
function place(area: Area, makers: readonly ViewMaker[]): Placed[] {
  if (makers.length === 1) return placeAt(area, makers, [1]).placed;
  let best: { placed: Placed[]; cost: number } | null = null;
  let refusal: unknown = null;
  for (const share of SHARES) {
    try {
      const tried = placeAt(area, makers, [share, 1 - share]);
      if (tried.cost < (best?.cost ?? NO_ROOM) - 1e-9) best = tried;
    } catch (error) {
      if (!(error instanceof DoesNotFitError)) throw error;
      refusal = error;
    }
  }
  if (best === null) throw refusal;
  return best.placed;
}

function sheetPart(ctx: Context, block: TitleBlock, makers: readonly ViewMaker[]): FixedPart {
  const widthMm = ctx.landscape.widthMm;
  const heightMm = ctx.landscape.heightMm - TAPE_MM - 0.4;
  return {
    kind: 'fixed',
    name: block.name,
    title: block.title,
    orientation: 'landscape',
    render: () => {
      const views = place({ wMm: widthMm, hMm: heightMm - STRIP_MM }, makers);
      const used = [...new Set(views.flatMap((v) => v.drawing.usedLineTypes))];
      return (
        <div class="sheet" style={`height:${heightMm}mm`}>
          <div style="position:absolute;left:0;top:0"><Drawn svg={frameSvg(widthMm, heightMm)} /></div>
          {views.map((v) =>
            v.heading === null ? null : (
              <div style={`position:absolute;left:${(v.fieldLeftMm + 1).toFixed(2)}mm;top:1.5mm`}>
                <p class="word" style="white-space:nowrap;text-wrap:nowrap;padding-bottom:1mm">{`${v.heading}, ${v.drawing.scale?.text ?? ''}`}</p>
                <Drawn svg={scaleBarSvg(v.drawing.scale?.denominator ?? 1, fill(w.scaleBar, { scale: v.drawing.scale?.text ?? '' }))} />
              </div>
            ),
          )}
          {views.map((v) => (
            <div style={`position:absolute;left:${v.leftMm.toFixed(2)}mm;top:${v.topMm.toFixed(2)}mm`}>
              <Drawn svg={v.drawing.svg} />
            </div>
          ))}
          <TitleBlockStrip ctx={ctx} block={block} used={used} />
        </div>
      );
    },
  };
}

/** The drawing sheets, on their side, each with frame, line key and title block. */
export function sheetParts(ctx: Context, d: Drawings): FixedPart[] {
  const hasFilm = d.filmLayout({ wMm: ctx.landscape.widthMm - 2 * PAD_MM, hMm: ctx.landscape.heightMm - TAPE_MM - STRIP_MM - 4 * PAD_MM }) !== null;
  const total = hasFilm ? 4 : 3;
  const block = (index: number, name: string, title: string): TitleBlock => ({ name, title, index, total });
  const sheets = [
    sheetPart(ctx, block(1, 'sheet-front', w.front), [{ draw: (box) => d.elevation('front', box, true), bare: (box) => d.elevation('front', box, false), heading: `${ENGLISH.elevation.front}, ${compassWord(ctx.inputs.structure.frontFacesDeg)}` }, { draw: (box) => d.planView(box) }]),
    sheetPart(ctx, block(2, 'sheet-sides', w.sides), [{ draw: (box) => d.elevation('right', box, true) }, { draw: (box) => d.section(box) }]),
    sheetPart(ctx, block(3, 'sheet-anchors', w.anchors), [{ draw: (box) => d.anchorMap(box) }]),
  ];
  return hasFilm ? [...sheets, sheetPart(ctx, block(4, 'sheet-film', w.film), [{ draw: (box) => d.filmLayout(box) }])] : sheets;
}
