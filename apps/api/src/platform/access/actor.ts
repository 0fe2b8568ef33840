import type { Role } from './roles.js';
import type { Scope } from './scopes.js';

/** Who is asking, in which garden, and how far the operation reaches for them. */
export interface Actor {
  /** All zeros where no garden is concerned: the operator, or a person's own account. */
  gardenId: string;
  kind: 'key' | 'person' | 'operator';
  /** The key or the session that was shown; what is kept for repeats belongs to it. */
  credentialId: string;
  /** Who is taken to have done it: the member, or for a key the member who made it, or else the key itself. */
  principalId: string;
  keyId: string | null;
  accountId: string | null;
  memberId: string | null;
  roles: readonly Role[];
  scopes: readonly Scope[];
  /** `own`: rows of other members do not exist in this operation unless they are shared. */
  reach: 'all' | 'own';
}

export const NIL_ID = '00000000-0000-0000-0000-000000000000';

/** The operator belongs to no garden: no row of any garden is visible to it. */
export const OPERATOR: Actor = {
  gardenId: NIL_ID,
  kind: 'operator',
  credentialId: NIL_ID,
  principalId: NIL_ID,
  keyId: null,
  accountId: null,
  memberId: null,
  roles: [],
  scopes: [],
  reach: 'all',
};
