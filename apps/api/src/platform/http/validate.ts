import { ValidationPipe, type ArgumentMetadata, type Type } from '@nestjs/common';
import { plainToInstance } from 'class-transformer';
import { validateSync, type ValidationError } from 'class-validator';
import { Problem, type FieldFault } from '../problems/problem.js';
import { placeFaults } from './field-rule.js';

const OPTIONS = { whitelist: true, forbidNonWhitelisted: true, forbidUnknownValues: true } as const;

const refuse = (errors: readonly ValidationError[], from?: 'query' | 'path'): Problem => {
  const faults: FieldFault[] = placeFaults(errors).map((fault) => (from ? { ...fault, in: from } : fault));
  return new Problem('validation-failed', { count: faults.length }, faults);
};

/** Checks every request class: nothing unknown is let through, and all faults are told at once. */
export class RequestPipe extends ValidationPipe {
  constructor() {
    super({ ...OPTIONS, transform: true, stopAtFirstError: false });
  }

  override async transform(value: unknown, metadata: ArgumentMetadata): Promise<unknown> {
    this.exceptionFactory = (errors) => refuse(errors);
    if (metadata.type === 'query' || metadata.type === 'param') {
      const from = metadata.type === 'query' ? 'query' : 'path';
      const pipe = new ValidationPipe({ ...OPTIONS, transform: true, exceptionFactory: (errors) => refuse(errors, from) });
      return pipe.transform(value, metadata) as Promise<unknown>;
    }
    return super.transform(value, metadata) as Promise<unknown>;
  }
}

/** Checks a whole value against its request class, for example what a merge patch made. */
export const parseWhole = <T extends object>(shape: Type<T>, value: unknown): T => {
  if (typeof value !== 'object' || value === null || Array.isArray(value)) throw new Problem('validation-failed', { count: 1 }, [{ pointer: '', code: 'wrong-type', detail: 'An object is wanted here.' }]);
  const instance = plainToInstance(shape, value);
  const errors = validateSync(instance, OPTIONS);
  if (errors.length > 0) throw refuse(errors);
  return instance;
};
