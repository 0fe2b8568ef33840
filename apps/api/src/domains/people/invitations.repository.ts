import { Injectable } from '@nestjs/common';
import { isRole, type Role } from '../../platform/access/roles.js';
import { Database, type Db } from '../../platform/database/database.js';
import type { Invitation } from '../../platform/database/generated/client.js';
import { newId } from '../../platform/database/ids.js';
import type { Step } from '../shared/resource.js';
import { NOBODY } from './account-scope.js';

export interface InvitationRecord {
  id: string;
  email: string | null;
  roles: Role[];
  state: 'open' | 'accepted' | 'revoked' | 'expired';
  invitedById: string;
  acceptedMemberId: string | null;
  createdAt: string;
  expiresAt: string;
}

interface NewInvitation {
  gardenId: string;
  email: string;
  roles: readonly Role[];
  sha256: Uint8Array<ArrayBuffer>;
  invitedById: string;
  expiresAt: Date;
}

const stateOf = (row: Invitation): InvitationRecord['state'] =>
  row.acceptedAt ? 'accepted' : row.revokedAt ? 'revoked' : row.expiresAt <= new Date() ? 'expired' : 'open';

const toModel = (row: Invitation): InvitationRecord => ({
  id: row.id,
  email: row.email,
  roles: row.roles.filter(isRole),
  state: stateOf(row),
  invitedById: row.invitedById,
  acceptedMemberId: row.acceptedMemberId,
  createdAt: row.createdAt.toISOString(),
  expiresAt: row.expiresAt.toISOString(),
});

@Injectable()
export class InvitationsRepository {
  /** The garden of a code that is open, and of nothing else. */
  async findByCode(db: Db, sha256: Uint8Array): Promise<{ gardenId: string; id: string } | null> {
    const [row] = await db.$queryRaw<{ garden_id: string; invitation_id: string }[]>`SELECT * FROM find_invitation(${sha256})`;
    return row ? { gardenId: row.garden_id, id: row.invitation_id } : null;
  }

  /** Whether an open invitation with this code went to this address. */
  async isFor(database: Database, sha256: Uint8Array, email: string): Promise<boolean> {
    const there = await database.readSnapshot(NOBODY, (db) => this.findByCode(db, sha256));
    if (there === null) return false;
    const invitation = await database.readSnapshot({ gardenId: there.gardenId }, (db) => this.find(db, there.id));
    return invitation?.state === 'open' && invitation.email === email;
  }

  /** A new invitation takes the place of an open one to the same address. */
  async insert(db: Db, fields: NewInvitation): Promise<InvitationRecord> {
    const { gardenId, email, roles, sha256, invitedById, expiresAt } = fields;
    await db.invitation.updateMany({
      where: { email, acceptedAt: null, revokedAt: null },
      data: { revokedAt: new Date(), email: null, version: { increment: 1 } },
    });
    return toModel(await db.invitation.create({ data: { gardenId, id: newId(), email, roles: [...roles], tokenSha256: sha256, invitedById, expiresAt } }));
  }

  async find(db: Db, id: string): Promise<InvitationRecord | null> {
    const row = await db.invitation.findFirst({ where: { id } });
    return row && toModel(row);
  }

  async list(db: Db, step: Step): Promise<InvitationRecord[]> {
    const rows = await db.invitation.findMany({ where: step.after ? { id: { gt: step.after } } : {}, orderBy: { id: 'asc' }, take: step.take });
    return rows.map(toModel);
  }

  /** What is over keeps no address. */
  async revoke(db: Db, id: string): Promise<boolean> {
    const { count } = await db.invitation.updateMany({
      where: { id, acceptedAt: null, revokedAt: null },
      data: { revokedAt: new Date(), email: null, version: { increment: 1 } },
    });
    return count === 1;
  }

  /** Of two that use one code together, one gets in. */
  async accept(db: Db, id: string, memberId: string): Promise<boolean> {
    const { count } = await db.invitation.updateMany({
      where: { id, acceptedAt: null, revokedAt: null, expiresAt: { gt: new Date() } },
      data: { acceptedAt: new Date(), acceptedMemberId: memberId, email: null, version: { increment: 1 } },
    });
    return count === 1;
  }

  async gardenName(db: Db): Promise<string> {
    return (await db.garden.findFirst({ select: { name: true } }))?.name ?? '';
  }
}
