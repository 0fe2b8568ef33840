import { Module } from '@nestjs/common';
import { StillAllowed } from '../../platform/access/still-allowed.js';
import { JobStreams } from './job-streams.js';
import { JobsController } from './jobs.controller.js';
import { JobsRepository } from './jobs.repository.js';
import { JobsService } from './jobs.service.js';

@Module({ controllers: [JobsController], providers: [JobStreams, JobsRepository, JobsService, StillAllowed] })
export class JobsModule {}
