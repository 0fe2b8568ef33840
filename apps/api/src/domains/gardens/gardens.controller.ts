import { Body, Controller, Query, Req } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { Request } from 'express';
import { CurrentActor } from '../../platform/access/access.decorators.js';
import type { Actor } from '../../platform/access/actor.js';
import { IfMatch } from '../../platform/http/etag.js';
import { PageQuery, type Page } from '../../platform/http/page.js';
import type { Reply } from '../../platform/http/reply.js';
import { IdParam } from '../../platform/http/id-param.js';
import { Operation } from '../shared/operation.js';
import { GardenDto, GardenPatchDto, GardenSchema, KeyDto, KeySchema, NewGardenSchema, NewKeySchema, type KeyResponse } from './gardens.dto.js';
import { GardensService } from './gardens.service.js';

@ApiTags('gardens')
@Controller('v1')
export class GardensController {
  constructor(private readonly gardens: GardensService) {}

  @Operation('post', 'gardens', {
    id: 'createGarden',
    summary: 'Make a garden: the operator with a first key, which is shown this once; a signed-in person as its coordinator',
    body: GardenDto,
    answer: NewGardenSchema,
    creating: true,
  })
  create(@CurrentActor() actor: Actor, @Req() request: Request, @Body() body: GardenDto): Promise<Reply> {
    return this.gardens.create(actor, request, body);
  }

  @Operation('get', 'gardens/current', { id: 'getGarden', summary: 'Show the garden of this key', answer: GardenSchema })
  current(@CurrentActor() actor: Actor): Promise<Reply> {
    return this.gardens.current(actor);
  }

  @Operation('patch', 'gardens/current', {
    id: 'updateGarden',
    summary: 'Change the garden of this key',
    body: GardenPatchDto,
    answer: GardenSchema,
    ifMatch: true,
  })
  change(@CurrentActor() actor: Actor, @IfMatch() ifMatch: string | undefined, @Body() patch: object): Promise<Reply> {
    return this.gardens.change(actor, ifMatch, patch);
  }

  @Operation('post', 'keys', {
    id: 'createKey',
    summary: 'Make a key, which is shown this once',
    body: KeyDto,
    answer: NewKeySchema,
    creating: true,
  })
  createKey(@CurrentActor() actor: Actor, @Req() request: Request, @Body() body: KeyDto): Promise<Reply> {
    return this.gardens.createKey(actor, request, body);
  }

  @Operation('get', 'keys', {
    id: 'listKeys',
    summary: 'List the keys of the garden, without the keys themselves',
    answer: KeySchema,
    page: true,
  })
  listKeys(@CurrentActor() actor: Actor, @Query() query: PageQuery): Promise<Page<KeyResponse>> {
    return this.gardens.listKeys(actor, query);
  }

  @Operation('get', 'keys/:id', { id: 'getKey', summary: 'Show one key, without the key itself', answer: KeySchema })
  findKey(@CurrentActor() actor: Actor, @IdParam('id') id: string): Promise<Reply> {
    return this.gardens.findKey(actor, id);
  }

  @Operation('delete', 'keys/:id', { id: 'revokeKey', summary: 'Take a key back at once', answer: null })
  revokeKey(@CurrentActor() actor: Actor, @IdParam('id') id: string): Promise<void> {
    return this.gardens.revokeKey(actor, id);
  }
}
