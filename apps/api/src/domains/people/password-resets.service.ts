import { Inject, Injectable } from '@nestjs/common';
import type { Request } from 'express';
import { CONFIG, type Config } from '../../platform/config/config.js';
import { Database } from '../../platform/database/database.js';
import { fail } from '../../platform/problems/problem.js';
import { networkOf } from '../../platform/throttle/throttle.js';
import { must } from '../shared/change.js';
import { atLeast, NOBODY, ofAccount } from './account-scope.js';
import type { RedeemResetDto } from './accounts.dto.js';
import { mailCodeHash, newMailCode } from './mail-codes.js';
import { plainEmail } from './people.fields.js';
import { mustBeGoodPassword } from './recheck.js';
import { SessionsRepository } from './sessions.repository.js';
import { SignUpTools } from './sign-up.service.js';

const RESET_MIN = 30;
const ANSWER_MS = 150;
const NETWORK = { limit: 60, stretchS: 3600, what: 'requests for a new password an hour from one network address' } as const;

@Injectable()
export class PasswordResetsService {
  constructor(
    private readonly database: Database,
    private readonly tools: SignUpTools,
    private readonly sessions: SessionsRepository,
    @Inject(CONFIG) private readonly config: Config,
  ) {}

  /** The answer is the same, and as late, whether there is such an account or not. */
  async create(request: Request, typed: string): Promise<void> {
    await this.tools.throttle.mustHave('reset network', networkOf(request), NETWORK);
    await atLeast(ANSWER_MS, this.send(plainEmail(typed)));
  }

  /** A new password with the code of the mail. Everybody who was signed in is signed out; a second factor stays. */
  async redeem(body: RedeemResetDto): Promise<void> {
    const { accounts, passwords, outbox, throttle } = this.tools;
    const sha256 = mailCodeHash(body.code);
    const accountId = (await this.database.readSnapshot(NOBODY, (db) => accounts.findMailCode(db, sha256, 'reset'))) ?? fail('code-of-mail-invalid');
    const account = must(await this.database.readSnapshot(ofAccount(accountId), (db) => accounts.get(db, accountId)), 'account');
    mustBeGoodPassword('/password', body.password, account);
    const phc = await passwords.hash(body.password);
    await this.database.inTransaction(ofAccount(accountId), async (db) => {
      if ((await accounts.useMailCode(db, sha256, 'reset')) !== accountId) fail('code-of-mail-invalid');
      await accounts.setPassword(db, accountId, phc);
      // Who has the code reads the mail.
      await accounts.confirmEmail(db, accountId);
      await this.sessions.end(db, accountId, 'all');
      await accounts.note(db, accountId, 'password.reset');
      await outbox.put(db, { to: account.email, locale: account.locale, kind: 'passwordChanged', params: { name: account.name } });
    });
    await throttle.forgive('sign-in', account.email);
  }

  private async send(email: string): Promise<void> {
    const { accounts, outbox, throttle } = this.tools;
    const found = await this.database.readSnapshot(NOBODY, (db) => accounts.findByEmail(db, email));
    if (found === null || found.blocked) return;
    const { accountId } = found;
    const quota = { limit: this.config.resetsPerHour, stretchS: 3600, what: 'password mails an hour' };
    const refused = (await throttle.take('reset', accountId, quota)) > 0;
    await this.database.inTransaction(ofAccount(accountId), async (db) => {
      await accounts.note(db, accountId, refused ? 'password.reset-refuse' : 'password.reset-ask');
      const account = await accounts.get(db, accountId);
      if (refused || account === null) return;
      const { code, sha256 } = newMailCode();
      await accounts.insertMailCode(db, accountId, 'reset', sha256, new Date(Date.now() + RESET_MIN * 60_000));
      await outbox.put(db, { to: account.email, locale: account.locale, kind: 'reset', params: { name: account.name, code, validMin: RESET_MIN } });
    });
  }
}
