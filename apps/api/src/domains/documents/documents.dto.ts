import { ChoiceField, IdField, Shape } from '../shared/fields.js';

@Shape('DocumentCreateRequest', 'A document has its own language, paper and units, whatever the garden’s are.')
export class DocumentDto {
  @IdField() planId!: string;
  @ChoiceField(['planBook']) kind!: 'planBook';
  @ChoiceField(['en']) language!: 'en';
  @ChoiceField(['a4', 'letter']) paper!: 'a4' | 'letter';
  @ChoiceField(['metric', 'us']) units!: 'metric' | 'us';
}
