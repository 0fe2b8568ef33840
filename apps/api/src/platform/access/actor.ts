import type { Scope } from './scopes.js';

/** Who is asking: one key of one garden. */
export interface Actor {
  gardenId: string;
  keyId: string;
  scopes: readonly Scope[];
}

export const NIL_ID = '00000000-0000-0000-0000-000000000000';

/** The operator belongs to no garden: no row of any garden is visible to it. */
export const OPERATOR: Actor = { gardenId: NIL_ID, keyId: NIL_ID, scopes: [] };
