import { Inject, Injectable } from '@nestjs/common';
import type { Request } from 'express';
import type { Actor } from '../../platform/access/actor.js';
import { CONFIG, type Config } from '../../platform/config/config.js';
import { audit } from '../../platform/database/audit.js';
import { Database } from '../../platform/database/database.js';
import { etagOfParts } from '../../platform/http/etag.js';
import { afterOf, toPage, type Page, type PageQuery } from '../../platform/http/page.js';
import { found, reply, type Reply } from '../../platform/http/reply.js';
import { Idempotency } from '../../platform/idempotency/idempotency.js';
import { Outbox } from '../../platform/mail/outbox.js';
import { fail } from '../../platform/problems/problem.js';
import { Throttle, usedUp } from '../../platform/throttle/throttle.js';
import { must } from '../shared/change.js';
import { emit } from '../shared/events.js';
import { accountOf, NOBODY } from './account-scope.js';
import { AccountsRepository } from './accounts.repository.js';
import { toInvitationResponse, type InvitationDto, type RedeemInvitationDto } from './invitations.dto.js';
import { InvitationsRepository, type InvitationRecord } from './invitations.repository.js';
import { mailCodeHash, newMailCode } from './mail-codes.js';
import { MembersRepository } from './members.repository.js';
import { mustHaveRole } from './members.service.js';
import { plainEmail } from './people.fields.js';
import { SLOWED } from './recheck.js';

const VALID_DAYS = 7;
const DAY_MS = 86_400_000;

/** What inviting and joining work with. */
@Injectable()
export class InvitationTools {
  constructor(
    readonly invitations: InvitationsRepository,
    readonly members: MembersRepository,
    readonly accounts: AccountsRepository,
    readonly outbox: Outbox,
    readonly throttle: Throttle,
  ) {}
}

@Injectable()
export class InvitationsService {
  constructor(
    private readonly database: Database,
    private readonly idempotency: Idempotency,
    private readonly tools: InvitationTools,
    @Inject(CONFIG) private readonly config: Config,
  ) {}

  /** The code goes out by mail and nowhere else: whoever invites cannot take the place of who is invited. */
  create(actor: Actor, request: Request, body: InvitationDto): Promise<Reply> {
    mustHaveRole(body.roles);
    const email = plainEmail(body.email);
    const { invitations, outbox } = this.tools;
    return this.idempotency.creating(actor, request, async (db) => {
      await this.mustHaveQuota(actor);
      const { code, sha256 } = newMailCode();
      const roles = [...new Set(body.roles)];
      const expiresAt = new Date(Date.now() + VALID_DAYS * DAY_MS);
      const invitation = await invitations.insert(db, { gardenId: actor.gardenId, email, roles, sha256, invitedById: actor.principalId, expiresAt });
      const garden = await invitations.gardenName(db);
      await outbox.put(db, { to: email, locale: 'en', kind: 'invitation', params: { garden, roles: roles.join(', '), code, validDays: VALID_DAYS } });
      await audit(db, actor, { action: 'invitation.create', objectType: 'invitation', objectId: invitation.id, after: { roles } });
      const etag = etagOfParts(invitation.id, invitation.state);
      return { status: 201, body: toInvitationResponse(invitation), location: `/v1/invitations/${invitation.id}`, etag };
    });
  }

  async list(actor: Actor, query: PageQuery): Promise<Page<InvitationRecord>> {
    const step = { after: afterOf(query), take: query.limit + 1 };
    const rows = await this.database.readSnapshot(actor, (db) => this.tools.invitations.list(db, step));
    return toPage(rows.map(toInvitationResponse), query.limit, (row) => row.id, query);
  }

  async find(actor: Actor, id: string): Promise<Reply> {
    const invitation = must(await this.database.readSnapshot(actor, (db) => this.tools.invitations.find(db, id)), 'invitation');
    return found(toInvitationResponse(invitation), etagOfParts(invitation.id, invitation.state));
  }

  async revoke(actor: Actor, id: string): Promise<void> {
    await this.database.inTransaction(actor, async (db) => {
      const was = must(await this.tools.invitations.find(db, id), 'invitation');
      if (was.state === 'accepted') fail('conflict', { reason: 'The invitation was taken already; remove the member instead.' });
      if (await this.tools.invitations.revoke(db, id))
        await audit(db, actor, { action: 'invitation.revoke', objectType: 'invitation', objectId: id, before: { roles: was.roles } });
    });
  }

  /** The signed-in person joins the garden, if the invitation went to the address of their account. */
  async redeem(actor: Actor, body: RedeemInvitationDto): Promise<Reply> {
    const { invitations, members, accounts, throttle } = this.tools;
    const accountId = accountOf(actor);
    await throttle.slow('invitation', accountId, SLOWED);
    const sha256 = mailCodeHash(body.code);
    const account = must(await this.database.readSnapshot(actor, (db) => accounts.get(db, accountId)), 'account');
    if (!account.emailConfirmed) fail('email-unconfirmed');
    const there = (await this.database.readSnapshot(NOBODY, (db) => invitations.findByCode(db, sha256))) ?? fail('code-of-mail-invalid');
    const { gardenId } = there;
    const joined = await this.database.inTransaction({ gardenId }, async (db) => {
      await members.hold(db, gardenId);
      const invitation = await invitations.find(db, there.id);
      if (invitation?.state !== 'open') return fail('code-of-mail-invalid');
      if (invitation.email !== account.email) fail('other-address');
      const member = await members.join(db, gardenId, { accountId, name: account.name }, invitation.roles);
      if (member === null) return fail('conflict', { reason: 'You are a member of this garden already.' });
      if (!(await invitations.accept(db, there.id, member.id))) fail('code-of-mail-invalid');
      const as = { ...actor, gardenId, memberId: member.id, principalId: member.id };
      await audit(db, as, { action: 'member.join', objectType: 'member', objectId: member.id, after: { roles: member.roles } });
      await emit(db, gardenId, { type: 'member.joined', object: 'member', id: member.id, version: member.version });
      return { gardenId, memberId: member.id, roles: member.roles };
    });
    await throttle.forgive('invitation', accountId);
    return reply({ status: 201, body: joined, location: `/v1/members/${joined.memberId}` });
  }

  /** A garden sends so many a day; where a script would send more, the coordinators see it in the audit log. */
  private async mustHaveQuota(actor: Actor): Promise<void> {
    const quota = { limit: this.config.invitationsPerDay, stretchS: 86_400, what: 'invitations a day' };
    const wait = await this.tools.throttle.take('invitations', actor.gardenId, quota);
    if (wait === 0) return;
    // In a transaction of its own: it stands although nothing else of the request does.
    await this.database.inTransaction(actor, (db) =>
      audit(db, actor, { action: 'invitation.refuse', objectType: 'garden', objectId: actor.gardenId, after: { limit: quota.limit } }),
    );
    throw usedUp(quota, wait);
  }
}
