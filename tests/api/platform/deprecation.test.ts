import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { parseItem } from 'structured-headers';
import { Deprecates } from '../../../apps/api/src/platform/http/deprecation.js';
import { PublishedDocument } from '../../../apps/api/src/platform/http/docs.controller.js';
import { Metrics } from '../../../apps/api/src/platform/metrics/metrics.js';
import { startApi, type TestApi, type TestGarden } from '../../support/api-app.js';
import { ProbeModule } from '../../support/platform-probe.js';

type Json = Record<string, unknown>;
interface Gate {
  verdict(before: Json, after: Json, changes: string, today: Date): string[];
  NOTICE_DAYS: number;
}
const { verdict, NOTICE_DAYS } = (await import('../../../tools/contract/breaking.mjs' as string)) as Gate;

let api: TestApi;
let garden: TestGarden;
beforeAll(async () => {
  api = await startApi({ extra: [ProbeModule] });
  garden = await api.garden();
});
afterAll(() => api.stop());

const SINCE = Date.UTC(2026, 4, 1);
const SUNSET = Date.UTC(2026, 9, 31);

describe('an operation that will go away', () => {
  it('A33: answers with Deprecation, a later Sunset, and a link beside its own links', async () => {
    const { headers } = await garden.http.get('/v1/probe/old?limit=5').expect(200);
    const [since] = parseItem(String(headers['deprecation']));
    expect(since).toEqual(new Date(SINCE));
    expect(headers['sunset']).toBe('Sat, 31 Oct 2026 00:00:00 GMT');
    expect(Date.parse(String(headers['sunset']))).toBe(SUNSET);
    expect(headers['link']).toContain('rel="first"');
    expect(headers['link']).toContain('</v1/docs#deprecation>; rel="deprecation"; type="text/html"');
  });

  it('A33: says so when it refuses, too; others say nothing of the kind', async () => {
    const refused = await garden.http.get('/v1/probe/old?limit=0').expect(400);
    expect(refused.headers['deprecation']).toBe(`@${SINCE / 1000}`);
    const { headers } = await garden.http.get('/v1/probe').expect(200);
    expect([headers['deprecation'], headers['sunset']]).toEqual([undefined, undefined]);
  });

  it('A33: is marked in the description', () => {
    const { paths } = JSON.parse(api.get(PublishedDocument).text) as { paths: Record<string, Record<string, Json>> };
    const old = paths['/v1/probe/old']?.['get'];
    expect(old?.['deprecated']).toBe(true);
    expect(old?.['x-deprecated']).toEqual({ since: '2026-05-01', sunset: '2026-10-31', link: '/v1/docs#deprecation' });
    expect(Object.keys(((old?.['responses'] as Record<string, Json>)['200']?.['headers'] as Json) ?? {})).toEqual(
      expect.arrayContaining(['Deprecation', 'Sunset', 'Link']),
    );
    expect(
      Object.values(paths)
        .flatMap((item) => Object.values(item))
        .filter((one) => one['deprecated'] === true),
    ).toHaveLength(1);
  });

  it('A33: its use is counted by operation', async () => {
    const uses = async (): Promise<number> => {
      const { values } = await api.get(Metrics).deprecatedUses.get();
      return values.find(({ labels }) => labels['operation'] === 'listOldProbes')?.value ?? 0;
    };
    const before = await uses();
    for (let at = 0; at < 3; at += 1) await garden.http.get('/v1/probe/old').expect(200);
    await garden.http.get('/v1/probe').expect(200);
    expect(await uses()).toBe(before + 3);
  });

  it('A33: cannot be announced for less than 180 days', () => {
    expect(NOTICE_DAYS).toBe(180);
    expect(() => Deprecates({ since: '2026-05-01', sunset: '2026-10-27', link: '/v1/docs' })).toThrow('179 days');
    expect(() => Deprecates({ since: '2026-05-01', sunset: 'soon', link: '/v1/docs' })).toThrow('not a day');
    expect(Deprecates({ since: '2026-05-01', sunset: '2026-10-28', link: '/v1/docs' })).toBeInstanceOf(Function);
  });

  it('A33: is not removed before its day, unless a new major version says so', () => {
    const operation = { deprecated: true, 'x-deprecated': { since: '2026-05-01', sunset: '2026-10-31', link: '/v1/docs' }, responses: {} };
    const document = (version: string, paths: Json): Json => ({ info: { version }, paths });
    const released = document('1.2.0', { '/old': { get: operation } });
    const on = (day: string, next = document('1.3.0', {}), changes = ''): number => verdict(released, next, changes, new Date(`${day}T12:00:00Z`)).length;
    expect(on('2026-10-30')).toBeGreaterThan(0);
    expect(on('2026-10-31')).toBe(0);
    expect(on('2026-06-01', document('2.0.0', {}), '## 2.0.0\n| `operation-removed` | `GET /old` | a new list |\n')).toBe(0);
    expect(on('2026-06-01', document('2.0.0', {}))).toBeGreaterThan(0);
    const unannounced = document('1.2.0', { '/old': { get: { responses: {} } } });
    expect(verdict(unannounced, document('1.3.0', {}), '', new Date('2030-01-01')).length).toBeGreaterThan(0);
  });
});
