import { Injectable } from '@nestjs/common';
import type { Request } from 'express';
import type { Actor } from '../../platform/access/actor.js';
import { audit } from '../../platform/database/audit.js';
import { Database, type Db } from '../../platform/database/database.js';
import { newId } from '../../platform/database/ids.js';
import { etagOfParts } from '../../platform/http/etag.js';
import { afterOf, toPage, type Page, type PageQuery } from '../../platform/http/page.js';
import { found, type Reply } from '../../platform/http/reply.js';
import { Idempotency } from '../../platform/idempotency/idempotency.js';
import { fail, Problem } from '../../platform/problems/problem.js';
import { BuildsRead } from '../builds/builds.read.js';
import { StalenessDoor } from '../plans/staleness.door.js';
import { must, mustNotBeArchived } from '../shared/change.js';
import { emit } from '../shared/events.js';
import { toClaimResponse, type ClaimDto, type ClaimResponse } from './stock.dto.js';
import { StockRepository, type StockRecord } from './stock.repository.js';

const MOST_ALTERNATIVES = 5;
const LOOKED_AT = 500;

@Injectable()
export class ClaimsService {
  constructor(
    private readonly database: Database,
    private readonly idempotency: Idempotency,
    private readonly stock: StockRepository,
    private readonly builds: BuildsRead,
    private readonly staleness: StalenessDoor,
  ) {}

  claim(actor: Actor, request: Request, buildId: string, body: ClaimDto): Promise<Reply> {
    return this.idempotency.creating(actor, request, async (db) => {
      await this.builds.mustBeActive(db, buildId);
      const item = must(await this.stock.lockByTag(db, body.tag), 'stock item');
      mustNotBeArchived(item, 'stock item');
      if (item.grade === 'X') fail('conflict', { reason: `The item ${item.tag} is graded X: it is not for building with.` });
      const count = body.count ?? Math.max(item.freeCount, 1);
      if (count > item.freeCount) throw await this.refusal(db, item);
      const claim = await this.stock.insertClaim(db, actor.gardenId, newId(), { buildId, item, count });
      await audit(db, actor, { action: 'claim.create', objectType: 'claim', objectId: claim.id, after: claim });
      await this.staleness.claimsChanged(db, actor, buildId, item.tag);
      await emit(db, actor.gardenId, { type: 'stock.claimed', object: 'claim', id: claim.id, version: 1 });
      return { status: 201, body: toClaimResponse(claim), location: `/v1/builds/${buildId}/claims/${claim.id}`, etag: etagOfParts(claim.id, claim.count) };
    });
  }

  async list(actor: Actor, buildId: string, query: PageQuery): Promise<Page<ClaimResponse>> {
    const step = { after: afterOf(query), take: query.limit + 1 };
    const claims = await this.database.readSnapshot(actor, async (db) => {
      await this.builds.mustExist(db, buildId);
      return this.stock.activeClaims(db, { buildId }, step);
    });
    return toPage(claims.map(toClaimResponse), query.limit, (claim) => claim.id, query);
  }

  async find(actor: Actor, buildId: string, claimId: string): Promise<Reply> {
    const claim = await this.database.readSnapshot(actor, async (db) => {
      await this.builds.mustExist(db, buildId);
      return must(await this.stock.findClaim(db, buildId, claimId), 'claim');
    });
    return found(toClaimResponse(claim), etagOfParts(claim.id, claim.count));
  }

  async release(actor: Actor, buildId: string, claimId: string): Promise<void> {
    await this.database.inTransaction(actor, async (db) => {
      await this.builds.mustExist(db, buildId);
      const claim = must(await this.stock.findClaim(db, buildId, claimId), 'claim');
      if (!(await this.stock.release(db, claim.id))) return;
      await audit(db, actor, { action: 'claim.release', objectType: 'claim', objectId: claim.id, before: claim });
      await this.staleness.claimsChanged(db, actor, buildId, claim.tag);
      // A claim changes once in its life.
      await emit(db, actor.gardenId, { type: 'stock.released', object: 'claim', id: claim.id, version: 2 });
    });
  }

  /** Who holds it, since when, and what else of the kind and near its size is free. */
  private async refusal(db: Db, item: StockRecord): Promise<Problem> {
    const holders = await this.stock.activeClaims(db, { stockItemId: item.id });
    const alternatives = (await this.stock.freeOfKind(db, item.kind, LOOKED_AT))
      .filter(({ id }) => id !== item.id)
      .sort((a, b) => unlikeness(a, item) - unlikeness(b, item))
      .slice(0, MOST_ALTERNATIVES);
    return new Problem(
      item.count === 1 ? 'stock-claimed' : 'stock-short',
      { tag: item.tag, left: item.freeCount },
      [],
      {},
      {
        holders: holders.slice(0, 20).map((claim) => ({ buildId: claim.buildId, count: claim.count, since: claim.createdAt })),
        freeCount: item.freeCount,
        alternatives: alternatives.map((other) => ({
          tag: other.tag,
          grade: other.grade,
          widthMm: other.widthMm,
          heightMm: other.heightMm,
          lengthMm: other.lengthMm,
          freeCount: other.freeCount,
        })),
      },
    );
  }
}

/** Sum of the relative differences of the sizes that both have; a size that only one has counts as quite different. */
const unlikeness = (one: StockRecord, other: StockRecord): number =>
  (['widthMm', 'heightMm', 'lengthMm'] as const)
    .map((size) => [one[size], other[size]] as const)
    .reduce((sum, [a, b]) => sum + (a === null && b === null ? 0 : a === null || b === null ? 1 : Math.abs(a - b) / Math.max(a, b)), 0);
