import { Module } from '@nestjs/common';
import { StalenessModule } from '../plans/staleness.module.js';
import { StructuresController } from './structures.controller.js';
import { StructuresRead } from './structures.read.js';
import { StructuresRepository } from './structures.repository.js';
import { StructuresService } from './structures.service.js';

@Module({
  imports: [StalenessModule],
  controllers: [StructuresController],
  providers: [StructuresRead, StructuresRepository, StructuresService],
  exports: [StructuresRead],
})
export class StructuresModule {}
