import { Controller, Get, Inject, Res } from '@nestjs/common';
import { ApiOkResponse, ApiOperation, ApiResponse, ApiTags } from '@nestjs/swagger';
import type { Response } from 'express';
import type pg from 'pg';
import { Requires } from '../access/access.decorators.js';
import { pendingMigrations } from '../database/migrate.js';
import { POOL } from '../database/pool.js';
import { ServingState } from './state.js';

const LIMIT_MS = 2_000;

const within = <T>(work: Promise<T>): Promise<T> => {
  let timer: NodeJS.Timeout | undefined;
  const limit = new Promise<never>((_resolve, reject) => {
    timer = setTimeout(() => reject(new Error('too slow')), LIMIT_MS);
  });
  return Promise.race([work, limit]).finally(() => clearTimeout(timer));
};

const mark = { type: 'string', enum: ['ok', 'fail'] };
const READY = {
  type: 'object',
  required: ['serving', 'database', 'migrations', 'queue'],
  properties: { serving: mark, database: mark, migrations: mark, queue: mark },
};

@ApiTags('health')
@Controller()
export class HealthController {
  constructor(
    @Inject(POOL) private readonly pool: pg.Pool,
    private readonly state: ServingState,
  ) {}

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
  @ApiOperation({ operationId: 'readyz', summary: 'Whether requests can be answered: database, migrations, queue' })
  @ApiOkResponse({ schema: READY as never })
  @ApiResponse({ status: 503, schema: READY as never, description: 'Not ready; names what fails' })
  async readyz(@Res({ passthrough: true }) response: Response) {
    const pending = await within(pendingMigrations(this.pool)).catch(() => null);
    const say = (good: boolean): 'ok' | 'fail' => (good ? 'ok' : 'fail');
    const checks = {
      serving: say(!this.state.draining),
      database: say(pending !== null),
      migrations: say(pending?.length === 0),
      queue: say(this.state.queueRunning),
    };
    if (Object.values(checks).includes('fail')) response.status(503);
    return checks;
  }
}
