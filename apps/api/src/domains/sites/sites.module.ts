import { Module } from '@nestjs/common';
import { ClimateModule } from '../climate/climate.module.js';
import { StalenessModule } from '../plans/staleness.module.js';
import { SitesController } from './sites.controller.js';
import { SitesRead } from './sites.read.js';
import { SitesRepository } from './sites.repository.js';
import { SitesService } from './sites.service.js';

@Module({
  imports: [ClimateModule, StalenessModule],
  controllers: [SitesController],
  providers: [SitesRead, SitesRepository, SitesService],
  exports: [SitesRead],
})
export class SitesModule {}
