import { PlanInputsSchema, PlanResultSchema } from '@lathwork/model';
import { etagOfParts } from '../../platform/http/etag.js';
import { PageQuery } from '../../platform/http/page.js';
import { QuantityField } from '../../platform/http/quantity-field.js';
import { namedSchema, S } from '../../platform/http/response-schema.js';
import type { ProblemBody } from '../../platform/problems/problem.js';
import { ChoiceField, DayField, IdField, ListField, Shape, TextField } from '../shared/fields.js';
import { IdQuery } from '../shared/queries.dto.js';
import { AS_TYPED } from '../shared/resource.js';
import type { AsBuiltRecord, PlanRecord, PlanState, ReviewRecord } from './plans.repository.js';

@Shape('PlanRequest', 'Asks for a new revision of the plan of a build.')
export class PlanDto {
  @IdField() buildId!: string;
  @DayField({ optional: true, description: 'Ages of prices and films are counted from this day; today at the site when left out' }) asOf?: string | null;
}

@Shape('ReviewRequest')
export class ReviewDto {
  @ChoiceField(['reviewed', 'changesWanted']) decision!: 'reviewed' | 'changesWanted';
  @TextField(120, { description: 'Who looked at the plan, as it is to be printed' }) reviewer!: string;
  @TextField(2000, { optional: true }) comment?: string | null;
}

@Shape('AsBuiltMeasureRequest')
export class AsBuiltMeasureDto {
  @TextField(80, { description: 'What was measured: a part, a mark, an opening' }) subject!: string;
  @QuantityField('m', { min: 0, max: 100, nullable: true }) lengthM!: number | null;
  @QuantityField('N', { min: 0, max: 100_000, nullable: true, description: 'A pull check on an anchor' }) pulledToN!: number | null;
  @TextField(500, { nullable: true }) remark!: string | null;
}

@Shape('AsBuiltRequest', 'What was really built, kept beside the revision and never in place of it.')
export class AsBuiltDto {
  @DayField() observedOn!: string;
  @ListField(() => AsBuiltMeasureDto, { max: 200 }) measures!: AsBuiltMeasureDto[];
  @TextField(2000, { optional: true }) remark?: string | null;
}

export class PlanListQuery extends PageQuery {
  @IdQuery('Only plans of this build') buildId?: string;
}

export interface PlanResponse {
  id: string;
  buildId: string;
  revision: number;
  state: PlanState;
  asOf: string;
  createdAt: string;
  startedAt: string | null;
  finishedAt: string | null;
  problem: ProblemBody | null;
  reviewBlocked: boolean | null;
  reviews: ReviewRecord[];
  stale: { reason: string; subject: string | null; since: string }[];
  asBuiltCount: number;
  links: { self: string; build: string; result: string | null };
}

const ReviewSchema = namedSchema(
  'Review',
  S.object({ id: S.id(), decision: S.choice('reviewed', 'changesWanted'), reviewer: S.text(120), comment: S.orNull(S.text(2000)), createdAt: S.moment() }),
);
export const ReviewResponseSchema = ReviewSchema;

export const PlanSchema = namedSchema(
  'Plan',
  S.object({
    id: S.id(),
    buildId: S.id(),
    revision: S.whole(1, 100_000),
    state: S.choice('computing', 'ready', 'failed'),
    asOf: S.day(),
    createdAt: S.moment(),
    startedAt: S.orNull(S.moment()),
    finishedAt: S.orNull(S.moment()),
    problem: S.orNull({ $ref: '#/components/schemas/Problem' }),
    reviewBlocked: S.orNull(S.flag()),
    reviews: S.list(ReviewSchema, 50),
    stale: S.list(S.object({ reason: S.text(80), subject: S.orNull(S.text(200)), since: S.moment() }), 50),
    asBuiltCount: S.whole(0, 1_000_000),
    links: S.object({ self: S.text(200), build: S.text(200), result: S.orNull(S.text(200)) }),
  }),
);

export const PlanResultResponseSchema = namedSchema('PlanResult', S.model(PlanResultSchema));
export const PlanInputsResponseSchema = namedSchema('PlanInputs', S.model(PlanInputsSchema));

export type AsBuiltResponse = AsBuiltRecord;

const AS_BUILT_MEASURE = S.object({
  subject: S.text(80),
  lengthM: S.orNull(S.number('m', 0, 100)),
  pulledToN: S.orNull(S.number('N', 0, 100_000)),
  remark: S.orNull(S.text(500)),
});
export const AsBuiltSchema = namedSchema(
  'AsBuilt',
  S.object({
    id: S.id(),
    observedOn: S.day(),
    measures: S.list(AS_BUILT_MEASURE, 200),
    remark: S.orNull(S.text(2000)),
    asTyped: AS_TYPED,
    createdAt: S.moment(),
  }),
);

/** Whether a review is blocked is known from the result only; a list does not read it. */
export const toResponse = (plan: PlanRecord, reviewBlocked: boolean | null): PlanResponse => ({
  id: plan.id,
  buildId: plan.buildId,
  revision: plan.revision,
  state: plan.state,
  asOf: plan.asOf,
  createdAt: plan.createdAt,
  startedAt: plan.startedAt,
  finishedAt: plan.finishedAt,
  problem: plan.problem,
  reviewBlocked,
  reviews: plan.reviews,
  stale: plan.stale,
  asBuiltCount: plan.asBuiltCount,
  links: { self: `/v1/plans/${plan.id}`, build: `/v1/builds/${plan.buildId}`, result: plan.state === 'ready' ? `/v1/plans/${plan.id}/result` : null },
});

/** A revision has no version of its own: its tag follows its state and what has gathered beside it. */
export const etagOfPlan = (plan: PlanRecord): string =>
  etagOfParts(plan.id, plan.state, plan.startedAt ?? 'waiting', plan.stale.length, plan.reviews.length, plan.asBuiltCount);

export const toReviewResponse = (review: ReviewRecord): ReviewRecord => ({
  id: review.id,
  decision: review.decision,
  reviewer: review.reviewer,
  comment: review.comment,
  createdAt: review.createdAt,
});

export const toAsBuiltResponse = (record: AsBuiltRecord): AsBuiltRecord => ({
  id: record.id,
  observedOn: record.observedOn,
  measures: record.measures,
  remark: record.remark,
  asTyped: record.asTyped,
  createdAt: record.createdAt,
});
