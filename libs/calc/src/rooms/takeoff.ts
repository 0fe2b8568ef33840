/**
 * Take-off: what the build needs, what of it lies in the pile, what is bought, and what that costs.
 *
 * Gives: a line for each material with net need, allowance and its reason, reclaimed things by tag, whole packs and cash.
 * Model: net quantities from the drawings and the cutting plan; allowances from data/waste; one pass over the pile.
 * Assumes: a tag serves one line; a reclaimed board is used up once it is cut; a price holds for any number of packs.
 * Validity: prices older than twelve months or without a date are used and flagged; one in another currency counts in
 *   the plan's only by a dated rate, and stays in its own otherwise; no price is null, never zero.
 * Fields: amounts in the line's unit; money in minor units.
 * References: LOW-COST-PRACTICE, JUDGEMENT-MATERIALS, COVER-DAY, UCONN-FILM.
 */
import type { ExchangeRate, GeometryResult, Note, Price, StockItem, TakeOffLine, TakeOffResult } from '@lathwork/model';
import type { RoomModel, RoomOutput } from './room.js';
import { needsOf, type Need, type NeedsInput } from './takeoff-needs.js';
import { Pool } from './takeoff-pool.js';
import { bestOffer, type Offer } from './takeoff-prices.js';

export const TAKEOFF_MODEL = {
  room: 'takeoff',
  title: 'Quantities from the drawings, reclaimed first, whole packs',
  ranges: {},
  sources: ['LOW-COST-PRACTICE', 'JUDGEMENT-MATERIALS', 'COVER-DAY', 'UCONN-FILM'],
} as const satisfies RoomModel;

export interface TakeOffInput extends NeedsInput {
  stock: readonly StockItem[];
  prices: readonly Price[];
  asOf: string;
  currency: string;
  rates: readonly ExchangeRate[];
}

interface Filled {
  line: TakeOffLine;
  offer: Offer | null;
}

/** Money is told in whole amounts of what is counted: nobody buys 12.7 anchors. */
const rounded = (need: Need, amount: number): number => (need.unit === 'each' || need.unit === 'set' ? Math.ceil(amount - 1e-9) : amount);

const fill = (need: Need, pool: Pool, input: TakeOffInput): Filled => {
  const wanted = rounded(need, need.need * (1 + need.wasteFrac));
  const reclaimed = pool.meet(need, wanted);
  const fromPile = reclaimed.reduce((n, r) => n + r.amount, 0);
  const toBuy = Math.max(wanted - fromPile, 0);
  const buys = toBuy > 1e-9;
  // A length that no board on the list can give has no price, whatever the shorter boards cost.
  const offer = buys && !(need.cut && need.cut.unplacedM > 0) ? bestOffer(need, toBuy, input.prices, input.currency, input.rates, input.asOf) : null;
  return {
    offer,
    line: {
      lineId: need.lineId,
      group: need.group,
      material: need.material,
      mark: need.mark,
      unit: need.unit,
      need: need.need,
      wasteFrac: Math.max(need.wasteFrac, 0),
      wasteReason: need.wasteReason,
      wanted,
      reclaimed,
      toBuy: buys ? toBuy : 0,
      packs: offer?.packs ?? 0,
      packAmount: offer?.price.packAmount ?? null,
      boughtAmount: offer ? offer.packs * offer.price.packAmount : 0,
      cash: buys ? (offer?.cash ?? null) : { minor: 0, currency: input.currency },
      priceId: offer?.price.priceId ?? null,
      supplier: offer?.price.supplier ?? null,
      priceReadOn: offer?.price.readOn ?? null,
      priceStale: offer?.stale ?? false,
    },
  };
};

const priceNotes = (filled: readonly Filled[], currency: string): Note[] => {
  const about = { room: 'takeoff' } as const;
  const ids = (of: (f: Filled) => boolean) => filled.filter(of).map((f) => f.line.lineId);
  const unpriced = ids((f) => f.line.cash === null);
  const stale = ids((f) => f.offer !== null && f.offer.stale && !f.offer.undated);
  const undated = ids((f) => f.offer?.undated ?? false);
  return [
    ...(unpriced.length > 0
      ? [{ ...about, code: 'takeoff.price-unknown', severity: 'ask', params: { linesCount: unpriced.length, lineIds: unpriced } } satisfies Note]
      : []),
    ...(stale.length > 0
      ? [{ ...about, code: 'takeoff.price-stale', severity: 'care', params: { linesCount: stale.length, lineIds: stale } } satisfies Note]
      : []),
    ...(undated.length > 0
      ? [{ ...about, code: 'takeoff.price-undated', severity: 'ask', params: { linesCount: undated.length, lineIds: undated } } satisfies Note]
      : []),
    ...filled.flatMap(({ line, offer }): Note[] => {
      if (!offer || offer.price.packPrice.currency === currency) return [];
      const own = offer.price.packPrice.currency;
      return offer.converted
        ? [
            {
              ...about,
              code: 'takeoff.price-converted',
              severity: 'note',
              subject: line.lineId,
              params: { from: own, to: currency, rateRatio: offer.converted.rate, readOn: offer.converted.readOn },
            },
          ]
        : [{ ...about, code: 'takeoff.price-in-other-currency', severity: 'ask', subject: line.lineId, params: { from: own, to: currency } }];
    }),
  ];
};

/** A chosen door or window that is larger than its opening cannot go in. */
const sizeNotes = (geometry: GeometryResult, stock: readonly StockItem[]): Note[] =>
  geometry.openings.flatMap((o): Note[] => {
    const item = stock.find((i) => i.tag === o.stockTag);
    if (!item || item.widthMm === null || item.heightMm === null) return [];
    const overM = Math.max(item.widthMm / 1000 - o.widthM, item.heightMm / 1000 - o.heightM);
    if (overM <= 0) return [];
    return [
      {
        code: 'takeoff.item-larger-than-opening',
        severity: 'stop',
        room: 'takeoff',
        subject: item.tag,
        beforeTask: 'endFrames',
        params: { openingId: o.openingId, overM },
      },
    ];
  });

const anchorNotes = ({ structure }: TakeOffInput): Note[] => {
  const { kind, depthM, diameterM, ballastKg } = structure.anchor;
  const missing = (kind === 'concretePier' && (depthM === 'unknown' || diameterM === 'unknown')) || (kind === 'ballast' && ballastKg === 'unknown');
  return missing ? [{ code: 'takeoff.anchor-size-unknown', severity: 'ask', room: 'takeoff', subject: kind, beforeTask: 'anchors', params: { kind } }] : [];
};

export const computeTakeOff = (input: TakeOffInput): RoomOutput<TakeOffResult> => {
  const needs = needsOf(input).filter((n) => n.need > 0);
  const pool = new Pool(input.stock, new Set(needs.flatMap((n) => n.tags)));
  const filled = needs.map((need) => fill(need, pool, input));
  const foundFilm: Note[] =
    input.structure.cover.film === 'found' || input.structure.cover.ageY === 'unknown'
      ? [
          {
            code: 'takeoff.found-film-bought-new',
            severity: 'care',
            room: 'takeoff',
            subject: 'film-main',
            beforeTask: 'mainCover',
            params: { film: input.structure.cover.film },
          },
        ]
      : [];
  return {
    result: { lines: filled.map((f) => f.line), unpricedCount: filled.filter((f) => f.line.cash === null).length },
    notes: [
      ...pool.notes,
      ...foundFilm,
      ...anchorNotes(input),
      ...sizeNotes(input.geometry, input.stock),
      ...priceNotes(filled, input.currency),
      ...pool.refusals(['sill.89x140', 'board.38x89', 'batten.19x38']),
    ],
    sources: [...TAKEOFF_MODEL.sources],
  };
};
