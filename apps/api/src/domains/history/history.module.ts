import { Module } from '@nestjs/common';
import { GardensModule } from '../gardens/gardens.module.js';
import { HistoryController } from './history.controller.js';
import { HistoryRepository } from './history.repository.js';
import { HistoryService } from './history.service.js';

@Module({ imports: [GardensModule], controllers: [HistoryController], providers: [HistoryRepository, HistoryService] })
export class HistoryModule {}
