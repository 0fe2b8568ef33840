import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/access/actor.js';
import { audit } from '../../platform/database/audit.js';
import { Database } from '../../platform/database/database.js';
import { afterOf, toPage, type Page, type PageQuery } from '../../platform/http/page.js';
import { fail } from '../../platform/problems/problem.js';
import { toEntry, toStates, type ConsentDto, type ConsentState } from './consents.dto.js';
import { ConsentsRepository, type ConsentRecord } from './consents.repository.js';
import { WORDINGS, type Purpose } from './purposes.js';

/** The member that a person is here; no key and no operator agrees to anything. */
export const selfOf = (actor: Actor): string => (actor.kind === 'person' && actor.memberId !== null ? actor.memberId : fail('person-only'));

@Injectable()
export class ConsentsService {
  constructor(
    private readonly database: Database,
    private readonly consents: ConsentsRepository,
  ) {}

  async list(actor: Actor): Promise<{ items: ConsentState[] }> {
    return { items: toStates(await this.database.readSnapshot(actor, (db) => this.consents.newest(db, [selfOf(actor)]))) };
  }

  async history(actor: Actor, query: PageQuery): Promise<Page<Omit<ConsentRecord, 'memberId'>>> {
    const step = { after: afterOf(query), take: query.limit + 1 };
    const rows = await this.database.readSnapshot(actor, (db) => this.consents.history(db, selfOf(actor), step));
    return toPage(rows.map(toEntry), query.limit, (row) => row.id, query);
  }

  give(actor: Actor, body: ConsentDto): Promise<ConsentState> {
    const { version } = WORDINGS[body.purpose];
    if (body.wordingVersion !== version)
      fail('validation-failed', { count: 1 }, [
        {
          pointer: '/wordingVersion',
          code: 'not-the-words-of-today',
          detail: `The words of this purpose are number ${version} now.`,
          remedy: 'Read GET /v1/members/me/consents again and agree to what it says.',
        },
      ]);
    return this.say(actor, body.purpose, true);
  }

  withdraw(actor: Actor, purpose: Purpose): Promise<ConsentState> {
    return this.say(actor, purpose, false);
  }

  /** Said again it changes nothing, unless the words are new. */
  private say(actor: Actor, purpose: Purpose, given: boolean): Promise<ConsentState> {
    const memberId = selfOf(actor);
    return this.database.inTransaction(actor, async (db) => {
      await this.consents.hold(db, memberId);
      const newest = await this.consents.newest(db, [memberId]);
      const last = newest.find((one) => one.purpose === purpose);
      const same = given ? last?.given === true && last.wording.version === WORDINGS[purpose].version : last?.given !== true;
      const now = same ? newest : [...(await this.consents.add(db, actor.gardenId, memberId, { purpose, given, wording: WORDINGS[purpose] })), ...newest];
      if (!same) await audit(db, actor, { action: given ? 'consent.give' : 'consent.withdraw', objectType: 'member', objectId: memberId, after: { purpose } });
      return toStates(now).find((one) => one.purpose === purpose) ?? fail('not-found', { what: 'consent' });
    });
  }
}
