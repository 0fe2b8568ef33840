import { BooleanField, Shape } from '../shared/fields.js';
import { CodeField, PasswordField } from '../people/people.fields.js';

@Shape('ErasureRequest', 'Erases you for good. There is no way back.')
export class ErasureDto {
  @PasswordField('The present password') password!: string;
  @CodeField({ optional: true }) code?: string | null;
  @BooleanField({ optional: true, description: 'Closes the gardens of which you are the last member; left out, they stand in the way' }) closeEmptyGardens?:
    boolean | null;
}
