import { Inject, Injectable, type CanActivate, type ExecutionContext } from '@nestjs/common';
import { Reflector } from '@nestjs/core';
import type { Request } from 'express';
import { CONFIG, type Config } from '../config/config.js';
import { contextOrNull } from '../http/context.js';
import { fail, Problem } from '../problems/problem.js';
import { OPERATOR, type Actor } from './actor.js';
import { ACCESS_RULE, type AccessRule } from './access.decorators.js';
import { Credentials } from './credentials.js';
import { sameSecret } from './key.js';

const BEARER = /^Bearer +([\x21-\x7e]{1,200})$/i;

const refuseUnknown = (): never => {
  throw new Problem('unauthenticated', {}, [], { 'WWW-Authenticate': 'Bearer realm="lathwork"' });
};

/** Stands before every route. A route that says nothing about access is closed. */
@Injectable()
export class AccessGuard implements CanActivate {
  constructor(
    private readonly reflector: Reflector,
    private readonly credentials: Credentials,
    @Inject(CONFIG) private readonly config: Config,
  ) {}

  async canActivate(context: ExecutionContext): Promise<boolean> {
    const rule = this.reflector.getAllAndOverride<AccessRule | undefined>(ACCESS_RULE, [context.getHandler(), context.getClass()]);
    if (rule?.kind === 'public') return true;
    const request = context.switchToHttp().getRequest<Request & { actor?: Actor }>();
    const token = BEARER.exec(request.get('authorization') ?? '')?.[1];
    if (!rule || token === undefined) return refuseUnknown();
    const isOperator = this.config.operatorToken !== null && sameSecret(token, this.config.operatorToken);
    const actor = isOperator ? OPERATOR : await this.credentials.actorOf(token);
    if (!actor) return refuseUnknown();
    if (rule.kind === 'operator' && !isOperator) fail('operator-only');
    if (rule.kind === 'scope' && !actor.scopes.includes(rule.scope)) fail('scope-missing', { scope: rule.scope });
    request.actor = actor;
    const store = contextOrNull();
    if (store) store.actor = actor;
    return true;
  }
}
