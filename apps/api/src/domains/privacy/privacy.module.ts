import { Module } from '@nestjs/common';
import { ConsentsController } from './consents.controller.js';
import { ConsentsRead } from './consents.read.js';
import { ConsentsRepository } from './consents.repository.js';
import { ConsentsService } from './consents.service.js';
import { PrivatesController } from './privates.controller.js';
import { PrivatesRead } from './privates.read.js';
import { PrivatesRepository } from './privates.repository.js';
import { PrivatesService } from './privates.service.js';

/** What members keep to themselves, and what they have agreed to. */
@Module({
  controllers: [ConsentsController, PrivatesController],
  providers: [ConsentsRead, ConsentsRepository, ConsentsService, PrivatesRead, PrivatesRepository, PrivatesService],
  exports: [ConsentsRead, PrivatesRead],
})
export class PrivacyModule {}
