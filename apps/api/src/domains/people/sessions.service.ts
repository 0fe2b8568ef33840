import { Inject, Injectable } from '@nestjs/common';
import type { Request } from 'express';
import type { Actor } from '../../platform/access/actor.js';
import { credentialOf } from '../../platform/access/credential.js';
import { mustBeSameSite } from '../../platform/access/cross-site.js';
import { Sessions } from '../../platform/access/sessions.js';
import { CONFIG, type Config } from '../../platform/config/config.js';
import { Database } from '../../platform/database/database.js';
import { afterOf, toPage, type Page, type PageQuery } from '../../platform/http/page.js';
import { reply, type Reply } from '../../platform/http/reply.js';
import { must } from '../shared/change.js';
import { accountOf, ofAccount } from './account-scope.js';
import { AccountsRepository } from './accounts.repository.js';
import { NO_COOKIE, SessionOpener } from './session-opener.js';
import { toSessionResponse, type SignInDto } from './sessions.dto.js';
import { SessionsRepository } from './sessions.repository.js';
import { SignIn } from './sign-in.js';

const NO_CONTENT = { status: 204, body: null } as const;

/** What a person needs to open, see and end sessions. */
@Injectable()
export class SessionTools {
  constructor(
    readonly signIn: SignIn,
    readonly opener: SessionOpener,
    readonly sessions: SessionsRepository,
    readonly accounts: AccountsRepository,
    readonly current: Sessions,
  ) {}
}

@Injectable()
export class SessionsService {
  constructor(
    private readonly database: Database,
    private readonly tools: SessionTools,
    @Inject(CONFIG) private readonly config: Config,
  ) {}

  async create(request: Request, body: SignInDto): Promise<Reply> {
    // Another site must not sign a browser in under its own account.
    if (request.get('sec-fetch-site') !== undefined) mustBeSameSite(request, this.config.publicOrigin);
    const accountId = await this.tools.signIn.check(request, body);
    await this.endFormer(request);
    const session = await this.database.inTransaction(ofAccount(accountId), async (db) => {
      await this.tools.accounts.note(db, accountId, 'session.create');
      return this.tools.opener.open(db, accountId, request);
    });
    return this.tools.opener.answer(201, session, body.as ?? 'cookie');
  }

  async list(actor: Actor, query: PageQuery): Promise<Page<object>> {
    const accountId = accountOf(actor);
    const step = { after: afterOf(query), take: query.limit + 1 };
    const rows = await this.database.readSnapshot(actor, (db) => this.tools.sessions.list(db, accountId, step, this.config.sessionIdleMs));
    return toPage(
      rows.map((row) => toSessionResponse(row, actor.credentialId)),
      query.limit,
      (row) => row.id,
      query,
    );
  }

  async end(actor: Actor, id: string): Promise<void> {
    const accountId = accountOf(actor);
    await this.database.inTransaction(actor, async (db) => {
      must((await this.tools.sessions.end(db, accountId, { only: id })) || null, 'session');
      await this.tools.accounts.note(db, accountId, 'session.end');
    });
  }

  async endCurrent(actor: Actor): Promise<Reply> {
    await this.end(actor, actor.credentialId);
    return reply(NO_CONTENT, NO_COOKIE);
  }

  async endOthers(actor: Actor): Promise<void> {
    const accountId = accountOf(actor);
    await this.database.inTransaction(actor, async (db) => {
      await this.tools.sessions.end(db, accountId, { allBut: actor.credentialId });
      await this.tools.accounts.note(db, accountId, 'session.end-others');
    });
  }

  /** The browser's former session ends with the new one: nobody goes on under the old. */
  private async endFormer(request: Request): Promise<void> {
    const credential = credentialOf(request);
    const former = credential?.from === 'cookie' ? await this.tools.current.personOf(credential.token) : null;
    if (former === null) return;
    await this.database.inTransaction(former, (db) => this.tools.sessions.end(db, accountOf(former), { only: former.credentialId }));
  }
}
