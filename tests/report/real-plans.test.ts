import { renderToString } from 'preact-render-to-string';
import { afterAll, beforeAll, describe, expect, test } from '@jest/globals';
import { computePlan } from '@lathwork/calc';
import type { PlanResult } from '@lathwork/model';
import type { ReportApp } from '../../apps/report/src/app.js';
import { checkRequest } from '../../apps/report/src/http/validate.js';
import { Figures } from '../../apps/report/src/words/figures.js';
import { noteText } from '../../apps/report/src/words/notes.js';
import { planBook } from '../../apps/report/src/documents/plan-book/plan-book.js';
import { FOUR_GARDENS } from '../support/gardens.js';
import { inkNearEdge, inkOf, openPdf, pageTexts, reportApp, sampleRequest } from './support.js';

const bare = (text: string): string => text.replace(/\s/g, '');

interface Warning {
  stage: number;
  text: string;
}

const warningsOf = (result: PlanResult, fig: Figures): Warning[] =>
  result.schedule.stages.flatMap((stage) =>
    result.notes
      .filter((n) => n.severity !== 'note' && n.beforeTask !== undefined && (stage.tasks as readonly string[]).includes(n.beforeTask))
      .map((n) => ({ stage: stage.stageNumber, text: bare(noteText(n, fig)) })),
  );

/** Every STOP, ASK and CARE of a stage is printed on its card, or on the card's second page. */
function expectWarningsPrinted(texts: readonly string[], result: PlanResult, fig: Figures): void {
  const warnings = warningsOf(result, fig);
  expect(warnings.length).toBeGreaterThan(10);
  for (const { stage, text } of warnings) {
    const first = texts.findIndex((t) => t.includes(`Stage ${stage} of ${result.schedule.stages.length},`));
    const second = texts[first + 1] ?? '';
    expect(bare((texts[first] ?? '') + (second.includes(`Card ${stage}, page 2`) ? second : ''))).toContain(text);
  }
}

let app: ReportApp;
beforeAll(() => {
  app = reportApp({ REPORT_TIMEOUT_MS: '90000' });
});
afterAll(() => app.stop(), 30_000);

describe.each(FOUR_GARDENS.map(([name, inputs], i) => [name, inputs, i % 2 === 0 ? 'letter' : 'a4'] as const))(
  'the computed plan of the %s',
  (_name, inputs, paper) => {
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
      expectWarningsPrinted(texts, result, new Figures(paper === 'a4' ? 'metric' : 'us'));
    }, 180_000);

    test('says every STOP, ASK and CARE before the steps, in the order of reading, in each form a card can take', () => {
      const result = computePlan(inputs, { engineVersion: 'test' });
      const units = paper === 'a4' ? 'metric' : 'us';
      const { parts } = planBook(sampleRequest({ inputs, result, paper, units }));
      const fig = new Figures(units);
      const inMarkup = (text: string): string => bare(text.replace(/&/g, '&amp;').replace(/"/g, '&quot;').replace(/</g, '&lt;'));
      for (const { stage, text } of warningsOf(result, fig)) {
        const card = parts.find((p) => p.name === `stage-${stage}`);
        if (card?.kind !== 'fixed') throw new Error(`no card ${stage}`);
        for (let form = 0; form < (card.shortenings ?? 1); form += 1) {
          const pages = Array.from({ length: card.pages?.(form) ?? 1 }, (_, n) => renderToString(card.render(0, form, n + 1)));
          const said = bare(pages.join(''));
          const steps = said.indexOf(bare('Do this, in this order'));
          expect(said.indexOf(inMarkup(text))).toBeGreaterThan(0);
          expect(said.indexOf(inMarkup(text))).toBeLessThan(steps);
        }
      }
    });
  },
);
