import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/access/actor.js';
import { Database, type Db } from '../../platform/database/database.js';
import { afterOf, toPage, type Page } from '../../platform/http/page.js';
import { GardensRead } from '../gardens/gardens.read.js';
import { must } from '../shared/change.js';
import { differences } from './differences.js';
import { CHANGES_MAX, type BuildHistoryQuery, type BuildHistoryResponse, type HistoryQuery, type RevisionSummary } from './history.dto.js';
import { HistoryRepository, type HistoryEntry, type RevisionInputs } from './history.repository.js';

const ENTRIES_MAX = 1000;
/** These say which revision it is, not what was changed in it. */
const OWN_MARKS = new Set(['/planId', '/revision', '/seed', '/asOf']);

/** Who changed what. Read only: the history is written by whoever changes something. */
@Injectable()
export class HistoryService {
  constructor(
    private readonly database: Database,
    private readonly history: HistoryRepository,
    private readonly gardens: GardensRead,
  ) {}

  async list(actor: Actor, query: HistoryQuery): Promise<Page<HistoryEntry>> {
    const step = { after: afterOf(query), take: query.limit + 1 };
    const filter = { objectType: query.objectType ?? null, objectId: query.objectId ?? null };
    const entries = await this.database.readSnapshot(actor, (db) => this.history.list(db, filter, step));
    return toPage(entries, query.limit, (entry) => entry.id, query);
  }

  /** What is different between two revisions, and everything that was done to what they draw on in between. */
  build(actor: Actor, buildId: string, query: BuildHistoryQuery): Promise<BuildHistoryResponse> {
    return this.database.readSnapshot(actor, async (db) => {
      const [first, second] = [Math.min(query.fromRevision, query.toRevision), Math.max(query.fromRevision, query.toRevision)];
      const from = must(await this.history.revision(db, buildId, first), 'revision');
      const to = must(await this.history.revision(db, buildId, second), 'revision');
      const changes = differences(from.inputs, to.inputs, CHANGES_MAX + OWN_MARKS.size + 1).filter(({ pointer }) => !OWN_MARKS.has(pointer));
      const about = { ids: idsOf(buildId, from, to), types: ['price', 'exchangeRate'], after: from.createdAt, until: to.createdAt, take: ENTRIES_MAX };
      return {
        from: await this.summary(db, from),
        to: await this.summary(db, to),
        changes: changes.slice(0, CHANGES_MAX),
        more: changes.length > CHANGES_MAX,
        entries: await this.history.between(db, about),
      };
    });
  }

  private async summary(db: Db, { planId, revision, createdAt, createdById }: RevisionInputs): Promise<RevisionSummary> {
    const by = createdById === null ? null : await this.gardens.nameOf(db, createdById);
    return { planId, revision, createdAt: createdAt.toISOString(), by };
  }
}

/** The build and everything its two plans name: site, structure, things of the pile. */
const idsOf = (buildId: string, ...plans: readonly RevisionInputs[]): string[] => {
  const found = plans.flatMap(({ inputs }) => {
    const { site, structure, stock } = inputs as { site?: { siteId?: string }; structure?: { structureId?: string }; stock?: { stockItemId?: string }[] };
    return [site?.siteId, structure?.structureId, ...(stock ?? []).map((item) => item.stockItemId)];
  });
  return [...new Set([buildId, ...plans.map(({ planId }) => planId), ...found.flatMap((id) => id ?? [])])];
};
