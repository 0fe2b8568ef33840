import { Body, Controller, Query, Req } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { Request } from 'express';
import { CurrentActor } from '../../platform/access/access.decorators.js';
import type { Actor } from '../../platform/access/actor.js';
import { PageQuery, type Page } from '../../platform/http/page.js';
import type { Reply } from '../../platform/http/reply.js';
import { IdParam } from '../../platform/http/id-param.js';
import { Operation } from '../shared/operation.js';
import { ClaimsService } from './claims.service.js';
import { ClaimDto, ClaimProblemSchema, ClaimSchema, type ClaimResponse } from './stock.dto.js';

@ApiTags('stock')
@Controller('v1/builds/:buildId/claims')
export class ClaimsController {
  constructor(private readonly claims: ClaimsService) {}

  @Operation('post', '', {
    id: 'createClaim',
    summary: 'Hold a thing of the pile for a build',
    body: ClaimDto,
    answer: ClaimSchema,
    creating: true,
    params: ['buildId'],
    conflict: ClaimProblemSchema,
  })
  claim(@CurrentActor() actor: Actor, @Req() request: Request, @IdParam('buildId') buildId: string, @Body() body: ClaimDto): Promise<Reply> {
    return this.claims.claim(actor, request, buildId, body);
  }

  @Operation('get', '', {
    id: 'listClaims',
    summary: 'List what is held for a build',
    answer: ClaimSchema,
    page: true,
    params: ['buildId'],
  })
  list(@CurrentActor() actor: Actor, @IdParam('buildId') buildId: string, @Query() query: PageQuery): Promise<Page<ClaimResponse>> {
    return this.claims.list(actor, buildId, query);
  }

  @Operation('get', ':id', {
    id: 'getClaim',
    summary: 'Show one claim that is not released',
    answer: ClaimSchema,
    params: ['buildId', 'id'],
  })
  find(@CurrentActor() actor: Actor, @IdParam('buildId') buildId: string, @IdParam('id') id: string): Promise<Reply> {
    return this.claims.find(actor, buildId, id);
  }

  @Operation('delete', ':id', {
    id: 'releaseClaim',
    summary: 'Give a held thing back to the pile',
    answer: null,
    params: ['buildId', 'id'],
  })
  release(@CurrentActor() actor: Actor, @IdParam('buildId') buildId: string, @IdParam('id') id: string): Promise<void> {
    return this.claims.release(actor, buildId, id);
  }
}
