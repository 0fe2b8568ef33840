import type { TakeOffLine } from '@lathwork/model';
import { currencyDigits } from '@lathwork/units';
import type { Column } from '../../platform/csv/csv.js';
import type { PriceForExport } from '../prices/prices.read.js';
import type { StockForExport } from '../stock/stock.read.js';

interface Money {
  minor: number;
  currency: string;
}

/** In whole units of the currency, for people who calculate in a spreadsheet; the minor units beside it are exact. */
const inUnits = (money: Money | null): number | null => {
  const digits = money && currencyDigits(money.currency);
  return money && digits !== null && digits !== undefined ? Number((money.minor / 10 ** digits).toFixed(digits)) : null;
};

const money = <T>(name: string, of: (row: T) => Money | null): Column<T>[] => [
  { name: `${name}Minor`, of: (row) => of(row)?.minor ?? null },
  { name, of: (row) => inUnits(of(row)) },
  { name: `${name}Currency`, of: (row) => of(row)?.currency ?? null },
];

export const STOCK_COLUMNS: readonly Column<StockForExport>[] = [
  { name: 'id', of: ({ id }) => id },
  { name: 'tag', of: ({ tag }) => tag },
  { name: 'kind', of: ({ kind }) => kind },
  { name: 'material', of: ({ material }) => material },
  { name: 'grade', of: ({ grade }) => grade },
  { name: 'hazards', of: ({ hazards }) => hazards.join(' ') },
  { name: 'count', of: ({ count }) => count },
  { name: 'freeCount', of: ({ freeCount }) => freeCount },
  { name: 'widthMm', of: ({ widthMm }) => widthMm },
  { name: 'heightMm', of: ({ heightMm }) => heightMm },
  { name: 'thicknessMm', of: ({ thicknessMm }) => thicknessMm },
  { name: 'lengthMm', of: ({ lengthMm }) => lengthMm },
  { name: 'usableLengthMm', of: ({ usableLengthMm }) => usableLengthMm },
  { name: 'volumeL', of: ({ volumeL }) => volumeL },
  { name: 'ageY', of: ({ ageY }) => ageY },
  ...money<StockForExport>('replacement', ({ replacement }) => replacement),
  { name: 'createdAt', of: ({ createdAt }) => createdAt },
];

export const PRICE_COLUMNS: readonly Column<PriceForExport>[] = [
  { name: 'id', of: ({ id }) => id },
  { name: 'material', of: ({ material }) => material },
  { name: 'unit', of: ({ unit }) => unit },
  { name: 'packAmount', of: ({ packAmount }) => packAmount },
  ...money<PriceForExport>('packPrice', ({ packPrice }) => packPrice),
  { name: 'pieceWidthM', of: ({ pieceWidthM }) => pieceWidthM },
  { name: 'pieceLengthM', of: ({ pieceLengthM }) => pieceLengthM },
  { name: 'readOn', of: ({ readOn }) => readOn },
  { name: 'supplier', of: ({ supplier }) => supplier },
  { name: 'createdAt', of: ({ createdAt }) => createdAt },
];

export const MATERIAL_COLUMNS: readonly Column<TakeOffLine>[] = [
  { name: 'lineId', of: ({ lineId }) => lineId },
  { name: 'group', of: ({ group }) => group },
  { name: 'mark', of: ({ mark }) => mark },
  { name: 'material', of: ({ material }) => material },
  { name: 'unit', of: ({ unit }) => unit },
  { name: 'need', of: ({ need }) => need },
  { name: 'wasteFrac', of: ({ wasteFrac }) => wasteFrac },
  { name: 'wasteReason', of: ({ wasteReason }) => wasteReason },
  { name: 'wanted', of: ({ wanted }) => wanted },
  { name: 'reclaimedTags', of: ({ reclaimed }) => reclaimed.map(({ tag }) => tag).join(' ') || null },
  { name: 'reclaimedAmount', of: ({ reclaimed }) => reclaimed.reduce((sum, { amount }) => sum + amount, 0) },
  { name: 'toBuy', of: ({ toBuy }) => toBuy },
  { name: 'packs', of: ({ packs }) => packs },
  { name: 'packAmount', of: ({ packAmount }) => packAmount },
  { name: 'boughtAmount', of: ({ boughtAmount }) => boughtAmount },
  ...money<TakeOffLine>('cash', ({ cash }) => cash),
  { name: 'supplier', of: ({ supplier }) => supplier },
  { name: 'priceReadOn', of: ({ priceReadOn }) => priceReadOn },
  { name: 'priceStale', of: ({ priceStale }) => priceStale },
];
