import { PartialType } from '@nestjs/swagger';
import { BooleanField, ChoiceField, ChoicesField, CurrencyField, PatternField, Shape, TextField } from '../shared/fields.js';

export const KEY_SCOPES_MAX = 20;

@Shape('GardenRequest')
export class GardenDto {
  @TextField(200) name!: string;
  @PatternField(/^[a-z]{2}(-[A-Z]{2})?$/, 5, 'en-GB', { description: 'Language and region of the garden' }) locale!: string;
  @CurrencyField() currency!: string;
  @ChoiceField(['metric', 'us']) unitSystem!: 'metric' | 'us';
  @BooleanField({ optional: true, description: 'Invented example data: every page printed says so' }) invented?: boolean;
}
