import { Injectable, type OnModuleInit } from '@nestjs/common';
import { Database, type Db } from '../../platform/database/database.js';
import { FileStore } from '../../platform/files/file-store.js';
import { claimAttempt, finish, giveUp } from '../../platform/jobs/fence.js';
import { Tasks, type Job, type Task, type TellProgress } from '../../platform/jobs/jobs.js';
import type { ProblemBody } from '../../platform/problems/problem.js';
import { ReportClient } from '../../platform/report-client/report-client.js';
import { emit } from '../shared/events.js';
import { DocumentSources } from './document-sources.js';
import { DocumentsRepository } from './documents.repository.js';
import { RENDER_DOCUMENT } from './documents.service.js';

/** A document changes once: from being made to its end. */
const FINISHED = 2;

/** What the task works with, so that its constructor stays short. */
@Injectable()
export class RenderTools {
  constructor(
    readonly documents: DocumentsRepository,
    readonly sources: DocumentSources,
    readonly report: ReportClient,
    readonly files: FileStore,
  ) {}
}

/** Has documents set. Bytes and the end of the row are written together, by the worker that holds the newest attempt. */
@Injectable()
export class RenderDocumentTask implements Task, OnModuleInit {
  constructor(
    private readonly database: Database,
    private readonly tools: RenderTools,
    private readonly tasks: Tasks,
  ) {}

  onModuleInit(): void {
    this.tasks.register(RENDER_DOCUMENT, this);
  }

  async run(job: Job, signal: AbortSignal, tell: TellProgress): Promise<void> {
    const { documents, sources, report, files } = this.tools;
    const attempt = await this.database.inTransaction(job, (db) => claimAttempt(db, 'document', job.id, { state: 'rendering' }));
    if (attempt === null) return;
    tell(attempt, 5, 'collecting');
    const request = await this.database.readSnapshot(job, async (db) => {
      const document = await documents.find(db, job.id);
      return document && sources.requestFor(db, document.planId, document.options);
    });
    if (!request) return;
    tell(attempt, 20, 'rendering');
    const made = await report.make(request, signal);
    tell(attempt, 90, 'storing');
    await this.database.inTransaction(job, async (db) => {
      const file = await files.put(db, job.gardenId, {
        name: `plan-${request.planNumber}-${request.options.paper}-${request.options.units}.pdf`,
        mediaType: 'application/pdf',
        content: made.pdf,
      });
      await finish(db, 'document', job.id, attempt, {
        state: 'ready',
        fileId: file.id,
        sha256: made.sha256,
        pages: made.pages,
        engineVersion: made.engineVersion,
      });
      await emit(db, job.gardenId, { type: 'document.ready', object: 'document', id: job.id, version: FINISHED });
    });
  }

  async failed(job: Job, problem: ProblemBody): Promise<void> {
    await this.database.inTransaction(job, (db) => this.cancel(db, job, problem));
  }

  async cancel(db: Db, job: Job, problem: ProblemBody): Promise<void> {
    if (!(await giveUp(db, 'document', job.id, problem))) return;
    await emit(db, job.gardenId, { type: 'document.failed', object: 'document', id: job.id, version: FINISHED });
  }
}
