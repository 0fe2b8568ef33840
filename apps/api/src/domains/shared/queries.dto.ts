import { Transform } from 'class-transformer';
import { documented, fieldRule, passStandIns } from '../../platform/http/field-rule.js';
import { applyDecorators } from '@nestjs/common';
import { isId } from '../../platform/database/ids.js';
import { PageQuery } from '../../platform/http/page.js';

/** A switch in a query: `true` or `false`. */
export const SwitchQuery = (description: string): PropertyDecorator =>
  applyDecorators(
    Transform(({ value }: { value: unknown }) => (value === 'true' ? true : value === 'false' ? false : value), { toClassOnly: true }),
    passStandIns({ optional: true }),
    fieldRule((value) => (typeof value === 'boolean' ? null : { code: 'wrong-type', detail: 'true or false is wanted.', allowed: 'true, false' })),
    documented({ type: 'boolean' }, { description, optional: true, parameter: true }),
  );

/** A switch that must be given: there is no default that would be right for everybody. */
export const FlagQuery = (description: string): PropertyDecorator =>
  applyDecorators(
    Transform(({ value }: { value: unknown }) => (value === 'true' ? true : value === 'false' ? false : value), { toClassOnly: true }),
    fieldRule((value) => (typeof value === 'boolean' ? null : { code: 'required', detail: 'true or false is wanted.', allowed: 'true, false' })),
    documented({ type: 'boolean' }, { description, parameter: true }),
  );

export const IdQuery = (description: string): PropertyDecorator =>
  applyDecorators(
    passStandIns({ optional: true }),
    fieldRule((value) => (isId(value) ? null : { code: 'not-an-id', detail: 'An id is wanted: a lower-case UUID.' })),
    documented({ type: 'string', format: 'uuid', maxLength: 36 }, { description, optional: true, parameter: true }),
  );

/** A whole number that must be given. */
export const WholeQuery = (min: number, max: number, description: string): PropertyDecorator =>
  applyDecorators(
    Transform(({ value }: { value: unknown }) => (typeof value === 'string' && /^\d{1,9}$/.test(value) ? Number(value) : value), { toClassOnly: true }),
    fieldRule((value) =>
      typeof value === 'number' && Number.isInteger(value) && value >= min && value <= max
        ? null
        : { code: 'out-of-range', detail: `A whole number from ${min} to ${max} is wanted.`, allowed: `${min} to ${max}` },
    ),
    documented({ type: 'integer', minimum: min, maximum: max }, { description, parameter: true }),
  );

export const ChoiceQuery = (choices: readonly string[], description: string): PropertyDecorator =>
  applyDecorators(
    passStandIns({ optional: true }),
    fieldRule((value) =>
      typeof value === 'string' && choices.includes(value)
        ? null
        : { code: 'not-a-choice', detail: 'The value is not one of the choices.', allowed: choices.join(', ') },
    ),
    documented({ type: 'string', enum: [...choices] }, { description, optional: true, parameter: true }),
  );

/** A list that may show what is archived too. */
export class ListQuery extends PageQuery {
  @SwitchQuery('Show archived ones too') archived?: boolean;
}
