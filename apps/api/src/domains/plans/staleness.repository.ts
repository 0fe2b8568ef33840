import { Injectable } from '@nestjs/common';
import type { Db } from '../../platform/database/database.js';
import { newId } from '../../platform/database/ids.js';

export interface StaleMark {
  reason: string;
  subject: string | null;
}

@Injectable()
export class StalenessRepository {
  async plansOfBuilds(db: Db, where: { siteId: string } | { structureId: string } | { id: string }): Promise<string[]> {
    const rows = await db.planRevision.findMany({ where: { state: { not: 'failed' }, build: where }, select: { id: true } });
    return rows.map(({ id }) => id);
  }

  /** Plans whose inputs hold an entry like this one, for example `{priceId}` among the prices. */
  async plansWithInput(db: Db, list: 'prices' | 'stock', entry: Record<string, string>): Promise<string[]> {
    const like = JSON.stringify({ [list]: [entry] });
    const rows = await db.$queryRaw<{ id: string }[]>`SELECT id FROM plan_revisions WHERE state <> 'failed' AND inputs @> ${like}::jsonb`;
    return rows.map(({ id }) => id);
  }

  /** Plans whose list of materials has this material. */
  async plansNeeding(db: Db, material: string): Promise<string[]> {
    const like = JSON.stringify({ takeOff: { lines: [{ material }] } });
    const rows = await db.$queryRaw<{ id: string }[]>`SELECT plan_id AS id FROM plan_results WHERE result @> ${like}::jsonb`;
    return rows.map(({ id }) => id);
  }

  /** Plans that hold prices in one of two currencies and reckon in the other, or hold some in both. */
  async plansConverting(db: Db, one: string, other: string): Promise<string[]> {
    const holds = (currency: string): string => JSON.stringify({ prices: [{ packPrice: { currency } }] });
    const reckons = (currency: string): string => JSON.stringify({ budget: { currency } });
    const rows = await db.$queryRaw<{ id: string }[]>`
      SELECT id FROM plan_revisions WHERE state <> 'failed'
         AND (inputs @> ${holds(one)}::jsonb OR inputs @> ${reckons(one)}::jsonb) AND (inputs @> ${holds(other)}::jsonb OR inputs @> ${reckons(other)}::jsonb)`;
    return rows.map(({ id }) => id);
  }

  /** Those of the materials that have a price which is none of the known ones. */
  async pricedSince(db: Db, materials: readonly string[], known: readonly string[]): Promise<string[]> {
    const rows = await db.price.findMany({
      where: { archivedAt: null, material: { in: [...materials] }, id: { notIn: [...known] } },
      select: { material: true },
      distinct: ['material'],
      orderBy: { material: 'asc' },
    });
    return rows.map(({ material }) => material);
  }

  /** A revision is never edited: its version is 1, one more once it has ended, and one more for each mark. */
  async versionsOf(db: Db, planIds: readonly string[]): Promise<Map<string, number>> {
    if (planIds.length === 0) return new Map();
    const rows = await db.planRevision.findMany({
      where: { id: { in: [...planIds] } },
      select: { id: true, finishedAt: true, _count: { select: { staleness: true } } },
    });
    return new Map(rows.map((row) => [row.id, 1 + (row.finishedAt ? 1 : 0) + row._count.staleness]));
  }

  /** Adds the mark to each plan that does not have it yet, and tells which those were. */
  async mark(db: Db, gardenId: string, planIds: readonly string[], mark: StaleMark): Promise<string[]> {
    if (planIds.length === 0) return [];
    const marked = await db.planStaleness.findMany({
      where: { planId: { in: [...planIds] }, reason: mark.reason, subject: mark.subject },
      select: { planId: true },
    });
    const already = new Set(marked.map(({ planId }) => planId));
    const data = planIds
      .filter((planId) => !already.has(planId))
      .map((planId) => ({ gardenId, id: newId(), planId, reason: mark.reason, subject: mark.subject }));
    if (data.length > 0) await db.planStaleness.createMany({ data });
    return data.map(({ planId }) => planId);
  }
}
