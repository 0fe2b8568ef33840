import { Injectable } from '@nestjs/common';
import type { Db } from '../../platform/database/database.js';

/** What was erased of a person in one garden, or what stands in the way there. */
export interface ErasedMember {
  gardenId: string;
  memberId: string;
  hindrance: 'last-coordinator' | 'last-member' | null;
}

interface Row {
  garden_id: string;
  member_id: string;
  hindrance: ErasedMember['hindrance'];
}

@Injectable()
export class ErasureRepository {
  /** Erases the person whom the transaction has named, in all tables; or, where something stands in the way, changes nothing. */
  async erase(db: Db, closeEmptyGardens: boolean): Promise<ErasedMember[]> {
    const rows = await db.$queryRaw<Row[]>`SELECT garden_id, member_id, hindrance FROM erase_account(${closeEmptyGardens})`;
    return rows.map((row) => ({ gardenId: row.garden_id, memberId: row.member_id, hindrance: row.hindrance }));
  }

  /** What follows in this transaction happens in that garden. */
  async enter(db: Db, gardenId: string): Promise<void> {
    await db.$executeRaw`SELECT set_config('app.garden_id', ${gardenId}, true)`;
  }
}
