import { Inject, Injectable } from '@nestjs/common';
import type { Request } from 'express';
import type { Actor } from '../../platform/access/actor.js';
import { SESSION_COOKIE } from '../../platform/access/credential.js';
import { CONFIG, type Config } from '../../platform/config/config.js';
import type { Db } from '../../platform/database/database.js';
import { reply, type Reply } from '../../platform/http/reply.js';
import { accountOf } from './account-scope.js';
import { SessionsRepository, type OpenedSession } from './sessions.repository.js';

export type Bearer = 'cookie' | 'token';

const NOT_PRINTED = /[^\p{L}\p{N}\p{P}\p{S} ]/gu;

const labelOf = (request: Request): string => (request.get('user-agent') ?? '').replaceAll(NOT_PRINTED, '').slice(0, 200) || 'unnamed';

const cookie = (value: string, seconds: number): Record<string, string> => ({
  'Set-Cookie': `${SESSION_COOKIE}=${value}; Path=/; Max-Age=${seconds}; Secure; HttpOnly; SameSite=Lax`,
});

/** Takes the cookie out of the browser. */
export const NO_COOKIE = cookie('', 0);

/** Opens sessions. A new one has a new id and a new token, whatever the caller had before. */
@Injectable()
export class SessionOpener {
  constructor(
    private readonly sessions: SessionsRepository,
    @Inject(CONFIG) private readonly config: Config,
  ) {}

  open(db: Db, accountId: string, request: Request): Promise<OpenedSession> {
    return this.sessions.open(db, accountId, labelOf(request), new Date(Date.now() + this.config.sessionLifeMs));
  }

  /** After a change of what opens the account: the caller goes on under a new session, all others end. */
  async renew(db: Db, actor: Actor, request: Request): Promise<OpenedSession> {
    const accountId = accountOf(actor);
    await this.sessions.end(db, accountId, 'all');
    return this.open(db, accountId, request);
  }

  /** The token goes into a cookie, or into the body if the caller is a program; never into both. */
  answer(status: 200 | 201, session: OpenedSession, as: Bearer, more: object = {}): Reply {
    const { token, ...shown } = session;
    const body = { ...more, ...shown, token: as === 'token' ? token : null };
    return reply({ status, body, location: '/v1/sessions/current' }, as === 'cookie' ? cookie(token, Math.floor(this.config.sessionLifeMs / 1000)) : {});
  }

  /** The way the caller holds the present session is the way it gets the next. */
  bearerOf(request: Request): Bearer {
    return request.get('authorization') === undefined ? 'cookie' : 'token';
  }
}
