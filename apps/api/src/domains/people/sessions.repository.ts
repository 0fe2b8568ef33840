import { Injectable } from '@nestjs/common';
import { makeSessionToken } from '../../platform/access/key.js';
import type { Db } from '../../platform/database/database.js';
import { newId } from '../../platform/database/ids.js';
import type { Step } from '../shared/resource.js';

export interface SessionRecord {
  id: string;
  label: string;
  createdAt: string;
  lastSeenAt: string;
  expiresAt: string;
}

export interface OpenedSession extends SessionRecord {
  /** Shown once, kept as a hash. */
  token: string;
}

@Injectable()
export class SessionsRepository {
  async open(db: Db, accountId: string, label: string, expiresAt: Date): Promise<OpenedSession> {
    const { key, sha256 } = makeSessionToken();
    const id = newId();
    const now = new Date();
    await db.accountSession.createMany({
      data: [{ accountId, id, tokenSha256: new Uint8Array(sha256), label, createdAt: now, lastSeenAt: now, expiresAt }],
    });
    return { id, label, createdAt: now.toISOString(), lastSeenAt: now.toISOString(), expiresAt: expiresAt.toISOString(), token: key };
  }

  /** Ends sessions that are open: one, all but one, or all. Tells how many. */
  async end(db: Db, accountId: string, which: { only: string } | { allBut: string } | 'all'): Promise<number> {
    const id = which === 'all' ? {} : 'only' in which ? { id: which.only } : { id: { not: which.allBut } };
    const { count } = await db.accountSession.updateMany({ where: { accountId, revokedAt: null, ...id }, data: { revokedAt: new Date() } });
    return count;
  }

  /** Those that would still open something. */
  async list(db: Db, accountId: string, step: Step, idleMs: number): Promise<SessionRecord[]> {
    const now = Date.now();
    const rows = await db.accountSession.findMany({
      where: {
        accountId,
        revokedAt: null,
        expiresAt: { gt: new Date(now) },
        lastSeenAt: { gt: new Date(now - idleMs) },
        ...(step.after ? { id: { gt: step.after } } : {}),
      },
      orderBy: { id: 'asc' },
      take: step.take,
    });
    return rows.map((row) => ({
      id: row.id,
      label: row.label,
      createdAt: row.createdAt.toISOString(),
      lastSeenAt: row.lastSeenAt.toISOString(),
      expiresAt: row.expiresAt.toISOString(),
    }));
  }
}
