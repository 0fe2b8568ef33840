import { AsyncLocalStorage } from 'node:async_hooks';
import type { Actor } from '../access/actor.js';

/** What belongs to one request and is needed far down: its id for the log and the audit, its list for the cursors. */
export interface RequestContext {
  requestId: string;
  actor: Actor | null;
  /** Path without query. */
  path: string;
  /** Query as it was sent. */
  query: URLSearchParams;
  cursorSecret: string;
}

export const contexts = new AsyncLocalStorage<RequestContext>();

export const contextOrNull = (): RequestContext | null => contexts.getStore() ?? null;

export const context = (): RequestContext => {
  const found = contexts.getStore();
  if (!found) throw new Error('no request is being answered here');
  return found;
};
