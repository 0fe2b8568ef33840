import type { ExchangeRate, Money, Price } from '@lathwork/model';
import { ALLOWANCE } from '../data/waste.js';
import type { Need } from './takeoff-needs.js';

/** What buying an amount costs by one price. */
export interface Offer {
  price: Price;
  packs: number;
  /** In the plan's currency where the price is in it or a dated rate turns it; else in its own. */
  cash: Money;
  stale: boolean;
  undated: boolean;
  converted: ExchangeRate | null;
}

const days = (from: string, to: string): number => (Date.parse(to) - Date.parse(from)) / 86_400_000;

/** The newest rate by which one currency becomes the other; a rate nobody dated is none. */
const rateFor = (from: string, to: string, rates: readonly ExchangeRate[]): ExchangeRate | null =>
  [...rates].filter((r) => r.from === from && r.to === to).sort((a, b) => b.readOn.localeCompare(a.readOn))[0] ?? null;

const offerOf = (price: Price, amount: number, currency: string, rates: readonly ExchangeRate[], asOf: string): Offer => {
  const packs = Math.ceil(amount / price.packAmount - 1e-9);
  const own = packs * price.packPrice.minor;
  const rate = price.packPrice.currency === currency ? null : rateFor(price.packPrice.currency, currency, rates);
  const undated = price.readOn === null;
  return {
    price,
    packs,
    cash: rate ? { minor: Math.round(own * rate.rate), currency } : { minor: own, currency: price.packPrice.currency },
    stale: price.readOn === null || days(price.readOn, asOf) > ALLOWANCE.priceFreshD,
    undated,
    converted: rate,
  };
};

/**
 * The offer to take: in the plan's currency before a foreign one, a dated and fresh one before an old one, then the
 * cheapest. Where the width or length of the piece matters, only a price of that piece is asked first.
 */
export const bestOffer = (
  need: Need,
  amount: number,
  prices: readonly Price[],
  currency: string,
  rates: readonly ExchangeRate[],
  asOf: string,
): Offer | null => {
  const alike = prices.filter((p) => p.material === need.material && p.unit === need.unit);
  const near = (a: number | null, b: number | null | undefined) => b === null || b === undefined || (a !== null && Math.abs(a - b) < 0.011);
  const exact = alike.filter((p) => near(p.pieceWidthM, need.pieceWidthM) && near(p.pieceLengthM, need.cut?.boughtPieceM));
  const offers = (exact.length > 0 ? exact : alike).map((p) => offerOf(p, amount, currency, rates, asOf));
  const rank = (o: Offer) => (o.cash.currency === currency ? 0 : 2) + (o.stale ? 1 : 0);
  offers.sort((a, b) => rank(a) - rank(b) || a.cash.minor - b.cash.minor || a.price.priceId.localeCompare(b.price.priceId));
  return offers[0] ?? null;
};
