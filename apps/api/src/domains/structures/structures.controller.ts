import { Body, Controller, Query, Req } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { Request } from 'express';
import { CurrentActor } from '../../platform/access/access.decorators.js';
import type { Actor } from '../../platform/access/actor.js';
import { IfMatch } from '../../platform/http/etag.js';
import type { Page } from '../../platform/http/page.js';
import type { Reply } from '../../platform/http/reply.js';
import { IdParam } from '../../platform/http/id-param.js';
import { Operation } from '../shared/operation.js';
import { ListQuery } from '../shared/queries.dto.js';
import { StructureDto, StructurePatchDto, StructureSchema, type StructureResponse } from './structures.dto.js';
import { StructuresService } from './structures.service.js';

@ApiTags('structures')
@Controller('v1')
export class StructuresController {
  constructor(private readonly structures: StructuresService) {}

  @Operation('post', 'structures', {
    id: 'createStructure',
    summary: 'Make a structure',
    body: StructureDto,
    answer: StructureSchema,
    creating: true,
  })
  create(@CurrentActor() actor: Actor, @Req() request: Request, @Body() body: StructureDto): Promise<Reply> {
    return this.structures.create(actor, request, body);
  }

  @Operation('get', 'structures', {
    id: 'listStructures',
    summary: 'List the structures of the garden',
    answer: StructureSchema,
    page: true,
  })
  list(@CurrentActor() actor: Actor, @Query() query: ListQuery): Promise<Page<StructureResponse>> {
    return this.structures.list(actor, query);
  }

  @Operation('get', 'structures/:id', { id: 'getStructure', summary: 'Show one structure', answer: StructureSchema })
  find(@CurrentActor() actor: Actor, @IdParam('id') id: string): Promise<Reply> {
    return this.structures.find(actor, id);
  }

  @Operation('patch', 'structures/:id', {
    id: 'updateStructure',
    summary: 'Change a structure',
    body: StructurePatchDto,
    answer: StructureSchema,
    ifMatch: true,
  })
  change(@CurrentActor() actor: Actor, @IdParam('id') id: string, @IfMatch() ifMatch: string | undefined, @Body() patch: object): Promise<Reply> {
    return this.structures.change(actor, id, ifMatch, patch);
  }

  @Operation('post', 'structures/:id/archive', {
    id: 'archiveStructure',
    summary: 'Put a structure away without losing it',
    answer: StructureSchema,
    status: 200,
    ifMatch: true,
  })
  archive(@CurrentActor() actor: Actor, @IdParam('id') id: string, @IfMatch() ifMatch: string | undefined): Promise<Reply> {
    return this.structures.setArchived(actor, id, ifMatch, true);
  }

  @Operation('post', 'structures/:id/restore', {
    id: 'restoreStructure',
    summary: 'Bring an archived structure back',
    answer: StructureSchema,
    status: 200,
    ifMatch: true,
  })
  restore(@CurrentActor() actor: Actor, @IdParam('id') id: string, @IfMatch() ifMatch: string | undefined): Promise<Reply> {
    return this.structures.setArchived(actor, id, ifMatch, false);
  }
}
