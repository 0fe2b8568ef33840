import { Controller, Get, Res } from '@nestjs/common';
import { ApiOkResponse, ApiOperation, ApiResponse, ApiTags } from '@nestjs/swagger';
import type { Response } from 'express';
import { Requires } from '../access/access.decorators.js';
import { CHECKS, Readiness, type Checks } from './readiness.js';

const mark = { type: 'string', enum: ['ok', 'fail'] };
const READY = {
  type: 'object',
  required: [...CHECKS],
  properties: Object.fromEntries(CHECKS.map((name) => [name, mark])),
};

@ApiTags('health')
@Controller()
export class HealthController {
  constructor(private readonly readiness: Readiness) {}

  /** The process answers. Touches nothing, so that a database outage does not get it restarted. */
  @Get('livez')
  @Requires('livez')
  @ApiOperation({ operationId: 'livez', summary: 'Whether the process runs' })
  @ApiOkResponse({ schema: { type: 'object', required: ['process'], properties: { process: mark } } as never })
  livez() {
    return { process: 'ok' };
  }

  @Get('readyz')
  @Requires('readyz')
  @ApiOperation({
    operationId: 'readyz',
    summary: 'Whether requests can be answered: database, migrations, queue, disk',
    description: 'The age of the queue and the report app are told too; they do not make the answer 503, because reading and planning go on without them.',
  })
  @ApiOkResponse({ schema: READY as never })
  @ApiResponse({ status: 503, schema: READY as never, description: 'Not ready; names what fails' })
  async readyz(@Res({ passthrough: true }) response: Response): Promise<Checks> {
    const { ready, checks } = await this.readiness.checks();
    if (!ready) response.status(503);
    return checks;
  }
}
