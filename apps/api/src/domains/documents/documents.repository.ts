import type { DocumentOptions } from '@lathwork/model';
import { Injectable } from '@nestjs/common';
import type { Db } from '../../platform/database/database.js';
import type { Document } from '../../platform/database/generated/client.js';
import type { ProblemBody } from '../../platform/problems/problem.js';
import type { Step } from '../shared/resource.js';

export type DocumentState = 'queued' | 'rendering' | 'ready' | 'failed';

export interface DocumentRecord {
  id: string;
  planId: string;
  state: DocumentState;
  options: DocumentOptions;
  sha256: string | null;
  pages: number | null;
  engineVersion: string | null;
  fileId: string | null;
  problem: ProblemBody | null;
  createdAt: string;
  startedAt: string | null;
  finishedAt: string | null;
}

const toModel = (row: Document): DocumentRecord => ({
  id: row.id,
  planId: row.planId,
  state: row.state as DocumentState,
  options: row.options as unknown as DocumentOptions,
  sha256: row.sha256,
  pages: row.pages,
  engineVersion: row.engineVersion,
  fileId: row.fileId,
  problem: row.problem as unknown as ProblemBody | null,
  createdAt: row.createdAt.toISOString(),
  startedAt: row.startedAt?.toISOString() ?? null,
  finishedAt: row.finishedAt?.toISOString() ?? null,
});

@Injectable()
export class DocumentsRepository {
  async insert(db: Db, gardenId: string, id: string, principalId: string, planId: string, options: DocumentOptions): Promise<DocumentRecord> {
    return toModel(await db.document.create({ data: { gardenId, id, planId, options: options as object, createdById: principalId } }));
  }

  async find(db: Db, id: string): Promise<DocumentRecord | null> {
    const row = await db.document.findFirst({ where: { id } });
    return row && toModel(row);
  }

  async list(db: Db, planId: string | null, step: Step): Promise<DocumentRecord[]> {
    const rows = await db.document.findMany({
      where: { ...(planId ? { planId } : {}), ...(step.after ? { id: { gt: step.after } } : {}) },
      orderBy: { id: 'asc' },
      take: step.take,
    });
    return rows.map(toModel);
  }
}
