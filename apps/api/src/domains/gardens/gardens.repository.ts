import { Injectable } from '@nestjs/common';
import { isScope, type Scope } from '../../platform/access/scopes.js';
import type { NewKey } from '../../platform/access/key.js';
import type { Db } from '../../platform/database/database.js';
import type { ApiKey, Garden } from '../../platform/database/generated/client.js';
import { toKept, type Kept, type Step } from '../shared/resource.js';

export interface GardenSettings {
  name: string;
  locale: string;
  currency: string;
  unitSystem: 'metric' | 'us';
  /** What each may approve alone, in minor units; null: no limit. */
  coordinatorLimitMinor: number | null;
  treasurerLimitMinor: number | null;
}

export interface GardenFields extends GardenSettings {
  /** Said once, when the garden is made: what is printed of invented data always says so. */
  invented: boolean;
}
export type GardenRecord = Kept & GardenFields;

/** A key as it may be shown: its readable beginning, never the key. */
export interface KeyRecord {
  id: string;
  name: string;
  prefix: string;
  scopes: Scope[];
  expiresAt: string | null;
  lastUsedAt: string | null;
  revokedAt: string | null;
  createdAt: string;
}

const toModel = (row: Garden): GardenRecord => ({
  ...toKept(row),
  name: row.name,
  locale: row.locale,
  currency: row.currency,
  unitSystem: row.unitSystem as GardenSettings['unitSystem'],
  coordinatorLimitMinor: row.coordinatorLimitMinor === null ? null : Number(row.coordinatorLimitMinor),
  treasurerLimitMinor: row.treasurerLimitMinor === null ? null : Number(row.treasurerLimitMinor),
  invented: row.invented,
});

const toKey = (row: ApiKey): KeyRecord => ({
  id: row.id,
  name: row.name,
  prefix: row.prefix,
  scopes: row.scopes.filter(isScope),
  expiresAt: row.expiresAt?.toISOString() ?? null,
  lastUsedAt: row.lastUsedAt?.toISOString() ?? null,
  revokedAt: row.revokedAt?.toISOString() ?? null,
  createdAt: row.createdAt.toISOString(),
});

@Injectable()
export class GardensRepository {
  /** The garden of this transaction: row security shows no other. */
  async current(db: Db, gardenId: string): Promise<GardenRecord | null> {
    const row = await db.garden.findFirst({ where: { id: gardenId } });
    return row && toModel(row);
  }

  /** The person who would make a garden, as their own transaction sees them. */
  async founderOf(db: Db, accountId: string): Promise<{ accountId: string; name: string; confirmed: boolean; gardenCount: number } | null> {
    const row = await db.account.findFirst({ where: { id: accountId }, select: { name: true, emailConfirmedAt: true } });
    const [count] = await db.$queryRaw<{ n: number }[]>`SELECT count(*)::int AS n FROM gardens_of_account()`;
    return row && { accountId, name: row.name, confirmed: row.emailConfirmedAt !== null, gardenCount: count?.n ?? 0 };
  }

  async memberName(db: Db, id: string): Promise<string | null> {
    return (await db.member.findFirst({ where: { id }, select: { name: true } }))?.name ?? null;
  }

  async only(db: Db): Promise<GardenRecord | null> {
    const row = await db.garden.findFirst();
    return row && toModel(row);
  }

  async update(db: Db, was: GardenRecord, settings: GardenSettings): Promise<GardenRecord | null> {
    const [row] = await db.garden.updateManyAndReturn({ where: { id: was.id, version: was.version }, data: { ...settings, version: { increment: 1 } } });
    return row ? toModel(row) : null;
  }

  async insertKey(
    db: Db,
    gardenId: string,
    id: string,
    key: NewKey,
    fields: { name: string; scopes: readonly Scope[]; expiresAt: Date | null; createdByMemberId: string | null },
  ): Promise<KeyRecord> {
    return toKey(
      await db.apiKey.create({
        data: {
          gardenId,
          id,
          name: fields.name,
          prefix: key.prefix,
          sha256: new Uint8Array(key.sha256),
          scopes: [...fields.scopes],
          expiresAt: fields.expiresAt,
          createdByMemberId: fields.createdByMemberId,
        },
      }),
    );
  }

  async listKeys(db: Db, step: Step): Promise<KeyRecord[]> {
    const rows = await db.apiKey.findMany({ where: step.after ? { id: { gt: step.after } } : {}, orderBy: { id: 'asc' }, take: step.take });
    return rows.map(toKey);
  }

  async findKey(db: Db, id: string): Promise<KeyRecord | null> {
    const row = await db.apiKey.findFirst({ where: { id } });
    return row && toKey(row);
  }

  async revokeKey(db: Db, id: string): Promise<boolean> {
    const { count } = await db.apiKey.updateMany({ where: { id, revokedAt: null }, data: { revokedAt: new Date(), version: { increment: 1 } } });
    return count === 1;
  }
}
