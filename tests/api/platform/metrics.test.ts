import { randomUUID } from 'node:crypto';
import { createServer, type IncomingHttpHeaders } from 'node:http';
import type { AddressInfo } from 'node:net';
import { setTimeout as sleep } from 'node:timers/promises';
import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import type { DocumentRequest } from '@lathwork/model';
import { Database } from '../../../apps/api/src/platform/database/database.js';
import { newId } from '../../../apps/api/src/platform/database/ids.js';
import { parseTraceparent } from '../../../apps/api/src/platform/http/trace.js';
import { enqueue, Tasks, type Job } from '../../../apps/api/src/platform/jobs/jobs.js';
import { JobRunner } from '../../../apps/api/src/platform/jobs/runner.js';
import { makeLog } from '../../../apps/api/src/platform/logging/log.js';
import { serveMetrics } from '../../../apps/api/src/platform/metrics/metrics-door.js';
import { Metrics } from '../../../apps/api/src/platform/metrics/metrics.js';
import { contexts } from '../../../apps/api/src/platform/http/context.js';
import { ReportClient } from '../../../apps/api/src/platform/report-client/report-client.js';
import { startApi, type TestApi, type TestGarden } from '../../support/api-app.js';

const TOKEN = 'metrics-token-of-the-test-run-0123456789';
/** The buckets of the HTTP conventions of OpenTelemetry for http.server.request.duration, in seconds. */
const OTEL_BUCKETS = ['0.005', '0.01', '0.025', '0.05', '0.075', '0.1', '0.25', '0.5', '0.75', '1', '2.5', '5', '7.5', '10', '+Inf'];

interface Line {
  msg: string;
  requestId?: string;
  traceId?: string;
  spanId?: string;
  route?: string | null;
  gardenId?: string | null;
  task?: string;
}

const lines: Line[] = [];
const received: IncomingHttpHeaders[] = [];
const report = createServer((request, response) => {
  if (request.url === '/documents') received.push(request.headers);
  request.resume();
  response.writeHead(422).end();
});
let api: TestApi;
let garden: TestGarden;
beforeAll(async () => {
  await new Promise<void>((resolve) => report.listen(0, '127.0.0.1', resolve));
  const { port } = report.address() as AddressInfo;
  const log = makeLog('info', { write: (line: string) => void lines.push(JSON.parse(line) as Line) });
  api = await startApi({ env: { METRICS_TOKEN: TOKEN, REPORT_URL: `http://127.0.0.1:${port}` }, log });
  garden = await api.garden();
});
afterAll(async () => {
  await api.stop();
  report.close();
});

const scrape = async (): Promise<string[]> => {
  const { text, headers } = await api.as(TOKEN).get('/metrics').expect(200);
  expect(headers['content-type']).toContain('text/plain');
  return text.split('\n').filter((line) => line && !line.startsWith('#'));
};
const seriesOf = (samples: readonly string[]): string[] => samples.map((sample) => sample.slice(0, sample.lastIndexOf(' '))).sort();
const valueOf = (samples: readonly string[], series: string): number =>
  Number(
    samples
      .find((sample) => sample.startsWith(`${series} `))
      ?.split(' ')
      .at(-1),
  );

describe('numbers', () => {
  it('A40: a thousand requests with ids, paths and methods of their own leave as many series as before', async () => {
    const everything = async (round: number): Promise<void> => {
      const id = randomUUID();
      await garden.http.get(`/v1/sites/${id}`).expect(404);
      await garden.http.get(`/v1/sites/${id.slice(2)}`).expect(400);
      await garden.http.get(`/v1/plans/${id}/inputs`).expect(404);
      await api.anyone.get(`/${id}/${round}`).expect(404);
      await api.anyone.get(`/v1/sites?canary=${id}`).expect(401);
      await api.anyone.get(`/v1/problems/${id}`).expect(404);
    };
    await everything(0);
    // The first look makes the series of looking itself.
    await scrape();
    const before = seriesOf(await scrape());
    for (let round = 1; round <= 170; round += 1) await everything(round);
    const after = await scrape();
    expect(seriesOf(after)).toEqual(before);
    expect(after.join('\n')).not.toMatch(/[0-9a-f]{8}-[0-9a-f]{4}/);
    const known = 'http_server_request_duration_seconds_count{http_request_method="GET",http_route="/v1/sites/:id",http_response_status_code="404"}';
    expect(valueOf(after, known)).toBe(171);
    const none = 'http_server_request_duration_seconds_count{http_request_method="GET",http_route="",http_response_status_code="404"}';
    expect(valueOf(after, none)).toBe(171);
  });

  it('A40: durations are in seconds, in the buckets of the conventions', async () => {
    const samples = await scrape();
    const buckets = samples.filter(
      (sample) => sample.startsWith('http_server_request_duration_seconds_bucket') && sample.includes('http_route="/v1/sites/:id"') && sample.includes('"404"'),
    );
    expect(buckets.map((sample) => /le="([^"]+)"/.exec(sample)?.[1])).toEqual(OTEL_BUCKETS);
    const counts = buckets.map((sample) => Number(sample.split(' ').at(-1)));
    expect([...counts].sort((a, b) => a - b)).toEqual(counts);
    // Seconds, not milliseconds: none of these took ten of them.
    expect(counts.at(-2)).toBe(counts.at(-1));
  });

  it('tell of the pool, the queue, refusals and readiness', async () => {
    await api.anyone.get('/readyz');
    const samples = await scrape();
    const used = valueOf(samples, 'db_client_connection_count{state="used"}');
    const idle = valueOf(samples, 'db_client_connection_count{state="idle"}');
    expect([used >= 0, idle >= 1, used + idle <= api.config.databasePool]).toEqual([true, true, true]);
    expect(valueOf(samples, 'db_client_connection_max')).toBe(api.config.databasePool);
    expect(valueOf(samples, 'db_client_connection_pending_requests')).toBe(0);
    expect(valueOf(samples, 'lathwork_queue_jobs{state="waiting"}')).toBe(0);
    expect(valueOf(samples, 'lathwork_queue_oldest_seconds')).toBe(0);
    expect(valueOf(samples, 'lathwork_ready{check="database"}')).toBe(1);
    expect(valueOf(samples, 'lathwork_ready{check="queue"}')).toBe(0);
  });

  it('are shown to nobody without the token, and where none is set there is no such address', async () => {
    await api.anyone.get('/metrics').expect(401);
    await garden.http.get('/metrics').expect(401);
    await api.as(`${TOKEN}x`).get('/metrics').expect(401);
    const without = await startApi();
    expect((await without.anyone.get('/metrics').expect(404)).body.type).toBe('/v1/problems/route-unknown');
    await without.stop();
  });

  it('have a port of their own on this machine alone, if wanted', async () => {
    const server = await serveMetrics(api.get(Metrics), 0);
    const { address, port } = server.address() as AddressInfo;
    expect(address).toBe('127.0.0.1');
    expect(await (await fetch(`http://127.0.0.1:${port}/metrics`)).text()).toContain('http_server_request_duration_seconds_bucket');
    expect((await fetch(`http://127.0.0.1:${port}/v1/sites`)).status).toBe(404);
    server.close();
    server.closeAllConnections();
  });
});

describe('traces', () => {
  const TRACE = '4bf92f3577b34da6a3ce929d0e0e4736';
  const PARENT = '00f067aa0ba902b7';

  it.each([
    [`00-${TRACE}-${PARENT}-01`, true],
    [`00-${TRACE}-${PARENT}-00`, true],
    [`cc-${TRACE}-${PARENT}-01-what-the-future-will-be`, true],
    [`ff-${TRACE}-${PARENT}-01`, false],
    [`00-${TRACE}-${PARENT}-01-more`, false],
    [`00-${'0'.repeat(32)}-${PARENT}-01`, false],
    [`00-${TRACE}-${'0'.repeat(16)}-01`, false],
    [`00-${TRACE.toUpperCase()}-${PARENT}-01`, false],
    [`00-${TRACE.slice(1)}-${PARENT}-01`, false],
    [`00-${TRACE}-${PARENT}`, false],
    ['', false],
    [`cc-${TRACE}-${PARENT}-01-${'x'.repeat(600)}`, false],
  ])('A40: "%s" is a traceparent: %s', (text, good) => expect(parseTraceparent(text) !== null).toBe(good));

  const lineOf = async (requestId: string, msg: string): Promise<Line> => {
    for (const until = Date.now() + 5000; ; await sleep(10)) {
      const line = lines.find((one) => one.requestId === requestId && one.msg === msg);
      if (line) return line;
      if (Date.now() > until) throw new Error(`no line "${msg}" of ${requestId}`);
    }
  };

  it('A40: a trace that comes in goes on in the log; a broken one is replaced by a new one', async () => {
    await garden.http.get('/v1/sites').set('X-Request-Id', 'trace-good').set('traceparent', `00-${TRACE}-${PARENT}-01`).expect(200);
    await garden.http.get('/v1/sites').set('X-Request-Id', 'trace-bad').set('traceparent', `00-${TRACE}-xyz-01`).expect(200);
    const [good, bad] = [await lineOf('trace-good', 'request'), await lineOf('trace-bad', 'request')];
    expect(good).toMatchObject({ traceId: TRACE, spanId: expect.stringMatching(/^[0-9a-f]{16}$/), route: '/v1/sites' });
    expect(good.spanId).not.toBe(PARENT);
    expect(bad.traceId).toMatch(/^[0-9a-f]{32}$/);
    expect(bad.traceId).not.toBe(TRACE);
  });

  it('S10: the line of a request names the garden it was for, and no other', async () => {
    const other = await api.garden();
    await garden.http.get('/v1/sites').set('X-Request-Id', 'garden-a').expect(200);
    await other.http.get('/v1/sites').set('X-Request-Id', 'garden-b').expect(200);
    await api.anyone.get('/v1/sites').set('X-Request-Id', 'garden-none').expect(401);
    const told = await Promise.all(['garden-a', 'garden-b', 'garden-none'].map((id) => lineOf(id, 'request')));
    expect(told.map(({ gardenId }) => gardenId)).toEqual([garden.gardenId, other.gardenId, null]);
  });

  it('A40: the request id stands in every problem, and is the one of the log', async () => {
    for (const [path, status] of [
      ['/v1/nowhere', 404],
      ['/v1/sites', 401],
    ] as const) {
      const { body, headers } = await api.anyone.get(path).expect(status);
      expect(body.requestId).toBe(headers['x-request-id']);
      await lineOf(body.requestId as string, 'request');
    }
  });

  it('A40: a job goes on with the trace and the request that asked for it, and so does what it asks of the report app', async () => {
    const client = api.get(ReportClient);
    api.get(Tasks).register('trace-probe', {
      run: (_job: Job, signal: AbortSignal) => client.make({ options: { kind: 'planBook' } } as DocumentRequest, signal).then(() => undefined),
      failed: () => Promise.resolve(),
    });
    const store = {
      requestId: 'asked-for-a-job',
      trace: { traceId: TRACE, spanId: PARENT, sampled: true },
      actor: garden.actor,
      path: '/v1/probe',
      query: new URLSearchParams(),
      cursorSecret: 's',
    };
    await contexts.run(store, () =>
      api.get(Database).inTransaction(garden.actor, (db) => enqueue(db, 'trace-probe', { gardenId: garden.gardenId, id: newId() })),
    );
    await api.get(JobRunner).start();
    const line = await lineOf('asked-for-a-job', 'job failed for good');
    expect(line).toMatchObject({ traceId: TRACE, task: 'trace-probe' });
    expect(received).toHaveLength(1);
    expect(received[0]?.['x-request-id']).toBe('asked-for-a-job');
    const sent = parseTraceparent(received[0]?.['traceparent'] as string);
    expect(sent).toEqual({ traceId: TRACE, parentId: line.spanId, sampled: true });
    expect(sent?.parentId).not.toBe(PARENT);
    for (let tries = 0; tries < 50 && !(await scrape()).some((one) => one.includes('task="trace-probe"')); tries += 1) await sleep(20);
    expect(valueOf(await scrape(), 'lathwork_job_duration_seconds_count{task="trace-probe",outcome="failed"}')).toBe(1);
  });
});
