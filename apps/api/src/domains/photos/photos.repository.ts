import { Injectable } from '@nestjs/common';
import type { Db } from '../../platform/database/database.js';
import type { Photo } from '../../platform/database/generated/client.js';
import type { Step } from '../shared/resource.js';

/** What a photo shows: a thing on the pile, or a build. */
export interface PhotoSubject {
  kind: 'stockItem' | 'build';
  id: string;
}

export interface PhotoFields {
  fileId: string;
  caption: string | null;
  widthPixelCount: number;
  heightPixelCount: number;
  showsPeople: boolean;
  releaseOnFile: boolean;
  uploadedById: string;
}

export interface PhotoRecord extends PhotoFields {
  id: string;
  byteCount: number;
  createdAt: string;
}

/** Who looks: everybody sees photos without people or with a release; the rest only whoever took it in, and arbiters. */
export interface Looker {
  principalId: string;
  seesAll: boolean;
}

const WITH_FILE = { file: { select: { byteCount: true } } } as const;

const toModel = (row: Photo & { file: { byteCount: number } }): PhotoRecord => ({
  id: row.id,
  fileId: row.fileId,
  caption: row.caption,
  widthPixelCount: row.widthPixelCount,
  heightPixelCount: row.heightPixelCount,
  showsPeople: row.showsPeople,
  releaseOnFile: row.releaseOnFile,
  uploadedById: row.uploadedById,
  byteCount: row.file.byteCount,
  createdAt: row.createdAt.toISOString(),
});

const of = ({ kind, id }: PhotoSubject) => (kind === 'build' ? { buildId: id } : { stockItemId: id });

const visibleTo = ({ principalId, seesAll }: Looker) =>
  seesAll ? {} : { OR: [{ showsPeople: false }, { releaseOnFile: true }, { uploadedById: principalId }] };

@Injectable()
export class PhotosRepository {
  async insert(db: Db, gardenId: string, id: string, subject: PhotoSubject, photo: PhotoFields): Promise<PhotoRecord> {
    return toModel(await db.photo.create({ data: { gardenId, id, ...of(subject), ...photo }, include: WITH_FILE }));
  }

  async find(db: Db, looker: Looker, subject: PhotoSubject, id: string): Promise<PhotoRecord | null> {
    const row = await db.photo.findFirst({ where: { id, ...of(subject), ...visibleTo(looker) }, include: WITH_FILE });
    return row && toModel(row);
  }

  async list(db: Db, looker: Looker, subject: PhotoSubject, step: Step): Promise<PhotoRecord[]> {
    const rows = await db.photo.findMany({
      where: { ...of(subject), ...visibleTo(looker), ...(step.after ? { id: { gt: step.after } } : {}) },
      include: WITH_FILE,
      orderBy: { id: 'asc' },
      take: step.take,
    });
    return rows.map(toModel);
  }

  async count(db: Db, subject: PhotoSubject): Promise<number> {
    return db.photo.count({ where: of(subject) });
  }

  /** False when the row may be seen and not be taken away. */
  async remove(db: Db, id: string): Promise<boolean> {
    return (await db.photo.deleteMany({ where: { id } })).count === 1;
  }
}
