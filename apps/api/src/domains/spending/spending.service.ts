import { Injectable } from '@nestjs/common';
import type { Request } from 'express';
import type { Actor } from '../../platform/access/actor.js';
import { audit } from '../../platform/database/audit.js';
import { Database, type Db } from '../../platform/database/database.js';
import { newId } from '../../platform/database/ids.js';
import { assertMatch } from '../../platform/http/etag.js';
import { afterOf, toPage, type Page } from '../../platform/http/page.js';
import type { Reply } from '../../platform/http/reply.js';
import { Idempotency } from '../../platform/idempotency/idempotency.js';
import { fail, type FieldFault } from '../../platform/problems/problem.js';
import { BuildsRead } from '../builds/builds.read.js';
import { PlansRead } from '../plans/plans.read.js';
import { made, must, mustBeNewest, shown } from '../shared/change.js';
import { toFields, toResponse, type SpendDecisionDto, type SpendListQuery, type SpendRequestDto } from './spending.dto.js';
import { SpendingRepository, type Limits, type SpendFields, type SpendRecord } from './spending.repository.js';

const WHAT = 'spend request';

/** Asking for money, and deciding about it. The two are never one person; the database holds that too. */
@Injectable()
export class SpendingService {
  constructor(
    private readonly database: Database,
    private readonly idempotency: Idempotency,
    private readonly spending: SpendingRepository,
    private readonly builds: BuildsRead,
    private readonly plans: PlansRead,
  ) {}

  create(actor: Actor, request: Request, body: SpendRequestDto): Promise<Reply> {
    return this.idempotency.creating(actor, request, async (db) => {
      const fields = toFields(body);
      await this.mustFit(db, fields);
      const by = { gardenId: actor.gardenId, requestedById: actor.principalId, ownerMemberId: actor.memberId };
      const record = await this.spending.insert(db, by, newId(), fields);
      await audit(db, actor, { action: 'spendRequest.create', objectType: 'spendRequest', objectId: record.id, after: record });
      return made('/v1/spending', toResponse(record));
    });
  }

  async list(actor: Actor, query: SpendListQuery): Promise<Page<SpendRecord>> {
    const step = { after: afterOf(query), take: query.limit + 1 };
    const filter = { state: query.state ?? null, buildId: query.buildId ?? null };
    const records = await this.database.readSnapshot(actor, (db) => this.spending.list(db, filter, step));
    return toPage(records.map(toResponse), query.limit, (record) => record.id, query);
  }

  async find(actor: Actor, id: string): Promise<Reply> {
    return shown(toResponse(must(await this.database.readSnapshot(actor, (db) => this.spending.find(db, id)), WHAT)));
  }

  withdraw(actor: Actor, id: string, ifMatch: string | undefined): Promise<Reply> {
    return this.database.inTransaction(actor, async (db) => {
      const was = await this.waiting(db, id, ifMatch);
      if (was.requestedById !== actor.principalId) fail('not-yours');
      return this.end(db, actor, was, { state: 'withdrawn', decidedById: null, decidedAt: null, remark: null });
    });
  }

  decide(actor: Actor, id: string, ifMatch: string | undefined, body: SpendDecisionDto): Promise<Reply> {
    return this.database.inTransaction(actor, async (db) => {
      const was = await this.waiting(db, id, ifMatch);
      if (was.requestedById === actor.principalId) fail('own-request');
      if (body.decision === 'approved') mustBeWithin(was, limitOf(actor, must(await this.spending.limits(db), 'garden')));
      return this.end(db, actor, was, { state: body.decision, decidedById: actor.principalId, decidedAt: new Date(), remark: body.remark ?? null });
    });
  }

  private async waiting(db: Db, id: string, ifMatch: string | undefined): Promise<SpendRecord> {
    const was = must(await this.spending.find(db, id), WHAT);
    assertMatch(ifMatch, was);
    if (was.state !== 'submitted') fail('already-decided', { state: was.state });
    return was;
  }

  private async end(db: Db, actor: Actor, was: SpendRecord, to: Parameters<SpendingRepository['end']>[2]): Promise<Reply> {
    const now = mustBeNewest(await this.spending.end(db, was, to));
    await audit(db, actor, { action: `spendRequest.${to.state}`, objectType: 'spendRequest', objectId: was.id, before: was, after: now });
    return shown(toResponse(now));
  }

  private async mustFit(db: Db, { buildId, planId }: SpendFields): Promise<void> {
    const faults: FieldFault[] = [];
    const absent = (pointer: string, what: string): void =>
      void faults.push({ pointer, code: 'not-found', detail: `There is no such ${what} in this garden.` });
    if (buildId !== null && !(await this.builds.exists(db, buildId))) absent('/buildId', 'build');
    if (planId !== null && !(await this.plans.exists(db, planId))) absent('/planId', 'plan');
    if (faults.length > 0) fail('validation-failed', { count: faults.length }, faults);
  }
}

/** The widest limit of the roles; null: one of them has none. */
const limitOf = ({ roles }: Actor, limits: Limits): { currency: string; minor: number | null } => {
  const mine = [...(roles.includes('coordinator') ? [limits.coordinatorMinor] : []), ...(roles.includes('treasurer') ? [limits.treasurerMinor] : [])];
  return { currency: limits.currency, minor: mine.includes(null) ? null : Math.max(0, ...mine.map(Number)) };
};

// A limit in one currency says nothing of an amount in another; nobody guesses a rate here.
const mustBeWithin = ({ amount }: SpendRecord, limit: { currency: string; minor: number | null }): void => {
  if (limit.minor === null) return;
  if (amount.currency !== limit.currency || amount.minor > limit.minor) fail('over-limit', { limitMinor: limit.minor, currency: limit.currency });
};
