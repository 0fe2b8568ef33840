import { Module, type DynamicModule, type Type } from '@nestjs/common';
import { BuildsModule } from './domains/builds/builds.module.js';
import { ClimateModule } from './domains/climate/climate.module.js';
import { DocumentsModule } from './domains/documents/documents.module.js';
import { GardensModule } from './domains/gardens/gardens.module.js';
import { HistoryModule } from './domains/history/history.module.js';
import { HooksModule } from './domains/hooks/hooks.module.js';
import { JobsModule } from './domains/jobs/jobs.module.js';
import { PeopleModule } from './domains/people/people.module.js';
import { PhotosModule } from './domains/photos/photos.module.js';
import { PlansModule } from './domains/plans/plans.module.js';
import { PricesModule } from './domains/prices/prices.module.js';
import { SitesModule } from './domains/sites/sites.module.js';
import { SpendingModule } from './domains/spending/spending.module.js';
import { PrivacyModule } from './domains/privacy/privacy.module.js';
import { StockModule } from './domains/stock/stock.module.js';
import { StructuresModule } from './domains/structures/structures.module.js';
import { TransferModule } from './domains/transfer/transfer.module.js';
import { PlatformModule, type Surroundings } from './platform/platform.module.js';

/** Every domain that owns rows. */
const DOMAINS: Type[] = [
  PeopleModule,
  GardensModule,
  PrivacyModule,
  SitesModule,
  ClimateModule,
  StructuresModule,
  StockModule,
  PricesModule,
  BuildsModule,
  PlansModule,
  PhotosModule,
  DocumentsModule,
  JobsModule,
  HooksModule,
  HistoryModule,
  TransferModule,
  SpendingModule,
];

@Module({})
export class AppModule {
  static with(surroundings: Surroundings): DynamicModule {
    return { module: AppModule, imports: [PlatformModule.with(surroundings), ...DOMAINS] };
  }
}
