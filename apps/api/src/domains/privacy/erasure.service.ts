import { Inject, Injectable } from '@nestjs/common';
import { NIL_ID, type Actor } from '../../platform/access/actor.js';
import { CONFIG, type Config } from '../../platform/config/config.js';
import { audit } from '../../platform/database/audit.js';
import { Database } from '../../platform/database/database.js';
import { forgetMailFiles } from '../../platform/mail/mail-files.js';
import { fail } from '../../platform/problems/problem.js';
import { accountOf } from '../people/account-scope.js';
import { Recheck } from '../people/recheck.js';
import type { ErasureDto } from './erasure.dto.js';
import { ErasureRepository, type ErasedMember } from './erasure.repository.js';

const mustNotBeHindered = (erased: readonly ErasedMember[]): void => {
  const hindered = erased.filter(({ hindrance }) => hindrance !== null);
  if (hindered.length === 0) return;
  const isLeft = hindered.some(({ hindrance }) => hindrance === 'last-coordinator');
  fail(
    isLeft ? 'last-coordinator' : 'last-member',
    {},
    hindered.map(({ gardenId, hindrance }) => ({
      pointer: '',
      code: hindrance ?? '',
      detail: `In the garden ${gardenId}.`,
      remedy: hindrance === 'last-coordinator' ? 'Make another member coordinator there.' : 'Send "closeEmptyGardens": true, or invite somebody first.',
    })),
  );
};

/** Takes a person out of everything. What must be kept of money and safety stays without names. */
@Injectable()
export class ErasureService {
  constructor(
    private readonly database: Database,
    private readonly erasure: ErasureRepository,
    private readonly recheck: Recheck,
    @Inject(CONFIG) private readonly config: Config,
  ) {}

  async erase(actor: Actor, body: ErasureDto): Promise<void> {
    const { email } = await this.recheck.must(accountOf(actor), body.password, body.code ?? null);
    await this.database.inTransaction(actor, async (db) => {
      const erased = await this.erasure.erase(db, body.closeEmptyGardens ?? false);
      mustNotBeHindered(erased);
      for (const { gardenId, memberId } of erased) {
        await this.erasure.enter(db, gardenId);
        await audit(db, { ...actor, gardenId, memberId }, { action: 'member.erase', objectType: 'member', objectId: memberId });
      }
      await this.erasure.enter(db, NIL_ID);
    });
    await forgetMailFiles(this.config, email);
  }
}
