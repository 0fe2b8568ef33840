import { randomBytes } from 'node:crypto';
import { Injectable, type StreamableFile } from '@nestjs/common';
import type { Request, Response } from 'express';
import type { Actor } from '../../platform/access/actor.js';
import { audit } from '../../platform/database/audit.js';
import { Database, type Db } from '../../platform/database/database.js';
import { newId } from '../../platform/database/ids.js';
import { fileAnswer } from '../../platform/files/file-answer.js';
import { FileStore } from '../../platform/files/file-store.js';
import { etagOfParts } from '../../platform/http/etag.js';
import { afterOf, toPage, type Page, type PageQuery } from '../../platform/http/page.js';
import { readRaw } from '../../platform/http/raw-body.js';
import { found, type Reply } from '../../platform/http/reply.js';
import { Idempotency } from '../../platform/idempotency/idempotency.js';
import { fail } from '../../platform/problems/problem.js';
import { PICTURE_BODY, Pictures } from '../../platform/uploads/pictures.js';
import { must } from '../shared/change.js';
import { folderOf, toResponse, type NewPhotoQuery, type PhotoResponse } from './photos.dto.js';
import { PhotoSubjects } from './photo-subjects.js';
import { PhotosRepository, type Looker, type PhotoRecord, type PhotoSubject } from './photos.repository.js';

const WHAT = 'photo';
const MOST_OF_ONE = 40;

/** A coordinator settles who may be seen; a key that runs the garden stands for one. */
const lookerOf = (actor: Actor): Looker => ({
  principalId: actor.principalId,
  seesAll: actor.roles.includes('coordinator') || (actor.kind === 'key' && actor.scopes.includes('garden:admin')),
});

/** Rows and bytes of the photos, kept or taken away together. */
@Injectable()
export class PhotoRows {
  constructor(
    readonly photos: PhotosRepository,
    readonly files: FileStore,
    readonly subjects: PhotoSubjects,
  ) {}

  async mustFind(db: Db, actor: Actor, subject: PhotoSubject, id: string): Promise<PhotoRecord> {
    await this.subjects.mustExist(db, subject);
    return must(await this.photos.find(db, lookerOf(actor), subject, id), WHAT);
  }
}

@Injectable()
export class PhotosService {
  constructor(
    private readonly database: Database,
    private readonly idempotency: Idempotency,
    private readonly pictures: Pictures,
    private readonly rows: PhotoRows,
  ) {}

  /** The picture is looked at and drawn anew before anything is written; the file gets a name that nobody chose. */
  async add(actor: Actor, request: Request, subject: PhotoSubject, query: NewPhotoQuery): Promise<Reply> {
    const { bytes } = await readRaw(request, PICTURE_BODY);
    await this.database.readSnapshot(actor, (db) => this.rows.subjects.mustBeActive(db, subject));
    const { bytes: content, ...picture } = await this.pictures.takeIn(bytes);
    return this.idempotency.creating(actor, request, async (db) => {
      await this.rows.subjects.mustBeActive(db, subject);
      if ((await this.rows.photos.count(db, subject)) >= MOST_OF_ONE) fail('conflict', { reason: `There are ${MOST_OF_ONE} photos of it already.` });
      const name = `photo-${randomBytes(12).toString('hex')}.jpg`;
      const file = await this.rows.files.put(db, actor.gardenId, { name, mediaType: picture.mediaType, content });
      const photo = await this.rows.photos.insert(db, actor.gardenId, newId(), subject, {
        fileId: file.id,
        caption: query.caption ?? null,
        widthPixelCount: picture.widthPixelCount,
        heightPixelCount: picture.heightPixelCount,
        showsPeople: query.showsPeople,
        releaseOnFile: query.releaseOnFile ?? false,
        uploadedById: actor.principalId,
      });
      await audit(db, actor, { action: 'photo.create', objectType: WHAT, objectId: photo.id, after: photo });
      return { status: 201, body: toResponse(subject, photo), location: `${folderOf(subject)}/${photo.id}`, etag: etagOfParts(photo.id) };
    });
  }

  async list(actor: Actor, subject: PhotoSubject, query: PageQuery): Promise<Page<PhotoResponse>> {
    const step = { after: afterOf(query), take: query.limit + 1 };
    const photos = await this.database.readSnapshot(actor, async (db) => {
      await this.rows.subjects.mustExist(db, subject);
      return this.rows.photos.list(db, lookerOf(actor), subject, step);
    });
    return toPage(
      photos.map((photo) => toResponse(subject, photo)),
      query.limit,
      (photo) => photo.id,
      query,
    );
  }

  async find(actor: Actor, subject: PhotoSubject, id: string): Promise<Reply> {
    const photo = await this.database.readSnapshot(actor, (db) => this.rows.mustFind(db, actor, subject, id));
    return found(toResponse(subject, photo), etagOfParts(photo.id));
  }

  async file(actor: Actor, subject: PhotoSubject, id: string, response: Response): Promise<StreamableFile | undefined> {
    const { file, bytes } = await this.database.readSnapshot(actor, async (db) => {
      const { fileId } = await this.rows.mustFind(db, actor, subject, id);
      return { file: must(await this.rows.files.describe(db, fileId), 'file'), bytes: must(await this.rows.files.read(db, fileId), 'file') };
    });
    return fileAnswer(response, { name: file.name, mediaType: file.mediaType, bytes });
  }

  remove(actor: Actor, subject: PhotoSubject, id: string): Promise<void> {
    return this.database.inTransaction(actor, async (db) => {
      const photo = await this.rows.mustFind(db, actor, subject, id);
      if (!(await this.rows.photos.remove(db, id))) fail('not-yours');
      await this.rows.files.remove(db, photo.fileId);
      await audit(db, actor, { action: 'photo.remove', objectType: WHAT, objectId: id, before: photo });
    });
  }
}
