import { afterAll, beforeAll, describe, expect, test } from '@jest/globals';
import { computePlan } from '@lathwork/calc';
import type { ReportApp } from '../../apps/report/src/app.js';
import { checkRequest } from '../../apps/report/src/http/validate.js';
import { FOUR_GARDENS } from '../support/gardens.js';
import { inkNearEdge, inkOf, openPdf, pageTexts, reportApp, sampleRequest } from './support.js';

let app: ReportApp;
beforeAll(() => {
  app = reportApp({ REPORT_TIMEOUT_MS: '90000' });
});
afterAll(() => app.stop(), 30_000);

describe.each(FOUR_GARDENS.map(([name, inputs], i) => [name, inputs, i % 2 === 0 ? 'letter' : 'a4'] as const))('the computed plan of the %s', (_name, inputs, paper) => {
  test('is set whole: it fits its pages, says every note in words, and prints no broken value', async () => {
    const result = computePlan(inputs, { engineVersion: 'test' });
    const request = JSON.parse(JSON.stringify(sampleRequest({ inputs, result, paper, units: paper === 'a4' ? 'metric' : 'us' }))) as unknown;
    const checked = checkRequest(request);
    expect(checked).toMatchObject({ ok: true });
    if (!checked.ok) return;
    const made = await app.renderer.render(checked.request);
    const pdf = openPdf(made.bytes);
    const texts = pageTexts(pdf);
    expect(texts).toHaveLength(made.pages);
    for (const [i, text] of texts.entries()) {
      expect(text).toContain(`Page ${i + 1} of ${made.pages}`);
      expect(text).not.toMatch(/NaN|undefined|\bnull\b|Infinity|\[object|\{\w+\}/);
      expect(text).not.toMatch(/\u22120(?![.\d])/);
      // A note without a wording prints its bare code.
      expect(text).not.toMatch(/\b(geometry|climate|thermal|wind|snow|anchorage|fastening|cutting|takeoff|budget|schedule|safety)\.[a-z]/);
      expect(inkOf(pdf, i).smallestPt).toBeGreaterThanOrEqual(8.99);
      expect(inkNearEdge(pdf, i, 10)).toBe(0);
    }
    const stages = result.schedule.stages.length;
    expect(stages).toBeGreaterThan(4);
    for (let n = 1; n <= stages; n += 1) expect(texts.filter((t) => t.includes(`Stage ${n} of ${stages},`))).toHaveLength(1);
  }, 180_000);
});
