import type { VNode } from 'preact';
import type { Note } from '@lathwork/model';
import type { FlowItem, FlowPart } from '../../../layout/book.js';
import { Dashes, Drawn, NoteText, SheetHead, StopBox } from '../../../parts/parts.js';
import type { TableSpec } from '../../../parts/table.js';
import { common, MATERIAL_WORDS, QUALITY_WORDS, TASK_WORDS } from '../../../words/en/common.js';
import { GENERAL_SAFETY, GLOSSARY, STORM_CARD } from '../../../words/en/cards.js';
import { pages } from '../../../words/en/pages.js';
import { moneyWhole } from '../../../words/figures.js';
import { fill } from '../../../words/fill.js';
import { noteText } from '../../../words/notes.js';
import type { Drawings } from '../drawings.js';
import { gateRows } from '../view/card.view.js';
import { bySeverity, SIGNAL_WORDS, type Context } from '../view/context.js';
import { allTable, anchorLogTable, budgetSentences, budgetTable, cuttingFinding, filmSentences, filmTables, partsTable, shopTable, yardTable } from '../view/lists.view.js';
import { loadsView } from '../view/loads.view.js';

const block = (node: VNode, keepWithNext = false): FlowItem => ({ kind: 'block', node, keepWithNext });
const table = (spec: TableSpec | null): FlowItem[] => (spec === null || spec.rows.length === 0 ? [] : [{ kind: 'table', spec }]);

function flow(name: string, title: string, items: readonly FlowItem[], status?: string): FlowPart {
  return {
    kind: 'flow',
    name,
    title,
    items,
    head: (part, parts) => (
      <SheetHead id={part === 1 ? name : `${name}-${part}`} title={part === 1 ? title : `${title} (${common.continued})`} status={status === undefined && parts === 1 ? undefined : <span>{[...(status === undefined ? [] : [status]), ...(parts > 1 ? [fill(common.partOf, { part, parts })] : [])].join(', ')}</span>} />
    ),
  };
}

const Said = ({ title, sentences }: { title: string; sentences: readonly string[] }): VNode => (
  <div>
    <h3>{title}</h3>
    {sentences.map((s) => (
      <p>{s}</p>
    ))}
  </div>
);

export function anchorLogPart(ctx: Context): FlowPart | null {
  const log = anchorLogTable(ctx);
  return log === null ? null : flow('anchor-log', pages.anchors.title, table(log));
}

export function loadsPart(ctx: Context): FlowPart {
  const view = loadsView(ctx);
  const w = pages.loads;
  return flow(
    'loads',
    w.title,
    [
      ...(view.unrated ? [block(<StopBox word={common.stop} lead={`\u2013 ${w.unrated.split('. ')[0]?.toLowerCase() ?? ''}`} items={w.unrated.split('. ').slice(1).map((s) => `${s.replace(/\.$/, '')}.`)} two={false} />)] : []),
      ...table(view.summary),
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

export const filmPart = (ctx: Context, drawings: Drawings): FlowPart => flow('film', pages.film.title, [...filmTables(ctx).flatMap((t) => table(t)), ...zonesSketch(ctx, drawings), block(<div>{filmSentences(ctx).map((s) => <p>{s}</p>)}</div>)]);

export function materialsPart(ctx: Context): FlowPart | null {
  if (ctx.result.takeOff.lines.length === 0) return null;
  const shop = shopTable(ctx);
  return flow('materials', pages.materials.title, [block(<NoteText>{pages.materials.note}</NoteText>, true), ...table(allTable(ctx)), ...(shop === null ? [block(<p>{pages.materials.nothing}</p>)] : table(shop)), ...table(yardTable(ctx))]);
}

export function cuttingPart(ctx: Context, drawings: Drawings): FlowPart | null {
  const { cutting } = ctx.result;
  if (cutting.parts.length === 0) return null;
  const unplaced = partsTable(ctx, true);
  return flow('cutting', pages.cutting.title, [
    block(<div>{cuttingFinding(ctx).map((s) => <p>{s}</p>)}</div>),
    ...table(partsTable(ctx, false)),
    ...(unplaced === null ? [] : [block(<p>{pages.cutting.unplacedText}</p>, true), ...table(unplaced)]),
    ...(cutting.boards.length === 0 ? [] : [block(<h3>{pages.cutting.boards}</h3>, true), ...drawings.cutDiagrams({ wMm: ctx.portrait.widthMm, hMm: 66 }).map((d) => block(<Drawn svg={d.svg} />))]),
  ]);
}

export function budgetPart(ctx: Context): FlowPart {
  const w = pages.budget;
  const said = budgetSentences(ctx);
  const c = w.pcols;
  const rows = ctx.result.takeOff.lines.flatMap((l) => (l.cash === null || l.cash.minor === 0 ? [] : [{ cells: [MATERIAL_WORDS[l.material], `${moneyWhole(l.cash.minor, l.cash.currency)}`, l.supplier ?? common.none, `${l.priceReadOn ?? pages.materials.noDate}${l.priceStale ? ` ${pages.materials.stale}` : ''}`] }]));
  const prices: TableSpec = { caption: w.prices, columns: [{ head: c.what, widthMm: null }, { head: `${c.cash}, ${ctx.result.budget.currency}`, widthMm: 28 }, { head: c.where, widthMm: 46, left: true }, { head: c.read, widthMm: 34, left: true }], rows, thirds: true };
  return flow('budget', w.title, [block(<div>{said.lines.map((s) => <p>{s}</p>)}</div>), ...table(budgetTable(ctx)), ...table(prices)], said.verdict);
}

export function weatherPart(ctx: Context): FlowPart {
  const w = pages.weather;
  const c = w.cols;
  const rows = gateRows(ctx).map((g) => ({ cells: [g.stage, g.wind, g.dry, g.air, g.ground] }));
  const { wind, snow } = ctx.result;
  const own = [...(wind.liftsUnanchoredAtMPerS === null ? [] : [fill(pages.loads.lifts, { gust: ctx.fig.speed(wind.liftsUnanchoredAtMPerS) })]), snow.clearAt === null ? pages.loads.clearAny : fill(pages.loads.clearAt, { light: ctx.fig.length(snow.clearAt.lightM), wet: ctx.fig.length(snow.clearAt.wetM) })];
  const cards = [STORM_CARD.storm, STORM_CARD.after, STORM_CARD.snow, STORM_CARD.heat];
  return flow('weather', w.title, [
    ...table({ caption: w.go, columns: [{ head: c.stage, widthMm: null }, { head: c.wind, widthMm: 44, left: true }, { head: c.dry, widthMm: 14, left: true }, { head: c.air, widthMm: 28, left: true }, { head: c.ground, widthMm: 38, left: true }], rows, thirds: true }),
    block(<Said title={STORM_CARD.gate} sentences={own} />),
    block(
      <div class="twocol" style="row-gap:5mm">
        {cards.map((card) => (
          <div style="border-top:var(--r2) solid;padding-top:1.2mm">
            <h3 class="gap">{card.title}</h3>
            <Dashes items={card.items} />
          </div>
        ))}
      </div>,
    ),
  ]);
}

/** The signal word stands before the sentence and is heavier than it. */
const NoteLine = ({ note, ctx }: { note: Note; ctx: Context }): VNode => (
  <p>
    <strong>{SIGNAL_WORDS[note.severity]}</strong> {noteText(note, ctx.fig)}
  </p>
);

export function safetyPart(ctx: Context): FlowPart {
  const w = pages.safety;
  const order = ctx.result.schedule.stages.flatMap((s) => s.tasks);
  const notes = bySeverity(ctx.result.notes);
  const known = new Set<string>(order);
  const general = notes.filter((n) => n.beforeTask === undefined || !known.has(n.beforeTask));
  const byTask = order.map((task) => ({ task, list: notes.filter((n) => n.beforeTask === task) })).filter((g) => g.list.length > 0);
  return flow(
    'safety',
    w.title,
    [
      block(<div><h3 class="gap">{w.general}</h3><Dashes items={GENERAL_SAFETY} /></div>),
      ...general.map((n) => block(<NoteLine note={n} ctx={ctx} />)),
      ...byTask.flatMap(({ task, list }) => [
        block(<h3>{fill(w.before, { task: TASK_WORDS[task] })}</h3>, true),
        ...list.map((n) => block(<NoteLine note={n} ctx={ctx} />)),
      ]),
    ],
    w.status,
  );
}

export function gapsPart(ctx: Context): FlowPart | null {
  const { wind, snow, anchorage, fastening, thermal, climate, takeOff } = ctx.result;
  const rooms = [['wind', wind.verdict], ['snow', snow.verdict], ['anchorage', anchorage.verdict], ['fastening', fastening.verdict], ['thermal', thermal.verdict]] as const;
  const items = rooms
    .filter(([, verdict]) => verdict === 'notAssessed')
    .flatMap(([room]) => {
      const why = ctx.result.notes.filter((n) => n.room === room && n.severity !== 'note');
      const name = room.replace(/^./, (c) => c.toUpperCase());
      return why.length === 0 ? [`${name}: ${common.notAssessed}.`] : why.map((n) => `${name}: ${noteText(n, ctx.fig)}`);
    });
  if (climate.monthsWithRecordCount < 12) items.push(fill(pages.gaps.months, { count: 12 - climate.monthsWithRecordCount }));
  if (takeOff.unpricedCount > 0) items.push(takeOff.unpricedCount === 1 ? pages.look.unpricedOne : fill(pages.look.unpriced, { count: takeOff.unpricedCount }));
  if (items.length === 0) return null;
  return flow('gaps', pages.gaps.title, [block(<p>{pages.gaps.intro}</p>, true), block(<Dashes items={[...new Set(items)]} />)]);
}

/** Sources with years and kinds, then the word list; the page closes with what made it. */
export function sourcesPart(ctx: Context): FlowPart {
  const w = pages.sources;
  const rows = ctx.result.sources.map((s) => ({ cells: [s.supersededBy === undefined ? s.title : `${s.title} (${fill(w.superseded, { by: s.supersededBy })})`, s.publisher === '' ? common.none : s.publisher, s.year === null ? common.unknown : String(s.year), QUALITY_WORDS[s.quality]] }));
  const r = ctx.result;
  return flow('sources', w.title, [
    ...table({ caption: w.table, columns: [{ head: w.cols.what, widthMm: null, left: true }, { head: w.cols.by, widthMm: 46, left: true }, { head: w.cols.year, widthMm: 19 }, { head: w.cols.quality, widthMm: 32, left: true }], rows }),
    block(<NoteText>{w.note}</NoteText>),
    block(
      <div>
        <h3 class="gap">{pages.glossary.title}</h3>
        <dl class="words">
          {GLOSSARY.map(([word, meaning]) => (
            <>
              <dt>{word}</dt>
              <dd>{meaning}</dd>
            </>
          ))}
        </dl>
      </div>,
    ),
    block(<NoteText>{fill(pages.record, { engine: r.engineVersion, plan: r.planId, revision: r.revision })}</NoteText>),
  ]);
}
