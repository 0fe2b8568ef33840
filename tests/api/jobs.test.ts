import { setTimeout as sleep } from 'node:timers/promises';
import { afterAll, beforeAll, beforeEach, describe, expect, it, jest } from '@jest/globals';
import type { PlanInputs, PlanResult } from '@lathwork/model';
import fc from 'fast-check';
import pg from 'pg';
import { ComputePool } from '../../apps/api/src/platform/compute/compute-pool.js';
import { Database } from '../../apps/api/src/platform/database/database.js';
import { newId } from '../../apps/api/src/platform/database/ids.js';
import { claimAttempt, finish, giveUp, LateWorker } from '../../apps/api/src/platform/jobs/fence.js';
import { insertJob, noteProgress, requeueJob } from '../../apps/api/src/platform/jobs/job-rows.js';
import { enqueue, Tasks, type Job, type TellProgress } from '../../apps/api/src/platform/jobs/jobs.js';
import { JobRunner } from '../../apps/api/src/platform/jobs/runner.js';
import { Problem } from '../../apps/api/src/platform/problems/problem.js';
import { startApi, type TestApi, type TestGarden } from '../support/api-app.js';
import { makeExample, type ExampleIds } from '../support/example-requests.js';
import { plantBuild, waitingRevision } from '../support/plan-rows.js';
import { sampleResult } from '../support/sample-result.js';
import { seedStations } from '../support/stations.js';

interface JobBody {
  id: string;
  kind: string;
  subject: { type: string; id: string } | null;
  state: string;
  progress: number;
  stage: string | null;
  attemptCount: number;
  problem: { type: string; status: number; title: string } | null;
  startedAt: string | null;
  finishedAt: string | null;
  links: { self: string; events: string; subject: string | null; result: string | null };
}
type EventRow = [state: string, progress: number, stage: string | null, attempt: number];

let api: TestApi;
let admin: pg.Client;
let database: Database;
let garden: TestGarden;
let buildId: string;

beforeAll(async () => {
  api = await startApi();
  await seedStations(api.database.ownerUrl);
  database = api.get(Database);
  admin = new pg.Client({ connectionString: api.database.adminUrl });
  await admin.connect();
  garden = await api.garden();
  buildId = await plantBuild(api.database.adminUrl, garden.gardenId);
});
afterAll(async () => {
  await admin.end();
  await api.stop();
});

const show = async (id: string): Promise<JobBody> => (await garden.http.get(`/v1/jobs/${id}`)).body as JobBody;
const cancel = (id: string) => garden.http.post(`/v1/jobs/${id}/cancel`);
const eventsOf = async (id: string): Promise<EventRow[]> =>
  (
    await admin.query<{ state: string; progress: number; stage: string | null; attempt: number; number: number }>(
      'SELECT number, state, progress, stage, attempt FROM job_events WHERE job_id = $1 ORDER BY number',
      [id],
    )
  ).rows.map(({ number, state, progress, stage, attempt }, at) => {
    if (number !== at + 1) throw new Error(`event ${at + 1} is missing`);
    return [state, progress, stage, attempt];
  });
const auditedCancels = async (id: string): Promise<number> =>
  (await admin.query("SELECT 1 FROM audit_entries WHERE action = 'job.cancel' AND object_id = $1", [id])).rowCount ?? 0;
const revisionOf = async (id: string): Promise<{ state: string; problem: { type: string } | null }> =>
  (await admin.query('SELECT state, problem FROM plan_revisions WHERE id = $1', [id])).rows[0] as { state: string; problem: { type: string } | null };

/** A plan and its job that no runner knows of: the test is the worker. */
const begin = async (): Promise<string> => {
  const row = waitingRevision(garden.gardenId, buildId);
  await database.inTransaction(garden.actor, async (db) => {
    await db.planRevision.create({ data: row });
    await insertJob(db, 'compute-plan', row);
  });
  return row.id;
};

// ---- the state machine ------------------------------------------------------------------------------------------

/** What a job must be, by nothing but the rules: it is compared with what the server says. */
interface Model {
  state: 'queued' | 'running' | 'succeeded' | 'failed' | 'cancelled';
  progress: number;
  stage: string | null;
  /** Try that holds the row. */
  attempt: number;
  /** Type of the problem it ended with. */
  problem: string | null;
  events: EventRow[];
}
interface Real {
  id: string;
}
type Command = fc.AsyncCommand<Model, Real>;

const isOpen = (model: Model): boolean => model.state === 'queued' || model.state === 'running';
const become = (model: Model, change: Partial<Model>): void => {
  const before: EventRow = [model.state, model.progress, model.stage, model.attempt];
  Object.assign(model, change);
  const after: EventRow = [model.state, model.progress, model.stage, model.attempt];
  if (before.join() !== after.join()) model.events.push(after);
};
const sameAs = (model: Model, body: JobBody): void => {
  const said = [body.state, body.progress, body.stage, body.attemptCount, body.problem?.type ?? null, body.finishedAt !== null, body.links.result !== null];
  expect(said).toEqual([model.state, model.progress, model.stage, model.attempt, model.problem, !isOpen(model), model.state === 'succeeded']);
};

/** A worker takes the job, the first or one that believes the former is gone. */
class Take implements Command {
  check = (): boolean => true;
  async run(model: Model, { id }: Real): Promise<void> {
    const attempt = await database.inTransaction(garden.actor, (db) => claimAttempt(db, 'planRevision', id));
    expect(attempt).toBe(isOpen(model) ? model.attempt + 1 : null);
    if (attempt !== null) become(model, { state: 'running', attempt });
  }
  toString = (): string => 'take';
}

class Tell implements Command {
  constructor(
    private readonly progress: number,
    private readonly stage: string,
    /** How many tries ago the worker began that says so: 0 is the one that holds the job. */
    private readonly ago: number,
  ) {}
  check = (): boolean => true;
  async run(model: Model, { id }: Real): Promise<void> {
    const attempt = model.attempt - this.ago;
    await database.inTransaction(garden.actor, (db) => noteProgress(db, id, attempt, { progress: this.progress, stage: this.stage }));
    if (model.state === 'running' && this.ago === 0) become(model, { progress: Math.max(model.progress, Math.min(99, this.progress)), stage: this.stage });
  }
  toString = (): string => `tell(${this.progress}, ${this.stage}, ${this.ago} tries ago)`;
}

class TryLater implements Command {
  check = (): boolean => true;
  async run(model: Model, { id }: Real): Promise<void> {
    await database.inTransaction(garden.actor, (db) => requeueJob(db, id));
    if (model.state === 'running') become(model, { state: 'queued', stage: 'waitingForNextTry' });
  }
  toString = (): string => 'tryLater';
}

class Finish implements Command {
  constructor(private readonly ago: number) {}
  check = (model: Readonly<Model>): boolean => model.attempt - this.ago > 0;
  async run(model: Model, { id }: Real): Promise<void> {
    const work = database.inTransaction(garden.actor, (db) => finish(db, 'planRevision', id, model.attempt - this.ago, { state: 'ready' }));
    if (!isOpen(model) || this.ago > 0) return void (await expect(work).rejects.toThrow(LateWorker));
    await work;
    become(model, { state: 'succeeded', progress: 100, stage: 'done' });
  }
  toString = (): string => `finish(${this.ago} tries ago)`;
}

class Park implements Command {
  check = (): boolean => true;
  async run(model: Model, { id }: Real): Promise<void> {
    const problem = new Problem('plan-failed', { reason: 'the roll is too narrow' }).toBody();
    expect(await database.inTransaction(garden.actor, (db) => giveUp(db, 'planRevision', id, problem))).toBe(isOpen(model));
    if (isOpen(model)) become(model, { state: 'failed', problem: '/v1/problems/plan-failed' });
  }
  toString = (): string => 'park';
}

class Cancel implements Command {
  check = (): boolean => true;
  async run(model: Model, { id }: Real): Promise<void> {
    const answer = await cancel(id);
    expect(answer.status).toBe(200);
    if (isOpen(model)) become(model, { state: 'cancelled', problem: '/v1/problems/job-cancelled' });
    sameAs(model, answer.body as JobBody);
  }
  toString = (): string => 'cancel';
}

class Look implements Command {
  check = (): boolean => true;
  async run(model: Model, { id }: Real): Promise<void> {
    sameAs(model, await show(id));
  }
  toString = (): string => 'look';
}

const TRY = fc.nat({ max: 2 });
const COMMANDS: fc.Arbitrary<Command>[] = [
  fc.constant(new Take()),
  fc
    .tuple(fc.integer({ min: -5, max: 130 }), fc.constantFrom('thermal', 'wind'), fc.oneof(fc.constant(0), TRY))
    .map(([at, stage, ago]) => new Tell(at, stage, ago)),
  fc.constant(new TryLater()),
  fc.oneof(fc.constant(0), TRY).map((ago) => new Finish(ago)),
  fc.constant(new Park()),
  fc.constant(new Cancel()),
  fc.constant(new Look()),
];
const SEQUENCES = 500;

describe('the states of a job', () => {
  it('A29: 500 sequences of workers, retries, lost workers, ends and cancels: the rules alone say what comes of them', async () => {
    const ends = new Map<string, number>();
    await fc.assert(
      fc.asyncProperty(fc.commands(COMMANDS, { maxCommands: 12 }), async (commands) => {
        const id = await begin();
        const model: Model = { state: 'queued', progress: 0, stage: null, attempt: 0, problem: null, events: [['queued', 0, null, 0]] };
        await fc.asyncModelRun(() => ({ model, real: { id } }), commands);
        sameAs(model, await show(id));
        const events = await eventsOf(id);
        expect(events).toEqual(model.events);
        // By themselves, whatever the model thinks: no progress falls, and an end is the last thing that happens.
        events.slice(1).forEach(([, progress], at) => expect(progress).toBeGreaterThanOrEqual((events[at] as EventRow)[1]));
        events.slice(0, -1).forEach(([state]) => expect(['queued', 'running']).toContain(state));
        const row = await revisionOf(id);
        expect([row.state === 'ready', row.state === 'failed']).toEqual([model.state === 'succeeded', model.state === 'failed' || model.state === 'cancelled']);
        expect(row.problem?.type ?? null).toBe(model.problem);
        ends.set(model.state, (ends.get(model.state) ?? 0) + 1);
      }),
      { numRuns: SEQUENCES },
    );
    // The sequences did reach every state.
    expect([...ends.keys()].sort()).toEqual(['cancelled', 'failed', 'queued', 'running', 'succeeded']);
    expect([...ends.values()].reduce((sum, count) => sum + count, 0)).toBe(SEQUENCES);
  }, 300_000);

  it.each([
    ['progress that falls', "UPDATE jobs SET progress = 10 WHERE id = $1 AND state = 'running'", 'jobs_never_fall'],
    ['a try that falls', "UPDATE jobs SET attempt = 0 WHERE id = $1 AND state = 'running'", 'jobs_never_fall'],
    ['success short of the whole way', "UPDATE jobs SET state = 'succeeded', finished_at = now() WHERE id = $1", 'jobs_progress_check'],
    ['failure without its problem', "UPDATE jobs SET state = 'failed', finished_at = now() WHERE id = $1", 'jobs_end_check'],
    ['an end without its time', "UPDATE jobs SET state = 'cancelled', problem = '{}' WHERE id = $1", 'jobs_end_check'],
  ])('A29: the table itself refuses %s', async (_what, sql, constraint) => {
    const id = await begin();
    const attempt = (await database.inTransaction(garden.actor, (db) => claimAttempt(db, 'planRevision', id))) ?? 0;
    await database.inTransaction(garden.actor, (db) => noteProgress(db, id, attempt, { progress: 50, stage: 'wind' }));
    await expect(admin.query(sql, [id])).rejects.toMatchObject({ constraint });
    expect(await show(id)).toMatchObject({ state: 'running', progress: 50, attemptCount: 1 });
  });

  it('A29: the table itself refuses to wake what has ended', async () => {
    const id = await begin();
    await cancel(id);
    for (const change of ["state = 'queued', finished_at = NULL, problem = NULL", "state = 'succeeded', progress = 100", "stage = 'more'"])
      await expect(admin.query(`UPDATE jobs SET ${change} WHERE id = $1`, [id])).rejects.toMatchObject({ constraint: 'jobs_end_is_final' });
  });
});

describe('calling off', () => {
  it('A29: ten at once, and again later: one end, one audit entry, the same answer', async () => {
    const id = await begin();
    await database.inTransaction(garden.actor, (db) => claimAttempt(db, 'planRevision', id));
    const answers = await Promise.all(Array.from({ length: 10 }, () => cancel(id)));
    answers.push(await cancel(id));
    expect(new Set(answers.map(({ text }) => text)).size).toBe(1);
    expect(answers.map(({ status }) => status)).toEqual(Array.from({ length: 11 }, () => 200));
    expect(answers[0]?.body).toMatchObject({ state: 'cancelled', problem: { type: '/v1/problems/job-cancelled', status: 409 } });
    expect([await auditedCancels(id), (await eventsOf(id)).map(([state]) => state)]).toEqual([1, ['queued', 'running', 'cancelled']]);
    expect(await revisionOf(id)).toMatchObject({ state: 'failed', problem: { type: '/v1/problems/job-cancelled' } });
  });

  it('A29: against a worker that finishes at the same moment one of the two wins, wholly', async () => {
    for (let i = 0; i < 24; i += 1) {
      const id = await begin();
      const attempt = (await database.inTransaction(garden.actor, (db) => claimAttempt(db, 'planRevision', id))) ?? 0;
      const finishing = sleep(i % 8).then(() => database.inTransaction(garden.actor, (db) => finish(db, 'planRevision', id, attempt, { state: 'ready' })));
      const [worker, caller] = await Promise.allSettled([finishing, cancel(id)]);
      const { state } = await show(id);
      const won = worker.status === 'fulfilled';
      expect([state, (await revisionOf(id)).state, await auditedCancels(id)]).toEqual(won ? ['succeeded', 'ready', 0] : ['cancelled', 'failed', 1]);
      expect(caller.status === 'fulfilled' && (caller.value.body as JobBody).state).toBe(state);
    }
  });

  it('A29: a member calls off what is their own, and sees whose it is not', async () => {
    const [mine, other] = [await api.person(garden.gardenId, ['member']), await api.person(garden.gardenId, ['member'])];
    const id = await begin();
    await admin.query('UPDATE jobs SET created_by_id = $2 WHERE id = $1', [id, mine.memberId]);
    // A stranger's job does not exist; one whose plan is shared is seen and may not be called off.
    const asked = async (): Promise<[number, number]> => [
      (await other.http.get(`/v1/jobs/${id}`)).status,
      (await other.http.post(`/v1/jobs/${id}/cancel`)).status,
    ];
    await admin.query('UPDATE builds SET owner_member_id = $2, shared = false WHERE id = $1', [buildId, mine.memberId]);
    expect(await asked()).toEqual([404, 404]);
    await admin.query('UPDATE builds SET shared = true WHERE id = $1', [buildId]);
    expect(await asked()).toEqual([200, 403]);
    expect([(await show(id)).state, await auditedCancels(id)]).toEqual(['queued', 0]);
    expect((await mine.http.post(`/v1/jobs/${id}/cancel`)).body).toMatchObject({ id, state: 'cancelled' });
  });

  it('A29: nobody of another garden, nobody without the scope', async () => {
    const id = await begin();
    const stranger = await api.garden();
    for (const answer of [await stranger.http.get(`/v1/jobs/${id}`), await stranger.http.post(`/v1/jobs/${id}/cancel`), await cancel(newId())])
      expect(answer.status).toBe(404);
    expect((await api.as(await api.keyOf(garden.gardenId, ['plans:read'])).post(`/v1/jobs/${id}/cancel`)).status).toBe(403);
    expect((await show(id)).state).toBe('queued');
  });
});

// ---- with the runner --------------------------------------------------------------------------------------------

describe('jobs that run', () => {
  const started: string[] = [];
  let ids: ExampleIds;
  let outcome: (inputs: PlanInputs, signal: AbortSignal) => Promise<PlanResult>;
  const poisonTries: { id: string; at: number }[] = [];

  const until = async (id: string, ...states: string[]): Promise<JobBody> => {
    for (const end = Date.now() + 40_000; ; await sleep(50)) {
      const job = await show(id);
      if (states.includes(job.state)) return job;
      if (Date.now() > end) throw new Error(`still ${JSON.stringify(job)}`);
    }
  };
  const ask = async (): Promise<{ id: string; headers: Record<string, string>; status: number }> => {
    const answer = await garden.http.post('/v1/plans', { buildId: ids.buildId, asOf: '2026-03-15' });
    return { id: (answer.body as { id: string }).id, headers: answer.headers as Record<string, string>, status: answer.status };
  };

  beforeAll(async () => {
    ids = await makeExample(garden.http);
    jest.spyOn(api.get(ComputePool), 'compute').mockImplementation(async (inputs, signal, onRoom) => {
      started.push(inputs.planId);
      onRoom?.({ planId: inputs.planId, room: 'geometry', doneCount: 1 });
      await sleep(30);
      onRoom?.({ planId: inputs.planId, room: 'wind', doneCount: 4 });
      await sleep(30);
      return { result: await outcome(inputs, signal ?? new AbortController().signal), timingsMs: { geometry: 1 } };
    });
    api.get(Tasks).register('probe-poison', {
      run: ({ id }: Job, _signal: AbortSignal, tell: TellProgress) => {
        poisonTries.push({ id, at: performance.now() });
        tell(0, 1, 'never');
        return Promise.reject(new Error('a template that throws'));
      },
      failed: () => Promise.resolve(),
    });
    api.get(Tasks).register('probe-good', { run: () => Promise.resolve(), failed: () => Promise.resolve() });
    await api.get(JobRunner).start();
  });
  beforeEach(() => {
    outcome = (inputs) => Promise.resolve({ ...sampleResult(inputs), planId: inputs.planId, revision: inputs.revision, reviewBlocked: false, notes: [] });
  });

  it('A29: 202 names the job and when to ask again; the job leads to what it made', async () => {
    const asked = await ask();
    expect([asked.status, asked.headers['location'], asked.headers['retry-after']]).toEqual([202, `/v1/plans/${asked.id}`, '1']);
    const link = /<([^>]+)>; rel="monitor"/.exec(asked.headers['link'] ?? '')?.[1] ?? '';
    expect(link).toBe(`/v1/jobs/${asked.id}`);
    const job = await until(asked.id, 'succeeded');
    expect(job).toMatchObject({
      kind: 'compute-plan',
      subject: { type: 'plan', id: asked.id },
      progress: 100,
      attemptCount: 1,
      problem: null,
      links: { self: link, events: `${link}/events`, subject: `/v1/plans/${asked.id}` },
    });
    expect((await garden.http.get(job.links.result ?? '')).status).toBe(200);
    const events = await eventsOf(asked.id);
    expect([events[0]?.[0], events.at(-1)]).toEqual(['queued', ['succeeded', 100, 'done', 1]]);
    expect(events.some(([state, progress]) => state === 'running' && progress > 0 && progress < 100)).toBe(true);
    const { headers } = await garden.http.get(link);
    expect((await garden.http.get(link).set('If-None-Match', headers['etag'] as string)).status).toBe(304);
  });

  it('A29: jobs are listed by state, page by page, and kept', async () => {
    await ask();
    const seen: JobBody[] = [];
    for (let next: string | null = ''; next !== null;) {
      const page = (await garden.http.get(`/v1/jobs?state=cancelled&limit=3${next && `&cursor=${next}`}`)).body as { items: JobBody[]; next: string | null };
      seen.push(...page.items);
      next = page.next;
    }
    const { rows } = await admin.query<{ id: string }>("SELECT id FROM jobs WHERE garden_id = $1 AND state = 'cancelled' ORDER BY id", [garden.gardenId]);
    expect(seen.map(({ id }) => id)).toEqual(rows.map(({ id }) => id));
    expect(seen.length).toBeGreaterThan(3);
    expect((await garden.http.get('/v1/jobs?state=asleep')).status).toBe(400);
    // Nothing takes ended jobs away: the server's own role may not.
    await expect(database.inTransaction(garden.actor, (db) => db.job.deleteMany({}))).rejects.toThrow();
  });

  it('A29: what is called off while it runs is told so at once, and writes nothing', async () => {
    let told = 0;
    outcome = (inputs, signal) =>
      new Promise((_resolve, reject) => {
        signal.addEventListener('abort', () => {
          told = performance.now();
          reject(new Error(`called off ${inputs.planId}`));
        });
      });
    const { id } = await ask();
    await until(id, 'running');
    for (const end = Date.now() + 5000; !started.includes(id) && Date.now() < end;) await sleep(20);
    await sleep(100);
    const began = performance.now();
    expect((await cancel(id)).body).toMatchObject({ state: 'cancelled' });
    for (const end = Date.now() + 5000; told === 0 && Date.now() < end;) await sleep(20);
    expect(told - began).toBeGreaterThan(0);
    expect(told - began).toBeLessThan(1000);
    await sleep(200);
    expect((await eventsOf(id)).at(-1)?.[0]).toBe('cancelled');
    expect((await garden.http.get(`/v1/plans/${id}`)).body).toMatchObject({ state: 'failed', problem: { type: '/v1/problems/job-cancelled' } });
    expect((await garden.http.get(`/v1/plans/${id}/result`)).status).toBe(409);
    const { rows } = await admin.query('SELECT type FROM hook_events WHERE object_id = $1 ORDER BY id', [id]);
    expect(rows).toEqual([{ type: 'plan.failed' }]);
  });

  it('A29: a refusal ends a job at its first try, with the problem object in it', async () => {
    outcome = () => Promise.reject(new Problem('plan-failed', { reason: 'the roll is too narrow' }));
    const { id } = await ask();
    const job = await until(id, 'failed');
    expect([job.attemptCount, job.links.result]).toEqual([1, null]);
    expect(job.problem).toMatchObject({ type: '/v1/problems/plan-failed', status: 422, detail: 'the roll is too narrow' });
    expect(await garden.http.get(job.problem?.type ?? '').then(({ status }) => status)).toBe(200);
  });

  it('S33: a poison job is tried three times, later each time, parked with its problem, and others go on', async () => {
    const queue = async (task: string): Promise<string> => {
      const job = { gardenId: garden.gardenId, id: newId() };
      await database.inTransaction(garden.actor, (db) => enqueue(db, task, job));
      return job.id;
    };
    const id = await queue('probe-poison');
    await until(id, 'queued', 'running');
    for (const end = Date.now() + 10_000; poisonTries.length < 1 && Date.now() < end;) await sleep(20);
    const others = await Promise.all(Array.from({ length: 5 }, () => queue('probe-good')));
    for (const other of others) expect((await until(other, 'succeeded', 'failed')).state).toBe('succeeded');
    // They were done before it was.
    expect((await show(id)).finishedAt).toBeNull();
    const job = await until(id, 'failed');
    expect(job.problem).toMatchObject({ type: '/v1/problems/internal', status: 500 });
    expect(JSON.stringify(job)).not.toContain('template');
    expect(poisonTries.map((one) => one.id)).toEqual([id, id, id]);
    const [first, second] = [1, 2].map((at) => (poisonTries[at]?.at ?? 0) - (poisonTries[at - 1]?.at ?? 0));
    expect(first).toBeGreaterThan(1000);
    expect(second).toBeGreaterThan(first ?? 0);
    await sleep(500);
    expect(poisonTries).toHaveLength(3);
    const left = await admin.query("SELECT 1 FROM graphile_worker._private_jobs WHERE payload ->> 'id' = $1", [id]);
    expect(left.rowCount).toBe(0);
    expect((await show((await ask()).id)).state).toMatch(/queued|running|succeeded/);
  });
});
