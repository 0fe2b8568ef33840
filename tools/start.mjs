// npm start: serves API, report app and database until stopped. PORT chooses the port (default 8080).
// The invented example is loaded once, so that there is something to look at; its key is kept beside the database.
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { root, step } from './lib/steps.mjs';
import { setUp } from './setup.mjs';

await setUp();
const { startProduct } = await import('./lib/services.mjs');
const { client, exampleGardens, loadGarden } = await import('./lib/example.mjs');

const product = await step('starting the database, the API and the report app', () =>
  startProduct({ apiPort: Number(process.env.PORT ?? 8080), logLevel: process.env.LOG_LEVEL ?? 'info' }),
);
let stopping = false;
const stop = async () => {
  if (stopping) return;
  stopping = true;
  await product.stop();
  process.exit(0);
};
process.on('SIGINT', stop);
process.on('SIGTERM', stop);

const keyFile = join(root, '.data', 'demo-key');
const works = async (key) =>
  client(product.apiUrl, key)
    .get('/v1/gardens/current')
    .then(() => true)
    .catch(() => false);
let key = existsSync(keyFile) ? readFileSync(keyFile, 'utf8') : undefined;
if (!key || !(await works(key))) {
  const [example] = exampleGardens();
  ({ key } = await step(`loading ${example.garden.name} (invented)`, () => loadGarden(product.apiUrl, product.operatorToken, example)));
  mkdirSync(join(root, '.data'), { recursive: true });
  writeFileSync(keyFile, key, { mode: 0o600 });
}
console.log(`
  API            ${product.apiUrl}/v1
  API reference  ${product.apiUrl}/v1/docs   (OpenAPI: ${product.apiUrl}/v1/openapi.json)
  demo key       ${key}
  operator token ${product.operatorToken}   (makes gardens: POST /v1/gardens)

  curl -H "Authorization: Bearer ${key}" ${product.apiUrl}/v1/builds

Stop with Ctrl-C.`);
await product.ended;
if (!stopping) {
  console.error('A part of the product ended by itself; see .data/logs.');
  await product.stop();
  process.exit(1);
}
