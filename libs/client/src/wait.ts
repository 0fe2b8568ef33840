import { ConnectionError, NotReadyError, ProblemError } from './errors.js';
import type { JobEvent } from './events.js';
import type { Surroundings } from './send.js';

export interface WaitOptions<T> {
  /** How long to wait at most; two minutes when left out. */
  limitMs?: number;
  signal?: AbortSignal;
  /** Called with each state that is read, the last one too. */
  onState?: (state: T) => void;
  /** Called as the job tells how far it is. */
  onProgress?: (event: JobEvent) => void;
  /** False: only ask again and again, for networks that hold streams back. */
  stream?: boolean;
}

const LIMIT_MS = 120_000;
const FIRST_PAUSE_MS = 100;
const LONGEST_PAUSE_MS = 2000;

interface Waited<T> {
  what: string;
  id: string;
  read: (signal: AbortSignal) => Promise<T>;
  /** The events of the job, to its end. */
  events: (signal: AbortSignal) => AsyncIterable<JobEvent>;
  isDone: (state: T) => boolean;
  /** What an earlier answer already told, so that nothing is asked when it is done. */
  known?: T | undefined;
}

/** Whether the stream brought us to the end of the job. Where it cannot, asking does. */
const heardTheEnd = async <T>(about: Waited<T>, signal: AbortSignal, onProgress: WaitOptions<T>['onProgress']): Promise<boolean> => {
  const events = about.events(signal)[Symbol.asyncIterator]();
  for (;;) {
    const next = await events.next().catch((error: unknown) => {
      if (error instanceof ProblemError || error instanceof ConnectionError) return null;
      throw error;
    });
    if (next === null) return false;
    if (next.done) return true;
    onProgress?.(next.value);
  }
};

/**
 * Waits until it is done: follows the events of its job, and where those cannot be had asks again and again, ever more
 * slowly.
 * @throws NotReadyError after `limitMs`; the signal's reason when the caller gave up.
 */
export const waitUntil = async <T>(around: Surroundings, about: Waited<T>, options: WaitOptions<T>): Promise<T> => {
  const started = around.elapsedMs();
  const limitMs = options.limitMs ?? LIMIT_MS;
  const late = new NotReadyError(about.what, about.id, limitMs);
  const limit = new AbortController();
  const timer = setTimeout(() => limit.abort(late), limitMs);
  const signal = options.signal ? AbortSignal.any([options.signal, limit.signal]) : limit.signal;
  try {
    let state = about.known ?? (await about.read(signal));
    let streams = options.stream ?? true;
    for (let pauseMs = FIRST_PAUSE_MS; ; pauseMs = Math.min(pauseMs * 1.5, LONGEST_PAUSE_MS)) {
      options.onState?.(state);
      if (about.isDone(state)) return state;
      // One stream: should the record not be done at its end, asking goes on.
      const heard = streams && (await heardTheEnd(about, signal, options.onProgress));
      streams = false;
      if (!heard) {
        const leftMs = limitMs - (around.elapsedMs() - started);
        if (leftMs <= 0) throw late;
        await around.sleep(Math.min(pauseMs * (0.75 + around.random() / 2), leftMs), signal);
      }
      state = await about.read(signal);
    }
  } finally {
    clearTimeout(timer);
  }
};
