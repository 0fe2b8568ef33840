import { readFileSync } from 'node:fs';
import { expect, test } from '@jest/globals';
import { Ajv2020 } from 'ajv/dist/2020.js';

const { generatedFiles } = (await import('../../tools/lib/generated.mjs' as string)) as { generatedFiles: () => Record<string, string> };
const files = generatedFiles();

test.each(Object.keys(files))('%s is what the code generates', (path) => {
  expect(readFileSync(path, 'utf8')).toBe(files[path]);
});

test.each(Object.keys(files).filter((f) => f.endsWith('.json')))('%s compiles as JSON Schema 2020-12', (path) => {
  const ajv = new Ajv2020({ strict: false, validateFormats: false });
  const valid = ajv.compile(JSON.parse(files[path] as string) as object);
  expect(valid({})).toBe(false);
});
