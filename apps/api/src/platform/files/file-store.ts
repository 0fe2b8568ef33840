import { createHash } from 'node:crypto';
import { Injectable } from '@nestjs/common';
import type { Db } from '../database/database.js';
import { newId } from '../database/ids.js';
import { fail } from '../problems/problem.js';

export interface NewFile {
  name: string;
  mediaType: string;
  content: Uint8Array;
}

export interface StoredFile {
  id: string;
  name: string;
  mediaType: string;
  byteCount: number;
  sha256: string;
}

/** Where bytes are kept. One interface, so that another place than the database can take over. */
export abstract class FileStore {
  abstract put(db: Db, gardenId: string, file: NewFile): Promise<StoredFile>;
  abstract describe(db: Db, id: string): Promise<StoredFile | null>;
  abstract read(db: Db, id: string): Promise<Uint8Array | null>;
  /** Takes the bytes away for good. The row that speaks of them goes first. */
  abstract remove(db: Db, id: string): Promise<void>;
}

const DESCRIBED = { id: true, name: true, mediaType: true, byteCount: true, sha256: true } as const;

/** Bytes beside the rows that speak of them: stored, or not, in the same transaction. */
@Injectable()
export class PostgresFileStore extends FileStore {
  async put(db: Db, gardenId: string, file: NewFile): Promise<StoredFile> {
    await this.refuseOverQuota(db, gardenId, file.content.length);
    const stored = {
      id: newId(),
      name: file.name,
      mediaType: file.mediaType,
      byteCount: file.content.length,
      sha256: createHash('sha256').update(file.content).digest('hex'),
    };
    await db.file.create({ data: { gardenId, ...stored, content: new Uint8Array(file.content) }, select: { id: true } });
    return stored;
  }

  describe(db: Db, id: string): Promise<StoredFile | null> {
    return db.file.findFirst({ where: { id }, select: DESCRIBED });
  }

  async read(db: Db, id: string): Promise<Uint8Array | null> {
    return (await db.file.findFirst({ where: { id }, select: { content: true } }))?.content ?? null;
  }

  async remove(db: Db, id: string): Promise<void> {
    await db.file.deleteMany({ where: { id } });
  }

  /** Two files that arrive together are counted one after the other. */
  private async refuseOverQuota(db: Db, gardenId: string, size: number): Promise<void> {
    await db.$executeRaw`SELECT pg_advisory_xact_lock(hashtextextended(${`files of ${gardenId}`}, 11))`;
    const garden = await db.garden.findFirst({ where: { id: gardenId }, select: { fileQuotaByteCount: true } });
    const used = await db.file.aggregate({ _sum: { byteCount: true } });
    const limit = garden?.fileQuotaByteCount ?? 0n;
    if (BigInt(used._sum.byteCount ?? 0) + BigInt(size) > limit) fail('quota-exceeded', { limit: String(limit) });
  }
}
