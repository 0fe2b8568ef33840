import type { Actor } from './actor.js';
import { PIVOT } from './pivot.js';
import type { Role } from './roles.js';
import { SCOPES, type Scope } from './scopes.js';

/** Scopes that show more of what others open, and whose they are to give. */
const BESIDE: Partial<Record<Scope, readonly Role[]>> = { 'sites:exact': ['coordinator', 'member'] };

/** The scopes that open something for somebody with these roles: at least one operation of the table of roles. */
export const scopesOf = (roles: readonly Role[]): readonly Scope[] =>
  SCOPES.filter(
    (scope) =>
      BESIDE[scope]?.some((role) => roles.includes(role)) ||
      Object.values(PIVOT).some((row) => row.access === scope && roles.some((role) => row.roles[role] !== 'deny')),
  );

/** The scopes that an actor may give to a new key: a person those of the roles, a key no more than its own. */
export const givableScopes = (actor: Actor): readonly Scope[] => (actor.kind === 'key' ? actor.scopes : scopesOf(actor.roles));

/** The member who answers for what a new key does: the person, or whoever made the key that makes it. */
export const makerOf = (actor: Actor): string | null =>
  actor.kind === 'person' ? actor.memberId : actor.kind === 'key' && actor.principalId !== actor.keyId ? actor.principalId : null;
