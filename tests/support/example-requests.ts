import type { HttpClient } from './http-client.js';
import { exampleGarden, type ExampleBuild, type ExampleGarden } from './gardens.js';

export const cold: ExampleGarden = exampleGarden('cold-inland');

export const firstBuild = (): ExampleBuild => {
  const [build] = cold.builds;
  if (!build) throw new Error('the example garden has no build');
  return build;
};

export interface Made {
  id: string;
  etag: string;
  body: Record<string, unknown>;
}

/** Makes something and gives back its id; any other answer than 201 ends the test with what was said. */
export const make = async (http: HttpClient, path: string, body: object): Promise<Made> => {
  const answer = await http.post(path, body);
  if (answer.status !== 201) throw new Error(`POST ${path} answered ${answer.status}: ${JSON.stringify(answer.body)}`);
  const made = answer.body as Record<string, unknown>;
  return { id: made['id'] as string, etag: answer.headers['etag'] as string, body: made };
};

export interface ExampleIds {
  siteId: string;
  structureId: string;
  buildId: string;
  priceIds: string[];
  stockIds: Record<string, string>;
}

/** The first build of the cold inland garden, with everything it draws on, made through the API alone. */
export const makeExample = async (http: HttpClient): Promise<ExampleIds> => {
  const { name, structure, wishes, crew, budget, claims } = firstBuild();
  const site = await make(http, '/v1/sites', cold.site);
  const shelter = await make(http, '/v1/structures', { name, ...structure });
  const build = await make(http, '/v1/builds', { name, siteId: site.id, structureId: shelter.id, wishes, crew, budget });
  const intake = await make(http, '/v1/stock/intakes', { items: cold.stock });
  const stockIds = Object.fromEntries((intake.body['items'] as { id: string; tag: string }[]).map((item) => [item.tag, item.id]));
  for (const tag of claims) await make(http, `/v1/builds/${build.id}/claims`, { tag });
  const priceIds: string[] = [];
  for (const price of cold.prices) priceIds.push((await make(http, '/v1/prices', price)).id);
  return { siteId: site.id, structureId: shelter.id, buildId: build.id, priceIds, stockIds };
};
