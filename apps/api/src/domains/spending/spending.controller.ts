import { Body, Controller, Query, Req } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { Request } from 'express';
import { CurrentActor } from '../../platform/access/access.decorators.js';
import type { Actor } from '../../platform/access/actor.js';
import { IfMatch } from '../../platform/http/etag.js';
import { IdParam } from '../../platform/http/id-param.js';
import type { Page } from '../../platform/http/page.js';
import type { Reply } from '../../platform/http/reply.js';
import { Operation } from '../shared/operation.js';
import { SpendDecisionDto, SpendListQuery, SpendRequestDto, SpendRequestSchema, type SpendResponse } from './spending.dto.js';
import { SpendingService } from './spending.service.js';

@ApiTags('spending')
@Controller('v1/spending')
export class SpendingController {
  constructor(private readonly spending: SpendingService) {}

  @Operation('post', '', { id: 'createSpendRequest', summary: 'Ask to spend money', body: SpendRequestDto, answer: SpendRequestSchema, creating: true })
  create(@CurrentActor() actor: Actor, @Req() request: Request, @Body() body: SpendRequestDto): Promise<Reply> {
    return this.spending.create(actor, request, body);
  }

  @Operation('get', '', { id: 'listSpendRequests', summary: 'List what was asked for, and what was decided', answer: SpendRequestSchema, page: true })
  list(@CurrentActor() actor: Actor, @Query() query: SpendListQuery): Promise<Page<SpendResponse>> {
    return this.spending.list(actor, query);
  }

  @Operation('get', ':id', { id: 'getSpendRequest', summary: 'Show one request', answer: SpendRequestSchema })
  find(@CurrentActor() actor: Actor, @IdParam('id') id: string): Promise<Reply> {
    return this.spending.find(actor, id);
  }

  @Operation('post', ':id/withdrawal', {
    id: 'withdrawSpendRequest',
    summary: 'Take back what one asked for',
    answer: SpendRequestSchema,
    status: 200,
    ifMatch: true,
  })
  withdraw(@CurrentActor() actor: Actor, @IdParam('id') id: string, @IfMatch() ifMatch: string | undefined): Promise<Reply> {
    return this.spending.withdraw(actor, id, ifMatch);
  }

  @Operation('post', ':id/decision', {
    id: 'decideSpendRequest',
    summary: 'Approve or refuse what somebody else asked for, up to the limit of one’s role',
    body: SpendDecisionDto,
    answer: SpendRequestSchema,
    status: 200,
    ifMatch: true,
  })
  decide(@CurrentActor() actor: Actor, @IdParam('id') id: string, @IfMatch() ifMatch: string | undefined, @Body() body: SpendDecisionDto): Promise<Reply> {
    return this.spending.decide(actor, id, ifMatch, body);
  }
}
