import type { Note, Stage, Task } from '@lathwork/model';
import { common, DAY_WORDS, MATERIAL_WORDS, TASK_WORDS } from '../../../words/en/common.js';
import { ALWAYS_TOOLS, TASK_CARDS, TOOL_WORDS } from '../../../words/en/cards.js';
import { pages } from '../../../words/en/pages.js';
import { hours } from '../../../words/figures.js';
import { fill, listing } from '../../../words/fill.js';
import { noteText } from '../../../words/notes.js';
import { bySeverity, signalled, type Context } from './context.js';
import { amount } from './lists.view.js';

const w = pages.card;

export interface CardView {
  number: number;
  total: number;
  title: string;
  day: string;
  facts: readonly { name: string; value: string; note: string }[];
  stop: readonly string[];
  steps: readonly string[];
  before: readonly string[];
  tools: readonly string[];
  parts: readonly { mark: string | null; source: 'pile' | 'buy'; text: string }[];
  cares: readonly string[];
  done: string;
  sign: readonly string[];
}

/** A card is one page: these are the most lines it has room for. */
const MOST = [
  { stop: 5, steps: 9, before: 6, tools: 9, parts: 9, cares: 3, sign: 3 },
  { stop: 5, steps: 9, before: 4, tools: 8, parts: 9, cares: 2, sign: 3 },
  { stop: 4, steps: 9, before: 3, tools: 7, parts: 8, cares: 1, sign: 3 },
  { stop: 3, steps: 8, before: 2, tools: 6, parts: 7, cares: 1, sign: 3 },
  { stop: 3, steps: 7, before: 1, tools: 5, parts: 6, cares: 1, sign: 3 },
  { stop: 2, steps: 7, before: 1, tools: 4, parts: 5, cares: 0, sign: 3 },
] as const;
export const CARD_SHORTENINGS = MOST.length;
type Most = (typeof MOST)[number];

const unique = (items: readonly string[]): string[] => [...new Set(items)];
const toolWord = (key: string): string => TOOL_WORDS[key] ?? key.replace(/([a-z])([A-Z])/g, '$1 $2').replace(/[-_]/g, ' ').toLowerCase().replace(/^./, (c) => c.toUpperCase());

function gateFact(ctx: Context, tasks: readonly Task[]): { name: string; value: string; note: string } {
  const winds = tasks.map((t) => t.gate.windMaxMPerS).filter((v): v is number => v !== null);
  const dry = tasks.some((t) => t.gate.dry);
  const ground = unique(tasks.flatMap((t) => t.gate.groundNot)).map((g) => w.ground[g as keyof typeof w.ground]);
  const mins = tasks.map((t) => t.gate.airMinC).filter((v): v is number => v !== null);
  const maxs = tasks.map((t) => t.gate.airMaxC).filter((v): v is number => v !== null);
  const also: string[] = [];
  if (mins.length > 0 && maxs.length > 0) also.push(fill(w.gateAir, { low: ctx.fig.t(Math.max(...mins)), high: ctx.fig.temperatureShort(Math.min(...maxs)) }));
  else if (mins.length > 0) also.push(fill(w.gateAirMin, { low: ctx.fig.temperatureShort(Math.max(...mins)) }));
  if (ground.length > 0) also.push(fill(w.gateGround, { state: listing(ground, 'or') }));
  if (winds.length === 0) return { name: w.gate, value: dry ? w.gateDry : (also.shift() ?? w.gateAny), note: also.join(', ') || w.noWind };
  const wind = ctx.fig.speedPair(Math.min(...winds));
  return { name: w.gate, value: fill(w.gateWind, { wind: wind.first }), note: [wind.second, ...(dry ? [w.gateDry] : []), ...also].join(', ') };
}

function facts(ctx: Context, tasks: readonly Task[]): CardView['facts'] {
  const sum = (pick: (t: Task) => number): number => tasks.reduce((total, t) => total + pick(t), 0);
  const min = Math.max(...tasks.map((t) => t.crewMin));
  const best = Math.max(...tasks.map((t) => t.crewBest));
  const people = (n: number): string => (n === 1 ? '1 person' : fill(w.crewText, { best: n }));
  return [
    { name: w.crew, value: people(best), note: fill(w.crewMin, { min }) },
    { name: w.work, value: fill(w.workText, { likely: hours(Math.round(sum((t) => t.personHours.likelyH))) }), note: fill(w.workRange, { low: hours(Math.round(sum((t) => t.personHours.lowH))), high: hours(Math.round(sum((t) => t.personHours.highH))) }) },
    { name: w.clock, value: fill(w.clockText, { hours: hours(Math.round(sum((t) => t.clockH) * 2) / 2) }), note: fill(w.clockNote, { people: ctx.inputs.crew.people }) },
    gateFact(ctx, tasks),
  ];
}

const notesBefore = (ctx: Context, stage: Stage): Note[] => bySeverity(ctx.result.notes.filter((n) => n.beforeTask !== undefined && (stage.tasks as readonly string[]).includes(n.beforeTask)));

function stops(ctx: Context, tasks: readonly Task[], notes: readonly Note[], most: number): string[] {
  const winds = tasks.map((t) => t.gate.windMaxMPerS).filter((v): v is number => v !== null);
  const min = Math.max(...tasks.map((t) => t.crewMin));
  return unique([
    ...notes.filter((n) => n.severity === 'stop').map((n) => noteText(n, ctx.fig)),
    ...(winds.length > 0 ? [fill(w.stopWind, { wind: ctx.fig.speed(Math.min(...winds)) })] : []),
    ...(min > 1 ? [fill(w.stopCrew, { min })] : []),
    ...tasks.flatMap((t) => TASK_CARDS[t.taskId].stop),
    ...(winds.length > 0 && tasks.some((t) => t.gate.dry) ? [w.stopWet] : []),
  ]).slice(0, most);
}

function parts(ctx: Context, stage: Stage, most: number): CardView['parts'] {
  return stage.parts.slice(0, most).flatMap(({ mark, lineId }) => {
    const line = ctx.result.takeOff.lines.find((l) => l.lineId === lineId);
    if (line === undefined) return [];
    const source: 'pile' | 'buy' = line.reclaimed.length > 0 ? 'pile' : 'buy';
    return [{ mark: mark ?? line.mark, source, text: `${MATERIAL_WORDS[line.material]}: ${amount(line.need, line.unit, ctx)}` }];
  });
}

function title(tasks: readonly Task[]): string {
  const names = tasks.map((t) => TASK_WORDS[t.taskId]);
  if (names.length <= 1) return names.join('');
  const last = names.at(-1) ?? '';
  return `${names[0] ?? ''}, ${names.length > 2 ? '\u2026 ' : ''}${last.charAt(0).toLowerCase()}${last.slice(1)}`;
}

export function cardView(ctx: Context, stage: Stage, shortening = 0): CardView {
  const max: Most = MOST[shortening] ?? MOST[0];
  const tasks = stage.tasks.map((id) => ctx.result.schedule.tasks.find((t) => t.taskId === id)).filter((t): t is Task => t !== undefined);
  const notes = notesBefore(ctx, stage);
  const total = ctx.result.schedule.stages.length;
  const diagonal = ctx.fig.sizeText(ctx.result.geometry.groundDiagonalM);
  const cards = tasks.map((t) => TASK_CARDS[t.taskId]);
  return {
    number: stage.stageNumber,
    total,
    title: title(tasks),
    day: DAY_WORDS[stage.day],
    facts: facts(ctx, tasks),
    stop: stops(ctx, tasks, notes, max.stop),
    steps: unique(cards.flatMap((c) => c.steps)).slice(0, max.steps),
    before: unique([
      ...notes.filter((n) => n.severity === 'ask').map((n) => signalled(n, ctx)),
      ...(stage.stageNumber > 1 ? [fill(w.stageDone, { n: stage.stageNumber - 1 })] : []),
      ...tasks.flatMap((t) => t.gate.needs).map((need) => w.needs[need]),
      ...notes.filter((n) => n.severity === 'note').map((n) => noteText(n, ctx.fig)),
    ]).slice(0, max.before),
    tools: unique([...tasks.flatMap((t) => t.tools).map(toolWord), ...ALWAYS_TOOLS]).slice(0, max.tools),
    parts: parts(ctx, stage, max.parts),
    cares: unique([...notes.filter((n) => n.severity === 'care').map((n) => noteText(n, ctx.fig)), ...cards.map((c) => c.care).filter((c): c is string => c !== undefined)]).slice(0, max.cares),
    done: `${listing(unique(cards.map((c) => c.done)))}.`.replace(/^./, (c) => c.toUpperCase()),
    sign: unique(cards.flatMap((c) => c.sign)).slice(0, max.sign).map((s) => fill(s, { diagonal })),
  };
}

export interface GateRow {
  stage: string;
  wind: string;
  dry: string;
  air: string;
  ground: string;
}

/** The weather gates of all stages, for the go or no-go card. */
export function gateRows(ctx: Context): GateRow[] {
  return ctx.result.schedule.tasks
    .filter((t) => t.gate.windMaxMPerS !== null || t.gate.dry || t.gate.airMinC !== null || t.gate.groundNot.length > 0)
    .map((t) => {
      const { windMaxMPerS, dry, airMinC, airMaxC, groundNot } = t.gate;
      const air = airMinC === null && airMaxC === null ? common.none : airMinC !== null && airMaxC !== null ? fill(w.gateAir, { low: ctx.fig.t(airMinC), high: ctx.fig.temperatureShort(airMaxC) }) : airMinC !== null ? fill(w.gateAirMin, { low: ctx.fig.temperatureShort(airMinC) }) : `below ${ctx.fig.temperatureShort(airMaxC ?? 0)}`;
      return { stage: TASK_WORDS[t.taskId], wind: windMaxMPerS === null ? common.none : `under ${ctx.fig.speed(windMaxMPerS)}`, dry: dry ? common.yes : common.none, air, ground: groundNot.length === 0 ? common.none : `not ${listing(groundNot.map((g) => w.ground[g]), 'or')}` };
    });
}
