import { Injectable } from '@nestjs/common';
import type { Db } from '../../platform/database/database.js';
import { must } from '../shared/change.js';
import { GardensRepository } from './gardens.repository.js';

/** What other domains may ask about the garden they are in. */
@Injectable()
export class GardensRead {
  constructor(private readonly gardens: GardensRepository) {}

  async current(db: Db): Promise<{ name: string; invented: boolean }> {
    const { name, invented } = must(await this.gardens.only(db), 'garden');
    return { name, invented };
  }

  async isMember(db: Db, principalId: string): Promise<boolean> {
    return (await this.gardens.memberName(db, principalId)) !== null;
  }

  /** What people call whoever did something, a member or a key, for the title block of a plan. */
  async nameOf(db: Db, principalId: string): Promise<string | null> {
    return (await this.gardens.memberName(db, principalId)) ?? (await this.gardens.findKey(db, principalId))?.name ?? null;
  }
}
