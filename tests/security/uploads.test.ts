import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import type { Test } from 'supertest';
import sharp from 'sharp';
import pg from 'pg';
import { CATALOGUE } from '../../apps/api/src/platform/problems/catalogue.js';
import { startApi, type TestApi, type TestGarden, type TestPerson } from '../support/api-app.js';
import { cold, makeExample, type ExampleIds } from '../support/example-requests.js';
import type { HttpClient } from '../support/http-client.js';
import { blackPng, jpeg, noisyJpeg, phoneJpeg, textChunk, webp } from '../support/pictures.js';

let api: TestApi;
let garden: TestGarden;
let ids: ExampleIds;
let wren: TestPerson;
let keeper: TestPerson;
let coordinator: TestPerson;
let admin: pg.Client;
let thing = '';

beforeAll(async () => {
  api = await startApi();
  garden = await api.garden();
  ids = await makeExample(garden.http);
  thing = Object.values(ids.stockIds)[0] ?? '';
  wren = await api.person(garden.gardenId, ['member']);
  keeper = await api.person(garden.gardenId, ['storekeeper']);
  coordinator = await api.person(garden.gardenId, ['coordinator']);
  admin = new pg.Client({ connectionString: api.database.adminUrl });
  await admin.connect();
});
afterAll(async () => {
  await admin.end();
  await api.stop();
});

const upload = (http: HttpClient, path: string, bytes: Buffer, type = 'image/jpeg', query = 'showsPeople=false'): Test =>
  http.request('post', `${path}?${query}`).set('Content-Type', type).send(bytes);
const ofThing = (): string => `/v1/stock/${thing}/photos`;
const storedCounts = async (): Promise<unknown> =>
  (
    await admin.query(
      'SELECT (SELECT count(*)::int FROM photos) AS photos, (SELECT count(*)::int FROM files) AS files, (SELECT count(*)::int FROM audit_entries WHERE action LIKE $1) AS audits',
      ['photo.%'],
    )
  ).rows[0];
const fetchFile = (http: HttpClient, path: string): Test =>
  http
    .get(path)
    .buffer(true)
    .parse((response, done) => {
      const chunks: Buffer[] = [];
      response.on('data', (chunk: Buffer) => chunks.push(chunk));
      response.on('end', () => done(null, Buffer.concat(chunks)));
    });

describe('a photo that is taken', () => {
  it('S21: is drawn anew as JPEG, upright, without place, maker or time, under a name that nobody chose', async () => {
    const sent = await phoneJpeg(80, 40);
    expect((await sharp(sent).metadata()).exif).toBeDefined();
    expect(sent.includes('Canary phone')).toBe(true);
    const made = await upload(garden.http, ofThing(), sent, 'image/jpeg', 'showsPeople=false&caption=The%20door');
    expect([made.status, made.body]).toEqual([
      201,
      expect.objectContaining({ caption: 'The door', mediaType: 'image/jpeg', widthPixelCount: 40, heightPixelCount: 80 }),
    ]);
    expect(made.headers['location']).toBe(made.body.links.self);
    expect((await garden.http.get(made.body.links.self)).body).toEqual(made.body);
    const file = await fetchFile(garden.http, made.body.links.file);
    const bytes = file.body as Buffer;
    expect(file.headers).toMatchObject({
      'content-type': 'image/jpeg',
      'x-content-type-options': 'nosniff',
      'content-disposition': expect.stringMatching(/^attachment; filename="photo-[0-9a-f]{24}\.jpg"$/),
      'cache-control': 'no-store',
    });
    expect(file.headers['content-security-policy']).toContain("default-src 'none'");
    expect(bytes.length).toBe(made.body.byteCount);
    const { exif, xmp, iptc, format, orientation } = await sharp(bytes).metadata();
    expect({ exif, xmp, iptc, format, orientation }).toEqual({ exif: undefined, xmp: undefined, iptc: undefined, format: 'jpeg', orientation: undefined });
    for (const trace of ['Canary phone', 'Exif', 'GPS', '2026:03:14']) expect([trace, bytes.includes(trace)]).toEqual([trace, false]);
    const again = await garden.http.get(made.body.links.file).set('If-None-Match', String(file.headers['etag']));
    expect(again.status).toBe(304);
  });

  it('S21: may come as PNG or WebP, and a large one is kept smaller', async () => {
    for (const [bytes, type] of [
      [blackPng(300, 200), 'image/png'],
      [await webp(300, 200), 'image/webp'],
    ] as const) {
      const made = await upload(garden.http, `/v1/builds/${ids.buildId}/photos`, bytes, type);
      expect([type, made.status, made.body.widthPixelCount, made.body.mediaType]).toEqual([type, 201, 300, 'image/jpeg']);
    }
    const large = await upload(garden.http, `/v1/builds/${ids.buildId}/photos`, blackPng(8000, 5000), 'image/png');
    expect([large.status, large.body.widthPixelCount, large.body.heightPixelCount]).toEqual([201, 2560, 1600]);
  });

  it('S21: what hides in a comment of a valid picture is gone from what is kept', async () => {
    const payload = '<script>alert(1)</script><?php system("id") ?>';
    const made = await upload(garden.http, ofThing(), blackPng(20, 20, [textChunk(payload)]), 'image/png');
    expect(made.status).toBe(201);
    const { body } = await fetchFile(garden.http, made.body.links.file);
    expect((body as Buffer).includes('script')).toBe(false);
    expect((body as Buffer).includes('php')).toBe(false);
  });

  it('S21: is made once for one Idempotency-Key, and another picture under the same key is refused', async () => {
    const bytes = await jpeg(33, 22);
    const first = await upload(garden.http, ofThing(), bytes).set('Idempotency-Key', 'one-photo');
    const second = await upload(garden.http, ofThing(), bytes).set('Idempotency-Key', 'one-photo');
    expect([first.status, second.status, second.body.id, second.headers['idempotency-replayed']]).toEqual([201, 201, first.body.id, 'true']);
    const other = await upload(garden.http, ofThing(), await jpeg(34, 22)).set('Idempotency-Key', 'one-photo');
    expect(other.body).toMatchObject({ status: 422, type: '/v1/problems/idempotency-conflict' });
  });

  it('S21: goes for good, bytes and all', async () => {
    const made = await upload(garden.http, ofThing(), await jpeg());
    const before = (await storedCounts()) as { files: number };
    expect((await garden.http.request('delete', made.body.links.self)).status).toBe(204);
    expect((await garden.http.get(made.body.links.self)).status).toBe(404);
    expect((await garden.http.get(made.body.links.file)).status).toBe(404);
    expect(((await storedCounts()) as { files: number }).files).toBe(before.files - 1);
  });
});

describe('a file that is not taken', () => {
  const refused = async (bytes: Buffer, type: string): Promise<{ status: number; type: string; detail: string; remedy: string }> => {
    const before = await storedCounts();
    const answer = await upload(garden.http, ofThing(), bytes, type);
    expect(await storedCounts()).toEqual(before);
    expect(answer.headers['content-type']).toContain('application/problem+json');
    return answer.body as { status: number; type: string; detail: string; remedy: string };
  };
  const SVG = Buffer.from('<?xml version="1.0"?><svg xmlns="http://www.w3.org/2000/svg"><script>alert(1)</script></svg>');
  const heic = (): Buffer => Buffer.concat([Buffer.from([0, 0, 0, 24]), Buffer.from('ftypheic\0\0\0\0mif1heic'), Buffer.alloc(64)]);

  it('S21: SVG is refused by name and by content, whatever it is called', async () => {
    expect(await refused(SVG, 'image/svg+xml')).toMatchObject({
      status: 415,
      type: '/v1/problems/picture-kind-refused',
      detail: expect.stringContaining('SVG'),
    });
    expect(await refused(SVG, 'image/png')).toMatchObject({ status: 415, type: '/v1/problems/picture-kind-refused', detail: expect.stringContaining('SVG') });
    expect(await refused(Buffer.from('\ufeff  <svg onload=alert(1)>'), 'image/jpeg')).toMatchObject({ status: 415 });
  });

  it('S21: HEIC is refused with what to do about it, under its own and another type', async () => {
    for (const type of ['image/heic', 'image/jpeg']) {
      const answer = await refused(heic(), type);
      expect(answer).toMatchObject({ status: 415, type: '/v1/problems/picture-kind-refused', detail: expect.stringContaining('HEIC') });
      expect(answer.remedy).toContain('JPEG');
    }
  });

  it('S21: other kinds are named: GIF, PDF, ZIP, text, nothing', async () => {
    const kinds: [Buffer, string][] = [
      [Buffer.concat([Buffer.from('GIF89a'), Buffer.alloc(40)]), 'GIF'],
      [Buffer.concat([Buffer.from('%PDF-1.7\n'), Buffer.alloc(40)]), 'PDF'],
      [Buffer.concat([Buffer.from('PK\u0003\u0004\u0014\0'), Buffer.alloc(60)]), 'ZIP'],
      [Buffer.from('just words'), 'nothing that is known'],
      [Buffer.from([0]), 'nothing that is known'],
    ];
    for (const [bytes, word] of kinds) expect(await refused(bytes, 'image/png')).toMatchObject({ status: 415, detail: expect.stringContaining(word) });
    expect(await refused(await jpeg(), 'application/octet-stream')).toMatchObject({ status: 415, type: '/v1/problems/media-type-unsupported' });
    const empty = await garden.http.request('post', `${ofThing()}?showsPeople=false`).set('Content-Type', 'image/png');
    expect(empty.body).toMatchObject({ status: 415 });
  });

  it('S21: a small file of 20,000 by 20,000 pixels is refused from its header, at once', async () => {
    const bomb = blackPng(20_000, 20_000);
    expect(bomb.length).toBeLessThan(100_000);
    const before = process.memoryUsage().rss;
    const started = performance.now();
    expect(await refused(bomb, 'image/png')).toMatchObject({
      status: 422,
      type: '/v1/problems/picture-unusable',
      detail: expect.stringContaining('20000 by 20000'),
    });
    expect(performance.now() - started).toBeLessThan(1500);
    expect(process.memoryUsage().rss - before).toBeLessThan(100_000_000);
  });

  it('S21: 40 million pixels are the limit, on both sides of it', async () => {
    expect((await upload(garden.http, ofThing(), blackPng(8000, 5000), 'image/png')).status).toBe(201);
    expect(await refused(blackPng(8000, 5001), 'image/png')).toMatchObject({ status: 422 });
    expect(await refused(blackPng(16_385, 10), 'image/png')).toMatchObject({ status: 422 });
  });

  it('S21: a header that says less than the data holds does not get past', async () => {
    const lying = blackPng(6000, 6000);
    lying.writeUInt32BE(10, 16);
    expect(await refused(lying, 'image/png')).toMatchObject({ status: 422, type: '/v1/problems/picture-unusable' });
  });

  it('S21: a picture that is cut off anywhere is refused', async () => {
    for (const [whole, type] of [
      [await noisyJpeg(120, 90), 'image/jpeg'],
      [blackPng(600, 600), 'image/png'],
      [await webp(120, 90), 'image/webp'],
    ] as const)
      for (const share of [0.2, 0.5, 0.9, 0.99]) {
        const answer = await refused(whole.subarray(0, Math.floor(whole.length * share)), type);
        expect([type, share, answer.type]).toEqual([type, share, expect.stringMatching(/picture-(unusable|kind-refused)$/)]);
      }
  });

  it('S21: a file that is a picture and something else at once is refused', async () => {
    const others = [Buffer.from('PK\u0003\u0004 zip'), Buffer.from('%PDF-1.4'), Buffer.from('<script>alert(1)</script>'), Buffer.from('\n\n<?PHP system(1)')];
    const pictures = [[await jpeg(), 'image/jpeg'] as const, [blackPng(9, 9), 'image/png'] as const, [await webp(), 'image/webp'] as const];
    for (const [picture, type] of pictures)
      for (const other of others)
        expect(await refused(Buffer.concat([picture, other]), type)).toMatchObject({
          status: 422,
          type: '/v1/problems/picture-unusable',
          detail: expect.stringContaining('another file'),
        });
    expect(await refused(Buffer.concat([blackPng(9, 9), blackPng(9, 9)]), 'image/png')).toMatchObject({ status: 422 });
    // What a camera adds is no reason to refuse: a second, smaller picture behind the first.
    expect((await upload(garden.http, ofThing(), Buffer.concat([await jpeg(), await jpeg(16, 12)]))).status).toBe(201);
  });

  it('S21: 10 MB are refused before they are read, with or without a length given; 5 MB and one byte too', async () => {
    const start = await jpeg();
    for (const size of [10_000_000, 5_000_001])
      expect(await refused(Buffer.concat([start, Buffer.alloc(size - start.length)]), 'image/jpeg')).toMatchObject({
        status: 413,
        type: '/v1/problems/body-too-large',
      });
    const address = api.server.address() as { port: number };
    const endless = new ReadableStream({
      pull(controller) {
        controller.enqueue(new Uint8Array(65_536));
      },
    });
    const answer = await fetch(`http://127.0.0.1:${address.port}${ofThing()}?showsPeople=false`, {
      method: 'POST',
      headers: { Authorization: `Bearer ${garden.key}`, 'Content-Type': 'image/jpeg' },
      body: endless,
      duplex: 'half',
    } as RequestInit).catch((error: unknown) => error);
    // Either the answer is heard while still sending, or the connection ends: never is it read on and on.
    if (answer instanceof Response) expect(answer.status).toBe(413);
    else expect(answer).toBeInstanceOf(TypeError);
  });

  it('S21: nobody without a key makes the server read a picture, and an unknown thing takes none', async () => {
    expect((await upload(api.anyone, ofThing(), await jpeg())).status).toBe(401);
    expect((await upload(garden.http, `/v1/stock/${ids.buildId}/photos`, await jpeg())).status).toBe(404);
    const other = await api.garden();
    expect((await upload(other.http, ofThing(), await jpeg())).status).toBe(404);
    expect((await upload(wren.http, ofThing(), await jpeg())).body).toMatchObject({ status: 403, type: '/v1/problems/role-missing' });
  });

  it('S21: whether people are shown must be said', async () => {
    const answer = await garden.http
      .request('post', ofThing())
      .set('Content-Type', 'image/jpeg')
      .send(await jpeg());
    expect(answer.body).toMatchObject({ status: 400, errors: [expect.objectContaining({ pointer: '/showsPeople', in: 'query', code: 'required' })] });
  });

  it('S21: the room of the garden is kept to, also by two that arrive together', async () => {
    const small = await api.garden();
    const { stockIds } = await makeExample(small.http);
    const path = `/v1/stock/${Object.values(stockIds)[0]}/photos`;
    const picture = await noisyJpeg(400, 300);
    const first = await upload(small.http, path, picture);
    const room = first.body.byteCount * 2 + 10;
    await admin.query('UPDATE gardens SET file_quota_byte_count = $1 WHERE id = $2', [room, small.gardenId]);
    const both = await Promise.all([upload(small.http, path, picture), upload(small.http, path, picture)]);
    expect(both.map(({ status }) => status).sort()).toEqual([201, 409]);
    expect(both.find(({ status }) => status === 409)?.body).toMatchObject({ type: '/v1/problems/quota-exceeded' });
    expect((await small.http.get(path)).body.items).toHaveLength(2);
  });
});

describe('photos of people', () => {
  it('S21: without a release are seen by whoever took them in and by the coordinator alone; with one, by the garden', async () => {
    const people = await upload(keeper.http, ofThing(), await jpeg(50, 50), 'image/jpeg', 'showsPeople=true');
    const released = await upload(keeper.http, ofThing(), await jpeg(51, 50), 'image/jpeg', 'showsPeople=true&releaseOnFile=true');
    expect([people.status, released.status]).toEqual([201, 201]);
    const sees = async (http: HttpClient): Promise<boolean[]> => {
      const { body } = await http.get(`${ofThing()}?limit=100`);
      const listed = (body.items as { id: string }[]).map(({ id }) => id);
      const states = await Promise.all(
        [people, released].map(async ({ body: { links, id } }) => [
          (await http.get(links.self)).status,
          (await http.get(links.file)).status,
          listed.includes(id),
        ]),
      );
      for (const [self, file, inList] of states) expect([self, file]).toEqual(inList ? [200, 200] : [404, 404]);
      return states.map(([, , inList]) => inList as boolean);
    };
    expect(await sees(keeper.http)).toEqual([true, true]);
    expect(await sees(coordinator.http)).toEqual([true, true]);
    expect(await sees(wren.http)).toEqual([false, true]);
    expect(await sees(api.as(await api.keyOf(garden.gardenId, ['stock:read'])))).toEqual([false, true]);
  });

  it('S21: a build that is hidden hides its photos, and only who may change the build adds to them', async () => {
    const ash = await api.person(garden.gardenId, ['member']);
    const site = await wren.http.post('/v1/sites', { ...cold.site, name: 'Wren’s corner' });
    const { body: shelter } = await garden.http.get('/v1/structures');
    const { body: whole } = await garden.http.get(`/v1/builds/${ids.buildId}`);
    const build = await wren.http.post('/v1/builds', {
      name: 'Wren’s',
      siteId: site.body.id,
      structureId: shelter.items[0].id,
      wishes: whole.wishes,
      crew: whole.crew,
      budget: whole.budget,
    });
    expect(build.status).toBe(201);
    const path = `/v1/builds/${build.body.id}/photos`;
    const made = await upload(wren.http, path, await jpeg());
    expect(made.status).toBe(201);
    for (const there of [path, made.body.links.self, made.body.links.file]) expect([there, (await ash.http.get(there)).status]).toEqual([there, 404]);
    await wren.http.patch(`/v1/builds/${build.body.id}`, '"1"', { shared: true });
    expect((await ash.http.get(made.body.links.file)).status).toBe(200);
    expect((await upload(ash.http, path, await jpeg())).body).toMatchObject({ status: 403, type: '/v1/problems/not-yours' });
    expect((await ash.http.request('delete', made.body.links.self)).status).toBe(403);
    expect((await coordinator.http.request('delete', made.body.links.self)).status).toBe(204);
  });
});

it('S21: each refusal says what can be done', () => {
  for (const key of ['picture-kind-refused', 'picture-unusable', 'archive-refused', 'body-too-large', 'quota-exceeded'] as const)
    expect(CATALOGUE[key].remedy.length).toBeGreaterThan(15);
});
