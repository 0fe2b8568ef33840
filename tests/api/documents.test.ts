import { createHash } from 'node:crypto';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { afterAll, beforeAll, describe, expect, it, jest } from '@jest/globals';
import { DocumentRequestSchema, type DocumentRequest, type PlanInputs } from '@lathwork/model';
import { Ajv2020 } from 'ajv/dist/2020.js';
import addFormats from 'ajv-formats';
import { ComputePool } from '../../apps/api/src/platform/compute/compute-pool.js';
import { REPORT_SECRET, startApi, type TestApi, type TestGarden } from '../support/api-app.js';
import { cold, firstBuild, makeExample, type ExampleIds } from '../support/example-requests.js';
import { sampleResult } from '../support/sample-result.js';
import { seedStations } from '../support/stations.js';

/** A report app that sets nothing: it notes what it is asked and answers as it is told. */
interface FakeReport {
  server: Server;
  url: string;
  asked: { request: DocumentRequest; authorization: string | undefined }[];
  answer: 'pdf' | 'refuse' | 'lie';
}

const PDF = Buffer.from('%PDF-1.7\n% three pages, in a manner of speaking\n%%EOF\n');
const sha256 = (bytes: Uint8Array): string => createHash('sha256').update(bytes).digest('hex');

const startReport = async (): Promise<FakeReport> => {
  const fake: FakeReport = { server: createServer(), url: '', asked: [], answer: 'pdf' };
  fake.server.on('request', (request, response) => {
    const chunks: Buffer[] = [];
    request.on('data', (chunk: Buffer) => chunks.push(chunk));
    request.on('end', () => {
      // The API asks now and then whether the report app is well.
      if (request.method !== 'POST') {
        response.end('{}');
        return;
      }
      fake.asked.push({ request: JSON.parse(Buffer.concat(chunks).toString('utf8')) as DocumentRequest, authorization: request.headers.authorization });
      if (fake.answer === 'refuse') {
        response.writeHead(422, { 'Content-Type': 'application/problem+json' }).end(JSON.stringify({ title: 'A note without words', detail: 'x.y' }));
        return;
      }
      const hash = fake.answer === 'lie' ? '0'.repeat(64) : sha256(PDF);
      response.writeHead(200, { 'Content-Type': 'application/pdf', 'X-Pages': '3', 'X-Sha256': hash, 'X-Engine-Version': 'fake-1' }).end(PDF);
    });
  });
  await new Promise<void>((resolve) => fake.server.listen(0, '127.0.0.1', resolve));
  fake.url = `http://127.0.0.1:${(fake.server.address() as AddressInfo).port}`;
  return fake;
};

interface PlanDocument {
  id: string;
  state: string;
  pages: number | null;
  sha256: string | null;
  problem: { type: string; detail: string } | null;
  links: { file: string | null };
}

let report: FakeReport;
let api: TestApi;
let garden: TestGarden;
let ids: ExampleIds;
let planId: string;

const wanted = { kind: 'planBook', language: 'en', paper: 'a4', units: 'metric' };
const ask = (changes: object = {}) => garden.http.post('/v1/documents', { planId, ...wanted, ...changes }).set('Prefer', 'wait=20');

beforeAll(async () => {
  report = await startReport();
  api = await startApi({ jobs: true, env: { REPORT_URL: report.url } });
  await seedStations(api.database.ownerUrl);
  garden = await api.garden(undefined, { name: 'Yarrow Bend', invented: true });
  ids = await makeExample(garden.http);
  jest.spyOn(api.get(ComputePool), 'compute').mockImplementation((inputs: PlanInputs) =>
    Promise.resolve({
      result: { ...sampleResult(inputs), planId: inputs.planId, revision: inputs.revision, reviewBlocked: false, notes: [] },
      timingsMs: {},
    }),
  );
  const plan = await garden.http.post('/v1/plans', { buildId: ids.buildId, asOf: '2026-03-15' }).set('Prefer', 'wait=20');
  planId = (plan.body as { id: string }).id;
});
afterAll(async () => {
  await api.stop();
  await new Promise((resolve) => report.server.close(resolve));
});

describe('having a plan set for printing', () => {
  it('is accepted at once, made as a job, and given out byte for byte', async () => {
    const accepted = await garden.http.post('/v1/documents', { planId, ...wanted });
    expect([accepted.status, (accepted.body as PlanDocument).state]).toEqual([202, 'queued']);
    const path = accepted.headers['location'] as string;
    let document = accepted.body as PlanDocument;
    for (let tries = 0; tries < 100 && !['ready', 'failed'].includes(document.state); tries += 1) {
      await new Promise((resolve) => setTimeout(resolve, 50));
      document = (await garden.http.get(path)).body as PlanDocument;
    }
    expect(document).toMatchObject({ state: 'ready', pages: 3, sha256: sha256(PDF), engineVersion: 'fake-1', links: { file: `${path}/file` } });
    const file = await garden.http.get(`${path}/file`).buffer(true);
    expect(file.status).toBe(200);
    expect(file.headers['content-type']).toBe('application/pdf');
    expect(file.headers['content-disposition']).toMatch(/^attachment; filename="plan-[0-9A-F]{6}-R1-a4-metric\.pdf"$/);
    expect(file.headers['etag']).toBe(`"${sha256(PDF)}"`);
    expect(Buffer.compare(file.body as Buffer, PDF)).toBe(0);
    const again = await garden.http.get(`${path}/file`).set('If-None-Match', `"${sha256(PDF)}"`);
    expect([again.status, again.text]).toEqual([304, '']);
  });

  it('sends the report app one complete request: the finished plan, and the names that are joined now', async () => {
    report.asked = [];
    expect((await ask({ paper: 'letter', units: 'us' })).status).toBe(201);
    expect(report.asked).toHaveLength(1);
    const { request, authorization } = report.asked[0] ?? { request: null, authorization: undefined };
    expect(authorization).toBe(`Bearer ${REPORT_SECRET}`);
    const ajv = new Ajv2020({ strict: false, allErrors: true });
    (addFormats as unknown as (to: Ajv2020) => void)(ajv);
    const fits = ajv.compile(DocumentRequestSchema);
    fits(request);
    expect(fits.errors).toBeNull();
    expect(request).toMatchObject({
      options: { ...wanted, paper: 'letter', units: 'us' },
      names: { garden: 'Yarrow Bend', build: firstBuild().name, site: cold.site.name, drawnBy: 'first', checkedBy: null, invented: true },
      status: 'draft',
      stale: [],
      inputs: { planId },
      result: { planId },
    });
  });

  it('prints who reviewed the plan, and what has changed since', async () => {
    const reviewer = api.as(await api.keyOf(garden.gardenId, ['plans:review']));
    await reviewer.post(`/v1/plans/${planId}/reviews`, { decision: 'reviewed', reviewer: 'Sage' });
    const etag = (await garden.http.get(`/v1/sites/${ids.siteId}`)).headers['etag'] as string;
    await garden.http.patch(`/v1/sites/${ids.siteId}`, etag, { shadedFrac: 0.4 });
    report.asked = [];
    await ask();
    expect(report.asked[0]?.request).toMatchObject({ status: 'reviewed', names: { checkedBy: 'Sage' }, stale: ['siteChanged'] });
  });

  it('ends with a problem when the report app refuses, without trying the same again', async () => {
    report.asked = [];
    report.answer = 'refuse';
    const document = (await ask()).body as PlanDocument;
    report.answer = 'pdf';
    expect(document).toMatchObject({ state: 'failed', pages: null, links: { file: null }, problem: { status: 422 } });
    expect(document.problem?.detail).toContain('A note without words');
    expect(report.asked).toHaveLength(1);
    expect((await garden.http.get(`/v1/documents/${document.id}/file`)).status).toBe(409);
  });

  it('does not believe bytes that are not what their hash says', async () => {
    report.answer = 'lie';
    const document = (await ask({}).set('Prefer', 'wait=1')).body as PlanDocument;
    expect(document.state).not.toBe('ready');
    report.answer = 'pdf';
  });

  it('is refused for a plan that is not there, not finished or of another garden', async () => {
    expect((await ask({ planId: '01900000-0000-7000-8000-000000000000' })).status).toBe(404);
    const other = await api.garden();
    expect((await other.http.post('/v1/documents', { planId, ...wanted })).status).toBe(404);
    expect((await ask({ paper: 'a3', language: 'la' })).body).toMatchObject({ errors: [{ pointer: '/language' }, { pointer: '/paper' }] });
  });

  it('shows its documents to its own garden only', async () => {
    const document = (await ask()).body as PlanDocument;
    const other = await api.garden();
    for (const path of ['', '/file']) expect((await other.http.get(`/v1/documents/${document.id}${path}`)).status).toBe(404);
    expect(((await other.http.get('/v1/documents')).body as { items: unknown[] }).items).toEqual([]);
    const { items } = (await garden.http.get(`/v1/documents?planId=${planId}&limit=100`)).body as { items: PlanDocument[] };
    expect(items.map(({ id }) => id)).toContain(document.id);
  });
});
