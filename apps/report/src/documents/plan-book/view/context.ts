import type { DocumentRequest, Note, PlanInputs, PlanResult } from '@lathwork/model';
import { liveArea, type Live } from '../../../theme/paper.js';
import { common, KIND_WORDS } from '../../../words/en/common.js';
import { pages } from '../../../words/en/pages.js';
import { Figures } from '../../../words/figures.js';
import { fill } from '../../../words/fill.js';
import { noteText } from '../../../words/notes.js';

/** What every page of the book is made from. */
export interface Context {
  request: DocumentRequest;
  inputs: PlanInputs;
  result: PlanResult;
  fig: Figures;
  portrait: Live;
  landscape: Live;
  /** Title line over the first pages: kind, size, build and garden. */
  heading: string;
  status: string;
  openNotes: readonly Note[];
  /** Who drew it, as the plan service tells it. */
  drawnBy: string;
}

const SEVERITY_ORDER = { stop: 0, ask: 1, care: 2, note: 3 } as const;

export const bySeverity = (notes: readonly Note[]): Note[] => [...notes].sort((a, b) => SEVERITY_ORDER[a.severity] - SEVERITY_ORDER[b.severity]);

export function contextOf(request: DocumentRequest): Context {
  const { inputs, result, options, names } = request;
  const fig = new Figures(options.units);
  const { widthM, lengthM } = inputs.structure;
  const size = fig.isMetric
    ? `${widthM.toFixed(1)} \u00d7 ${lengthM.toFixed(1)} m`
    : `${Math.round(widthM / 0.3048)} \u00d7 ${Math.round(lengthM / 0.3048)} ft`;
  return {
    request,
    inputs,
    result,
    fig,
    portrait: liveArea(options.paper, 'portrait'),
    landscape: liveArea(options.paper, 'landscape'),
    heading: `${KIND_WORDS[inputs.structure.kind]} ${size}, ${names.build}, ${names.garden}`,
    status: request.status === 'draft' ? common.draft : common.reviewed,
    drawnBy: names.drawnBy.trim() === '' ? common.planService : names.drawnBy,
    openNotes: bySeverity(result.notes.filter((note) => note.severity === 'stop' || note.severity === 'ask')),
  };
}

export const openCount = (ctx: Context): string =>
  ctx.openNotes.length === 1 ? pages.cover.warningCount : fill(pages.cover.warningsCount, { count: ctx.openNotes.length });

export const SIGNAL_WORDS = { stop: common.stop, ask: common.ask, care: common.care, note: common.note } as const;

/** "STOP: the sentence". */
export const signalled = (note: Note, ctx: Context): string => `${SIGNAL_WORDS[note.severity]}: ${noteText(note, ctx.fig)}`;

/** Months in chart order, so that winter stands whole. */
export const chartMonths = (ctx: Context): number[] => Array.from({ length: 12 }, (_, i) => ((ctx.result.climate.chartStartMonth - 1 + i) % 12) + 1);

/** "November to March", "August", joined with "and"; `months` in chart order. */
export function monthRuns(months: readonly number[], order: readonly number[], name: (month: number) => string): string[] {
  const wanted = new Set(months);
  const runs: number[][] = [];
  order.forEach((month, i) => {
    if (!wanted.has(month)) return;
    const last = runs.at(-1);
    if (last !== undefined && i > 0 && last.at(-1) === order[i - 1]) last.push(month);
    else runs.push([month]);
  });
  return runs.map((run) => {
    const first = name(run[0] ?? 1);
    const last = name(run.at(-1) ?? 1);
    if (run.length === 1) return first;
    return run.length === 2 ? `${first} and ${last}` : `${first} to ${last}`;
  });
}
