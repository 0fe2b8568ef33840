import { Injectable, type PipeTransform } from '@nestjs/common';
import { isId } from '../../platform/database/ids.js';
import { fail } from '../../platform/problems/problem.js';

/** An id in an address: a lower-case UUID, else the request is refused before anything is asked. */
@Injectable()
export class IdPipe implements PipeTransform<string, string> {
  transform(value: string): string {
    return isId(value) ? value : fail('malformed-id');
  }
}
