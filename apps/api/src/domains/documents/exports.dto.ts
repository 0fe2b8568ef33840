import { Transform } from 'class-transformer';
import { applyDecorators } from '@nestjs/common';
import { documented, fieldRule, passStandIns } from '../../platform/http/field-rule.js';
import { isDay } from '../shared/fields.js';

const DayQuery = (description: string): PropertyDecorator =>
  applyDecorators(
    passStandIns({ optional: true }),
    fieldRule((value) =>
      typeof value === 'string' && isDay(value)
        ? null
        : { code: 'not-a-day', detail: 'A calendar day is wanted, written like 2026-04-30.', remedy: 'Write year-month-day.' },
    ),
    documented({ type: 'string', format: 'date', maxLength: 10 }, { description, optional: true, parameter: true }),
  );

const StepQuery = (max: number, description: string): PropertyDecorator =>
  applyDecorators(
    Transform(({ value }: { value: unknown }) => (typeof value === 'string' && /^\d{1,3}$/.test(value) ? Number(value) : value), { toClassOnly: true }),
    passStandIns({ optional: true }),
    fieldRule((value) =>
      typeof value === 'number' && Number.isInteger(value) && value >= 1 && value <= max
        ? null
        : { code: 'out-of-range', detail: `A whole number from 1 to ${max} is wanted.`, allowed: `1 to ${max}` },
    ),
    documented({ type: 'integer', minimum: 1, maximum: max, default: 1, 'x-unit': 'd' }, { description, optional: true, parameter: true }),
  );

export class CalendarQuery {
  @DayQuery('First work day; left out: the day on which the crew of the build begins') startsOn?: string;
  @StepQuery(31, 'Days from one work day to the next: 1 is day after day, 7 is once a week') everyD?: number;
}
