import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { beforeAll, expect, test } from '@jest/globals';

/** The second lock: what each room's Nx tag may depend on. The first lock is .dependency-cruiser.mjs. */
const MAY_DEPEND_ON: Record<string, readonly string[]> = {
  'room:units': [],
  'room:model': ['room:units'],
  'room:formats': ['room:model', 'room:units'],
  'room:calc': ['room:model', 'room:units'],
  'room:drawing': ['room:model', 'room:units'],
  'room:client': [],
  'room:api': ['room:formats', 'room:calc', 'room:drawing', 'room:model', 'room:units'],
  'room:report': ['room:drawing', 'room:model', 'room:units'],
};

interface Graph {
  graph: { nodes: Record<string, { data: { tags?: string[]; root: string } }>; dependencies: Record<string, { target: string }[]> };
}

let graph: Graph['graph'];
const roomOf = (project: string): string | undefined => graph.nodes[project]?.data.tags?.find((t) => t.startsWith('room:'));

beforeAll(() => {
  const dir = mkdtempSync(join(tmpdir(), 'lathwork-graph-'));
  const file = join(dir, 'graph.json');
  execFileSync(process.execPath, [join(process.cwd(), 'node_modules/nx/dist/bin/nx.js'), 'graph', `--file=${file}`, '--open=false'], {
    stdio: 'ignore',
    env: { ...process.env, NX_DAEMON: 'false', NX_SKIP_NX_CACHE: 'true', NX_CACHE_PROJECT_GRAPH: 'false' },
  });
  graph = (JSON.parse(readFileSync(file, 'utf8')) as Graph).graph;
  rmSync(dir, { recursive: true });
}, 120_000);

test('every project of the house carries one room tag that the table knows', () => {
  const houses = Object.entries(graph.nodes).filter(([, n]) => /^(apps|libs)\//.test(n.data.root));
  expect(houses.map(([name]) => roomOf(name)).sort()).toEqual(Object.keys(MAY_DEPEND_ON).sort());
});

test('no project depends on a room that its tag does not allow', () => {
  const offences = Object.entries(graph.dependencies).flatMap(([from, deps]) =>
    deps.flatMap(({ target }) => {
      const [a, b] = [roomOf(from), roomOf(target)];
      return a && b && a !== b && !MAY_DEPEND_ON[a]?.includes(b) ? [`${from} -> ${target}`] : [];
    }),
  );
  expect(offences).toEqual([]);
});

test('the graph is a real one: the api is seen to depend on calc and the model on units', () => {
  const targets = (room: string) =>
    Object.entries(graph.dependencies).flatMap(([from, deps]) => (roomOf(from) === room ? deps.map((d) => roomOf(d.target)) : []));
  expect(targets('room:api')).toContain('room:calc');
  expect(targets('room:model')).toContain('room:units');
});
