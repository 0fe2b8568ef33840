import { Module } from '@nestjs/common';
import { DeliveriesController } from './deliveries.controller.js';
import { DeliveriesRepository } from './deliveries.repository.js';
import { DeliveriesService } from './deliveries.service.js';
import { Deliverer } from './deliverer.js';
import { WebhookSecrets } from './webhook-secrets.js';
import { WebhooksController } from './webhooks.controller.js';
import { WebhooksRepository } from './webhooks.repository.js';
import { WebhooksService, WebhookTools } from './webhooks.service.js';

@Module({
  controllers: [WebhooksController, DeliveriesController],
  providers: [Deliverer, DeliveriesRepository, DeliveriesService, WebhookSecrets, WebhooksRepository, WebhooksService, WebhookTools],
})
export class HooksModule {}
