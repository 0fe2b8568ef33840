// Writes the generated half of the client (libs/client/src/generated) from the committed API document.
// The same document always gives the same bytes: nothing is asked of the network, the clock or the machine.
//   node tools/client-types/generate.mjs            writes the files
//   node tools/client-types/generate.mjs --stdout   prints them as one JSON object, path to text
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import openapiTS, { astToString } from 'openapi-typescript';
import ts from 'typescript';

const root = join(dirname(fileURLToPath(import.meta.url)), '..', '..');
const DOCUMENT = 'docs/api/openapi.json';
const FOLDER = 'libs/client/src/generated';
const HEAD = `// Written from ${DOCUMENT} by tools/client-types/generate.mjs. Do not edit: change the API and write it again.\n`;

const followed = (document, node) => {
  if (node?.$ref === undefined) return node;
  return node.$ref
    .slice(2)
    .split('/')
    .reduce((inside, key) => inside[key.replaceAll('~1', '/').replaceAll('~0', '~')], document);
};

/** "POST /v1/sites" for each operation that takes an Idempotency-Key: a repeat of it makes nothing twice. */
const creatingOperations = (document) =>
  Object.entries(document.paths)
    .flatMap(([path, item]) =>
      Object.entries(item)
        .filter(([, operation]) =>
          (operation.parameters ?? [])
            .map((parameter) => followed(document, parameter))
            .some((parameter) => parameter.in === 'header' && parameter.name.toLowerCase() === 'idempotency-key'),
        )
        .map(([method]) => `${method.toUpperCase()} ${path}`),
    )
    .sort();

const creatingText = (document) =>
  [
    HEAD,
    '/** The operations that take an Idempotency-Key: a repeat with the same key makes nothing twice. */',
    'export const CREATING: ReadonlySet<string> = new Set([',
    ...creatingOperations(document).map((name) => `  '${name}',`),
    ']);',
    '',
  ].join('\n');

/** Bytes that are a whole body are a Blob; everything else is as the writer of types has it. */
const transform = (schema) => (schema.format === 'binary' ? ts.factory.createTypeReferenceNode('Blob') : undefined);

/**
 * The generated files, path (from the project's root) to text.
 * @param {string} documentText the OpenAPI document, as JSON text
 * @returns {Promise<Record<string, string>>}
 */
export async function clientFiles(documentText) {
  const document = JSON.parse(documentText);
  const nodes = await openapiTS(documentText, { alphabetize: true, emptyObjectsUnknown: true, silent: true, transform });
  return {
    [`${FOLDER}/types.ts`]: `${HEAD}\n${astToString(nodes)}`,
    [`${FOLDER}/creating.ts`]: creatingText(document),
  };
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  const files = await clientFiles(readFileSync(join(root, DOCUMENT), 'utf8'));
  if (process.argv.includes('--stdout')) process.stdout.write(JSON.stringify(files));
  else
    for (const [path, text] of Object.entries(files)) {
      mkdirSync(dirname(join(root, path)), { recursive: true });
      writeFileSync(join(root, path), text);
      console.log(`wrote ${path}`);
    }
}
