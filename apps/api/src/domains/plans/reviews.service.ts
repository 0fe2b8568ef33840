import { Injectable } from '@nestjs/common';
import type { Request } from 'express';
import type { Actor } from '../../platform/access/actor.js';
import { audit } from '../../platform/database/audit.js';
import { Database, type Db } from '../../platform/database/database.js';
import { newId } from '../../platform/database/ids.js';
import { etagOfParts } from '../../platform/http/etag.js';
import { afterOf, toPage, type Page, type PageQuery } from '../../platform/http/page.js';
import { collectAsTyped } from '../../platform/http/quantity-field.js';
import type { Reply } from '../../platform/http/reply.js';
import { Idempotency } from '../../platform/idempotency/idempotency.js';
import { fail } from '../../platform/problems/problem.js';
import { must } from '../shared/change.js';
import { toAsBuiltResponse, toReviewResponse, type AsBuiltDto, type ReviewDto } from './plans.dto.js';
import { PlansRepository, type AsBuiltRecord, type PlanRecord } from './plans.repository.js';

/** What is said about a finished plan afterwards. Each is a record of its own beside the revision, which stays as it is. */
@Injectable()
export class ReviewsService {
  constructor(
    private readonly database: Database,
    private readonly idempotency: Idempotency,
    private readonly plans: PlansRepository,
  ) {}

  review(actor: Actor, request: Request, planId: string, body: ReviewDto): Promise<Reply> {
    return this.idempotency.creating(actor, request, async (db) => {
      const plan = await this.finished(db, planId);
      if (plan.createdById === actor.principalId) fail('own-review');
      if (body.decision === 'reviewed') await this.mustNotBeBlocked(db, planId);
      const review = await this.plans.insertReview(db, actor.gardenId, newId(), planId, actor.principalId, {
        decision: body.decision,
        reviewer: body.reviewer,
        comment: body.comment ?? null,
      });
      await audit(db, actor, { action: 'plan.review', objectType: 'plan', objectId: planId, after: { decision: review.decision } });
      return { status: 201, body: toReviewResponse(review), location: `/v1/plans/${planId}`, etag: etagOfParts(review.id) };
    });
  }

  recordAsBuilt(actor: Actor, request: Request, planId: string, body: AsBuiltDto): Promise<Reply> {
    return this.idempotency.creating(actor, request, async (db) => {
      await this.finished(db, planId);
      const fields = {
        observedOn: body.observedOn,
        measures: body.measures.map(({ subject, lengthM, pulledToN, remark }) => ({ subject, lengthM, pulledToN, remark })),
        remark: body.remark ?? null,
        asTyped: collectAsTyped(request.body, body),
      };
      const asBuilt = await this.plans.insertAsBuilt(db, actor.gardenId, newId(), planId, actor.principalId, fields);
      await audit(db, actor, { action: 'plan.as-built', objectType: 'plan', objectId: planId, after: fields });
      return { status: 201, body: toAsBuiltResponse(asBuilt), location: `/v1/plans/${planId}/as-built`, etag: etagOfParts(asBuilt.id) };
    });
  }

  async listAsBuilt(actor: Actor, planId: string, query: PageQuery): Promise<Page<AsBuiltRecord>> {
    const step = { after: afterOf(query), take: query.limit + 1 };
    const records = await this.database.readSnapshot(actor, async (db) => {
      must(await this.plans.find(db, planId), 'plan');
      return this.plans.listAsBuilt(db, planId, step);
    });
    return toPage(records.map(toAsBuiltResponse), query.limit, (record) => record.id, query);
  }

  private async finished(db: Db, planId: string): Promise<PlanRecord> {
    const plan = must(await this.plans.find(db, planId), 'plan');
    if (plan.state !== 'ready') fail('plan-not-ready', { state: plan.state });
    return plan;
  }

  // A note of severity "stop" needs an answer in the inputs; a signature cannot stand in for it.
  private async mustNotBeBlocked(db: Db, planId: string): Promise<void> {
    const result = must(await this.plans.result(db, planId), 'plan result');
    if (!result.reviewBlocked) return;
    const stops = result.notes.flatMap((note, i) =>
      note.severity === 'stop'
        ? [{ pointer: `/notes/${i}`, code: note.code, detail: note.subject ? `About ${note.subject}.` : 'A note of the plan that must be answered.' }]
        : [],
    );
    fail('review-blocked', { count: stops.length }, stops);
  }
}
