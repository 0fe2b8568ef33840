import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { renderToString } from 'preact-render-to-string';
import { afterAll, beforeAll, describe, expect, test } from '@jest/globals';
import { computePlan } from '@lathwork/calc';
import type { ClimateResult, PlanInputs } from '@lathwork/model';
import type { ReportApp } from '../../apps/report/src/app.js';
import { planBook } from '../../apps/report/src/documents/plan-book/plan-book.js';
import { STALE_WORDS } from '../../apps/report/src/words/en/stale.js';
import { staleTexts } from '../../apps/report/src/words/stale.js';
import { inlandCanopy, maritimeLeanTo, southernCanopy } from '../support/gardens.js';
import { inkNearEdge, inkOf, openPdf, pageTexts, reportApp, sampleRequest } from './support.js';

interface Printed {
  /** Each heading, cell and sentence of the page as words alone. */
  text: string;
  html: string;
  alts: string[];
}

const words = (html: string): string =>
  html
    .replace(/<[^<>]*>/g, ' ')
    .replace(/&#39;|&quot;/g, '"')
    .replace(/[\s\u00a0]+/g, ' ');

function page(name: 'site' | 'frost', inputs: PlanInputs, change: (c: ClimateResult) => ClimateResult = (c) => c, units: 'us' | 'metric' = 'metric'): Printed {
  const result = computePlan(inputs, { engineVersion: 'test' });
  const book = planBook(sampleRequest({ inputs, result: { ...result, climate: change(result.climate) }, units, paper: units === 'us' ? 'letter' : 'a4' }));
  const part = book.parts.find((p) => p.name === name);
  if (part?.kind !== 'fixed') throw new Error(`no page ${name}`);
  const html = renderToString(part.render(0, 0, 1));
  return { html, text: words(html), alts: [...html.matchAll(/role="img" aria-label="([^"]*)"/g)].map((m) => m[1] ?? '') };
}

const withMonths = (inputs: PlanInputs, change: (m: PlanInputs['climate']['months'][number], i: number) => void): PlanInputs => {
  const copy = structuredClone(inputs);
  copy.climate.months.forEach(change);
  return copy;
};

describe('the station line', () => {
  test('names station, distance, height, run of years and doubt, and never calls means normals', () => {
    const { text } = page('site', inlandCanopy);
    expect(text).toContain('Denver Airp./CO, United States of America. It is 10 km (6.3 miles) away, at 1,656 m (5,433 ft). Figures: 2003-2021 means');
    expect(text).toContain('The site lies 16 m (52 ft) lower. That changes temperatures by less than 1 \u00b0C. A near station.');
    expect(text).toMatch(/A cold night here can lie \d \u00b0C from its figures/);
    expect(text).not.toMatch(/normals/i);
  });
  test('official normals are called so', () => {
    const { text } = page('site', { ...inlandCanopy, climate: { ...inlandCanopy.climate, kind: 'normals', period: '1991-2020' } });
    expect(text).toContain('Figures: 1991-2020 official normals.');
  });
  test('a far station is called far, with what far means and a wider doubt', () => {
    const doubt = (t: string): number => Number(/can lie (\d+) \u00b0C/.exec(t)?.[1]);
    const far = page('site', { ...inlandCanopy, climate: { ...inlandCanopy.climate, distanceM: 420_000 } }).text;
    expect(far).toContain('Far station: over 300 km (186 miles) away, or over 500 m (1,640 ft) higher or lower. Ranges are wider.');
    expect(doubt(far)).toBeGreaterThan(doubt(page('site', inlandCanopy).text));
  });
  test('a height correction is printed with its way', () => {
    const { text } = page('site', { ...inlandCanopy, climate: { ...inlandCanopy.climate, stationElevationM: inlandCanopy.site.elevationM - 400 } });
    // 6.5 K a kilometre.
    expect(text).toContain('Temperatures here are 3 \u00b0C colder for it.');
  });
});

describe('the table of months', () => {
  test('marks how the sun of each month was found, with its doubt', () => {
    const { text } = page(
      'site',
      withMonths(inlandCanopy, (m, i) => {
        m.sunshineH = i < 6 ? 200 : null;
      }),
    );
    expect(text.match(/sunshine, 15 %/g)).toHaveLength(6);
    expect(text.match(/day range, 28 %/g)).toHaveLength(6);
  });
  test('a month without a record stays empty and says so', () => {
    const { html } = page(
      'site',
      withMonths(inlandCanopy, (m, i) => {
        if (i === 3) Object.assign(m, { tMinC: null, tMaxC: null, absoluteMinMeanC: null });
      }),
    );
    expect(html).toMatch(/Apr<\/th><td class="l" colspan="9">no record/i);
  });
});

describe('frost dates', () => {
  test('say the middle dates above the bar, all shares in the table, and that they are worked out', () => {
    const { text, alts } = page('frost', inlandCanopy);
    const finding = /Half of all years: last frost by (\d+ \w+), first frost after (\d+ \w+)\./.exec(text);
    // Denver's stations print last frosts of early May and first ones of early October.
    expect(finding?.[1]).toMatch(/April|May/);
    expect(finding?.[2]).toMatch(/September|October/);
    expect(text).toContain('Worked out from monthly means, not from daily records. In doubt by 10 days.');
    expect(text).toMatch(/Days without frost, at most \d{3} \d{3} \d{3}/);
    expect(alts.some((a) => a.startsWith('last frost: 10 % by'))).toBe(true);
  });
  test('printed dates name their publisher', () => {
    const frostDates = {
      thresholdC: 0,
      lastDayD: { p10: 112, p50: 124, p90: 141 },
      firstDayD: { p10: 265, p50: 278, p90: 291 },
      publisher: 'Weather Office',
    };
    const { text } = page('frost', { ...inlandCanopy, climate: { ...inlandCanopy.climate, stationElevationM: inlandCanopy.site.elevationM, frostDates } });
    expect(text).toContain('As printed by Weather Office');
    expect(text).toContain('21 May');
    expect(text).not.toContain('Worked out');
  });
  test('in the south the bar starts in July, so that the season over New Year is whole', () => {
    const { html } = page('frost', southernCanopy);
    const bar = /aria-label="last frost[\s\S]*?<\/svg>/.exec(html)?.[0] ?? '';
    const at = (month: string): number => Number(new RegExp(`x="([\\d.]+)"[^>]*>${month}<`).exec(bar)?.[1]);
    expect(at('Jul')).toBeLessThan(at('Dec'));
    expect(at('Dec')).toBeLessThan(at('Jan'));
    expect(at('Jan')).toBeLessThan(at('Jun'));
  });
  test('years without frost, summers with frost, a missing month and an old plan are told in words, without a bar', () => {
    const frost = page('frost', inlandCanopy);
    expect(frost.alts).toHaveLength(2);
    const none = { p10: null, p50: null, p90: null };
    const base = { thresholdC: 0, basis: 'monthlyDistribution', lastDayD: none, firstDayD: none, doubtD: 10 } as const;
    const never = page('frost', inlandCanopy, (c) => ({ ...c, frost: { ...base, pattern: 'never', yearsWithFrostFrac: 0.02, freeD: none } }));
    expect(never.text).toContain('Frost comes in fewer than one year in ten.');
    const always = page('frost', inlandCanopy, (c) => ({ ...c, frost: { ...base, pattern: 'allYear', yearsWithFrostFrac: 1, freeD: none } }));
    expect(always.text).toContain('Frost can come in every month');
    const unknown = page('frost', inlandCanopy, (c) => ({ ...c, frost: null, monthsWithRecordCount: 11 }));
    expect(unknown.text).toContain('No frost dates: they need all twelve months, or a printed table. Months on record: 11.');
    const old = page('frost', inlandCanopy, ({ frost: _frost, ...c }) => c);
    expect(old.text).toContain('This plan holds no frost dates.');
    for (const said of [never, always, unknown, old]) {
      expect(said.alts).toHaveLength(1);
      expect(said.text).not.toMatch(/NaN|null|undefined|last frost by/);
    }
  });
  test('frost in some years only: shares in tenths, dates that do not exist as dashes', () => {
    const { text } = page('frost', inlandCanopy, (c) => ({
      ...c,
      frost: {
        thresholdC: 0,
        basis: 'monthlyDistribution',
        pattern: 'someYears',
        yearsWithFrostFrac: 0.43,
        lastDayD: { p10: null, p50: null, p90: 40 },
        firstDayD: { p10: 350, p50: null, p90: null },
        freeD: { p10: null, p50: null, p90: null },
        doubtD: 10,
      },
    }));
    expect(text).toContain('Frost comes in about 40 % of years. In nine years of ten there is none from 9 February to 16 December.');
    expect(text).toContain('A dash: too few years have a frost for that date.');
  });
});

describe('the year in short', () => {
  test('gives winter class with its range, degree-days and the month of heat in both systems', () => {
    const metric = page('frost', inlandCanopy).text;
    const us = page('frost', inlandCanopy, undefined, 'us').text;
    // -15 to -10 degF is -26 to -23 degC; both editions name the same class.
    expect(metric).toMatch(/Winter class 5b \(\u221226 to \u221223 \u00b0C, mean of each year\u2019s coldest night\)\. With its doubt: 5a to 6a\./);
    expect(us).toContain('Winter class 5b (\u221215 to \u221210 \u00b0F');
    const sum = (t: string): number => Number((/Heating ([\d,]+)/.exec(t)?.[1] ?? '').replace(',', ''));
    expect(Math.abs(sum(us) - sum(metric) * 1.8)).toBeLessThanOrEqual(15);
    expect(sum(metric) % 10).toBe(0);
    expect(us).toContain('under 65 \u00b0F');
    expect(metric).toMatch(/Heat risk \w+\. Sunny days cook plants while nights still ask for a closed shelter\./);
  });
  test('what is not known is said in words', () => {
    const { text } = page('frost', inlandCanopy, (c) => ({
      ...c,
      hardiness: null,
      overheating: null,
      degreeDays: { heatingBaseC: 18.3, heatingKD: null, growingBaseC: 10, growingKD: null },
    }));
    expect(text).toContain('Winter class not given: no cold night is known');
    expect(text).toContain('Degree-days not given: a month has no record');
    expect(text).toContain('Heat risk not given: no month is on record');
  });
  test('a place whose nights never ask for a closed shelter says so', () => {
    const { text } = page('frost', inlandCanopy, (c) => ({ ...c, overheating: { month: 4, nightsShut: false } }));
    expect(text).toContain('April, the hottest. No month has nights that ask for a closed shelter.');
  });
});

describe('sun hours', () => {
  test('say whether they know the obstacles', () => {
    expect(page('frost', maritimeLeanTo).text).toContain('Free horizon: no obstacle is listed for this plot.');
    const sunny = withMonths(inlandCanopy, (m) => {
      m.sunshineH = 220;
    });
    // A wall 9 m high, 12 m to the south: its top stands 37 degrees up. The noon sun of December is 27 degrees up, that of June 74.
    const walled = { ...sunny, site: { ...sunny.site, obstacles: [{ bearingDeg: 180, distanceM: 12, widthM: 30, heightM: 9 }] } };
    const { text, alts } = page('frost', walled);
    expect(text).toMatch(/The listed obstacles take up to \d+ %, most in (December|January)\./);
    expect(text).toContain('Past obstacles');
    expect(alts.some((a) => a.includes('past the obstacles'))).toBe(true);
    expect(page('frost', sunny).text).not.toContain('Past obstacles');
  });
  test('without hours of sunshine the finding is of a clear day, and the table says no record', () => {
    const bare = withMonths(inlandCanopy, (m) => {
      m.sunshineH = null;
    });
    const { text } = page('frost', bare);
    expect(text).toContain('Hours of sunshine are not on record.');
    expect(text).toContain('To expect no record');
  });
});

describe('why a plan is out of date', () => {
  const source = (path: string): string => readFileSync(join(process.cwd(), 'apps', 'api', 'src', 'domains', path), 'utf8');

  test('every reason that the plan service keeps has words', () => {
    const reasons = [...source('plans/staleness.door.ts').matchAll(/reason: '(\w+)'/g)].map((m) => m[1] ?? '');
    expect(reasons.length).toBeGreaterThan(6);
    for (const reason of reasons) expect(Object.keys(STALE_WORDS)).toContain(reason);
  });
  test('a plan that came by an import says so by itself', () => {
    const imported = /IMPORTED = '(\w+)'/.exec(source('transfer/garden-file.ts'))?.[1] ?? '';
    const [only, ...more] = staleTexts([imported]);
    expect(only).toContain('came in by an import');
    expect(only).not.toContain('Changed since');
    expect(more).toEqual([]);
  });
  test('reasons and their subjects are put into words; an unknown one is printed as it came', () => {
    expect(staleTexts(['siteChanged', 'priceAdded: film.greenhouse', 'stockChanged: T4', 'newReason: x'])).toEqual([
      'Changed since this plan was made: the site, a new price of greenhouse film, the item T4 and newReason: x. Make a new plan.',
    ]);
    expect(staleTexts([])).toEqual([]);
  });
});

describe('the fullest climate pages', () => {
  let app: ReportApp;
  beforeAll(() => {
    app = reportApp({ REPORT_TIMEOUT_MS: '90000' });
  });
  afterAll(() => app.stop(), 30_000);

  test.each([
    ['letter', 'us'],
    ['a4', 'metric'],
  ] as const)(
    'with the longest names, a far station, obstacles and missing months they still fit on %s',
    async (paper, units) => {
      const long = (length: number): string => 'Upper Meadow at the Old Mill '.repeat(10).slice(0, length).trim();
      const inputs = withMonths(inlandCanopy, (m, i) => {
        Object.assign(m, { sunshineH: i % 2 === 0 ? 200 : null, precipitationMm: i % 3 === 0 ? null : 40 });
        if (i === 3 || i === 8) Object.assign(m, { tMinC: null, tMaxC: null, absoluteMinMeanC: null });
      });
      Object.assign(inputs.climate, { stationName: long(120), country: long(80), credit: long(200), distanceM: 400_000 });
      Object.assign(inputs.site, { obstacles: [{ bearingDeg: 180, distanceM: 12, widthM: 30, heightM: 9 }] });
      inputs.climate.frostDates = {
        thresholdC: 0,
        lastDayD: { p10: 112, p50: 124, p90: 141 },
        firstDayD: { p10: 265, p50: 278, p90: 291 },
        publisher: long(120),
      };
      const made = await app.renderer.render(sampleRequest({ inputs, result: computePlan(inputs, { engineVersion: 'test' }), paper, units }));
      const pdf = openPdf(made.bytes);
      const texts = pageTexts(pdf);
      const months = texts.findIndex((t) => t.includes('Month by month,'));
      expect(texts[months]).toMatch(/Apr\s+no record/);
      for (const [i, text] of texts.entries()) {
        if (!/Month by month,|Frost dates, air|Direct sun on the plot, hours/.test(text)) continue;
        expect(inkNearEdge(pdf, i, 10)).toBe(0);
        expect(inkOf(pdf, i).smallestPt).toBeGreaterThanOrEqual(8.99);
      }
    },
    120_000,
  );
});
