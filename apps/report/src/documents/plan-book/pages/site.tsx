import type { VNode } from 'preact';
import type { FixedPart } from '../../../layout/book.js';
import { Figure, NoteText, SheetHead } from '../../../parts/parts.js';
import { Table } from '../../../parts/table.js';
import { climatePages } from '../../../words/en/pages-climate.js';
import { pages } from '../../../words/en/pages.js';
import type { ClimatePanels, Drawings } from '../drawings.js';
import type { Context } from '../view/context.js';
import { siteView, type SiteView } from '../view/site.view.js';

const w = pages.site;
/** The band of the temperatures, and each row of bars below it. */
const BAND_MIN_MM = [46, 46, 46, 38, 46] as const;
const BAND_GROWS_MM = 40;
const PANEL_MM = 29;
/** What stands under the band in each version; the table holds the same numbers. The last one gives the place a page of its own. */
const PANELS: readonly [ClimatePanels, ...ClimatePanels[]] = [
  { sun: true, rain: true },
  { sun: false, rain: true },
  { sun: false, rain: false },
  { sun: false, rain: false },
  { sun: true, rain: true },
];
const OWN_PAGE = PANELS.length - 1;

/** `2003-2021` and `7-16` are never broken over two lines. */
const yearsWhole = (sentence: string): (string | VNode)[] =>
  sentence.split(/(\d+-\d+)/).map((piece, i) => (i % 2 === 1 ? <span class="nowrap">{piece}</span> : piece));

const Place = ({ view }: { view: SiteView }): VNode => (
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
          <p>{yearsWhole(sentence)}</p>
        ))}
      </div>
      <div>
        <h3>{w.wind}</h3>
        {view.loads.map((sentence) => (
          <p>{yearsWhole(sentence)}</p>
        ))}
      </div>
    </div>
  </div>
);

export function sitePart(ctx: Context, drawings: Drawings): FixedPart {
  const view = siteView(ctx);
  const year = (spare: number, shortening: number): VNode => {
    const panels = PANELS[shortening] ?? PANELS[0];
    const rows = (panels.sun ? 1 : 0) + (panels.rain ? 1 : 0);
    const hMm = (BAND_MIN_MM[shortening] ?? BAND_MIN_MM[0]) + rows * PANEL_MM + Math.min(spare, BAND_GROWS_MM);
    return (
      <>
        <div>
          <h3 class="gap">{view.finding}</h3>
          <Figure drawing={drawings.climateChart({ wMm: ctx.portrait.widthMm, hMm }, panels)} />
        </div>
        <Table spec={view.table} />
        {view.notes.length === 0 ? null : <NoteText>{view.notes.join(' ')}</NoteText>}
      </>
    );
  };
  return {
    kind: 'fixed',
    name: 'site',
    title: w.title,
    orientation: 'portrait',
    shortenings: PANELS.length,
    pages: (shortening) => (shortening === OWN_PAGE ? 2 : 1),
    render: (spare, shortening, page) => {
      const head = (
        <SheetHead id={page === 1 ? 'site' : 'site-2'} title={page === 1 ? w.title : climatePages.yearTitle} status={<span>{ctx.request.names.site}</span>} />
      );
      if (shortening < OWN_PAGE)
        return (
          <>
            {head}
            <Place view={view} />
            {year(spare, shortening)}
          </>
        );
      return (
        <div class="topped">
          {head}
          {page === 1 ? <Place view={view} /> : year(spare, shortening)}
        </div>
      );
    },
  };
}
