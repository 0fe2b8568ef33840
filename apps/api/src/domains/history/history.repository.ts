import { Injectable } from '@nestjs/common';
import type { Db } from '../../platform/database/database.js';
import type { AuditEntry } from '../../platform/database/generated/client.js';
import type { Step } from '../shared/resource.js';

export interface HistoryEntry {
  id: string;
  at: string;
  /** What people call whoever did it; null when nobody of the garden did (the operator, the server itself). */
  by: string | null;
  memberId: string | null;
  keyId: string | null;
  action: string;
  objectType: string;
  objectId: string;
}

export interface HistoryFilter {
  objectType: string | null;
  objectId: string | null;
}

/** One revision of a plan as the history sees it. */
export interface RevisionInputs {
  planId: string;
  revision: number;
  createdAt: Date;
  createdById: string | null;
  inputs: unknown;
}

interface Names {
  members: Map<string, string>;
  keys: Map<string, string>;
}

const toModel = (row: AuditEntry, names: Names): HistoryEntry => ({
  id: row.id,
  at: row.at.toISOString(),
  by: (row.memberId && names.members.get(row.memberId)) ?? (row.keyId && names.keys.get(row.keyId)) ?? null,
  memberId: row.memberId,
  keyId: row.keyId,
  action: row.action,
  objectType: row.objectType,
  objectId: row.objectId,
});

@Injectable()
export class HistoryRepository {
  async list(db: Db, filter: HistoryFilter, step: Step): Promise<HistoryEntry[]> {
    const rows = await db.auditEntry.findMany({
      where: {
        ...(filter.objectType ? { objectType: filter.objectType } : {}),
        ...(filter.objectId ? { objectId: filter.objectId } : {}),
        ...(step.after ? { id: { gt: step.after } } : {}),
      },
      orderBy: { id: 'asc' },
      take: step.take,
    });
    return this.named(db, rows);
  }

  /** What happened to these objects, or anywhere to objects of these types, within a time. */
  async between(db: Db, about: { ids: readonly string[]; types: readonly string[]; after: Date; until: Date; take: number }): Promise<HistoryEntry[]> {
    const rows = await db.auditEntry.findMany({
      where: { at: { gt: about.after, lte: about.until }, OR: [{ objectId: { in: [...about.ids] } }, { objectType: { in: [...about.types] } }] },
      orderBy: { id: 'asc' },
      take: about.take,
    });
    return this.named(db, rows);
  }

  async revision(db: Db, buildId: string, revision: number): Promise<RevisionInputs | null> {
    const row = await db.planRevision.findFirst({
      where: { buildId, revision },
      select: { id: true, revision: true, createdAt: true, createdById: true, inputs: true },
    });
    return row && { planId: row.id, revision: row.revision, createdAt: row.createdAt, createdById: row.createdById, inputs: row.inputs };
  }

  private async named(db: Db, rows: readonly AuditEntry[]): Promise<HistoryEntry[]> {
    const ids = (of: (row: AuditEntry) => string | null): string[] => [...new Set(rows.flatMap((row) => of(row) ?? []))];
    const members = await db.member.findMany({ where: { id: { in: ids((row) => row.memberId) } }, select: { id: true, name: true } });
    const keys = await db.apiKey.findMany({ where: { id: { in: ids((row) => row.keyId) } }, select: { id: true, name: true } });
    const names = { members: new Map(members.map(({ id, name }) => [id, name])), keys: new Map(keys.map(({ id, name }) => [id, name])) };
    return rows.map((row) => toModel(row, names));
  }
}
