import { Inject, Injectable } from '@nestjs/common';
import type { Request } from 'express';
import { CONFIG, type Config } from '../../platform/config/config.js';
import { Database, type Db } from '../../platform/database/database.js';
import { newId } from '../../platform/database/ids.js';
import { Outbox } from '../../platform/mail/outbox.js';
import { Passwords } from '../../platform/passwords/passwords.js';
import { fail } from '../../platform/problems/problem.js';
import { networkOf, Throttle } from '../../platform/throttle/throttle.js';
import { must } from '../shared/change.js';
import { atLeast, NOBODY, ofAccount } from './account-scope.js';
import type { ConfirmDto, SignUpDto } from './accounts.dto.js';
import { AccountsRepository, type AccountRecord, type FoundAccount } from './accounts.repository.js';
import { InvitationsRepository } from './invitations.repository.js';
import { mailCodeHash, newMailCode } from './mail-codes.js';
import { plainEmail } from './people.fields.js';
import { mustBeGoodPassword, SLOWED } from './recheck.js';

const CONFIRM_MIN = 60;
const ANSWER_MS = 300;
/** Nobody's mailbox is filled by somebody else. */
const MAILS = { limit: 3, stretchS: 3600, what: 'mails of this kind an hour' } as const;

/** What making and confirming an account works with. */
@Injectable()
export class SignUpTools {
  constructor(
    readonly accounts: AccountsRepository,
    readonly invitations: InvitationsRepository,
    readonly passwords: Passwords,
    readonly throttle: Throttle,
    readonly outbox: Outbox,
  ) {}
}

type Wanted = { email: string; name: string; locale: string; passwordPhc: string };

@Injectable()
export class SignUpService {
  constructor(
    private readonly database: Database,
    private readonly tools: SignUpTools,
    @Inject(CONFIG) private readonly config: Config,
  ) {}

  /** The answer is the same whether there was such an account or not; what happened stands in the mail. */
  async create(request: Request, body: SignUpDto): Promise<void> {
    const email = plainEmail(body.email);
    mustBeGoodPassword('/password', body.password, { email, name: body.name });
    await this.tools.throttle.mustHave('sign-up', networkOf(request), {
      limit: this.config.signUpsPerHour,
      stretchS: 3600,
      what: 'sign-ups an hour from one network address',
    });
    if (this.config.signUp === 'invited') await this.mustBeInvited(email, body.invitation ?? null);
    await atLeast(ANSWER_MS, this.createOrRemind(email, body));
  }

  /** The code shows who reads the mail, the password who signed up. Only together do they open the account. */
  async confirm(body: ConfirmDto): Promise<void> {
    const sha256 = mailCodeHash(body.code);
    const accountId =
      (await this.database.readSnapshot(NOBODY, (db) => this.tools.accounts.findMailCode(db, sha256, 'confirm'))) ?? fail('code-of-mail-invalid');
    await this.tools.throttle.slow('recheck', accountId, SLOWED);
    const account = must(await this.database.readSnapshot(ofAccount(accountId), (db) => this.tools.accounts.get(db, accountId)), 'account');
    if (!(await this.tools.passwords.verify(account.passwordPhc, body.password)).right) fail('password-wrong');
    await this.database.inTransaction(ofAccount(accountId), async (db) => {
      if ((await this.tools.accounts.useMailCode(db, sha256, 'confirm')) !== accountId) fail('code-of-mail-invalid');
      await this.tools.accounts.confirmEmail(db, accountId);
      await this.tools.accounts.note(db, accountId, 'account.confirm');
    });
    await this.tools.throttle.forgive('recheck', accountId);
  }

  private async createOrRemind(email: string, body: SignUpDto): Promise<void> {
    const wanted = { email, name: body.name, locale: body.locale ?? 'en', passwordPhc: await this.tools.passwords.hash(body.password) };
    const found = await this.find(email);
    if (found === null && (await this.insert(wanted))) return;
    const there = found ?? (await this.find(email));
    if (there === null || there.blocked || (await this.tools.throttle.take('sign-up mail', there.accountId, MAILS)) > 0) return;
    await this.database.inTransaction(ofAccount(there.accountId), async (db) => {
      if (!there.confirmed)
        await this.tools.accounts.replaceUnconfirmed(db, there.accountId, { name: wanted.name, locale: wanted.locale, passwordPhc: wanted.passwordPhc });
      await this.remind(db, must(await this.tools.accounts.get(db, there.accountId), 'account'));
    });
  }

  private find(email: string): Promise<FoundAccount | null> {
    return this.database.readSnapshot(NOBODY, (db) => this.tools.accounts.findByEmail(db, email));
  }

  private insert(wanted: Wanted): Promise<boolean> {
    const id = newId();
    return this.database.inTransaction(ofAccount(id), async (db) => {
      if (!(await this.tools.accounts.insert(db, { id, ...wanted }))) return false;
      await this.tools.accounts.note(db, id, 'account.create');
      await this.remind(db, must(await this.tools.accounts.get(db, id), 'account'));
      return true;
    });
  }

  /** To an address that is not confirmed goes a code; to one that is, a word that there is an account already. */
  private async remind(db: Db, account: AccountRecord): Promise<void> {
    const { email: to, locale, name } = account;
    if (account.emailConfirmed) return this.tools.outbox.put(db, { to, locale, kind: 'alreadyThere', params: { name } });
    const { code, sha256 } = newMailCode();
    await this.tools.accounts.insertMailCode(db, account.id, 'confirm', sha256, new Date(Date.now() + CONFIRM_MIN * 60_000));
    await this.tools.outbox.put(db, { to, locale, kind: 'confirm', params: { name, code, validMin: CONFIRM_MIN } });
  }

  private async mustBeInvited(email: string, code: string | null): Promise<void> {
    const invited = code !== null && (await this.tools.invitations.isFor(this.database, mailCodeHash(code), email));
    if (!invited) fail('sign-up-invited-only');
  }
}
