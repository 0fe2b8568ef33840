import type { VNode } from 'preact';
import type { Drawing, LineType } from '@lathwork/drawing';
import type { FixedPart } from '../../../layout/book.js';
import { Drawn } from '../../../parts/parts.js';
import { line, markSvg, path, svg, text } from '../../../parts/svg.js';
import { common } from '../../../words/en/common.js';
import { pages } from '../../../words/en/pages.js';
import { fill } from '../../../words/fill.js';
import type { Drawings } from '../drawings.js';
import { LINE_WORDS } from '../drawings.js';
import type { Context } from '../view/context.js';

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
  leftMm: number;
  topMm: number;
}

interface Area {
  wMm: number;
  hMm: number;
}

/** Views side by side: the first takes the room it needs, the rest share what is left, each centred in its own field. */
function place(area: Area, makers: readonly { share: number; draw: (box: Area) => Drawing | null }[]): Placed[] {
  const total = makers.reduce((sum, m) => sum + m.share, 0);
  let left = PAD_MM;
  return makers.flatMap(({ share, draw }) => {
    const width = (area.wMm - PAD_MM * (makers.length + 1)) * (share / total);
    const drawing = draw({ wMm: width, hMm: area.hMm - 2 * PAD_MM });
    if (drawing === null) return [];
    const placed = { drawing, leftMm: left + Math.max(0, (width - drawing.widthMm) / 2), topMm: PAD_MM + Math.max(0, (area.hMm - 2 * PAD_MM - drawing.heightMm) / 2) };
    left += width + PAD_MM;
    return [placed];
  });
}

function sheetPart(ctx: Context, block: TitleBlock, makers: readonly { share: number; draw: (box: Area) => Drawing | null }[]): FixedPart {
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
    sheetPart(ctx, block(1, 'sheet-front', w.front), [{ share: 1.45, draw: (box) => d.elevation('front', box) }, { share: 1, draw: (box) => d.planView(box) }]),
    sheetPart(ctx, block(2, 'sheet-sides', w.sides), [{ share: 1.6, draw: (box) => d.elevation('right', box) }, { share: 1, draw: (box) => d.section(box) }]),
    sheetPart(ctx, block(3, 'sheet-anchors', w.anchors), [{ share: 1, draw: (box) => d.anchorMap(box) }]),
  ];
  return hasFilm ? [...sheets, sheetPart(ctx, block(4, 'sheet-film', w.film), [{ share: 1, draw: (box) => d.filmLayout(box) }])] : sheets;
}
