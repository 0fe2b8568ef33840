import type { FlowItem, FlowPart } from '../../../layout/book.js';
import { Dashes, Drawn, NoteText, StopBox } from '../../../parts/parts.js';
import type { TableSpec } from '../../../parts/table.js';
import { common, MATERIAL_WORDS } from '../../../words/en/common.js';
import { pages } from '../../../words/en/pages.js';
import { moneyWhole } from '../../../words/figures.js';
import type { Drawings } from '../drawings.js';
import { type Context } from '../view/context.js';
import {
  allTable,
  anchorLogTable,
  budgetSentences,
  budgetTable,
  cuttingFinding,
  filmSentences,
  filmTables,
  partsTable,
  shopTable,
  yardTable,
} from '../view/lists.view.js';
import { loadsView } from '../view/loads.view.js';

import { block, flow, Said, table } from './flow.js';

export function anchorLogPart(ctx: Context): FlowPart | null {
  const log = anchorLogTable(ctx);
  return log === null ? null : flow('anchor-log', pages.anchors.title, table(log));
}

export function loadsPart(ctx: Context, drawings: Drawings): FlowPart {
  const view = loadsView(ctx);
  const w = pages.loads;
  const bars = drawings.ratioBars({ wMm: ctx.portrait.widthMm - 4, hMm: 30 }, view.shares);
  return flow(
    'loads',
    w.title,
    [
      ...(view.unrated
        ? [
            block(
              <StopBox
                word={common.stop}
                lead={`\u2013 ${w.unrated.split('. ')[0]?.toLowerCase() ?? ''}`}
                items={w.unrated
                  .split('. ')
                  .slice(1)
                  .map((s) => `${s.replace(/\.$/, '')}.`)}
                two={false}
              />,
            ),
          ]
        : []),
      ...table(view.summary),
      ...(bars === null
        ? []
        : [
            block(
              <div>
                <h3 class="gap">{view.finding}</h3>
                <Drawn svg={bars.svg} />
              </div>,
            ),
          ]),
      block(
        <div class="twocol">
          <Said title={w.wind} sentences={view.wind} />
          <Said title={w.snow} sentences={view.snow} />
        </div>,
      ),
      ...(view.would.length + view.anchors.length === 0
        ? []
        : [
            block(
              <div>
                <h3>{w.would}</h3>
                {view.anchors.map((s) => (
                  <p>{s}</p>
                ))}
                <Dashes items={view.would} />
              </div>,
            ),
          ]),
      ...table(view.posts),
    ],
    w.status,
  );
}

/** Where on an end wall each spacing of the table holds. */
function zonesSketch(ctx: Context, drawings: Drawings): FlowItem[] {
  const sketch = drawings.fastenZones({ wMm: ctx.portrait.widthMm, hMm: 84 });
  return sketch === null ? [] : [block(<h3>{pages.film.sketch}</h3>, true), block(<Drawn svg={sketch.svg} />)];
}

export const filmPart = (ctx: Context, drawings: Drawings): FlowPart =>
  flow('film', pages.film.title, [
    ...filmTables(ctx).flatMap((t) => table(t)),
    ...zonesSketch(ctx, drawings),
    block(
      <div>
        {filmSentences(ctx).map((s) => (
          <p>{s}</p>
        ))}
      </div>,
    ),
  ]);

export function materialsPart(ctx: Context): FlowPart | null {
  if (ctx.result.takeOff.lines.length === 0) return null;
  const shop = shopTable(ctx);
  return flow('materials', pages.materials.title, [
    block(<NoteText>{pages.materials.note}</NoteText>, true),
    ...table(allTable(ctx)),
    ...(shop === null ? [block(<p>{pages.materials.nothing}</p>)] : table(shop)),
    ...table(yardTable(ctx)),
  ]);
}

export function cuttingPart(ctx: Context, drawings: Drawings): FlowPart | null {
  const { cutting } = ctx.result;
  if (cutting.parts.length === 0) return null;
  const unplaced = partsTable(ctx, true);
  return flow('cutting', pages.cutting.title, [
    block(
      <div>
        {cuttingFinding(ctx).map((s) => (
          <p>{s}</p>
        ))}
      </div>,
    ),
    ...table(partsTable(ctx, false)),
    ...(unplaced === null ? [] : [block(<p>{pages.cutting.unplacedText}</p>, true), ...table(unplaced)]),
    ...(cutting.boards.length === 0
      ? []
      : [
          block(<h3>{pages.cutting.boards}</h3>, true),
          ...drawings.cutDiagrams({ wMm: ctx.portrait.widthMm, hMm: 40 }).map((d) => block(<Drawn svg={d.svg} />)),
        ]),
  ]);
}

export function budgetPart(ctx: Context): FlowPart {
  const w = pages.budget;
  const said = budgetSentences(ctx);
  const c = w.pcols;
  const rows = ctx.result.takeOff.lines.flatMap((l) =>
    l.cash === null || l.cash.minor === 0
      ? []
      : [
          {
            cells: [
              MATERIAL_WORDS[l.material],
              `${moneyWhole(l.cash.minor, l.cash.currency)}`,
              l.supplier ?? common.none,
              `${l.priceReadOn ?? pages.materials.noDate}${l.priceStale ? ` ${pages.materials.stale}` : ''}`,
            ],
          },
        ],
  );
  const prices: TableSpec = {
    caption: w.prices,
    columns: [
      { head: c.what, widthMm: null },
      { head: `${c.cash}, ${ctx.result.budget.currency}`, widthMm: 28 },
      { head: c.where, widthMm: 46, left: true },
      { head: c.read, widthMm: 34, left: true, whole: true },
    ],
    rows,
    thirds: true,
  };
  return flow(
    'budget',
    w.title,
    [
      block(
        <div>
          {said.lines.map((s) => (
            <p>{s}</p>
          ))}
        </div>,
      ),
      ...table(budgetTable(ctx)),
      ...table(prices),
    ],
    said.verdict,
  );
}
