import { Inject, Injectable } from '@nestjs/common';
import type { Request } from 'express';
import type { Actor } from '../../platform/access/actor.js';
import { CONFIG, type Config } from '../../platform/config/config.js';
import { audit } from '../../platform/database/audit.js';
import { Database } from '../../platform/database/database.js';
import { newId } from '../../platform/database/ids.js';
import { afterOf, toPage, type Page } from '../../platform/http/page.js';
import { found, reply, type Reply } from '../../platform/http/reply.js';
import { Idempotency } from '../../platform/idempotency/idempotency.js';
import { enqueueInTurn } from '../../platform/jobs/jobs.js';
import { must } from '../shared/change.js';
import { monitored } from '../shared/monitored.js';
import { waitedFor, waitUntil } from '../shared/prefer.js';
import { etagOfDocument, toResponse, type DocumentDto, type DocumentListQuery, type DocumentResponse } from './documents.dto.js';
import { DocumentSources } from './document-sources.js';
import { DocumentsRepository, type DocumentRecord } from './documents.repository.js';

export const RENDER_DOCUMENT = 'render-document';
const WHAT = 'document';

@Injectable()
export class DocumentsService {
  constructor(
    private readonly database: Database,
    private readonly idempotency: Idempotency,
    private readonly documents: DocumentsRepository,
    private readonly sources: DocumentSources,
    @Inject(CONFIG) private readonly config: Config,
  ) {}

  async create(actor: Actor, request: Request, body: DocumentDto): Promise<Reply> {
    const accepted = await this.idempotency.creating(actor, request, async (db) => {
      await this.sources.mustBeReady(db, body.planId);
      const options = { kind: body.kind, language: body.language, paper: body.paper, units: body.units };
      const document = await this.documents.insert(db, actor.gardenId, newId(), actor.principalId, body.planId, options);
      await audit(db, actor, { action: 'document.create', objectType: WHAT, objectId: document.id, after: { planId: body.planId, options } });
      await enqueueInTurn(db, RENDER_DOCUMENT, { gardenId: actor.gardenId, id: document.id }, this.config.jobQuota);
      return { status: 202, body: toResponse(document), location: `/v1/documents/${document.id}`, etag: etagOfDocument(document) };
    });
    return monitored(await this.afterWait(actor, request, accepted));
  }

  async list(actor: Actor, query: DocumentListQuery): Promise<Page<DocumentResponse>> {
    const step = { after: afterOf(query), take: query.limit + 1 };
    const documents = await this.database.readSnapshot(actor, (db) => this.documents.list(db, query.planId ?? null, step));
    return toPage(documents.map(toResponse), query.limit, (document) => document.id, query);
  }

  async find(actor: Actor, id: string): Promise<Reply> {
    const document = await this.read(actor, id);
    return found(toResponse(document), etagOfDocument(document));
  }

  private async read(actor: Actor, id: string): Promise<DocumentRecord> {
    return must(await this.database.readSnapshot(actor, (db) => this.documents.find(db, id)), WHAT);
  }

  private async afterWait(actor: Actor, request: Request, accepted: Reply): Promise<Reply> {
    const waitMs = waitedFor(request, this.config.waitLimitMs);
    const id = accepted.answer.location?.split('/').at(-1);
    if (waitMs === null || id === undefined) return accepted;
    const done = await waitUntil(waitMs, async () => (await this.read(actor, id)).finishedAt !== null);
    const document = await this.read(actor, id);
    const headers = { 'Preference-Applied': `wait=${waitMs / 1000}`, ...(done ? {} : { 'Retry-After': '1' }) };
    return reply({ status: done ? 201 : 202, body: toResponse(document), location: `/v1/documents/${id}`, etag: etagOfDocument(document) }, headers);
  }
}
