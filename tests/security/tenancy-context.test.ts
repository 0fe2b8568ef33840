import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { PrismaPg } from '@prisma/adapter-pg';
import pg from 'pg';
import { Database } from '../../apps/api/src/platform/database/database.js';
import { Prisma, PrismaClient } from '../../apps/api/src/platform/database/generated/client.js';
import { GardenPool } from '../../apps/api/src/platform/database/pg-adapter.js';
import { makePool } from '../../apps/api/src/platform/database/pool.js';
import { freshDatabase, type TestDatabase } from '../support/template-database.js';
import { A, B, plantRows, TENANT_TABLES } from '../support/two-gardens.js';

type Adapted = ConstructorParameters<typeof PrismaPg>[0];
type Model = Record<'findMany' | 'count' | 'updateMany' | 'deleteMany', (args?: object) => Promise<unknown>>;

let data: TestDatabase;
let app: pg.Pool;
let database: Database;
let tenantModels: { name: string; model: string }[];

const modelOf = (client: object, name: string): Model => (client as Record<string, Model>)[name] as Model;

beforeAll(async () => {
  data = await freshDatabase();
  app = makePool(data.url, 3);
  await plantRows(app, A);
  await plantRows(app, B);
  database = new Database(app);
  const tables = new Set((await app.query<{ name: string }>(TENANT_TABLES)).rows.map(({ name }) => name));
  const mapped = [...readFileSync('prisma/schema.prisma', 'utf8').matchAll(/^model (\w+) \{[^}]*@@map\("(\w+)"\)/gm)];
  tenantModels = mapped.flatMap(([, model = '', table = '']) =>
    tables.has(table) ? [{ name: table, model: model.charAt(0).toLowerCase() + model.slice(1) }] : [],
  );
});
afterAll(async () => {
  await database.onApplicationShutdown();
  await data.drop();
});

/** Of every file, each place that names a setting of the walls in SQL. */
const settings = (sources: readonly (readonly [string, string])[]): string[] =>
  sources.flatMap(([name, text]) =>
    [...text.matchAll(/set_config\(\s*'app\.\w+',[^)]*\)|\bSET\s+(?:SESSION\s+|LOCAL\s+)?app\.\w+/gi)]
      .filter(([place]) => !/^set_config\(.*,\s*true\)$/is.test(place))
      .map(([place]) => `${name}: ${place}`),
  );

const files = readdirSync('apps/api/src', { recursive: true, encoding: 'utf8' })
  .filter((name) => name.endsWith('.ts') && !name.includes('generated'))
  .map((name) => [name, readFileSync(join('apps/api/src', name), 'utf8')] as const);

describe('S6: no garden, no rows', () => {
  it('S6: the garden is set for one transaction only, wherever it is set', () => {
    expect(files.filter(([, text]) => text.includes("set_config('app.garden_id'")).map(([name]) => name)).toContain('platform/database/pg-adapter.ts');
    expect(settings(files)).toEqual([]);
    expect(settings([['x', "set_config('app.garden_id', $1, false); SET app.garden_id = 'x'; set_config('app.garden_id', $1, true)"]])).toHaveLength(2);
  });

  it('S6: every model of a garden sees, counts and removes nothing when no garden is set', async () => {
    expect(tenantModels.length).toBeGreaterThan(20);
    const bare = new PrismaClient({ adapter: new PrismaPg(app as unknown as Adapted) });
    for (const { name, model } of tenantModels) {
      const seen = await database.readSnapshot({ gardenId: A }, (db) => modelOf(db, model).count());
      expect([name, 'seen by its garden', Number(seen) > 0]).toEqual([name, 'seen by its garden', true]);
      expect([name, await modelOf(bare, model).findMany()]).toEqual([name, []]);
      expect([name, await modelOf(bare, model).count()]).toEqual([name, 0]);
      const removed = await modelOf(bare, model)
        .deleteMany({})
        .catch((error: unknown) => (/permission denied|denied access/i.test(String(error)) ? { count: 0 } : Promise.reject(error)));
      expect([name, removed]).toEqual([name, { count: 0 }]);
    }
    await bare.$disconnect();
  });

  it('S6: the client of the application refuses whatever is asked outside of a transaction', async () => {
    const client = new PrismaClient({ adapter: new PrismaPg(new GardenPool(app) as unknown as Adapted) });
    for (const { name, model } of tenantModels)
      await expect(
        modelOf(client, model)
          .findMany()
          .then(() => name),
      ).rejects.toThrow(/outside of a transaction/);
    await expect(client.$queryRaw`SELECT 1`).rejects.toThrow(/outside of a transaction/);
    await expect(client.$transaction((db) => db.$queryRaw`SELECT 1`)).rejects.toThrow(/belongs to a garden/);
  });

  it('S6: a read of one question has one, in its garden, and can change nothing', async () => {
    const ids = (gardenId: string): Promise<{ id: string }[]> => database.readOnce({ gardenId }, (db) => db.$queryRaw<{ id: string }[]>`SELECT id FROM sites`);
    expect([await ids(A), await ids(B)]).toEqual([[{ id: A }], [{ id: B }]]);
    const twice = database.readOnce({ gardenId: A }, async (db) => {
      await db.$queryRaw`SELECT 1`;
      return db.$queryRaw`SELECT 2`;
    });
    await expect(twice).rejects.toThrow(/one question/);
    await expect(database.readOnce({ gardenId: A }, (db) => db.$queryRaw`UPDATE sites SET name = 'x'`)).rejects.toMatchObject({ code: '25006' });
  });

  it('S6: a transaction that does not open hands out nothing and its connection is not used again', async () => {
    await expect(database.readSnapshot({ gardenId: 'not an id' }, (db) => db.site.findMany())).rejects.toThrow();
    const { rows } = await app.query("SELECT nullif(current_setting('app.garden_id', true), '') AS garden");
    expect(rows).toEqual([{ garden: null }]);
  });

  it('S6: a transaction in which something failed is not taken for a change that was made', async () => {
    const swallowed = database.inTransaction({ gardenId: A }, async (db) => {
      await db.site.updateMany({ data: { name: 'swallowed' } });
      await db.$queryRaw`SELECT 1/0`.catch(() => undefined);
    });
    await expect(swallowed).rejects.toThrow(/rolled back/);
    const names = await database.readSnapshot({ gardenId: A }, (db) => db.site.findMany({ select: { name: true } }));
    expect(names).toEqual([{ name: 's' }]);
  });
});

describe('S6: the models of gardens', () => {
  it('S6: are all the tables that have one', async () => {
    const { rows } = await app.query<{ name: string }>(TENANT_TABLES);
    expect(tenantModels.map(({ name }) => name).sort()).toEqual(rows.map(({ name }) => name).sort());
    expect(Object.keys(Prisma.ModelName).length).toBeGreaterThanOrEqual(tenantModels.length);
  });
});
