import { Inject, Injectable } from '@nestjs/common';
import type pg from 'pg';
import { CONFIG, type Config } from '../config/config.js';
import { isReadOnly, POOL } from '../database/pool.js';
import { NIL_ID, type Actor } from './actor.js';
import { isSessionToken, sha256 } from './key.js';
import { isRole } from './roles.js';

const LAST_SEEN_STEP_MS = 60_000;

interface SessionRow {
  session_id: string;
  account_id: string;
  last_seen_at: Date;
  expires_at: Date;
  ended: boolean;
  member_id: string | null;
  roles: string[] | null;
}

/** Finds the person behind a session, and what they are in the garden they speak of. One question to the database. */
@Injectable()
export class Sessions {
  constructor(
    @Inject(POOL) private readonly pool: pg.Pool,
    @Inject(CONFIG) private readonly config: Config,
  ) {}

  /** Null when the session is unknown, ended, idle too long or past its end. Without a garden: the person alone. */
  async personOf(token: string, gardenId?: string, now = new Date()): Promise<Actor | null> {
    if (!isSessionToken(token)) return null;
    const { rows } = await this.pool.query<SessionRow>({
      name: 'find-session',
      text: 'SELECT * FROM find_session($1, $2)',
      values: [sha256(token), gardenId ?? null],
    });
    const row = rows[0];
    if (!row || row.ended || row.expires_at <= now) return null;
    if (now.getTime() - row.last_seen_at.getTime() > this.config.sessionIdleMs) return null;
    if (now.getTime() - row.last_seen_at.getTime() > LAST_SEEN_STEP_MS)
      await this.pool.query({ name: 'touch-session', text: 'SELECT touch_session($1)', values: [sha256(token)] }).catch((error: unknown) => {
        if (!isReadOnly(error)) throw error;
      });
    return {
      gardenId: row.member_id === null ? NIL_ID : (gardenId ?? NIL_ID),
      kind: 'person',
      credentialId: row.session_id,
      principalId: row.member_id ?? row.account_id,
      keyId: null,
      accountId: row.account_id,
      memberId: row.member_id,
      roles: (row.roles ?? []).filter(isRole),
      scopes: [],
      reach: 'all',
    };
  }
}
