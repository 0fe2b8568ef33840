import { Injectable, StreamableFile } from '@nestjs/common';
import type { Response } from 'express';
import type { Actor } from '../../platform/access/actor.js';
import { Database } from '../../platform/database/database.js';
import { FileStore } from '../../platform/files/file-store.js';
import { alreadyHas } from '../../platform/http/etag.js';
import { fail } from '../../platform/problems/problem.js';
import { must } from '../shared/change.js';
import { DocumentsRepository } from './documents.repository.js';

/** Gives out the finished bytes. Their tag is their own hash: a file that is made again alike is the same file. */
@Injectable()
export class DocumentFilesService {
  constructor(
    private readonly database: Database,
    private readonly documents: DocumentsRepository,
    private readonly files: FileStore,
  ) {}

  async file(actor: Actor, id: string, response: Response): Promise<StreamableFile | undefined> {
    const found = await this.database.readSnapshot(actor, async (db) => {
      const document = must(await this.documents.find(db, id), 'document');
      if (document.state !== 'ready' || document.fileId === null) return fail('document-not-ready', { state: document.state });
      const file = must(await this.files.describe(db, document.fileId), 'file');
      const has = alreadyHas(response.req.get('if-none-match'), `"${file.sha256}"`);
      return { file, bytes: has ? null : must(await this.files.read(db, document.fileId), 'file') };
    });
    response.setHeader('ETag', `"${found.file.sha256}"`);
    if (found.bytes === null) {
      response.status(304);
      return undefined;
    }
    return new StreamableFile(found.bytes, {
      type: found.file.mediaType,
      length: found.file.byteCount,
      disposition: `attachment; filename="${found.file.name}"`,
    });
  }
}
