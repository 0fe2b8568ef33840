import { Param, type PipeTransform } from '@nestjs/common';
import { isId } from '../database/ids.js';
import { Problem } from '../problems/problem.js';

class IdPipe implements PipeTransform {
  transform(value: unknown): string {
    if (isId(value)) return value;
    throw new Problem('malformed-id', {}, [{ pointer: '/id', in: 'path', code: 'not-an-id', detail: 'An id is a lower-case UUID.' }]);
  }
}

/** An id of the path: malformed is 400 before anything is looked up. */
export const IdParam = (name = 'id'): ParameterDecorator => Param(name, new IdPipe());
