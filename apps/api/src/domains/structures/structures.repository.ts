import type { StructureInputs, StructureKind } from '@lathwork/model';
import { Injectable } from '@nestjs/common';
import type { Db } from '../../platform/database/database.js';
import type { Structure } from '../../platform/database/generated/client.js';
import type { AsTyped } from '../../platform/http/quantity-field.js';
import { toKept, ownedOf, type Kept, type ListFilter, type Owned, type Ownership, type Step } from '../shared/resource.js';

export interface StructureFields extends Omit<StructureInputs, 'structureId'> {
  name: string;
  shared: boolean;
  asTyped: AsTyped;
}
export type StructureRecord = Kept & Owned & StructureFields;

const toModel = (row: Structure): StructureRecord => {
  const details = row.details as unknown as Omit<StructureFields, 'name' | 'kind' | 'shared'>;
  return {
    ...toKept(row),
    ...ownedOf(row),
    name: row.name,
    kind: row.kind as StructureKind,
    widthM: details.widthM,
    lengthM: details.lengthM,
    eaveM: details.eaveM,
    ridgeM: details.ridgeM,
    frontFacesDeg: details.frontFacesDeg,
    bowsAtM: details.bowsAtM,
    measuredRaftersM: details.measuredRaftersM,
    tube: details.tube,
    frameMassKg: details.frameMassKg,
    frameStockTag: details.frameStockTag,
    braced: details.braced,
    openings: details.openings,
    cover: details.cover,
    floor: details.floor,
    floorMoist: details.floorMoist,
    bedsM2: details.bedsM2,
    airLeaks: details.airLeaks,
    waterStores: details.waterStores,
    anchor: details.anchor,
    hostWall: details.hostWall,
    asTyped: details.asTyped,
  };
};

const toRow = ({ name, kind, shared, ...details }: StructureFields) => ({ name, kind, shared, details: details as object });

@Injectable()
export class StructuresRepository {
  async insert(db: Db, owner: Ownership, id: string, structure: StructureFields): Promise<StructureRecord> {
    return toModel(await db.structure.create({ data: { ...owner, id, ...toRow(structure) } }));
  }

  async find(db: Db, id: string): Promise<StructureRecord | null> {
    const row = await db.structure.findFirst({ where: { id } });
    return row && toModel(row);
  }

  async list(db: Db, filter: ListFilter, step: Step): Promise<StructureRecord[]> {
    const rows = await db.structure.findMany({
      where: { ...(filter.archived ? {} : { archivedAt: null }), ...(step.after ? { id: { gt: step.after } } : {}) },
      orderBy: { id: 'asc' },
      take: step.take,
    });
    return rows.map(toModel);
  }

  /** Changes the row only if nobody has changed it since; null tells that somebody has. */
  async update(db: Db, was: StructureRecord, structure: StructureFields): Promise<StructureRecord | null> {
    return this.change(db, was, toRow(structure));
  }

  async setArchived(db: Db, was: StructureRecord, archivedAt: Date | null): Promise<StructureRecord | null> {
    return this.change(db, was, { archivedAt });
  }

  private async change(db: Db, was: StructureRecord, data: object): Promise<StructureRecord | null> {
    const [row] = await db.structure.updateManyAndReturn({ where: { id: was.id, version: was.version }, data: { ...data, version: { increment: 1 } } });
    return row ? toModel(row) : null;
  }
}
