import { Inject, Injectable, type CanActivate, type ExecutionContext } from '@nestjs/common';
import { Reflector } from '@nestjs/core';
import type { Request } from 'express';
import { CONFIG, type Config } from '../config/config.js';
import { isId } from '../database/ids.js';
import { contextOrNull } from '../http/context.js';
import { fail, Problem } from '../problems/problem.js';
import { OPERATOR, type Actor } from './actor.js';
import { ACCESS_RULE } from './access.decorators.js';
import { credentialOf, type Credential } from './credential.js';
import { Credentials } from './credentials.js';
import { mustBeSameSite } from './cross-site.js';
import { isSessionToken, sameSecret } from './key.js';
import { makerOf } from './key-scopes.js';
import { grantOf, type PivotRow } from './pivot.js';
import { Sessions } from './sessions.js';

export type Asked = Request & { actor?: Actor; credential?: string };

const GARDEN_HEADER = 'lathwork-garden';

const refuseUnknown = (): never => {
  throw new Problem('unauthenticated', {}, [], { 'WWW-Authenticate': 'Bearer realm="lathwork"' });
};

/** Stands before every route. A route that says nothing about access is closed. */
@Injectable()
export class AccessGuard implements CanActivate {
  constructor(
    private readonly reflector: Reflector,
    private readonly credentials: Credentials,
    private readonly sessions: Sessions,
    @Inject(CONFIG) private readonly config: Config,
  ) {}

  async canActivate(context: ExecutionContext): Promise<boolean> {
    const rule = this.reflector.getAllAndOverride<PivotRow | undefined>(ACCESS_RULE, [context.getHandler(), context.getClass()]);
    if (rule?.access === 'public') return true;
    const request = context.switchToHttp().getRequest<Asked>();
    const credential = credentialOf(request);
    if (!rule || !credential) return refuseUnknown();
    if (credential.from === 'cookie') mustBeSameSite(request, this.config.publicOrigin);
    const actor = await this.actorOf(rule, credential, request);
    request.actor = actor;
    request.credential = credential.token;
    const store = contextOrNull();
    if (store) store.actor = actor;
    return true;
  }

  private async actorOf(rule: PivotRow, credential: Credential, request: Request): Promise<Actor> {
    if (credential.from === 'header' && this.config.operatorToken !== null && sameSecret(credential.token, this.config.operatorToken)) {
      if (rule.access !== 'operator' && rule.access !== 'founder') fail(rule.access === 'account' ? 'person-only' : 'garden-only');
      return OPERATOR;
    }
    if (isSessionToken(credential.token)) return this.personFor(rule, credential.token, request);
    return credential.from === 'header' ? this.keyFor(rule, credential.token) : refuseUnknown();
  }

  private async keyFor(rule: PivotRow, token: string): Promise<Actor> {
    const actor = (await this.credentials.actorOf(token)) ?? refuseUnknown();
    const { access } = rule;
    if (access === 'operator' || access === 'founder') return fail('operator-only');
    if (access === 'account' || access === 'person') return fail('person-only');
    if (access !== 'public' && !actor.scopes.includes(access)) fail('scope-missing', { scope: access });
    const maker = makerOf(actor);
    if (maker === null) return actor;
    // A key opens no more than the roles that its maker has now. Where that is only own rows, they are the maker's.
    const grant = grantOf(rule, actor.roles);
    if (grant === 'deny') return fail('role-missing', { roles: rolesOf(rule) });
    return grant === 'own' ? { ...actor, reach: grant, memberId: maker } : actor;
  }

  private async personFor(rule: PivotRow, token: string, request: Request): Promise<Actor> {
    const { access } = rule;
    if (access === 'operator') return fail('operator-only');
    if (access === 'account' || access === 'founder') return (await this.sessions.personOf(token)) ?? refuseUnknown();
    const garden = request.get(GARDEN_HEADER);
    // Who is nobody here gets no further hint than that.
    const person = (await this.sessions.personOf(token, isId(garden) ? garden : undefined)) ?? refuseUnknown();
    if (!isId(garden)) return fail('garden-required');
    if (person.memberId === null) return fail('not-a-member');
    const grant = grantOf(rule, person.roles);
    if (grant === 'deny') return fail('role-missing', { roles: rolesOf(rule) });
    return { ...person, reach: grant };
  }
}

const rolesOf = (rule: PivotRow): string =>
  Object.entries(rule.roles)
    .flatMap(([role, grant]) => (grant === 'deny' ? [] : [role]))
    .join(', ') || 'none';
