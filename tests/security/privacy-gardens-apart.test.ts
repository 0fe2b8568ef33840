import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import pino from 'pino';
import { startApi, type TestApi, type TestGarden, type TestPerson } from '../support/api-app.js';
import type { HttpClient } from '../support/http-client.js';
import { asAdmin } from '../support/people.js';
import { growGarden } from '../support/random-garden.js';
import { bytesOf, computeByHand, exported, filesOf, packed } from '../support/transfer.js';

let api: TestApi;
let a: TestGarden;
let b: TestGarden;
let strangers: [string, HttpClient][];
let insider: TestPerson;
let files: string[];
const lines: string[] = [];

beforeAll(async () => {
  const log = pino({ level: 'debug' }, { write: (line: string) => void lines.push(line) });
  api = await startApi({ log });
  [a, b] = [await api.garden(), await api.garden()];
  const choice = {
    from: 'cold-inland',
    stock: [0, 1],
    prices: [0],
    builds: 1,
    variants: 0,
    claims: 1,
    archive: false,
    shift: 0,
    rate: 1.1,
    photos: 1,
    plans: 1,
  } as const;
  const [planId] = await growGarden(a.http, { ...choice, stock: [0, 1], prices: [0], remark: 'Hedgehog corner' });
  await computeByHand(api, [planId ?? '']);
  await asAdmin(
    api,
    `WITH f AS (INSERT INTO files (garden_id, id, name, media_type, byte_count, sha256, content) VALUES ($1, gen_random_uuid(), 'plan.pdf', 'application/pdf', 4, encode(sha256('%PDF'), 'hex'), '%PDF') RETURNING id)
     INSERT INTO documents (garden_id, id, plan_id, state, options, sha256, pages, engine_version, file_id, finished_at)
     SELECT $1, gen_random_uuid(), $2, 'ready', '{"kind": "planBook", "language": "en", "paper": "a4", "units": "metric"}', encode(sha256('%PDF'), 'hex'), 1, 'x', id, now() FROM f`,
    [a.gardenId, planId],
  );
  const [document] = await asAdmin<{ id: string }>(api, 'SELECT id FROM documents');
  const [photo] = await asAdmin<{ id: string; build_id: string }>(api, 'SELECT id, build_id FROM photos');
  const exportId = await packed(api, a.gardenId, a.http);
  files = [`/v1/documents/${document?.id}/file`, `/v1/builds/${photo?.build_id}/photos/${photo?.id}/file`, `/v1/exports/${exportId}/file`];
  insider = await api.person(a.gardenId, ['coordinator']);
  const outsider = await api.person(b.gardenId, ['coordinator']);
  strangers = [
    ['a key of another garden', b.http],
    ['a coordinator of another garden', outsider.http],
    ['the same person, who claims to be in the garden', api.as(outsider.token)],
  ];
});
afterAll(() => api.stop());

describe('the files of a garden', () => {
  it('S10: are read by those of the garden', async () => {
    for (const path of files) for (const who of [a.http, insider.http]) expect([path, (await bytesOf(who, path)).status]).toEqual([path, 200]);
  });

  it('S10: are not there for another garden, neither as such nor under a tag that is known', async () => {
    for (const [name, who] of strangers)
      for (const path of files) {
        const [tag] = [(await a.http.get(path).buffer(false)).headers['etag'] as string];
        const plain = await who.get(path).set('Lathwork-Garden', b.gardenId);
        const tagged = await who.get(path).set('Lathwork-Garden', b.gardenId).set('If-None-Match', tag);
        expect([name, path, plain.status, tagged.status]).toEqual([name, path, 404, 404]);
        const claimed = await who.get(path).set('Lathwork-Garden', a.gardenId);
        expect([name, path, [403, 404].includes(claimed.status)]).toEqual([name, path, true]);
      }
    for (const path of files) expect([path, (await api.anyone.get(path)).status]).toEqual([path, 401]);
  });

  it('S10: an address opens nothing by itself: a session that has ended reads nothing, and no cache may keep the bytes', async () => {
    const gone = await api.person(a.gardenId, ['coordinator']);
    const [path] = files;
    const first = await gone.http.get(path ?? '').buffer(false);
    expect([first.status, first.headers['cache-control']]).toEqual([200, expect.stringMatching(/no-store|private/)]);
    await asAdmin(api, 'UPDATE account_sessions SET revoked_at = now() WHERE account_id = $1', [gone.accountId]);
    expect((await gone.http.get(path ?? '')).status).toBe(401);
  });

  it('S10: an export holds nothing of another garden', async () => {
    const names = [...(await filesOf(await exported(api, b.gardenId, b.http))).values()].join('\n');
    expect(names).toContain(b.gardenId);
    expect(names).not.toContain(a.gardenId);
    expect(names).not.toContain('Hedgehog');
  });
});

describe('jobs, logs and repeats', () => {
  it('S10: the payload of a job is the garden and the id, and nothing that anybody wrote', async () => {
    const jobs = await asAdmin<{ payload: Record<string, unknown> }>(api, 'SELECT payload FROM graphile_worker._private_jobs');
    expect(jobs.length).toBeGreaterThan(1);
    for (const { payload } of jobs) {
      expect(Object.keys(payload).filter((key) => !['gardenId', 'id', 'traceparent', 'requestId'].includes(key))).toEqual([]);
      expect([a.gardenId, b.gardenId]).toContain(payload['gardenId']);
    }
  });

  it('S10: the log tells of requests and of nothing that they carry', () => {
    const text = lines.join('\n');
    expect(lines.length).toBeGreaterThan(10);
    expect(text).not.toMatch(/Hedgehog|39\.93|example\.org/);
  });

  it('S10: an answer that is kept for repeats is given to the credential that got it, in its own garden', async () => {
    const [mine, theirs] = [await a.http.post('/v1/exports', { withFiles: false }, 'same'), await b.http.post('/v1/exports', { withFiles: false }, 'same')];
    expect([mine.status, theirs.status, theirs.headers['idempotency-replayed']]).toEqual([202, 202, undefined]);
    expect((theirs.body as { id: string }).id).not.toBe((mine.body as { id: string }).id);
  });
});
