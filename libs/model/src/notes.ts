import { Type, type Static } from '@sinclair/typebox';
import { list, object, oneOf, text } from './quantity.js';

/** The rooms of the corridor, in the order the chain walks them. */
export const ROOMS = [
  'geometry',
  'climate',
  'thermal',
  'wind',
  'snow',
  'anchorage',
  'fastening',
  'cutting',
  'takeoff',
  'budget',
  'schedule',
  'safety',
] as const;
export type RoomName = (typeof ROOMS)[number];

/**
 * What a room says beside its numbers: a code with parameters, never a sentence. The wording lives in the
 * report app, in each language. `stop` blocks a review; `ask` needs an answer from someone; `care` warns;
 * `note` informs.
 */
export const NoteSchema = object({
  code: Type.String({ pattern: '^[a-z]+(\\.[a-z0-9-]+)+$', maxLength: 80 }),
  severity: oneOf('stop', 'care', 'ask', 'note'),
  room: oneOf(...ROOMS),
  /** What it is about: an opening, an item tag, a month, a post. */
  subject: Type.Optional(text(80)),
  /** The task before which a reader must have seen it (see results/schedule). */
  beforeTask: Type.Optional(text(40)),
  params: Type.Record(Type.String(), Type.Union([Type.Number(), Type.String({ maxLength: 2000 }), Type.Boolean(), list(Type.String({ maxLength: 2000 }))])),
});
export type Note = Static<typeof NoteSchema>;

/**
 * The words a screening may say. There is no word for "safe": a screening cannot know that.
 * `noRedFlag` prints as "no red flag in this screening".
 */
export const VERDICTS = ['doesNotPass', 'marginal', 'noRedFlag', 'notAssessed'] as const;
export const VerdictSchema = oneOf(...VERDICTS);
export type Verdict = (typeof VERDICTS)[number];

/** Where a figure comes from. `judgement` and `memory` are printed as such. */
export const SourceSchema = object({
  sourceId: Type.String({ maxLength: 60 }),
  title: text(300),
  publisher: Type.String({ maxLength: 200 }),
  year: Type.Union([Type.Integer({ minimum: 1700, maximum: 2200 }), Type.Null()]),
  supersededBy: Type.Optional(text(300)),
  quality: oneOf('published', 'measured', 'practice', 'judgement', 'memory'),
});
export type Source = Static<typeof SourceSchema>;
