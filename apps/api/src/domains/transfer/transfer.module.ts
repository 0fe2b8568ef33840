import { Module } from '@nestjs/common';
import { PrivacyModule } from '../privacy/privacy.module.js';
import { AccountExportController } from './account-export.controller.js';
import { AccountExportService } from './account-export.service.js';
import { ContentsRepository } from './contents.repository.js';
import { GardenExportsController } from './garden-exports.controller.js';
import { ExportGardenTask, ExportTools, GardenPacker } from './garden-exports.jobs.js';
import { GardenExportsRepository } from './garden-exports.repository.js';
import { GardenExportsService } from './garden-exports.service.js';
import { ImportsController } from './imports.controller.js';
import { ImportsService, IntakeTools } from './imports.service.js';
import { IntakeRepository } from './intake.repository.js';
import { RecordsRepository } from './records.repository.js';

/** Taking a garden, or what is kept of a person, elsewhere. */
@Module({
  imports: [PrivacyModule],
  controllers: [GardenExportsController, ImportsController, AccountExportController],
  providers: [
    AccountExportService,
    ContentsRepository,
    ExportGardenTask,
    ExportTools,
    GardenExportsRepository,
    GardenExportsService,
    GardenPacker,
    ImportsService,
    IntakeRepository,
    IntakeTools,
    RecordsRepository,
  ],
})
export class TransferModule {}
