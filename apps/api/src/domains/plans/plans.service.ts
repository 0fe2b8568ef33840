import type { PlanInputs } from '@lathwork/model';
import { Inject, Injectable } from '@nestjs/common';
import type { Request } from 'express';
import type { Actor } from '../../platform/access/actor.js';
import { CONFIG, type Config } from '../../platform/config/config.js';
import { audit } from '../../platform/database/audit.js';
import { Database, type Db } from '../../platform/database/database.js';
import { lockGarden } from '../../platform/database/garden-lock.js';
import { newId } from '../../platform/database/ids.js';
import { etagOfParts } from '../../platform/http/etag.js';
import { afterOf, toPage, type Page } from '../../platform/http/page.js';
import { found, reply, Reply } from '../../platform/http/reply.js';
import { Idempotency } from '../../platform/idempotency/idempotency.js';
import { enqueueInTurn } from '../../platform/jobs/jobs.js';
import { fail } from '../../platform/problems/problem.js';
import { must } from '../shared/change.js';
import { monitored } from '../shared/monitored.js';
import { waitedFor, waitUntil } from '../shared/prefer.js';
import { checkInputs, PlanInputsReader, seedOf, type CollectedInputs } from './plan-inputs.js';
import { etagOfPlan, toResponse, type PlanDto, type PlanListQuery, type PlanResponse } from './plans.dto.js';
import { PlansRepository, type PlanRecord } from './plans.repository.js';

export const COMPUTE_PLAN = 'compute-plan';
const WHAT = 'plan';
const RETRY_AFTER = { 'Retry-After': '1' };

@Injectable()
export class PlansService {
  constructor(
    private readonly database: Database,
    private readonly idempotency: Idempotency,
    private readonly plans: PlansRepository,
    private readonly reader: PlanInputsReader,
    @Inject(CONFIG) private readonly config: Config,
  ) {}

  async create(actor: Actor, request: Request, body: PlanDto): Promise<Reply> {
    const accepted = await this.idempotency.creating(actor, request, async (db) => {
      // Nothing that a plan is made of changes between the first read and the end of the transaction: see StalenessDoor.
      await lockGarden(db, actor.gardenId, 'alone');
      const plan = await this.insert(db, actor, await this.reader.collect(db, actor.gardenId, body.buildId, body.asOf ?? null));
      await enqueueInTurn(db, COMPUTE_PLAN, { gardenId: actor.gardenId, id: plan.id }, this.config.jobQuota);
      return { status: 202, body: toResponse(plan, null), location: `/v1/plans/${plan.id}`, etag: etagOfPlan(plan) };
    });
    return monitored(await this.afterWait(actor, request, accepted));
  }

  async list(actor: Actor, query: PlanListQuery): Promise<Page<PlanResponse>> {
    const step = { after: afterOf(query), take: query.limit + 1 };
    const plans = await this.database.readOnce(actor, (db) => this.plans.list(db, query.buildId ?? null, step));
    return toPage(
      plans.map((plan) => toResponse(plan, null)),
      query.limit,
      (plan) => plan.id,
      query,
    );
  }

  async find(actor: Actor, id: string): Promise<Reply> {
    const { plan, reviewBlocked } = await this.read(actor, id);
    return found(toResponse(plan, reviewBlocked), etagOfPlan(plan));
  }

  async result(actor: Actor, id: string): Promise<Reply> {
    const { state, text, schemaVersion, engineVersion } = must(await this.database.readOnce(actor, (db) => this.plans.resultText(db, id)), WHAT);
    if (text === null) return fail('plan-not-ready', { state });
    // The text goes out as it is stored; reading it into objects first would only cost time.
    return new Reply({ status: 200, etag: etagOfParts(id, schemaVersion ?? 0, engineVersion ?? '') }, text);
  }

  async inputs(actor: Actor, id: string): Promise<Reply> {
    const { plan, inputs } = await this.database.readSnapshot(actor, async (db) => ({
      plan: must(await this.plans.find(db, id), WHAT),
      inputs: must(await this.plans.inputs(db, id), WHAT),
    }));
    return found(inputs, etagOfParts(plan.id, plan.inputsSha256.slice(0, 16)));
  }

  private read(actor: Actor, id: string): Promise<{ plan: PlanRecord; reviewBlocked: boolean | null }> {
    return this.database.readOnce(actor, async (db) => must(await this.plans.findReviewable(db, id), WHAT));
  }

  private async insert(db: Db, actor: Actor, collected: CollectedInputs): Promise<PlanRecord> {
    const revision = await this.plans.nextRevision(db, collected.buildId);
    // Made while the garden is held alone, so that a list by id is in the order of the revisions.
    const planId = newId();
    const inputs: PlanInputs = checkInputs({ ...collected, planId, revision, seed: seedOf(planId) });
    const plan = await this.plans.insert(db, actor.principalId, inputs);
    await audit(db, actor, { action: 'plan.create', objectType: WHAT, objectId: planId, after: { inputsSha256: plan.inputsSha256 } });
    return plan;
  }

  /** `Prefer: wait=10` holds the answer back until the plan is finished, or the wait is over. */
  private async afterWait(actor: Actor, request: Request, accepted: Reply): Promise<Reply> {
    const waitMs = waitedFor(request, this.config.waitLimitMs);
    const id = accepted.answer.location?.split('/').at(-1);
    if (waitMs === null || id === undefined) return accepted;
    const done = await waitUntil(waitMs, () => this.database.readSnapshot(actor, async (db) => (await this.plans.state(db, id)) !== 'computing'));
    const { plan, reviewBlocked } = await this.read(actor, id);
    const applied = { 'Preference-Applied': `wait=${waitMs / 1000}` };
    return reply(
      { status: done ? 201 : 202, body: toResponse(plan, reviewBlocked), location: `/v1/plans/${id}`, etag: etagOfPlan(plan) },
      done ? applied : { ...applied, ...RETRY_AFTER },
    );
  }
}
