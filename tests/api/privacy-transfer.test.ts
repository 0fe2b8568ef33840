import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { parse } from 'csv-parse/sync';
import fc from 'fast-check';
import { startApi, type TestApi, type TestGarden, type TestPerson } from '../support/api-app.js';
import { cold, firstBuild, make } from '../support/example-requests.js';
import { asAdmin } from '../support/people.js';
import { gardenChoice, growGarden, type GardenChoice } from '../support/random-garden.js';
import { bytesOf, changed, computeByHand, exported, filesOf, imported, normalised, packed } from '../support/transfer.js';
import { jpegOf } from '../support/privacy-fixtures.js';
import { zipOf } from '../support/archives.js';

let api: TestApi;

beforeAll(async () => {
  api = await startApi();
});
afterAll(() => api.stop());

interface Report {
  gardenWasEmpty: boolean;
  taken: { what: string; itemsCount: number }[];
  dropped: { what: string; itemsCount: number; why: string }[];
  renamed: { what: string; from: string; to: string }[];
  ids: { what: string; from: string; to: string }[];
}

const takenOf = ({ taken }: Report): Record<string, number> => Object.fromEntries(taken.map(({ what, itemsCount }) => [what, itemsCount]));
const droppedOf = ({ dropped }: Report): Record<string, number> => Object.fromEntries(dropped.map(({ what, itemsCount }) => [what, itemsCount]));

const RICH: GardenChoice = {
  from: 'cold-inland',
  stock: [0, 1, 2, 3, 4, 5],
  prices: [0, 1, 2],
  builds: 2,
  variants: 1,
  claims: 2,
  archive: false,
  shift: 37,
  rate: 1.09,
  photos: 1,
  plans: 1,
  remark: '=1+1, "quoted" 木',
};

/** A garden with something of everything in it. */
const richGarden = async (): Promise<TestGarden> => {
  const garden = await api.garden();
  const plans = await growGarden(garden.http, RICH);
  await computeByHand(api, plans);
  const asBuilt = await garden.http.post(`/v1/plans/${plans[0]}/as-built`, {
    observedOn: '2026-05-02',
    measures: [{ subject: 'D1 opening width', lengthM: '34 in', pulledToN: null, remark: null }],
    remark: 'Built on one weekend.',
  });
  expect(asBuilt.status).toBe(201);
  return garden;
};

const countRows = async (gardenId: string): Promise<Record<string, number>> => {
  const tables = [
    'sites',
    'structures',
    'stock_items',
    'prices',
    'exchange_rates',
    'builds',
    'stock_claims',
    'plan_revisions',
    'plan_results',
    'photos',
    'files',
    'audit_entries',
  ];
  const counts = await Promise.all(
    tables.map((table) => asAdmin<{ n: number }>(api, `SELECT count(*)::int AS n FROM ${table} WHERE garden_id = $1`, [gardenId])),
  );
  return Object.fromEntries(tables.map((table, i) => [table, counts[i]?.[0]?.n ?? -1]));
};

describe('a garden moves elsewhere', () => {
  it('A28: export, import into an empty garden and export again are equal after id mapping, for 10 random gardens', async () => {
    let plansSeen = 0;
    let photosSeen = 0;
    await fc.assert(
      fc.asyncProperty(gardenChoice, async (choice) => {
        const from = await api.garden(undefined, { name: 'From', currency: 'USD', locale: 'en-US', unitSystem: 'us' });
        const plans = await growGarden(from.http, choice);
        await computeByHand(api, plans);
        const first = await exported(api, from.gardenId, from.http);
        const to = await api.garden(undefined, { name: 'To', currency: 'EUR', locale: 'en', unitSystem: 'metric' });
        const taken = await imported(to.http, first);
        expect([taken.status, taken.body]).toEqual([201, expect.objectContaining({ gardenWasEmpty: true, renamed: [] })]);
        const counts = takenOf(taken.body as Report);
        plansSeen += counts['plans'] ?? 0;
        photosSeen += counts['photos'] ?? 0;
        expect(counts['plans']).toBe(plans.length);
        const second = await exported(api, to.gardenId, to.http);
        expect(await normalised(second)).toEqual(await normalised(first));
      }),
      { numRuns: 10, seed: 20_260_315, endOnFailure: true },
    );
    // The gardens were not all empty ones.
    expect([plansSeen > 0, photosSeen > 0]).toEqual([true, true]);
  }, 180_000);

  it('A28: ids are new, and what pointed at something points at its like', async () => {
    const from = await richGarden();
    const to = await api.garden();
    const report = (await imported(to.http, await exported(api, from.gardenId, from.http))).body as Report;
    expect(new Set(report.ids.map(({ what }) => what))).toEqual(
      new Set(['garden', 'sites', 'structures', 'stock', 'prices', 'exchangeRates', 'builds', 'claims', 'plans', 'photos']),
    );
    expect(report.ids.filter(({ from: old, to: now }) => old === now)).toEqual([]);
    const builds = (await to.http.get('/v1/builds')).body as { items: { siteId: string; ownerMemberId: null }[] };
    const sites = report.ids.filter(({ what }) => what === 'sites').map((one) => one.to);
    for (const { siteId, ownerMemberId } of builds.items) expect([sites.includes(siteId), ownerMemberId]).toEqual([true, null]);
    const [plan] = report.ids.filter(({ what }) => what === 'plans');
    const inputs = (await to.http.get(`/v1/plans/${plan?.to}/inputs`)).body as Record<string, unknown>;
    expect(inputs).toMatchObject({ planId: plan?.to, gardenId: to.gardenId });
    expect(JSON.stringify(inputs)).not.toContain(from.gardenId);
    // It was computed elsewhere, and every page that is printed of it will say that it is to be made anew.
    expect((await to.http.get(`/v1/plans/${plan?.to}`)).body).toMatchObject({
      state: 'ready',
      stale: [expect.objectContaining({ reason: 'imported' })],
      reviews: [],
    });
    const as = (await to.http.get(`/v1/plans/${plan?.to}/as-built`)).body as { items: object[] };
    expect(as.items).toEqual([
      expect.objectContaining({ observedOn: '2026-05-02', remark: 'Built on one weekend.', asTyped: { '/measures/0/lengthM': '34 in' } }),
    ]);
  });

  it('E9: the archive has JSON with its schema version, tables that a spreadsheet reads, photos, and a list of what is in it', async () => {
    const from = await richGarden();
    const files = await filesOf(await exported(api, from.gardenId, from.http));
    const manifest = JSON.parse(files.get('manifest.json') ?? '') as { format: string; schemaVersion: number; files: { name: string }[] };
    expect(manifest).toMatchObject({ format: 'lathwork-garden', schemaVersion: 1 });
    expect(manifest.files.map(({ name }) => name).sort()).toEqual([...files.keys()].filter((name) => name !== 'manifest.json').sort());
    const garden = JSON.parse(files.get('garden.json') ?? '') as { schemaVersion: number; builds: object[]; sites: { name: string }[] };
    expect(garden.schemaVersion).toBe(1);
    const rows = parse(files.get('tables/builds.csv') ?? '', { columns: true }) as Record<string, string>[];
    expect(rows).toHaveLength(garden.builds.length);
    // A name that looks like a formula is none in the table.
    const [site] = parse(files.get('tables/sites.csv') ?? '', { columns: true }) as Record<string, string>[];
    expect(site?.['name']).toBe(garden.sites[0]?.name);
    expect([...files.keys()].filter((name) => name.startsWith('photos/'))).toHaveLength(2);
  });

  it('E9: the report tells what was dropped and why, and what had to be renamed', async () => {
    const from = await richGarden();
    const member = await api.person(from.gardenId, ['coordinator']);
    const showing = await member.http
      .request('post', `/v1/builds/${((await from.http.get('/v1/builds')).body as { items: { id: string }[] }).items[0]?.id}/photos?showsPeople=true`)
      .set('Content-Type', 'image/jpeg')
      .send(await jpegOf());
    expect(showing.status).toBe(201);
    const consent = await member.http.request('post', '/v1/members/me/consents').send({ purpose: 'nameOnPrint', wordingVersion: 1 });
    expect(consent.status).toBe(200);
    const zip = await exported(api, from.gardenId, from.http);
    const report = (await imported(from.http, zip)).body as Report;
    expect(report.gardenWasEmpty).toBe(false);
    expect(droppedOf(report)).toMatchObject({ members: 1, keys: 1, consents: 1, photosOfPeople: 1, history: expect.any(Number), exchangeRates: 1 });
    expect(report.dropped.every(({ why }) => why.length > 10)).toBe(true);
    const [tag] = report.renamed.filter(({ what }) => what === 'stockItem');
    expect(tag).toEqual({ what: 'stockItem', from: expect.any(String), to: `${tag?.from}-2` });
    expect(report.renamed.map(({ what }) => what)).toEqual(expect.arrayContaining(['site', 'structure', 'stockItem']));
  });

  it('E2: a packed garden holds nothing private: no exact place without consent, no phone, no health notes, no photo of people', async () => {
    const garden = await api.garden();
    const wren = await api.person(garden.gardenId, ['member']);
    await make(wren.http, '/v1/sites', { ...cold.site, name: 'Plot', latitudeDeg: '39.9341773 deg', longitudeDeg: -104.5826391 });
    expect((await wren.http.patch('/v1/members/me/private-details', '"0"', { phone: '+44 20 7946 0719', healthNotes: 'Canarynote' })).status).toBe(200);
    const textOf = async (): Promise<string> => [...(await filesOf(await exported(api, garden.gardenId, garden.http))).values()].join('\n');
    const before = await textOf();
    expect(before).toContain('39.93');
    expect(before).not.toMatch(/39\.934|104\.582|7946|Canarynote/);
    expect((await wren.http.request('post', '/v1/members/me/consents').send({ purpose: 'exactLocation', wordingVersion: 1 })).status).toBe(200);
    expect(await textOf()).toContain('39.9341773');
  });

  it('E9: only a coordinator or a key with the scope packs a garden or takes one in', async () => {
    const garden = await api.garden();
    const member = await api.person(garden.gardenId, ['member', 'treasurer']);
    const key = api.as(await api.keyOf(garden.gardenId, ['garden:read', 'sites:read']));
    const zip = await exported(api, garden.gardenId, garden.http);
    for (const who of [member.http, key])
      expect([(await who.post('/v1/exports', { withFiles: false })).status, (await imported(who, zip)).status, (await who.get('/v1/exports')).status]).toEqual([
        403, 403, 403,
      ]);
  });

  it('E9: the file of an export goes after a day', async () => {
    const garden = await api.garden();
    const id = await packed(api, garden.gardenId, garden.http);
    expect((await bytesOf(garden.http, `/v1/exports/${id}/file`)).status).toBe(200);
    await asAdmin(api, `UPDATE garden_exports SET expires_at = now() - interval '1 second' WHERE id = $1`, [id]);
    expect((await bytesOf(garden.http, `/v1/exports/${id}/file`)).status).toBe(404);
    expect((await garden.http.get(`/v1/exports/${id}`)).body).toMatchObject({ state: 'ready', links: { file: null } });
    await packed(api, garden.gardenId, garden.http);
    expect((await countRows(garden.gardenId))['files']).toBe(1);
  });
});

describe('an archive that is not as it should be', () => {
  let zip: Buffer;
  let garden: TestGarden;
  beforeAll(async () => {
    const from = await richGarden();
    zip = await exported(api, from.gardenId, from.http);
    garden = await api.garden();
  });

  const edited = (change: (garden: Record<string, Record<string, unknown>[]>) => void): Promise<Buffer> =>
    changed(zip, (files) => {
      const whole = JSON.parse(files.get('garden.json') ?? '') as Record<string, Record<string, unknown>[]>;
      change(whole);
      files.set('garden.json', JSON.stringify(whole));
    });
  const first = (list: Record<string, unknown>[] | undefined): Record<string, unknown> => list?.[0] ?? {};

  const REFUSED: [string, () => Promise<Buffer>, string][] = [
    ['no ZIP', () => Promise.resolve(Buffer.from('nothing')), 'archive-refused'],
    ['a ZIP of something else', () => zipOf([['a.txt', 'b']]), 'import-refused'],
    [
      'a file changed by hand',
      async () => zipOf([...(await filesOf(zip))].map(([name, text]) => [name, name === 'records.json' ? `${text} ` : text] as const)),
      'import-refused',
    ],
    [
      'a newer schema',
      () => changed(zip, (files) => files.set('manifest.json', (files.get('manifest.json') ?? '').replace('"schemaVersion": 1', '"schemaVersion": 2'))),
      'import-refused',
    ],
    ['a site beyond the pole', () => edited(({ sites }) => void (first(sites)['latitudeDeg'] = 91)), 'import-refused'],
    ['a field nobody knows', () => edited(({ structures }) => void (first(structures)['gardenId'] = garden.gardenId)), 'import-refused'],
    [
      'a build at a site that is not there',
      () => edited(({ builds }) => void (first(builds)['siteId'] = '019a0000-0000-7000-8000-0000000000ff')),
      'import-refused',
    ],
    ['results that are none', () => edited(({ plans }) => void (first(plans)['result'] = { anchorage: 'fine' })), 'import-refused'],
    [
      'a plan of another garden',
      () => edited(({ plans }) => void ((first(plans)['inputs'] as Record<string, unknown>)['gardenId'] = garden.gardenId)),
      'import-refused',
    ],
    ['two things with one id', () => edited(({ prices }) => void (first(prices)['id'] = first(prices?.slice(1))['id'])), 'import-refused'],
    [
      'one thing claimed twice',
      () => edited(({ claims }) => void claims?.push({ ...first(claims), id: '019a0000-0000-7000-8000-0000000000fe' })),
      'import-refused',
    ],
    ['a number that is a formula', () => edited(({ prices }) => void (first(prices)['packAmount'] = '=1')), 'import-refused'],
  ];

  it.each(REFUSED)('S22: %s is refused, and nothing is written', async (_name, made, problem) => {
    const before = await countRows(garden.gardenId);
    const answer = await imported(garden.http, await made());
    expect([answer.status, (answer.body as { type: string }).type]).toEqual([422, `/v1/problems/${problem}`]);
    expect(await countRows(garden.gardenId)).toEqual(before);
  });

  it('S22: a key that changes what an object is is refused', async () => {
    const answer = await imported(
      garden.http,
      await changed(zip, (files) => files.set('garden.json', (files.get('garden.json') ?? '').replace('{', '{"__proto__": {"isAdmin": true},'))),
    );
    expect(answer.body).toMatchObject({ status: 422, type: '/v1/problems/import-refused' });
  });

  it('E9: invented example data does not become real by moving', async () => {
    const real = await api.garden(undefined, { invented: false });
    expect((await imported(real.http, zip)).body).toMatchObject({ type: '/v1/problems/import-refused', detail: expect.stringContaining('invented') });
  });

  it('A28: sent twice under one key, it is taken in once', async () => {
    const other = await api.garden();
    const send = () => imported(other.http, zip).set('Idempotency-Key', 'once');
    const [one, two] = [await send(), await send()];
    expect([one.status, two.status, two.headers['idempotency-replayed'], two.text]).toEqual([201, 201, 'true', one.text]);
    expect((await countRows(other.gardenId))['sites']).toBe(1);
  });
});

describe('the export of a person', () => {
  it('E9: is everything of that person over all gardens, private details too, and nothing of anybody else', async () => {
    const [one, two] = [await api.garden(), await api.garden()];
    const wren: TestPerson = await api.person(one.gardenId, ['member']);
    const again = await api.person(two.gardenId, ['member'], wren.accountId);
    const ash = await api.person(one.gardenId, ['member']);
    const { structure, wishes, crew, budget } = firstBuild();
    for (const who of [wren, ash, again]) {
      const site = await make(who.http, '/v1/sites', { ...cold.site, name: `Plot of ${who.memberId}`, latitudeDeg: '39.9341773 deg', shared: true });
      const shelter = await make(who.http, '/v1/structures', { name: `Frame of ${who.memberId}`, ...structure });
      await make(who.http, '/v1/builds', { name: `House of ${who.memberId}`, siteId: site.id, structureId: shelter.id, wishes, crew, budget });
      expect((await who.http.patch('/v1/members/me/private-details', '"0"', { phone: who.memberId, healthNotes: `Notes of ${who.memberId}` })).status).toBe(
        200,
      );
    }
    expect((await wren.http.request('post', '/v1/members/me/consents').send({ purpose: 'photoRelease', wordingVersion: 1 })).status).toBe(200);
    const { status, bytes } = await bytesOf(wren.http, '/v1/account/export');
    expect(status).toBe(200);
    const files = await filesOf(bytes);
    const person = JSON.parse(files.get('person.json') ?? '') as {
      schemaVersion: number;
      account: { email: string };
      gardens: { privateDetails: object; consents: object[]; sites: object[] }[];
    };
    expect(person).toMatchObject({ schemaVersion: 1, account: { email: wren.email } });
    expect(person.gardens).toHaveLength(2);
    expect(person.gardens[0]).toMatchObject({ privateDetails: { healthNotes: `Notes of ${wren.memberId}` }, sites: [{ latitudeDeg: 39.9341773 }] });
    expect(person.gardens.flatMap(({ consents }) => consents)).toEqual([expect.objectContaining({ purpose: 'photoRelease', given: true })]);
    const all = [...files.values()].join('\n');
    for (const mine of [wren, again]) for (const what of ['Plot', 'Frame', 'House', 'Notes']) expect(all).toContain(`${what} of ${mine.memberId}`);
    expect(all).not.toContain(ash.memberId);
    expect([...files.keys()]).toEqual(expect.arrayContaining([`${one.gardenId}/tables/sites.csv`, `${two.gardenId}/tables/builds.csv`]));
    expect((await one.http.get('/v1/account/export')).status).toBe(403);
  });
});
