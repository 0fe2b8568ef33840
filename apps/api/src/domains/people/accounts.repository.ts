import { Injectable } from '@nestjs/common';
import { contextOrNull } from '../../platform/http/context.js';
import type { Db } from '../../platform/database/database.js';
import { newId } from '../../platform/database/ids.js';
import type { Step } from '../shared/resource.js';

export interface AccountSettings {
  name: string;
  locale: string;
}

export interface AccountRecord extends AccountSettings {
  id: string;
  version: number;
  email: string;
  emailConfirmed: boolean;
  passwordPhc: string | null;
  secondFactor: boolean;
  createdAt: string;
  updatedAt: string;
}

/** What signing in and mail need to know before an account is named. */
export interface FoundAccount {
  accountId: string;
  passwordPhc: string | null;
  confirmed: boolean;
  blocked: boolean;
}

export interface EventRecord {
  id: string;
  at: string;
  action: string;
  requestId: string | null;
}

export interface MembershipRecord {
  gardenId: string;
  gardenName: string;
  memberId: string;
  roles: string[];
  joinedAt: string;
  archived: boolean;
}

export type MailCodePurpose = 'confirm' | 'reset';

interface NewAccount extends AccountSettings {
  id: string;
  email: string;
  passwordPhc: string;
}

interface FoundRow {
  account_id: string;
  password_phc: string | null;
  confirmed: boolean;
  blocked: boolean;
}

interface MembershipRow {
  garden_id: string;
  garden_name: string;
  member_id: string;
  roles: string[];
  joined_at: Date;
  archived: boolean;
}

type IdRow = { id: string | null }[];

/** Accounts. Row security shows only the one that the transaction has named; the three finders ask one narrow question each. */
@Injectable()
export class AccountsRepository {
  async findByEmail(db: Db, email: string): Promise<FoundAccount | null> {
    const [row] = await db.$queryRaw<FoundRow[]>`SELECT * FROM find_account(${email})`;
    return row ? { accountId: row.account_id, passwordPhc: row.password_phc, confirmed: row.confirmed, blocked: row.blocked } : null;
  }

  async findMailCode(db: Db, sha256: Uint8Array, purpose: MailCodePurpose): Promise<string | null> {
    const [row] = await db.$queryRaw<IdRow>`SELECT find_account_token(${sha256}, ${purpose})::text AS id`;
    return row?.id ?? null;
  }

  /** Of two that use one code together, one gets the account. */
  async useMailCode(db: Db, sha256: Uint8Array, purpose: MailCodePurpose): Promise<string | null> {
    const [row] = await db.$queryRaw<IdRow>`SELECT use_account_token(${sha256}, ${purpose})::text AS id`;
    return row?.id ?? null;
  }

  async get(db: Db, id: string): Promise<AccountRecord | null> {
    const row = await db.account.findFirst({ where: { id, email: { not: null } }, include: { factor: { select: { confirmedAt: true } } } });
    return (
      row && {
        id: row.id,
        version: row.version,
        email: row.email ?? '',
        emailConfirmed: row.emailConfirmedAt !== null,
        name: row.name,
        locale: row.locale,
        passwordPhc: row.passwordPhc,
        secondFactor: (row.factor?.confirmedAt ?? null) !== null,
        createdAt: row.createdAt.toISOString(),
        updatedAt: row.updatedAt.toISOString(),
      }
    );
  }

  /** False when the address was taken in the same moment. */
  async insert(db: Db, account: NewAccount): Promise<boolean> {
    const { count } = await db.account.createMany({ data: [{ ...account, passwordChangedAt: new Date() }], skipDuplicates: true });
    return count === 1;
  }

  /** Before the address is confirmed, whoever signs up last says what the name and the password are. */
  async replaceUnconfirmed(db: Db, id: string, to: AccountSettings & { passwordPhc: string }): Promise<void> {
    await db.account.updateMany({ where: { id, emailConfirmedAt: null }, data: { ...to, passwordChangedAt: new Date(), version: { increment: 1 } } });
  }

  async update(db: Db, was: AccountRecord, to: AccountSettings): Promise<boolean> {
    const { count } = await db.account.updateMany({ where: { id: was.id, version: was.version }, data: { ...to, version: { increment: 1 } } });
    return count === 1;
  }

  async setPassword(db: Db, id: string, passwordPhc: string): Promise<void> {
    await db.account.updateMany({ where: { id }, data: { passwordPhc, passwordChangedAt: new Date(), version: { increment: 1 } } });
  }

  /** The same password under a stronger hash: nothing that anybody would notice. Not when it was changed meanwhile. */
  async strengthen(db: Db, id: string, was: string, passwordPhc: string): Promise<void> {
    await db.account.updateMany({ where: { id, passwordPhc: was }, data: { passwordPhc } });
  }

  async confirmEmail(db: Db, id: string): Promise<void> {
    await db.account.updateMany({ where: { id, emailConfirmedAt: null }, data: { emailConfirmedAt: new Date(), version: { increment: 1 } } });
  }

  /** A new code; older ones for the same purpose open nothing any more. */
  async insertMailCode(db: Db, accountId: string, purpose: MailCodePurpose, sha256: Uint8Array<ArrayBuffer>, expiresAt: Date): Promise<void> {
    await db.accountToken.updateMany({ where: { accountId, purpose, usedAt: null }, data: { usedAt: new Date() } });
    await db.accountToken.createMany({ data: [{ accountId, id: newId(), purpose, sha256, expiresAt }] });
  }

  async note(db: Db, accountId: string, action: string): Promise<void> {
    await db.accountEvent.createMany({ data: [{ accountId, id: newId(), action, requestId: contextOrNull()?.requestId ?? null }] });
  }

  /** Newest first: nobody looks for what happened first. */
  async listEvents(db: Db, accountId: string, step: Step): Promise<EventRecord[]> {
    const where = step.after ? { accountId, id: { lt: step.after } } : { accountId };
    const rows = await db.accountEvent.findMany({ where, orderBy: { id: 'desc' }, take: step.take });
    return rows.map((row) => ({ id: row.id, at: row.createdAt.toISOString(), action: row.action, requestId: row.requestId }));
  }

  async memberships(db: Db): Promise<MembershipRecord[]> {
    const rows = await db.$queryRaw<MembershipRow[]>`SELECT * FROM gardens_of_account()`;
    return rows.map((row) => ({
      gardenId: row.garden_id,
      gardenName: row.garden_name,
      memberId: row.member_id,
      roles: row.roles,
      joinedAt: row.joined_at.toISOString(),
      archived: row.archived,
    }));
  }
}
