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
import {
  StockIntakeDto,
  StockIntakeSchema,
  StockItemDto,
  StockListQuery,
  StockItemPatchDto,
  StockItemResponseSchema,
  type StockResponse,
} from './stock.dto.js';
import { StockService } from './stock.service.js';

@ApiTags('stock')
@Controller('v1')
export class StockController {
  constructor(private readonly stock: StockService) {}

  @Operation('post', 'stock', {
    id: 'createStockItem',
    summary: 'Take one thing into the pile',
    body: StockItemDto,
    answer: StockItemResponseSchema,
    creating: true,
  })
  create(@CurrentActor() actor: Actor, @Req() request: Request, @Body() body: StockItemDto): Promise<Reply> {
    return this.stock.create(actor, request, body);
  }

  @Operation('get', 'stock', { id: 'listStock', summary: 'List what lies on the pile', answer: StockItemResponseSchema, page: true })
  list(@CurrentActor() actor: Actor, @Query() query: StockListQuery): Promise<Page<StockResponse>> {
    return this.stock.list(actor, query);
  }

  @Operation('get', 'stock/:id', { id: 'getStockItem', summary: 'Show one thing', answer: StockItemResponseSchema })
  find(@CurrentActor() actor: Actor, @IdParam('id') id: string): Promise<Reply> {
    return this.stock.find(actor, id);
  }

  @Operation('patch', 'stock/:id', {
    id: 'updateStockItem',
    summary: 'Change a thing',
    body: StockItemPatchDto,
    answer: StockItemResponseSchema,
    ifMatch: true,
  })
  change(@CurrentActor() actor: Actor, @IdParam('id') id: string, @IfMatch() ifMatch: string | undefined, @Body() patch: object): Promise<Reply> {
    return this.stock.change(actor, id, ifMatch, patch);
  }

  @Operation('post', 'stock/:id/archive', {
    id: 'archiveStockItem',
    summary: 'Put a thing away without losing it',
    answer: StockItemResponseSchema,
    status: 200,
    ifMatch: true,
  })
  archive(@CurrentActor() actor: Actor, @IdParam('id') id: string, @IfMatch() ifMatch: string | undefined): Promise<Reply> {
    return this.stock.setArchived(actor, id, ifMatch, true);
  }

  @Operation('post', 'stock/:id/restore', {
    id: 'restoreStockItem',
    summary: 'Bring an archived thing back',
    answer: StockItemResponseSchema,
    status: 200,
    ifMatch: true,
  })
  restore(@CurrentActor() actor: Actor, @IdParam('id') id: string, @IfMatch() ifMatch: string | undefined): Promise<Reply> {
    return this.stock.setArchived(actor, id, ifMatch, false);
  }

  @Operation('post', 'stock/intakes', {
    id: 'createStockIntake',
    untagged: true,
    summary: 'Take up to 200 things into the pile together',
    body: StockIntakeDto,
    answer: StockIntakeSchema,
    creating: true,
  })
  createMany(@CurrentActor() actor: Actor, @Req() request: Request, @Body() body: StockIntakeDto): Promise<Reply> {
    return this.stock.createMany(actor, request, body);
  }
}
