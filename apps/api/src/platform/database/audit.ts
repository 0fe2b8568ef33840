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
  // In SQL of its own, because every change writes one and nothing of it is read back.
  await db.$executeRaw`INSERT INTO audit_entries (garden_id, id, at, key_id, member_id, action, object_type, object_id, before_sha256, after_sha256, request_id)
    VALUES (${actor.gardenId}::uuid, ${newId()}::uuid, ${new Date()}, ${actor.keyId}::uuid, ${actor.memberId}::uuid, ${entry.action}, ${entry.objectType},
      ${entry.objectId}::uuid, ${digest(entry.before)}, ${digest(entry.after)}, ${contextOrNull()?.requestId ?? null})`;
};
