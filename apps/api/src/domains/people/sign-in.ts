import { Injectable } from '@nestjs/common';
import type { Request } from 'express';
import { Database } from '../../platform/database/database.js';
import { Passwords } from '../../platform/passwords/passwords.js';
import { fail, Problem } from '../../platform/problems/problem.js';
import { networkOf, Throttle, type Slowing } from '../../platform/throttle/throttle.js';
import { NOBODY, ofAccount } from './account-scope.js';
import { AccountsRepository, type FoundAccount } from './accounts.repository.js';
import { FactorsRepository } from './factors.repository.js';
import { plainEmail } from './people.fields.js';
import { SLOWED } from './recheck.js';
import type { SignInDto } from './sessions.dto.js';

/** A household or an office tries more often than one person, and is never shut out for long. */
const NETWORK_SLOWED: Slowing = { freeCount: 60, longestWaitS: 60, forgetS: 900 };

const CHALLENGE = { 'WWW-Authenticate': 'Bearer realm="lathwork"' };

/**
 * Checks a mail address, a password and, where a second factor is set, a code. Whether the address is known cannot be
 * told from the words, the time or the slowing: all three are the same for an address that nobody has.
 */
@Injectable()
export class SignIn {
  constructor(
    private readonly database: Database,
    private readonly accounts: AccountsRepository,
    private readonly factors: FactorsRepository,
    private readonly passwords: Passwords,
    private readonly throttle: Throttle,
  ) {}

  async onApplicationBootstrap(): Promise<void> {
    await this.passwords.warmUp();
  }

  /** The account, or a refusal. */
  async check(request: Request, body: SignInDto): Promise<string> {
    const email = plainEmail(body.email);
    await this.throttle.slow('sign-in network', networkOf(request), NETWORK_SLOWED);
    await this.throttle.slow('sign-in', email, SLOWED);
    const found = await this.database.readSnapshot(NOBODY, (db) => this.accounts.findByEmail(db, email));
    const { right, outdated } = await this.passwords.verify(found?.passwordPhc ?? null, body.password);
    if (!found || !right || found.blocked) return this.refuse(found);
    if (!found.confirmed) fail('email-unconfirmed');
    await this.mustHaveCode(found, body.code ?? null);
    await this.throttle.forgive('sign-in', email);
    if (outdated) await this.strengthen(found, body.password);
    return found.accountId;
  }

  private async mustHaveCode(found: FoundAccount, code: string | null): Promise<void> {
    const { accountId } = found;
    const taken = await this.database.inTransaction(ofAccount(accountId), async (db) => {
      if (!(await this.factors.get(db, accountId))?.set) return 'none';
      if (code === null) return 'missing';
      const kind = await this.factors.takeCode(db, accountId, code);
      if (kind === 'recovery') await this.accounts.note(db, accountId, 'recovery-code.use');
      return kind;
    });
    if (taken === 'missing') throw new Problem('code-required', {}, [], CHALLENGE);
    if (taken === null) await this.refuse(found);
  }

  /** An unknown address is noted nowhere, but waits for as many answers of the database as a known one. */
  private async refuse(found: FoundAccount | null): Promise<never> {
    const accountId = found?.accountId;
    await this.database.inTransaction(accountId ? ofAccount(accountId) : NOBODY, async (db) => {
      if (accountId) await this.accounts.note(db, accountId, 'session.refuse');
      else await this.accounts.findByEmail(db, '');
    });
    throw new Problem('sign-in-failed', {}, [], CHALLENGE);
  }

  private async strengthen({ accountId, passwordPhc }: FoundAccount, password: string): Promise<void> {
    const phc = await this.passwords.hash(password);
    await this.database.inTransaction(ofAccount(accountId), (db) => this.accounts.strengthen(db, accountId, passwordPhc ?? '', phc));
  }
}
