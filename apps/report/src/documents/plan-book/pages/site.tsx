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
interface Version {
  /** Rows of bars under the band of the temperatures; the table holds the same numbers. */
  panels: ClimatePanels;
  /** Least height of the band. */
  bandMm: number;
  /** Two: the place has a page of its own. */
  pages: 1 | 2;
}
const BOTH = { sun: true, rain: true };
const NEITHER = { sun: false, rain: false };
const FULL: Version = { panels: BOTH, bandMm: 46, pages: 1 };
const VERSIONS: readonly Version[] = [
  FULL,
  { panels: { sun: false, rain: true }, bandMm: 46, pages: 1 },
  { panels: NEITHER, bandMm: 46, pages: 1 },
  { panels: NEITHER, bandMm: 38, pages: 1 },
  { panels: BOTH, bandMm: 46, pages: 2 },
  { panels: NEITHER, bandMm: 46, pages: 2 },
];
const BAND_GROWS_MM = 40;
const PANEL_MM = 29;

/** Rows of bars that will be drawn: a row without a single figure is left out. */
const rowsOf = (ctx: Context, panels: ClimatePanels): number =>
  (panels.sun && ctx.result.climate.months.some((m) => m.sunMJPerM2 !== null) ? 1 : 0) +
  (panels.rain && ctx.inputs.climate.months.some((m) => m.precipitationMm !== null) ? 1 : 0);

/** `2003-2021` and `7-16` are never broken over two lines. */
const yearsWhole = (sentence: string): (string | VNode)[] =>
  sentence.split(/(?<!\d)(\d{1,4}-\d{1,4})/).map((piece, i) => (i % 2 === 1 ? <span class="nowrap">{piece}</span> : piece));

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
  const year = (spare: number, { panels, bandMm }: Version): VNode => {
    const hMm = bandMm + rowsOf(ctx, panels) * PANEL_MM + Math.min(spare, BAND_GROWS_MM);
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
    shortenings: VERSIONS.length,
    pages: (shortening) => (VERSIONS[shortening] ?? FULL).pages,
    render: (spare, shortening, page) => {
      const version = VERSIONS[shortening] ?? FULL;
      const head = (
        <SheetHead id={page === 1 ? 'site' : 'site-2'} title={page === 1 ? w.title : climatePages.yearTitle} status={<span>{ctx.request.names.site}</span>} />
      );
      if (version.pages === 1)
        return (
          <>
            {head}
            <Place view={view} />
            {year(spare, version)}
          </>
        );
      return (
        <div class="topped">
          {head}
          {page === 1 ? <Place view={view} /> : year(spare, version)}
        </div>
      );
    },
  };
}
