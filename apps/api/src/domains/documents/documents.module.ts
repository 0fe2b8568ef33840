import { Module } from '@nestjs/common';
import { BuildsModule } from '../builds/builds.module.js';
import { GardensModule } from '../gardens/gardens.module.js';
import { PlansModule } from '../plans/plans.module.js';
import { SitesModule } from '../sites/sites.module.js';
import { DocumentFilesService } from './document-files.service.js';
import { DocumentSources } from './document-sources.js';
import { DocumentsController } from './documents.controller.js';
import { RenderDocumentTask, RenderTools } from './documents.jobs.js';
import { DocumentsRepository } from './documents.repository.js';
import { DocumentsService } from './documents.service.js';

@Module({
  imports: [BuildsModule, GardensModule, PlansModule, SitesModule],
  controllers: [DocumentsController],
  providers: [DocumentFilesService, DocumentSources, DocumentsRepository, DocumentsService, RenderDocumentTask, RenderTools],
})
export class DocumentsModule {}
