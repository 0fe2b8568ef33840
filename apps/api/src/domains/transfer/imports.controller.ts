import { Controller, Req } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { Request } from 'express';
import { CurrentActor } from '../../platform/access/access.decorators.js';
import type { Actor } from '../../platform/access/actor.js';
import { TakesRaw } from '../../platform/http/raw-body.js';
import type { Reply } from '../../platform/http/reply.js';
import { Operation } from '../shared/operation.js';
import { ImportReportSchema } from './imports.dto.js';
import { ARCHIVE_BODY, ImportsService } from './imports.service.js';

@ApiTags('files')
@Controller('v1/imports')
export class ImportsController {
  constructor(private readonly imports: ImportsService) {}

  @TakesRaw(ARCHIVE_BODY)
  @Operation('post', '', {
    id: 'importGarden',
    summary: 'Take a packed garden into this one: the archive itself is the body',
    answer: ImportReportSchema,
    creating: true,
    problems: [409, 413, 415, 422],
  })
  take(@CurrentActor() actor: Actor, @Req() request: Request): Promise<Reply> {
    return this.imports.take(actor, request);
  }
}
