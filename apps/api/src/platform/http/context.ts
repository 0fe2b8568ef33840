import { AsyncLocalStorage } from 'node:async_hooks';
import type { Actor } from '../access/actor.js';
import type { Trace } from './trace.js';

/** What belongs to one request and is needed far down: its id for the log and the audit, its list for the cursors. */
export interface RequestContext {
  requestId: string;
  trace: Trace;
  actor: Actor | null;
  /** Path without query. */
  path: string;
  /** Query as it was sent. */
  query: URLSearchParams;
  cursorSecret: string;
}

/** What a job keeps of the request that asked for it. */
export type Origin = Pick<RequestContext, 'requestId' | 'trace'>;

export const contexts = new AsyncLocalStorage<RequestContext>();
/** A job runs in the light of the request that asked for it, but it is no request. */
export const origins = new AsyncLocalStorage<Origin>();

export const contextOrNull = (): RequestContext | null => contexts.getStore() ?? null;

/** The request that is answered here, or the one that asked for the job that runs here. */
export const originOrNull = (): Origin | null => contexts.getStore() ?? origins.getStore() ?? null;

export const context = (): RequestContext => {
  const found = contexts.getStore();
  if (!found) throw new Error('no request is being answered here');
  return found;
};
