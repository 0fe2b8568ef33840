import { Controller, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { CurrentActor } from '../../platform/access/access.decorators.js';
import type { Actor } from '../../platform/access/actor.js';
import { IdParam } from '../../platform/http/id-param.js';
import type { Page } from '../../platform/http/page.js';
import { Operation } from '../shared/operation.js';
import {
  BuildHistoryQuery,
  BuildHistorySchema,
  HistoryEntrySchema,
  HistoryQuery,
  type BuildHistoryResponse,
  type HistoryEntryResponse,
} from './history.dto.js';
import { HistoryService } from './history.service.js';

@ApiTags('history')
@Controller('v1')
export class HistoryController {
  constructor(private readonly history: HistoryService) {}

  @Operation('get', 'history', { id: 'listHistory', summary: 'List who changed what in the garden, oldest first', answer: HistoryEntrySchema, page: true })
  list(@CurrentActor() actor: Actor, @Query() query: HistoryQuery): Promise<Page<HistoryEntryResponse>> {
    return this.history.list(actor, query);
  }

  @Operation('get', 'builds/:id/history', {
    id: 'getBuildHistory',
    untagged: true,
    summary: 'Show who changed what between two revisions of the plan of a build',
    answer: BuildHistorySchema,
  })
  build(@CurrentActor() actor: Actor, @IdParam('id') id: string, @Query() query: BuildHistoryQuery): Promise<BuildHistoryResponse> {
    return this.history.build(actor, id, query);
  }
}
