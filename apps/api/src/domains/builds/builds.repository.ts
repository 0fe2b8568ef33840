import type { BudgetInputs, Crew, Wishes } from '@lathwork/model';
import { Injectable } from '@nestjs/common';
import type { Db } from '../../platform/database/database.js';
import type { Build } from '../../platform/database/generated/client.js';
import type { AsTyped } from '../../platform/http/quantity-field.js';
import { toKept, ownedOf, type Kept, type ListFilter, type Owned, type Ownership, type Step } from '../shared/resource.js';

export interface BuildFields {
  name: string;
  siteId: string;
  structureId: string;
  wishes: Wishes;
  crew: Crew;
  budget: BudgetInputs;
  variantOf: string | null;
  variantLabel: string | null;
  shared: boolean;
  asTyped: AsTyped;
}
export type BuildRecord = Kept & Owned & BuildFields;

export interface BuildFilter extends ListFilter {
  siteId: string | null;
  variantOf: string | null;
}

// What was typed is kept with the wishes: the build has no column of its own for it.
interface StoredWishes extends Wishes {
  asTyped: AsTyped;
}

const toModel = (row: Build): BuildRecord => {
  const { asTyped, ...wishes } = row.wishes as unknown as StoredWishes;
  return {
    ...toKept(row),
    ...ownedOf(row),
    name: row.name,
    siteId: row.siteId,
    structureId: row.structureId,
    wishes,
    crew: row.crew as unknown as Crew,
    budget: row.budget as unknown as BudgetInputs,
    variantOf: row.variantOfId,
    variantLabel: row.variantLabel,
    asTyped: asTyped ?? {},
  };
};

const toRow = (build: BuildFields) => ({
  name: build.name,
  siteId: build.siteId,
  structureId: build.structureId,
  wishes: { ...build.wishes, asTyped: build.asTyped } as object,
  crew: build.crew as object,
  budget: build.budget as object,
  variantOfId: build.variantOf,
  variantLabel: build.variantLabel,
  shared: build.shared,
});

@Injectable()
export class BuildsRepository {
  async insert(db: Db, owner: Ownership, id: string, build: BuildFields): Promise<BuildRecord> {
    return toModel(await db.build.create({ data: { ...owner, id, ...toRow(build) } }));
  }

  async find(db: Db, id: string): Promise<BuildRecord | null> {
    const row = await db.build.findFirst({ where: { id } });
    return row && toModel(row);
  }

  async list(db: Db, filter: BuildFilter, step: Step): Promise<BuildRecord[]> {
    const rows = await db.build.findMany({
      where: {
        ...(filter.archived ? {} : { archivedAt: null }),
        ...(filter.siteId ? { siteId: filter.siteId } : {}),
        ...(filter.variantOf ? { variantOfId: filter.variantOf } : {}),
        ...(step.after ? { id: { gt: step.after } } : {}),
      },
      orderBy: { id: 'asc' },
      take: step.take,
    });
    return rows.map(toModel);
  }

  async update(db: Db, was: BuildRecord, build: BuildFields): Promise<BuildRecord | null> {
    return this.change(db, was, toRow(build));
  }

  async setArchived(db: Db, was: BuildRecord, archivedAt: Date | null): Promise<BuildRecord | null> {
    return this.change(db, was, { archivedAt });
  }

  private async change(db: Db, was: BuildRecord, data: object): Promise<BuildRecord | null> {
    const [row] = await db.build.updateManyAndReturn({ where: { id: was.id, version: was.version }, data: { ...data, version: { increment: 1 } } });
    return row ? toModel(row) : null;
  }
}
