import type { AmountUnit, BudgetInputs, Crew, MaterialKey, PlanInputs, PlanResult, StockItem, Wishes } from '@lathwork/model';
import { Injectable } from '@nestjs/common';
import type { Db } from '../../platform/database/database.js';
import type { AsTyped } from '../../platform/http/quantity-field.js';
import type { Build, Price, Site, StockItem as StockRow, Structure } from '../../platform/database/generated/client.js';
import { priceOf } from '../prices/prices.dto.js';
import { dateToDay } from '../shared/resource.js';
import { coarsened, groundOf } from '../sites/sites.dto.js';
import { thingOf } from '../stock/stock.dto.js';
import { shelterOf } from '../structures/structures.dto.js';
import {
  IMPORTED,
  type GardenContents,
  type GardenSettings,
  type MovedBuild,
  type MovedPhoto,
  type MovedPlan,
  type MovedPrice,
  type MovedSite,
  type MovedStock,
  type MovedStructure,
} from './garden-file.js';

interface Row {
  id: string;
  createdAt: Date;
  archivedAt: Date | null;
}

const movedOf = (row: Row, asTyped: unknown) => ({
  id: row.id,
  createdAt: row.createdAt.toISOString(),
  archivedAt: row.archivedAt?.toISOString() ?? null,
  asTyped: (asTyped ?? {}) as AsTyped,
});

const siteOf = (row: Site, exact: boolean): MovedSite => {
  const details = row.details as unknown as MovedSite;
  const site: MovedSite = {
    ...movedOf(row, details.asTyped),
    name: row.name,
    latitudeDeg: row.latitudeDeg,
    longitudeDeg: row.longitudeDeg,
    elevationM: row.elevationM,
    timeZone: row.timeZone,
    stationId: row.stationId,
    outline: details.outline ?? null,
    shared: row.shared,
    ...groundOf(details),
  };
  return exact ? site : coarsened(site);
};

const structureOf = (row: Structure): MovedStructure => {
  const details = row.details as unknown as MovedStructure;
  return { ...movedOf(row, details.asTyped), name: row.name, shared: row.shared, ...shelterOf({ ...details, kind: row.kind as MovedStructure['kind'] }) };
};

const stockOf = (row: StockRow): MovedStock => {
  const details = row.details as unknown as MovedStock;
  const thing = { tag: row.tag, kind: row.kind as StockItem['kind'], material: row.material as MaterialKey, grade: row.grade as StockItem['grade'] };
  return { ...movedOf(row, details.asTyped), ...thingOf({ ...details, ...thing, hazards: row.hazards as StockItem['hazards'], count: row.count }) };
};

const priceItemOf = (row: Price): MovedPrice => ({
  ...movedOf(row, row.asTyped),
  ...priceOf({
    material: row.material as MaterialKey,
    unit: row.unit as AmountUnit,
    packAmount: row.packAmount,
    packPrice: { minor: Number(row.packPriceMinor), currency: row.currency },
    pieceWidthM: row.pieceWidthM,
    pieceLengthM: row.pieceLengthM,
    readOn: row.readOn ? dateToDay(row.readOn) : null,
    supplier: row.supplier,
  }),
});

const buildOf = (row: Build): MovedBuild => {
  const { asTyped, ...wishes } = row.wishes as unknown as Wishes & { asTyped?: AsTyped };
  return {
    ...movedOf(row, asTyped),
    name: row.name,
    siteId: row.siteId,
    structureId: row.structureId,
    wishes,
    crew: row.crew as unknown as Crew,
    budget: row.budget as unknown as BudgetInputs,
    variantOf: row.variantOfId,
    variantLabel: row.variantLabel,
    shared: row.shared,
  };
};

const ORDER = { orderBy: { id: 'asc' } } as const;

/** What is packed: the whole garden, or what is one member's. */
export interface Wanted {
  ownerMemberId: string | null;
  /** Owners who have agreed that their exact places are told; a member's own places are always exact for that member. */
  exactFor: ReadonlySet<string>;
}

/** Reads a garden, or one member's part of it, in the form in which it is packed. */
@Injectable()
export class ContentsRepository {
  async settings(db: Db, gardenId: string): Promise<GardenSettings | null> {
    const row = await db.garden.findFirst({ where: { id: gardenId } });
    return row && { id: row.id, name: row.name, locale: row.locale, currency: row.currency, unitSystem: row.unitSystem, invented: row.invented };
  }

  async owners(db: Db): Promise<string[]> {
    const rows = await db.site.findMany({ where: { ownerMemberId: { not: null } }, distinct: ['ownerMemberId'], select: { ownerMemberId: true } });
    return rows.flatMap(({ ownerMemberId }) => (ownerMemberId === null ? [] : [ownerMemberId]));
  }

  async lists(db: Db, wanted: Wanted): Promise<Omit<GardenContents, 'schemaVersion' | 'garden'>> {
    const owned = wanted.ownerMemberId === null ? {} : { ownerMemberId: wanted.ownerMemberId };
    const isExact = (owner: string | null): boolean => owner === null || owner === wanted.ownerMemberId || wanted.exactFor.has(owner);
    const builds = (await db.build.findMany({ where: owned, ...ORDER })).map(buildOf);
    const whole = wanted.ownerMemberId === null;
    return {
      sites: (await db.site.findMany({ where: owned, ...ORDER })).map((row) => siteOf(row, isExact(row.ownerMemberId))),
      structures: (await db.structure.findMany({ where: owned, ...ORDER })).map(structureOf),
      stock: whole ? (await db.stockItem.findMany(ORDER)).map(stockOf) : [],
      prices: whole ? (await db.price.findMany(ORDER)).map(priceItemOf) : [],
      exchangeRates: whole ? await this.rates(db) : [],
      builds,
      claims: await this.claims(db, builds),
      plans: await this.plans(db, builds),
      photos: await this.photos(db, wanted),
    };
  }

  private async rates(db: Db) {
    const rows = await db.exchangeRate.findMany({ where: { archivedAt: null }, ...ORDER });
    return rows.map((row) => ({
      id: row.id,
      from: row.fromCurrency,
      to: row.toCurrency,
      rate: row.rate,
      readOn: dateToDay(row.readOn),
      createdAt: row.createdAt.toISOString(),
    }));
  }

  private async claims(db: Db, builds: readonly { id: string }[]) {
    const rows = await db.stockClaim.findMany({ where: { releasedAt: null, buildId: { in: builds.map(({ id }) => id) } }, ...ORDER });
    return rows.map((row) => ({ id: row.id, stockId: row.stockItemId, buildId: row.buildId, count: row.count, createdAt: row.createdAt.toISOString() }));
  }

  private async plans(db: Db, builds: readonly { id: string }[]): Promise<MovedPlan[]> {
    const rows = await db.planRevision.findMany({
      where: { state: 'ready', buildId: { in: builds.map(({ id }) => id) } },
      include: { result: true, staleness: ORDER, asBuilts: ORDER },
      ...ORDER,
    });
    return rows.flatMap((row) =>
      row.result === null
        ? []
        : [
            {
              id: row.id,
              buildId: row.buildId,
              revision: row.revision,
              createdAt: row.createdAt.toISOString(),
              finishedAt: (row.finishedAt ?? row.createdAt).toISOString(),
              inputs: row.inputs as unknown as PlanInputs,
              result: row.result.result as unknown as PlanResult,
              // Each server says anew that a plan came from elsewhere.
              stale: row.staleness
                .filter(({ reason }) => reason !== IMPORTED)
                .map(({ reason, subject, createdAt }) => ({ reason, subject, since: createdAt.toISOString() })),
              asBuilt: row.asBuilts.map((one) => ({
                id: one.id,
                observedOn: dateToDay(one.observedOn),
                createdAt: one.createdAt.toISOString(),
                details: one.details as unknown,
              })),
            },
          ],
    );
  }

  /** Photos that show people stay in their garden; whoever took one in gets it in their own archive. */
  private async photos(db: Db, { ownerMemberId }: Wanted): Promise<MovedPhoto[]> {
    const rows = await db.photo.findMany({ where: ownerMemberId === null ? { showsPeople: false } : { uploadedById: ownerMemberId }, ...ORDER });
    return rows.map((row) => ({
      id: row.id,
      stockId: row.stockItemId,
      buildId: row.buildId,
      caption: row.caption,
      widthPixelCount: row.widthPixelCount,
      heightPixelCount: row.heightPixelCount,
      createdAt: row.createdAt.toISOString(),
      file: `photos/${row.id}.jpg`,
    }));
  }

  /** The bytes of these photos and of the finished papers of these plans, by the name that they have in the archive. */
  async files(db: Db, contents: { photos: readonly MovedPhoto[]; plans: readonly MovedPlan[] }): Promise<{ name: string; bytes: Buffer }[]> {
    const photos = await db.photo.findMany({
      where: { id: { in: contents.photos.map(({ id }) => id) } },
      include: { file: { select: { content: true } } },
      ...ORDER,
    });
    const papers = await db.document.findMany({
      where: { state: 'ready', planId: { in: contents.plans.map(({ id }) => id) } },
      include: { file: { select: { content: true } } },
      ...ORDER,
    });
    return [
      ...photos.map(({ id, file }) => ({ name: `photos/${id}.jpg`, bytes: Buffer.from(file.content) })),
      ...papers.flatMap(({ id, file }) => (file ? [{ name: `documents/${id}.pdf`, bytes: Buffer.from(file.content) }] : [])),
    ];
  }

  /** How much the files would weigh together, so that too much is refused before it is read. */
  async weigh(db: Db): Promise<number> {
    const { _sum } = await db.file.aggregate({ where: { exports: { none: {} } }, _sum: { byteCount: true } });
    return _sum.byteCount ?? 0;
  }
}
