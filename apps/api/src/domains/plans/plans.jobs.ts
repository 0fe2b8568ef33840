import { Injectable, type OnModuleInit } from '@nestjs/common';
import { ComputePool, type Computed } from '../../platform/compute/compute-pool.js';
import { resultFaults } from '../../platform/compute/inputs-check.js';
import { Database } from '../../platform/database/database.js';
import { lockGarden } from '../../platform/database/garden-lock.js';
import { claimAttempt, finish, giveUp } from '../../platform/jobs/fence.js';
import { Tasks, type Job, type Task } from '../../platform/jobs/jobs.js';
import { Problem, type ProblemBody } from '../../platform/problems/problem.js';
import { PlansRepository } from './plans.repository.js';
import { COMPUTE_PLAN } from './plans.service.js';
import { StalenessDoor } from './staleness.door.js';

/** Computes plans. The result is written once, by the worker that holds the newest attempt, together with the end of the row. */
@Injectable()
export class ComputePlanTask implements Task, OnModuleInit {
  constructor(
    private readonly database: Database,
    private readonly plans: PlansRepository,
    private readonly compute: ComputePool,
    private readonly tasks: Tasks,
    private readonly staleness: StalenessDoor,
  ) {}

  onModuleInit(): void {
    this.tasks.register(COMPUTE_PLAN, this);
  }

  async run(job: Job, signal: AbortSignal): Promise<void> {
    const attempt = await this.database.inTransaction(job, (db) => claimAttempt(db, 'planRevision', job.id));
    if (attempt === null) return;
    const inputs = await this.database.readSnapshot(job, (db) => this.plans.inputs(db, job.id));
    if (!inputs) return;
    const computed = checked(await this.compute.compute(inputs, signal));
    await this.database.inTransaction(job, async (db) => {
      await lockGarden(db, job.gardenId, 'alone');
      await finish(db, 'planRevision', job.id, attempt, { state: 'ready' });
      await this.plans.insertResult(db, job, attempt, computed);
      await this.staleness.planFinished(db, job, inputs, computed.result);
    });
  }

  async failed(job: Job, problem: ProblemBody): Promise<void> {
    await this.database.inTransaction(job, (db) => giveUp(db, 'planRevision', job.id, problem));
  }
}

// A result that does not fit its own schema would be read by nobody; it is a fault of the calculation, so it is not kept.
const checked = (computed: Computed): Computed => {
  const faults = resultFaults(computed.result);
  if (faults.length > 0) throw new Problem('plan-failed', { reason: 'the calculation gave a result that does not fit its schema' }, faults);
  return computed;
};
