import { setTimeout as sleep } from 'node:timers/promises';
import { afterAll, beforeAll, beforeEach, describe, expect, it, jest } from '@jest/globals';
import pg from 'pg';
import { Database } from '../../apps/api/src/platform/database/database.js';
import { JobFeed } from '../../apps/api/src/platform/jobs/feed.js';
import { claimAttempt, finish, giveUp } from '../../apps/api/src/platform/jobs/fence.js';
import { insertJob, noteProgress } from '../../apps/api/src/platform/jobs/job-rows.js';
import { startApi, type TestApi, type TestGarden } from '../support/api-app.js';
import { openStream, type OpenStream, type StreamEvent } from '../support/event-stream.js';
import { plantBuild, waitingRevision } from '../support/plan-rows.js';

let api: TestApi;
let admin: pg.Client;
let database: Database;
let garden: TestGarden;
let buildId: string;

/** A plan and its job. The test itself is the worker, so that it decides what happens when. */
class Work {
  private attempt = 0;
  private constructor(readonly id: string) {}
  static async begin(): Promise<Work> {
    const row = waitingRevision(garden.gardenId, buildId);
    await database.inTransaction(garden.actor, async (db) => {
      await db.planRevision.create({ data: row });
      await insertJob(db, 'compute-plan', row);
    });
    return new Work(row.id);
  }
  async take(): Promise<void> {
    this.attempt = (await database.inTransaction(garden.actor, (db) => claimAttempt(db, 'planRevision', this.id))) ?? 0;
  }
  tell(progress: number, stage = 'thermal'): Promise<void> {
    return database.inTransaction(garden.actor, (db) => noteProgress(db, this.id, this.attempt, { progress, stage }));
  }
  end(): Promise<void> {
    return database.inTransaction(garden.actor, (db) => finish(db, 'planRevision', this.id, this.attempt, { state: 'ready' }));
  }
}

const open = (id: string, lastId?: number | string, key: string = garden.key): Promise<OpenStream> =>
  openStream(api.server, `/v1/jobs/${id}/events`, { Authorization: `Bearer ${key}`, ...(lastId === undefined ? {} : { 'Last-Event-ID': String(lastId) }) });

/** What the job went through, as the table has it. */
const logOf = async (id: string): Promise<unknown[]> =>
  (await admin.query('SELECT number, state, progress, stage, attempt FROM job_events WHERE job_id = $1 ORDER BY number', [id])).rows;
const asLog = (events: readonly StreamEvent[]): unknown[] =>
  events.map(({ id, data }) => ({ number: id, state: data.state, progress: data.progress, stage: data.stage, attempt: data.attemptCount }));

beforeAll(async () => {
  api = await startApi();
  database = api.get(Database);
  admin = new pg.Client({ connectionString: api.database.adminUrl });
  await admin.connect();
});
afterAll(async () => {
  await admin.end();
  await api.stop();
});
beforeEach(async () => {
  garden = await api.garden();
  buildId = await plantBuild(api.database.adminUrl, garden.gardenId);
});

describe('the events of a job', () => {
  it('A30: come as they happen, numbered, to a last one, and then the answer ends', async () => {
    const work = await Work.begin();
    const stream = await open(work.id);
    expect([stream.status, stream.headers['content-type'], stream.headers['cache-control']]).toEqual([200, 'text/event-stream', 'no-store']);
    await stream.until(1);
    const began = performance.now();
    await work.take();
    await stream.until(2);
    // The bell rings; nobody waits for the next look.
    expect(performance.now() - began).toBeLessThan(800);
    await work.tell(40, 'wind');
    await work.tell(80, 'budget');
    await work.end();
    await stream.closed;
    expect(asLog(stream.events)).toEqual(await logOf(work.id));
    expect(stream.events.map(({ id, name, data }) => [id, name, data.state, data.progress, data.stage])).toEqual([
      [1, 'progress', 'queued', 0, null],
      [2, 'progress', 'running', 0, null],
      [3, 'progress', 'running', 40, 'wind'],
      [4, 'progress', 'running', 80, 'budget'],
      [5, 'end', 'succeeded', 100, 'done'],
    ]);
  });

  it('A30: a socket that is cut 20 times misses nothing and hears nothing twice', async () => {
    const work = await Work.begin();
    await work.take();
    // Four more while each socket is open: what it waits for is never already heard, however fast the writing is.
    const tellFour = async (cut: number): Promise<void> => {
      for (let progress = cut * 4 + 1; progress <= cut * 4 + 4; progress += 1) {
        await work.tell(progress, progress % 2 ? 'cutting' : 'takeoff');
        await sleep(progress % 7);
      }
    };
    const heard: StreamEvent[] = [];
    let working: Promise<void> = Promise.resolve();
    for (let cut = 0; cut < 20; cut += 1) {
      working = working.then(() => tellFour(cut));
      const stream = await open(work.id, heard.at(-1)?.id);
      await stream.until(1 + (cut % 4));
      stream.drop();
      await stream.closed;
      heard.push(...stream.events);
      await sleep((cut * 13) % 40);
    }
    await working;
    await work.end();
    const last = await open(work.id, heard.at(-1)?.id);
    await last.closed;
    heard.push(...last.events);
    const log = await logOf(work.id);
    expect(log.length).toBeGreaterThan(80);
    expect(asLog(heard)).toEqual(log);
  });

  it('A30: whoever has seen the end is told not to come back; an id that never was is refused', async () => {
    const work = await Work.begin();
    await work.take();
    await work.end();
    const all = await open(work.id);
    await all.closed;
    const { id: end } = all.events.at(-1) as StreamEvent;
    expect((await open(work.id, end)).status).toBe(204);
    for (const wrong of [end + 1, 'x', '-1', '1.5', '99999999999']) expect([wrong, (await open(work.id, wrong)).status]).toEqual([wrong, 400]);
    const again = await open(work.id, 1);
    await again.closed;
    expect(again.events.map(({ id }) => id)).toEqual([2, 3]);
  });

  it('A30: a silent job sends a comment line at least every 15 seconds', async () => {
    const work = await Work.begin();
    const stream = await open(work.id);
    await stream.until(1);
    const began = performance.now();
    while (stream.comments.length === 0 && performance.now() - began < 15_000) await sleep(100);
    expect(stream.comments).toHaveLength(1);
    stream.drop();
    await stream.closed;
  });

  it('A30: a job that was given up ends its stream with its state', async () => {
    const work = await Work.begin();
    const stream = await open(work.id);
    await work.take();
    await database.inTransaction(garden.actor, (db) => giveUp(db, 'planRevision', work.id, { type: '/v1/problems/plan-failed' }));
    await stream.closed;
    expect(stream.events.at(-1)).toMatchObject({ name: 'end', data: { state: 'failed' } });
  });
});

describe('who may listen', () => {
  const endsWithin = async (stream: OpenStream, ms: number): Promise<boolean> => {
    const end = await Promise.race([stream.closed.then(() => true), sleep(ms).then(() => false)]);
    stream.drop();
    return end;
  };

  it('A30: a key that is revoked hears no more within a second', async () => {
    const work = await Work.begin();
    const key = await api.keyOf(garden.gardenId, ['plans:read']);
    const stream = await open(work.id, undefined, key);
    await stream.until(1);
    await admin.query('UPDATE api_keys SET revoked_at = now() WHERE garden_id = $1 AND prefix = $2', [garden.gardenId, key.slice(0, 11)]);
    expect(await endsWithin(stream, 1000)).toBe(true);
    await work.take();
    expect(stream.events).toHaveLength(1);
    expect((await open(work.id, undefined, key)).status).toBe(401);
  });

  it.each([
    ['whose session is ended', 'UPDATE account_sessions SET revoked_at = now() WHERE account_id = $1'],
    ['who left the garden', 'UPDATE members SET left_at = now() WHERE account_id = $1'],
    ['whose role does not reach it any more', "UPDATE members SET roles = ARRAY['funder'] WHERE account_id = $1"],
  ])('A30: a person %s hears no more within a second', async (_who, sql) => {
    const work = await Work.begin();
    const person = await api.person(garden.gardenId, ['coordinator']);
    const stream = await openStream(api.server, `/v1/jobs/${work.id}/events`, { Authorization: `Bearer ${person.token}`, 'Lathwork-Garden': garden.gardenId });
    await stream.until(1);
    await admin.query(sql, [person.accountId]);
    expect(await endsWithin(stream, 1000)).toBe(true);
  });

  it('A30: nobody of another garden, nobody without the scope, and nobody more than ten at once', async () => {
    const work = await Work.begin();
    expect((await open(work.id, undefined, (await api.garden()).key)).status).toBe(404);
    expect((await open(work.id, undefined, await api.keyOf(garden.gardenId, ['stock:read']))).status).toBe(403);
    const streams = await Promise.all(Array.from({ length: 10 }, () => open(work.id)));
    await Promise.all(streams.map((stream) => stream.until(1)));
    expect((await open(work.id)).status).toBe(429);
    streams.forEach((stream) => stream.drop());
    await Promise.all(streams.map((stream) => stream.closed));
  });
});

describe('without the bell', () => {
  it('A30: a stream that hears nothing of changes looks by itself', async () => {
    const deaf = jest.spyOn(api.get(JobFeed), 'onChange').mockReturnValue(() => undefined);
    const work = await Work.begin();
    const stream = await open(work.id);
    deaf.mockRestore();
    await work.take();
    await work.tell(50);
    await work.end();
    await stream.closed;
    expect(asLog(stream.events)).toEqual(await logOf(work.id));
  });

  it('A30: a lost connection of the bell comes back', async () => {
    const work = await Work.begin();
    const stream = await open(work.id);
    await stream.until(1);
    const cut = await admin.query(
      "SELECT pg_terminate_backend(pid) FROM pg_stat_activity WHERE application_name = 'lathwork-feed' AND datname = current_database()",
    );
    expect(cut.rowCount).toBe(1);
    await work.take();
    await stream.until(2);
    const listening = "SELECT 1 FROM pg_stat_activity WHERE application_name = 'lathwork-feed' AND datname = current_database()";
    for (const end = Date.now() + 5000; (await admin.query(listening)).rowCount === 0 && Date.now() < end;) await sleep(50);
    await sleep(200);
    const began = performance.now();
    await work.tell(50);
    await stream.until(3);
    expect(performance.now() - began).toBeLessThan(450);
    await work.end();
    await stream.closed;
    expect(asLog(stream.events)).toEqual(await logOf(work.id));
  });

  it('A30: the same can be seen by asking now and then', async () => {
    const work = await Work.begin();
    const seen: [string, number][] = [];
    const look = async (): Promise<string> => {
      const { state, progress } = (await garden.http.get(`/v1/jobs/${work.id}`)).body as { state: string; progress: number };
      if (seen.at(-1)?.join() !== [state, progress].join()) seen.push([state, progress]);
      return state;
    };
    await look();
    for (const step of [() => work.take(), () => work.tell(30), () => work.tell(60), () => work.end()]) {
      await step();
      await look();
    }
    expect(seen).toEqual([
      ['queued', 0],
      ['running', 0],
      ['running', 30],
      ['running', 60],
      ['succeeded', 100],
    ]);
  });
});

it('A30: a server that stops ends its streams at once', async () => {
  const other = await startApi();
  const there = await other.garden();
  const row = waitingRevision(there.gardenId, await plantBuild(other.database.adminUrl, there.gardenId));
  await other.get(Database).inTransaction(there.actor, async (db) => {
    await db.planRevision.create({ data: row });
    await insertJob(db, 'compute-plan', row);
  });
  const stream = await openStream(other.server, `/v1/jobs/${row.id}/events`, { Authorization: `Bearer ${there.key}` });
  await stream.until(1);
  const began = performance.now();
  await other.stop();
  await stream.closed;
  expect(performance.now() - began).toBeLessThan(3000);
});
