import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/access/actor.js';
import { audit } from '../../platform/database/audit.js';
import { Database } from '../../platform/database/database.js';
import { afterOf, toPage, type Page } from '../../platform/http/page.js';
import { found, type Reply } from '../../platform/http/reply.js';
import { failJob } from '../../platform/jobs/job-rows.js';
import { Tasks } from '../../platform/jobs/jobs.js';
import { fail, Problem } from '../../platform/problems/problem.js';
import { must } from '../shared/change.js';
import { etagOfJob, toResponse, type JobListQuery, type JobResponse } from './jobs.dto.js';
import { JobsRepository, type JobRecord } from './jobs.repository.js';

const WHAT = 'job';

@Injectable()
export class JobsService {
  constructor(
    private readonly database: Database,
    private readonly jobs: JobsRepository,
    private readonly tasks: Tasks,
  ) {}

  async list(actor: Actor, query: JobListQuery): Promise<Page<JobResponse>> {
    const step = { after: afterOf(query), take: query.limit + 1 };
    const jobs = await this.database.readSnapshot(actor, (db) => this.jobs.list(db, { state: query.state ?? null }, step));
    return toPage(jobs.map(toResponse), query.limit, (job) => job.id, query);
  }

  async find(actor: Actor, id: string): Promise<Reply> {
    return shown(await this.read(actor, id));
  }

  /** Calls a job off. Done twice, or too late, it changes nothing and shows how the job ended. */
  async cancel(actor: Actor, id: string): Promise<Reply> {
    const job = await this.read(actor, id);
    if (actor.reach === 'own' && job.createdById !== actor.principalId) fail('not-your-job');
    if (job.finishedAt === null) await this.end(actor, job);
    return shown(await this.read(actor, id));
  }

  private async read(actor: Actor, id: string): Promise<JobRecord> {
    return must(await this.database.readSnapshot(actor, (db) => this.jobs.find(db, id)), WHAT);
  }

  // The row that the job makes, the job and the audit end together. A worker that still has it finds the row finished.
  private async end(actor: Actor, job: JobRecord): Promise<void> {
    const problem = new Problem('job-cancelled').toBody();
    const at = { gardenId: actor.gardenId, id: job.id };
    const task = this.tasks.all().get(job.kind);
    const ended = await this.database.inTransaction(at, async (db) => {
      await this.jobs.cancelAlone(db, job.id);
      if (must(await this.jobs.find(db, job.id), WHAT).finishedAt !== null) return false;
      await task?.cancel?.(db, at, problem);
      await failJob(db, job.id, problem);
      const now = must(await this.jobs.find(db, job.id), WHAT);
      if (now.state !== 'cancelled') return false;
      await audit(db, actor, { action: 'job.cancel', objectType: WHAT, objectId: job.id, before: { state: job.state }, after: { state: now.state } });
      return true;
    });
    if (ended && task && !task.cancel) await task.failed(at, problem);
  }
}

const shown = (job: JobRecord): Reply => found(toResponse(job), etagOfJob(job));
