import { expect, test } from '@jest/globals';
import type { LathworkClient, Plan, Schemas } from '@lathwork/client';
import { fakeApi, json } from './fake-api.js';

// The type check of the tests is the test: each line below that must not compile says so, and fails when it does.
const never = async (api: LathworkClient): Promise<void> => {
  const plan: Plan = await api.get('/v1/plans/{id}', { params: { path: { id: 'x' } } });
  const site: Schemas['Site'] = await api.update('/v1/sites/{id}', { id: 'x' }, (was) => ({ shadedFrac: was.shadedFrac / 2 }));
  const nothing: undefined = await api.delete('/v1/keys/{id}', { params: { path: { id: 'x' } } });
  const file: Uint8Array = await api.bytes('/v1/documents/{id}/file', { params: { path: { id: 'x' } } });
  for await (const build of api.items('/v1/builds')) plan.id = build.id;
  // @ts-expect-error an address that the API does not have
  await api.get('/v1/nothing');
  // @ts-expect-error a file is no record: bytes() and text() are for files
  await api.get('/v1/documents/{id}/file', { params: { path: { id: 'x' } } });
  // @ts-expect-error a record is no file
  await api.bytes('/v1/plans/{id}', { params: { path: { id: 'x' } } });
  // @ts-expect-error a method that the address does not have
  await api.patch('/v1/plans');
  // @ts-expect-error the id is missing
  await api.get('/v1/plans/{id}');
  // @ts-expect-error the body is missing
  await api.post('/v1/plans');
  // @ts-expect-error a field that the request does not have
  await api.post('/v1/plans', { body: { buildId: 'x', asof: 'tomorrow' } });
  // @ts-expect-error a filter that the list does not have
  await api.get('/v1/plans', { params: { query: { colour: 'red' } } });
  // @ts-expect-error not a list
  api.items('/v1/gardens/current');
  // @ts-expect-error the change has a value of the wrong kind
  await api.update('/v1/sites/{id}', { id: 'x' }, { name: 7 });
  // @ts-expect-error a change must name the version it changes: update() does
  await api.patch('/v1/sites/{id}', { params: { path: { id: 'x' } }, body: { name: 'x' } });
  // @ts-expect-error the number has another name
  void [site.shadedPct, nothing, file];
};

test('types follow the document, and an address that is typed is the address that is asked', async () => {
  const { api, sent } = fakeApi([json(200, { state: 'ready' })]);
  const plan = await api.get('/v1/plans/{id}', { params: { path: { id: 'a/b' } } });
  const state: 'computing' | 'ready' | 'failed' = plan.state;
  expect([state, sent[0]?.path]).toEqual(['ready', '/v1/plans/a%2Fb']);
  expect(never).toBeInstanceOf(Function);
});
