// npm run -s plan:compute -- FILE.json     PlanInputs in, PlanResult out, no server.
// FILE may be "-" for standard input. Faults go to standard error, all at once; exit 2 for a bad input.
import { readFileSync } from 'node:fs';
import { setUp } from './setup.mjs';

const [file] = process.argv.slice(2);
const refuse = (message) => {
  process.stderr.write(message + '\n');
  process.exit(2);
};
if (!file) refuse('Name a JSON file of PlanInputs (its schema: docs/api/plan-inputs.schema.json), or - for standard input.');

await setUp();
const [{ computePlan }, { PlanInputsSchema }, { Ajv2020 }, formats] = await Promise.all([
  import('@lathwork/calc'),
  import('@lathwork/model'),
  import('ajv/dist/2020.js'),
  import('ajv-formats'),
]);

let inputs;
try {
  inputs = JSON.parse(readFileSync(file === '-' ? 0 : file, 'utf8'));
} catch (e) {
  refuse(`${file}: ${e.message}`);
}
const ajv = new Ajv2020({ allErrors: true, strict: false });
formats.default.default(ajv);
const valid = ajv.compile(PlanInputsSchema);
if (!valid(inputs)) {
  const faults = valid.errors.map((e) => `${e.instancePath || '/'}: ${e.message}${e.params?.additionalProperty ? ` (${e.params.additionalProperty})` : ''}`);
  refuse(`${file} is not a PlanInputs document (see docs/api/plan-inputs.schema.json):\n- ${[...new Set(faults)].join('\n- ')}`);
}
const { version } = JSON.parse(readFileSync(new URL('../package.json', import.meta.url), 'utf8'));
process.stdout.write(JSON.stringify(computePlan(inputs, { engineVersion: version }), null, 2) + '\n');
