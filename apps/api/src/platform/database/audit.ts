import { createHash } from 'node:crypto';
import type { Actor } from '../access/actor.js';
import { contextOrNull } from '../http/context.js';
import type { Db } from './database.js';
import { newId } from './ids.js';

export interface AuditEntry {
  /** For example `site.update`. */
  action: string;
  objectType: string;
  objectId: string;
  before?: unknown;
  after?: unknown;
}

const digest = (value: unknown): string | null => (value === undefined ? null : createHash('sha256').update(JSON.stringify(value)).digest('hex'));

/** Who did what to which object, in the transaction that did it. Holds hashes, never contents, so that erasing never edits history. */
export const audit = async (db: Db, actor: Actor, entry: AuditEntry): Promise<void> => {
  await db.auditEntry.create({
    data: {
      gardenId: actor.gardenId,
      id: newId(),
      keyId: actor.keyId,
      memberId: actor.memberId,
      action: entry.action,
      objectType: entry.objectType,
      objectId: entry.objectId,
      beforeSha256: digest(entry.before),
      afterSha256: digest(entry.after),
      requestId: contextOrNull()?.requestId ?? null,
    },
    select: { id: true },
  });
};
