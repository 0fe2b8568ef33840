import type { StockItem } from '@lathwork/model';
import { Injectable } from '@nestjs/common';
import type { Db } from '../../platform/database/database.js';
import { must, mustNotBeArchived } from '../shared/change.js';
import { thingOf } from './stock.dto.js';
import { StockRepository, type StockRecord } from './stock.repository.js';

export type StockForExport = Omit<StockRecord, 'asTyped'>;

/** What other domains may ask about the pile. */
@Injectable()
export class StockRead {
  constructor(private readonly stock: StockRepository) {}

  async mustExist(db: Db, id: string): Promise<StockRecord> {
    return must(await this.stock.find(db, id), 'stock item');
  }

  async mustBeActive(db: Db, id: string): Promise<StockRecord> {
    const item = await this.mustExist(db, id);
    mustNotBeArchived(item, 'stock item');
    return item;
  }

  async all(db: Db, most: number): Promise<StockForExport[]> {
    return this.stock.list(db, { archived: false, kind: null, grade: null, free: null }, { after: null, take: most });
  }

  /**
   * What is held for a build, with the count that is held. Nothing else of the pile gets into its plan: what is only
   * free today may be promised to another build tomorrow, and two plans would count on the same door.
   */
  async claimedFor(db: Db, buildId: string): Promise<StockItem[]> {
    const claims = await this.stock.activeClaims(db, { buildId });
    const counts = new Map<string, number>();
    for (const claim of claims) counts.set(claim.stockId, (counts.get(claim.stockId) ?? 0) + claim.count);
    const items = await this.stock.byIds(db, [...counts.keys()]);
    return items.map((item) => ({ stockId: item.id, ...thingOf(item), count: counts.get(item.id) ?? item.count }));
  }
}
