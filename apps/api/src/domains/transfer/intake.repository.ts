import { createHash } from 'node:crypto';
import { Injectable } from '@nestjs/common';
import type { Db } from '../../platform/database/database.js';
import { newId } from '../../platform/database/ids.js';
import { dayToDate } from '../shared/resource.js';
import { IMPORTED, type GardenContents, type GardenSettings, type MovedPhoto, type MovedPlan, type MovedSite, type MovedStock } from './garden-file.js';

const AT_ONCE = 200;

const inSteps = async <T>(rows: readonly T[], write: (step: T[]) => Promise<unknown>): Promise<void> => {
  for (let i = 0; i < rows.length; i += AT_ONCE) await write(rows.slice(i, i + AT_ONCE));
};

const kept = (gardenId: string, item: { id: string; createdAt: string; archivedAt: string | null }) => ({
  gardenId,
  id: item.id,
  createdAt: new Date(item.createdAt),
  archivedAt: item.archivedAt === null ? null : new Date(item.archivedAt),
});

/** Only what is listed in `own` goes into columns; all else of an item goes into its details. */
const detailsOf = <T extends object>(item: T, own: readonly (keyof T)[]): object =>
  Object.fromEntries(Object.entries(item).filter(([key]) => !([...own, 'id', 'createdAt', 'archivedAt'] as string[]).includes(key)));

const SITE_COLUMNS: readonly (keyof MovedSite)[] = ['name', 'latitudeDeg', 'longitudeDeg', 'elevationM', 'timeZone', 'stationId', 'shared'];
const STOCK_COLUMNS: readonly (keyof MovedStock)[] = ['tag', 'kind', 'material', 'grade', 'hazards', 'count'];

/** Writes what was unpacked and checked. All of it belongs to the garden, for its members did not come along. */
@Injectable()
export class IntakeRepository {
  async isEmpty(db: Db): Promise<boolean> {
    const counts = [
      await db.site.count(),
      await db.structure.count(),
      await db.stockItem.count(),
      await db.price.count(),
      await db.exchangeRate.count(),
      await db.build.count(),
    ];
    return counts.every((count) => count === 0);
  }

  async takenNames(db: Db): Promise<{ sites: Set<string>; structures: Set<string>; tags: Set<string>; rates: Set<string> }> {
    const rates = await db.exchangeRate.findMany({ select: { fromCurrency: true, toCurrency: true, readOn: true } });
    return {
      sites: new Set((await db.site.findMany({ select: { name: true } })).map(({ name }) => name)),
      structures: new Set((await db.structure.findMany({ select: { name: true } })).map(({ name }) => name)),
      tags: new Set((await db.stockItem.findMany({ select: { tag: true } })).map(({ tag }) => tag)),
      rates: new Set(rates.map(({ fromCurrency, toCurrency, readOn }) => `${fromCurrency} ${toCurrency} ${readOn.toISOString().slice(0, 10)}`)),
    };
  }

  async knownStations(db: Db, ids: readonly string[]): Promise<Set<string>> {
    return new Set((await db.climateStation.findMany({ where: { id: { in: [...ids] } }, select: { id: true } })).map(({ id }) => id));
  }

  async takeSettings(db: Db, gardenId: string, { name, locale, currency, unitSystem }: GardenSettings): Promise<void> {
    await db.garden.updateMany({ where: { id: gardenId }, data: { name, locale, currency, unitSystem, version: { increment: 1 } } });
  }

  async write(db: Db, gardenId: string, principalId: string, contents: GardenContents): Promise<void> {
    await this.writeThings(db, gardenId, contents);
    await this.writeMoney(db, gardenId, contents);
    await this.writeBuilds(db, gardenId, contents);
    for (const plan of contents.plans) await this.writePlan(db, gardenId, principalId, plan);
  }

  async writePhoto(
    db: Db,
    gardenId: string,
    principalId: string,
    photo: MovedPhoto,
    file: { id: string; widthPixelCount: number; heightPixelCount: number },
  ): Promise<void> {
    const { id, stockId, buildId, caption, createdAt } = photo;
    const { id: fileId, widthPixelCount, heightPixelCount } = file;
    const subject = { stockItemId: stockId, buildId };
    await db.photo.createMany({
      data: [
        {
          gardenId,
          id,
          ...subject,
          fileId,
          caption,
          widthPixelCount,
          heightPixelCount,
          showsPeople: false,
          uploadedById: principalId,
          createdAt: new Date(createdAt),
        },
      ],
    });
  }

  private async writeThings(db: Db, gardenId: string, { sites, structures, stock }: GardenContents): Promise<void> {
    await inSteps(sites, (step) =>
      db.site.createMany({
        data: step.map((item) => {
          const { name, latitudeDeg, longitudeDeg, elevationM, timeZone, stationId, shared } = item;
          return { ...kept(gardenId, item), name, latitudeDeg, longitudeDeg, elevationM, timeZone, stationId, shared, details: detailsOf(item, SITE_COLUMNS) };
        }),
      }),
    );
    await inSteps(structures, (step) =>
      db.structure.createMany({
        data: step.map((item) => ({
          ...kept(gardenId, item),
          name: item.name,
          kind: item.kind,
          shared: item.shared,
          details: detailsOf(item, ['name', 'kind', 'shared']),
        })),
      }),
    );
    await inSteps(stock, (step) =>
      db.stockItem.createMany({
        data: step.map((item) => {
          const { tag, kind, material, grade, hazards, count } = item;
          return { ...kept(gardenId, item), tag, kind, material, grade, hazards, count, unitItem: count === 1, details: detailsOf(item, STOCK_COLUMNS) };
        }),
      }),
    );
  }

  private async writeMoney(db: Db, gardenId: string, { prices, exchangeRates }: GardenContents): Promise<void> {
    await inSteps(prices, (step) =>
      db.price.createMany({
        data: step.map((item) => {
          const { material, unit, packAmount, packPrice, pieceWidthM, pieceLengthM, readOn, supplier, asTyped } = item;
          const money = { packPriceMinor: BigInt(packPrice.minor), currency: packPrice.currency };
          return {
            ...kept(gardenId, item),
            material,
            unit,
            packAmount,
            ...money,
            pieceWidthM,
            pieceLengthM,
            readOn: readOn === null ? null : dayToDate(readOn),
            supplier,
            asTyped,
          };
        }),
      }),
    );
    await inSteps(exchangeRates, (step) =>
      db.exchangeRate.createMany({
        data: step.map(({ id, from, to, rate, readOn, createdAt }) => ({
          gardenId,
          id,
          fromCurrency: from,
          toCurrency: to,
          rate,
          readOn: dayToDate(readOn),
          createdAt: new Date(createdAt),
        })),
      }),
    );
  }

  private async writeBuilds(db: Db, gardenId: string, { builds, claims, stock }: GardenContents): Promise<void> {
    const counts = new Map(stock.map(({ id, count }) => [id, count]));
    // A variant comes after the build it stands beside.
    for (const step of byDepth(builds))
      await inSteps(step, (some) =>
        db.build.createMany({
          data: some.map((item) => {
            const { name, siteId, structureId, wishes, crew, budget, variantOf, variantLabel, shared, asTyped } = item;
            const json = { wishes: { ...wishes, asTyped } as object, crew: crew as object, budget: budget as object };
            return { ...kept(gardenId, item), name, siteId, structureId, ...json, variantOfId: variantOf, variantLabel, shared };
          }),
        }),
      );
    await inSteps(claims, (step) =>
      db.stockClaim.createMany({
        data: step.map(({ id, stockId, buildId, count, createdAt }) => ({
          gardenId,
          id,
          stockItemId: stockId,
          buildId,
          count,
          unitItem: counts.get(stockId) === 1,
          createdAt: new Date(createdAt),
        })),
      }),
    );
  }

  private async writePlan(db: Db, gardenId: string, principalId: string, plan: MovedPlan): Promise<void> {
    const { id, buildId, revision, inputs, result, stale, asBuilt } = plan;
    await db.planRevision.create({
      data: {
        gardenId,
        id,
        buildId,
        revision,
        state: 'ready',
        asOf: dayToDate(inputs.asOf),
        inputs: inputs as object,
        inputsSha256: createHash('sha256').update(JSON.stringify(inputs)).digest('hex'),
        seed: BigInt(inputs.seed),
        attempt: 1,
        createdById: principalId,
        createdAt: new Date(plan.createdAt),
        finishedAt: new Date(plan.finishedAt),
      },
      select: { id: true },
    });
    const { schemaVersion, engineVersion } = result;
    await db.planResult.create({
      data: { gardenId, planId: id, schemaVersion, engineVersion, result: result as object, timings: {}, attempt: 1 },
      select: { planId: true },
    });
    const marks = [...stale, { reason: IMPORTED, subject: null, since: new Date().toISOString() }];
    await db.planStaleness.createMany({
      data: marks.map(({ reason, subject, since }) => ({ gardenId, id: newId(), planId: id, reason, subject, createdAt: new Date(since) })),
    });
    await db.planAsBuilt.createMany({
      data: asBuilt.map((one) => ({
        gardenId,
        id: newId(),
        planId: id,
        observedOn: dayToDate(one.observedOn),
        details: one.details as object,
        createdAt: new Date(one.createdAt),
      })),
    });
  }
}

/** Builds in steps: none of a step is a variant of another of the same step. */
const byDepth = <T extends { id: string; variantOf: string | null }>(builds: readonly T[]): T[][] => {
  const steps: T[][] = [];
  let done = new Set<string | null>([null]);
  let rest = [...builds];
  while (rest.length > 0) {
    const step = rest.filter(({ variantOf }) => done.has(variantOf));
    // A ring of variants is no order at all; the database refuses what is left.
    if (step.length === 0) return [...steps, rest];
    steps.push(step);
    done = new Set([...done, ...step.map(({ id }) => id)]);
    rest = rest.filter(({ variantOf }) => !step.some((one) => one.variantOf === variantOf));
  }
  return steps;
};
