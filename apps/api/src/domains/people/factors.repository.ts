import { Injectable } from '@nestjs/common';
import type { Db } from '../../platform/database/database.js';
import { recoveryHash } from '../../platform/one-time-codes/recovery.js';
import { totpStep } from '../../platform/one-time-codes/totp.js';
import { Sealer } from '../../platform/sealing/sealer.js';

const SEAL = 'second factor';

export interface FactorRecord {
  secret: string;
  set: boolean;
  begunAt: Date;
  lastStep: number | null;
  recoveryCodesLeft: number;
}

const bytes = (hashes: readonly Buffer[]): Uint8Array<ArrayBuffer>[] => hashes.map((hash) => new Uint8Array(hash));

/** Second factors. The secret is sealed for its account; a code, of the clock or of the list, is taken once. */
@Injectable()
export class FactorsRepository {
  constructor(private readonly sealer: Sealer) {}

  async get(db: Db, accountId: string): Promise<FactorRecord | null> {
    const row = await db.accountFactor.findFirst({ where: { accountId } });
    return (
      row && {
        secret: this.sealer.open(SEAL, accountId, row.secretSealed),
        set: row.confirmedAt !== null,
        begunAt: row.createdAt,
        lastStep: row.lastStepCount === null ? null : Number(row.lastStepCount),
        recoveryCodesLeft: row.recoverySha256.length,
      }
    );
  }

  /** Begins anew, as long as none is set. */
  async begin(db: Db, accountId: string, secret: string): Promise<void> {
    await db.accountFactor.deleteMany({ where: { accountId, confirmedAt: null } });
    await db.accountFactor.createMany({ data: [{ accountId, secretSealed: new Uint8Array(this.sealer.seal(SEAL, accountId, secret)) }], skipDuplicates: true });
  }

  async confirm(db: Db, accountId: string, step: number, recovery: readonly Buffer[]): Promise<boolean> {
    const { count } = await db.accountFactor.updateMany({
      where: { accountId, confirmedAt: null },
      data: { confirmedAt: new Date(), lastStepCount: step, recoverySha256: bytes(recovery) },
    });
    return count === 1;
  }

  async setRecovery(db: Db, accountId: string, recovery: readonly Buffer[]): Promise<void> {
    await db.accountFactor.updateMany({ where: { accountId }, data: { recoverySha256: bytes(recovery) } });
  }

  async remove(db: Db, accountId: string): Promise<void> {
    await db.accountFactor.deleteMany({ where: { accountId } });
  }

  /** Takes a code of a factor that is set. Two requests with one code: one gets it. */
  async takeCode(db: Db, accountId: string, code: string, now = new Date()): Promise<'code' | 'recovery' | null> {
    const factor = await this.get(db, accountId);
    if (!factor?.set) return null;
    const step = totpStep(factor.secret, code, factor.lastStep, now);
    if (step !== null) return (await this.takeStep(db, accountId, step)) ? 'code' : null;
    const hash = recoveryHash(code);
    return hash !== null && (await this.takeRecovery(db, accountId, hash)) ? 'recovery' : null;
  }

  private async takeStep(db: Db, accountId: string, step: number): Promise<boolean> {
    const { count } = await db.accountFactor.updateMany({
      where: { accountId, OR: [{ lastStepCount: null }, { lastStepCount: { lt: step } }] },
      data: { lastStepCount: step },
    });
    return count === 1;
  }

  private async takeRecovery(db: Db, accountId: string, hash: Buffer): Promise<boolean> {
    const digest = new Uint8Array(hash);
    const count = await db.$executeRaw`UPDATE account_factors SET recovery_sha256 = array_remove(recovery_sha256, ${digest}::bytea)
      WHERE account_id = ${accountId}::uuid AND ${digest}::bytea = ANY (recovery_sha256)`;
    return count === 1;
  }
}
