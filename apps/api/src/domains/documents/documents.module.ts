import { Module } from '@nestjs/common';
import { BuildsModule } from '../builds/builds.module.js';
import { GardensModule } from '../gardens/gardens.module.js';
import { PlansModule } from '../plans/plans.module.js';
import { PricesModule } from '../prices/prices.module.js';
import { PrivacyModule } from '../privacy/privacy.module.js';
import { SitesModule } from '../sites/sites.module.js';
import { StockModule } from '../stock/stock.module.js';
import { DocumentFilesService } from './document-files.service.js';
import { DocumentSources } from './document-sources.js';
import { DocumentsController } from './documents.controller.js';
import { RenderDocumentTask, RenderTools } from './documents.jobs.js';
import { DocumentsRepository } from './documents.repository.js';
import { DocumentsService } from './documents.service.js';
import { ExportsController } from './exports.controller.js';
import { ExportsService } from './exports.service.js';

@Module({
  imports: [BuildsModule, GardensModule, PlansModule, PricesModule, PrivacyModule, SitesModule, StockModule],
  controllers: [DocumentsController, ExportsController],
  providers: [DocumentFilesService, DocumentSources, DocumentsRepository, DocumentsService, ExportsService, RenderDocumentTask, RenderTools],
})
export class DocumentsModule {}
