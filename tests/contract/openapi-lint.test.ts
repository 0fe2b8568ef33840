import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { beforeAll, describe, expect, it } from '@jest/globals';
import { contractOf, currentContract, walk, type Contract } from '../support/contract.js';

interface Finding {
  linter: 'redocly' | 'spectral';
  rule: string;
  /** Of the operation it is about, or of the place in the document. */
  at: string;
  message: string;
}

interface Exception {
  linter: string;
  rule: string;
  where: string;
  reason: string;
}

/** The linters run in a process of their own: they bring their own loaders, which the test runner's do not suit. */
const lint = (text: string): Finding[] => {
  const { status, stdout, stderr } = spawnSync(process.execPath, ['tools/contract/lint.mjs'], { input: text, encoding: 'utf8', maxBuffer: 1 << 28 });
  if (status !== 0) throw new Error(`the linters did not run: ${stderr.slice(0, 2000)}`);
  return JSON.parse(stdout) as Finding[];
};

const exceptions = JSON.parse(readFileSync('docs/api/lint-exceptions.json', 'utf8')) as Exception[];

let contract: Contract;
let findings: Finding[] = [];

const isPublicPlace = (at: string): boolean => contract.operations.some((one) => one.isPublic && at.startsWith(`paths/${one.path}/${one.method}`));

const isExcepted = (finding: Finding, { linter, rule, where }: Exception): boolean =>
  finding.linter === linter && finding.rule === rule && (where === 'x-public' ? isPublicPlace(finding.at) : new RegExp(where).test(finding.at));

const said = (all: readonly Finding[]): string[] => all.map(({ linter, rule, at, message }) => `${linter} ${rule} at ${at}: ${message}`);

beforeAll(async () => {
  contract = await currentContract();
  findings = lint(contract.text);
});

describe('the description under two linters', () => {
  it('A2: Redocly recommended-strict and Spectral oas with OWASP find nothing, errors and warnings alike, but the listed exceptions', () => {
    const left = findings.filter((finding) => !exceptions.some((one) => isExcepted(finding, one)));
    expect(said(left).slice(0, 20)).toEqual([]);
  });

  it('A2: there are at most ten exceptions, each with a reason, each still needed', () => {
    expect(exceptions.length).toBeLessThanOrEqual(10);
    expect(exceptions.filter(({ reason }) => reason.length < 40)).toEqual([]);
    expect(exceptions.filter((one) => !findings.some((finding) => isExcepted(finding, one)))).toEqual([]);
  });

  it('A2: both linters really look: a document with faults planted in it is refused by both', () => {
    const faulty = structuredClone(contract.document);
    const first = faulty.paths['/v1/sites']?.['get'];
    if (!first) throw new Error('the list of sites is gone');
    delete first['operationId'];
    first['security'] = undefined;
    faulty.components['schemas'] = { ...faulty.components['schemas'], Unheard: { type: 'strange' } };
    const found = lint(JSON.stringify(faulty)).filter(({ rule }) => rule === 'operation-operationId');
    expect(new Set(found.map(({ linter }) => linter))).toEqual(new Set(['redocly', 'spectral']));
  });
});

describe('the description as OpenAPI 3.1', () => {
  it('A3: it is valid by the meta-schema of 3.1', async () => {
    const { Validator } = await import('@seriousme/openapi-schema-validator');
    const validator = new Validator();
    expect(await validator.validate(structuredClone(contract.document))).toEqual({ valid: true });
    expect(validator.version).toBe('3.1');
    const broken = await new Validator().validate({ ...structuredClone(contract.document), paths: [] });
    expect(broken.valid).toBe(false);
  });

  it('A3: nothing of 3.0 is left: no "nullable", and nothing may be null but by a type', () => {
    const old: string[] = [];
    walk(contract.document, (json, at, key) => {
      if (key === 'properties' || key === 'example' || at.includes('/example/')) return;
      if ('nullable' in json) old.push(`${at}: nullable`);
      if (typeof json['exclusiveMinimum'] === 'boolean' || typeof json['exclusiveMaximum'] === 'boolean') old.push(`${at}: exclusive limits as flags`);
      if (Array.isArray(json['enum']) && json['enum'].includes(null)) old.push(`${at}: null among the words`);
    });
    expect(old).toEqual([]);
    expect(contract.text).toMatch(/"type": ?"null"/);
  });

  it('A3: the released document is one too', async () => {
    const { Validator } = await import('@seriousme/openapi-schema-validator');
    const text = readFileSync('docs/api/released/v1.json', 'utf8');
    expect(contractOf(text).operations.length).toBeGreaterThan(50);
    expect(await new Validator().validate(JSON.parse(text) as Record<string, unknown>)).toEqual({ valid: true });
  });
});
