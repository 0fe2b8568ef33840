import type { AddressInfo } from 'node:net';
import { afterAll, beforeAll, describe, expect, test } from '@jest/globals';
import type { ReportApp } from '../../apps/report/src/app.js';
import { createReportServer } from '../../apps/report/src/http/server.js';
import { BoundedQueue, QueueFullError } from '../../apps/report/src/print/queue.js';
import { RenderTimeoutError } from '../../apps/report/src/print/render.js';
import { reportApp, sampleRequest, SECRET } from './support.js';

let app: ReportApp;
let base = '';
const listen = async (server: ReportApp['server']): Promise<string> => {
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  return `http://127.0.0.1:${(server.address() as AddressInfo).port}`;
};
beforeAll(async () => {
  app = reportApp();
  base = await listen(app.server);
});
afterAll(() => app.stop(), 30_000);

const post = (body: string, headers: Record<string, string> = { authorization: `Bearer ${SECRET}` }, to = base): Promise<Response> =>
  fetch(`${to}/documents`, { method: 'POST', body, headers: { 'content-type': 'application/json', ...headers } });

describe('the report server', () => {
  test('makes a document and says pages, hash and engine', async () => {
    const answer = await post(JSON.stringify(sampleRequest()));
    expect(answer.status).toBe(200);
    expect(answer.headers.get('content-type')).toBe('application/pdf');
    expect(Number(answer.headers.get('x-pages'))).toBeGreaterThan(20);
    expect(answer.headers.get('x-sha256')).toMatch(/^[0-9a-f]{64}$/);
    expect(answer.headers.get('x-engine-version')).toMatch(/^report-\d.*chromium-\d.*fonts-/);
    expect(Buffer.from(await answer.arrayBuffer()).toString('latin1', 0, 8)).toBe('%PDF-1.7');
  }, 60_000);

  test.each([
    ['no secret', {}],
    ['a wrong secret', { authorization: 'Bearer nonsense' }],
    ['the secret without its scheme', { authorization: SECRET }],
  ])('refuses %s', async (_name, headers) => {
    const answer = await post('{}', headers as Record<string, string>);
    expect(answer.status).toBe(401);
    expect(answer.headers.get('content-type')).toBe('application/problem+json');
  });

  test('names what is wrong in a bad body', async () => {
    expect((await post('not json')).status).toBe(400);
    const request = sampleRequest() as unknown as Record<string, unknown>;
    const unknownField = await post(JSON.stringify({ ...request, extra: 1 }));
    expect(unknownField.status).toBe(400);
    expect(JSON.stringify(await unknownField.json())).toContain('/extra');
    const badDate = await post(JSON.stringify({ ...request, datedOn: '2026-02-30' }));
    expect(badDate.status).toBe(400);
    expect(JSON.stringify(await badDate.json())).toContain('/datedOn');
  });

  test('refuses a body over the limit', async () => {
    const small = reportApp({ REPORT_BODY_LIMIT_BYTES: '2048' });
    const address = await listen(small.server);
    const answer = await post('x'.repeat(5000), undefined, address);
    expect(answer.status).toBe(413);
    await small.stop();
  });

  test('says which character cannot be set', async () => {
    const answer = await post(JSON.stringify(sampleRequest({ names: { garden: '\u5927 garden' } })));
    expect(answer.status).toBe(422);
    expect(((await answer.json()) as { characters: string[] }).characters[0]).toContain('U+5927');
  }, 30_000);

  test('answers a full queue with 503 and a slow document with 504', async () => {
    for (const [error, status] of [
      [new QueueFullError(3), 503],
      [new RenderTimeoutError(), 504],
      [new Error('inner words'), 500],
    ] as const) {
      const server = createReportServer({
        secret: SECRET,
        bodyLimitBytes: 1e7,
        render: () => Promise.reject(error),
        isReady: () => Promise.resolve(false),
        log: () => undefined,
      });
      const address = await listen(server);
      const answer = await post(JSON.stringify(sampleRequest()), undefined, address);
      expect(answer.status).toBe(status);
      if (status === 503) expect(answer.headers.get('retry-after')).toBe('5');
      expect(await answer.text()).not.toContain('inner words');
      expect((await fetch(`${address}/readyz`)).status).toBe(503);
      await new Promise((resolve) => server.close(resolve));
    }
  });

  test('tells that it lives and is ready', async () => {
    expect((await fetch(`${base}/livez`)).status).toBe(200);
    expect((await fetch(`${base}/readyz`)).status).toBe(200);
    expect((await fetch(`${base}/elsewhere`)).status).toBe(404);
    expect((await fetch(`${base}/documents`)).status).toBe(405);
  });
});

test('the queue runs so many at once, lets so many wait, and refuses the next', async () => {
  const queue = new BoundedQueue(1, 1);
  const order: string[] = [];
  let release = (): void => undefined;
  const gate = new Promise<void>((resolve) => {
    release = resolve;
  });
  const first = queue.run(async () => {
    await gate;
    order.push('first');
  });
  const second = queue.run(() => Promise.resolve(order.push('second')));
  await expect(queue.run(() => Promise.resolve(order.push('third')))).rejects.toThrow(QueueFullError);
  release();
  await Promise.all([first, second]);
  expect(order).toEqual(['first', 'second']);
  expect(queue.load).toEqual({ running: 0, waiting: 0 });
});
