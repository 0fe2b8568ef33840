import { Body, Controller, Query, Req, Res, type StreamableFile } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { Request, Response } from 'express';
import { CurrentActor } from '../../platform/access/access.decorators.js';
import type { Actor } from '../../platform/access/actor.js';
import { Produces } from '../../platform/http/answers.interceptor.js';
import type { Page } from '../../platform/http/page.js';
import type { Reply } from '../../platform/http/reply.js';
import { IdParam } from '../../platform/http/id-param.js';
import { Operation } from '../shared/operation.js';
import { DocumentFilesService } from './document-files.service.js';
import { DocumentDto, DocumentListQuery, DocumentSchema, type DocumentResponse } from './documents.dto.js';
import { DocumentsService } from './documents.service.js';

@ApiTags('documents')
@Controller('v1/documents')
export class DocumentsController {
  constructor(
    private readonly documents: DocumentsService,
    private readonly files: DocumentFilesService,
  ) {}

  @Operation('post', '', {
    id: 'createDocument',
    summary: 'Have a finished plan set for printing',
    body: DocumentDto,
    answer: DocumentSchema,
    status: 202,
    creating: true,
    waits: true,
    problems: [404],
  })
  create(@CurrentActor() actor: Actor, @Req() request: Request, @Body() body: DocumentDto): Promise<Reply> {
    return this.documents.create(actor, request, body);
  }

  @Operation('get', '', { id: 'listDocuments', summary: 'List documents, oldest first', answer: DocumentSchema, page: true })
  list(@CurrentActor() actor: Actor, @Query() query: DocumentListQuery): Promise<Page<DocumentResponse>> {
    return this.documents.list(actor, query);
  }

  @Operation('get', ':id', { id: 'getDocument', summary: 'Show the state of one document', answer: DocumentSchema })
  find(@CurrentActor() actor: Actor, @IdParam('id') id: string): Promise<Reply> {
    return this.documents.find(actor, id);
  }

  @Produces('application/pdf')
  @Operation('get', ':id/file', {
    id: 'getDocumentFile',
    summary: 'Fetch the PDF',
    answer: { type: 'string', format: 'binary', maxLength: 67_108_864 },
    mediaType: 'application/pdf',
    problems: [409],
  })
  file(@CurrentActor() actor: Actor, @IdParam('id') id: string, @Res({ passthrough: true }) response: Response): Promise<StreamableFile | undefined> {
    return this.files.file(actor, id, response);
  }
}
