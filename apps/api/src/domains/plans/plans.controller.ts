import { Body, Controller, Query, Req } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { Request } from 'express';
import { CurrentActor } from '../../platform/access/access.decorators.js';
import type { Actor } from '../../platform/access/actor.js';
import { PageQuery, type Page } from '../../platform/http/page.js';
import type { Reply } from '../../platform/http/reply.js';
import { IdParam } from '../../platform/http/id-param.js';
import { Operation } from '../shared/operation.js';
import {
  AsBuiltDto,
  AsBuiltSchema,
  PlanDto,
  PlanInputsResponseSchema,
  PlanListQuery,
  PlanResultResponseSchema,
  PlanSchema,
  ReviewDto,
  ReviewResponseSchema,
  type AsBuiltResponse,
  type PlanResponse,
} from './plans.dto.js';
import { PlansService } from './plans.service.js';
import { ReviewsService } from './reviews.service.js';

@ApiTags('plans')
@Controller('v1/plans')
export class PlansController {
  constructor(
    private readonly plans: PlansService,
    private readonly reviews: ReviewsService,
  ) {}

  @Operation('post', '', {
    id: 'createPlan',
    summary: 'Ask for a new revision of the plan of a build',
    body: PlanDto,
    answer: PlanSchema,
    status: 202,
    creating: true,
    waits: true,
    problems: [404],
  })
  create(@CurrentActor() actor: Actor, @Req() request: Request, @Body() body: PlanDto): Promise<Reply> {
    return this.plans.create(actor, request, body);
  }

  @Operation('get', '', { id: 'listPlans', summary: 'List revisions, oldest first', answer: PlanSchema, page: true })
  list(@CurrentActor() actor: Actor, @Query() query: PlanListQuery): Promise<Page<PlanResponse>> {
    return this.plans.list(actor, query);
  }

  @Operation('get', ':id', {
    id: 'getPlan',
    summary: 'Show one revision: its state, and what has gathered beside it',
    answer: PlanSchema,
  })
  find(@CurrentActor() actor: Actor, @IdParam('id') id: string): Promise<Reply> {
    return this.plans.find(actor, id);
  }

  @Operation('get', ':id/inputs', {
    id: 'getPlanInputs',
    summary: 'Show what a revision was computed from',
    answer: PlanInputsResponseSchema,
  })
  inputs(@CurrentActor() actor: Actor, @IdParam('id') id: string): Promise<Reply> {
    return this.plans.inputs(actor, id);
  }

  @Operation('get', ':id/result', {
    id: 'getPlanResult',
    summary: 'Show the finished plan',
    answer: PlanResultResponseSchema,
    problems: [409],
  })
  result(@CurrentActor() actor: Actor, @IdParam('id') id: string): Promise<Reply> {
    return this.plans.result(actor, id);
  }

  @Operation('post', ':id/reviews', {
    id: 'createReview',
    summary: 'Say that a plan was looked at',
    body: ReviewDto,
    answer: ReviewResponseSchema,
    creating: true,
  })
  review(@CurrentActor() actor: Actor, @Req() request: Request, @IdParam('id') id: string, @Body() body: ReviewDto): Promise<Reply> {
    return this.reviews.review(actor, request, id, body);
  }

  @Operation('post', ':id/as-built', {
    id: 'createAsBuilt',
    summary: 'Note what was really built',
    body: AsBuiltDto,
    answer: AsBuiltSchema,
    creating: true,
  })
  recordAsBuilt(@CurrentActor() actor: Actor, @Req() request: Request, @IdParam('id') id: string, @Body() body: AsBuiltDto): Promise<Reply> {
    return this.reviews.recordAsBuilt(actor, request, id, body);
  }

  @Operation('get', ':id/as-built', { id: 'listAsBuilt', summary: 'List what was really built', answer: AsBuiltSchema, page: true })
  listAsBuilt(@CurrentActor() actor: Actor, @IdParam('id') id: string, @Query() query: PageQuery): Promise<Page<AsBuiltResponse>> {
    return this.reviews.listAsBuilt(actor, id, query);
  }
}
