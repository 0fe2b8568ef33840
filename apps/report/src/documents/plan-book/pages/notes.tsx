import type { VNode } from 'preact';
import type { Note } from '@lathwork/model';
import type { FlowPart } from '../../../layout/book.js';
import { Dashes, NoteText } from '../../../parts/parts.js';
import { common, QUALITY_WORDS, TASK_WORDS } from '../../../words/en/common.js';
import { GENERAL_SAFETY, GLOSSARY, STORM_CARD } from '../../../words/en/cards.js';
import { pages } from '../../../words/en/pages.js';
import { fill } from '../../../words/fill.js';
import { noteText } from '../../../words/notes.js';
import { gateRows } from '../view/card.view.js';
import { bySeverity, SIGNAL_WORDS, type Context } from '../view/context.js';
import { block, flow, Said, table } from './flow.js';

export function weatherPart(ctx: Context): FlowPart {
  const w = pages.weather;
  const c = w.cols;
  const rows = gateRows(ctx).map((g) => ({ cells: [g.stage, g.wind, g.dry, g.air, g.ground] }));
  const { wind, snow } = ctx.result;
  const own = [
    ...(wind.liftsUnanchoredAtMPerS === null ? [] : [fill(pages.loads.lifts, { gust: ctx.fig.speed(wind.liftsUnanchoredAtMPerS) })]),
    snow.clearAt === null
      ? pages.loads.clearAny
      : fill(pages.loads.clearAt, { light: ctx.fig.length(snow.clearAt.lightM), wet: ctx.fig.length(snow.clearAt.wetM) }),
  ];
  const cards = [STORM_CARD.storm, STORM_CARD.after, STORM_CARD.snow, STORM_CARD.heat];
  return flow('weather', w.title, [
    ...table({
      caption: w.go,
      columns: [
        { head: c.stage, widthMm: null },
        { head: c.wind, widthMm: 44, left: true },
        { head: c.dry, widthMm: 14, left: true },
        { head: c.air, widthMm: 28, left: true },
        { head: c.ground, widthMm: 38, left: true },
      ],
      rows,
      thirds: true,
    }),
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
      block(
        <div>
          <h3 class="gap">{w.general}</h3>
          <Dashes items={GENERAL_SAFETY} />
        </div>,
      ),
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
  const rooms = [
    ['wind', wind.verdict],
    ['snow', snow.verdict],
    ['anchorage', anchorage.verdict],
    ['fastening', fastening.verdict],
    ['thermal', thermal.verdict],
  ] as const;
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
  const rows = ctx.result.sources.map((s) => ({
    cells: [
      s.supersededBy === undefined ? s.title : `${s.title} (${fill(w.superseded, { by: s.supersededBy })})`,
      s.publisher === '' ? common.none : s.publisher,
      s.year === null ? common.unknown : String(s.year),
      QUALITY_WORDS[s.quality],
    ],
  }));
  const r = ctx.result;
  return flow('sources', w.title, [
    ...table({
      caption: w.table,
      columns: [
        { head: w.cols.what, widthMm: null, left: true },
        { head: w.cols.by, widthMm: 46, left: true },
        { head: w.cols.year, widthMm: 19 },
        { head: w.cols.quality, widthMm: 32, left: true },
      ],
      rows,
    }),
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
