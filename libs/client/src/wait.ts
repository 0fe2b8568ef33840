import { NotReadyError } from './errors.js';
import type { Surroundings } from './send.js';

export interface WaitOptions<T> {
  /** How long to wait at most; two minutes when left out. */
  limitMs?: number;
  signal?: AbortSignal;
  /** Called with each state that is seen, the last one too. */
  onState?: (state: T) => void;
}

const LIMIT_MS = 120_000;
const FIRST_PAUSE_MS = 100;
const LONGEST_PAUSE_MS = 2000;

interface Waited<T> {
  what: string;
  id: string;
  read: () => Promise<T>;
  isDone: (state: T) => boolean;
  /** What an earlier answer already told, so that nothing is asked when it is done. */
  known?: T | undefined;
}

/**
 * Asks again and again, ever more slowly, until it is done.
 * @throws NotReadyError after `limitMs`; the signal's reason when the caller gave up.
 */
export const waitUntil = async <T>(around: Surroundings, about: Waited<T>, options: WaitOptions<T>): Promise<T> => {
  const started = around.elapsedMs();
  const limitMs = options.limitMs ?? LIMIT_MS;
  let state = about.known ?? (await about.read());
  for (let pauseMs = FIRST_PAUSE_MS; ; pauseMs = Math.min(pauseMs * 1.5, LONGEST_PAUSE_MS)) {
    options.onState?.(state);
    if (about.isDone(state)) return state;
    const leftMs = limitMs - (around.elapsedMs() - started);
    if (leftMs <= 0) throw new NotReadyError(about.what, about.id, limitMs);
    await around.sleep(Math.min(pauseMs * (0.75 + around.random() / 2), leftMs), options.signal ?? null);
    state = await about.read();
  }
};
