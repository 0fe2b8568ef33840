import { Controller, Query, Req, Res, type StreamableFile } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { Request, Response } from 'express';
import { CurrentActor } from '../../platform/access/access.decorators.js';
import type { Actor } from '../../platform/access/actor.js';
import { Produces } from '../../platform/http/answers.interceptor.js';
import { IdParam } from '../../platform/http/id-param.js';
import { PageQuery, type Page } from '../../platform/http/page.js';
import { TakesRaw } from '../../platform/http/raw-body.js';
import type { Reply } from '../../platform/http/reply.js';
import { PICTURE_BODY } from '../../platform/uploads/pictures.js';
import { Operation } from '../shared/operation.js';
import { NewPhotoQuery, PhotoSchema, type PhotoResponse, type PhotoOf } from './photos.dto.js';
import { PhotosService } from './photos.service.js';

const subject = (id: string): PhotoOf => ({ kind: 'build', id });

@ApiTags('files')
@Controller('v1/builds')
export class BuildPhotosController {
  constructor(private readonly photos: PhotosService) {}

  @TakesRaw(PICTURE_BODY)
  @Operation('post', ':id/photos', {
    id: 'createBuildPhoto',
    summary: 'Add a photo of a build: the picture itself is the body',
    answer: PhotoSchema,
    creating: true,
    problems: [404, 409, 413, 415, 422],
  })
  add(@CurrentActor() actor: Actor, @Req() request: Request, @IdParam('id') id: string, @Query() query: NewPhotoQuery): Promise<Reply> {
    return this.photos.add(actor, request, subject(id), query);
  }

  @Operation('get', ':id/photos', { id: 'listBuildPhotos', summary: 'List the photos of a build', answer: PhotoSchema, page: true })
  list(@CurrentActor() actor: Actor, @IdParam('id') id: string, @Query() query: PageQuery): Promise<Page<PhotoResponse>> {
    return this.photos.list(actor, subject(id), query);
  }

  @Operation('get', ':id/photos/:photoId', { id: 'getBuildPhoto', summary: 'Show what is known of one photo', answer: PhotoSchema })
  find(@CurrentActor() actor: Actor, @IdParam('id') id: string, @IdParam('photoId') photoId: string): Promise<Reply> {
    return this.photos.find(actor, subject(id), photoId);
  }

  @Produces('image/jpeg')
  @Operation('get', ':id/photos/:photoId/file', {
    id: 'getBuildPhotoFile',
    summary: 'Fetch the picture',
    answer: { type: 'string', format: 'binary', maxLength: 67_108_864 },
    mediaType: 'image/jpeg',
  })
  file(
    @CurrentActor() actor: Actor,
    @IdParam('id') id: string,
    @IdParam('photoId') photoId: string,
    @Res({ passthrough: true }) response: Response,
  ): Promise<StreamableFile | undefined> {
    return this.photos.file(actor, subject(id), photoId, response);
  }

  @Operation('delete', ':id/photos/:photoId', { id: 'removeBuildPhoto', summary: 'Take a photo away for good', answer: null })
  remove(@CurrentActor() actor: Actor, @IdParam('id') id: string, @IdParam('photoId') photoId: string): Promise<void> {
    return this.photos.remove(actor, subject(id), photoId);
  }
}
