import { setTimeout as sleep } from 'node:timers/promises';
import { afterAll, beforeAll, describe, expect, test } from '@jest/globals';
import pg from 'pg';
import { Database, type Db } from '../../../apps/api/src/platform/database/database.js';
import { claimAttempt, finish, giveUp, LateWorker } from '../../../apps/api/src/platform/jobs/fence.js';
import { enqueue, Tasks, type Job, type Task } from '../../../apps/api/src/platform/jobs/jobs.js';
import { JobRecovery } from '../../../apps/api/src/platform/jobs/recovery.js';
import { JobRunner } from '../../../apps/api/src/platform/jobs/runner.js';
import { makeLog } from '../../../apps/api/src/platform/logging/log.js';
import { fail, type ProblemBody } from '../../../apps/api/src/platform/problems/problem.js';
import { startApi, type TestApi, type TestGarden } from '../../support/api-app.js';
import { plantBuild, waitingRevision } from '../../support/plan-rows.js';

let api: TestApi;
let garden: TestGarden;
let buildId: string;
let database: Database;
let admin: pg.Client;

/** Tasks that do to their row what the test says, as often as it is tried. */
class ScriptedTask implements Task {
  readonly tries: string[] = [];
  constructor(private readonly script: (job: Job, at: number) => Promise<void>) {}
  run(job: Job): Promise<void> {
    this.tries.push(job.id);
    return this.script(job, this.tries.filter((id) => id === job.id).length);
  }
  async failed(job: Job, problem: ProblemBody): Promise<void> {
    await database.inTransaction(job, (db) => giveUp(db, 'planRevision', job.id, problem));
  }
}

const endIt = (job: Job): Promise<void> =>
  database.inTransaction(job, async (db) => {
    const attempt = await claimAttempt(db, 'planRevision', job.id);
    if (attempt !== null) await finish(db, 'planRevision', job.id, attempt, { state: 'ready' });
  });

const good = new ScriptedTask(endIt);
const poison = new ScriptedTask(() => Promise.reject(new Error('poison')));
const second = new ScriptedTask((job, at) => (at === 1 ? Promise.reject(new Error('once')) : endIt(job)));
const hopeless = new ScriptedTask(() => Promise.resolve(fail('plan-failed', { reason: 'the roll is too narrow' })));

const stateOf = async (id: string) =>
  (await admin.query('SELECT state, attempt, problem FROM plan_revisions WHERE id = $1', [id])).rows[0] as {
    state: string;
    attempt: number;
    problem: ProblemBody | null;
  };

const queue = async (task: string, also?: (db: Db) => Promise<void>): Promise<string> => {
  const row = waitingRevision(garden.gardenId, buildId);
  await database.inTransaction(garden.actor, async (db) => {
    await db.planRevision.create({ data: row });
    await enqueue(db, task, row);
    await also?.(db);
  });
  return row.id;
};

const until = async (id: string, state: string): Promise<void> => {
  for (const end = Date.now() + 30_000; (await stateOf(id)).state !== state; await sleep(50))
    if (Date.now() > end) throw new Error(`still ${JSON.stringify(await stateOf(id))}`);
};

beforeAll(async () => {
  api = await startApi();
  database = api.get(Database);
  const tasks = api.get(Tasks);
  Object.entries({ 'probe-good': good, 'probe-poison': poison, 'probe-second': second, 'probe-hopeless': hopeless }).forEach(([name, task]) =>
    tasks.register(name, task),
  );
  garden = await api.garden();
  buildId = await plantBuild(api.database.adminUrl, garden.gardenId);
  admin = new pg.Client({ connectionString: api.database.adminUrl });
  await admin.connect();
});
afterAll(async () => {
  await admin.end();
  await api.stop();
});

describe('recovery', () => {
  const lock = (id: string, tries: number) =>
    admin.query(
      `UPDATE graphile_worker._private_jobs SET locked_at = now(), locked_by = 'worker-of-a-killed-process', attempts = $2 WHERE payload->>'id' = $1`,
      [id, tries],
    );
  const recovery = () => new JobRecovery({ queueUrl: api.database.queueUrl, longestTaskMs: 60_000, tasks: api.get(Tasks).all(), log: makeLog('silent') });
  const lockedOf = async (id: string) =>
    (await admin.query(`SELECT locked_by FROM graphile_worker._private_jobs WHERE payload->>'id' = $1`, [id])).rows.map(
      (row: { locked_by: string | null }) => row.locked_by,
    );

  test('a job of a killed runner is free again at the next start, unless another runner lives', async () => {
    const id = await queue('probe-good');
    const living = recovery();
    await living.start();
    await lock(id, 1);
    const beside = recovery();
    await beside.start();
    expect(await lockedOf(id)).toEqual(['worker-of-a-killed-process']);
    await Promise.all([living.stop(), beside.stop()]);
    const alone = recovery();
    await alone.start();
    expect(await lockedOf(id)).toEqual([null]);
    await alone.stop();
  });

  test('a job that was cut off at its last try ends as failed', async () => {
    const id = await queue('probe-poison');
    await lock(id, 3);
    const alone = recovery();
    await alone.start();
    await alone.stop();
    expect(await stateOf(id)).toMatchObject({ state: 'failed', problem: { type: '/v1/problems/internal', status: 500 } });
    expect(await lockedOf(id)).toEqual([]);
  });
});

describe('runner', () => {
  beforeAll(() => api.get(JobRunner).start());

  test('a row and its job are there together, or neither', async () => {
    const id = await queue('probe-good');
    await until(id, 'ready');
    const before = good.tries.length;
    let lost = '';
    await expect(
      queue('probe-good', (db) =>
        db.$queryRaw<{ id: string }[]>`SELECT id::text FROM plan_revisions ORDER BY id DESC LIMIT 1`.then(
          ([row]) => ((lost = row?.id ?? ''), Promise.reject(new Error('undone'))),
        ),
      ),
    ).rejects.toThrow('undone');
    await sleep(300);
    expect([good.tries.length, good.tries.includes(lost)]).toEqual([before, false]);
  });

  test('what fails once is tried again', async () => {
    const id = await queue('probe-second');
    await until(id, 'ready');
    expect(second.tries).toEqual([id, id]);
  });

  test('a refusal that would come again is not tried again, and its row keeps the problem', async () => {
    const id = await queue('probe-hopeless');
    await until(id, 'failed');
    expect(hopeless.tries).toEqual([id]);
    expect((await stateOf(id)).problem).toMatchObject({ type: '/v1/problems/plan-failed', status: 422, detail: 'the roll is too narrow' });
  });

  test('poison is tried three times, parked with its problem, and holds nobody up', async () => {
    const before = poison.tries.length;
    const id = await queue('probe-poison');
    const other = await queue('probe-good');
    await until(other, 'ready');
    expect((await stateOf(id)).state).toBe('computing');
    await until(id, 'failed');
    expect(poison.tries.slice(before)).toEqual([id, id, id]);
    const { problem } = await stateOf(id);
    expect(problem).toMatchObject({ type: '/v1/problems/internal', status: 500 });
    expect(JSON.stringify(problem)).not.toContain('poison');
    expect((await admin.query('SELECT count(*)::int AS n FROM graphile_worker._private_jobs')).rows[0].n).toBe(0);
  });
});

describe('fence', () => {
  const make = async () => {
    const row = waitingRevision(garden.gardenId, buildId);
    await database.inTransaction(garden.actor, (db) => db.planRevision.create({ data: row }));
    return row.id;
  };
  const claim = (id: string) => database.inTransaction(garden.actor, (db) => claimAttempt(db, 'planRevision', id));
  const complete = (id: string, attempt: number) =>
    database.inTransaction(garden.actor, async (db) => {
      await db.planResult.create({
        data: { gardenId: garden.gardenId, planId: id, schemaVersion: 1, engineVersion: 'probe', result: { attempt }, timings: {}, attempt },
      });
      await finish(db, 'planRevision', id, attempt, { state: 'ready' });
    });

  test('a worker that was taken over writes nothing, not even its result', async () => {
    const id = await make();
    const [slow, fast] = [await claim(id), await claim(id)];
    expect([slow, fast]).toEqual([1, 2]);
    await expect(complete(id, 1)).rejects.toThrow(LateWorker);
    expect((await admin.query('SELECT 1 FROM plan_results WHERE plan_id = $1', [id])).rowCount).toBe(0);
    await complete(id, 2);
    await expect(complete(id, 2)).rejects.toThrow();
    expect((await admin.query('SELECT attempt FROM plan_results WHERE plan_id = $1', [id])).rows).toEqual([{ attempt: 2 }]);
    expect(await claim(id)).toBeNull();
  });

  test('of ten workers at once, one result stays', async () => {
    const id = await make();
    const outcomes = await Promise.allSettled(
      Array.from({ length: 10 }, async (_one, at) => {
        const attempt = await claim(id);
        if (attempt === null) throw new LateWorker();
        await sleep((at * 7) % 20);
        await complete(id, attempt);
      }),
    );
    expect(outcomes.filter(({ status }) => status === 'fulfilled')).toHaveLength(1);
    expect(await stateOf(id)).toMatchObject({ state: 'ready', problem: null });
  });

  test('giving up ends nothing that is finished, and stops who still works', async () => {
    const done = await make();
    await complete(done, (await claim(done)) ?? 0);
    await database.inTransaction(garden.actor, (db) => giveUp(db, 'planRevision', done, { title: 'x' }));
    expect((await stateOf(done)).state).toBe('ready');
    const held = await make();
    const attempt = (await claim(held)) ?? 0;
    await database.inTransaction(garden.actor, (db) => giveUp(db, 'planRevision', held, { title: 'x' }));
    await expect(complete(held, attempt)).rejects.toThrow(LateWorker);
  });

  test('a row of another garden cannot be claimed', async () => {
    const id = await make();
    const stranger = await api.garden();
    expect(await database.inTransaction(stranger.actor, (db) => claimAttempt(db, 'planRevision', id))).toBeNull();
    expect((await stateOf(id)).attempt).toBe(0);
  });
});
