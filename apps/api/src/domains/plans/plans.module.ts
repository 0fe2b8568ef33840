import { Module } from '@nestjs/common';
import { BuildsModule } from '../builds/builds.module.js';
import { ClimateModule } from '../climate/climate.module.js';
import { PricesModule } from '../prices/prices.module.js';
import { SitesModule } from '../sites/sites.module.js';
import { StockModule } from '../stock/stock.module.js';
import { StructuresModule } from '../structures/structures.module.js';
import { PlaceAndShelterRead } from './place-and-shelter.js';
import { PlanInputsReader } from './plan-inputs.js';
import { OverviewController } from './overview.controller.js';
import { OverviewRepository } from './overview.repository.js';
import { OverviewService } from './overview.service.js';
import { PlansController } from './plans.controller.js';
import { ComputePlanTask } from './plans.jobs.js';
import { PlansRead } from './plans.read.js';
import { PlansRepository } from './plans.repository.js';
import { PlansService } from './plans.service.js';
import { ReviewsService } from './reviews.service.js';
import { StalenessModule } from './staleness.module.js';

@Module({
  imports: [BuildsModule, ClimateModule, PricesModule, SitesModule, StalenessModule, StockModule, StructuresModule],
  controllers: [PlansController, OverviewController],
  providers: [
    ComputePlanTask,
    PlaceAndShelterRead,
    PlanInputsReader,
    PlansRead,
    PlansRepository,
    PlansService,
    OverviewRepository,
    OverviewService,
    ReviewsService,
  ],
  exports: [PlansRead],
})
export class PlansModule {}
