import { Module } from '@nestjs/common';
import { PeopleModule } from '../people/people.module.js';
import { ConsentsController } from './consents.controller.js';
import { ConsentsRead } from './consents.read.js';
import { ConsentsRepository } from './consents.repository.js';
import { ConsentsService } from './consents.service.js';
import { ErasureController } from './erasure.controller.js';
import { ErasureRepository } from './erasure.repository.js';
import { ErasureService } from './erasure.service.js';
import { PrivatesController } from './privates.controller.js';
import { PrivatesRead } from './privates.read.js';
import { PrivatesRepository } from './privates.repository.js';
import { PrivatesService } from './privates.service.js';

/** What members keep to themselves, and what they have agreed to. */
@Module({
  imports: [PeopleModule],
  controllers: [ConsentsController, ErasureController, PrivatesController],
  providers: [ConsentsRead, ConsentsRepository, ConsentsService, ErasureRepository, ErasureService, PrivatesRead, PrivatesRepository, PrivatesService],
  exports: [ConsentsRead, PrivatesRead],
})
export class PrivacyModule {}
