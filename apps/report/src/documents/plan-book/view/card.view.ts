import type { Note, Stage, Task } from '@lathwork/model';
import { common, DAY_WORDS, MATERIAL_WORDS, TASK_SHORT, TASK_WORDS } from '../../../words/en/common.js';
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

/**
 * What a card may leave out, step by step: plain notes stand on the safety pages too. A STOP, ASK or CARE line, a step, a
 * tool or a part is never left out; a card that is too full for one page takes a second one.
 */
export interface CardForm {
  /** Are plain notes said here too? */
  notes: boolean;
  /** Warnings across both columns, above picture and steps, instead of in the side column. */
  across: boolean;
  /** From three pages on, the warnings have pages of their own between the tools and the steps. */
  pages: number;
  pictureMinMm: number;
}
const FORMS: readonly CardForm[] = [
  { notes: true, across: false, pages: 1, pictureMinMm: 56 },
  { notes: true, across: true, pages: 1, pictureMinMm: 48 },
  { notes: true, across: false, pages: 1, pictureMinMm: 40 },
  { notes: true, across: true, pages: 1, pictureMinMm: 34 },
  { notes: false, across: true, pages: 1, pictureMinMm: 30 },
  { notes: true, across: false, pages: 2, pictureMinMm: 60 },
  { notes: true, across: false, pages: 3, pictureMinMm: 60 },
  { notes: true, across: false, pages: 4, pictureMinMm: 60 },
  { notes: true, across: false, pages: 6, pictureMinMm: 60 },
];
export const CARD_SHORTENINGS = FORMS.length;
export const cardForm = (shortening: number): CardForm => FORMS[shortening] ?? FORMS[0] ?? { notes: true, across: false, pages: 2, pictureMinMm: 60 };
export const cardPages = (shortening: number): number => cardForm(shortening).pages;

/** The sign-off has room for three measured things beside who, when and go on. */
const MOST_SIGNED = 3;

const unique = (items: readonly string[]): string[] => [...new Set(items)];
const toolWord = (key: string): string =>
  TOOL_WORDS[key] ??
  key
    .replace(/([a-z])([A-Z])/g, '$1 $2')
    .replace(/[-_]/g, ' ')
    .toLowerCase()
    .replace(/^./, (c) => c.toUpperCase());

function gateFact(ctx: Context, tasks: readonly Task[]): { name: string; value: string; note: string } {
  const winds = tasks.map((t) => t.gate.windMaxMPerS).filter((v): v is number => v !== null);
  const dry = tasks.some((t) => t.gate.dry);
  const ground = unique(tasks.flatMap((t) => t.gate.groundNot)).map((g) => w.ground[g as keyof typeof w.ground]);
  const mins = tasks.map((t) => t.gate.airMinC).filter((v): v is number => v !== null);
  const maxs = tasks.map((t) => t.gate.airMaxC).filter((v): v is number => v !== null);
  const also: string[] = [];
  if (mins.length > 0 && maxs.length > 0) also.push(fill(w.gateAir, { low: ctx.fig.t(Math.max(...mins)), high: ctx.fig.temperatureShort(Math.min(...maxs)) }));
  else if (mins.length > 0) also.push(fill(w.gateAirMin, { low: ctx.fig.temperatureShort(Math.max(...mins)) }));
  if (ground.length > 0) also.push(fill(w.gateGround, { state: listing(ground, w.or) }));
  if (winds.length === 0) return { name: w.gate, value: dry ? w.gateDry : (also.shift() ?? w.gateAny), note: also.join(', ') || w.noWind };
  const wind = ctx.fig.speedPair(Math.min(...winds));
  return { name: w.gate, value: fill(w.gateWind, { wind: wind.first }), note: [wind.second, ...(dry ? [w.gateDry] : []), ...also].join(', ') };
}

function facts(ctx: Context, tasks: readonly Task[]): CardView['facts'] {
  const sum = (pick: (t: Task) => number): number => tasks.reduce((total, t) => total + pick(t), 0);
  const min = Math.max(...tasks.map((t) => t.crewMin));
  const best = Math.max(...tasks.map((t) => t.crewBest));
  const people = (n: number): string => (n === 1 ? w.onePerson : fill(w.crewText, { best: n }));
  return [
    { name: w.crew, value: people(best), note: fill(w.crewMin, { min }) },
    {
      name: w.work,
      value: fill(w.workText, { likely: hours(Math.round(sum((t) => t.personHours.likelyH))) }),
      note: fill(w.workRange, { low: hours(Math.round(sum((t) => t.personHours.lowH))), high: hours(Math.round(sum((t) => t.personHours.highH))) }),
    },
    {
      name: w.clock,
      value: fill(w.clockText, { hours: hours(Math.round(sum((t) => t.clockH) * 2) / 2) }),
      note: fill(w.clockNote, { people: ctx.inputs.crew.people }),
    },
    gateFact(ctx, tasks),
  ];
}

const notesBefore = (ctx: Context, stage: Stage): Note[] =>
  bySeverity(ctx.result.notes.filter((n) => n.beforeTask !== undefined && (stage.tasks as readonly string[]).includes(n.beforeTask)));

function stops(ctx: Context, tasks: readonly Task[], notes: readonly Note[]): string[] {
  const winds = tasks.map((t) => t.gate.windMaxMPerS).filter((v): v is number => v !== null);
  const min = Math.max(...tasks.map((t) => t.crewMin));
  return unique([
    ...notes.filter((n) => n.severity === 'stop').map((n) => noteText(n, ctx.fig)),
    ...(winds.length > 0 ? [fill(w.stopWind, { wind: ctx.fig.speed(Math.min(...winds)) })] : []),
    ...(min > 1 ? [fill(w.stopCrew, { min })] : []),
    ...tasks.flatMap((t) => TASK_CARDS[t.taskId].stop),
    ...(winds.length > 0 && tasks.some((t) => t.gate.dry) ? [w.stopWet] : []),
  ]);
}

function parts(ctx: Context, stage: Stage): CardView['parts'] {
  return stage.parts.flatMap(({ mark, lineId }) => {
    const line = ctx.result.takeOff.lines.find((l) => l.lineId === lineId);
    if (line === undefined) return [];
    const source: 'pile' | 'buy' = line.reclaimed.length > 0 ? 'pile' : 'buy';
    return [{ mark: mark ?? line.mark, source, text: `${MATERIAL_WORDS[line.material]}: ${amount(line.wanted, line.unit, ctx)}` }];
  });
}

const lowerFirst = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);

/** Two jobs are named in full; three or more in short words, none left out. */
function title(tasks: readonly Task[]): string {
  const names = tasks.map((t) => (tasks.length > 2 ? TASK_SHORT[t.taskId] : TASK_WORDS[t.taskId]));
  return names.map((name, i) => (i === 0 ? name : lowerFirst(name))).join(', ');
}

export function cardView(ctx: Context, stage: Stage, shortening = 0): CardView {
  const form = cardForm(shortening);
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
    stop: stops(ctx, tasks, notes),
    steps: unique(cards.flatMap((c) => c.steps)),
    before: unique([
      ...notes.filter((n) => n.severity === 'ask').map((n) => signalled(n, ctx)),
      ...(stage.stageNumber > 1 ? [fill(w.stageDone, { n: stage.stageNumber - 1 })] : []),
      ...tasks.flatMap((t) => t.gate.needs).map((need) => w.needs[need]),
      ...notes.filter((n) => form.notes && n.severity === 'note').map((n) => noteText(n, ctx.fig)),
    ]),
    tools: unique([...tasks.flatMap((t) => t.tools).map(toolWord), ...ALWAYS_TOOLS]),
    parts: parts(ctx, stage),
    cares: unique([
      ...notes.filter((n) => n.severity === 'care').map((n) => noteText(n, ctx.fig)),
      ...cards.map((c) => c.care).filter((c): c is string => c !== undefined),
    ]),
    done: `${listing(unique(cards.map((c) => c.done)))}.`.replace(/^./, (c) => c.toUpperCase()),
    sign: unique(cards.flatMap((c) => c.sign))
      .slice(0, MOST_SIGNED)
      .map((s) => fill(s, { diagonal })),
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
      const air =
        airMinC === null && airMaxC === null
          ? common.none
          : airMinC !== null && airMaxC !== null
            ? fill(w.gateAir, { low: ctx.fig.t(airMinC), high: ctx.fig.temperatureShort(airMaxC) })
            : airMinC !== null
              ? fill(w.gateAirMin, { low: ctx.fig.temperatureShort(airMinC) })
              : fill(w.gateAirMax, { high: ctx.fig.temperatureShort(airMaxC ?? 0) });
      return {
        stage: TASK_WORDS[t.taskId],
        wind: windMaxMPerS === null ? common.none : fill(w.gateWindShort, { wind: ctx.fig.speed(windMaxMPerS) }),
        dry: dry ? common.yes : common.none,
        air,
        ground:
          groundNot.length === 0
            ? common.none
            : fill(w.gateNot, {
                state: listing(
                  groundNot.map((g) => w.ground[g]),
                  w.or,
                ),
              }),
      };
    });
}
