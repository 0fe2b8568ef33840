import { PageQuery } from '../../platform/http/page.js';
import { namedSchema, S } from '../../platform/http/response-schema.js';
import { ChoiceField, IdField, ObjectField, Shape, TextField } from '../shared/fields.js';
import { MoneyDto } from '../shared/money.dto.js';
import { ChoiceQuery, IdQuery } from '../shared/queries.dto.js';
import { SPEND_STATES, type SpendFields, type SpendRecord } from './spending.repository.js';

/** As it is answered: the record itself, field by field. */
export type SpendResponse = SpendRecord;

@Shape('SpendRequestRequest', 'Asks to spend money. Somebody else decides.')
export class SpendRequestDto {
  @TextField(500, { description: 'What is to be bought, and why' }) purpose!: string;
  @ObjectField(() => MoneyDto) amount!: MoneyDto;
  @IdField({ optional: true, description: 'The build that it is for; left out: the garden as a whole' }) buildId?: string | null;
  @IdField({ optional: true, description: 'The plan whose prices the amount comes from' }) planId?: string | null;
}

@Shape('SpendDecisionRequest')
export class SpendDecisionDto {
  @ChoiceField(['approved', 'refused']) decision!: 'approved' | 'refused';
  @TextField(2000, { optional: true, description: 'Why, for whoever asked' }) remark?: string | null;
}

export class SpendListQuery extends PageQuery {
  @ChoiceQuery(SPEND_STATES, 'Only requests in this state') state?: string;
  @IdQuery('Only requests for this build') buildId?: string;
}

const MoneySchema = S.object({ minor: S.whole(0, 9_000_000_000_000), currency: S.text(3) });

export const SpendRequestSchema = namedSchema(
  'SpendRequest',
  S.object({
    id: S.id(),
    buildId: S.orNull(S.id()),
    planId: S.orNull(S.id()),
    purpose: S.text(500),
    amount: MoneySchema,
    state: S.choice(...SPEND_STATES),
    requestedById: S.id(),
    decidedById: S.orNull(S.id()),
    decidedAt: S.orNull(S.moment()),
    remark: S.orNull(S.text(2000)),
    version: S.whole(1, 2_147_483_647),
    createdAt: S.moment(),
  }),
);

export const toFields = (from: SpendRequestDto): SpendFields => ({
  buildId: from.buildId ?? null,
  planId: from.planId ?? null,
  purpose: from.purpose,
  amount: { minor: from.amount.minor, currency: from.amount.currency },
});

export const toResponse = (record: SpendRecord): SpendRecord => ({
  id: record.id,
  buildId: record.buildId,
  planId: record.planId,
  purpose: record.purpose,
  amount: record.amount,
  state: record.state,
  requestedById: record.requestedById,
  decidedById: record.decidedById,
  decidedAt: record.decidedAt,
  remark: record.remark,
  version: record.version,
  createdAt: record.createdAt,
});
