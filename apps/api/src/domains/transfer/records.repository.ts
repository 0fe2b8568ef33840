import { Injectable } from '@nestjs/common';
import type { Db } from '../../platform/database/database.js';

const ORDER = { orderBy: { id: 'asc' } } as const;
const at = (date: Date | null): string | null => date?.toISOString() ?? null;

/** What belongs to people or to this server alone: told in an export, never taken in elsewhere. */
@Injectable()
export class RecordsRepository {
  async ofGarden(db: Db) {
    const members = await db.member.findMany(ORDER);
    const owned = { where: { ownerMemberId: { not: null } }, select: { id: true, ownerMemberId: true }, ...ORDER };
    return {
      members: members.map(({ id, name, roles, createdAt, leftAt }) => ({ id, name, roles, joinedAt: createdAt.toISOString(), leftAt: at(leftAt) })),
      owners: [...(await db.site.findMany(owned)), ...(await db.structure.findMany(owned)), ...(await db.build.findMany(owned))],
      keys: (await db.apiKey.findMany(ORDER)).map(({ id, name, scopes, createdAt, revokedAt }) => ({
        id,
        name,
        scopes,
        createdAt: createdAt.toISOString(),
        revokedAt: at(revokedAt),
      })),
      reviews: await this.reviews(db, {}),
      spending: await this.spending(db, {}),
      leftOut: {
        photosOfPeopleCount: await db.photo.count({ where: { showsPeople: true } }),
        unfinishedPlansCount: await db.planRevision.count({ where: { state: { not: 'ready' } } }),
        releasedClaimsCount: await db.stockClaim.count({ where: { releasedAt: { not: null } } }),
        historyEntriesCount: await db.auditEntry.count(),
        donorsCount: await this.donors(db),
        consentsCount: await db.consent.count(),
        webhooksCount: await db.webhook.count({ where: { removedAt: null } }),
      },
    };
  }

  async ofMember(db: Db, memberId: string) {
    const member = await db.member.findFirst({ where: { id: memberId } });
    return {
      member: member && { id: member.id, name: member.name, roles: member.roles, joinedAt: member.createdAt.toISOString(), leftAt: at(member.leftAt) },
      keys: (await db.apiKey.findMany({ where: { createdByMemberId: memberId }, ...ORDER })).map(({ id, name, scopes, createdAt }) => ({
        id,
        name,
        scopes,
        createdAt: createdAt.toISOString(),
      })),
      reviews: await this.reviews(db, { createdById: memberId }),
      spending: await this.spending(db, { OR: [{ requestedById: memberId }, { ownerMemberId: memberId }] }),
      history: (await db.auditEntry.findMany({ where: { memberId }, orderBy: { at: 'asc' } })).map(({ at: when, action, objectType, objectId }) => ({
        at: when.toISOString(),
        action,
        objectType,
        objectId,
      })),
    };
  }

  /** The gardens that the person is a member of. What was left in others is theirs no more. */
  async gardensOf(db: Db): Promise<{ gardenId: string; gardenName: string; memberId: string }[]> {
    const rows = await db.$queryRaw<
      { garden_id: string; garden_name: string; member_id: string }[]
    >`SELECT garden_id, garden_name, member_id FROM gardens_of_account()`;
    return rows.map((row) => ({ gardenId: row.garden_id, gardenName: row.garden_name, memberId: row.member_id }));
  }

  async account(db: Db, id: string) {
    const row = await db.account.findFirst({ where: { id } });
    const events = await db.accountEvent.findMany({ where: { accountId: id }, orderBy: { createdAt: 'asc' } });
    const sessions = await db.accountSession.findMany({ where: { accountId: id }, orderBy: { createdAt: 'asc' } });
    return (
      row && {
        id: row.id,
        email: row.email,
        emailConfirmedAt: at(row.emailConfirmedAt),
        name: row.name,
        locale: row.locale,
        createdAt: row.createdAt.toISOString(),
        events: events.map(({ action, createdAt }) => ({ at: createdAt.toISOString(), action })),
        sessions: sessions.map(({ label, createdAt, lastSeenAt, revokedAt }) => ({
          label,
          createdAt: createdAt.toISOString(),
          lastSeenAt: lastSeenAt.toISOString(),
          endedAt: at(revokedAt),
        })),
      }
    );
  }

  /** Who gave what is known to this garden alone; only how many is told. */
  private async donors(db: Db): Promise<number> {
    const [row] = await db.$queryRaw<{ n: number }[]>`SELECT count(*)::int AS n FROM stock_items WHERE details ->> 'donorSealed' IS NOT NULL`;
    return row?.n ?? 0;
  }

  private async reviews(db: Db, where: { createdById?: string }) {
    const rows = await db.planReview.findMany({ where, ...ORDER });
    return rows.map(({ id, planId, decision, reviewer, comment, createdAt }) => ({
      id,
      planId,
      decision,
      reviewer,
      comment,
      createdAt: createdAt.toISOString(),
    }));
  }

  private async spending(db: Db, where: object) {
    const rows = await db.spendRequest.findMany({ where, ...ORDER });
    return rows.map((row) => ({
      id: row.id,
      buildId: row.buildId,
      purpose: row.purpose,
      amount: { minor: Number(row.amountMinor), currency: row.currency },
      state: row.state,
      remark: row.remark,
      createdAt: row.createdAt.toISOString(),
      decidedAt: at(row.decidedAt),
    }));
  }
}
