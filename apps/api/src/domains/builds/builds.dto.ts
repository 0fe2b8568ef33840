import { BudgetInputsSchema, CrewSchema, CROP_KEYS, WishesSchema, type BudgetInputs, type CropKey, type Wishes } from '@lathwork/model';
import { PartialType } from '@nestjs/swagger';
import { QuantityField, type AsTyped } from '../../platform/http/quantity-field.js';
import { namedSchema, S } from '../../platform/http/response-schema.js';
import {
  BooleanField,
  ChoiceField,
  ChoicesField,
  CurrencyField,
  DayField,
  IdField,
  IntegerField,
  ListField,
  ObjectField,
  Shape,
  TextField,
} from '../shared/fields.js';
import { MoneyDto } from '../shared/money.dto.js';
import { IdQuery, ListQuery } from '../shared/queries.dto.js';
import { AS_TYPED, KEPT, keptOf, OWNED, ownedOf } from '../shared/resource.js';
import type { BuildFields, BuildRecord } from './builds.repository.js';
import { ExchangeRateDto } from '../prices/prices.dto.js';

const PURPOSES = ['seedStarting', 'overwintering', 'longerSeason', 'rainShelter', 'teaching'] as const;
const VENT_OPENERS = ['nobody', 'someoneAtNine', 'someoneAllDay'] as const;

@Shape('WishesRequest')
export class WishesDto {
  @ChoiceField(PURPOSES) purpose!: (typeof PURPOSES)[number];
  @QuantityField('degC', { min: -40, max: 30, nullable: true }) nightTargetC!: number | null;
  @ChoicesField(CROP_KEYS, 14) crops!: CropKey[];
  @ChoiceField(VENT_OPENERS, { description: 'Who opens the vents on a sunny day; nobody is an honest answer' }) ventsOpenedBy!: Wishes['ventsOpenedBy'];
}

@Shape('CrewRequest')
export class CrewDto {
  @IntegerField({ min: 1, max: 60 }) people!: number;
  @ChoiceField(['novice', 'mixed', 'skilled']) experience!: 'novice' | 'mixed' | 'skilled';
  @DayField({ nullable: true }) startOn!: string | null;
}

@Shape('InKindRequest')
export class InKindDto {
  @TextField(80) label!: string;
  @ObjectField(() => MoneyDto) value!: MoneyDto;
}

@Shape('BudgetRequest', 'The cap may be zero: an all-reclaimed build can keep it. Null means that no cap is set.')
export class BudgetDto {
  @CurrencyField() currency!: string;
  @IntegerField({ min: 0, max: 9_000_000_000_000 }, { nullable: true }) capMinor!: number | null;
  @QuantityField('1', { min: 0, max: 0.5, nullable: true, description: 'Share of bought materials; null takes the default' }) consumablesFrac!: number | null;
  @TextField(200, { nullable: true }) consumablesReason!: string | null;
  @QuantityField('1', { min: 0, max: 0.6, nullable: true }) contingencyFrac!: number | null;
  @TextField(200, { nullable: true }) contingencyReason!: string | null;
  @ListField(() => InKindDto, { max: 40 }) inKind!: InKindDto[];
  @ListField(() => ExchangeRateDto, { max: 20 }, { optional: true, description: "Rates for this build alone, beside the garden's own" }) exchangeRates?:
    ExchangeRateDto[] | null;
}

@Shape('BuildRequest', 'A member’s build: a site, a structure, wishes, a crew and a budget. Variants of a build stand side by side.')
export class BuildDto {
  @TextField(200) name!: string;
  @IdField() siteId!: string;
  @IdField() structureId!: string;
  @ObjectField(() => WishesDto) wishes!: WishesDto;
  @ObjectField(() => CrewDto) crew!: CrewDto;
  @ObjectField(() => BudgetDto) budget!: BudgetDto;
  @IdField({ optional: true, description: 'The build that this one is a variant of' }) variantOf?: string | null;
  @TextField(80, { optional: true, description: 'How this variant differs, in a few words' }) variantLabel?: string | null;
  @BooleanField({ optional: true, description: 'Whether the other members see it and a coordinator may change it; left out: no' }) shared?: boolean | null;
}

@Shape('BuildPatch', 'Merge patch (RFC 7396): only the fields to change; the result is checked as a whole.')
export class BuildPatchDto extends PartialType(BuildDto) {}

export type BuildResponse = BuildRecord;

export const BuildSchema = namedSchema(
  'Build',
  S.object({
    ...KEPT,
    ...OWNED,
    name: S.text(200),
    siteId: S.id(),
    structureId: S.id(),
    wishes: S.model(WishesSchema),
    crew: S.model(CrewSchema),
    budget: S.model(BudgetInputsSchema),
    variantOf: S.orNull(S.id()),
    variantLabel: S.orNull(S.text(80)),
    asTyped: AS_TYPED,
  }),
);

export class BuildListQuery extends ListQuery {
  @IdQuery('Only builds at this site') siteId?: string;
  @IdQuery('Only variants of this build') variantOf?: string;
}

const budgetOf = (from: BudgetDto): BudgetInputs => ({
  currency: from.currency,
  capMinor: from.capMinor,
  consumablesFrac: from.consumablesFrac,
  consumablesReason: from.consumablesReason,
  contingencyFrac: from.contingencyFrac,
  contingencyReason: from.contingencyReason,
  inKind: from.inKind.map(({ label, value }) => ({ label, value: { minor: value.minor, currency: value.currency } })),
  exchangeRates: (from.exchangeRates ?? []).map(({ from: source, to, rate, readOn }) => ({ from: source, to, rate, readOn })),
});

/** What a request says of a build, each field listed. */
export const toFields = (from: BuildDto, asTyped: AsTyped): BuildFields => ({
  name: from.name,
  siteId: from.siteId,
  structureId: from.structureId,
  wishes: { purpose: from.wishes.purpose, nightTargetC: from.wishes.nightTargetC, crops: [...from.wishes.crops], ventsOpenedBy: from.wishes.ventsOpenedBy },
  crew: { people: from.crew.people, experience: from.crew.experience, startOn: from.crew.startOn },
  budget: budgetOf(from.budget),
  variantOf: from.variantOf ?? null,
  variantLabel: from.variantLabel ?? null,
  shared: from.shared ?? false,
  asTyped,
});

/** The record in the shape of the request, for a merge patch to work on. */
export const toRequest = (build: BuildRecord): Omit<BuildFields, 'asTyped'> => ({
  name: build.name,
  siteId: build.siteId,
  structureId: build.structureId,
  wishes: build.wishes,
  crew: build.crew,
  budget: build.budget,
  variantOf: build.variantOf,
  variantLabel: build.variantLabel,
  shared: build.shared,
});

export const toResponse = (build: BuildRecord): BuildResponse => ({ ...keptOf(build), ...ownedOf(build), ...toRequest(build), asTyped: build.asTyped });
