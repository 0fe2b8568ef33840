import { Type, type Static } from '@sinclair/typebox';
import { PlanInputsSchema } from './inputs/plan-inputs.js';
import { isoDate, list, object, oneOf, orNull, text } from './quantity.js';
import { PlanResultSchema } from './results/plan-result.js';

/** How one document is to be set. A document has its own language, paper and units, whatever the garden's are. */
export const DocumentOptionsSchema = object({
  kind: oneOf('planBook'),
  language: oneOf('en'),
  paper: oneOf('a4', 'letter'),
  units: oneOf('metric', 'us'),
});
export type DocumentOptions = Static<typeof DocumentOptionsSchema>;

/**
 * What the report app receives: the finished plan and the few names that are joined at print time. Nothing here
 * is asked for later; the report app has no way to ask.
 */
export const DocumentRequestSchema = Type.Object(
  {
    options: DocumentOptionsSchema,
    /** Names, joined when the document is made, never stored in the plan. */
    names: object({
      garden: text(200),
      build: text(200),
      /** A label for the place, not a home address. */
      site: text(200),
      drawnBy: text(200),
      checkedBy: orNull(text(200)),
      /** Demo data says so on every page. */
      invented: Type.Boolean(),
    }),
    /** Short plan number for title blocks and footers, at most 16 characters. */
    planNumber: Type.String({ minLength: 1, maxLength: 16 }),
    /** The day printed on the document: the day the revision was made, so that a reprint is identical. */
    datedOn: isoDate(),
    status: oneOf('draft', 'reviewed'),
    stale: list(text(80), 20),
    inputs: PlanInputsSchema,
    result: PlanResultSchema,
  },
  { additionalProperties: false, $id: 'DocumentRequest' },
);
export type DocumentRequest = Static<typeof DocumentRequestSchema>;
