/**
 * Schedule: the jobs in their order, the hours they take, the weather they wait for, and the cards they are printed on.
 *
 * Gives: 24 tasks with person-hours low, likely and high, gates, earliest starts and the critical path; stage cards.
 * Model: hours = reference hours x (fixed + (1 - fixed) x size ratio) x crew factor, the ratio being floor area, doors,
 *   windows or barrels over the reference case; longest path through the tasks on the clock of the crew at hand.
 * Assumes: everyone at hand works, up to the best crew of a task; tasks side by side do not wait for each other's people.
 * Validity: see MODEL. Reference hours are judgement, their spread set against MSU-E3138 (114 to 420 h of a mean of 237).
 * Fields: person-hours and clock hours; days of six working hours.
 * References: MSU-E3138, COVER-DAY, LOCATE-811, JUDGEMENT-MATERIALS.
 */
import type { Crew, GeometryResult, Note, ScheduleResult, Stage, StructureInputs, TakeOffResult, Task, TaskId } from '@lathwork/model';
import {
  COVER_WIND_LARGE,
  COVER_WIND_SMALL,
  CROWD_PER_M2,
  EXPERIENCE,
  REFERENCE_AREA_M2,
  REFERENCE_BARRELS,
  REFERENCE_DOORS,
  REFERENCE_WINDOWS,
  SMALL_COVER_M2,
  STAGES,
  TASKS,
  WORKING_DAY_H,
  type Driver,
  type TaskFacts,
} from '../data/tasks.js';
import { outsideValidity, type RoomModel, type RoomOutput } from './room.js';

export const SCHEDULE_MODEL = {
  room: 'schedule',
  title: 'Scaled task table and its longest path',
  ranges: { floorAreaM2: { unit: 'm2', min: 4, max: 270, sourceId: 'MSU-E3138', safety: false } },
  sources: ['MSU-E3138', 'COVER-DAY', 'LOCATE-811', 'JUDGEMENT-MATERIALS', 'LOW-COST-PRACTICE'],
} as const satisfies RoomModel<'floorAreaM2'>;

export interface ScheduleInput {
  structure: StructureInputs;
  geometry: GeometryResult;
  takeOff: TakeOffResult;
  crew: Crew;
}

const sizeRatios = ({ structure, geometry }: ScheduleInput): Record<Driver, number> => {
  const fitting = geometry.openings.filter((o) => o.fits);
  const doors = fitting.filter((o) => o.kind === 'door').length;
  const barrels = structure.waterStores.reduce((n, w) => n + w.count, 0);
  return {
    area: geometry.footprintM2 / REFERENCE_AREA_M2,
    doors: doors / REFERENCE_DOORS,
    windows: (fitting.length - doors) / REFERENCE_WINDOWS,
    barrels: barrels / REFERENCE_BARRELS,
  };
};

const gateOf = (facts: TaskFacts, areaM2: number): Task['gate'] => {
  const coverWind = areaM2 <= SMALL_COVER_M2 ? COVER_WIND_SMALL : COVER_WIND_LARGE;
  const spreading = facts.taskId === 'mainCover' || facts.taskId === 'battens';
  return { windMaxMPerS: spreading ? coverWind : null, dry: false, airMinC: null, airMaxC: null, groundNot: [], needs: [], ...facts.gate };
};

const timed = (facts: TaskFacts, number: number, input: ScheduleInput, ratios: Record<Driver, number>): Task => {
  const { people, experience } = input.crew;
  const scale = (facts.fixedFrac + (1 - facts.fixedFrac) * ratios[facts.driver]) * EXPERIENCE[experience];
  // Fewer people than a task needs do not do it slower: they wait until the crew is there.
  const hands = Math.max(facts.crewMin, Math.min(people, facts.crewBest));
  const gate = gateOf(facts, input.geometry.footprintM2);
  return {
    taskId: facts.taskId,
    number,
    after: [...facts.after],
    day: facts.day,
    crewMin: facts.crewMin,
    crewBest: facts.crewBest,
    personHours: { lowH: facts.lowH * scale, likelyH: facts.likelyH * scale, highH: facts.highH * scale },
    clockH: (facts.likelyH * scale) / hands,
    earliestStartH: 0,
    critical: false,
    gate: { ...gate, groundNot: [...gate.groundNot], needs: [...gate.needs] },
    tools: [...facts.tools],
  };
};

/** Earliest starts forwards, then the chain of tasks without slack from the last one back. Tasks are listed in a valid order. */
const withPath = (tasks: Task[]): { tasks: Task[]; criticalPath: TaskId[] } => {
  const endOf = new Map<TaskId, number>();
  const started = tasks.map((t) => {
    const earliestStartH = Math.max(0, ...t.after.map((id) => endOf.get(id) ?? 0));
    endOf.set(t.taskId, earliestStartH + t.clockH);
    return { ...t, earliestStartH };
  });
  const criticalPath: TaskId[] = [];
  let at = [...started].sort((a, b) => (endOf.get(b.taskId) ?? 0) - (endOf.get(a.taskId) ?? 0))[0];
  while (at) {
    criticalPath.unshift(at.taskId);
    const { after, earliestStartH } = at;
    at = started.find((t) => after.includes(t.taskId) && Math.abs((endOf.get(t.taskId) ?? 0) - earliestStartH) < 1e-9);
  }
  return { tasks: started.map((t) => ({ ...t, critical: criticalPath.includes(t.taskId) })), criticalPath };
};

const stagesOf = (takeOff: TakeOffResult): Stage[] =>
  STAGES.map((s, i) => ({
    stageNumber: i + 1,
    stageId: s.stageId,
    day: s.day,
    tasks: [...s.tasks],
    parts: takeOff.lines
      .filter((l) => s.lines.some((start) => (start.endsWith('-') ? l.lineId.startsWith(start) : l.lineId === start)))
      .map((l) => ({ mark: l.mark, lineId: l.lineId })),
  }));

const crewNotes = (tasks: readonly Task[], { crew, geometry }: ScheduleInput): Note[] => {
  const about = { room: 'schedule', severity: 'care' } as const;
  const short = tasks.filter((t) => t.personHours.likelyH > 0 && t.crewMin > crew.people);
  const mostCount = Math.max(2, Math.floor(geometry.footprintM2 * CROWD_PER_M2));
  return [
    ...short.map((t): Note => ({
      ...about,
      code: 'schedule.crew-too-small',
      subject: t.taskId,
      beforeTask: t.taskId,
      params: { peopleCount: crew.people, crewMinCount: t.crewMin },
    })),
    ...(crew.people > mostCount ? [{ ...about, code: 'schedule.too-many-people', params: { peopleCount: crew.people, mostCount } } satisfies Note] : []),
  ];
};

export const computeSchedule = (input: ScheduleInput): RoomOutput<ScheduleResult> => {
  const ratios = sizeRatios(input);
  const { tasks, criticalPath } = withPath(TASKS.map((facts, i) => timed(facts, i + 1, input, ratios)));
  const total = (of: (t: Task) => number) => tasks.reduce((sum, t) => sum + of(t), 0);
  const totalHours = { lowH: total((t) => t.personHours.lowH), likelyH: total((t) => t.personHours.likelyH), highH: total((t) => t.personHours.highH) };
  const crewMin = Math.max(...tasks.map((t) => t.crewMin));
  const crewBest = Math.max(...tasks.map((t) => t.crewBest));
  const hands = Math.max(1, Math.min(input.crew.people, crewBest));
  const days = (hours: number) => Math.max(1, Math.ceil(hours / (hands * WORKING_DAY_H) - 1e-9));
  return {
    result: {
      tasks,
      stages: stagesOf(input.takeOff),
      totalHours,
      criticalPath,
      workDays: { low: days(totalHours.lowH), likely: days(totalHours.likelyH), high: days(totalHours.highH) },
      crewMin,
      crewBest,
    },
    notes: [...crewNotes(tasks, input), ...outsideValidity(SCHEDULE_MODEL, { floorAreaM2: input.geometry.footprintM2 })],
    sources: [...SCHEDULE_MODEL.sources],
  };
};
