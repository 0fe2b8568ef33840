import type { AmountUnit, ExchangeRate, MaterialKey, Price } from '@lathwork/model';
import { Injectable } from '@nestjs/common';
import type { Db } from '../../platform/database/database.js';
import type { ExchangeRate as RateRow, Price as PriceRow } from '../../platform/database/generated/client.js';
import type { AsTyped } from '../../platform/http/quantity-field.js';
import { dateToDay, dayToDate, toKept, type Kept, type ListFilter, type Step } from '../shared/resource.js';

export interface PriceFields extends Omit<Price, 'priceId'> {
  asTyped: AsTyped;
}
export type PriceRecord = Kept & PriceFields;

export interface RateRecord extends ExchangeRate {
  id: string;
  createdAt: string;
}

export interface PriceFilter extends ListFilter {
  material: string | null;
}

const toModel = (row: PriceRow): PriceRecord => ({
  ...toKept(row),
  material: row.material as MaterialKey,
  unit: row.unit as AmountUnit,
  packAmount: row.packAmount,
  packPrice: { minor: Number(row.packPriceMinor), currency: row.currency },
  pieceWidthM: row.pieceWidthM,
  pieceLengthM: row.pieceLengthM,
  readOn: row.readOn ? dateToDay(row.readOn) : null,
  supplier: row.supplier,
  asTyped: (row.asTyped ?? {}) as AsTyped,
});

const toRow = (price: PriceFields) => ({
  material: price.material,
  unit: price.unit,
  packAmount: price.packAmount,
  packPriceMinor: BigInt(price.packPrice.minor),
  currency: price.packPrice.currency,
  pieceWidthM: price.pieceWidthM,
  pieceLengthM: price.pieceLengthM,
  readOn: price.readOn === null ? null : dayToDate(price.readOn),
  supplier: price.supplier,
  asTyped: price.asTyped,
});

const rateToModel = (row: RateRow): RateRecord => ({
  id: row.id,
  from: row.fromCurrency,
  to: row.toCurrency,
  rate: row.rate,
  readOn: dateToDay(row.readOn),
  createdAt: row.createdAt.toISOString(),
});

@Injectable()
export class PricesRepository {
  async insert(db: Db, gardenId: string, id: string, price: PriceFields): Promise<PriceRecord> {
    return toModel(await db.price.create({ data: { gardenId, id, ...toRow(price) } }));
  }

  async find(db: Db, id: string): Promise<PriceRecord | null> {
    const row = await db.price.findFirst({ where: { id } });
    return row && toModel(row);
  }

  async list(db: Db, filter: PriceFilter, step: Step): Promise<PriceRecord[]> {
    const rows = await db.price.findMany({
      where: {
        ...(filter.archived ? {} : { archivedAt: null }),
        ...(filter.material ? { material: filter.material } : {}),
        ...(step.after ? { id: { gt: step.after } } : {}),
      },
      orderBy: { id: 'asc' },
      take: step.take,
    });
    return rows.map(toModel);
  }

  async update(db: Db, was: PriceRecord, price: PriceFields): Promise<PriceRecord | null> {
    return this.change(db, was, toRow(price));
  }

  async setArchived(db: Db, was: PriceRecord, archivedAt: Date | null): Promise<PriceRecord | null> {
    return this.change(db, was, { archivedAt });
  }

  async insertRate(db: Db, gardenId: string, id: string, rate: ExchangeRate): Promise<RateRecord> {
    return rateToModel(
      await db.exchangeRate.create({
        data: { gardenId, id, fromCurrency: rate.from, toCurrency: rate.to, rate: rate.rate, readOn: dayToDate(rate.readOn) },
      }),
    );
  }

  async findRate(db: Db, id: string): Promise<RateRecord | null> {
    const row = await db.exchangeRate.findFirst({ where: { id } });
    return row && rateToModel(row);
  }

  async listRates(db: Db, step: Step): Promise<RateRecord[]> {
    const rows = await db.exchangeRate.findMany({
      where: { archivedAt: null, ...(step.after ? { id: { gt: step.after } } : {}) },
      orderBy: { id: 'asc' },
      take: step.take,
    });
    return rows.map(rateToModel);
  }

  /** The newest rate of each pair of currencies. */
  async newestRates(db: Db, take: number): Promise<RateRecord[]> {
    const rows = await db.exchangeRate.findMany({
      where: { archivedAt: null },
      orderBy: [{ fromCurrency: 'asc' }, { toCurrency: 'asc' }, { readOn: 'desc' }],
      distinct: ['fromCurrency', 'toCurrency'],
      take,
    });
    return rows.map(rateToModel);
  }

  private async change(db: Db, was: PriceRecord, data: object): Promise<PriceRecord | null> {
    const [row] = await db.price.updateManyAndReturn({ where: { id: was.id, version: was.version }, data: { ...data, version: { increment: 1 } } });
    return row ? toModel(row) : null;
  }
}
