import { Module } from '@nestjs/common';
import { ClimateModule } from '../climate/climate.module.js';
import { StalenessModule } from '../plans/staleness.module.js';
import { PrivacyModule } from '../privacy/privacy.module.js';
import { SiteClimateService } from './site-climate.service.js';
import { SiteViews } from './site-views.js';
import { SitesController } from './sites.controller.js';
import { SitesRead } from './sites.read.js';
import { SitesRepository } from './sites.repository.js';
import { SitesService, SiteTools } from './sites.service.js';

@Module({
  imports: [ClimateModule, PrivacyModule, StalenessModule],
  controllers: [SitesController],
  providers: [SiteClimateService, SiteTools, SiteViews, SitesRead, SitesRepository, SitesService],
  exports: [SitesRead],
})
export class SitesModule {}
