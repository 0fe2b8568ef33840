import { HAZARDS, MATERIAL_KEYS, STOCK_KINDS, StockItemSchema, type Hazard, type MaterialKey, type StockItem } from '@lathwork/model';
import { PartialType } from '@nestjs/swagger';
import { QuantityField } from '../../platform/http/quantity-field.js';
import { namedSchema, S, type JsonSchema } from '../../platform/http/response-schema.js';
import { BooleanField, ChoiceField, ChoicesField, IntegerField, ListField, ObjectField, Shape, TextField } from '../shared/fields.js';
import { MoneyDto } from '../shared/money.dto.js';
import { ChoiceQuery, ListQuery, SwitchQuery } from '../shared/queries.dto.js';
import { AS_TYPED, fieldsOf, KEPT, keptOf } from '../shared/resource.js';
import type { Donor } from './donors.js';
import type { ClaimRecord, StockRecord } from './stock.repository.js';

export const GRADES = ['A', 'B', 'C', 'X'] as const;
export type Grade = (typeof GRADES)[number];

@Shape('DonorRequest', 'Who gave the thing. Kept sealed; shown to coordinator, treasurer and storekeeper only.')
export class DonorDto implements Donor {
  @TextField(200) name!: string;
  @BooleanField({ description: 'Whether the donor wishes to be named in public' }) wishesToBeNamed!: boolean;
  @ObjectField(() => MoneyDto, { nullable: true, description: 'What the gift is worth to a funder, where somebody said so' }) value!: MoneyDto | null;
}

@Shape('StockItemRequest', 'One thing, or one lot of alike things, from the pile; sizes as measured.')
export class StockItemDto {
  @TextField(20, { description: 'The code written on the thing' }) tag!: string;
  @ChoiceField(STOCK_KINDS) kind!: (typeof STOCK_KINDS)[number];
  @ChoiceField(MATERIAL_KEYS) material!: MaterialKey;
  @ChoiceField(GRADES) grade!: Grade;
  @ChoicesField(HAZARDS, 12) hazards!: Hazard[];
  @IntegerField({ min: 1, max: 10_000 }) count!: number;
  @QuantityField('mm', { min: 1, max: 20_000, nullable: true }) widthMm!: number | null;
  @QuantityField('mm', { min: 1, max: 20_000, nullable: true }) heightMm!: number | null;
  @QuantityField('mm', { min: 0.05, max: 1000, nullable: true }) thicknessMm!: number | null;
  @QuantityField('mm', { min: 1, max: 100_000, nullable: true }) lengthMm!: number | null;
  @QuantityField('mm', { min: 0, max: 100_000, nullable: true, description: 'Length left when splits, rot and nail holes at the ends are off' })
  usableLengthMm!: number | null;
  @QuantityField('L', { min: 0.1, max: 5000, nullable: true }) volumeL!: number | null;
  @QuantityField('a', { min: 0, max: 200, nullable: true, unknown: true }) ageY!: number | 'unknown' | null;
  @ObjectField(() => MoneyDto, { nullable: true }) replacement!: MoneyDto | null;
  @ObjectField(() => DonorDto, { optional: true, description: 'Who gave it; left out: nobody is noted' }) donor?: DonorDto | null;
}

@Shape('StockIntakeRequest', 'Up to 200 things taken in together: all of them, or none.')
export class StockIntakeDto {
  @ListField(() => StockItemDto, { min: 1, max: 200 }) items!: StockItemDto[];
}

@Shape('StockItemPatch', 'Merge patch (RFC 7396): only the fields to change; the result is checked as a whole.')
export class StockItemPatchDto extends PartialType(StockItemDto) {}

@Shape('ClaimRequest', 'Holds a thing from the pile for a build.')
export class ClaimDto {
  @TextField(20) tag!: string;
  @IntegerField({ min: 1, max: 10_000 }, { optional: true, description: 'How many pieces of a lot; all that are free when left out' }) count?: number | null;
}

export type StockResponse = Omit<StockRecord, 'donorSealed'> & { donor: Donor | null };

const DONOR = S.object({
  name: S.text(200),
  wishesToBeNamed: S.flag(),
  value: S.orNull(S.object({ minor: S.whole(0, 9_000_000_000_000), currency: S.text(3) })),
});

export const StockItemResponseSchema = namedSchema(
  'StockItem',
  S.object({
    ...KEPT,
    ...fieldsOf(StockItemSchema, 'stockId'),
    freeCount: S.whole(0, 10_000),
    donor: { ...S.orNull(DONOR), description: 'null: nobody is noted, or it is not for you to see' },
    asTyped: AS_TYPED,
  }),
);

export const StockIntakeSchema = namedSchema('StockIntake', S.object({ items: S.list(StockItemResponseSchema, 200) }));

export type ClaimResponse = ClaimRecord;

export const ClaimSchema = namedSchema(
  'Claim',
  S.object({ id: S.id(), buildId: S.id(), stockId: S.id(), tag: S.text(20), count: S.whole(1, 10_000), createdAt: S.moment() }),
);

const { widthMm, heightMm, lengthMm } = fieldsOf(StockItemSchema, 'stockId') as Record<'widthMm' | 'heightMm' | 'lengthMm', JsonSchema>;
const HolderSchema = S.object({ buildId: S.id(), count: S.whole(1, 10_000), since: S.moment() });
const AlternativeSchema = S.object({ tag: S.text(20), grade: S.choice(...GRADES), widthMm, heightMm, lengthMm, freeCount: S.whole(1, 10_000) });

/** A thing that is promised already: the refusal says to whom, and what could be taken instead. */
export const ClaimProblemSchema = namedSchema('ClaimProblem', {
  description: 'A refusal that also tells who holds the thing and what could be taken instead. Other conflicts have none of these members.',
  allOf: [{ $ref: '#/components/schemas/Problem' }],
  type: 'object',
  properties: {
    holders: { ...S.list(HolderSchema, 20), description: 'The builds that hold it, oldest claim first' },
    freeCount: { ...S.whole(0, 10_000), description: 'How many pieces of it nobody holds' },
    alternatives: { ...S.list(AlternativeSchema, 5), description: 'Free things of the same kind, nearest in size first' },
  },
});

export class StockListQuery extends ListQuery {
  @ChoiceQuery(STOCK_KINDS, 'Only things of this kind') kind?: (typeof STOCK_KINDS)[number];
  @ChoiceQuery(GRADES, 'Only things of this grade') grade?: Grade;
  @SwitchQuery('Only things of which some are free (true) or none is (false)') free?: boolean;
}

type StockInputs = Omit<StockItem, 'stockId'>;

/** The thing alone, each field listed. */
export const thingOf = (from: StockInputs): StockInputs => ({
  tag: from.tag,
  kind: from.kind,
  material: from.material,
  grade: from.grade,
  hazards: [...from.hazards],
  count: from.count,
  widthMm: from.widthMm,
  heightMm: from.heightMm,
  thicknessMm: from.thicknessMm,
  lengthMm: from.lengthMm,
  usableLengthMm: from.usableLengthMm,
  volumeL: from.volumeL,
  ageY: from.ageY,
  replacement: from.replacement && { minor: from.replacement.minor, currency: from.replacement.currency },
});

export const toResponse = (item: StockRecord, donor: Donor | null): StockResponse => ({
  ...keptOf(item),
  ...thingOf(item),
  freeCount: item.freeCount,
  donor,
  asTyped: item.asTyped,
});

export const toClaimResponse = (claim: ClaimRecord): ClaimResponse => ({
  id: claim.id,
  buildId: claim.buildId,
  stockId: claim.stockId,
  tag: claim.tag,
  count: claim.count,
  createdAt: claim.createdAt,
});
