// npm run schemas: writes the JSON Schemas, docs/sources.md and the OpenAPI document from the code.
import { mkdirSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { root } from './lib/steps.mjs';
import { setUp } from './setup.mjs';

await setUp();
const [{ generatedFiles }, { openApiText }] = await Promise.all([import('./lib/generated.mjs'), import('../apps/api/dist/openapi.js')]);
const files = { ...generatedFiles(), 'docs/api/openapi.json': await openApiText() };
for (const [path, text] of Object.entries(files)) {
  mkdirSync(dirname(join(root, path)), { recursive: true });
  writeFileSync(join(root, path), text);
  console.log(`wrote ${path}`);
}
