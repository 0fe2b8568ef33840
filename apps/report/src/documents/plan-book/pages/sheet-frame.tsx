import type { VNode } from 'preact';
import { ENGLISH, type LineType } from '@lathwork/drawing';
import type { FixedPart } from '../../../layout/book.js';
import { Drawn } from '../../../parts/parts.js';
import { line, markSvg, path, svg, text } from '../../../parts/svg.js';
import { common } from '../../../words/en/common.js';
import { pages } from '../../../words/en/pages.js';
import { fill } from '../../../words/fill.js';
import type { Context } from '../view/context.js';

const w = pages.sheets;
export const TAPE_MM = 5.4;
export const STRIP_MM = 24;
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
  const upright: [number, number][] = [
    [3, 0],
    [5, 0],
    [2, 1],
    [4, 1],
    [5, 1],
    [1, 2],
    [3, 2],
    [4, 2],
    [5, 2],
  ];
  return svg(
    widthMm,
    heightMm,
    '',
    path(
      [
        [INSET_MM, -0.8],
        [INSET_MM, foot],
        [widthMm - INSET_MM, foot],
        [widthMm - INSET_MM, -0.8],
      ],
      'cut',
    ) +
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
  return svg(
    KEY_MM - 6,
    21,
    w.key,
    used
      .slice(0, 6)
      .map((kind, i) => line([0, 1.9 + i * step], [13, 1.9 + i * step], kind) + text(15.5, 3 + i * step, ENGLISH.lineKey[kind], 'small'))
      .join(''),
  );
}

const Cell = ({
  name,
  value,
  span = 1,
  big = false,
  heading,
}: {
  name: string;
  value: string;
  span?: number;
  big?: boolean;
  heading?: string | undefined;
}): VNode => (
  <div class={big ? 'big' : ''} style={`grid-column:span ${span}`}>
    <dt>{name}</dt>
    <dd>{heading === undefined ? value : <h2 id={heading}>{value}</h2>}</dd>
  </div>
);

export interface TitleBlock {
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
        <Cell name={t.drawn} value={ctx.drawnBy} />
        <Cell name={t.checked} value={request.names.checkedBy ?? common.notByEngineer} span={2} />
        <Cell name={t.status} value={ctx.status} />
        <Cell name={t.sheet} value={fill(w.sheetOf, { n: block.index, total: block.total })} />
        <Cell name={t.language} value={request.options.language} />
      </dl>
    </div>
  );
};

export interface Area {
  wMm: number;
  hMm: number;
}

/** Something that stands on the sheet: a drawing, a heading, a table. */
export interface Stood {
  node: VNode;
  leftMm: number;
  topMm: number;
  widthMm?: number;
  usedLineTypes: readonly LineType[];
}

/** The free field of a sheet, inside its frame and above its strip. */
export const fieldOf = (ctx: Context): Area => ({ wMm: ctx.landscape.widthMm, hMm: ctx.landscape.heightMm - TAPE_MM - 0.4 - STRIP_MM });

export function sheetPart(ctx: Context, block: TitleBlock, compose: (field: Area) => readonly Stood[]): FixedPart {
  const field = fieldOf(ctx);
  const heightMm = field.hMm + STRIP_MM;
  return {
    kind: 'fixed',
    name: block.name,
    title: block.title,
    orientation: 'landscape',
    render: () => {
      const stood = compose(field);
      return (
        <div class="sheet" style={`height:${heightMm}mm`}>
          <div style="position:absolute;left:0;top:0">
            <Drawn svg={frameSvg(field.wMm, heightMm)} />
          </div>
          {stood.map((s) => (
            <div
              style={`position:absolute;left:${s.leftMm.toFixed(2)}mm;top:${s.topMm.toFixed(2)}mm${s.widthMm === undefined ? '' : `;width:${s.widthMm.toFixed(2)}mm`}`}
            >
              {s.node}
            </div>
          ))}
          <TitleBlockStrip ctx={ctx} block={block} used={[...new Set(stood.flatMap((s) => s.usedLineTypes))]} />
        </div>
      );
    },
  };
}
