import { createHash } from 'node:crypto';
import { createServer, type IncomingMessage, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { setTimeout as sleep } from 'node:timers/promises';
import { afterAll, beforeAll, describe, expect, test } from '@jest/globals';
import type { DocumentRequest } from '@lathwork/model';
import pg from 'pg';
import { Database } from '../../../apps/api/src/platform/database/database.js';
import { FileStore } from '../../../apps/api/src/platform/files/file-store.js';
import { ReportClient } from '../../../apps/api/src/platform/report-client/report-client.js';
import { REPORT_SECRET, startApi, type TestApi } from '../../support/api-app.js';
import { ProbeModule } from '../../support/platform-probe.js';

let api: TestApi;
let admin: pg.Client;
beforeAll(async () => {
  api = await startApi({ extra: [ProbeModule], jobs: true });
  admin = new pg.Client({ connectionString: api.database.adminUrl });
  await admin.connect();
});
afterAll(async () => {
  await admin.end();
  await api.stop();
});

describe('database', () => {
  test('cut connections: requests work again without a restart, and no 2xx is given for a write that is not there', async () => {
    const garden = await api.garden();
    const acknowledged: string[] = [];
    let going = true;
    const writers = Array.from({ length: 4 }, async (_one, writer) => {
      for (let at = 0; going; at += 1) {
        const name = `w${writer}-${at}`;
        const { status } = await garden.http.post('/v1/probe', { name, elevationM: 1 });
        expect([201, 500, 503]).toContain(status);
        if (status === 201) acknowledged.push(name);
      }
    });
    for (let cut = 1; cut <= 6; cut += 1) {
      for (const until = Date.now() + 10_000; acknowledged.length < cut * 5; await sleep(5))
        if (Date.now() > until) throw new Error(`no write came through after cut ${cut - 1}`);
      await admin.query('SELECT pg_terminate_backend(pid) FROM pg_stat_activity WHERE datname = current_database() AND pid <> pg_backend_pid()');
    }
    going = false;
    await Promise.all(writers);
    const { rows } = await admin.query('SELECT name FROM sites');
    const there = new Set(rows.map(({ name }: { name: string }) => name));
    expect(acknowledged.length).toBeGreaterThanOrEqual(30);
    expect(acknowledged.filter((name) => !there.has(name))).toEqual([]);
    await garden.http.get('/v1/probe').expect(200);
    for (const until = Date.now() + 10_000; (await api.anyone.get('/readyz')).status !== 200; await sleep(100))
      if (Date.now() > until) throw new Error('not ready again');
  });
});

describe('readiness', () => {
  test('without a database: alive, not ready, problems instead of faults', async () => {
    const lonely = await startApi();
    const garden = await lonely.garden();
    await lonely.database.drop();
    await lonely.anyone.get('/livez').expect(200);
    const started = performance.now();
    const lost = async (): Promise<boolean> => (await lonely.anyone.get('/readyz')).body.database === 'fail';
    while (!(await lost()) && performance.now() - started < 5000) await sleep(50);
    expect((await lonely.anyone.get('/readyz').expect(503)).body).toMatchObject({ database: 'fail', migrations: 'fail', queue: 'fail' });
    expect(performance.now() - started).toBeLessThan(5000);
    const { status, body, headers } = await garden.http.get('/v1/sites');
    expect([status, body.type, headers['retry-after']]).toEqual([503, '/v1/problems/unavailable', '2']);
    await lonely.app.close();
  });
});

describe('files', () => {
  test('are kept whole, apart, and within the quota', async () => {
    const [garden, other] = [await api.garden(), await api.garden()];
    const [database, store] = [api.get(Database), api.get(FileStore)];
    const content = new Uint8Array([1, 2, 3]);
    const put = (bytes: Uint8Array) =>
      database.inTransaction(garden.actor, (db) => store.put(db, garden.gardenId, { name: 'a.bin', mediaType: 'application/octet-stream', content: bytes }));
    const stored = await put(content);
    expect(stored).toMatchObject({ byteCount: 3, sha256: createHash('sha256').update(content).digest('hex') });
    expect([...((await database.readSnapshot(garden.actor, (db) => store.read(db, stored.id))) ?? [])]).toEqual([1, 2, 3]);
    expect(await database.readSnapshot(other.actor, (db) => store.read(db, stored.id))).toBeNull();
    await admin.query('UPDATE gardens SET file_quota_byte_count = 10 WHERE id = $1', [garden.gardenId]);
    const outcomes = await Promise.allSettled(Array.from({ length: 6 }, () => put(new Uint8Array(3))));
    expect(outcomes.filter(({ status }) => status === 'fulfilled')).toHaveLength(2);
    expect(outcomes.filter((one) => one.status === 'rejected').map(({ reason }) => (reason as { key: string }).key)).toEqual(
      Array.from({ length: 4 }, () => 'quota-exceeded'),
    );
  });
});

describe('report client', () => {
  const PDF = Buffer.from('%PDF-1.7 probe');
  const GOOD = { 'x-pages': '3', 'x-sha256': createHash('sha256').update(PDF).digest('hex'), 'x-engine-version': 'probe 1' };

  const against = async (
    answer: (request: IncomingMessage, response: ServerResponse) => void,
    work: (client: ReportClient) => Promise<void>,
    timeoutMs = 5000,
  ): Promise<void> => {
    const server = createServer(answer).listen(0, '127.0.0.1');
    await new Promise((resolve) => server.once('listening', resolve));
    const { port } = server.address() as AddressInfo;
    await work(new ReportClient({ ...api.config, reportUrl: `http://127.0.0.1:${port}`, reportTimeoutMs: timeoutMs }));
    server.closeAllConnections();
    server.close();
  };
  const make = (client: ReportClient) => client.make({ options: { kind: 'planBook' } } as DocumentRequest);

  test('sends the plan with the secret and takes the bytes with what is said of them', () =>
    against(
      (request, response) => {
        expect([request.method, request.url, request.headers.authorization]).toEqual(['POST', '/documents', `Bearer ${REPORT_SECRET}`]);
        response.writeHead(200, { 'Content-Type': 'application/pdf', ...GOOD }).end(PDF);
      },
      async (client) => {
        const made = await make(client);
        expect(made).toMatchObject({ pages: 3, sha256: GOOD['x-sha256'], engineVersion: 'probe 1' });
        expect(Buffer.from(made.pdf).equals(PDF)).toBe(true);
      },
    ));

  test.each([
    ['bytes that are not those of the hash', 200, { ...GOOD, 'x-sha256': 'a'.repeat(64) }, PDF, 'report-refused'],
    ['no page count', 200, { ...GOOD, 'x-pages': 'many' }, PDF, 'report-refused'],
    ['something that is no PDF', 200, GOOD, Buffer.from('<html>'), 'report-refused'],
    ['a refusal of the plan', 422, {}, Buffer.from('{"title":"Cannot be set","detail":"no glyph"}'), 'document-refused'],
    ['a mistake', 500, {}, Buffer.from('stack'), 'report-refused'],
    ['a full queue', 429, {}, Buffer.from(''), 'report-unavailable'],
    ['a redirect elsewhere', 302, { Location: 'http://127.0.0.1:9/' }, Buffer.from(''), 'report-unavailable'],
  ] as const)('%s is told as a problem', (_name, status, headers, body, key) =>
    against(
      (_request, response) => void response.writeHead(status, headers).end(body),
      async (client) => expect(make(client)).rejects.toMatchObject({ key }),
    ),
  );

  test('silence ends with the time limit, a closed port at once', async () => {
    await against(
      () => undefined,
      async (client) => expect(make(client)).rejects.toMatchObject({ key: 'timed-out' }),
      200,
    );
    await expect(make(new ReportClient({ ...api.config, reportUrl: 'http://127.0.0.1:9' }))).rejects.toMatchObject({ key: 'report-unavailable' });
  });
});
