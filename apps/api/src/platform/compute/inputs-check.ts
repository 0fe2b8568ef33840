import { PlanInputsSchema, PlanResultSchema } from '@lathwork/model';
import { Ajv2020 } from 'ajv/dist/2020.js';
import type { ErrorObject, ValidateFunction } from 'ajv';
import addFormats from 'ajv-formats';
import { FAULT_LIMIT, type FieldFault } from '../problems/problem.js';

const make = (schema: object): ValidateFunction => {
  const ajv = new Ajv2020({ allErrors: true, strict: true, allowUnionTypes: true, keywords: ['unit'] });
  (addFormats as unknown as (to: Ajv2020) => void)(ajv);
  return ajv.compile(schema);
};

let inputs: ValidateFunction | null = null;
let result: ValidateFunction | null = null;

const faultOf = (error: ErrorObject): FieldFault => ({ pointer: error.instancePath, code: error.keyword, detail: error.message ?? 'not valid' });

const faultsOf = (check: ValidateFunction, value: unknown): FieldFault[] => (check(value) ? [] : (check.errors ?? []).slice(0, FAULT_LIMIT).map(faultOf));

/** What keeps a value from being plan inputs, against the very schema that is published. */
export const inputsFaults = (value: unknown): FieldFault[] => faultsOf((inputs ??= make(PlanInputsSchema)), value);

/** The same for a finished plan. */
export const resultFaults = (value: unknown): FieldFault[] => faultsOf((result ??= make(PlanResultSchema)), value);
