import { QuantityField } from '../../platform/http/quantity-field.js';
import { ChoiceField, DayField, IdField, ListField, Shape, TextField } from '../shared/fields.js';

@Shape('PlanRequest', 'Asks for a new revision of the plan of a build.')
export class PlanDto {
  @IdField() buildId!: string;
  @DayField({ optional: true, description: 'Ages of prices and films are counted from this day; today at the site when left out' }) asOf?: string | null;
}

@Shape('ReviewRequest')
export class ReviewDto {
  @ChoiceField(['reviewed', 'changesWanted']) decision!: 'reviewed' | 'changesWanted';
  @TextField(120, { description: 'Who looked at the plan, as it is to be printed' }) reviewer!: string;
  @TextField(2000, { optional: true }) comment?: string | null;
}

@Shape('AsBuiltMeasureRequest')
export class AsBuiltMeasureDto {
  @TextField(80, { description: 'What was measured: a part, a mark, an opening' }) subject!: string;
  @QuantityField('m', { min: 0, max: 100, nullable: true }) lengthM!: number | null;
  @QuantityField('N', { min: 0, max: 100_000, nullable: true, description: 'A pull check on an anchor' }) pulledToN!: number | null;
  @TextField(500, { nullable: true }) remark!: string | null;
}

@Shape('AsBuiltRequest', 'What was really built, kept beside the revision and never in place of it.')
export class AsBuiltDto {
  @DayField() observedOn!: string;
  @ListField(() => AsBuiltMeasureDto, { max: 200 }) measures!: AsBuiltMeasureDto[];
  @TextField(2000, { optional: true }) remark?: string | null;
}
