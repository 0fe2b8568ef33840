import { createCipheriv, createDecipheriv, createHash, hkdfSync, randomBytes } from 'node:crypto';
import { Injectable } from '@nestjs/common';
import type { Request } from 'express';
import type { Actor } from '../access/actor.js';
import { Database, type Db } from '../database/database.js';
import { Reply, type Answer } from '../http/reply.js';
import { fail } from '../problems/problem.js';

const KEPT_MS = 24 * 3_600_000;
const REPLAYED = { 'Idempotency-Replayed': 'true' } as const;

export interface CreatingRequest extends Request {
  rawBody?: Buffer;
  /** The secret that the guard took, wherever it stood. */
  credential?: string;
}

/** The key as sent, plain or as a quoted structured-field string; null when there is none. */
export const idempotencyKeyOf = (header: string | undefined): string | null => {
  if (header === undefined) return null;
  const key = header.trim().replace(/^"(.*)"$/, '$1');
  return /^[\x20-\x7e]{1,255}$/.test(key) ? key : fail('idempotency-key-invalid');
};

/** What is kept of a secret answer can be read again only with the caller's own credential and key. */
const sealKey = (request: CreatingRequest, key: string): Buffer =>
  Buffer.from(hkdfSync('sha256', Buffer.from(request.credential ?? ''), Buffer.from(key), Buffer.from('idempotency answer'), 32));

const seal = (text: string, key: Buffer): string => {
  const iv = randomBytes(12);
  const cipher = createCipheriv('aes-256-gcm', key, iv);
  const sealed = Buffer.concat([cipher.update(text, 'utf8'), cipher.final()]);
  return Buffer.concat([iv, cipher.getAuthTag(), sealed]).toString('base64url');
};

const unseal = (text: string, key: Buffer): string => {
  const bytes = Buffer.from(text, 'base64url');
  const decipher = createDecipheriv('aes-256-gcm', key, bytes.subarray(0, 12), { authTagLength: 16 });
  decipher.setAuthTag(bytes.subarray(12, 28));
  return Buffer.concat([decipher.update(bytes.subarray(28)), decipher.final()]).toString('utf8');
};

const headersOf = (row: { location?: string | null; etag?: string | null }) => ({
  ...(row.location ? { location: row.location } : {}),
  ...(row.etag ? { etag: row.etag } : {}),
});

/** Creating requests that may be repeated without creating twice. */
@Injectable()
export class Idempotency {
  constructor(private readonly database: Database) {}

  /**
   * Runs `fn` in one transaction. With an Idempotency-Key its answer is kept in that same transaction, so that after
   * a crash either both are there or neither; a repeat gets the kept answer, byte for byte.
   */
  creating(actor: Actor, request: CreatingRequest, fn: (db: Db) => Promise<Answer>): Promise<Reply> {
    const key = idempotencyKeyOf(request.get('idempotency-key'));
    return this.database.inTransaction(actor, async (db) => {
      if (key === null) {
        const answer = await fn(db);
        return new Reply(answer, JSON.stringify(answer.body));
      }
      const at = { gardenId: actor.gardenId, credentialId: actor.credentialId, route: `${request.method} ${request.path}`, idempotencyKey: key };
      await this.holdAlone(db, at);
      const requestSha256 = createHash('sha256')
        .update(request.rawBody ?? '')
        .digest('hex');
      return (await this.replay(db, at, requestSha256, request)) ?? this.run(db, at, requestSha256, request, fn);
    });
  }

  /** The lock ends with the transaction: a killed process leaves nothing behind that says "running". */
  private async holdAlone(db: Db, at: KeptAt): Promise<void> {
    const name = [at.gardenId, at.credentialId, at.route, at.idempotencyKey].join('\n');
    const [row] = await db.$queryRaw<{ alone: boolean }[]>`SELECT pg_try_advisory_xact_lock(hashtextextended(${name}, 7)) AS alone`;
    if (!row?.alone) fail('idempotency-running');
  }

  private async replay(db: Db, at: KeptAt, requestSha256: string, request: CreatingRequest): Promise<Reply | null> {
    await db.idempotencyAnswer.deleteMany({ where: { gardenId: at.gardenId, expiresAt: { lte: new Date() } } });
    const kept = await db.idempotencyAnswer.findFirst({ where: at });
    if (!kept) return null;
    if (kept.requestSha256 !== requestSha256) fail('idempotency-conflict');
    const text = kept.encrypted ? unseal(kept.body, sealKey(request, at.idempotencyKey)) : kept.body;
    return new Reply({ status: kept.status, ...headersOf(kept) }, text, REPLAYED);
  }

  private async run(db: Db, at: KeptAt, requestSha256: string, request: CreatingRequest, fn: (db: Db) => Promise<Answer>): Promise<Reply> {
    const answer = await fn(db);
    const text = JSON.stringify(answer.body);
    const encrypted = answer.secret === true;
    await db.idempotencyAnswer.create({
      data: {
        ...at,
        requestSha256,
        status: answer.status,
        body: encrypted ? seal(text, sealKey(request, at.idempotencyKey)) : text,
        encrypted,
        ...headersOf(answer),
        expiresAt: new Date(Date.now() + KEPT_MS),
      },
      select: { credentialId: true },
    });
    return new Reply(answer, text);
  }
}

interface KeptAt {
  gardenId: string;
  credentialId: string;
  route: string;
  idempotencyKey: string;
}
