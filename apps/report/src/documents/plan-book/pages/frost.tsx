import type { VNode } from 'preact';
import type { FixedPart } from '../../../layout/book.js';
import { Figure, NoteText, SheetHead } from '../../../parts/parts.js';
import { Table } from '../../../parts/table.js';
import { climatePages } from '../../../words/en/pages-climate.js';
import type { Drawings } from '../drawings.js';
import type { Context } from '../view/context.js';
import { frostView, SUN_NAME_MM, sunView, yearFacts, type FrostView, type SunView } from '../view/frost.view.js';

const w = climatePages;
/** Least height of the sun chart in each version; the last one gives frost and sun a page each. */
const SUN_MIN_MM = [52, 42, 52] as const;
const SUN_GROWS_MM = 50;
const OWN_PAGE = SUN_MIN_MM.length - 1;

const FrostBlock = ({ ctx, drawings, view }: { ctx: Context; drawings: Drawings; view: FrostView }): VNode => (
  <>
    <div>
      <h3 class="gap">{view.finding}</h3>
      {view.bar === null ? null : <Figure drawing={drawings.frostBar(ctx.portrait.widthMm, view.bar)} />}
    </div>
    {view.table === null ? null : <Table spec={view.table} />}
    {view.notes.length === 0 ? null : <NoteText>{view.notes.join(' ')}</NoteText>}
    <div>
      <h3 class="gap">{w.year.title}</h3>
      <dl class="facts">
        {yearFacts(ctx).map(([name, value]) => (
          <>
            <dt>{name}</dt>
            <dd>{value}</dd>
          </>
        ))}
      </dl>
    </div>
  </>
);

const SunBlock = ({ ctx, drawings, view, hMm }: { ctx: Context; drawings: Drawings; view: SunView; hMm: number }): VNode => (
  <>
    <div>
      <h3 class="gap">{view.finding}</h3>
      {view.hours === null ? null : <Figure drawing={drawings.sunHours({ wMm: ctx.portrait.widthMm, hMm }, view.hours, SUN_NAME_MM)} />}
    </div>
    {view.table === null ? null : <Table spec={view.table} />}
    {view.notes.length === 0 ? null : <NoteText>{view.notes.join(' ')}</NoteText>}
  </>
);

/** Frost dates, winter class, degree-days, heat risk, and hours of sun on the plot. */
export function frostPart(ctx: Context, drawings: Drawings): FixedPart {
  const frost = frostView(ctx);
  const sun = sunView(ctx);
  return {
    kind: 'fixed',
    name: 'frost',
    title: w.frost.title,
    orientation: 'portrait',
    shortenings: SUN_MIN_MM.length,
    pages: (shortening) => (shortening === OWN_PAGE ? 2 : 1),
    render: (spare, shortening, page) => {
      const head = (
        <SheetHead id={page === 1 ? 'frost' : 'frost-2'} title={page === 1 ? w.frost.title : w.sun.title} status={<span>{ctx.request.names.site}</span>} />
      );
      const hMm = (SUN_MIN_MM[shortening] ?? SUN_MIN_MM[0]) + Math.min(spare, SUN_GROWS_MM);
      const ofFrost = <FrostBlock ctx={ctx} drawings={drawings} view={frost} />;
      const ofSun = <SunBlock ctx={ctx} drawings={drawings} view={sun} hMm={hMm} />;
      if (shortening < OWN_PAGE)
        return (
          <>
            {head}
            {ofFrost}
            {ofSun}
          </>
        );
      return (
        <div class="topped">
          {head}
          {page === 1 ? ofFrost : ofSun}
        </div>
      );
    },
  };
}
