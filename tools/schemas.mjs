// npm run schemas: writes the JSON Schemas, docs/sources.md, the OpenAPI document and the client's types from the code.
import { mkdirSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { root } from './lib/steps.mjs';
import { setUp } from './setup.mjs';

await setUp();
const [{ generatedFiles, apiFiles }, { openApiText }, { VARIABLES: variables }, { PIVOT: pivot }, { ROLES: roles }, { clientFiles }] = await Promise.all([
  import('./lib/generated.mjs'),
  import('../apps/api/dist/openapi.js'),
  import('../apps/api/dist/platform/config/config.js'),
  import('../apps/api/dist/platform/access/pivot.js'),
  import('../apps/api/dist/platform/access/roles.js'),
  import('./client-types/generate.mjs'),
]);
const document = await openApiText();
const files = { ...generatedFiles(), ...apiFiles({ variables, pivot, roles }), 'docs/api/openapi.json': document, ...(await clientFiles(document)) };
for (const [path, text] of Object.entries(files)) {
  mkdirSync(dirname(join(root, path)), { recursive: true });
  writeFileSync(join(root, path), text);
  console.log(`wrote ${path}`);
}
