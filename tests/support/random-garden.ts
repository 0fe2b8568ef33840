import fc from 'fast-check';
import { EXAMPLE_GARDENS, exampleGarden, type ExampleGarden } from './gardens.js';
import type { HttpClient } from './http-client.js';
import { make } from './example-requests.js';
import { jpegOf } from './privacy-fixtures.js';

/** What is taken of an example garden, and how it is varied. */
export interface GardenChoice {
  from: (typeof EXAMPLE_GARDENS)[number];
  stock: number[];
  prices: number[];
  builds: number;
  variants: number;
  claims: number;
  archive: boolean;
  shift: number;
  rate: number;
  photos: number;
  plans: number;
  remark: string;
}

const index = fc.nat({ max: 200 });
// What people write: other scripts, quotes, signs that spreadsheets and markup care about.
const words = fc.string({
  minLength: 1,
  maxLength: 40,
  unit: fc.constantFrom('a', 'Z', ' ', '"', "'", '<', '&', '=', '+', '-', '@', ',', ';', 'é', '木', '🌱', '\\', '/'),
});

export const gardenChoice: fc.Arbitrary<GardenChoice> = fc.record({
  from: fc.constantFrom(...EXAMPLE_GARDENS),
  stock: fc.array(index, { maxLength: 8 }),
  prices: fc.array(index, { maxLength: 6 }),
  builds: fc.integer({ min: 0, max: 2 }),
  variants: fc.integer({ min: 0, max: 2 }),
  claims: fc.integer({ min: 0, max: 3 }),
  archive: fc.boolean(),
  shift: fc.integer({ min: -400, max: 400 }),
  rate: fc.double({ min: 0.01, max: 100, noNaN: true }),
  photos: fc.integer({ min: 0, max: 2 }),
  plans: fc.integer({ min: 0, max: 2 }),
  remark: words.filter((text) => text.trim() !== ''),
});

const pick = <T>(list: readonly T[], numbers: readonly number[]): T[] => [...new Set(numbers.map((n) => list[n % list.length]))].flatMap((one) => one ?? []);

const archived = async (http: HttpClient, path: string): Promise<void> => {
  const { headers } = await http.get(path);
  const answer = await http.request('post', `${path}/archive`).set('If-Match', headers['etag'] as string);
  if (answer.status !== 200) throw new Error(`archiving ${path}: ${answer.status} ${answer.text}`);
};

/** Makes it through the API alone; gives the ids of its plans, which nobody has computed yet. */
export const growGarden = async (http: HttpClient, choice: GardenChoice): Promise<string[]> => {
  const from: ExampleGarden = exampleGarden(choice.from);
  const { site: ground, prices } = from;
  const stock = pick(from.stock, choice.stock);
  if (stock.length > 0) await make(http, '/v1/stock/intakes', { items: stock });
  for (const price of pick(prices, choice.prices)) await make(http, '/v1/prices', price);
  await make(http, '/v1/exchange-rates', { from: 'EUR', to: 'USD', rate: choice.rate, readOn: '2026-02-01' });
  const latitudeDeg = ground.latitudeDeg + choice.shift / 100_000;
  const site = await make(http, '/v1/sites', {
    ...ground,
    latitudeDeg,
    elevationM: `${Math.round(ground.elevationM)} m`,
    name: `At ${choice.remark}`.trim(),
    confirmFar: true,
  });
  const plans: string[] = [];
  for (const example of from.builds.slice(0, choice.builds)) {
    const structure = await make(http, '/v1/structures', { name: example.name, ...example.structure });
    const { wishes, crew, budget } = example;
    const body = { siteId: site.id, structureId: structure.id, wishes, crew, budget, shared: choice.archive };
    const build = await make(http, '/v1/builds', { ...body, name: example.name });
    for (let n = 0; n < choice.variants; n += 1)
      await make(http, '/v1/builds', { ...body, name: `${example.name} ${n}`, variantOf: build.id, variantLabel: `variant ${n}` });
    for (const { tag } of plans.length === 0 ? stock.filter(({ grade }) => grade !== 'X').slice(0, choice.claims) : [])
      await http.post(`/v1/builds/${build.id}/claims`, { tag });
    for (let n = 0; n < choice.plans; n += 1)
      plans.push(String(((await http.post('/v1/plans', { buildId: build.id, asOf: '2026-03-15' })).body as { id: string }).id));
    for (let n = 0; n < choice.photos; n += 1) {
      const path = `/v1/builds/${build.id}/photos?showsPeople=false&caption=${encodeURIComponent(choice.remark)}`;
      const photo = await http
        .request('post', path)
        .set('Content-Type', 'image/jpeg')
        .send(await jpegOf());
      if (photo.status !== 201) throw new Error(`photo: ${photo.status} ${photo.text}`);
    }
  }
  if (choice.archive) await archived(http, `/v1/sites/${site.id}`);
  return plans;
};
