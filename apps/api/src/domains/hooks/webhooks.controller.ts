import { Body, Controller, Query, Req } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { Request } from 'express';
import { CurrentActor } from '../../platform/access/access.decorators.js';
import type { Actor } from '../../platform/access/actor.js';
import { IfMatch } from '../../platform/http/etag.js';
import { IdParam } from '../../platform/http/id-param.js';
import { PageQuery, type Page } from '../../platform/http/page.js';
import type { Reply } from '../../platform/http/reply.js';
import { Operation } from '../shared/operation.js';
import { NewWebhookSchema, WebhookDto, WebhookPatchDto, WebhookSchema, type WebhookResponse } from './webhooks.dto.js';
import { WebhooksService } from './webhooks.service.js';

@ApiTags('webhooks')
@Controller('v1/webhooks')
export class WebhooksController {
  constructor(private readonly webhooks: WebhooksService) {}

  @Operation('post', '', {
    id: 'createWebhook',
    summary: 'Have events sent to an address; shows its secret once',
    body: WebhookDto,
    answer: NewWebhookSchema,
    creating: true,
  })
  create(@CurrentActor() actor: Actor, @Req() request: Request, @Body() body: WebhookDto): Promise<Reply> {
    return this.webhooks.create(actor, request, body);
  }

  @Operation('get', '', { id: 'listWebhooks', summary: 'List webhooks, oldest first', answer: WebhookSchema, page: true })
  list(@CurrentActor() actor: Actor, @Query() query: PageQuery): Promise<Page<WebhookResponse>> {
    return this.webhooks.list(actor, query);
  }

  @Operation('get', ':id', { id: 'getWebhook', summary: 'Show one webhook', answer: WebhookSchema })
  find(@CurrentActor() actor: Actor, @IdParam('id') id: string): Promise<Reply> {
    return this.webhooks.find(actor, id);
  }

  @Operation('patch', ':id', {
    id: 'updateWebhook',
    summary: 'Change a webhook, switch it off or on',
    body: WebhookPatchDto,
    answer: WebhookSchema,
    ifMatch: true,
  })
  change(@CurrentActor() actor: Actor, @IdParam('id') id: string, @IfMatch() ifMatch: string | undefined, @Body() patch: object): Promise<Reply> {
    return this.webhooks.change(actor, id, ifMatch, patch);
  }

  @Operation('delete', ':id', { id: 'removeWebhook', summary: 'Remove a webhook and its secrets', answer: null })
  remove(@CurrentActor() actor: Actor, @IdParam('id') id: string): Promise<void> {
    return this.webhooks.remove(actor, id);
  }

  @Operation('post', ':id/secret-rotations', {
    id: 'rotateWebhookSecret',
    summary: 'Give a webhook a new secret; for 24 hours the former one signs too',
    answer: NewWebhookSchema,
    creating: true,
  })
  rotate(@CurrentActor() actor: Actor, @Req() request: Request, @IdParam('id') id: string): Promise<Reply> {
    return this.webhooks.rotate(actor, request, id);
  }
}
