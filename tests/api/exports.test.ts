import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { check } from '@placemarkio/check-geojson';
import ICAL from 'ical.js';
import type { Test } from 'supertest';
import { startApi, type TestApi, type TestGarden } from '../support/api-app.js';
import { cold, make, makeExample, type ExampleIds } from '../support/example-requests.js';
import { csvCells, csvRows } from '../support/spreadsheet.js';

let api: TestApi;
let garden: TestGarden;
let ids: ExampleIds;
let planId = '';

const text = (path: string): Test =>
  garden.http
    .get(path)
    .buffer(true)
    .parse((response, done) => {
      const chunks: Buffer[] = [];
      response.on('data', (chunk: Buffer) => chunks.push(chunk));
      response.on('end', () => done(null, Buffer.concat(chunks).toString('utf8')));
    });

beforeAll(async () => {
  api = await startApi({ jobs: true });
  garden = await api.garden();
  ids = await makeExample(garden.http);
  const plan = await garden.http.post('/v1/plans', { buildId: ids.buildId }).set('Prefer', 'wait=60');
  if (plan.status !== 201) throw new Error(`the plan answered ${plan.status}: ${JSON.stringify(plan.body)}`);
  planId = plan.body.id as string;
}, 120_000);
afterAll(() => api.stop());

describe('tables', () => {
  it('A27: the pile, the prices and the materials are CSV with a header row and the same columns each time', async () => {
    for (const [path, first] of [
      ['/v1/stock.csv', 'id'],
      ['/v1/prices.csv', 'id'],
      [`/v1/plans/${planId}/materials.csv`, 'lineId'],
    ] as const) {
      const answer = await text(path);
      expect([path, answer.status, answer.headers['content-type']]).toEqual([path, 200, 'text/csv; charset=utf-8; header=present']);
      expect(answer.headers['content-disposition']).toMatch(/^attachment; filename="[^"]+\.csv"/);
      const body = answer.body as string;
      expect(body.replaceAll('\r\n', '')).not.toContain('\n');
      const [header, ...rows] = csvCells(body);
      expect(header?.[0]).toBe(first);
      expect(rows.length).toBeGreaterThan(0);
      for (const row of rows) expect(row).toHaveLength(header?.length ?? 0);
      const again = await text(path);
      expect(again.body).toBe(body);
      expect((await garden.http.get(path).set('If-None-Match', String(answer.headers['etag']))).status).toBe(304);
    }
  });

  it('A27: the table of the pile says what the list says', async () => {
    const rows = csvRows((await text('/v1/stock.csv')).body as string);
    const { items } = (await garden.http.get('/v1/stock?limit=100')).body as { items: Record<string, unknown>[] };
    expect(rows).toHaveLength(items.length);
    for (const [i, item] of items.entries()) {
      expect(rows[i]).toMatchObject({
        id: item['id'],
        tag: item['tag'],
        count: String(item['count']),
        freeCount: String(item['freeCount']),
        widthMm: item['widthMm'] === null ? '' : String(item['widthMm']),
      });
      const replacement = item['replacement'] as { minor: number; currency: string } | null;
      expect(rows[i]?.['replacementMinor']).toBe(replacement ? String(replacement.minor) : '');
      if (replacement?.currency === 'USD') expect(Number(rows[i]?.['replacement'])).toBe(replacement.minor / 100);
    }
  });

  it('A27: the table of the materials says what the plan says, and its money adds up to the budget', async () => {
    const { body: result } = await garden.http.get(`/v1/plans/${planId}/result`);
    const rows = csvRows((await text(`/v1/plans/${planId}/materials.csv`)).body as string);
    const lines = result.takeOff.lines as { lineId: string; toBuy: number; cash: { minor: number; currency: string } | null; packs: number }[];
    expect(rows.map((row) => [row['lineId'], Number(row['toBuy']), Number(row['packs'])])).toEqual(
      lines.map(({ lineId, toBuy, packs }) => [lineId, toBuy, packs]),
    );
    const cash = rows.filter((row) => row['cashCurrency'] === result.budget.currency).reduce((sum, row) => sum + Number(row['cashMinor']), 0);
    const groups = new Set(lines.map((line) => (line as unknown as { group: string }).group));
    const budget = (result.budget.lines as { group: string; cashMinor: number }[])
      .filter(({ group }) => groups.has(group))
      .reduce((sum, { cashMinor }) => sum + cashMinor, 0);
    expect(cash).toBe(budget);
  });

  it('A27: a tag that a spreadsheet would calculate is text, and a size is a number', async () => {
    const [first] = cold.stock;
    await make(garden.http, '/v1/stock', { ...first, tag: '=1+1', widthMm: 123.5 });
    const row = csvRows((await text('/v1/stock.csv')).body as string).find(({ tag }) => tag?.includes('1+1'));
    expect(row).toMatchObject({ tag: "'=1+1", widthMm: '123.5' });
  });

  it('A27: another garden has its own table, and whoever may not see prices gets none', async () => {
    const other = await api.garden();
    expect((await other.http.get('/v1/stock.csv')).text.split('\r\n')).toHaveLength(2);
    expect((await other.http.get(`/v1/plans/${planId}/materials.csv`)).status).toBe(404);
    expect((await api.as(await api.keyOf(garden.gardenId, ['stock:read'])).get('/v1/prices.csv')).status).toBe(403);
  });
});

describe('calendar', () => {
  it('A26: begins on the day that is asked for, is named after the build, and is refused without a day', async () => {
    const path = `/v1/plans/${planId}/calendar.ics`;
    const answer = await text(`${path}?startsOn=2027-05-08&everyD=7`);
    expect([answer.status, answer.headers['content-type']]).toEqual([200, 'text/calendar; charset=utf-8']);
    const events = new ICAL.Component(ICAL.parse(answer.body as string) as unknown[]).getAllSubcomponents('vevent').map((one) => new ICAL.Event(one));
    expect(events.length).toBeGreaterThanOrEqual(14);
    expect(events.map(({ startDate }) => startDate.toString()).sort()[0]).toBe('2027-05-08');
    for (const { uid } of events) expect(uid.startsWith(ids.buildId)).toBe(true);
    const { body: build } = await garden.http.get(`/v1/builds/${ids.buildId}`);
    expect(decodeURIComponent(String(answer.headers['content-disposition']))).toContain(String(build.name).slice(0, 5));
    for (const bad of [
      'startsOn=2027-02-29',
      'startsOn=tomorrow',
      'startsOn=2027-05-08&everyD=0',
      'startsOn=2027-05-08&everyD=32',
      'startsOn=2027-05-08&everyD=1.5',
      'startsOn=2027-05-08&startsOn=2027-05-09',
    ])
      expect([bad, (await garden.http.get(`${path}?${bad}`)).status]).toEqual([bad, 400]);
    const silent = await garden.http.get(path);
    if (build.crew.startOn === null) expect(silent.body.errors).toEqual([expect.objectContaining({ pointer: '/startsOn', in: 'query' })]);
    else expect(silent.status).toBe(200);
  });

  it('A26: a new revision has the same UIDs and a higher SEQUENCE', async () => {
    const next = await garden.http.post('/v1/plans', { buildId: ids.buildId }).set('Prefer', 'wait=60');
    const read = async (id: string) =>
      new ICAL.Component(ICAL.parse((await text(`/v1/plans/${id}/calendar.ics?startsOn=2027-05-08`)).body as string) as unknown[])
        .getAllSubcomponents('vevent')
        .map((one) => new ICAL.Event(one));
    const [before, after] = [await read(planId), await read(next.body.id as string)];
    expect(after.map(({ uid }) => uid)).toEqual(before.map(({ uid }) => uid));
    expect(Math.min(...after.map(({ sequence }) => sequence))).toBeGreaterThan(Math.max(...before.map(({ sequence }) => sequence)));
  });
});

describe('sites on a map', () => {
  const square = (lon: number, lat: number, size = 0.001): number[][] => [
    [lon, lat],
    [lon + size, lat],
    [lon + size, lat + size],
    [lon, lat + size],
    [lon, lat],
  ];
  const { latitudeDeg, longitudeDeg } = cold.site as { latitudeDeg: number; longitudeDeg: number };
  const near = square(longitudeDeg, latitudeDeg);
  let name = 0;
  const site = (outline: unknown, at: object = {}) => garden.http.post('/v1/sites', { ...cold.site, ...at, name: `Outlined ${(name += 1)}`, outline });
  const polygon = (...rings: unknown[]) => ({ type: 'Polygon', coordinates: rings });
  const features = async () => {
    const answer = await text('/v1/sites.geojson');
    expect([answer.status, answer.headers['content-type']]).toEqual([200, 'application/geo+json']);
    return {
      body: answer.body as string,
      all: (JSON.parse(answer.body as string) as { features: { id: string; geometry: { type: string; coordinates: number[][][] } }[] }).features,
    };
  };

  it('A25: are GeoJSON by another checker: longitude first, rings closed and counter-clockwise, seven decimals, no crs', async () => {
    const clockwise = [...near].reverse().map(([lon, lat]) => [(lon ?? 0) + 1 / 3e7, lat]);
    clockwise[clockwise.length - 1] = clockwise[0] as number[];
    const made = await site(polygon(clockwise));
    expect(made.status).toBe(201);
    const { body, all } = await features();
    check(body);
    expect(body).not.toContain('crs');
    const ring = all.find(({ id }) => id === made.body.id)?.geometry.coordinates[0] ?? [];
    expect(ring[0]).toEqual(ring.at(-1));
    const area = ring
      .slice(1)
      .reduce(
        (sum, [x, y], i) =>
          sum + ((ring[i]?.[0] ?? 0) - longitudeDeg) * ((y ?? 0) - latitudeDeg) - ((x ?? 0) - longitudeDeg) * ((ring[i]?.[1] ?? 0) - latitudeDeg),
        0,
      );
    expect(area).toBeGreaterThan(0);
    for (const number of body.match(/-?\d+\.\d+/g) ?? []) expect(number.split('.')[1]?.length).toBeLessThanOrEqual(7);
    for (const [lon, lat] of ring) expect([Math.abs((lon ?? 0) - longitudeDeg) < 0.01, Math.abs((lat ?? 0) - latitudeDeg) < 0.01]).toEqual([true, true]);
    const point = all.find(({ id }) => id === ids.siteId)?.geometry as unknown as { type: string; coordinates: number[] };
    expect(point).toEqual({ type: 'Point', coordinates: [longitudeDeg, latitudeDeg] });
  });

  it('A25: the other checker does find what is wrong with a map', () => {
    expect(() => check('{"type":"Polygon","coordinates":[[[1,2],[3,4],[5,6]]]}')).toThrow();
  });

  it('A25: swapped latitude and longitude are refused, in range and out of it, and said to be swapped', async () => {
    const swapped = near.map(([lon, lat]) => [lat, lon]);
    const out = await site(polygon(swapped));
    expect(out.body).toMatchObject({
      status: 422,
      errors: [{ pointer: '/outline', code: 'out-of-range', detail: expect.stringContaining('longitude comes first') }],
    });
    const inRange = { latitudeDeg: 48.1, longitudeDeg: 11.6, timeZone: null, stationId: null };
    const far = await site(polygon(square(48.1, 11.6)), inRange);
    expect(far.body).toMatchObject({ status: 422, errors: [{ pointer: '/outline', code: 'outline-far', remedy: expect.stringContaining('swapped') }] });
    expect((await site(polygon(square(11.6, 48.1)), inRange)).status).toBe(201);
  });

  it('A25: what is no outline is refused with its reason', async () => {
    const at = (lon: number, lat: number): number[] => [longitudeDeg + lon, latitudeDeg + lat];
    const cases: [unknown, number, string][] = [
      [{ type: 'Point', coordinates: [longitudeDeg, latitudeDeg] }, 400, 'wrong-type'],
      [{ ...polygon(near), crs: { type: 'name' } }, 400, 'unknown-field'],
      [polygon(near, near), 400, 'not-a-polygon'],
      [polygon(near.slice(0, 3)), 400, 'wrong-length'],
      [polygon(Array.from({ length: 201 }, () => at(0, 0))), 400, 'wrong-length'],
      [polygon([...near.slice(0, 4), [200, 10], near[0]]), 400, 'out-of-range'],
      [polygon([...near.slice(0, 4), ['1', 2], near[0]]), 400, 'out-of-range'],
      [polygon([...near.slice(0, 4), [1, 2, 3], near[0]]), 400, 'out-of-range'],
      [polygon(near.slice(0, 4)), 422, 'ring-open'],
      [polygon([at(0, 0), at(0.001, 0), at(0.002, 0), at(0, 0)]), 422, 'no-area'],
      [polygon([at(0, 0), at(0.001, 0.001), at(0.001, 0), at(0, 0.002), at(0, 0)]), 422, 'crosses-itself'],
      [polygon(square(longitudeDeg + 0.2, latitudeDeg)), 422, 'outline-far'],
      [
        polygon([
          [179.9, 10],
          [-179.9, 10],
          [-179.9, 10.1],
          [179.9, 10],
        ]),
        422,
        'crosses-antimeridian',
      ],
    ];
    for (const [outline, status, code] of cases) {
      const { body } = await site(outline);
      expect([code, body.status, body.errors]).toEqual([code, status, [expect.objectContaining({ pointer: '/outline', code })]]);
    }
    expect(
      (
        await site(
          polygon(
            Array.from({ length: 200 }, (_none, i) => at(0.001 * Math.cos((i * 2 * Math.PI) / 199), 0.001 * Math.sin(((i % 199) * 2 * Math.PI) / 199))).map(
              (one, i, all) => (i === 199 ? (all[0] as number[]) : one),
            ),
          ),
        )
      ).status,
    ).toBe(201);
  });

  it('A25: an outline is changed and taken away by a patch, and a plan never sees it', async () => {
    const { body, headers } = await site(polygon(near));
    const changed = await garden.http.patch(`/v1/sites/${body.id}`, String(headers['etag']), { outline: polygon(square(longitudeDeg, latitudeDeg, 0.002)) });
    expect(changed.body.outline.coordinates[0]).toHaveLength(5);
    const gone = await garden.http.patch(`/v1/sites/${body.id}`, String(changed.headers['etag']), { outline: null });
    expect(gone.body).toMatchObject({ outline: null, version: 3 });
    const { body: inputs } = await garden.http.get(`/v1/plans/${planId}/inputs`);
    expect(JSON.stringify(inputs)).not.toContain('outline');
  });
});
