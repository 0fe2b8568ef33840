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

  /** What people call a key, for the title block of a plan. */
  async keyName(db: Db, keyId: string): Promise<string | null> {
    return (await this.gardens.findKey(db, keyId))?.name ?? null;
  }
}
