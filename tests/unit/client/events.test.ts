import { describe, expect, test } from '@jest/globals';
import { ConnectionError, NotReadyError, type JobEvent } from '@lathwork/client';
import { fakeApi, json, problem, type Fake } from './fake-api.js';

const ID = '0190a000-0000-7000-8000-000000000001';
const state = (name: string) => json(200, { id: ID, state: name, problem: null });
const event = (number: number, name: 'progress' | 'end', progress: number, jobState = name === 'end' ? 'succeeded' : 'running'): string =>
  `id: ${number}\nevent: ${name}\ndata: ${JSON.stringify({ jobId: ID, state: jobState, progress, stage: null, attemptCount: 1, at: '2026-01-01T00:00:00Z' })}\n\n`;

/** A stream of these chunks; it stays open, closes or breaks after the last. */
const stream = (chunks: string[], then: 'close' | 'break' | 'stay' = 'close'): Response => {
  const body = new ReadableStream<Uint8Array>({
    pull(to) {
      const next = chunks.shift();
      if (next !== undefined) to.enqueue(new TextEncoder().encode(next));
      else if (then === 'close') to.close();
      else if (then === 'break') to.error(new TypeError('terminated'));
    },
  });
  return new Response(body, { status: 200, headers: { 'content-type': 'text/event-stream' } });
};

const all = async ({ api }: Fake): Promise<number[]> => {
  const heard: number[] = [];
  for await (const { progress } of api.jobEvents(ID)) heard.push(progress);
  return heard;
};

describe('the events of a job', () => {
  test('all of them in order, however the bytes are cut, comments left out, to the end and no further', async () => {
    const text = `: hello\n\n${event(1, 'progress', 10)}${event(2, 'progress', 50)}: still here\n\n${event(3, 'end', 100)}`;
    for (const size of [1, 7, 64, text.length]) {
      const chunks = text.match(new RegExp(`[^]{1,${size}}`, 'g')) ?? [];
      const fake = fakeApi([stream([...chunks], 'stay')]);
      expect(await all(fake)).toEqual([10, 50, 100]);
      expect(fake.sent).toHaveLength(1);
    }
  });

  test('a stream that breaks or closes too early is taken up again after the last event that was heard', async () => {
    const fake = fakeApi([
      stream([event(1, 'progress', 10), event(2, 'progress', 20)], 'break'),
      new TypeError('fetch failed'),
      stream([event(3, 'progress', 30)]),
      stream([event(4, 'end', 100)]),
    ]);
    expect(await all(fake)).toEqual([10, 20, 30, 100]);
    expect(fake.sent.map((one) => one.headers.get('last-event-id'))).toEqual([null, '2', '2', '3']);
    expect(new Set(fake.sent.map((one) => `${one.path} ${one.headers.get('accept')}`))).toEqual(new Set([`/v1/jobs/${ID}/events text/event-stream`]));
  });

  test('204 says that the end was seen', async () => {
    const fake = fakeApi([stream([event(1, 'progress', 10)], 'break'), new Response(null, { status: 204 })]);
    expect(await all(fake)).toEqual([10]);
  });

  test('a refusal is told at once; a server that cannot be reached after some tries', async () => {
    const refused = fakeApi([stream([event(1, 'progress', 10)], 'break'), problem(401, 'unauthenticated')]);
    await expect(all(refused)).rejects.toMatchObject({ status: 401 });
    const gone = fakeApi(Array.from({ length: 4 }, () => new TypeError('fetch failed')));
    await expect(all(gone)).rejects.toBeInstanceOf(ConnectionError);
    expect(gone.slept).toEqual([375, 750, 1500]);
  });

  test('a stream that has gone silent is dead, and taken up again', async () => {
    const turns = [stream([event(1, 'progress', 10)], 'stay'), stream([event(2, 'end', 100)])];
    const fake = fakeApi(turns, { retry: { silenceMs: 20 } });
    expect(await all(fake)).toEqual([10, 100]);
    expect(fake.sent.map((one) => one.headers.get('last-event-id'))).toEqual([null, '1']);
  });

  test('whoever stops listening closes the connection', async () => {
    let cancelled = false;
    const body = new ReadableStream<Uint8Array>({
      start: (to) => to.enqueue(new TextEncoder().encode(event(1, 'progress', 10))),
      cancel: () => {
        cancelled = true;
      },
    });
    const { api } = fakeApi([new Response(body, { status: 200 })]);
    for await (const one of api.jobEvents(ID)) {
      expect(one.progress).toBe(10);
      break;
    }
    expect(cancelled).toBe(true);
  });
});

describe('waiting by events', () => {
  const follow = async (fake: Fake) => {
    const told: JobEvent[] = [];
    const plan = await fake.api.waitForPlan(ID, { onProgress: (one) => told.push(one) });
    return { plan, progress: told.map((one) => one.progress) };
  };

  test('the plan is read once at the start and once at the end, and nobody sleeps', async () => {
    const fake = fakeApi([state('computing'), stream([event(1, 'progress', 40), event(2, 'end', 100)]), state('ready')]);
    expect(await follow(fake)).toMatchObject({ plan: { state: 'ready' }, progress: [40, 100] });
    expect(fake.sent.map((one) => one.path)).toEqual([`/v1/plans/${ID}`, `/v1/jobs/${ID}/events`, `/v1/plans/${ID}`]);
    expect(fake.slept).toEqual([]);
  });

  test.each([
    ['there is no stream', () => problem(404, 'route-unknown')],
    ['there are too many streams: it does not wait for one', () => problem(429, 'too-many-requests', {}, { 'retry-after': '5' })],
    ['the credential may not listen', () => problem(403, 'scope-missing')],
  ])('asking goes on where %s', async (_when, refusal) => {
    const fake = fakeApi([state('computing'), refusal(), state('computing'), state('computing'), state('ready')]);
    expect(await follow(fake)).toMatchObject({ plan: { state: 'ready' }, progress: [] });
    expect(fake.slept).toEqual([100, 150, 225]);
  });

  test('asking goes on where the job ended and the record does not say so yet', async () => {
    const fake = fakeApi([state('computing'), stream([event(1, 'end', 100)]), state('computing'), state('ready')]);
    expect((await follow(fake)).plan.state).toBe('ready');
    expect(fake.sent.filter((one) => one.path.endsWith('/events'))).toHaveLength(1);
  });

  test('the limit ends a stream that goes on and on', async () => {
    const fake = fakeApi([state('computing'), stream([event(1, 'progress', 1)], 'stay')]);
    const fetch = fake.api.waitForPlan(ID, { limitMs: 50 });
    await expect(fetch).rejects.toBeInstanceOf(NotReadyError);
  });
});
