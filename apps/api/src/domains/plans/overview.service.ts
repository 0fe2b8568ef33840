import { Injectable } from '@nestjs/common';
import type { PlanResult } from '@lathwork/model';
import type { Actor } from '../../platform/access/actor.js';
import { Database } from '../../platform/database/database.js';
import { afterOf, toPage, type Page, type PageQuery } from '../../platform/http/page.js';
import { must } from '../shared/change.js';
import {
  BUILD_STATES,
  toNeed,
  type BuildHazards,
  type BuildNeeds,
  type BuildState,
  type BuildSummary,
  type BuildTotals,
  type GardenTotals,
  type OfPlan,
} from './overview.dto.js';
import { OverviewRepository } from './overview.repository.js';

/** What of a plan is for whom: each answer holds the fields of one purpose and no others. */
@Injectable()
export class OverviewService {
  constructor(
    private readonly database: Database,
    private readonly overview: OverviewRepository,
  ) {}

  async summaries(actor: Actor, query: PageQuery): Promise<Page<BuildSummary>> {
    const step = { after: afterOf(query), take: query.limit + 1 };
    const summaries = await this.database.readSnapshot(actor, (db) => this.overview.summaries(db, step));
    return toPage(summaries, query.limit, (summary) => summary.id, query);
  }

  needs(actor: Actor, buildId: string): Promise<BuildNeeds> {
    return this.ofNewest(actor, buildId, ({ takeOff }) => ({ needs: takeOff.lines.map(toNeed) }));
  }

  hazards(actor: Actor, buildId: string): Promise<BuildHazards> {
    return this.ofNewest(actor, buildId, ({ notes, reviewBlocked }) => ({
      reviewBlocked,
      notes: notes.filter(({ room, severity }) => room === 'safety' || severity === 'stop' || severity === 'care'),
    }));
  }

  totals(actor: Actor, buildId: string): Promise<BuildTotals> {
    return this.ofNewest(actor, buildId, ({ budget }) => ({
      currency: budget.currency,
      reclaimedMinor: budget.reclaimedMinor,
      cashMinor: budget.cashMinor,
      inKindMinor: budget.inKindMinor,
      capMinor: budget.capMinor,
      overCapMinor: budget.overCapMinor,
      unpricedCount: budget.unpricedCount,
    }));
  }

  garden(actor: Actor): Promise<GardenTotals> {
    return this.database.readSnapshot(actor, async (db) => {
      const states = await this.overview.states(db);
      const count = (state: BuildState): number => states.filter((one) => one === state).length;
      return {
        builds: Object.fromEntries(BUILD_STATES.map((state) => [`${state}Count`, count(state)])) as GardenTotals['builds'],
        ...(await this.overview.totals(db)),
      };
    });
  }

  private ofNewest<T>(actor: Actor, buildId: string, take: (result: PlanResult) => T): Promise<OfPlan & T> {
    return this.database.readSnapshot(actor, async (db) => {
      must((await this.overview.buildExists(db, buildId)) || null, 'build');
      const { result, ...ofPlan } = must(await this.overview.newest(db, buildId), 'finished plan');
      return { ...ofPlan, ...take(result) };
    });
  }
}
