import { Module } from '@nestjs/common';
import { BuildsModule } from '../builds/builds.module.js';
import { StockModule } from '../stock/stock.module.js';
import { BuildPhotosController } from './build-photos.controller.js';
import { PhotoSubjects } from './photo-subjects.js';
import { PhotosRepository } from './photos.repository.js';
import { PhotoRows, PhotosService } from './photos.service.js';
import { StockPhotosController } from './stock-photos.controller.js';

@Module({
  imports: [BuildsModule, StockModule],
  controllers: [BuildPhotosController, StockPhotosController],
  providers: [PhotoRows, PhotoSubjects, PhotosRepository, PhotosService],
})
export class PhotosModule {}
