import type { VNode } from 'preact';
import type { ContentsLine } from '../../../layout/book.js';
import { AskBox, SheetHead, StopBox } from '../../../parts/parts.js';
import { common } from '../../../words/en/common.js';
import { pages } from '../../../words/en/pages.js';
import { fill, listing } from '../../../words/fill.js';
import { staleTexts } from '../../../words/stale.js';
import { openCount, signalled, type Context } from '../view/context.js';

const w = pages.cover;
/** How many open warnings the cover shows; the rest stand on the safety pages. */
const OPEN_SHOWN = [8, 6, 4, 2, 1] as const;
export const COVER_SHORTENINGS = OPEN_SHOWN.length;

const Facts = ({ ctx }: { ctx: Context }): VNode => {
  const { request } = ctx;
  const rows: [string, string][] = [
    [w.facts.number, request.planNumber],
    [w.facts.revision, String(request.inputs.revision)],
    [w.facts.date, request.datedOn],
    [w.facts.place, request.names.site],
    [w.facts.drawn, ctx.drawnBy],
    [w.facts.checked, request.names.checkedBy ?? common.notByEngineer],
    [w.facts.units, ctx.fig.sizeUnit()],
  ];
  return (
    <dl class="facts">
      {rows.map(([name, value]) => (
        <>
          <dt>{name}</dt>
          <dd>{value}</dd>
        </>
      ))}
    </dl>
  );
};

const Contents = ({ lines }: { lines: readonly ContentsLine[] }): VNode => (
  <div>
    <h3 class="gap">{w.contents}</h3>
    <ul class="toc">
      {lines.map((line) => (
        <li>
          <a href={`#${line.name}`}>{line.title}</a> <span>{line.page}</span>
        </li>
      ))}
    </ul>
  </div>
);

/** Revision, status, what the book is for, the safety statement, what is open, and the contents. */
export function coverPage(ctx: Context, contents: readonly ContentsLine[], leftOut: readonly string[], shortening: number): VNode {
  const shown = ctx.openNotes.slice(0, OPEN_SHOWN[shortening] ?? 1).map((note) => signalled(note, ctx));
  const more = ctx.openNotes.length - shown.length;
  const open = [...shown, ...(more > 0 ? [fill(w.openMore, { count: more })] : []), ...staleTexts(ctx.request.stale)];
  return (
    <>
      <SheetHead
        id="cover"
        level={1}
        over={ctx.heading}
        title={w.title}
        status={
          <>
            {ctx.status}
            <span>, {openCount(ctx)}</span>
          </>
        }
      />
      <div class="cover-a">
        <div>
          <h3>{w.forWhat}</h3>
          <p>{w.forWhatText}</p>
        </div>
        <Facts ctx={ctx} />
      </div>
      <StopBox word={common.stop} lead={`\u2013 ${w.safety.toLowerCase()}`} items={w.safetyItems} two={false} />
      {open.length > 0 ? (
        <AskBox lead={`${w.open}${ctx.result.reviewBlocked ? `: ${w.blocked.toLowerCase().replace('stop', 'STOP').replace(/\.$/, '')}` : ''}`} items={open} />
      ) : (
        <p>{`${w.open}: ${w.openNone.toLowerCase()}`}</p>
      )}
      <div>
        <Contents lines={contents} />
        {leftOut.length > 0 ? (
          <p class="small" style="padding-top:2mm">
            {fill(w.left, { parts: listing(leftOut).toLowerCase() })}
          </p>
        ) : null}
      </div>
    </>
  );
}
