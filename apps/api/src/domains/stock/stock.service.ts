import { Injectable } from '@nestjs/common';
import type { Request } from 'express';
import type { Actor } from '../../platform/access/actor.js';
import { audit } from '../../platform/database/audit.js';
import { Database, type Db } from '../../platform/database/database.js';
import { newId } from '../../platform/database/ids.js';
import { assertMatch, etagOf, etagOfParts } from '../../platform/http/etag.js';
import { afterOf, toPage, type Page } from '../../platform/http/page.js';
import { collectAsTyped, type AsTyped } from '../../platform/http/quantity-field.js';
import { found, type Reply } from '../../platform/http/reply.js';
import { Idempotency } from '../../platform/idempotency/idempotency.js';
import { fail } from '../../platform/problems/problem.js';
import { StalenessDoor } from '../plans/staleness.door.js';
import { archive, made, must, mustBeNewest, mustNotBeArchived, nameFree, patched, shown } from '../shared/change.js';
import { Donors, seesDonors } from './donors.js';
import { StockItemDto, thingOf, toResponse, type StockIntakeDto, type StockListQuery, type StockResponse } from './stock.dto.js';
import { StockRepository, type ClaimRecord, type StockRecord } from './stock.repository.js';

const WHAT = 'stock item';

@Injectable()
export class StockService {
  constructor(
    private readonly database: Database,
    private readonly idempotency: Idempotency,
    private readonly stock: StockRepository,
    private readonly staleness: StalenessDoor,
    private readonly donors: Donors,
  ) {}

  create(actor: Actor, request: Request, body: StockItemDto): Promise<Reply> {
    return this.idempotency.creating(actor, request, async (db) =>
      made('/v1/stock', this.view(actor, await this.takeIn(db, actor, body, collectAsTyped(request.body, body)))),
    );
  }

  /** All of the things are taken in, or none. */
  createMany(actor: Actor, request: Request, body: StockIntakeDto): Promise<Reply> {
    return this.idempotency.creating(actor, request, async (db) => {
      const sent = (request.body as { items: unknown[] }).items;
      const items: StockResponse[] = [];
      for (const [i, item] of body.items.entries()) items.push(this.view(actor, await this.takeIn(db, actor, item, collectAsTyped(sent[i], item))));
      return { status: 201, body: { items } };
    });
  }

  async list(actor: Actor, query: StockListQuery): Promise<Page<StockResponse>> {
    const step = { after: afterOf(query), take: query.limit + 1 };
    const filter = { archived: query.archived ?? false, kind: query.kind ?? null, grade: query.grade ?? null, free: query.free ?? null };
    const items = await this.database.readSnapshot(actor, (db) => this.stock.list(db, filter, step));
    return toPage(
      items.map((item) => this.view(actor, item)),
      query.limit,
      (item) => item.id,
      query,
    );
  }

  async find(actor: Actor, id: string): Promise<Reply> {
    const item = must(await this.database.readSnapshot(actor, (db) => this.stock.find(db, id)), WHAT);
    const hidden = item.donorSealed !== null && !seesDonors(actor);
    // Without the donor it is another answer than with it, and a cache must not mix them up.
    return found(this.view(actor, item), hidden ? etagOfParts(item.version, 'plain') : etagOf(item));
  }

  change(actor: Actor, id: string, ifMatch: string | undefined, patch: unknown): Promise<Reply> {
    return this.database.inTransaction(actor, async (db) => {
      const was = must(await this.stock.find(db, id), WHAT);
      assertMatch(ifMatch, was);
      mustNotBeArchived(was, WHAT);
      const { dto, asTyped } = patched(StockItemDto, { ...thingOf(was), donor: this.donors.open(was) }, was.asTyped, patch);
      // A thing that is given up goes back from every build that held it.
      const released = dto.grade === 'X' ? await this.releaseAll(db, actor, was) : [];
      const claimed = was.count - was.freeCount - released.reduce((sum, { count }) => sum + count, 0);
      if (dto.count < claimed) fail('in-use', { what: WHAT, by: `claims on ${claimed} of it` });
      const now = mustBeNewest(
        await nameFree(WHAT, dto.tag, this.stock.update(db, was, { ...thingOf(dto), asTyped, donorSealed: this.donors.seal(id, dto.donor) })),
      );
      await audit(db, actor, { action: 'stock.update', objectType: 'stockItem', objectId: id, before: was, after: now });
      // Plans are marked after the last row is written: see lockGarden.
      for (const { buildId } of released) await this.staleness.claimsChanged(db, actor, buildId, was.tag);
      await this.staleness.stockChanged(db, actor, was);
      return shown(this.view(actor, now));
    });
  }

  setArchived(actor: Actor, id: string, ifMatch: string | undefined, archived: boolean): Promise<Reply> {
    return this.database.inTransaction(actor, async (db) => {
      const was = must(await this.stock.find(db, id), WHAT);
      if (archived && was.freeCount < was.count) fail('in-use', { what: WHAT, by: 'a build that has claimed it' });
      const now = await archive(db, actor, this.stock, { what: WHAT, id, ifMatch, archived });
      await this.staleness.stockChanged(db, actor, now);
      return shown(this.view(actor, now));
    });
  }

  private async takeIn(db: Db, actor: Actor, item: StockItemDto, asTyped: AsTyped): Promise<StockRecord> {
    const id = newId();
    const fields = { ...thingOf(item), asTyped, donorSealed: this.donors.seal(id, item.donor) };
    const taken = await nameFree(WHAT, item.tag, this.stock.insert(db, actor.gardenId, id, fields));
    await audit(db, actor, { action: 'stock.create', objectType: 'stockItem', objectId: taken.id, after: taken });
    return taken;
  }

  private view(actor: Actor, item: StockRecord): StockResponse {
    return toResponse(item, seesDonors(actor) ? this.donors.open(item) : null);
  }

  private async releaseAll(db: Db, actor: Actor, item: StockRecord): Promise<ClaimRecord[]> {
    const claims = await this.stock.activeClaims(db, { stockItemId: item.id });
    for (const claim of claims) {
      await this.stock.release(db, claim.id);
      await audit(db, actor, { action: 'claim.release', objectType: 'claim', objectId: claim.id, before: claim });
    }
    return claims;
  }
}
