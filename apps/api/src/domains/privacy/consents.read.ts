import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/access/actor.js';
import type { Db } from '../../platform/database/database.js';
import { ConsentsRepository } from './consents.repository.js';
import type { Purpose } from './purposes.js';

/** In this garden nothing but a visitor: what members share among themselves is not for them unless that was agreed to as well. */
export const isVisitor = ({ roles }: Pick<Actor, 'roles'>): boolean => roles.length > 0 && roles.every((role) => role === 'extensionVolunteer');

/** What other domains may ask about consents. */
@Injectable()
export class ConsentsRead {
  constructor(private readonly consents: ConsentsRepository) {}

  /** Which of these members have agreed to a purpose, as far as it concerns whoever asks. */
  async givenBy(db: Db, actor: Pick<Actor, 'roles'>, memberIds: readonly string[], purpose: Purpose): Promise<ReadonlySet<string>> {
    if (memberIds.length === 0) return new Set();
    const given = (await this.consents.newest(db, memberIds)).filter((one) => one.given);
    const who = (wanted: Purpose): Set<string> => new Set(given.filter((one) => one.purpose === wanted).map((one) => one.memberId));
    const [agreed, alsoVisitors] = [who(purpose), who('shareWithExtension')];
    return isVisitor(actor) ? new Set([...agreed].filter((id) => alsoVisitors.has(id))) : agreed;
  }

  async has(db: Db, memberId: string, purpose: Purpose): Promise<boolean> {
    return (await this.consents.newest(db, [memberId])).some((one) => one.given && one.purpose === purpose);
  }
}
