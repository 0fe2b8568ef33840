import type { PlanInputs, PlanResult } from '@lathwork/model';
import { Injectable } from '@nestjs/common';
import type { Db, Tenant } from '../../platform/database/database.js';
import { lockGarden } from '../../platform/database/garden-lock.js';
import { emit } from '../shared/events.js';
import { StalenessRepository, type StaleMark } from './staleness.repository.js';

/**
 * Where other domains say what they changed. A finished plan is never edited: it gets a mark that tells what no longer
 * matches. The mark is written in the transaction of the change.
 *
 * A change and the making of a plan cannot miss each other. Whoever makes a plan holds the garden alone from its first
 * read to its last write; a change takes its share before it looks for plans. So either the change is committed before
 * the plan is read, or the plan is there when the change looks for plans.
 */
@Injectable()
export class StalenessDoor {
  constructor(private readonly marks: StalenessRepository) {}

  siteChanged(db: Db, tenant: Tenant, siteId: string): Promise<void> {
    return this.mark(db, tenant, { reason: 'siteChanged', subject: null }, () => this.marks.plansOfBuilds(db, { siteId }));
  }

  structureChanged(db: Db, tenant: Tenant, structureId: string): Promise<void> {
    return this.mark(db, tenant, { reason: 'structureChanged', subject: null }, () => this.marks.plansOfBuilds(db, { structureId }));
  }

  buildChanged(db: Db, tenant: Tenant, buildId: string): Promise<void> {
    return this.mark(db, tenant, { reason: 'buildChanged', subject: null }, () => this.marks.plansOfBuilds(db, { id: buildId }));
  }

  /** A price that a plan was computed with is another one now, or gone. */
  priceChanged(db: Db, tenant: Tenant, price: { id: string; material: string }): Promise<void> {
    return this.mark(db, tenant, { reason: 'priceChanged', subject: price.material }, () => this.marks.plansWithInput(db, 'prices', { priceId: price.id }));
  }

  priceAdded(db: Db, tenant: Tenant, material: string): Promise<void> {
    return this.mark(db, tenant, { reason: 'priceAdded', subject: material }, () => this.marks.plansNeeding(db, material));
  }

  /** Plans that turn one of the two currencies into the other. */
  rateAdded(db: Db, tenant: Tenant, rate: { from: string; to: string }): Promise<void> {
    return this.mark(db, tenant, { reason: 'rateAdded', subject: `${rate.from} to ${rate.to}` }, () => this.marks.plansConverting(db, rate.from, rate.to));
  }

  stockChanged(db: Db, tenant: Tenant, item: { id: string; tag: string }): Promise<void> {
    return this.mark(db, tenant, { reason: 'stockChanged', subject: item.tag }, () => this.marks.plansWithInput(db, 'stock', { stockId: item.id }));
  }

  /** What is held for a build is more or less than before. */
  claimsChanged(db: Db, tenant: Tenant, buildId: string, tag: string): Promise<void> {
    return this.mark(db, tenant, { reason: 'claimsChanged', subject: tag }, () => this.marks.plansOfBuilds(db, { id: buildId }));
  }

  /**
   * What a plan needs is known only when it is finished: a price that was added while it was computed is told now. Whoever
   * finishes a plan holds the garden alone.
   */
  async planFinished(db: Db, tenant: Tenant, inputs: PlanInputs, result: PlanResult): Promise<void> {
    const needed = [...new Set(result.takeOff.lines.map(({ material }) => material))];
    const known = inputs.prices.map(({ priceId }) => priceId);
    for (const material of await this.marks.pricedSince(db, needed, known))
      await this.marks.mark(db, tenant.gardenId, [inputs.planId], { reason: 'priceAdded', subject: material });
  }

  /** Rises when the plan ends and with each mark. */
  async versionOf(db: Db, planId: string): Promise<number> {
    return (await this.marks.versionsOf(db, [planId])).get(planId) ?? 1;
  }

  private async mark(db: Db, tenant: Tenant, mark: StaleMark, findPlans: () => Promise<string[]>): Promise<void> {
    await lockGarden(db, tenant.gardenId, 'shared');
    const marked = await this.marks.mark(db, tenant.gardenId, await findPlans(), mark);
    const versions = await this.marks.versionsOf(db, marked);
    await emit(db, tenant.gardenId, ...marked.map((id) => ({ type: 'plan.stale', object: 'plan', id, version: versions.get(id) ?? 1 }) as const));
  }
}
