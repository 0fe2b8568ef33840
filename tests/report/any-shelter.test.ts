import { afterAll, beforeAll, expect, test } from '@jest/globals';
import { computePlan } from '@lathwork/calc';
import type { PlanInputs } from '@lathwork/model';
import type { ReportApp } from '../../apps/report/src/app.js';
import { checkRequest } from '../../apps/report/src/http/validate.js';
import { inlandCanopy } from '../support/gardens.js';
import { openPdf, pageTexts, reportApp, sampleRequest } from './support.js';

let app: ReportApp;
beforeAll(() => {
  app = reportApp({ REPORT_TIMEOUT_MS: '90000' });
});
afterAll(() => app.stop(), 30_000);

type Shape = Partial<PlanInputs['structure']>;
const bows = (count: number, lengthM: number): number[] => Array.from({ length: count }, (_, i) => (i * lengthM) / (count - 1));

/** Shapes nobody should build, with much unknown: a book must be printed all the same, and say what it lacks. */
const wild: [string, Shape][] = [
  [
    'a lean-to from the ground, 6.3 x 24.3 m, with a narrow roll',
    {
      kind: 'leanTo',
      widthM: 6.3,
      lengthM: 24.3,
      eaveM: 0,
      ridgeM: 1.1,
      bowsAtM: bows(17, 24.3),
      hostWall: { material: 'unknown', heightM: 9, roofShedsOntoIt: 'unknown' },
    },
  ],
  ['a canopy without walls to speak of, 8.1 x 48.6 m', { kind: 'gableCanopy', widthM: 8.1, lengthM: 48.6, eaveM: 0, ridgeM: 1.8, bowsAtM: bows(30, 48.6) }],
];

test.each(wild)(
  '%s is printed whole',
  async (_title, shape) => {
    const base = structuredClone(inlandCanopy);
    const inputs: PlanInputs = {
      ...base,
      site: {
        ...base.site,
        soilClass: 'unknown',
        frostDepthM: 'unknown',
        wind: 'unknown',
        snow: 'unknown',
        permanentAnchors: 'forbidden',
        nearHilltop: 'unknown',
      },
      structure: {
        ...base.structure,
        ...shape,
        tube: { shape: 'round', outsideMm: 'unknown', wallMm: 'unknown', rust: 'unknown' },
        frameMassKg: 'unknown',
        cover: { ...base.structure.cover, rollWidthM: 1.4, film: 'found', ageY: 'unknown' },
      },
      stock: [],
      prices: [],
    };
    const result = computePlan(inputs, { engineVersion: 'test' });
    const checked = checkRequest(JSON.parse(JSON.stringify(sampleRequest({ inputs, result, paper: 'letter', units: 'us' }))) as unknown);
    expect(checked).toMatchObject({ ok: true });
    if (!checked.ok) return;
    const made = await app.renderer.render(checked.request);
    const texts = pageTexts(openPdf(made.bytes));
    expect(texts).toHaveLength(made.pages);
    const all = texts.join('\n');
    expect(all).not.toMatch(/NaN|undefined|\bnull\b|Infinity|\[object/);
    expect(all).toContain('not assessed');
  },
  120_000,
);
