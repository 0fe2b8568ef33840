import { Module } from '@nestjs/common';
import { GardensController } from './gardens.controller.js';
import { GardensRead } from './gardens.read.js';
import { GardensRepository } from './gardens.repository.js';
import { GardensService } from './gardens.service.js';

@Module({
  controllers: [GardensController],
  providers: [GardensRead, GardensRepository, GardensService],
  exports: [GardensRead],
})
export class GardensModule {}
