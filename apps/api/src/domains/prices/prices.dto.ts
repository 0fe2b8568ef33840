import { AMOUNT_UNITS, ExchangeRateSchema, MATERIAL_KEYS, PriceSchema, type AmountUnit, type ExchangeRate, type MaterialKey, type Price } from '@lathwork/model';
import { PartialType } from '@nestjs/swagger';
import { QuantityField, type AsTyped } from '../../platform/http/quantity-field.js';
import { namedSchema, S } from '../../platform/http/response-schema.js';
import { ChoiceField, CurrencyField, DayField, NumberField, ObjectField, Shape, TextField } from '../shared/fields.js';
import { MoneyDto } from '../shared/money.dto.js';
import { AS_TYPED, fieldsOf, KEPT, type Kept } from '../shared/resource.js';

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

export interface PriceResponse extends Kept, Omit<Price, 'priceId'> {
  asTyped: AsTyped;
}

export const PriceResponseSchema = namedSchema('Price', S.object({ ...KEPT, ...fieldsOf(PriceSchema, 'priceId'), asTyped: AS_TYPED }));

export interface ExchangeRateResponse extends ExchangeRate {
  id: string;
  createdAt: string;
}

export const ExchangeRateResponseSchema = namedSchema('ExchangeRate', S.object({ id: S.id(), ...fieldsOf(ExchangeRateSchema, 'id'), createdAt: S.moment() }));
