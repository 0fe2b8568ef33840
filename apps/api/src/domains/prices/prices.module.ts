import { Module } from '@nestjs/common';
import { StalenessModule } from '../plans/staleness.module.js';
import { PricesController } from './prices.controller.js';
import { PricesRead } from './prices.read.js';
import { PricesRepository } from './prices.repository.js';
import { PricesService } from './prices.service.js';

@Module({
  imports: [StalenessModule],
  controllers: [PricesController],
  providers: [PricesRead, PricesRepository, PricesService],
  exports: [PricesRead],
})
export class PricesModule {}
