import type { FixedPart } from '../../../layout/book.js';
import { Figure, NoteText, SheetHead } from '../../../parts/parts.js';
import { Table } from '../../../parts/table.js';
import { pages } from '../../../words/en/pages.js';
import type { Drawings } from '../drawings.js';
import type { Context } from '../view/context.js';
import { coldNights, nightsView } from '../view/nights.view.js';

const w = pages.nights;
const NIGHTS_MIN_MM = 52;
const DAYS_MIN_MM = 44;

export function nightsPart(ctx: Context, drawings: Drawings): FixedPart | null {
  if (ctx.result.thermal.months.every((m) => m.outsideLowC === null)) return null;
  const view = nightsView(ctx);
  const wMm = ctx.portrait.widthMm;
  return {
    kind: 'fixed',
    name: 'nights',
    title: w.title,
    orientation: 'portrait',
    render: (spare) => {
      const extra = Math.min(spare, 60);
      return (
        <>
          <SheetHead id="nights" title={w.title} status={<span>{w.status}</span>} />
          <div>
            <h3 class="gap">{view.nightFinding}</h3>
            <Figure drawing={drawings.nightsChart({ wMm, hMm: NIGHTS_MIN_MM + extra * 0.6 }, view.coldLimits)} />
          </div>
          <div>
            {view.dayFinding === null ? null : <h3 class="gap">{view.dayFinding}</h3>}
            <Figure drawing={drawings.daysChart({ wMm, hMm: DAYS_MIN_MM + extra * 0.4 }, view.heatLimit)} />
          </div>
          <Table spec={view.table} />
          <NoteText>{view.notes.join(' ')}</NoteText>
        </>
      );
    },
  };
}

const CURVE_MIN_MM = 60;
const CURVE_MAX_MM = 92;

/** The design night as a curve from noon to noon: when it is coldest, and what the inner cover does. */
export function coldNightPart(ctx: Context, drawings: Drawings): FixedPart | null {
  const { nights, table } = coldNights(ctx);
  if (nights.length === 0) return null;
  const { coldLimits } = nightsView(ctx);
  return {
    kind: 'fixed',
    name: 'cold-night',
    title: w.coldTitle,
    orientation: 'portrait',
    render: (spare) => {
      const hMm = Math.min(CURVE_MAX_MM, CURVE_MIN_MM + spare / nights.length);
      return (
        <>
          <SheetHead id="cold-night" title={w.coldTitle} status={<span>{w.coldStatus}</span>} />
          {nights.map(({ run, finding }) => (
            <div>
              <h3 class="gap">{finding}</h3>
              <Figure drawing={drawings.nightCurve({ wMm: ctx.portrait.widthMm, hMm }, run, coldLimits)} />
            </div>
          ))}
          <Table spec={table} />
          <NoteText>{w.coldNote}</NoteText>
        </>
      );
    },
  };
}
