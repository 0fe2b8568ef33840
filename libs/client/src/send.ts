import { ConnectionError } from './errors.js';
import { retryAfterMs } from './retry-after.js';

export interface RetryRules {
  /** Attempts in all; 1 means never again. */
  attempts: number;
  /** First wait where the server names none; it doubles each time. */
  firstWaitMs: number;
  /** Longest wait. A server that asks for a longer one gets it from the caller: the problem is thrown at once. */
  longestWaitMs: number;
  /** Time for one attempt, from sending to the last byte of the answer. */
  attemptMs: number;
  /** A stream of events that says nothing for so long, not even a comment, is dead. The server comments every few seconds. */
  silenceMs: number;
}

export const RETRY_RULES: RetryRules = { attempts: 4, firstWaitMs: 250, longestWaitMs: 30_000, attemptMs: 90_000, silenceMs: 45_000 };

/** What the client needs from its surroundings; tests put their own in place. */
export interface Surroundings {
  fetch: (request: Request) => Promise<Response>;
  /** Resolves after so many milliseconds; rejects with the signal's reason when it is aborted meanwhile. */
  sleep: (ms: number, signal: AbortSignal | null) => Promise<void>;
  /** From 0 up to but not including 1. */
  random: () => number;
  /** A fresh key for a creating request. */
  newKey: () => string;
  /** Milliseconds of a clock that only goes forward. */
  elapsedMs: () => number;
}

export const SURROUNDINGS: Surroundings = {
  fetch: (request) => globalThis.fetch(request),
  sleep: (ms, signal) =>
    new Promise((resolve, reject) => {
      signal?.throwIfAborted();
      const stop = (): void => {
        clearTimeout(timer);
        reject(signal?.reason);
      };
      const timer = setTimeout(() => {
        signal?.removeEventListener('abort', stop);
        resolve();
      }, ms);
      signal?.addEventListener('abort', stop, { once: true });
    }),
  random: () => (crypto.getRandomValues(new Uint32Array(1))[0] ?? 0) / 2 ** 32,
  newKey: () => crypto.randomUUID(),
  elapsedMs: () => performance.now(),
};

type Outcome = { response: Response } | { error: unknown };

const SAFE_TO_REPEAT = new Set(['GET', 'HEAD', 'OPTIONS', 'PUT', 'DELETE']);

/** Whether doing it twice leaves the same as doing it once (RFC 9110, 9.2.2, or an Idempotency-Key). */
const isRepeatable = (request: Request): boolean => SAFE_TO_REPEAT.has(request.method) || request.headers.has('idempotency-key');

const isStream = (request: Request): boolean => (request.headers.get('accept') ?? '').includes('text/event-stream');

const tryOnce = async (around: Surroundings, rules: RetryRules, request: Request): Promise<Outcome> => {
  try {
    const attempt = request.clone();
    // A stream of events is meant to stay open.
    if (isStream(request)) return { response: await around.fetch(attempt) };
    const signal = AbortSignal.any([request.signal, AbortSignal.timeout(rules.attemptMs)]);
    return { response: await around.fetch(new Request(attempt, { signal })) };
  } catch (error) {
    return { error };
  }
};

/** The first attempt with this key may still be at work when its connection broke. */
const isRunning = async (response: Response): Promise<boolean> =>
  response.status === 409 && (await response.clone().text()).includes('/problems/idempotency-running"');

/** How long to wait before the next attempt; null when there is to be none. */
const waitBefore = async (outcome: Outcome, request: Request, attempt: number, around: Surroundings, rules: RetryRules): Promise<number | null> => {
  const backOff = Math.min(rules.longestWaitMs, rules.firstWaitMs * 2 ** (attempt - 1)) * (0.5 + around.random() / 2);
  if ('error' in outcome) return isRepeatable(request) ? backOff : null;
  const { status, headers } = outcome.response;
  if (status === 429 || (status === 503 && isRepeatable(request))) {
    const afterMs = retryAfterMs(headers);
    // A little later than told, each client by its own share, so that a crowd does not come back as one.
    return afterMs === null || afterMs > rules.longestWaitMs ? null : afterMs + around.random() * rules.firstWaitMs;
  }
  if (status === 502 || status === 504) return isRepeatable(request) ? backOff : null;
  return request.headers.has('idempotency-key') && (await isRunning(outcome.response)) ? backOff : null;
};

/**
 * Sends a request, and again where that can do no harm:
 * - 429 with Retry-After: any request, for it was not carried out;
 * - 503 with Retry-After, 502, 504, no answer at all: only what may be repeated (GET, PUT, DELETE, and a creating
 *   request by its Idempotency-Key);
 * - 409 "idempotency-running": the earlier attempt with the same key is still at work.
 * @throws ConnectionError when the last attempt brought no answer; the signal's reason when the caller gave up.
 */
export const sendWith =
  (around: Surroundings, rules: RetryRules) =>
  async (request: Request): Promise<Response> => {
    for (let attempt = 1; ; attempt++) {
      const outcome = await tryOnce(around, rules, request);
      if (request.signal.aborted) throw request.signal.reason;
      const waitMs = attempt < rules.attempts ? await waitBefore(outcome, request, attempt, around, rules) : null;
      if (waitMs === null) {
        if ('response' in outcome) return outcome.response;
        throw new ConnectionError({ method: request.method, path: new URL(request.url).pathname }, attempt, outcome.error);
      }
      if ('response' in outcome) await outcome.response.body?.cancel();
      await around.sleep(waitMs, request.signal);
    }
  };
