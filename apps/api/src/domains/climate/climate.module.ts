import { Module } from '@nestjs/common';
import { ClimateController } from './climate.controller.js';
import { ClimateRead } from './climate.read.js';
import { ClimateRepository } from './climate.repository.js';
import { ClimateService } from './climate.service.js';

@Module({
  controllers: [ClimateController],
  providers: [ClimateRead, ClimateRepository, ClimateService],
  exports: [ClimateRead],
})
export class ClimateModule {}
