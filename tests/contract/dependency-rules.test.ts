import { execFileSync } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { afterAll, beforeAll, expect, test } from '@jest/globals';

/** One planted offence for each rule of the house: the file that breaks it, and what it says. */
const OFFENCES: Record<string, { file: string; text: string }> = {
  'units-depends-on-nothing': { file: 'libs/units/src/bad.ts', text: `import { model } from '@lathwork/model';\nexport const x = model;` },
  'model-depends-on-units': { file: 'libs/model/src/bad.ts', text: `import { calc } from '@lathwork/calc';\nexport const x = calc;` },
  'formats-depends-on-model': { file: 'libs/formats/src/bad.ts', text: `import { calc } from '@lathwork/calc';\nexport const x = calc;` },
  'calc-depends-on-model': { file: 'libs/calc/src/bad.ts', text: `import { drawing } from '@lathwork/drawing';\nexport const x = drawing;` },
  'drawing-depends-on-model': { file: 'libs/drawing/src/bad.ts', text: `import { formats } from '@lathwork/formats';\nexport const x = formats;` },
  'client-depends-on-nothing-of-ours': { file: 'libs/client/src/bad.ts', text: `import { model } from '@lathwork/model';\nexport const x = model;` },
  'the-house-does-not-call-itself': { file: 'apps/report/src/calls.ts', text: `import { client } from '@lathwork/client';\nexport const x = client;` },
  'apps-do-not-meet': { file: 'apps/report/src/meets.ts', text: `import { api } from '../../api/src/thing.js';\nexport const x = api;` },
  'report-computes-nothing': { file: 'apps/report/src/computes.ts', text: `import { calc } from '@lathwork/calc';\nexport const x = calc;` },
  'libs-know-no-app': { file: 'libs/drawing/src/app.ts', text: `import { api } from '../../../apps/api/src/thing.js';\nexport const x = api;` },
  'pure-libs-touch-no-machine': { file: 'libs/calc/src/machine.ts', text: `import { readFileSync } from 'node:fs';\nexport const x = readFileSync;` },
  'rooms-do-not-meet': { file: 'libs/calc/src/rooms/wind.ts', text: `import { snow } from './snow.js';\nexport const x = snow;` },
  'only-the-chain-knows-the-order': {
    file: 'libs/calc/src/rooms/frost.ts',
    text: `import { chain } from '../chain/compute-plan.js';\nexport const x = chain;`,
  },
  'physics-lies-under-rooms': { file: 'libs/calc/src/physics/bad.ts', text: `import { snow } from '../rooms/snow.js';\nexport const x = snow;` },
  'prisma-in-repositories-only': {
    file: 'apps/api/src/domains/sites/sites.service.ts',
    text: `import { PrismaClient } from '@prisma/client';\nexport const x = PrismaClient;`,
  },
  'domains-meet-through-the-read-door': {
    file: 'apps/api/src/domains/plans/plans.service.ts',
    text: `import { x as s } from '../sites/sites.service.js';\nexport const x = s;`,
  },
  'controllers-ask-services': {
    file: 'apps/api/src/domains/sites/sites.controller.ts',
    text: `import { repo } from './sites.repository.js';\nexport const x = repo;`,
  },
  'platform-knows-no-domain': { file: 'apps/api/src/platform/bad.ts', text: `import { x as s } from '../domains/sites/sites.read.js';\nexport const x = s;` },
  'report-has-no-database': { file: 'apps/report/src/database.ts', text: `import pg from 'pg';\nexport const x = pg;` },
  'no-circles': { file: 'libs/units/src/about.ts', text: `import { x } from './round.js';\nexport const y = () => x;` },
  'by-the-door': { file: 'apps/api/src/window.ts', text: `import { hidden } from '../../../libs/model/src/hidden.js';\nexport const x = hidden;` },
};

const BYSTANDERS: Record<string, string> = {
  'libs/units/src/index.ts': 'export const units = 1;',
  'libs/units/src/round.ts': `import { y } from './about.js';\nexport const x = y;`,
  'libs/model/src/index.ts': 'export const model = 1;',
  'libs/model/src/hidden.ts': 'export const hidden = 1;',
  'libs/formats/src/index.ts': 'export const formats = 1;',
  'libs/calc/src/index.ts': 'export const calc = 1;',
  'libs/calc/src/rooms/snow.ts': 'export const snow = 1;',
  'libs/calc/src/chain/compute-plan.ts': `import { snow } from '../rooms/snow.js';\nexport const chain = snow;`,
  'libs/client/src/index.ts': 'export const client = 1;',
  'libs/drawing/src/index.ts': 'export const drawing = 1;',
  'apps/api/src/thing.ts': `import { calc } from '@lathwork/calc';\nexport const api = calc;`,
  'apps/api/src/domains/sites/sites.repository.ts': `import { PrismaClient } from '@prisma/client';\nexport const repo = PrismaClient;`,
  'apps/api/src/domains/sites/sites.read.ts': `import { repo } from './sites.repository.js';\nexport const x = repo;`,
};

const root = process.cwd();
mkdirSync(join(root, '.data'), { recursive: true });
const place = mkdtempSync(join(root, '.data', 'planted-'));
let caught: { rule: string; from: string }[] = [];

const write = (file: string, text: string): void => {
  mkdirSync(dirname(join(place, file)), { recursive: true });
  writeFileSync(join(place, file), text + '\n');
};

beforeAll(() => {
  for (const [file, text] of Object.entries(BYSTANDERS)) write(file, text);
  for (const { file, text } of Object.values(OFFENCES)) write(file, text);
  for (const file of ['.dependency-cruiser.mjs', 'tsconfig.rules.json']) cpSync(join(root, file), join(place, file));
  symlinkSync(join(root, 'node_modules'), join(place, 'node_modules'));
  let out: string;
  try {
    out = execFileSync(
      process.execPath,
      [join(root, 'node_modules/dependency-cruiser/bin/dependency-cruise.mjs'), '--config', '.dependency-cruiser.mjs', '--output-type', 'json', 'apps', 'libs'],
      { cwd: place, encoding: 'utf8', stdio: ['ignore', 'pipe', 'ignore'], maxBuffer: 1 << 26 },
    );
  } catch (e) {
    out = String((e as { stdout?: string }).stdout ?? '');
  }
  const report = JSON.parse(out) as { summary: { violations: { from: string; rule: { name: string } }[] } };
  caught = report.summary.violations.map((v) => ({ rule: v.rule.name, from: v.from }));
}, 60_000);

afterAll(() => rmSync(place, { recursive: true, force: true }));

test.each(Object.entries(OFFENCES))('the rule %s catches its planted offence', (rule, { file }) => {
  expect(caught).toContainEqual({ rule, from: file });
});

test('bystanders that keep the rules are left alone', () => {
  const innocent = Object.keys(BYSTANDERS).filter((f) => f !== 'libs/units/src/round.ts');
  expect(caught.filter((c) => innocent.includes(c.from))).toEqual([]);
});

test('every rule in the configuration has a planted offence', async () => {
  const config = (await import(join(root, '.dependency-cruiser.mjs'))) as { default: { forbidden: { name: string }[] } };
  expect(config.default.forbidden.map((r) => r.name).sort()).toEqual(Object.keys(OFFENCES).sort());
});
