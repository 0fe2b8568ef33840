import { Injectable } from '@nestjs/common';
import type { Db } from '../../platform/database/database.js';
import type { Consent } from '../../platform/database/generated/client.js';
import { newId } from '../../platform/database/ids.js';
import { contextOrNull } from '../../platform/http/context.js';
import type { Step } from '../shared/resource.js';
import { isPurpose, type Purpose, type Wording } from './purposes.js';

/** One thing that was said: agreed to, or taken back. */
export interface ConsentRecord {
  id: string;
  memberId: string;
  purpose: Purpose;
  given: boolean;
  wording: Wording;
  at: string;
}

const toModel = (row: Consent): ConsentRecord[] =>
  isPurpose(row.purpose)
    ? [
        {
          id: row.id,
          memberId: row.memberId,
          purpose: row.purpose,
          given: row.given,
          wording: { version: row.wordingVersion, text: row.wording },
          at: row.createdAt.toISOString(),
        },
      ]
    : [];

/** Consents are added and never changed; what was said last holds. */
@Injectable()
export class ConsentsRepository {
  async add(db: Db, gardenId: string, memberId: string, said: { purpose: Purpose; given: boolean; wording: Wording }): Promise<ConsentRecord[]> {
    const row = await db.consent.create({
      data: {
        gardenId,
        id: newId(),
        memberId,
        purpose: said.purpose,
        given: said.given,
        wordingVersion: said.wording.version,
        wording: said.wording.text,
        requestId: contextOrNull()?.requestId ?? null,
      },
    });
    return toModel(row);
  }

  /** What each of these members said last of each purpose. */
  async newest(db: Db, memberIds: readonly string[]): Promise<ConsentRecord[]> {
    const rows = await db.consent.findMany({
      where: { memberId: { in: [...memberIds] } },
      orderBy: [{ memberId: 'asc' }, { purpose: 'asc' }, { id: 'desc' }],
      distinct: ['memberId', 'purpose'],
    });
    return rows.flatMap(toModel);
  }

  async history(db: Db, memberId: string, step: Step): Promise<ConsentRecord[]> {
    const rows = await db.consent.findMany({ where: { memberId, ...(step.after ? { id: { gt: step.after } } : {}) }, orderBy: { id: 'asc' }, take: step.take });
    return rows.flatMap(toModel);
  }

  /** One member says one thing after the other. */
  async hold(db: Db, memberId: string): Promise<void> {
    await db.$executeRaw`SELECT pg_advisory_xact_lock(hashtextextended(${`consents of ${memberId}`}, 11))`;
  }
}
