import { Inject, Injectable, type StreamableFile } from '@nestjs/common';
import type { Request, Response } from 'express';
import type { Actor } from '../../platform/access/actor.js';
import { CONFIG, type Config } from '../../platform/config/config.js';
import { audit } from '../../platform/database/audit.js';
import { Database } from '../../platform/database/database.js';
import { newId } from '../../platform/database/ids.js';
import { fileAnswer } from '../../platform/files/file-answer.js';
import { FileStore } from '../../platform/files/file-store.js';
import { afterOf, toPage, type Page, type PageQuery } from '../../platform/http/page.js';
import { found, type Reply } from '../../platform/http/reply.js';
import { Idempotency } from '../../platform/idempotency/idempotency.js';
import { enqueueInTurn } from '../../platform/jobs/jobs.js';
import { must } from '../shared/change.js';
import { monitored } from '../shared/monitored.js';
import { etagOfExport, isThere, toExportResponse, type ExportResponse, type GardenExportDto } from './garden-exports.dto.js';
import { GardenExportsRepository } from './garden-exports.repository.js';

export const EXPORT_GARDEN = 'export-garden';
const WHAT = 'export';

@Injectable()
export class GardenExportsService {
  constructor(
    private readonly database: Database,
    private readonly idempotency: Idempotency,
    private readonly exports: GardenExportsRepository,
    private readonly files: FileStore,
    @Inject(CONFIG) private readonly config: Config,
  ) {}

  async create(actor: Actor, request: Request, body: GardenExportDto): Promise<Reply> {
    const accepted = await this.idempotency.creating(actor, request, async (db) => {
      for (const fileId of await this.exports.releaseOld(db, new Date())) await this.files.remove(db, fileId);
      const made = await this.exports.insert(db, actor.gardenId, newId(), actor.principalId, body.withFiles);
      await audit(db, actor, { action: 'garden.export', objectType: 'export', objectId: made.id, after: { withFiles: body.withFiles } });
      await enqueueInTurn(db, EXPORT_GARDEN, { gardenId: actor.gardenId, id: made.id }, this.config.jobQuota);
      return { status: 202, body: toExportResponse(made), location: `/v1/exports/${made.id}`, etag: etagOfExport(made) };
    });
    return monitored(accepted);
  }

  async list(actor: Actor, query: PageQuery): Promise<Page<ExportResponse>> {
    const step = { after: afterOf(query), take: query.limit + 1 };
    const rows = await this.database.readSnapshot(actor, (db) => this.exports.list(db, step));
    return toPage(
      rows.map((row) => toExportResponse(row)),
      query.limit,
      (row) => row.id,
      query,
    );
  }

  async find(actor: Actor, id: string): Promise<Reply> {
    const record = must(await this.database.readSnapshot(actor, (db) => this.exports.find(db, id)), WHAT);
    return found(toExportResponse(record), etagOfExport(record));
  }

  /** The bytes are given to whoever may ask for them now, as long as they are there; no address opens them by itself. */
  async file(actor: Actor, id: string, response: Response): Promise<StreamableFile | undefined> {
    const { name, bytes } = await this.database.readSnapshot(actor, async (db) => {
      const record = must(await this.exports.find(db, id), WHAT);
      const fileId = must(isThere(record, new Date()) ? record.fileId : null, 'file of the export');
      return { name: must(await this.files.describe(db, fileId), 'file').name, bytes: must(await this.files.read(db, fileId), 'file') };
    });
    return fileAnswer(response, { name, mediaType: 'application/zip', bytes });
  }
}
