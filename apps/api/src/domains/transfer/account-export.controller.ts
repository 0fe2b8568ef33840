import { Controller, Res, type StreamableFile } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { Response } from 'express';
import { CurrentActor } from '../../platform/access/access.decorators.js';
import type { Actor } from '../../platform/access/actor.js';
import { Produces } from '../../platform/http/answers.interceptor.js';
import { Operation } from '../shared/operation.js';
import { AccountExportService } from './account-export.service.js';

@ApiTags('accounts')
@Controller('v1/account')
export class AccountExportController {
  constructor(private readonly exports: AccountExportService) {}

  @Produces('application/zip')
  @Operation('get', 'export', {
    id: 'exportAccount',
    summary: 'Everything that is kept of you, as one archive: JSON, tables and files',
    answer: { type: 'string', format: 'binary', maxLength: 67_108_864 },
    mediaType: 'application/zip',
    problems: [422],
  })
  file(@CurrentActor() actor: Actor, @Res({ passthrough: true }) response: Response): Promise<StreamableFile | undefined> {
    return this.exports.file(actor, response);
  }
}
