// Lints an OpenAPI document: node tools/contract/lint.mjs [file], or the document on standard input. Prints what two
// linters find as one JSON list; docs/api/lint-exceptions.json says which findings are accepted, and a test holds it to that.
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { createConfig, lintFromString } from '@redocly/openapi-core';
import spectralCore from '@stoplight/spectral-core';
import spectralRulesets from '@stoplight/spectral-rulesets';
import owaspModule from '@stoplight/spectral-owasp-ruleset';

const owasp = owaspModule.default ?? owaspModule;

export const withRedocly = async (text) => {
  const found = await lintFromString({ source: text, absoluteRef: '/openapi.json', config: await createConfig({ extends: ['recommended-strict'] }) });
  return found.map(({ ruleId, message, location }) => ({ linter: 'redocly', rule: ruleId, at: location[0]?.pointer ?? '', message }));
};

export const withSpectral = async (text) => {
  const linter = new spectralCore.Spectral();
  const rules = [
    [spectralRulesets.oas, 'recommended'],
    [owasp, 'recommended'],
  ];
  linter.setRuleset(new spectralCore.Ruleset({ extends: rules }, { source: '/rules.js' }));
  const found = await linter.run(JSON.parse(text));
  return found.map(({ code, message, path }) => ({ linter: 'spectral', rule: String(code), at: path.join('/'), message }));
};

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const text = readFileSync(process.argv[2] ?? 0, 'utf8');
  process.stdout.write(JSON.stringify([...(await withRedocly(text)), ...(await withSpectral(text))]));
}
