import { toCsv, type Cell, type Column } from '../../platform/csv/csv.js';
import type { GardenContents, ListName } from './garden-file.js';

type Item = Record<string, unknown>;

const cellOf = (value: unknown): Cell => {
  if (value === undefined || value === null) return null;
  if (typeof value === 'string' || typeof value === 'number' || typeof value === 'boolean') return value;
  return Array.isArray(value) && value.every((one) => typeof one !== 'object') ? value.join(' ') : JSON.stringify(value);
};

const column = (name: string): Column<Item> => ({ name, of: (item) => cellOf(item[name]) });

const COLUMNS: Readonly<Record<ListName, readonly string[]>> = {
  sites: [
    'id',
    'name',
    'latitudeDeg',
    'longitudeDeg',
    'elevationM',
    'timeZone',
    'stationId',
    'exposure',
    'nearHilltop',
    'soilClass',
    'frostDepthM',
    'wind',
    'snow',
    'shared',
    'archivedAt',
  ],
  structures: [
    'id',
    'name',
    'kind',
    'widthM',
    'lengthM',
    'eaveM',
    'ridgeM',
    'frontFacesDeg',
    'bowsAtM',
    'tube',
    'cover',
    'openings',
    'anchor',
    'shared',
    'archivedAt',
  ],
  stock: [
    'id',
    'tag',
    'kind',
    'material',
    'grade',
    'hazards',
    'count',
    'widthMm',
    'heightMm',
    'thicknessMm',
    'lengthMm',
    'usableLengthMm',
    'volumeL',
    'ageY',
    'replacement',
    'archivedAt',
  ],
  prices: ['id', 'material', 'unit', 'packAmount', 'packPrice', 'pieceWidthM', 'pieceLengthM', 'readOn', 'supplier', 'archivedAt'],
  exchangeRates: ['id', 'from', 'to', 'rate', 'readOn'],
  builds: ['id', 'name', 'siteId', 'structureId', 'wishes', 'crew', 'budget', 'variantOf', 'variantLabel', 'shared', 'archivedAt'],
  claims: ['id', 'stockId', 'buildId', 'count', 'createdAt'],
  plans: ['id', 'buildId', 'revision', 'createdAt', 'finishedAt'],
  photos: ['id', 'stockId', 'buildId', 'caption', 'widthPixelCount', 'heightPixelCount', 'file'],
};

/** The lists as tables for a spreadsheet. What is more than one value stands as JSON in its cell. */
export const tablesOf = (lists: Pick<GardenContents, ListName>): { name: string; bytes: Buffer }[] =>
  Object.entries(COLUMNS).map(([list, names]) => ({
    name: `tables/${list}.csv`,
    bytes: Buffer.from(toCsv(names.map(column), lists[list as ListName] as unknown as Item[])),
  }));
