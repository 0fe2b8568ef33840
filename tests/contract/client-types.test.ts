import { execFileSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { describe, expect, test } from '@jest/globals';

const FOLDER = 'libs/client/src/generated';
const write = (...args: string[]): string =>
  execFileSync(process.execPath, ['tools/client-types/generate.mjs', ...args], { encoding: 'utf8', maxBuffer: 64 * 1024 * 1024 });
const files = JSON.parse(write('--stdout')) as Record<string, string>;

test('A35: the generated half of the client is what the API document gives, and nothing else lies beside it', () => {
  expect(
    readdirSync(FOLDER)
      .map((name) => `${FOLDER}/${name}`)
      .sort(),
  ).toEqual(Object.keys(files).sort());
  for (const [path, text] of Object.entries(files)) expect(readFileSync(path, 'utf8')).toBe(text);
});

test('every operation of the document is an operation of the types, and creating ones are those with an Idempotency-Key', () => {
  const document = JSON.parse(readFileSync('docs/api/openapi.json', 'utf8')) as { paths: Record<string, Record<string, { operationId: string }>> };
  const operations = Object.entries(document.paths).flatMap(([path, item]) => Object.entries(item).map(([method, one]) => ({ path, method, ...one })));
  const types = files[`${FOLDER}/types.ts`] as string;
  expect(operations.length).toBeGreaterThan(50);
  expect(operations.filter((one) => !types.includes(`operations["${one.operationId}"]`)).map((one) => one.operationId)).toEqual([]);
  const creating = [...(files[`${FOLDER}/creating.ts`] as string).matchAll(/^ {2}'(.*)',$/gm)].map((match) => match[1]);
  // Said by the document's own text, not by the generator's way of reading it.
  const keyed = operations.filter((one) => /"Idempotency-Key"|parameters\/IdempotencyKey"/.test(JSON.stringify(one)));
  expect(creating).toEqual(keyed.map((one) => `${one.method.toUpperCase()} ${one.path}`).sort());
});

describe('A35: the client compiles under strict, for its users too', () => {
  const USE = `import { createClient } from '@lathwork/client';
const api = createClient({ baseUrl: 'https://api.example', key: 'lw_x' });
export const state: 'computing' | 'ready' | 'failed' = (await api.get('/v1/plans/{id}', { params: { path: { id: 'x' } } })).state;
`;
  const README = /```js\n(import[^]*?)```/.exec(readFileSync('libs/client/README.md', 'utf8'))?.[1] ?? 'the page begins with no example';
  const OPTIONS = {
    strict: true,
    noUncheckedIndexedAccess: true,
    exactOptionalPropertyTypes: true,
    noEmit: true,
    target: 'es2023',
    module: 'nodenext',
    moduleResolution: 'nodenext',
    lib: ['es2023', 'dom', 'dom.iterable'],
    types: ['node'],
    typeRoots: [resolve('node_modules/@types')],
    skipLibCheck: false,
  };
  const check = (compiler: string): string => {
    const folder = mkdtempSync(join(tmpdir(), 'lathwork-client-'));
    const compilerOptions = { ...OPTIONS, paths: { '@lathwork/client': [resolve('libs/client/src/index.ts')] } };
    writeFileSync(join(folder, 'package.json'), '{"type":"module"}');
    writeFileSync(join(folder, 'use.ts'), USE);
    writeFileSync(join(folder, 'readme.ts'), README);
    writeFileSync(join(folder, 'misuse.ts'), USE.replace("'/v1/plans/{id}'", "'/v1/plants/{id}'"));
    writeFileSync(join(folder, 'tsconfig.json'), JSON.stringify({ compilerOptions, files: ['use.ts', 'readme.ts', 'misuse.ts'] }));
    try {
      return execFileSync(process.execPath, [resolve(`${compiler}/bin/tsc`), '-p', '.', '--pretty', 'false'], { cwd: folder, encoding: 'utf8' });
    } catch (error) {
      return (error as { stdout: string }).stdout;
    } finally {
      rmSync(folder, { recursive: true });
    }
  };

  test.each([
    ['the TypeScript of the house', 'node_modules/typescript'],
    ['TypeScript 5.9', 'tools/client-types/node_modules/typescript'],
  ])('%s', (_which, compiler) => {
    const files = [...check(compiler).matchAll(/^(\S+?)\(\d+,\d+\): error/gm)].map((match) => match[1]);
    expect(new Set(files)).toEqual(new Set(['misuse.ts']));
  });
});
