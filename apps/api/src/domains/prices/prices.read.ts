import type { ExchangeRate, Price } from '@lathwork/model';
import { Injectable } from '@nestjs/common';
import type { Db } from '../../platform/database/database.js';
import { priceOf } from './prices.dto.js';
import { PricesRepository, type PriceRecord } from './prices.repository.js';

const MOST_PRICES = 2000;
const MOST_RATES = 20;

export type PriceForExport = Omit<PriceRecord, 'asTyped'>;

/** What other domains may ask about prices. */
@Injectable()
export class PricesRead {
  constructor(private readonly prices: PricesRepository) {}

  async all(db: Db, most: number): Promise<PriceForExport[]> {
    return this.prices.list(db, { archived: false, material: null }, { after: null, take: most });
  }

  async forPlan(db: Db): Promise<Price[]> {
    const prices = await this.prices.list(db, { archived: false, material: null }, { after: null, take: MOST_PRICES });
    return prices.map((price) => ({ priceId: price.id, ...priceOf(price) }));
  }

  /** The newest rate of each pair of currencies. */
  async ratesForPlan(db: Db): Promise<ExchangeRate[]> {
    const rates = await this.prices.newestRates(db, MOST_RATES);
    return rates.map(({ from, to, rate, readOn }) => ({ from, to, rate, readOn }));
  }
}
