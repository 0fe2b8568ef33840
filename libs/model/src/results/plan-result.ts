import { Type, type Static } from '@sinclair/typebox';
import { NoteSchema, ROOMS, SourceSchema } from '../notes.js';
import { list, object, oneOf, text } from '../quantity.js';
import { ClimateResultSchema } from './climate.js';
import { GeometryResultSchema } from './geometry.js';
import { AnchorageResultSchema, FasteningResultSchema, SnowResultSchema, WindResultSchema } from './loads.js';
import { BudgetResultSchema, CuttingResultSchema, TakeOffResultSchema } from './materials.js';
import { ScheduleResultSchema } from './schedule.js';
import { ThermalResultSchema } from './thermal.js';

export const RESULT_SCHEMA_VERSION = 1;

/** A finished plan: values, notes and the sources used. It is stored once and never edited. */
export const PlanResultSchema = Type.Object(
  {
    schemaVersion: Type.Literal(RESULT_SCHEMA_VERSION),
    engineVersion: text(40),
    planId: Type.String({ format: 'uuid' }),
    revision: Type.Integer({ minimum: 1 }),
    geometry: GeometryResultSchema,
    climate: ClimateResultSchema,
    thermal: ThermalResultSchema,
    wind: WindResultSchema,
    snow: SnowResultSchema,
    anchorage: AnchorageResultSchema,
    fastening: FasteningResultSchema,
    takeOff: TakeOffResultSchema,
    cutting: CuttingResultSchema,
    budget: BudgetResultSchema,
    schedule: ScheduleResultSchema,
    /** All rooms' notes, the safety room's included, most severe first. */
    notes: list(NoteSchema, 400),
    /** The three things most likely to end this build badly. */
    risks: list(object({ room: oneOf(...ROOMS), code: text(80) }), 3),
    /** `stop` notes present: the plan cannot be marked reviewed. */
    reviewBlocked: Type.Boolean(),
    sources: list(SourceSchema, 200),
  },
  { additionalProperties: false, $id: 'PlanResult' },
);
export type PlanResult = Static<typeof PlanResultSchema>;
