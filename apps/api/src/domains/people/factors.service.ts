import { Injectable } from '@nestjs/common';
import type { Request } from 'express';
import type { Actor } from '../../platform/access/actor.js';
import { Database, type Db } from '../../platform/database/database.js';
import { reply, type Reply } from '../../platform/http/reply.js';
import { Outbox } from '../../platform/mail/outbox.js';
import type { LetterKind } from '../../platform/mail/words.js';
import { newRecoveryCodes } from '../../platform/one-time-codes/recovery.js';
import { newTotpSecret, totpStep, totpUri } from '../../platform/one-time-codes/totp.js';
import { fail } from '../../platform/problems/problem.js';
import { Throttle } from '../../platform/throttle/throttle.js';
import { must } from '../shared/change.js';
import { accountOf } from './account-scope.js';
import { AccountsRepository, type AccountRecord } from './accounts.repository.js';
import type { BeginFactorDto, ConfirmFactorDto, FactorProofDto } from './factors.dto.js';
import { FactorsRepository } from './factors.repository.js';
import { Recheck, SLOWED } from './recheck.js';
import { SessionOpener } from './session-opener.js';

const BEGUN_FOR_MS = 15 * 60_000;

/** What the use cases of the second factor work with. */
@Injectable()
export class FactorTools {
  constructor(
    readonly accounts: AccountsRepository,
    readonly factors: FactorsRepository,
    readonly recheck: Recheck,
    readonly throttle: Throttle,
    readonly outbox: Outbox,
  ) {}
}

@Injectable()
export class FactorsService {
  constructor(
    private readonly database: Database,
    private readonly tools: FactorTools,
    private readonly opener: SessionOpener,
  ) {}

  async show(actor: Actor): Promise<object> {
    const factor = await this.database.readSnapshot(actor, (db) => this.tools.factors.get(db, accountOf(actor)));
    return { state: factor === null ? 'none' : factor.set ? 'set' : 'begun', recoveryCodesLeftCount: factor?.recoveryCodesLeft ?? 0 };
  }

  async begin(actor: Actor, body: BeginFactorDto): Promise<Reply> {
    const accountId = accountOf(actor);
    const present = await this.database.readSnapshot(actor, (db) => this.tools.factors.get(db, accountId));
    if (present?.set) fail('conflict', { reason: 'A second factor is set already; remove it first.' });
    const account = await this.tools.recheck.must(accountId, body.password, null);
    const secret = newTotpSecret();
    await this.database.inTransaction(actor, async (db) => {
      await this.tools.factors.begin(db, accountId, secret);
      await this.tools.accounts.note(db, accountId, 'factor.begin');
    });
    return reply({ status: 201, body: { secret, uri: totpUri(secret, account.email) }, location: '/v1/account/factor' });
  }

  /** The first code shows that the app has the secret. From here on the account needs it, and the session is a new one. */
  async confirm(actor: Actor, request: Request, body: ConfirmFactorDto): Promise<Reply> {
    const accountId = accountOf(actor);
    await this.tools.throttle.slow('recheck', accountId, SLOWED);
    const { codes, hashes } = newRecoveryCodes();
    const session = await this.database.inTransaction(actor, async (db) => {
      const account = must(await this.tools.accounts.get(db, accountId), 'account');
      const factor = await this.tools.factors.get(db, accountId);
      const now = new Date();
      if (factor === null || factor.set || now.getTime() - factor.begunAt.getTime() > BEGUN_FOR_MS)
        return fail('conflict', { reason: 'There is no second factor that waits for its first code.' });
      const step = totpStep(factor.secret, body.code, null, now);
      if (step === null || !(await this.tools.factors.confirm(db, accountId, step, hashes))) return fail('password-wrong');
      await this.tell(db, account, 'factor.set', 'factorSet');
      return this.opener.renew(db, actor, request);
    });
    await this.tools.throttle.forgive('recheck', accountId);
    return this.opener.answer(200, session, this.opener.bearerOf(request), { recoveryCodes: codes });
  }

  async renewCodes(actor: Actor, body: FactorProofDto): Promise<Reply> {
    const account = await this.mustBeSet(actor, body);
    const { codes, hashes } = newRecoveryCodes();
    await this.database.inTransaction(actor, async (db) => {
      await this.tools.factors.setRecovery(db, account.id, hashes);
      await this.tools.accounts.note(db, account.id, 'recovery-code.renew');
    });
    return reply({ status: 200, body: { recoveryCodes: codes } });
  }

  async remove(actor: Actor, request: Request, body: FactorProofDto): Promise<Reply> {
    const account = await this.mustBeSet(actor, body);
    const session = await this.database.inTransaction(actor, async (db) => {
      await this.tools.factors.remove(db, account.id);
      await this.tell(db, account, 'factor.remove', 'factorRemoved');
      return this.opener.renew(db, actor, request);
    });
    return this.opener.answer(200, session, this.opener.bearerOf(request));
  }

  private async mustBeSet(actor: Actor, body: FactorProofDto): Promise<AccountRecord> {
    const account = await this.tools.recheck.must(accountOf(actor), body.password, body.code);
    return account.secondFactor ? account : fail('conflict', { reason: 'No second factor is set.' });
  }

  private async tell(db: Db, account: AccountRecord, action: string, kind: LetterKind): Promise<void> {
    await this.tools.accounts.note(db, account.id, action);
    await this.tools.outbox.put(db, { to: account.email, locale: account.locale, kind, params: { name: account.name } });
  }
}
