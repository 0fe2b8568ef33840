import { expect, test } from '@jest/globals';
import { ConnectionError, ProblemError } from '@lathwork/client';
import { fakeApi, json, problem } from './fake-api.js';

const SITE = '0190a000-0000-7000-8000-000000000001';
const caught = async (work: Promise<unknown>): Promise<unknown> =>
  work.then(
    () => undefined,
    (error: unknown) => error,
  );

test('a key is sent as bearer, and the parameters land in path and query', async () => {
  const { api, sent } = fakeApi([json(200, { id: SITE }), json(200, { items: [], next: null })]);
  expect(await api.get('/v1/sites/{id}', { params: { path: { id: SITE } } })).toEqual({ id: SITE });
  await api.get('/v1/stock', { params: { query: { limit: 5, free: true } } });
  expect(sent.map((one) => `${one.method} ${one.path}${one.query}`)).toEqual([`GET /v1/sites/${SITE}`, 'GET /v1/stock?limit=5&free=true']);
  expect(sent[0]?.headers.get('authorization')).toBe('Bearer lw_test');
  expect(sent[0]?.headers.has('lathwork-garden')).toBe(false);
  expect(sent[0]?.headers.has('idempotency-key')).toBe(false);
});

test('a person is sent as session and garden; other credentials make another client and leave the first as it was', async () => {
  const { api, sent } = fakeApi([json(200, {}), json(200, {}), json(200, {})]);
  const person = api.as({ key: undefined, session: 'lws_person', garden: 'garden-1' });
  await person.get('/v1/gardens/current');
  await person.as({ garden: 'garden-2' }).get('/v1/gardens/current');
  await api.get('/v1/gardens/current');
  expect(sent.map((one) => [one.headers.get('authorization'), one.headers.get('lathwork-garden')])).toEqual([
    ['Bearer lws_person', 'garden-1'],
    ['Bearer lws_person', 'garden-2'],
    ['Bearer lw_test', null],
  ]);
});

test('creating requests carry a key of their own, the caller may give one, and an operation that takes none gets none', async () => {
  const build = { buildId: SITE };
  const archive = { params: { path: { id: SITE }, header: { 'If-Match': '"1"' } } };
  const { api, sent } = fakeApi([json(201, {}), json(201, {}), json(201, {}), json(200, {})]);
  await api.post('/v1/plans', { body: build });
  await api.post('/v1/plans', { body: build });
  await api.post('/v1/plans', { body: build, params: { header: { 'Idempotency-Key': 'mine' } } });
  await api.post('/v1/sites/{id}/archive', archive);
  expect(sent.map((one) => one.headers.get('idempotency-key'))).toEqual(['key-1', 'key-2', 'mine', null]);
  expect(sent[3]?.headers.get('if-match')).toBe('"1"');
});

test('a refusal becomes an error with everything the problem says', async () => {
  const errors = [{ pointer: '/latitudeDeg', code: 'out-of-range', detail: 'Must be -90 to 90.' }];
  const more = { errors, requestId: 'r-1', builds: ['b-1'] };
  const { api } = fakeApi([problem(422, 'validation-failed', more, { 'retry-after': '7' })]);
  const error = (await caught(api.get('/v1/stock', { params: { query: { kind: 'door' } } }))) as ProblemError;
  expect(error).toBeInstanceOf(ProblemError);
  expect(error).toMatchObject({
    status: 422,
    type: '/v1/problems/validation-failed',
    key: 'validation-failed',
    title: 'Title of validation-failed',
    detail: 'Detail of validation-failed.',
    remedy: 'Mend it.',
    requestId: 'r-1',
    retryAfterS: 7,
    errors,
    asked: { method: 'GET', path: '/v1/stock' },
  });
  expect(error.body['builds']).toEqual(['b-1']);
  expect(error.message).toBe('GET /v1/stock: 422 Title of validation-failed. Detail of validation-failed.\n    /latitudeDeg: Must be -90 to 90.');
});

test('what is no problem, as a gateway answers, is an error all the same', async () => {
  const { api } = fakeApi([new Response('<html>teapot</html>', { status: 418, headers: { 'x-request-id': 'r-9' } })]);
  const error = await caught(api.get('/v1/gardens/current'));
  expect(error).toMatchObject({ status: 418, type: 'about:blank', errors: [], requestId: 'r-9', retryAfterS: null, remedy: null });
});

test('an answer without a body is undefined; one that breaks off while it is read is a connection error', async () => {
  const broken = new ReadableStream({
    start(stream) {
      stream.enqueue(new TextEncoder().encode('{"id": '));
      stream.error(new Error('socket hang up'));
    },
  });
  const { api } = fakeApi([new Response(null, { status: 204 }), new Response(broken, { status: 200 })]);
  expect(await api.delete('/v1/keys/{id}', { params: { path: { id: SITE } } })).toBeUndefined();
  const error = await caught(api.get('/v1/gardens/current'));
  expect(error).toBeInstanceOf(ConnectionError);
  expect(error).toMatchObject({ asked: { method: 'GET', path: '/v1/gardens/current' } });
});

test('a file comes as bytes or text, whatever is in it', async () => {
  const csv = 'tag,kind\r\n"EX-1",door\r\n';
  const { api } = fakeApi([new Response(csv, { headers: { 'content-type': 'text/csv' } }), new Response(new Uint8Array([0, 255])), new Response('')]);
  const file = () => ['/v1/documents/{id}/file', { params: { path: { id: SITE } } }] as const;
  expect(await api.text(...file())).toBe(csv);
  expect(await api.bytes(...file())).toEqual(new Uint8Array([0, 255]));
  expect(await api.text(...file())).toBe('');
});

test('a file goes as it is, with its own media type, and is still whole when it is sent again', async () => {
  const bytes = new Uint8Array([0x89, 0x50, 0x4e, 0x47, 0, 255]);
  const seen: [string | null, Uint8Array][] = [];
  const fetch = async (request: Request): Promise<Response> => {
    seen.push([request.headers.get('content-type'), new Uint8Array(await request.arrayBuffer())]);
    if (seen.length === 1) throw new TypeError('fetch failed');
    return json(201, {});
  };
  const { api } = fakeApi([], { fetch });
  const upload = api.post as (path: string, init: object) => Promise<unknown>;
  const header = { 'Idempotency-Key': 'photo-1' };
  await upload('/v1/stock/{id}/photos', { params: { path: { id: SITE }, header }, body: new Blob([bytes], { type: 'image/png' }) });
  expect(seen).toEqual([
    ['image/png', bytes],
    ['image/png', bytes],
  ]);
});

test('the client underneath gives headers, and throws all the same', async () => {
  const { api } = fakeApi([json(201, { id: SITE }, { etag: '"1"', location: `/v1/sites/${SITE}` }), problem(404, 'not-found')]);
  const { data, response } = await api.http.POST('/v1/plans', { body: { buildId: SITE } });
  expect([data?.id, response.headers.get('location')]).toEqual([SITE, `/v1/sites/${SITE}`]);
  await expect(api.http.GET('/v1/gardens/current')).rejects.toMatchObject({ key: 'not-found' });
});
