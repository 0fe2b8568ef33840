import { etagOfParts } from '../../platform/http/etag.js';
import { namedSchema, S } from '../../platform/http/response-schema.js';
import type { ProblemBody } from '../../platform/problems/problem.js';
import { BooleanField, Shape } from '../shared/fields.js';
import type { ExportRecord, ExportState } from './garden-exports.repository.js';

@Shape('GardenExportRequest', 'Packs the whole garden: JSON with a schema version, tables, and where wanted the photos and printed plans.')
export class GardenExportDto {
  @BooleanField({ description: 'Whether photos and PDFs come along' }) withFiles!: boolean;
}

export interface ExportResponse {
  id: string;
  state: ExportState;
  withFiles: boolean;
  sha256: string | null;
  byteCount: number | null;
  problem: ProblemBody | null;
  createdAt: string;
  startedAt: string | null;
  finishedAt: string | null;
  expiresAt: string | null;
  links: { self: string; file: string | null };
}

export const GardenExportSchema = namedSchema(
  'GardenExport',
  S.object({
    id: S.id(),
    state: S.choice('queued', 'packing', 'ready', 'failed'),
    withFiles: S.flag(),
    sha256: S.orNull(S.text(64)),
    byteCount: S.orNull(S.whole(1, 67_108_864)),
    problem: S.orNull({ $ref: '#/components/schemas/Problem' }),
    createdAt: S.moment(),
    startedAt: S.orNull(S.moment()),
    finishedAt: S.orNull(S.moment()),
    expiresAt: { ...S.orNull(S.moment()), description: 'When the file goes' },
    links: S.object({ self: S.text(200), file: S.orNull(S.text(200)) }),
  }),
);

export const isThere = (record: ExportRecord, now: Date): boolean => record.fileId !== null && record.expiresAt !== null && new Date(record.expiresAt) > now;

export const toExportResponse = (record: ExportRecord, now = new Date()): ExportResponse => ({
  id: record.id,
  state: record.state,
  withFiles: record.withFiles,
  sha256: record.sha256,
  byteCount: record.byteCount,
  problem: record.problem,
  createdAt: record.createdAt,
  startedAt: record.startedAt,
  finishedAt: record.finishedAt,
  expiresAt: record.expiresAt,
  links: { self: `/v1/exports/${record.id}`, file: isThere(record, now) ? `/v1/exports/${record.id}/file` : null },
});

export const etagOfExport = (record: ExportRecord): string => etagOfParts(record.id, record.state, record.startedAt ?? 'waiting', record.fileId ?? 'none');
