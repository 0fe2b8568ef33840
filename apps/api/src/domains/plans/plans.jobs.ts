import { Injectable, type OnModuleInit } from '@nestjs/common';
import { ComputePool, type Computed } from '../../platform/compute/compute-pool.js';
import { resultFaults } from '../../platform/compute/inputs-check.js';
import { Database, type Db } from '../../platform/database/database.js';
import { lockGarden } from '../../platform/database/garden-lock.js';
import { claimAttempt, finish, giveUp } from '../../platform/jobs/fence.js';
import { Tasks, type Job, type Task, type TellProgress } from '../../platform/jobs/jobs.js';
import { Problem, type ProblemBody } from '../../platform/problems/problem.js';
import { emit } from '../shared/events.js';
import { PlansRepository } from './plans.repository.js';
import { COMPUTE_PLAN } from './plans.service.js';
import { StalenessDoor } from './staleness.door.js';

/** Hundredths of the way that one room takes. The rooms differ, and the last part is left for writing. */
const ROOM_SHARE = 7;

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

  async run(job: Job, signal: AbortSignal, tell: TellProgress): Promise<void> {
    const attempt = await this.database.inTransaction(job, (db) => claimAttempt(db, 'planRevision', job.id));
    if (attempt === null) return;
    const inputs = await this.database.readSnapshot(job, (db) => this.plans.inputs(db, job.id));
    if (!inputs) return;
    const computed = checked(await this.compute.compute(inputs, signal, ({ room, doneCount }) => tell(attempt, 5 + ROOM_SHARE * doneCount, room)));
    await this.database.inTransaction(job, async (db) => {
      await lockGarden(db, job.gardenId, 'alone');
      await finish(db, 'planRevision', job.id, attempt, { state: 'ready' });
      await this.plans.insertResult(db, job, attempt, computed);
      await this.staleness.planFinished(db, job, inputs, computed.result);
      await emit(db, job.gardenId, { type: 'plan.ready', object: 'plan', id: job.id, version: await this.staleness.versionOf(db, job.id) });
    });
  }

  async failed(job: Job, problem: ProblemBody): Promise<void> {
    await this.database.inTransaction(job, (db) => this.cancel(db, job, problem));
  }

  async cancel(db: Db, job: Job, problem: ProblemBody): Promise<void> {
    if (!(await giveUp(db, 'planRevision', job.id, problem))) return;
    await emit(db, job.gardenId, { type: 'plan.failed', object: 'plan', id: job.id, version: await this.staleness.versionOf(db, job.id) });
  }
}

// A result that does not fit its own schema would be read by nobody; it is a fault of the calculation, so it is not kept.
const checked = (computed: Computed): Computed => {
  const faults = resultFaults(computed.result);
  if (faults.length > 0) throw new Problem('plan-failed', { reason: 'the calculation gave a result that does not fit its schema' }, faults);
  return computed;
};
