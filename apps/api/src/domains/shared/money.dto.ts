import { CurrencyField, IntegerField, Shape } from './fields.js';

/** Money is whole minor units of one currency; 9e12 minor units stay far inside what a double holds exactly. */
@Shape('MoneyRequest', 'Whole minor units (cents, pence) of one ISO 4217 currency.')
export class MoneyDto {
  @IntegerField({ min: 0, max: 9_000_000_000_000 }) minor!: number;
  @CurrencyField() currency!: string;
}
