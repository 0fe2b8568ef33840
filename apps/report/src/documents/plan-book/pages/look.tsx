import type { VNode } from 'preact';
import type { Range } from '@lathwork/model';
import type { FixedPart } from '../../../layout/book.js';
import { AskBox, Dashes, Drawn, SheetHead } from '../../../parts/parts.js';
import { line, rect, svg, text } from '../../../parts/svg.js';
import { common } from '../../../words/en/common.js';
import { pages } from '../../../words/en/pages.js';
import { fill } from '../../../words/fill.js';
import type { Drawings } from '../drawings.js';
import { openCount, type Context } from '../view/context.js';
import { LOOK_SHORTENINGS, lookView, type ExpectRow, type LookView } from '../view/look.view.js';

const w = pages.look;
const ROW_MM = 5.8;
const STRIP_MM = 56;

/** A box from low to high and a bar at the likely value, all rows on one scale; frost is the one line named on it. */
function rangeStrip(rows: readonly ExpectRow[], ctx: Context): string {
  const ranges = rows.map((row) => row.rangeC);
  const known = ranges.filter((r): r is Range<'degC'> => r !== null);
  const low = Math.min(0, ...known.map((r) => r.p10)) - 2;
  const high = Math.max(0, ...known.map((r) => r.p90)) + 2;
  const x = (c: number): number => 2 + ((c - low) / (high - low)) * (STRIP_MM - 4);
  const first = ranges.findIndex((r) => r !== null);
  const height = ROW_MM * rows.length;
  const out = [line([x(0), ROW_MM * first - 1.4], [x(0), height - 0.6], 'hid')];
  const label = fill(w.frostPointer, { t: ctx.fig.temperatureShort(0) });
  const half = label.length * 0.9;
  out.push(text(Math.min(Math.max(x(0), half), STRIP_MM - half), ROW_MM * first - 2.4, label, '', 'middle'));
  ranges.forEach((r, i) => {
    if (r === null) return;
    const y = ROW_MM * (i + 0.5);
    const width = Math.max(0.6, x(r.p90) - x(r.p10));
    out.push(rect(x(r.p10), y - 1, width, 2, 'face'), line([x(r.p50), y - 1.9], [x(r.p50), y + 1.9], 'cut'));
  });
  const alt = fill(w.rangeAlt, { t: ctx.fig.temperature(0) });
  return svg(STRIP_MM, height, alt, out.join(''));
}

const Expect = ({ view, ctx }: { view: LookView; ctx: Context }): VNode => (
  <table class="expect">
    <caption>
      <h3>{w.expect}</h3>
    </caption>
    <thead>
      <tr>
        <th scope="col"></th>
        <td></td>
        <th scope="col">{common.low}</th>
        <th scope="col">{common.likely}</th>
        <th scope="col">{common.high}</th>
        <td></td>
      </tr>
    </thead>
    <tbody>
      {view.expect.map((row, i) => (
        <tr>
          <th scope="row">{row.label}</th>
          {i === 0 ? (
            <td rowSpan={view.expect.length} class="pic" style={`width:${STRIP_MM + 3}mm`}>
              {view.expect.some((r) => r.rangeC !== null) ? <Drawn svg={rangeStrip(view.expect, ctx)} /> : null}
            </td>
          ) : null}
          <td>{row.low}</td>
          <td class="key">{row.likely}</td>
          <td>{row.high}</td>
          <td class="unit">{row.unit}</td>
        </tr>
      ))}
    </tbody>
  </table>
);

const Costs = ({ view, currency }: { view: LookView; currency: string }): VNode => (
  <table>
    <caption>
      <h3>{view.costTitle}</h3>
    </caption>
    <thead>
      <tr>
        {[currency, w.pile, w.buy, w.given].map((head) => (
          <th scope="col" style={head === currency ? '' : 'width:22mm'}>
            {head}
          </th>
        ))}
      </tr>
    </thead>
    <tbody>
      {view.costRows.map(([name, ...cells]) => (
        <tr>
          <th scope="row">{name}</th>
          {cells.map((cell) => (
            <td>{cell}</td>
          ))}
        </tr>
      ))}
    </tbody>
    <tfoot>
      <tr>
        <th scope="row">{view.costTotal[0]}</th>
        {view.costTotal.slice(1).map((cell) => (
          <td>{cell}</td>
        ))}
      </tr>
    </tfoot>
  </table>
);

const Risks = ({ view }: { view: LookView }): VNode | null =>
  view.risks.length === 0 ? null : (
    <div>
      <h3 class="gap">{w.risks}</h3>
      <div class="risks">
        {view.risks.map((risk, i) => (
          <div>
            <strong>
              {i + 1} {risk.head}
            </strong>{' '}
            {risk.text}
          </div>
        ))}
      </div>
    </div>
  );

const PICTURE_MIN_MM = 40;
const PICTURE_LEAST_MM = 26;

export function lookPart(ctx: Context, drawings: Drawings): FixedPart {
  return {
    kind: 'fixed',
    name: 'look',
    title: w.title,
    orientation: 'portrait',
    shortenings: LOOK_SHORTENINGS,
    render: (spare, shortening) => {
      const view = lookView(ctx, shortening);
      const picture = drawings.pictorial({
        wMm: ctx.portrait.widthMm - 78,
        hMm: (shortening >= 5 ? PICTURE_LEAST_MM : PICTURE_MIN_MM) + Math.min(spare * 0.6, 30),
      });
      return (
        <>
          <SheetHead
            id="look"
            over={ctx.heading}
            title={w.title}
            status={
              <>
                {ctx.status}
                <span>, {openCount(ctx)}</span>
              </>
            }
          />
          <div class="look-a">
            {picture === null ? <span></span> : <Drawn svg={picture.svg} />}
            <dl class="facts">
              {view.facts.map(([name, value]) => (
                <>
                  <dt>{name}</dt>
                  <dd>{value}</dd>
                </>
              ))}
            </dl>
          </div>
          <Expect view={view} ctx={ctx} />
          <div class="look-b">
            <Costs view={view} currency={ctx.result.budget.currency} />
            <div class="stackgap">
              <div>
                <h3>{w.willNot}</h3>
                <Dashes items={view.willNot} />
              </div>
              {view.asks.length > 0 ? <AskBox lead={w.askTitle} items={view.asks} /> : null}
              {view.unpriced === null ? null : <p>{view.unpriced}</p>}
            </div>
          </div>
          <Risks view={view} />
        </>
      );
    },
  };
}
