import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import ICAL from 'ical.js';
import { unguardText } from '../../apps/api/src/platform/csv/csv.js';
import { startApi, type TestApi, type TestGarden } from '../support/api-app.js';
import { cold, make, makeExample, type ExampleIds } from '../support/example-requests.js';
import { ACCEPTED, REFUSED } from '../support/nasty-strings.js';
import { jpeg } from '../support/pictures.js';
import { csvRows } from '../support/spreadsheet.js';

let api: TestApi;
let garden: TestGarden;
let ids: ExampleIds;
let planId = '';

beforeAll(async () => {
  api = await startApi({ jobs: true });
  garden = await api.garden();
  ids = await makeExample(garden.http);
  const plan = await garden.http.post('/v1/plans', { buildId: ids.buildId }).set('Prefer', 'wait=60');
  if (plan.status !== 201) throw new Error(`the plan answered ${plan.status}: ${JSON.stringify(plan.body)}`);
  planId = plan.body.id as string;
}, 120_000);
afterAll(() => api.stop());

const [price = {}] = cold.prices as object[];
const fits = (length: number): string[] => ACCEPTED.filter((text) => text.length <= length);

describe('the corpus of texts', () => {
  it('S20: has at least two hundred, all different', () => {
    expect(new Set(ACCEPTED).size).toBe(ACCEPTED.length);
    expect(ACCEPTED.length).toBeGreaterThanOrEqual(200);
    expect(REFUSED.length).toBeGreaterThanOrEqual(20);
  });

  it('S20: each is taken as the name of a site and comes back the same, alone, in the list and on the map', async () => {
    const made = new Map<string, string>();
    for (const name of ACCEPTED) {
      const { id, body } = await make(garden.http, '/v1/sites', { ...cold.site, name });
      expect(body['name']).toBe(name);
      expect((await garden.http.get(`/v1/sites/${id}`)).body.name).toBe(name);
      made.set(id, name);
    }
    const listed = new Map<string, string>();
    for (let at = '/v1/sites?limit=100'; at;) {
      const { body } = await garden.http.get(at);
      for (const { id, name } of body.items as { id: string; name: string }[]) listed.set(id, name);
      at = body.next ? `/v1/sites?limit=100&cursor=${encodeURIComponent(body.next as string)}` : '';
    }
    const map = JSON.parse(
      (
        await garden.http
          .get('/v1/sites.geojson')
          .buffer(true)
          .parse((response, done) => {
            const chunks: Buffer[] = [];
            response.on('data', (chunk: Buffer) => chunks.push(chunk));
            response.on('end', () => done(null, Buffer.concat(chunks).toString('utf8')));
          })
      ).body as string,
    ) as { features: { id: string; properties: { name: string } }[] };
    const onMap = new Map(map.features.map(({ id, properties }) => [id, properties.name]));
    for (const [id, name] of made) expect([name, listed.get(id), onMap.get(id)]).toEqual([name, name, name]);
  }, 120_000);

  it('S20: each that fits is taken as a supplier and comes back the same from the table', async () => {
    const suppliers = fits(80);
    expect(suppliers.length).toBeGreaterThanOrEqual(200);
    const expected = new Map<string, string>();
    for (const supplier of suppliers) expected.set((await make(garden.http, '/v1/prices', { ...price, supplier })).id, supplier);
    const { text } = await garden.http.get('/v1/prices.csv');
    const rows = new Map(csvRows(text).map((row) => [row['id'] ?? '', row['supplier'] ?? '']));
    for (const [id, supplier] of expected) {
      expect([supplier, unguardText(rows.get(id) ?? '')]).toEqual([supplier, supplier]);
      expect(rows.get(id)).not.toMatch(/^[=+\-@\t\r]/);
    }
  }, 120_000);

  it('S20: each is taken as the name of a build, whose files then have a name that fits and a calendar that says it', async () => {
    let etag = (await garden.http.get(`/v1/builds/${ids.buildId}`)).headers['etag'] as string;
    for (const name of ACCEPTED) {
      const changed = await garden.http.patch(`/v1/builds/${ids.buildId}`, etag, { name });
      expect([name, changed.status, changed.body.name]).toEqual([name, 200, name]);
      etag = changed.headers['etag'] as string;
      const { status, headers, text } = await garden.http.get(`/v1/plans/${planId}/calendar.ics?startsOn=2027-05-08`);
      expect(status).toBe(200);
      expect([name, headers['content-disposition']]).toEqual([
        name,
        expect.stringMatching(/^attachment; filename="[^"\\\r\n]+\.ics"(; filename\*=UTF-8''[A-Za-z0-9!#$&+.^_`|~%-]+)?$/),
      ]);
      const [event] = new ICAL.Component(ICAL.parse(text) as unknown[]).getAllSubcomponents('vevent');
      expect(String(event?.getFirstPropertyValue('summary')).endsWith(`: ${name}`)).toBe(true);
    }
  }, 180_000);

  it('S20: each is taken as the caption of a photo', async () => {
    const [stockId] = Object.values(ids.stockIds);
    const picture = await jpeg(8, 8);
    for (const caption of ACCEPTED.slice(0, 30)) {
      const answer = await garden.http
        .request('post', `/v1/stock/${stockId}/photos?${new URLSearchParams({ showsPeople: 'false', caption }).toString()}`)
        .set('Content-Type', 'image/jpeg')
        .send(picture);
      expect([caption, answer.status, answer.body.caption]).toEqual([caption, 201, caption]);
    }
  });

  it('S20: what is not taken is refused with 400 and its reason, and nothing is kept of it', async () => {
    const count = async (): Promise<number> =>
      (
        await garden.http
          .get('/v1/sites.geojson')
          .buffer(true)
          .parse((r, done) => {
            let length = 0;
            r.on('data', (chunk: Buffer) => (length += chunk.length));
            r.on('end', () => done(null, length));
          })
      ).body as number;
    const before = await count();
    for (const [name, code] of REFUSED) {
      const sent = JSON.stringify({ ...cold.site, name });
      const { body } = await garden.http.request('post', '/v1/sites').set('Content-Type', 'application/json').send(sent);
      expect([name, body.status]).toEqual([name, 400]);
      if (code === 'malformed-json') expect(body.type).toBe('/v1/problems/malformed-json');
      else expect([name, body.errors]).toEqual([name, [expect.objectContaining({ pointer: '/name', code })]]);
    }
    expect(await count()).toBe(before);
  });

  it('S20: a problem gives a nasty name back as JSON and nothing else', async () => {
    const name = '<script>alert(1)</script>';
    const answer = await garden.http.post('/v1/sites', { ...cold.site, name });
    expect(answer.body).toMatchObject({ status: 409, type: '/v1/problems/name-taken', detail: expect.stringContaining(name) });
    expect(answer.headers).toMatchObject({ 'content-type': expect.stringContaining('application/problem+json'), 'x-content-type-options': 'nosniff' });
  });
});
