import { Injectable } from '@nestjs/common';
import type { Request } from 'express';
import type { Actor } from '../../platform/access/actor.js';
import { audit } from '../../platform/database/audit.js';
import { Database } from '../../platform/database/database.js';
import { newId } from '../../platform/database/ids.js';
import { assertMatch, etagOfParts } from '../../platform/http/etag.js';
import { afterOf, toPage, type Page, type PageQuery } from '../../platform/http/page.js';
import { collectAsTyped } from '../../platform/http/quantity-field.js';
import { found, type Reply } from '../../platform/http/reply.js';
import { Idempotency } from '../../platform/idempotency/idempotency.js';
import { fail } from '../../platform/problems/problem.js';
import { StalenessDoor } from '../plans/staleness.door.js';
import { archive, made, must, mustBeNewest, mustNotBeArchived, nameFree, patched, shown } from '../shared/change.js';
import { PriceDto, priceOf, toRateResponse, toResponse, type ExchangeRateDto, type PriceListQuery, type PriceResponse } from './prices.dto.js';
import { PricesRepository, type RateRecord } from './prices.repository.js';

const WHAT = 'price';

@Injectable()
export class PricesService {
  constructor(
    private readonly database: Database,
    private readonly idempotency: Idempotency,
    private readonly prices: PricesRepository,
    private readonly staleness: StalenessDoor,
  ) {}

  create(actor: Actor, request: Request, body: PriceDto): Promise<Reply> {
    return this.idempotency.creating(actor, request, async (db) => {
      const price = await this.prices.insert(db, actor.gardenId, newId(), { ...priceOf(body), asTyped: collectAsTyped(request.body, body) });
      await audit(db, actor, { action: 'price.create', objectType: WHAT, objectId: price.id, after: price });
      await this.staleness.priceAdded(db, actor, price.material);
      return made('/v1/prices', toResponse(price));
    });
  }

  async list(actor: Actor, query: PriceListQuery): Promise<Page<PriceResponse>> {
    const step = { after: afterOf(query), take: query.limit + 1 };
    const filter = { archived: query.archived ?? false, material: query.material ?? null };
    const prices = await this.database.readSnapshot(actor, (db) => this.prices.list(db, filter, step));
    return toPage(prices.map(toResponse), query.limit, (price) => price.id, query);
  }

  async find(actor: Actor, id: string): Promise<Reply> {
    return shown(toResponse(must(await this.database.readSnapshot(actor, (db) => this.prices.find(db, id)), WHAT)));
  }

  change(actor: Actor, id: string, ifMatch: string | undefined, patch: unknown): Promise<Reply> {
    return this.database.inTransaction(actor, async (db) => {
      const was = must(await this.prices.find(db, id), WHAT);
      assertMatch(ifMatch, was);
      mustNotBeArchived(was, WHAT);
      const { dto, asTyped } = patched(PriceDto, priceOf(was), was.asTyped, patch);
      const now = mustBeNewest(await this.prices.update(db, was, { ...priceOf(dto), asTyped }));
      await audit(db, actor, { action: 'price.update', objectType: WHAT, objectId: id, before: was, after: now });
      await this.staleness.priceChanged(db, actor, was);
      return shown(toResponse(now));
    });
  }

  setArchived(actor: Actor, id: string, ifMatch: string | undefined, archived: boolean): Promise<Reply> {
    return this.database.inTransaction(actor, async (db) => {
      const price = await archive(db, actor, this.prices, { what: WHAT, id, ifMatch, archived });
      await this.staleness.priceChanged(db, actor, price);
      return shown(toResponse(price));
    });
  }

  createRate(actor: Actor, request: Request, body: ExchangeRateDto): Promise<Reply> {
    return this.idempotency.creating(actor, request, async (db) => {
      if (body.from === body.to)
        fail('inputs-contradict', { reason: 'A rate leads from one currency to another.' }, [
          { pointer: '/to', code: 'same-currency', detail: 'Both currencies are the same.' },
        ]);
      const insert = this.prices.insertRate(db, actor.gardenId, newId(), { from: body.from, to: body.to, rate: body.rate, readOn: body.readOn });
      const rate = await nameFree('rate of that day', `${body.from} to ${body.to}`, insert);
      await audit(db, actor, { action: 'exchange-rate.create', objectType: 'exchangeRate', objectId: rate.id, after: rate });
      await this.staleness.rateAdded(db, actor, rate);
      return { status: 201, body: toRateResponse(rate), location: `/v1/exchange-rates/${rate.id}`, etag: etagOfParts(rate.id) };
    });
  }

  async listRates(actor: Actor, query: PageQuery): Promise<Page<RateRecord>> {
    const step = { after: afterOf(query), take: query.limit + 1 };
    const rates = await this.database.readSnapshot(actor, (db) => this.prices.listRates(db, step));
    return toPage(rates.map(toRateResponse), query.limit, (rate) => rate.id, query);
  }

  async findRate(actor: Actor, id: string): Promise<Reply> {
    const rate = must(await this.database.readSnapshot(actor, (db) => this.prices.findRate(db, id)), 'exchange rate');
    return found(toRateResponse(rate), etagOfParts(rate.id));
  }
}
