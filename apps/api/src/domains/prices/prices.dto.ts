import { AMOUNT_UNITS, ExchangeRateSchema, MATERIAL_KEYS, PriceSchema, type AmountUnit, type MaterialKey, type Price } from '@lathwork/model';
import { PartialType } from '@nestjs/swagger';
import { QuantityField } from '../../platform/http/quantity-field.js';
import { namedSchema, S } from '../../platform/http/response-schema.js';
import { ChoiceField, CurrencyField, DayField, NumberField, ObjectField, Shape, TextField } from '../shared/fields.js';
import { MoneyDto } from '../shared/money.dto.js';
import { ChoiceQuery, ListQuery } from '../shared/queries.dto.js';
import { AS_TYPED, fieldsOf, KEPT, keptOf } from '../shared/resource.js';
import type { PriceRecord, RateRecord } from './prices.repository.js';

@Shape('PriceRequest', 'One price somebody read somewhere on a day. Without a day it is taken, and flagged.')
export class PriceDto {
  @ChoiceField(MATERIAL_KEYS) material!: MaterialKey;
  @ChoiceField(AMOUNT_UNITS) unit!: AmountUnit;
  @NumberField({ min: 0, max: 100_000, above: true }, { description: 'How much one pack holds, in `unit`' }) packAmount!: number;
  @ObjectField(() => MoneyDto) packPrice!: MoneyDto;
  @QuantityField('m', { min: 0.001, max: 100, nullable: true }) pieceWidthM!: number | null;
  @QuantityField('m', { min: 0.01, max: 1000, nullable: true }) pieceLengthM!: number | null;
  @DayField({ nullable: true }) readOn!: string | null;
  @TextField(80) supplier!: string;
}

@Shape('PricePatch', 'Merge patch (RFC 7396): only the fields to change; the result is checked as a whole.')
export class PricePatchDto extends PartialType(PriceDto) {}

@Shape('ExchangeRateRequest', 'A rate somebody read on a day. Nothing is converted without one.')
export class ExchangeRateDto {
  @CurrencyField() from!: string;
  @CurrencyField() to!: string;
  @NumberField({ min: 0, max: 1e9, above: true }, { description: 'Units of `to` for one unit of `from`' }) rate!: number;
  @DayField() readOn!: string;
}

export type PriceResponse = PriceRecord;

export type RateResponse = RateRecord;

export const PriceResponseSchema = namedSchema('Price', S.object({ ...KEPT, ...fieldsOf(PriceSchema, 'priceId'), asTyped: AS_TYPED }));
export const ExchangeRateResponseSchema = namedSchema('ExchangeRate', S.object({ id: S.id(), ...fieldsOf(ExchangeRateSchema, 'id'), createdAt: S.moment() }));

export class PriceListQuery extends ListQuery {
  @ChoiceQuery(MATERIAL_KEYS, 'Only prices of this material') material?: MaterialKey;
}

type PriceInputs = Omit<Price, 'priceId'>;

/** The price alone, each field listed. */
export const priceOf = (from: PriceInputs): PriceInputs => ({
  material: from.material,
  unit: from.unit,
  packAmount: from.packAmount,
  packPrice: { minor: from.packPrice.minor, currency: from.packPrice.currency },
  pieceWidthM: from.pieceWidthM,
  pieceLengthM: from.pieceLengthM,
  readOn: from.readOn,
  supplier: from.supplier,
});

export const toResponse = (price: PriceRecord): PriceResponse => ({ ...keptOf(price), ...priceOf(price), asTyped: price.asTyped });

export const toRateResponse = (rate: RateRecord): RateRecord => ({
  id: rate.id,
  from: rate.from,
  to: rate.to,
  rate: rate.rate,
  readOn: rate.readOn,
  createdAt: rate.createdAt,
});
