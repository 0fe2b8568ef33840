import { namedSchema, S } from '../../platform/http/response-schema.js';
import { ChoiceField, IntegerField, Shape } from '../shared/fields.js';
import type { ConsentRecord } from './consents.repository.js';
import { PURPOSES, WORDINGS, type Purpose, type Wording } from './purposes.js';

@Shape('ConsentRequest', 'Says yes to one purpose, in the words that the list shows.')
export class ConsentDto {
  @ChoiceField(PURPOSES) purpose!: Purpose;
  @IntegerField({ min: 1, max: 10_000 }, { description: 'Number of the wording that was read' }) wordingVersion!: number;
}

@Shape('ConsentWithdrawal')
export class WithdrawalDto {
  @ChoiceField(PURPOSES) purpose!: Purpose;
}

export interface ConsentState {
  purpose: Purpose;
  given: boolean;
  /** Since when it is as it is; null: nothing was ever said. */
  since: string | null;
  /** The words of today. */
  wording: Wording;
  /** The words that were agreed to. */
  agreedWording: Wording | null;
}

const WORDING = S.object({ version: S.whole(1, 10_000), text: S.text(2000) });

const STATE = S.object({
  purpose: S.choice(...PURPOSES),
  given: S.flag(),
  since: S.orNull(S.moment()),
  wording: { ...WORDING, description: 'The words of today' },
  agreedWording: { ...S.orNull(WORDING), description: 'The words that were agreed to, which may be older' },
});

export const ConsentSchema = namedSchema('Consent', STATE);
export const ConsentsSchema = namedSchema('Consents', S.object({ items: S.list(ConsentSchema, PURPOSES.length) }));

export const ConsentEntrySchema = namedSchema(
  'ConsentEntry',
  S.object({ id: S.id(), purpose: S.choice(...PURPOSES), given: S.flag(), wording: WORDING, at: S.moment() }),
);

/** Every purpose, with what was said last of it. */
export const toStates = (newest: readonly ConsentRecord[]): ConsentState[] =>
  PURPOSES.map((purpose) => {
    const last = newest.find((one) => one.purpose === purpose);
    return {
      purpose,
      given: last?.given ?? false,
      since: last?.at ?? null,
      wording: { ...WORDINGS[purpose] },
      agreedWording: last?.given ? { ...last.wording } : null,
    };
  });

/** One line of what somebody agreed to and took back. */
export type ConsentEntry = Omit<ConsentRecord, 'memberId'>;

export const toEntry = ({ id, purpose, given, wording, at }: ConsentRecord): ConsentEntry => ({ id, purpose, given, wording, at });
