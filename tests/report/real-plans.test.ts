import { afterAll, beforeAll, describe, expect, test } from '@jest/globals';
import { computePlan } from '@lathwork/calc';
import type { PlanResult } from '@lathwork/model';
import type { ReportApp } from '../../apps/report/src/app.js';
import { checkRequest } from '../../apps/report/src/http/validate.js';
import { Figures } from '../../apps/report/src/words/figures.js';
import { noteText } from '../../apps/report/src/words/notes.js';
import { FOUR_GARDENS } from '../support/gardens.js';
import { inkNearEdge, inkOf, openPdf, pageTexts, reportApp, sampleRequest } from './support.js';

const bare = (text: string): string => text.replace(/\s/g, '');

/** Every STOP, ASK and CARE of a stage stands on its card, or on the card's second page, before the steps. */
function expectWarningsBeforeSteps(texts: readonly string[], result: PlanResult, fig: Figures): void {
  const { stages } = result.schedule;
  let looked = 0;
  for (const stage of stages) {
    const first = texts.findIndex((t) => t.includes(`Stage ${stage.stageNumber} of ${stages.length},`));
    const second = texts[first + 1] ?? '';
    const card = bare((texts[first] ?? '') + (second.includes(`Card ${stage.stageNumber}, page 2`) ? second : ''));
    const steps = card.indexOf(bare('Do this, in this order'));
    expect(steps).toBeGreaterThan(0);
    for (const note of result.notes) {
      if (note.severity === 'note' || note.beforeTask === undefined || !(stage.tasks as readonly string[]).includes(note.beforeTask)) continue;
      const at = card.indexOf(bare(noteText(note, fig)));
      if (at < 0 || at > steps) throw new Error(`card ${stage.stageNumber} does not say before its steps: ${noteText(note, fig)}`);
      looked += 1;
    }
  }
  expect(looked).toBeGreaterThan(10);
}

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
    expectWarningsBeforeSteps(texts, result, new Figures(paper === 'a4' ? 'metric' : 'us'));
  }, 180_000);
});
