import { Injectable } from '@nestjs/common';
import type { Db } from '../../platform/database/database.js';
import type { GardenExport } from '../../platform/database/generated/client.js';
import type { ProblemBody } from '../../platform/problems/problem.js';
import type { Step } from '../shared/resource.js';

export type ExportState = 'queued' | 'packing' | 'ready' | 'failed';

export interface ExportRecord {
  id: string;
  state: ExportState;
  withFiles: boolean;
  fileId: string | null;
  sha256: string | null;
  byteCount: number | null;
  problem: ProblemBody | null;
  createdAt: string;
  startedAt: string | null;
  finishedAt: string | null;
  expiresAt: string | null;
}

const toModel = (row: GardenExport): ExportRecord => ({
  id: row.id,
  state: row.state as ExportState,
  withFiles: row.withFiles,
  fileId: row.fileId,
  sha256: row.sha256,
  byteCount: row.byteCount,
  problem: row.problem as unknown as ProblemBody | null,
  createdAt: row.createdAt.toISOString(),
  startedAt: row.startedAt?.toISOString() ?? null,
  finishedAt: row.finishedAt?.toISOString() ?? null,
  expiresAt: row.expiresAt?.toISOString() ?? null,
});

@Injectable()
export class GardenExportsRepository {
  async insert(db: Db, gardenId: string, id: string, principalId: string, withFiles: boolean): Promise<ExportRecord> {
    return toModel(await db.gardenExport.create({ data: { gardenId, id, withFiles, createdById: principalId } }));
  }

  async find(db: Db, id: string): Promise<ExportRecord | null> {
    const row = await db.gardenExport.findFirst({ where: { id } });
    return row && toModel(row);
  }

  async list(db: Db, step: Step): Promise<ExportRecord[]> {
    const rows = await db.gardenExport.findMany({ where: step.after ? { id: { gt: step.after } } : {}, orderBy: { id: 'asc' }, take: step.take });
    return rows.map(toModel);
  }

  /** Gives up the files whose time is over, and tells which. */
  async releaseOld(db: Db, now: Date): Promise<string[]> {
    const old = { fileId: { not: null }, expiresAt: { lte: now } };
    const rows = await db.gardenExport.findMany({ where: old, select: { id: true, fileId: true } });
    await db.gardenExport.updateMany({ where: { id: { in: rows.map(({ id }) => id) } }, data: { fileId: null } });
    return rows.flatMap(({ fileId }) => (fileId === null ? [] : [fileId]));
  }
}
