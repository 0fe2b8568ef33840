import { Injectable } from '@nestjs/common';
import { Database } from '../../platform/database/database.js';
import { Passwords } from '../../platform/passwords/passwords.js';
import { PASSWORD_LENGTH, passwordFault, type About } from '../../platform/passwords/rules.js';
import { fail } from '../../platform/problems/problem.js';
import { Throttle, type Slowing } from '../../platform/throttle/throttle.js';
import { must } from '../shared/change.js';
import { ofAccount } from './account-scope.js';
import { AccountsRepository, type AccountRecord } from './accounts.repository.js';
import { FactorsRepository } from './factors.repository.js';

/** Ten wrong ones are free; then 2, 4, 8 seconds and so on, at most five minutes. */
export const SLOWED: Slowing = { freeCount: 10, longestWaitS: 300, forgetS: 3600 };

/** Refuses a new password that is too short, too long, common, or made of what everybody knows of the person. */
export const mustBeGoodPassword = (pointer: string, password: string, about: About): void => {
  const fault = passwordFault(password, about);
  if (fault) fail('validation-failed', { count: 1 }, [{ pointer, ...fault }]);
};

export { PASSWORD_LENGTH };

/** Asks a signed-in person once more for the password, and for a code where a second factor is set. */
@Injectable()
export class Recheck {
  constructor(
    private readonly database: Database,
    private readonly accounts: AccountsRepository,
    private readonly factors: FactorsRepository,
    private readonly passwords: Passwords,
    private readonly throttle: Throttle,
  ) {}

  async must(accountId: string, password: string, code: string | null): Promise<AccountRecord> {
    await this.throttle.slow('recheck', accountId, SLOWED);
    const account = must(await this.database.readSnapshot(ofAccount(accountId), (db) => this.accounts.get(db, accountId)), 'account');
    const { right } = await this.passwords.verify(account.passwordPhc, password);
    const whole =
      right &&
      (!account.secondFactor ||
        (code !== null && (await this.database.inTransaction(ofAccount(accountId), (db) => this.factors.takeCode(db, accountId, code)))));
    if (!whole) {
      await this.database.inTransaction(ofAccount(accountId), (db) => this.accounts.note(db, accountId, 'password.refuse'));
      return fail('password-wrong');
    }
    await this.throttle.forgive('recheck', accountId);
    return account;
  }
}
