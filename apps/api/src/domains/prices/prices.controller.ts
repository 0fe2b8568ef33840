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
import {
  ExchangeRateDto,
  ExchangeRateResponseSchema,
  PriceDto,
  PriceListQuery,
  PricePatchDto,
  PriceResponseSchema,
  type PriceResponse,
  type RateResponse,
} from './prices.dto.js';
import { PricesService } from './prices.service.js';

@ApiTags('prices')
@Controller('v1')
export class PricesController {
  constructor(private readonly prices: PricesService) {}

  @Operation('post', 'prices', {
    id: 'createPrice',
    summary: 'Make a price',
    body: PriceDto,
    answer: PriceResponseSchema,
    creating: true,
  })
  create(@CurrentActor() actor: Actor, @Req() request: Request, @Body() body: PriceDto): Promise<Reply> {
    return this.prices.create(actor, request, body);
  }

  @Operation('get', 'prices', { id: 'listPrices', summary: 'List the prices of the garden', answer: PriceResponseSchema, page: true })
  list(@CurrentActor() actor: Actor, @Query() query: PriceListQuery): Promise<Page<PriceResponse>> {
    return this.prices.list(actor, query);
  }

  @Operation('get', 'prices/:id', { id: 'getPrice', summary: 'Show one price', answer: PriceResponseSchema })
  find(@CurrentActor() actor: Actor, @IdParam('id') id: string): Promise<Reply> {
    return this.prices.find(actor, id);
  }

  @Operation('patch', 'prices/:id', {
    id: 'updatePrice',
    summary: 'Change a price',
    body: PricePatchDto,
    answer: PriceResponseSchema,
    ifMatch: true,
  })
  change(@CurrentActor() actor: Actor, @IdParam('id') id: string, @IfMatch() ifMatch: string | undefined, @Body() patch: object): Promise<Reply> {
    return this.prices.change(actor, id, ifMatch, patch);
  }

  @Operation('post', 'prices/:id/archive', {
    id: 'archivePrice',
    summary: 'Put a price away without losing it',
    answer: PriceResponseSchema,
    status: 200,
    ifMatch: true,
  })
  archive(@CurrentActor() actor: Actor, @IdParam('id') id: string, @IfMatch() ifMatch: string | undefined): Promise<Reply> {
    return this.prices.setArchived(actor, id, ifMatch, true);
  }

  @Operation('post', 'prices/:id/restore', {
    id: 'restorePrice',
    summary: 'Bring an archived price back',
    answer: PriceResponseSchema,
    status: 200,
    ifMatch: true,
  })
  restore(@CurrentActor() actor: Actor, @IdParam('id') id: string, @IfMatch() ifMatch: string | undefined): Promise<Reply> {
    return this.prices.setArchived(actor, id, ifMatch, false);
  }

  @Operation('post', 'exchange-rates', {
    id: 'createExchangeRate',
    summary: 'Note a rate between two currencies',
    body: ExchangeRateDto,
    answer: ExchangeRateResponseSchema,
    creating: true,
  })
  createRate(@CurrentActor() actor: Actor, @Req() request: Request, @Body() body: ExchangeRateDto): Promise<Reply> {
    return this.prices.createRate(actor, request, body);
  }

  @Operation('get', 'exchange-rates', {
    id: 'listExchangeRates',
    summary: 'List the rates of the garden',
    answer: ExchangeRateResponseSchema,
    page: true,
  })
  listRates(@CurrentActor() actor: Actor, @Query() query: PageQuery): Promise<Page<RateResponse>> {
    return this.prices.listRates(actor, query);
  }

  @Operation('get', 'exchange-rates/:id', { id: 'getExchangeRate', summary: 'Show one rate', answer: ExchangeRateResponseSchema })
  findRate(@CurrentActor() actor: Actor, @IdParam('id') id: string): Promise<Reply> {
    return this.prices.findRate(actor, id);
  }
}
