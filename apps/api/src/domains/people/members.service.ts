import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/access/actor.js';
import { audit } from '../../platform/database/audit.js';
import { Database, type Db } from '../../platform/database/database.js';
import { assertMatch } from '../../platform/http/etag.js';
import { afterOf, toPage, type Page } from '../../platform/http/page.js';
import type { Reply } from '../../platform/http/reply.js';
import { fail } from '../../platform/problems/problem.js';
import { must, mustBeNewest, patched, shown } from '../shared/change.js';
import { MemberSettingsDto, toMemberResponse, toMemberSettings, type MembersQuery } from './members.dto.js';
import { MembersRepository, type MemberRecord } from './members.repository.js';

/** Whose rows the operation reaches: with `own` only the caller. */
const onlyOf = (actor: Actor): string | null => (actor.reach === 'own' ? actor.memberId : null);

export const mustHaveRole = (roles: readonly unknown[]): void => {
  if (roles.length === 0)
    fail('validation-failed', { count: 1 }, [
      { pointer: '/roles', code: 'empty', detail: 'A member has at least one role.', remedy: 'Give one, for example member.' },
    ]);
};

@Injectable()
export class MembersService {
  constructor(
    private readonly database: Database,
    private readonly members: MembersRepository,
  ) {}

  async list(actor: Actor, query: MembersQuery): Promise<Page<MemberRecord>> {
    const step = { after: afterOf(query), take: query.limit + 1 };
    const filter = { only: onlyOf(actor), former: query.former ?? false };
    const rows = await this.database.readSnapshot(actor, (db) => this.members.list(db, step, filter));
    return toPage(rows.map(toMemberResponse), query.limit, (row) => row.id, query);
  }

  async find(actor: Actor, id: string): Promise<Reply> {
    return shown(toMemberResponse(await this.database.readSnapshot(actor, (db) => this.within(db, actor, id))));
  }

  change(actor: Actor, id: string, ifMatch: string | undefined, patch: unknown): Promise<Reply> {
    return this.database.inTransaction(actor, async (db) => {
      await this.members.hold(db, actor.gardenId);
      const was = await this.within(db, actor, id);
      if (was.leftAt !== null) fail('conflict', { reason: 'The member has left.' });
      assertMatch(ifMatch, was);
      const { dto } = patched(MemberSettingsDto, toMemberSettings(was), {}, patch);
      mustHaveRole(dto.roles);
      const to = { name: dto.name, roles: [...new Set(dto.roles)] };
      if (was.roles.includes('coordinator') && !to.roles.includes('coordinator')) await this.mustNotBeLast(db, id);
      const now = mustBeNewest(await this.members.update(db, was, to));
      await audit(db, actor, { action: 'member.update', objectType: 'member', objectId: id, before: was, after: now });
      return shown(toMemberResponse(now));
    });
  }

  /** A member leaves, or a coordinator removes one. Doing it twice changes nothing. */
  async remove(actor: Actor, id: string): Promise<void> {
    // What the member kept changes hands, which is more than the member's own reach allows.
    await this.database.inTransaction({ ...actor, reach: 'all' }, async (db) => {
      await this.members.hold(db, actor.gardenId);
      const was = await this.within(db, actor, id);
      if (was.leftAt !== null) return;
      if (was.roles.includes('coordinator')) await this.mustNotBeLast(db, id);
      await this.members.leave(db, id);
      const action = actor.memberId === id ? 'member.leave' : 'member.remove';
      await audit(db, actor, { action, objectType: 'member', objectId: id, before: was });
    });
  }

  private async within(db: Db, actor: Actor, id: string): Promise<MemberRecord> {
    const only = onlyOf(actor);
    return must(only !== null && only !== id ? null : await this.members.find(db, id), 'member');
  }

  private async mustNotBeLast(db: Db, id: string): Promise<void> {
    if (!(await this.members.hasOtherCoordinator(db, id))) fail('last-coordinator');
  }
}
