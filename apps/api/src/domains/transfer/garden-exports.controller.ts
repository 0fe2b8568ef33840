import { Body, Controller, Query, Req, Res, type StreamableFile } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { Request, Response } from 'express';
import { CurrentActor } from '../../platform/access/access.decorators.js';
import type { Actor } from '../../platform/access/actor.js';
import { Produces } from '../../platform/http/answers.interceptor.js';
import { IdParam } from '../../platform/http/id-param.js';
import { PageQuery, type Page } from '../../platform/http/page.js';
import type { Reply } from '../../platform/http/reply.js';
import { Operation } from '../shared/operation.js';
import { GardenExportDto, GardenExportSchema, type ExportResponse } from './garden-exports.dto.js';
import { GardenExportsService } from './garden-exports.service.js';

@ApiTags('files')
@Controller('v1/exports')
export class GardenExportsController {
  constructor(private readonly exports: GardenExportsService) {}

  @Operation('post', '', {
    id: 'exportGarden',
    summary: 'Have the whole garden packed for taking elsewhere',
    body: GardenExportDto,
    answer: GardenExportSchema,
    status: 202,
    creating: true,
  })
  create(@CurrentActor() actor: Actor, @Req() request: Request, @Body() body: GardenExportDto): Promise<Reply> {
    return this.exports.create(actor, request, body);
  }

  @Operation('get', '', { id: 'listGardenExports', summary: 'List exports, oldest first', answer: GardenExportSchema, page: true })
  list(@CurrentActor() actor: Actor, @Query() query: PageQuery): Promise<Page<ExportResponse>> {
    return this.exports.list(actor, query);
  }

  @Operation('get', ':id', { id: 'getGardenExport', summary: 'Show the state of one export', answer: GardenExportSchema })
  find(@CurrentActor() actor: Actor, @IdParam('id') id: string): Promise<Reply> {
    return this.exports.find(actor, id);
  }

  @Produces('application/zip')
  @Operation('get', ':id/file', {
    id: 'getGardenExportFile',
    summary: 'Fetch the archive, within a day of its making',
    answer: { type: 'string', format: 'binary', maxLength: 67_108_864 },
    mediaType: 'application/zip',
  })
  file(@CurrentActor() actor: Actor, @IdParam('id') id: string, @Res({ passthrough: true }) response: Response): Promise<StreamableFile | undefined> {
    return this.exports.file(actor, id, response);
  }
}
