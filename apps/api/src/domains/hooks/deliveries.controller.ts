import { Controller, Query, Req } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { Request } from 'express';
import { CurrentActor } from '../../platform/access/access.decorators.js';
import type { Actor } from '../../platform/access/actor.js';
import { IdParam } from '../../platform/http/id-param.js';
import type { Page } from '../../platform/http/page.js';
import type { Reply } from '../../platform/http/reply.js';
import { Operation } from '../shared/operation.js';
import { DeliveriesService } from './deliveries.service.js';
import { DeliveryListQuery, DeliverySchema, type DeliveryResponse } from './webhooks.dto.js';

@ApiTags('webhooks')
@Controller('v1/webhooks/:webhookId')
export class DeliveriesController {
  constructor(private readonly deliveries: DeliveriesService) {}

  @Operation('post', 'test', {
    id: 'testWebhook',
    summary: 'Send the event webhook.test to this address alone',
    answer: DeliverySchema,
    status: 202,
    creating: true,
    params: ['webhookId'],
  })
  test(@CurrentActor() actor: Actor, @Req() request: Request, @IdParam('webhookId') webhookId: string): Promise<Reply> {
    return this.deliveries.test(actor, request, webhookId);
  }

  @Operation('get', 'deliveries', {
    id: 'listDeliveries',
    summary: 'List what was sent and what came of it, newest first',
    answer: DeliverySchema,
    page: true,
    params: ['webhookId'],
  })
  list(@CurrentActor() actor: Actor, @IdParam('webhookId') webhookId: string, @Query() query: DeliveryListQuery): Promise<Page<DeliveryResponse>> {
    return this.deliveries.list(actor, webhookId, query);
  }

  @Operation('get', 'deliveries/:id', { id: 'getDelivery', summary: 'Show one delivery and its tries', answer: DeliverySchema, params: ['webhookId'] })
  find(@CurrentActor() actor: Actor, @IdParam('webhookId') webhookId: string, @IdParam('id') id: string): Promise<Reply> {
    return this.deliveries.find(actor, webhookId, id);
  }

  @Operation('post', 'deliveries/:id/redeliver', {
    id: 'redeliver',
    summary: 'Send an event once more, under the same id',
    answer: DeliverySchema,
    status: 202,
    creating: true,
    params: ['webhookId'],
  })
  redeliver(@CurrentActor() actor: Actor, @Req() request: Request, @IdParam('webhookId') webhookId: string, @IdParam('id') id: string): Promise<Reply> {
    return this.deliveries.redeliver(actor, request, webhookId, id);
  }
}
