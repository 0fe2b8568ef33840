import { Body, Controller, Query, Req } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { Request } from 'express';
import { CurrentActor } from '../../platform/access/access.decorators.js';
import type { Actor } from '../../platform/access/actor.js';
import { IfMatch } from '../../platform/http/etag.js';
import type { Page } from '../../platform/http/page.js';
import type { Reply } from '../../platform/http/reply.js';
import { IdParam } from '../../platform/http/id-param.js';
import { Operation } from '../shared/operation.js';
import { BuildDto, BuildListQuery, BuildPatchDto, BuildSchema, type BuildResponse } from './builds.dto.js';
import { BuildsService } from './builds.service.js';

@ApiTags('builds')
@Controller('v1')
export class BuildsController {
  constructor(private readonly builds: BuildsService) {}

  @Operation('post', 'builds', { id: 'createBuild', summary: 'Make a build', body: BuildDto, answer: BuildSchema, creating: true })
  create(@CurrentActor() actor: Actor, @Req() request: Request, @Body() body: BuildDto): Promise<Reply> {
    return this.builds.create(actor, request, body);
  }

  @Operation('get', 'builds', { id: 'listBuilds', summary: 'List the builds of the garden', answer: BuildSchema, page: true })
  list(@CurrentActor() actor: Actor, @Query() query: BuildListQuery): Promise<Page<BuildResponse>> {
    return this.builds.list(actor, query);
  }

  @Operation('get', 'builds/:id', { id: 'getBuild', summary: 'Show one build', answer: BuildSchema })
  find(@CurrentActor() actor: Actor, @IdParam('id') id: string): Promise<Reply> {
    return this.builds.find(actor, id);
  }

  @Operation('patch', 'builds/:id', {
    id: 'updateBuild',
    summary: 'Change a build',
    body: BuildPatchDto,
    answer: BuildSchema,
    ifMatch: true,
  })
  change(@CurrentActor() actor: Actor, @IdParam('id') id: string, @IfMatch() ifMatch: string | undefined, @Body() patch: object): Promise<Reply> {
    return this.builds.change(actor, id, ifMatch, patch);
  }

  @Operation('post', 'builds/:id/archive', {
    id: 'archiveBuild',
    summary: 'Put a build away without losing it',
    answer: BuildSchema,
    status: 200,
    ifMatch: true,
  })
  archive(@CurrentActor() actor: Actor, @IdParam('id') id: string, @IfMatch() ifMatch: string | undefined): Promise<Reply> {
    return this.builds.setArchived(actor, id, ifMatch, true);
  }

  @Operation('post', 'builds/:id/restore', {
    id: 'restoreBuild',
    summary: 'Bring an archived build back',
    answer: BuildSchema,
    status: 200,
    ifMatch: true,
  })
  restore(@CurrentActor() actor: Actor, @IdParam('id') id: string, @IfMatch() ifMatch: string | undefined): Promise<Reply> {
    return this.builds.setArchived(actor, id, ifMatch, false);
  }
}
