import { Controller, Query, Req, Res } from '@nestjs/common';
import { ApiHeader, ApiTags } from '@nestjs/swagger';
import type { Response } from 'express';
import { CurrentActor } from '../../platform/access/access.decorators.js';
import type { Asked } from '../../platform/access/access.guard.js';
import type { Actor } from '../../platform/access/actor.js';
import { Produces } from '../../platform/http/answers.interceptor.js';
import { IdParam } from '../../platform/http/id-param.js';
import type { Page } from '../../platform/http/page.js';
import type { Reply } from '../../platform/http/reply.js';
import { Operation } from '../shared/operation.js';
import { JobListQuery, JobSchema, type JobResponse } from './jobs.dto.js';
import { JobStreams } from './job-streams.js';
import { JobsService } from './jobs.service.js';

@ApiTags('jobs')
@Controller('v1/jobs')
export class JobsController {
  constructor(
    private readonly jobs: JobsService,
    private readonly streams: JobStreams,
  ) {}

  @Operation('get', '', { id: 'listJobs', summary: 'List jobs, oldest first', answer: JobSchema, page: true })
  list(@CurrentActor() actor: Actor, @Query() query: JobListQuery): Promise<Page<JobResponse>> {
    return this.jobs.list(actor, query);
  }

  @Operation('get', ':id', { id: 'getJob', summary: 'Show how far a job is', answer: JobSchema })
  find(@CurrentActor() actor: Actor, @IdParam('id') id: string): Promise<Reply> {
    return this.jobs.find(actor, id);
  }

  @Operation('post', ':id/cancel', { id: 'cancelJob', summary: 'Call a job off; once it has ended this changes nothing', answer: JobSchema, status: 200 })
  cancel(@CurrentActor() actor: Actor, @IdParam('id') id: string): Promise<Reply> {
    return this.jobs.cancel(actor, id);
  }

  @Produces('text/event-stream')
  @ApiHeader({
    name: 'Last-Event-ID',
    required: false,
    description: 'Id of the last event seen; what follows it is told',
    schema: { type: 'string', maxLength: 10 },
  })
  @Operation('get', ':id/events', {
    id: 'streamJobEvents',
    untagged: true,
    summary: 'Follow a job by server-sent events: "progress" at each change, "end" at last',
    answer: { type: 'string', maxLength: 10_000_000 },
    mediaType: 'text/event-stream',
  })
  events(@CurrentActor() actor: Actor, @Req() request: Asked, @Res() response: Response, @IdParam('id') id: string): Promise<void> {
    return this.streams.serve(actor, request, response, id);
  }
}
