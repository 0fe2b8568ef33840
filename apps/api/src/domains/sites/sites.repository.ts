import type { SiteInputs } from '@lathwork/model';
import { Injectable } from '@nestjs/common';
import type { Db } from '../../platform/database/database.js';
import type { Site } from '../../platform/database/generated/client.js';
import type { Outline } from '../../platform/http/outline-field.js';
import type { AsTyped } from '../../platform/http/quantity-field.js';
import { toKept, ownedOf, type Kept, type ListFilter, type Owned, type Ownership, type Step } from '../shared/resource.js';

export interface SiteFields extends Omit<SiteInputs, 'siteId'> {
  name: string;
  stationId: string | null;
  outline: Outline | null;
  shared: boolean;
  asTyped: AsTyped;
}
export type SiteRecord = Kept & Owned & SiteFields;

type Details = Omit<SiteFields, 'name' | 'stationId' | 'latitudeDeg' | 'longitudeDeg' | 'elevationM' | 'timeZone' | 'shared'>;

const toModel = (row: Site): SiteRecord => {
  const details = row.details as unknown as Details;
  return {
    ...toKept(row),
    ...ownedOf(row),
    name: row.name,
    stationId: row.stationId,
    latitudeDeg: row.latitudeDeg,
    longitudeDeg: row.longitudeDeg,
    elevationM: row.elevationM,
    timeZone: row.timeZone,
    exposure: details.exposure,
    nearHilltop: details.nearHilltop,
    soilClass: details.soilClass,
    frostDepthM: details.frostDepthM,
    wind: details.wind,
    snow: details.snow,
    fallAcrossM: details.fallAcrossM,
    fallAlongM: details.fallAlongM,
    stormWindFromDeg: details.stormWindFromDeg,
    permanentAnchors: details.permanentAnchors,
    glassRule: details.glassRule,
    shadedFrac: details.shadedFrac,
    ...(details.obstacles ? { obstacles: details.obstacles } : {}),
    // Rows from before there were outlines have none.
    outline: details.outline ?? null,
    asTyped: details.asTyped,
  };
};

const toRow = ({ name, stationId, latitudeDeg, longitudeDeg, elevationM, timeZone, shared, ...details }: SiteFields) => ({
  name,
  stationId,
  latitudeDeg,
  longitudeDeg,
  elevationM,
  timeZone,
  shared,
  details: details as object,
});

@Injectable()
export class SitesRepository {
  async insert(db: Db, owner: Ownership, id: string, site: SiteFields): Promise<SiteRecord> {
    return toModel(await db.site.create({ data: { ...owner, id, ...toRow(site) } }));
  }

  async find(db: Db, id: string): Promise<SiteRecord | null> {
    const row = await db.site.findFirst({ where: { id } });
    return row && toModel(row);
  }

  async list(db: Db, filter: ListFilter, step: Step): Promise<SiteRecord[]> {
    const rows = await db.site.findMany({
      where: { ...(filter.archived ? {} : { archivedAt: null }), ...(step.after ? { id: { gt: step.after } } : {}) },
      orderBy: { id: 'asc' },
      take: step.take,
    });
    return rows.map(toModel);
  }

  /** Changes the row only if nobody has changed it since; null tells that somebody has. */
  async update(db: Db, was: SiteRecord, site: SiteFields): Promise<SiteRecord | null> {
    return this.change(db, was, toRow(site));
  }

  async setArchived(db: Db, was: SiteRecord, archivedAt: Date | null): Promise<SiteRecord | null> {
    return this.change(db, was, { archivedAt });
  }

  private async change(db: Db, was: SiteRecord, data: object): Promise<SiteRecord | null> {
    const [row] = await db.site.updateManyAndReturn({ where: { id: was.id, version: was.version }, data: { ...data, version: { increment: 1 } } });
    return row ? toModel(row) : null;
  }
}
