import type { Hazard, MaterialKey, StockItem } from '@lathwork/model';
import { Injectable } from '@nestjs/common';
import type { Db } from '../../platform/database/database.js';
import type { StockItem as StockRow } from '../../platform/database/generated/client.js';
import type { AsTyped } from '../../platform/http/quantity-field.js';
import { toKept, type Kept, type ListFilter, type Step } from '../shared/resource.js';

export interface StockFields extends Omit<StockItem, 'stockId'> {
  asTyped: AsTyped;
  /** Who gave it, sealed; null where nobody is noted. */
  donorSealed: string | null;
}
export type StockRecord = Kept & StockFields & { freeCount: number };

export interface ClaimRecord {
  id: string;
  buildId: string;
  stockId: string;
  tag: string;
  count: number;
  createdAt: string;
}

export interface StockFilter extends ListFilter {
  kind: string | null;
  grade: string | null;
  free: boolean | null;
}

type Details = Omit<StockFields, 'tag' | 'kind' | 'material' | 'grade' | 'hazards' | 'count'>;

const toModel = (row: StockRow, claimedCount: number): StockRecord => {
  const details = row.details as unknown as Details;
  return {
    ...toKept(row),
    tag: row.tag,
    kind: row.kind as StockItem['kind'],
    material: row.material as MaterialKey,
    grade: row.grade as StockItem['grade'],
    hazards: row.hazards as Hazard[],
    count: row.count,
    widthMm: details.widthMm,
    heightMm: details.heightMm,
    thicknessMm: details.thicknessMm,
    lengthMm: details.lengthMm,
    usableLengthMm: details.usableLengthMm,
    volumeL: details.volumeL,
    ageY: details.ageY,
    replacement: details.replacement,
    asTyped: details.asTyped,
    donorSealed: details.donorSealed ?? null,
    freeCount: row.count - claimedCount,
  };
};

const toRow = ({ tag, kind, material, grade, hazards, count, ...details }: StockFields) => ({
  tag,
  kind,
  material,
  grade,
  hazards,
  count,
  unitItem: count === 1,
  details: details as object,
});

const toClaim = (row: { id: string; buildId: string; stockItemId: string; count: number; createdAt: Date; item: { tag: string } }): ClaimRecord => ({
  id: row.id,
  buildId: row.buildId,
  stockId: row.stockItemId,
  tag: row.item.tag,
  count: row.count,
  createdAt: row.createdAt.toISOString(),
});

@Injectable()
export class StockRepository {
  async insert(db: Db, gardenId: string, id: string, item: StockFields): Promise<StockRecord> {
    return toModel(await db.stockItem.create({ data: { gardenId, id, ...toRow(item) } }), 0);
  }

  async find(db: Db, id: string): Promise<StockRecord | null> {
    const [item] = await this.withClaims(db, await db.stockItem.findMany({ where: { id } }));
    return item ?? null;
  }

  /** Locks the row until the end of the transaction, so that claims on one thing are decided one after the other. */
  async lockByTag(db: Db, tag: string): Promise<StockRecord | null> {
    const [locked] = await db.$queryRaw<{ id: string }[]>`SELECT id FROM stock_items WHERE tag = ${tag} FOR NO KEY UPDATE`;
    return locked ? this.find(db, locked.id) : null;
  }

  async list(db: Db, filter: StockFilter, step: Step): Promise<StockRecord[]> {
    const ids = await db.$queryRaw<{ id: string }[]>`
      SELECT s.id FROM stock_items s
        LEFT JOIN (SELECT stock_item_id, sum(count) AS taken FROM stock_claims WHERE released_at IS NULL GROUP BY 1) c ON c.stock_item_id = s.id
       WHERE (${filter.archived} OR s.archived_at IS NULL)
         AND (${filter.kind}::text IS NULL OR s.kind = ${filter.kind}) AND (${filter.grade}::text IS NULL OR s.grade = ${filter.grade})
         AND (${filter.free}::boolean IS NULL OR (s.count > coalesce(c.taken, 0)) = ${filter.free})
         AND (${step.after}::uuid IS NULL OR s.id > ${step.after}::uuid)
       ORDER BY s.id LIMIT ${step.take}`;
    return this.withClaims(db, await db.stockItem.findMany({ where: { id: { in: ids.map(({ id }) => id) } }, orderBy: { id: 'asc' } }));
  }

  async update(db: Db, was: StockRecord, item: StockFields): Promise<StockRecord | null> {
    return this.change(db, was, toRow(item));
  }

  async setArchived(db: Db, was: StockRecord, archivedAt: Date | null): Promise<StockRecord | null> {
    return this.change(db, was, { archivedAt });
  }

  async insertClaim(db: Db, gardenId: string, id: string, claim: { buildId: string; item: StockRecord; count: number }): Promise<ClaimRecord> {
    const row = await db.stockClaim.create({
      data: { gardenId, id, buildId: claim.buildId, stockItemId: claim.item.id, unitItem: claim.item.count === 1, count: claim.count },
      include: { item: { select: { tag: true } } },
    });
    return toClaim(row);
  }

  async activeClaims(db: Db, where: { stockItemId: string } | { buildId: string }, step?: Step): Promise<ClaimRecord[]> {
    const rows = await db.stockClaim.findMany({
      where: { ...where, releasedAt: null, ...(step?.after ? { id: { gt: step.after } } : {}) },
      include: { item: { select: { tag: true } } },
      orderBy: { id: 'asc' },
      ...(step ? { take: step.take } : {}),
    });
    return rows.map(toClaim);
  }

  async findClaim(db: Db, buildId: string, id: string): Promise<ClaimRecord | null> {
    const row = await db.stockClaim.findFirst({ where: { id, buildId, releasedAt: null }, include: { item: { select: { tag: true } } } });
    return row && toClaim(row);
  }

  async release(db: Db, claimId: string): Promise<boolean> {
    const { count } = await db.stockClaim.updateMany({ where: { id: claimId, releasedAt: null }, data: { releasedAt: new Date(), version: { increment: 1 } } });
    return count === 1;
  }

  /** Free things of the same kind, to be offered in place of one that is taken. */
  async freeOfKind(db: Db, kind: string, take: number): Promise<StockRecord[]> {
    const items = await this.list(db, { archived: false, kind, grade: null, free: true }, { after: null, take });
    return items.filter(({ grade }) => grade !== 'X');
  }

  async byIds(db: Db, ids: readonly string[]): Promise<StockRecord[]> {
    return this.withClaims(db, await db.stockItem.findMany({ where: { id: { in: [...ids] } }, orderBy: { id: 'asc' } }));
  }

  private async change(db: Db, was: StockRecord, data: object): Promise<StockRecord | null> {
    const [item] = await this.withClaims(
      db,
      await db.stockItem.updateManyAndReturn({ where: { id: was.id, version: was.version }, data: { ...data, version: { increment: 1 } } }),
    );
    return item ?? null;
  }

  private async withClaims(db: Db, rows: readonly StockRow[]): Promise<StockRecord[]> {
    const sums = await db.stockClaim.groupBy({
      by: ['stockItemId'],
      where: { stockItemId: { in: rows.map(({ id }) => id) }, releasedAt: null },
      _sum: { count: true },
    });
    const taken = new Map(sums.map((sum) => [sum.stockItemId, sum._sum.count ?? 0]));
    return rows.map((row) => toModel(row, taken.get(row.id) ?? 0));
  }
}
