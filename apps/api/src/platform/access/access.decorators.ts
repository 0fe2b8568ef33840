import { applyDecorators, createParamDecorator, SetMetadata, type ExecutionContext } from '@nestjs/common';
import { ApiBearerAuth, ApiCookieAuth, ApiExtension } from '@nestjs/swagger';
import type { Request } from 'express';
import type { Actor } from './actor.js';
import { PIVOT, type Access, type PivotRow } from './pivot.js';
import type { OperationId } from './pivot.js';

export const ACCESS_RULE = 'lathwork:access';

// Made anew for each route: the framework's decorators remember what they were put on before.
const signedIn = (): MethodDecorator[] => [ApiCookieAuth('session'), ApiBearerAuth('sessionToken')];

const SECURITY: Readonly<Record<'public' | 'operator' | 'account' | 'founder', () => MethodDecorator[]>> = {
  public: () => [ApiExtension('x-public', true)],
  operator: () => [ApiBearerAuth('operatorToken')],
  account: signedIn,
  founder: () => [ApiBearerAuth('operatorToken'), ...signedIn()],
};

const isOutside = (access: Access): access is keyof typeof SECURITY => Object.hasOwn(SECURITY, access);

/** What the document says of a rule: which credentials fit, the scope of a key, and the roles that reach it. */
const documented = ({ access, roles }: PivotRow): MethodDecorator[] => {
  if (isOutside(access)) return SECURITY[access]();
  const reaches = Object.fromEntries(Object.entries(roles).filter(([, grant]) => grant !== 'deny'));
  if (access === 'person') return [...signedIn(), ApiExtension('x-roles', reaches)];
  return [ApiBearerAuth('gardenKey'), ...signedIn(), ApiExtension('x-scope', access), ApiExtension('x-roles', reaches)];
};

/** The route stands under a rule that is not in the table: probes of the platform's own tests. */
export const RequiresRule = (rule: PivotRow): MethodDecorator & ClassDecorator => applyDecorators(SetMetadata(ACCESS_RULE, rule), ...documented(rule));

/** The route is this operation of the table of roles; the table says who may call it. */
export const Requires = (id: OperationId): MethodDecorator & ClassDecorator => RequiresRule(PIVOT[id]);

/** Who is asking, as the guard found it. */
export const CurrentActor = createParamDecorator((_none: unknown, context: ExecutionContext): Actor => {
  const { actor } = context.switchToHttp().getRequest<Request & { actor?: Actor }>();
  if (!actor) throw new Error('this route is public: it has no actor');
  return actor;
});
