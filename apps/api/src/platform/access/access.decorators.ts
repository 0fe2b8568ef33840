import { applyDecorators, createParamDecorator, SetMetadata, type ExecutionContext } from '@nestjs/common';
import { ApiBearerAuth, ApiExtension } from '@nestjs/swagger';
import type { Request } from 'express';
import type { Actor } from './actor.js';
import type { Scope } from './scopes.js';

export const ACCESS_RULE = 'lathwork:access';
export type AccessRule = { kind: 'public' } | { kind: 'operator' } | { kind: 'scope'; scope: Scope };

const rule = (value: AccessRule) => SetMetadata(ACCESS_RULE, value);

/** The route needs a key with this scope. */
export const Requires = (scope: Scope): MethodDecorator & ClassDecorator =>
  applyDecorators(rule({ kind: 'scope', scope }), ApiBearerAuth('gardenKey'), ApiExtension('x-scope', scope));

/** The route takes the operator token and nothing else. */
export const OperatorOnly = (): MethodDecorator & ClassDecorator => applyDecorators(rule({ kind: 'operator' }), ApiBearerAuth('operatorToken'));

/** Anyone may ask: health, the documentation, the problem pages. */
export const Public = (): MethodDecorator & ClassDecorator => applyDecorators(rule({ kind: 'public' }), ApiExtension('x-public', true));

/** Who is asking, as the guard found it. */
export const CurrentActor = createParamDecorator((_none: unknown, context: ExecutionContext): Actor => {
  const { actor } = context.switchToHttp().getRequest<Request & { actor?: Actor }>();
  if (!actor) throw new Error('this route has no actor: it needs @Requires or @OperatorOnly');
  return actor;
});
