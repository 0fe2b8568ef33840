import { setTimeout as sleep } from 'node:timers/promises';
import { NIL_ID, type Actor } from '../../platform/access/actor.js';
import type { Tenant } from '../../platform/database/database.js';
import { fail } from '../../platform/problems/problem.js';

/** In no garden and in no account: only the narrow finders answer. */
export const NOBODY: Tenant = { gardenId: NIL_ID };

/** In one account and in no garden. */
export const ofAccount = (accountId: string): Tenant => ({ gardenId: NIL_ID, accountId });

/** The account of a signed-in person; the guard lets nobody else come here. */
export const accountOf = (actor: Actor): string => actor.accountId ?? fail('person-only');

/** Answers no sooner than this, so that whether there was something to do cannot be read from the time. */
export const atLeast = async <T>(ms: number, work: Promise<T>): Promise<T> => {
  const [result] = await Promise.allSettled([work, sleep(ms)]);
  if (result.status === 'rejected') throw result.reason;
  return result.value;
};
