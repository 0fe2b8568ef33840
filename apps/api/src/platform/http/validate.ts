import { Injectable, ValidationPipe, type ArgumentMetadata, type PipeTransform, type Type } from '@nestjs/common';
import { plainToInstance } from 'class-transformer';
import { validateSync, type ValidationError } from 'class-validator';
import { Problem, type FieldFault } from '../problems/problem.js';
import { placeFaults } from './field-rule.js';

// The value is needed to say what is wrong with it; the framework would strip it from fields that have faults inside.
const OPTIONS = { whitelist: true, forbidNonWhitelisted: true, forbidUnknownValues: true, validationError: { target: false, value: true } } as const;

const refuse = (errors: readonly ValidationError[], from?: 'query' | 'path'): Problem => {
  const faults: FieldFault[] = placeFaults(errors).map((fault) => (from ? { ...fault, in: from } : fault));
  return new Problem('validation-failed', { count: faults.length }, faults);
};

const pipeFor = (from?: 'query' | 'path'): ValidationPipe =>
  new ValidationPipe({ ...OPTIONS, transform: true, exceptionFactory: (errors) => refuse(errors, from) });

/** Checks every request class: nothing unknown is let through, and all faults are told at once. */
@Injectable()
export class RequestPipe implements PipeTransform {
  private readonly pipes = { body: pipeFor(), query: pipeFor('query'), param: pipeFor('path'), custom: pipeFor() };

  transform(value: unknown, metadata: ArgumentMetadata): Promise<unknown> {
    return this.pipes[metadata.type].transform(value, metadata) as Promise<unknown>;
  }
}

/** Checks a whole value against its request class, for example what a merge patch made. */
export const parseWhole = <T extends object>(shape: Type<T>, value: unknown): T => {
  if (typeof value !== 'object' || value === null || Array.isArray(value))
    throw new Problem('validation-failed', { count: 1 }, [{ pointer: '', code: 'wrong-type', detail: 'An object is wanted here.' }]);
  const instance = plainToInstance(shape, value);
  const errors = validateSync(instance, OPTIONS);
  if (errors.length > 0) throw refuse(errors);
  return instance;
};
