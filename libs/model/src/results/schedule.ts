import { Type, type Static } from '@sinclair/typebox';
import { list, object, oneOf, orNull, quantity, text } from '../quantity.js';

/** The jobs of a build. A task's id is what notes point at with `beforeTask`. */
export const TASK_IDS = [
  'permission',
  'intake',
  'haulFrame',
  'cleanFrame',
  'denail',
  'stakeOut',
  'drainage',
  'sill',
  'anchors',
  'erect',
  'brace',
  'nailers',
  'endFrames',
  'doors',
  'windows',
  'smooth',
  'coverEnds',
  'mainCover',
  'battens',
  'seal',
  'water',
  'floor',
  'finish',
  'hosting',
] as const;
export type TaskId = (typeof TASK_IDS)[number];

export const WORK_DAYS = ['paper', 'prep', 'ground', 'frame', 'cover', 'finish'] as const;

export const TaskSchema = object({
  taskId: oneOf(...TASK_IDS),
  number: Type.Integer(),
  after: list(oneOf(...TASK_IDS), 10),
  day: oneOf(...WORK_DAYS),
  crewMin: Type.Integer(),
  crewBest: Type.Integer(),
  personHours: object({ lowH: quantity('h'), likelyH: quantity('h'), highH: quantity('h') }),
  /** Hours on the clock with the crew at hand. */
  clockH: quantity('h'),
  earliestStartH: quantity('h', { description: 'working hours after the start, with the crew at hand' }),
  critical: Type.Boolean(),
  gate: object({
    windMaxMPerS: orNull(quantity('m/s')),
    dry: Type.Boolean(),
    airMinC: orNull(quantity('degC')),
    airMaxC: orNull(quantity('degC')),
    groundNot: list(oneOf('frozen', 'saturated'), 2),
    /** Something that must be in the hand first: the utility locate ticket. */
    needs: list(oneOf('locateTicket', 'writtenPermission', 'helpersOnSite', 'sunnyHour'), 4),
  }),
  tools: list(text(40), 20),
});
export type Task = Static<typeof TaskSchema>;

/** One printed stage card: tasks done in one go, with the parts they use. */
export const StageSchema = object({
  stageNumber: Type.Integer(),
  stageId: text(40),
  day: oneOf(...WORK_DAYS),
  tasks: list(oneOf(...TASK_IDS), 10),
  parts: list(object({ mark: orNull(text(6)), lineId: text(40) }), 40),
});
export type Stage = Static<typeof StageSchema>;

export const ScheduleResultSchema = object({
  tasks: list(TaskSchema, 40),
  stages: list(StageSchema, 24),
  totalHours: object({ lowH: quantity('h'), likelyH: quantity('h'), highH: quantity('h') }),
  criticalPath: list(oneOf(...TASK_IDS), 40),
  workDays: object({ low: Type.Integer(), likely: Type.Integer(), high: Type.Integer() }),
  crewMin: Type.Integer(),
  crewBest: Type.Integer(),
});
export type ScheduleResult = Static<typeof ScheduleResultSchema>;
