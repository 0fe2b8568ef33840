import { Injectable } from '@nestjs/common';
import type { Actor } from './actor.js';
import { Credentials } from './credentials.js';
import { isSessionToken } from './key.js';
import { grantOf, PIVOT, type OperationId, type PivotRow } from './pivot.js';
import { Sessions } from './sessions.js';

/** Asks again, during an answer that goes on for long, what the guard asked at its beginning. */
@Injectable()
export class StillAllowed {
  constructor(
    private readonly credentials: Credentials,
    private readonly sessions: Sessions,
  ) {}

  /** Who it is now and how far the operation reaches for them now; null once the key, session, membership or role is gone. */
  async actorNow(was: Actor, token: string, id: OperationId): Promise<Actor | null> {
    const rule: PivotRow = PIVOT[id];
    if (!isSessionToken(token)) {
      const key = await this.credentials.actorOf(token);
      return key && key.credentialId === was.credentialId && (key.scopes as readonly string[]).includes(rule.access) ? key : null;
    }
    const person = await this.sessions.personOf(token, was.gardenId);
    if (!person || person.memberId === null || person.memberId !== was.memberId) return null;
    const grant = grantOf(rule, person.roles);
    return grant === 'deny' ? null : { ...person, reach: grant };
  }
}
