import { Module } from '@nestjs/common';
import { BuildsModule } from '../builds/builds.module.js';
import { PlansModule } from '../plans/plans.module.js';
import { SpendingController } from './spending.controller.js';
import { SpendingRepository } from './spending.repository.js';
import { SpendingService } from './spending.service.js';

@Module({ imports: [BuildsModule, PlansModule], controllers: [SpendingController], providers: [SpendingRepository, SpendingService] })
export class SpendingModule {}
