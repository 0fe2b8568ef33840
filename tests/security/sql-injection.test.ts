import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import pg from 'pg';
import ts from 'typescript';
import { REQUEST_EXAMPLES } from '../../apps/api/src/examples/requests.js';
import { startApi, type TestApi, type TestGarden } from '../support/api-app.js';
import { makeExample, type ExampleIds } from '../support/example-requests.js';
import { SQL_PAYLOADS } from '../support/sql-payloads.js';

const SOURCE = 'apps/api/src';

const files = readdirSync(SOURCE, { recursive: true, encoding: 'utf8' })
  .filter((name) => name.endsWith('.ts') && !name.includes('generated'))
  .map((name) => join(SOURCE, name));

/** Where SQL is written by hand with values as parameters of the tag; everything else goes through the models. */
const RAW_FILES: readonly RegExp[] = [/^apps\/api\/src\/platform\//, /\.repository\.ts$/];

/** Where a part of a statement is put in as text, because a name or a command cannot be a parameter; each with its reason. */
const GLUED: Readonly<Record<string, string>> = {
  'platform/database/roles.ts': 'names of databases and roles, through escapeIdentifier and escapeLiteral',
  'platform/jobs/feed.ts': 'LISTEN takes a name; the channel is a constant of the file',
  'platform/jobs/recovery.ts': 'the common beginning of two statements, a constant of the file',
  'platform/database/migrate.ts': 'the migrations themselves, from files of this project',
};

interface Found {
  unsafe: string[];
  raw: Set<string>;
  glued: string[];
}

const isGlue = (node: ts.Expression): boolean =>
  ts.isTemplateExpression(node) || (ts.isBinaryExpression(node) && node.operatorToken.kind === ts.SyntaxKind.PlusToken);

/** Looks at the code, not at its text: comments and words in strings do not count. */
const look = (sources: readonly (readonly [string, string])[]): Found => {
  const found: Found = { unsafe: [], raw: new Set(), glued: [] };
  for (const [name, text] of sources) {
    const visit = (node: ts.Node): void => {
      if (ts.isPropertyAccessExpression(node) || ts.isElementAccessExpression(node)) {
        const member = ts.isPropertyAccessExpression(node)
          ? node.name.text
          : ts.isStringLiteralLike(node.argumentExpression)
            ? node.argumentExpression.text
            : '';
        if (/^\$(query|execute)RawUnsafe$/.test(member)) found.unsafe.push(`${name}: ${member}`);
        if (member === 'raw' && node.expression.getText() === 'Prisma') found.unsafe.push(`${name}: Prisma.raw`);
        if (/^\$(query|execute)Raw$/.test(member)) {
          found.raw.add(name);
          if (!ts.isTaggedTemplateExpression(node.parent)) found.unsafe.push(`${name}: ${member} that is not a tag`);
        }
      }
      if (ts.isCallExpression(node) && ts.isPropertyAccessExpression(node.expression) && node.expression.name.text === 'query') {
        const [first] = node.arguments;
        const statement =
          first && ts.isObjectLiteralExpression(first)
            ? first.properties.flatMap((one) => (ts.isPropertyAssignment(one) && one.name.getText() === 'text' ? [one.initializer] : []))[0]
            : first;
        if (statement && isGlue(statement)) found.glued.push(name);
      }
      ts.forEachChild(node, visit);
    };
    visit(ts.createSourceFile(name, text, ts.ScriptTarget.ES2022, true));
  }
  return found;
};

describe('the source', () => {
  const found = look(files.map((name) => [name, readFileSync(name, 'utf8')] as const));

  it('S26: has no unsafe raw query, and a raw one only as a tag, in repositories and the platform', () => {
    expect(files.length).toBeGreaterThan(100);
    expect(found.unsafe).toEqual([]);
    expect(found.raw.size).toBeGreaterThan(5);
    expect([...found.raw].filter((name) => !RAW_FILES.some((allowed) => allowed.test(name)))).toEqual([]);
  });

  it('S26: glues no statement together but in the listed files, each for a reason', () => {
    const allowed = Object.keys(GLUED).map((name) => join(SOURCE, name));
    expect(found.glued.filter((name) => !allowed.includes(name))).toEqual([]);
    expect(Object.values(GLUED).filter((reason) => reason.length < 30)).toEqual([]);
  });

  it('S26: the look does find what is planted', () => {
    const planted = look([
      ['a.ts', 'db.$queryRawUnsafe(x)'],
      ['b.ts', "db['$executeRawUnsafe'](x)"],
      ['c.ts', 'db.$queryRaw(Prisma.raw(x))'],
      ['d.ts', 'client.query(`SELECT ${x}`)'],
      ['e.ts', "client.query('SELECT ' + x)"],
      ['f.ts', 'client.query({ name: "n", text: `SELECT ${x}` })'],
      ['g.ts', '// $queryRawUnsafe\nclient.query("SELECT $1", [x]); db.$queryRaw`SELECT ${x}`;'],
    ]);
    expect(planted.unsafe).toEqual(['a.ts: $queryRawUnsafe', 'b.ts: $executeRawUnsafe', 'c.ts: $queryRaw that is not a tag', 'c.ts: Prisma.raw']);
    expect(planted.glued).toEqual(['d.ts', 'e.ts', 'f.ts']);
  });
});

type Json = Record<string, unknown>;

/** The place of every text in a body. */
const textsIn = (value: unknown, at: (string | number)[] = []): (string | number)[][] => {
  if (typeof value === 'string') return [at];
  if (Array.isArray(value)) return value.flatMap((one, i) => textsIn(one, [...at, i]));
  return typeof value === 'object' && value !== null ? Object.entries(value).flatMap(([key, one]) => textsIn(one, [...at, key])) : [];
};

const withText = (body: unknown, [key, ...rest]: readonly (string | number)[], text: string): unknown => {
  if (key === undefined) return text;
  if (Array.isArray(body)) return body.map((one, i) => (i === key ? withText(one, rest, text) : one));
  return { ...(body as Json), [key]: withText((body as Json)[key], rest, text) };
};

describe('the running server', () => {
  let api: TestApi;
  let garden: TestGarden;
  let ids: ExampleIds;
  let admin: pg.Client;
  beforeAll(async () => {
    api = await startApi();
    garden = await api.garden();
    ids = await makeExample(garden.http);
    admin = new pg.Client({ connectionString: api.database.adminUrl });
    await admin.connect();
  });
  afterAll(async () => {
    await admin.end();
    await api.stop();
  });

  /** Everything that no request of this test may change. */
  const fingerprint = async (): Promise<Json> => {
    const { rows } = await admin.query<Json>(`SELECT
      (SELECT string_agg(tablename, ',' ORDER BY tablename) FROM pg_tables WHERE schemaname = 'public') AS tables,
      (SELECT string_agg(rolname || rolsuper || rolbypassrls, ',' ORDER BY rolname) FROM pg_roles) AS roles,
      (SELECT string_agg(id || name || currency, ',' ORDER BY id) FROM gardens) AS gardens,
      (SELECT count(*) FROM api_keys)::int AS keys, (SELECT count(*) FROM builds)::int AS builds, (SELECT count(*) FROM structures)::int AS structures`);
    return rows[0] ?? {};
  };
  const rowCount = async (): Promise<number> =>
    (await admin.query<{ n: number }>('SELECT ((SELECT count(*) FROM sites) + (SELECT count(*) FROM stock_items) + (SELECT count(*) FROM prices))::int AS n'))
      .rows[0]?.n ?? 0;

  it.each([
    ['/v1/sites', 'createSite'],
    ['/v1/stock', 'createStockItem'],
    ['/v1/prices', 'createPrice'],
  ])(
    'S26: fifty payloads in every text of %s break nothing, change nothing else, and wait for nothing',
    async (path, example) => {
      expect(new Set(SQL_PAYLOADS).size).toBeGreaterThanOrEqual(50);
      const body = REQUEST_EXAMPLES[example] as Json;
      const places = textsIn(body);
      expect(places.length).toBeGreaterThanOrEqual(5);
      const [before, rows] = [await fingerprint(), await rowCount()];
      let made = 0;
      let slowest = 0;
      for (const place of places)
        for (const payload of SQL_PAYLOADS) {
          const started = performance.now();
          const answer = await garden.http.request('post', path).send(withText(body, place, payload) as object);
          slowest = Math.max(slowest, performance.now() - started);
          expect([place.join('/'), payload, answer.status < 500]).toEqual([place.join('/'), payload, true]);
          if (answer.status === 201) made += 1;
          else expect(answer.body.type).toMatch(/^\/v1\/problems\/(validation-failed|name-taken|inputs-contradict)$/);
        }
      expect(slowest).toBeLessThan(4500);
      expect(await fingerprint()).toEqual(before);
      expect(await rowCount()).toBe(rows + made);
      expect(made).toBeGreaterThan(0);
    },
    240_000,
  );

  it('S26: what was taken comes back as it was sent, in one thing and in the list', async () => {
    const [price = {}] = [REQUEST_EXAMPLES['createPrice'] as Json];
    for (const payload of SQL_PAYLOADS) {
      const { body } = await garden.http.post('/v1/prices', { ...price, supplier: payload.slice(0, 80) });
      expect((await garden.http.get(`/v1/prices/${body.id}`)).body.supplier).toBe(payload.slice(0, 80));
    }
  });

  it('S26: payloads in addresses, filters, cursors and headers are refused or mean nothing', async () => {
    const before = await fingerprint();
    for (const payload of SQL_PAYLOADS) {
      const text = encodeURIComponent(payload);
      const answers = await Promise.all([
        garden.http.get(`/v1/sites/${text}`),
        garden.http.get(`/v1/stock?kind=${text}`),
        garden.http.get(`/v1/stock?limit=${text}`),
        garden.http.get(`/v1/stock?cursor=${text}`),
        garden.http.get(`/v1/plans?buildId=${text}`),
        garden.http.get(`/v1/climate/stations?near=${text}`),
        garden.http.get(`/v1/climate/stations/${text}`),
        garden.http.get(`/v1/problems/${text}`),
        garden.http.get(`/v1/plans/${ids.buildId}/calendar.ics?startsOn=${text}`),
        api.as(payload.replaceAll(/[^\x20-\x7e]/g, '')).get('/v1/sites'),
        api.as(`lw_${payload.replaceAll(/[^\x20-\x7e]/g, '')}`).get('/v1/sites'),
      ]);
      expect([payload, answers.map(({ status }) => status).filter((status) => status >= 500 || status < 400)]).toEqual([payload, []]);
      const keyed = await garden.http.post('/v1/prices', REQUEST_EXAMPLES['createPrice'] as object, payload.replaceAll(/[^\x20-\x7e]/g, 'x'));
      expect([payload, keyed.status]).toEqual([payload, 201]);
      expect((await garden.http.get('/v1/sites').set('If-None-Match', payload.replaceAll(/[^\x20-\x7e]/g, ''))).status).toBe(200);
    }
    expect(await fingerprint()).toEqual(before);
  }, 240_000);
});
