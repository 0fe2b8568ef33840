import { Module } from '@nestjs/common';
import { StalenessModule } from '../plans/staleness.module.js';
import { SitesModule } from '../sites/sites.module.js';
import { StructuresModule } from '../structures/structures.module.js';
import { BuildsController } from './builds.controller.js';
import { BuildsRead } from './builds.read.js';
import { BuildReferences } from './builds.references.js';
import { BuildsRepository } from './builds.repository.js';
import { BuildsService } from './builds.service.js';

@Module({
  imports: [SitesModule, StructuresModule, StalenessModule],
  controllers: [BuildsController],
  providers: [BuildReferences, BuildsRead, BuildsRepository, BuildsService],
  exports: [BuildsRead],
})
export class BuildsModule {}
