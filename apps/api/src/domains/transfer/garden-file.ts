import type { BudgetInputs, Crew, PlanInputs, PlanResult, Price, SiteInputs, StockItem, StructureInputs, Wishes } from '@lathwork/model';
import type { Outline } from '../../platform/http/outline-field.js';
import type { AsTyped } from '../../platform/http/quantity-field.js';

/** What a packed garden says it is. Raised when a reader of the older form would misunderstand it. */
export const GARDEN_FORMAT = 'lathwork-garden';
export const PERSON_FORMAT = 'lathwork-person';
export const TRANSFER_SCHEMA_VERSION = 1;

/** What every thing tells of itself in an archive; what it was numbered here means nothing elsewhere. */
interface Moved {
  id: string;
  createdAt: string;
  archivedAt: string | null;
  asTyped: AsTyped;
}

export type MovedSite = Moved & Omit<SiteInputs, 'siteId'> & { name: string; shared: boolean; stationId: string | null; outline: Outline | null };
export type MovedStructure = Moved & Omit<StructureInputs, 'structureId'> & { name: string; shared: boolean };
export type MovedStock = Moved & Omit<StockItem, 'stockId'>;
export type MovedPrice = Moved & Omit<Price, 'priceId'>;

export interface MovedRate {
  id: string;
  from: string;
  to: string;
  rate: number;
  readOn: string;
  createdAt: string;
}

export interface MovedBuild extends Moved {
  name: string;
  siteId: string;
  structureId: string;
  wishes: Wishes;
  crew: Crew;
  budget: BudgetInputs;
  variantOf: string | null;
  variantLabel: string | null;
  shared: boolean;
}

export interface MovedClaim {
  id: string;
  stockId: string;
  buildId: string;
  count: number;
  createdAt: string;
}

export interface MovedPlan {
  id: string;
  buildId: string;
  revision: number;
  createdAt: string;
  finishedAt: string;
  inputs: PlanInputs;
  result: PlanResult;
  stale: { reason: string; subject: string | null; since: string }[];
  asBuilt: { id: string; observedOn: string; createdAt: string; details: unknown }[];
}

export interface MovedPhoto {
  id: string;
  stockId: string | null;
  buildId: string | null;
  caption: string | null;
  widthPixelCount: number;
  heightPixelCount: number;
  createdAt: string;
  file: string;
}

export interface GardenSettings {
  id: string;
  name: string;
  locale: string;
  currency: string;
  unitSystem: string;
  invented: boolean;
}

/** Everything of a garden that can live elsewhere: no people, no keys, no history. */
export interface GardenContents {
  schemaVersion: typeof TRANSFER_SCHEMA_VERSION;
  garden: GardenSettings;
  sites: MovedSite[];
  structures: MovedStructure[];
  stock: MovedStock[];
  prices: MovedPrice[];
  exchangeRates: MovedRate[];
  builds: MovedBuild[];
  claims: MovedClaim[];
  plans: MovedPlan[];
  photos: MovedPhoto[];
}

/** The lists of a garden, in the order in which one may point to an earlier one. */
export const LISTS = ['sites', 'structures', 'stock', 'prices', 'exchangeRates', 'builds', 'claims', 'plans', 'photos'] as const;
export type ListName = (typeof LISTS)[number];

/** Told of every imported plan: its figures were calculated by another server, and nobody here has looked at them. */
export const IMPORTED = 'imported';
