import { createParser, type EventSourceMessage } from 'eventsource-parser';
import { ConnectionError, ProblemError } from './errors.js';
import type { RetryRules, Surroundings } from './send.js';

/** How far a job is. A job has the id of what it makes: the plan or the document. */
export interface JobEvent {
  jobId: string;
  state: 'queued' | 'running' | 'succeeded' | 'failed' | 'cancelled';
  /** Hundredths of the way; never falls. */
  progress: number;
  /** A word for what the job is at. */
  stage: string | null;
  attemptCount: number;
  at: string;
}

/** Opens the stream of a job after an event; null when there is nothing more to tell. */
export type OpenStream = (lastEventId: string | null) => Promise<ReadableStream<Uint8Array> | null>;

async function* messagesOf(
  stream: ReadableStream<Uint8Array>,
  silenceMs: number,
  signal: AbortSignal | null,
): AsyncGenerator<EventSourceMessage, void, undefined> {
  const heard: EventSourceMessage[] = [];
  const parser = createParser({ onEvent: (message) => heard.push(message) });
  const [reader, decoder] = [stream.getReader(), new TextDecoder()];
  const leave = (): void => void reader.cancel().catch(() => undefined);
  signal?.addEventListener('abort', leave, { once: true });
  try {
    for (;;) {
      const watch = setTimeout(leave, silenceMs);
      const { done, value } = await reader.read().finally(() => clearTimeout(watch));
      if (done) return;
      parser.feed(decoder.decode(value, { stream: true }));
      yield* heard.splice(0);
    }
  } finally {
    signal?.removeEventListener('abort', leave);
    leave();
  }
}

/**
 * The events of one job, to its end. A stream that breaks is taken up again after the last event that was heard, so
 * that none is missed and none comes twice.
 * @throws ProblemError when the server refuses; ConnectionError when it cannot be reached for several tries
 */
export async function* jobEventsOf(
  id: string,
  open: OpenStream,
  around: Surroundings,
  rules: RetryRules,
  signal: AbortSignal | null,
): AsyncGenerator<JobEvent, void, undefined> {
  let lastEventId: string | null = null;
  let cause: unknown = new Error('the stream ended before the job did');
  for (let tries = 1; ; tries++) {
    try {
      const stream = await open(lastEventId);
      if (stream === null) return;
      for await (const message of messagesOf(stream, rules.silenceMs, signal)) {
        lastEventId = message.id ?? lastEventId;
        tries = 0;
        yield JSON.parse(message.data) as JobEvent;
        if (message.event === 'end') return;
      }
    } catch (error) {
      if (error instanceof ProblemError || signal?.aborted) throw error;
      cause = error;
    }
    if (tries >= rules.attempts) throw new ConnectionError({ method: 'GET', path: `/v1/jobs/${id}/events` }, tries, cause);
    await around.sleep(rules.firstWaitMs * 2 ** tries * (0.5 + around.random() / 2), signal);
  }
}
