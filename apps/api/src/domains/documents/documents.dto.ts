import type { DocumentOptions } from '@lathwork/model';
import { etagOfParts } from '../../platform/http/etag.js';
import { PageQuery } from '../../platform/http/page.js';
import { namedSchema, S } from '../../platform/http/response-schema.js';
import type { ProblemBody } from '../../platform/problems/problem.js';
import { ChoiceField, IdField, Shape } from '../shared/fields.js';
import { IdQuery } from '../shared/queries.dto.js';
import type { DocumentRecord, DocumentState } from './documents.repository.js';

@Shape('PlanDocumentRequest', 'A document has its own language, paper and units, whatever those of the garden are.')
export class DocumentDto {
  @IdField() planId!: string;
  @ChoiceField(['planBook']) kind!: 'planBook';
  @ChoiceField(['en']) language!: 'en';
  @ChoiceField(['a4', 'letter']) paper!: 'a4' | 'letter';
  @ChoiceField(['metric', 'us']) units!: 'metric' | 'us';
}

export class DocumentListQuery extends PageQuery {
  @IdQuery('Only documents of this plan') planId?: string;
}

export interface DocumentResponse extends DocumentOptions {
  id: string;
  planId: string;
  state: DocumentState;
  pages: number | null;
  sha256: string | null;
  engineVersion: string | null;
  problem: ProblemBody | null;
  createdAt: string;
  startedAt: string | null;
  finishedAt: string | null;
  links: { self: string; plan: string; file: string | null };
}

export const DocumentSchema = namedSchema(
  'PlanDocument',
  S.object({
    id: S.id(),
    planId: S.id(),
    kind: S.choice('planBook'),
    language: S.choice('en'),
    paper: S.choice('a4', 'letter'),
    units: S.choice('metric', 'us'),
    state: S.choice('queued', 'rendering', 'ready', 'failed'),
    pages: S.orNull(S.whole(1, 2000)),
    sha256: S.orNull(S.text(64)),
    engineVersion: S.orNull(S.text(80)),
    problem: S.orNull({ $ref: '#/components/schemas/Problem' }),
    createdAt: S.moment(),
    startedAt: S.orNull(S.moment()),
    finishedAt: S.orNull(S.moment()),
    links: S.object({ self: S.text(200), plan: S.text(200), file: S.orNull(S.text(200)) }),
  }),
);

export const toResponse = (document: DocumentRecord): DocumentResponse => ({
  id: document.id,
  planId: document.planId,
  kind: document.options.kind,
  language: document.options.language,
  paper: document.options.paper,
  units: document.options.units,
  state: document.state,
  pages: document.pages,
  sha256: document.sha256,
  engineVersion: document.engineVersion,
  problem: document.problem,
  createdAt: document.createdAt,
  startedAt: document.startedAt,
  finishedAt: document.finishedAt,
  links: {
    self: `/v1/documents/${document.id}`,
    plan: `/v1/plans/${document.planId}`,
    file: document.state === 'ready' ? `/v1/documents/${document.id}/file` : null,
  },
});

export const etagOfDocument = (document: DocumentRecord): string => etagOfParts(document.id, document.state, document.startedAt ?? 'waiting');
