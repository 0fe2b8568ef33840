import { readFileSync } from 'node:fs';
import { expect, test } from '@jest/globals';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { PIVOT } from '../../apps/api/src/platform/access/pivot.js';
import { ROLES } from '../../apps/api/src/platform/access/roles.js';
import { VARIABLES } from '../../apps/api/src/platform/config/config.js';

type Files = Record<string, string>;
const { generatedFiles, apiFiles } = (await import('../../tools/lib/generated.mjs' as string)) as {
  generatedFiles: () => Files;
  apiFiles: (from: { variables: object; pivot: object; roles: readonly string[] }) => Files;
};
const files = { ...generatedFiles(), ...apiFiles({ variables: VARIABLES, pivot: PIVOT, roles: ROLES }) };

test.each(Object.keys(files))('%s is what the code generates', (path) => {
  expect(readFileSync(path, 'utf8')).toBe(files[path]);
});

test.each(Object.keys(files).filter((f) => f.endsWith('.json')))('%s compiles as JSON Schema 2020-12', (path) => {
  const ajv = new Ajv2020({ strict: false, validateFormats: false });
  const valid = ajv.compile(JSON.parse(files[path] as string) as object);
  expect(valid({})).toBe(false);
});
