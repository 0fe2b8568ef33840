import { Injectable } from '@nestjs/common';
import type { Db } from '../database/database.js';
import { newId } from '../database/ids.js';
import { Sealer } from '../sealing/sealer.js';
import { letter, type LetterKind, type LetterParams } from './words.js';

export const MAIL_SEAL = 'mail';

export interface Mail {
  to: string;
  locale: string;
  kind: LetterKind;
  params: Partial<LetterParams>;
}

/** Where mail is put in the transaction that causes it: it goes out if and only if that is committed. */
@Injectable()
export class Outbox {
  constructor(private readonly sealer: Sealer) {}

  async put(db: Db, { to, locale, kind, params }: Mail): Promise<void> {
    const id = newId();
    const { subject, body } = letter(kind, locale, params);
    const sealed = this.sealer.seal(MAIL_SEAL, id, body).toString('base64url');
    // The application may add to this table and not read it, so nothing may come back.
    await db.$executeRaw`INSERT INTO mail_outbox (id, recipient, subject, body) VALUES (${id}::uuid, ${to}, ${subject}, ${sealed})`;
  }
}
