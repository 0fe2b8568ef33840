import type { PlanInputs, PlanResult } from '@lathwork/model';
import { Injectable } from '@nestjs/common';
import type { Db } from '../../platform/database/database.js';
import { fail } from '../../platform/problems/problem.js';
import { must } from '../shared/change.js';
import { PlansRepository, type PlanRecord } from './plans.repository.js';

export interface FinishedPlan {
  plan: PlanRecord;
  inputs: PlanInputs;
  result: PlanResult;
}

/** What other domains may ask about plans. */
@Injectable()
export class PlansRead {
  constructor(private readonly plans: PlansRepository) {}

  async exists(db: Db, planId: string): Promise<boolean> {
    return (await this.plans.state(db, planId)) !== null;
  }

  async mustBeReady(db: Db, planId: string): Promise<PlanRecord> {
    const plan = must(await this.plans.find(db, planId), 'plan');
    if (plan.state !== 'ready') fail('plan-not-ready', { state: plan.state });
    return plan;
  }

  async finished(db: Db, planId: string): Promise<FinishedPlan> {
    const plan = await this.mustBeReady(db, planId);
    return { plan, inputs: must(await this.plans.inputs(db, planId), 'plan'), result: must(await this.plans.result(db, planId), 'plan result') };
  }
}
