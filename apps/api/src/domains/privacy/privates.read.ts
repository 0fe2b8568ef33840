import { Injectable } from '@nestjs/common';
import type { Db } from '../../platform/database/database.js';
import { ConsentsRepository, type ConsentRecord } from './consents.repository.js';
import { PrivatesRepository, type PrivateRecord } from './privates.repository.js';

const MOST = 1000;

/** What a person's own export may ask: everything of that person. */
@Injectable()
export class PrivatesRead {
  constructor(
    private readonly privates: PrivatesRepository,
    private readonly consents: ConsentsRepository,
  ) {}

  details(db: Db, gardenId: string, memberId: string): Promise<PrivateRecord> {
    return this.privates.get(db, gardenId, memberId);
  }

  history(db: Db, memberId: string): Promise<ConsentRecord[]> {
    return this.consents.history(db, memberId, { after: null, take: MOST });
  }
}
