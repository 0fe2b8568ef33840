import { setTimeout as sleep } from 'node:timers/promises';
import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import pg from 'pg';
import { Database } from '../../../apps/api/src/platform/database/database.js';
import { newId } from '../../../apps/api/src/platform/database/ids.js';
import { enqueueInTurn, Tasks, type Job } from '../../../apps/api/src/platform/jobs/jobs.js';
import { JobRunner } from '../../../apps/api/src/platform/jobs/runner.js';
import { startApi, type TestApi, type TestGarden } from '../../support/api-app.js';
import { makeExample } from '../../support/example-requests.js';
import { seedStations } from '../../support/stations.js';

let api: TestApi;
let database: Database;
let admin: pg.Client;
beforeAll(async () => {
  api = await startApi({ env: { JOBS_RUNNING: '2', JOBS_WAITING: '10', JOB_CONCURRENCY: '6' } });
  await seedStations(api.database.ownerUrl);
  database = api.get(Database);
  admin = new pg.Client({ connectionString: api.database.adminUrl });
  await admin.connect();
});
afterAll(async () => {
  await admin.end();
  await api.stop();
});

const queue = (garden: TestGarden, task: string, quota = { running: 2, waiting: 10 }): Promise<string> => {
  const id = newId();
  return database.inTransaction(garden.actor, (db) => enqueueInTurn(db, task, { gardenId: garden.gardenId, id }, quota)).then(() => id);
};

describe('turns of a garden', () => {
  it('A20: of twenty plans asked for at once twelve are taken; the others are told what to do, and leave nothing behind', async () => {
    const garden = await api.garden();
    const { buildId } = await makeExample(garden.http);
    const answers = await Promise.all(Array.from({ length: 20 }, () => garden.http.post('/v1/plans', { buildId })));
    const full = answers.filter(({ status }) => status === 429);
    expect(answers.filter(({ status }) => status === 202)).toHaveLength(12);
    expect(full).toHaveLength(8);
    for (const { body, headers } of full) {
      expect(body).toMatchObject({
        type: '/v1/problems/jobs-full',
        status: 429,
        'violated-policies': ['jobs'],
        remedy: expect.stringMatching(/wait until one of them has ended/i),
      });
      expect(Number(headers['retry-after'])).toBeGreaterThan(0);
    }
    const { rows } = await admin.query(
      'SELECT (SELECT count(*)::int FROM plan_revisions WHERE garden_id = $1) AS plans, (SELECT count(*)::int FROM jobs WHERE garden_id = $1) AS jobs',
      [garden.gardenId],
    );
    expect(rows[0]).toEqual({ plans: 12, jobs: 12 });
    // The quota is of one garden: another has all of its own.
    const other = await api.garden();
    await other.http.post('/v1/plans', { buildId: (await makeExample(other.http)).buildId }).expect(202);
  });

  it('A20: a job that ended or was called off makes room', async () => {
    const garden = await api.garden();
    const ids = await Promise.all(Array.from({ length: 12 }, () => queue(garden, 'never-run')));
    await expect(queue(garden, 'never-run')).rejects.toMatchObject({ key: 'jobs-full' });
    await admin.query("UPDATE jobs SET state = 'cancelled', problem = '{}', finished_at = now() WHERE id = $1", [ids[3]]);
    await queue(garden, 'never-run');
    await expect(queue(garden, 'never-run')).rejects.toMatchObject({ key: 'jobs-full' });
    await admin.query("DELETE FROM graphile_worker._private_jobs WHERE payload ->> 'id' = $1", [ids[5]]);
    await queue(garden, 'never-run');
  });

  it('S10: a job of another garden cannot be queued', async () => {
    const [garden, other] = [await api.garden(), await api.garden()];
    const into = database.inTransaction(
      garden.actor,
      (db) => db.$queryRaw`SELECT enqueue_in_turn('never-run', ${other.gardenId}::uuid, ${newId()}::uuid, 2, 10)`,
    );
    await expect(into).rejects.toThrow(/own garden only/);
  });

  it('A20: at most two jobs of a garden run at once, and gardens do not wait for each other', async () => {
    const at = new Map<string, number>();
    const most = new Map<string, number>();
    let all = 0;
    let mostOfAll = 0;
    const done: string[] = [];
    api.get(Tasks).register('slow-probe', {
      async run({ gardenId, id }: Job): Promise<void> {
        at.set(gardenId, (at.get(gardenId) ?? 0) + 1);
        most.set(gardenId, Math.max(most.get(gardenId) ?? 0, at.get(gardenId) ?? 0));
        mostOfAll = Math.max(mostOfAll, (all += 1));
        await sleep(120);
        at.set(gardenId, (at.get(gardenId) ?? 0) - 1);
        all -= 1;
        done.push(id);
      },
      failed: () => Promise.resolve(),
    });
    await admin.query('DELETE FROM graphile_worker._private_jobs');
    const [one, two] = [await api.garden(), await api.garden()];
    const ids = await Promise.all([one, two].flatMap((garden) => Array.from({ length: 8 }, () => queue(garden, 'slow-probe'))));
    await api.get(JobRunner).start();
    for (const until = Date.now() + 20_000; done.length < 16; await sleep(20)) if (Date.now() > until) throw new Error(`only ${done.length} jobs ran`);
    expect([...done].sort()).toEqual([...ids].sort());
    expect([most.get(one.gardenId), most.get(two.gardenId)]).toEqual([2, 2]);
    // More than one garden may have by itself.
    expect(mostOfAll).toBeGreaterThan(2);
    expect(mostOfAll).toBeLessThanOrEqual(4);
  });
});
