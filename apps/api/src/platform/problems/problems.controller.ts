import { Controller, Get, Param } from '@nestjs/common';
import { ApiOkResponse, ApiOperation, ApiParam, ApiTags } from '@nestjs/swagger';
import { Requires } from '../access/access.decorators.js';
import { CATALOGUE, isProblemKey, type ProblemKey } from './catalogue.js';
import { fail } from './problem.js';

const describe = (key: ProblemKey) => {
  const { status, title, detail, remedy } = CATALOGUE[key];
  return { type: `/v1/problems/${key}`, status, title, detail, remedy };
};

const text = (maxLength: number) => ({ type: 'string', maxLength });
const ENTRY = {
  type: 'object',
  required: ['type', 'status', 'title', 'detail', 'remedy'],
  properties: { type: text(100), status: { type: 'integer', minimum: 400, maximum: 599 }, title: text(200), detail: text(500), remedy: text(500) },
};

/** What the `type` of every problem leads to. */
@ApiTags('problems')
@Controller('v1/problems')
export class ProblemsController {
  @Get()
  @Requires('listProblems')
  @ApiOperation({ operationId: 'listProblems', summary: 'Every problem this API can answer with' })
  @ApiOkResponse({ schema: { type: 'object', required: ['items'], properties: { items: { type: 'array', maxItems: 200, items: ENTRY } } } as never })
  list() {
    return { items: (Object.keys(CATALOGUE) as ProblemKey[]).map(describe) };
  }

  @Get(':key')
  @Requires('getProblem')
  @ApiOperation({ operationId: 'getProblem', summary: 'What one problem means and what can be done about it' })
  @ApiParam({ name: 'key', schema: { type: 'string', enum: Object.keys(CATALOGUE) } })
  @ApiOkResponse({ schema: ENTRY as never })
  one(@Param('key') key: string) {
    return isProblemKey(key) ? describe(key) : fail('route-unknown');
  }
}
