import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/access/actor.js';
import type { Db } from '../../platform/database/database.js';
import { StalenessRepository } from './staleness.repository.js';

/**
 * Where other domains say what they changed. A finished plan is never edited: it gets a mark that tells what no longer
 * matches. The mark is written in the transaction of the change.
 */
@Injectable()
export class StalenessDoor {
  constructor(private readonly marks: StalenessRepository) {}

  async siteChanged(db: Db, actor: Actor, siteId: string): Promise<void> {
    await this.marks.mark(db, actor.gardenId, await this.marks.plansOfBuilds(db, { siteId }), { reason: 'siteChanged', subject: null });
  }

  async structureChanged(db: Db, actor: Actor, structureId: string): Promise<void> {
    await this.marks.mark(db, actor.gardenId, await this.marks.plansOfBuilds(db, { structureId }), { reason: 'structureChanged', subject: null });
  }

  async buildChanged(db: Db, actor: Actor, buildId: string): Promise<void> {
    await this.marks.mark(db, actor.gardenId, await this.marks.plansOfBuilds(db, { id: buildId }), { reason: 'buildChanged', subject: null });
  }

  /** A price that a plan was computed with is another one now, or gone. */
  async priceChanged(db: Db, actor: Actor, price: { id: string; material: string }): Promise<void> {
    await this.marks.mark(db, actor.gardenId, await this.marks.plansWithInput(db, 'prices', { priceId: price.id }), {
      reason: 'priceChanged',
      subject: price.material,
    });
  }

  async priceAdded(db: Db, actor: Actor, material: string): Promise<void> {
    await this.marks.mark(db, actor.gardenId, await this.marks.plansNeeding(db, material), { reason: 'priceAdded', subject: material });
  }

  async stockChanged(db: Db, actor: Actor, item: { id: string; tag: string }): Promise<void> {
    await this.marks.mark(db, actor.gardenId, await this.marks.plansWithInput(db, 'stock', { stockId: item.id }), {
      reason: 'stockChanged',
      subject: item.tag,
    });
  }

  /** What is held for a build is more or less than before. */
  async claimsChanged(db: Db, actor: Actor, buildId: string, tag: string): Promise<void> {
    await this.marks.mark(db, actor.gardenId, await this.marks.plansOfBuilds(db, { id: buildId }), { reason: 'claimsChanged', subject: tag });
  }
}
