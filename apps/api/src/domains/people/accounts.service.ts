import { Injectable } from '@nestjs/common';
import type { Request } from 'express';
import type { Actor } from '../../platform/access/actor.js';
import { Database } from '../../platform/database/database.js';
import { assertMatch } from '../../platform/http/etag.js';
import { afterOf, toPage, type Page, type PageQuery } from '../../platform/http/page.js';
import type { Reply } from '../../platform/http/reply.js';
import { Outbox } from '../../platform/mail/outbox.js';
import { Passwords } from '../../platform/passwords/passwords.js';
import { fail } from '../../platform/problems/problem.js';
import { must, patched, shown } from '../shared/change.js';
import { accountOf } from './account-scope.js';
import { AccountSettingsDto, toAccountResponse, toEventResponse, toSettings, type PasswordChangeDto } from './accounts.dto.js';
import { AccountsRepository, type EventRecord, type MembershipRecord } from './accounts.repository.js';
import { mustBeGoodPassword, Recheck } from './recheck.js';
import { SessionOpener } from './session-opener.js';

/** What changing a password works with. */
@Injectable()
export class PasswordTools {
  constructor(
    readonly recheck: Recheck,
    readonly passwords: Passwords,
    readonly opener: SessionOpener,
    readonly outbox: Outbox,
  ) {}
}

@Injectable()
export class AccountsService {
  constructor(
    private readonly database: Database,
    private readonly accounts: AccountsRepository,
    private readonly tools: PasswordTools,
  ) {}

  async show(actor: Actor): Promise<Reply> {
    return shown(toAccountResponse(must(await this.database.readSnapshot(actor, (db) => this.accounts.get(db, accountOf(actor))), 'account')));
  }

  change(actor: Actor, ifMatch: string | undefined, patch: unknown): Promise<Reply> {
    return this.database.inTransaction(actor, async (db) => {
      const was = must(await this.accounts.get(db, accountOf(actor)), 'account');
      assertMatch(ifMatch, was);
      const { dto } = patched(AccountSettingsDto, toSettings(was), {}, patch);
      if (!(await this.accounts.update(db, was, toSettings(dto)))) fail('version-stale');
      await this.accounts.note(db, was.id, 'account.update');
      return shown(toAccountResponse(must(await this.accounts.get(db, was.id), 'account')));
    });
  }

  /** All sessions end; the caller goes on under a new one. */
  async changePassword(actor: Actor, request: Request, body: PasswordChangeDto): Promise<Reply> {
    const { recheck, passwords, opener, outbox } = this.tools;
    const account = await recheck.must(accountOf(actor), body.password, body.code ?? null);
    mustBeGoodPassword('/newPassword', body.newPassword, account);
    const phc = await passwords.hash(body.newPassword);
    const session = await this.database.inTransaction(actor, async (db) => {
      await this.accounts.setPassword(db, account.id, phc);
      await this.accounts.note(db, account.id, 'password.change');
      await outbox.put(db, { to: account.email, locale: account.locale, kind: 'passwordChanged', params: { name: account.name } });
      return opener.renew(db, actor, request);
    });
    return opener.answer(200, session, opener.bearerOf(request));
  }

  async events(actor: Actor, query: PageQuery): Promise<Page<EventRecord>> {
    const step = { after: afterOf(query), take: query.limit + 1 };
    const rows = await this.database.readSnapshot(actor, (db) => this.accounts.listEvents(db, accountOf(actor), step));
    return toPage(rows.map(toEventResponse), query.limit, (row) => row.id, query);
  }

  async gardens(actor: Actor, query: PageQuery): Promise<Page<MembershipRecord>> {
    const after = afterOf(query);
    const all = await this.database.readSnapshot(actor, (db) => this.accounts.memberships(db));
    const rows = all.filter(({ gardenId }) => after === null || gardenId > after).slice(0, query.limit + 1);
    return toPage(rows, query.limit, (row) => row.gardenId, query);
  }
}
