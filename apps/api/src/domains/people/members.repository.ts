import { Injectable } from '@nestjs/common';
import { isRole, type Role } from '../../platform/access/roles.js';
import type { Db } from '../../platform/database/database.js';
import type { Member } from '../../platform/database/generated/client.js';
import { newId } from '../../platform/database/ids.js';
import type { Step } from '../shared/resource.js';

/** What is left in the garden's history of who has gone. */
export const FORMER = 'former member';

export interface MemberSettings {
  name: string;
  roles: Role[];
}

export interface MemberRecord extends MemberSettings {
  id: string;
  version: number;
  createdAt: string;
  updatedAt: string;
  leftAt: string | null;
}

const toModel = (row: Member): MemberRecord => ({
  id: row.id,
  version: row.version,
  name: row.name,
  roles: row.roles.filter(isRole),
  createdAt: row.createdAt.toISOString(),
  updatedAt: row.updatedAt.toISOString(),
  leftAt: row.leftAt?.toISOString() ?? null,
});

@Injectable()
export class MembersRepository {
  /** Who is a member and what changes one after the other: two coordinators who leave together must not both find the other there. */
  async hold(db: Db, gardenId: string): Promise<void> {
    await db.$executeRaw`SELECT pg_advisory_xact_lock(hashtextextended(${`members of ${gardenId}`}, 11))`;
  }

  async find(db: Db, id: string): Promise<MemberRecord | null> {
    const row = await db.member.findFirst({ where: { id } });
    return row && toModel(row);
  }

  async list(db: Db, step: Step, filter: { only: string | null; former: boolean }): Promise<MemberRecord[]> {
    const rows = await db.member.findMany({
      where: {
        ...(filter.only === null ? {} : { AND: [{ id: filter.only }] }),
        ...(filter.former ? {} : { leftAt: null }),
        ...(step.after ? { id: { gt: step.after } } : {}),
      },
      orderBy: { id: 'asc' },
      take: step.take,
    });
    return rows.map(toModel);
  }

  async hasOtherCoordinator(db: Db, id: string): Promise<boolean> {
    return (await db.member.count({ where: { id: { not: id }, leftAt: null, roles: { has: 'coordinator' } } })) > 0;
  }

  async update(db: Db, was: MemberRecord, to: MemberSettings): Promise<MemberRecord | null> {
    const [row] = await db.member.updateManyAndReturn({
      where: { id: was.id, version: was.version, leftAt: null },
      data: { name: to.name, roles: to.roles, version: { increment: 1 } },
    });
    return row ? toModel(row) : null;
  }

  /** The member goes: what they kept becomes the garden's, what was private of them is gone, their keys end, and the history calls them a former member. */
  async leave(db: Db, id: string): Promise<void> {
    const owned = { where: { ownerMemberId: id }, data: { ownerMemberId: null } };
    await db.site.updateMany(owned);
    await db.structure.updateMany(owned);
    await db.build.updateMany(owned);
    await db.memberPrivate.deleteMany({ where: { memberId: id } });
    await db.apiKey.updateMany({ where: { createdByMemberId: id, revokedAt: null }, data: { revokedAt: new Date(), version: { increment: 1 } } });
    await db.member.updateMany({ where: { id, leftAt: null }, data: { leftAt: new Date(), name: FORMER, version: { increment: 1 } } });
  }

  /** Who comes back is the same member as before. Null: is a member already. */
  async join(db: Db, gardenId: string, person: { accountId: string; name: string }, roles: readonly Role[]): Promise<MemberRecord | null> {
    const former = await db.member.findFirst({ where: { accountId: person.accountId } });
    if (former?.leftAt === null) return null;
    const data = { name: person.name, roles: [...roles] };
    if (!former) return toModel(await db.member.create({ data: { gardenId, id: newId(), accountId: person.accountId, ...data } }));
    const [row] = await db.member.updateManyAndReturn({
      where: { id: former.id, leftAt: { not: null } },
      data: { ...data, leftAt: null, version: { increment: 1 } },
    });
    return row ? toModel(row) : null;
  }
}
