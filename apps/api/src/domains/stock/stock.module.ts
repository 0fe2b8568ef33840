import { Module } from '@nestjs/common';
import { BuildsModule } from '../builds/builds.module.js';
import { StalenessModule } from '../plans/staleness.module.js';
import { ClaimsController } from './claims.controller.js';
import { ClaimsService } from './claims.service.js';
import { Donors } from './donors.js';
import { StockController } from './stock.controller.js';
import { StockRead } from './stock.read.js';
import { StockRepository } from './stock.repository.js';
import { StockService } from './stock.service.js';

@Module({
  imports: [BuildsModule, StalenessModule],
  controllers: [ClaimsController, StockController],
  providers: [ClaimsService, Donors, StockRead, StockRepository, StockService],
  exports: [StockRead],
})
export class StockModule {}
