import type { FixedPart } from '../../../layout/book.js';
import { Figure, NoteText, SheetHead } from '../../../parts/parts.js';
import { Table } from '../../../parts/table.js';
import { pages } from '../../../words/en/pages.js';
import type { Drawings } from '../drawings.js';
import type { Context } from '../view/context.js';
import { siteView } from '../view/site.view.js';

const w = pages.site;
const CHART_MIN_MM = 44;

export function sitePart(ctx: Context, drawings: Drawings): FixedPart {
  const view = siteView(ctx);
  return {
    kind: 'fixed',
    name: 'site',
    title: w.title,
    orientation: 'portrait',
    // The shorter version leaves the rain out of the chart.
    shortenings: 2,
    render: (spare, shortening) => (
      <>
        <SheetHead id="site" title={w.title} status={<span>{ctx.request.names.site}</span>} />
        <div class="site-a">
          <div>
            <h3 class="gap">{w.place}</h3>
            <dl class="facts">
              {view.facts.map(([name, value]) => (
                <>
                  <dt>{name}</dt>
                  <dd>{value}</dd>
                </>
              ))}
            </dl>
          </div>
          <div class="stackgap">
            <div>
              <h3>{w.station}</h3>
              {view.station.map((sentence) => (
                <p>{sentence}</p>
              ))}
            </div>
            <div>
              <h3>{w.wind}</h3>
              {view.loads.map((sentence) => (
                <p>{sentence}</p>
              ))}
            </div>
          </div>
        </div>
        <div>
          <h3 class="gap">{view.finding}</h3>
          <Figure drawing={drawings.climateChart({ wMm: ctx.portrait.widthMm, hMm: CHART_MIN_MM + Math.min(spare, 40) }, shortening === 0)} />
        </div>
        <Table spec={view.table} />
        {view.notes.length === 0 ? null : <NoteText>{view.notes.join(' ')}</NoteText>}
      </>
    ),
  };
}
