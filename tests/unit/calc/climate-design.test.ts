import { readFileSync } from 'node:fs';
import { describe, expect, test } from '@jest/globals';
import type { ClimateInputs, FrostDatesInputs, SiteInputs } from '@lathwork/model';
import { computeClimate } from '@lathwork/calc';
import { canberraMeans, denverMeans, invercargillMeans, stornowayMeans } from '../../support/climates.js';

const siteAt = (climate: ClimateInputs, change: Partial<SiteInputs> = {}): SiteInputs =>
  ({
    latitudeDeg: climate.stationLatitudeDeg,
    longitudeDeg: climate.stationLongitudeDeg,
    elevationM: climate.stationElevationM,
    ...change,
  }) as SiteInputs;
const run = (climate: ClimateInputs, change: Partial<SiteInputs> = {}) => computeClimate({ site: siteAt(climate, change), climate });
const codes = (out: ReturnType<typeof run>) => out.notes.map((n) => n.code);
const noteOf = (out: ReturnType<typeof run>, code: string) => out.notes.find((n) => n.code === code);
const here = (climate: ClimateInputs): ClimateInputs => ({ ...climate, distanceM: 0 });
const eachMonth = (climate: ClimateInputs, change: Partial<ClimateInputs['months'][number]>): ClimateInputs => ({
  ...climate,
  months: climate.months.map((m) => ({ ...m, ...change })),
});
const warmer = (climate: ClimateInputs, byK: number): ClimateInputs => ({
  ...climate,
  annualExtremeMinC: null,
  annualExtremeMinYearsCount: null,
  months: climate.months.map((m) => ({
    ...m,
    tMaxC: m.tMaxC === null ? null : m.tMaxC + byK,
    tMinC: m.tMinC === null ? null : m.tMinC + byK,
    absoluteMinMeanC: null,
  })),
});
const TABLE: FrostDatesInputs = {
  thresholdC: 0,
  lastDayD: { p10: 110, p50: 123, p90: 136 },
  firstDayD: { p10: 270, p50: 280, p90: 292 },
  publisher: 'A national service',
};

describe('the basis of the cold night', () => {
  const hours = { lowC: -14, coldShareFrac: 0.004, hoursCount: 8760, years: 'typical' as const };

  test('a file of hours comes after the mean of the coldest nights, and before the months', () => {
    expect(run({ ...denverMeans, hourlyLow: hours }).result.designNight?.basis).toBe('annualExtremeMinimum');
    const night = run({ ...here(denverMeans), annualExtremeMinC: null, annualExtremeMinYearsCount: null, hourlyLow: hours }).result.designNight;
    expect(night?.basis).toBe('hourlyPercentile');
    // The file's typical year left the cold out; the months on record still hold the night down: -20.6 in December.
    expect(night?.lowC).toBeCloseTo(-20.6, 9);
    const alone = run({
      ...here(eachMonth(denverMeans, { absoluteMinMeanC: null })),
      annualExtremeMinC: null,
      annualExtremeMinYearsCount: null,
      hourlyLow: hours,
    });
    expect(alone.result.designNight?.lowC).toBeCloseTo(-14 - 5.4, 9);
    expect(noteOf(alone, 'climate.night-basis')?.params['basis']).toBe('hourlyPercentile');
  });
});

describe('a station that is far', () => {
  test('nothing is in doubt at the station itself; 300 km add what pairs of stations differ by', () => {
    expect(run(here(denverMeans)).result.stationDoubtK).toBe(0);
    expect(run({ ...denverMeans, distanceM: 300_000 }).result.stationDoubtK).toBeCloseTo(Math.hypot(2.3, 2.4), 9);
  });

  test('distance and height widen the night and the winter class, and the note says by how much', () => {
    const [near, far] = [run(here(denverMeans)), run({ ...denverMeans, distanceM: 500_000 })];
    expect(codes(far)).toContain('climate.far-station');
    expect(noteOf(far, 'climate.far-station')?.params['doubtK']).toBeCloseTo(Math.hypot(2.3, 4), 9);
    expect(far.result.designNight?.doubtK).toBeGreaterThan((near.result.designNight?.doubtK ?? 99) + 1);
    expect([near.result.hardiness?.coldestClass, near.result.hardiness?.mildestClass]).toEqual(['5b', '5b']);
    // -24.7 degC less and more 4.6 K is -20.8 and -4.2 degF.
    expect([far.result.hardiness?.coldestClass, far.result.hardiness?.mildestClass]).toEqual(['4b', '6b']);
    expect(run(here(denverMeans), { elevationM: denverMeans.stationElevationM + 600 }).result.stationDoubtK).toBeCloseTo(0.5 * 0.0065 * 600, 9);
  });

  test('too far: no night, no class, no frost dates', () => {
    const out = run({ ...denverMeans, distanceM: 1_500_000 });
    expect(out.result).toMatchObject({ designNight: null, hardiness: null, frost: null });
  });
});

describe('frost', () => {
  test('Denver ends in May and begins in October; Invercargill the other way about', () => {
    const north = run(here(denverMeans)).result.frost;
    const south = run(here(invercargillMeans)).result.frost;
    expect(north).toMatchObject({ basis: 'monthlyDistribution', pattern: 'everyYear' });
    expect(north?.lastDayD.p50).toBeGreaterThan(105);
    expect(north?.lastDayD.p50).toBeLessThan(145);
    expect(north?.firstDayD.p50).toBeGreaterThan(262);
    expect(north?.firstDayD.p50).toBeLessThan(300);
    expect(south?.lastDayD.p50).toBeGreaterThan(250);
    expect(south?.firstDayD.p50).toBeLessThan(150);
  });

  test('a printed table is handed on at the station, and moved for the height', () => {
    const climate = { ...here(denverMeans), frostDates: TABLE };
    const out = run(climate);
    expect(out.result.frost).toMatchObject({ basis: 'published', lastDayD: TABLE.lastDayD, firstDayD: TABLE.firstDayD });
    expect(codes(out)).toContain('climate.frost-published');
    expect(codes(out)).not.toContain('climate.frost-estimated');
    const up = run(climate, { elevationM: denverMeans.stationElevationM + 400 }).result.frost;
    expect(up?.lastDayD.p50).toBeGreaterThan(124);
    expect(up?.firstDayD.p50).toBeLessThan(279);
    expect(up?.freeD.p50).toBeLessThan((out.result.frost?.freeD.p50 ?? 0) - 4);
  });

  test('a printed table serves even where a month is missing; without one the dates are unknown and asked for', () => {
    const gap = { ...here(denverMeans), months: denverMeans.months.map((m, i) => (i === 6 ? { ...m, tMinC: null, tMaxC: null } : m)) };
    const out = run(gap);
    expect(out.result.frost).toBeNull();
    expect(out.result.degreeDays).toMatchObject({ heatingKD: null, growingKD: null });
    expect(noteOf(out, 'climate.frost-unknown')).toMatchObject({ severity: 'ask', params: { recordCount: 11 } });
    expect(run({ ...gap, frostDates: TABLE }).result.frost?.lastDayD).toEqual(TABLE.lastDayD);
  });

  test.each([
    ['hardly ever', 25, 'never', 'climate.frost-hardly-ever'],
    ['in some years', 8, 'someYears', 'climate.frost-some-years'],
    ['in every month', -22, 'allYear', 'climate.frost-in-every-month'],
  ])('%s', (_, byK, pattern, code) => {
    const out = run(warmer(here(stornowayMeans), byK - 5));
    expect(out.result.frost?.pattern).toBe(pattern);
    expect(codes(out)).toContain(code);
  });
});

describe('the sun and the moisture of a record', () => {
  test('radiation on record comes first, and is held to the clear sky where it cannot be', () => {
    const out = run(eachMonth(denverMeans, { radiationMJPerM2: 8, sunshineH: 200 }));
    expect(out.result.months.map((m) => [m.sunBasis, m.sunMJPerM2, m.sunDoubtFrac])).toEqual(Array.from({ length: 12 }, () => ['radiation', 8, 0.05]));
    expect(noteOf(out, 'climate.sun-basis')?.params).toMatchObject({ radiationMonthsCount: 12, sunshineMonthsCount: 0, rangeMonthsCount: 0 });
    // The same number of kWh taken for MJ would pass; MJ given as Wh does not.
    const over = run(eachMonth(denverMeans, { radiationMJPerM2: 44 }));
    expect(over.result.months.every((m) => m.sunMJPerM2 === m.clearSkyMJPerM2)).toBe(true);
    expect(noteOf(over, 'climate.radiation-over-clear')?.params['months']).toHaveLength(12);
  });

  test('the dew point comes from vapour, then humidity, then the night less what dry places show', () => {
    const basis = (change: Partial<ClimateInputs['months'][number]>) => run(eachMonth(here(canberraMeans), change)).result.months[0];
    expect(basis({ vapourPressurePa: 1000, relativeHumidityFrac: 0.5 })?.dewPointBasis).toBe('vapourPressure');
    expect(basis({ vapourPressurePa: null, relativeHumidityFrac: 0.5 })?.dewPointBasis).toBe('relativeHumidity');
    const rule = basis({ vapourPressurePa: null, tMaxC: 30, tMinC: 14 });
    expect(rule).toMatchObject({ dewPointBasis: 'nightRule', dewPointC: 8.5, dewPointDoubtK: 6.5 });
    expect(basis({ vapourPressurePa: null, tMaxC: 22, tMinC: 14 })?.dewPointC).toBeCloseTo(13.7, 9);
    expect(noteOf(run(eachMonth(denverMeans, { vapourPressurePa: null })), 'climate.dew-from-nights')).toMatchObject({ params: { doubtK: 6.5 } });
  });
});

describe('sun on the plot', () => {
  test('nobody has listed what shades it: the hours are those of a free horizon, and that is said', () => {
    const out = run(denverMeans);
    expect(out.result.sunHoursBasis).toBe('freeHorizon');
    expect(codes(out)).toContain('climate.sun-hours-open');
    expect(out.result.sunHours?.every((h) => h.clearedH === h.openH && h.lostFrac === 0)).toBe(true);
    expect(codes(run(denverMeans, { obstacles: [] }))).not.toContain('climate.sun-hours-open');
  });

  test('a house to the south takes the winter sun and leaves the summer one', () => {
    const house = [{ bearingDeg: 180, distanceM: 8, widthM: 40, heightM: 8 }];
    const out = run(denverMeans, { obstacles: house });
    const [january, june] = [out.result.sunHours?.[0], out.result.sunHours?.[5]];
    // The top of the house stands 45 degrees up; the winter noon sun at 40 N stands 29 degrees up, the summer one 73.
    expect(january?.lostFrac).toBeGreaterThan(0.8);
    expect(june?.lostFrac).toBeLessThan(0.1);
    expect(noteOf(out, 'climate.plot-shaded')?.params['months']).toContain('1');
    expect(noteOf(out, 'climate.plot-shaded')?.params['months']).not.toContain('6');
    expect(out.result.sunHoursBasis).toBe('obstacles');
    // In the south the same house stands on the shaded side.
    expect(run(invercargillMeans, { obstacles: house }).result.sunHours?.[6]?.lostFrac).toBe(0);
  });
});

test('the month of overheating is the month of the clear day', () => {
  const out = run(denverMeans);
  expect(out.result.overheating).toEqual({ month: out.result.clearDay?.month, nightsShut: true });
  expect(run(warmer(here(stornowayMeans), 25)).result.overheating?.nightsShut).toBe(false);
});

test('every code of these rooms is in the list, with the params it carries', () => {
  const rows = readFileSync('docs/notes/climate.md', 'utf8')
    .split('\n')
    .map((line) => line.split('|').map((c) => c.trim()))
    .filter((c) => c.length >= 4 && c[0]?.startsWith('climate.'));
  const listed = new Map(rows.map((c) => [c[0], { severity: c[1], params: (c[2] ?? '').replace(/\([^)]*\)/g, '').split(/[,\s]+/) }]));
  const runs = [
    run(denverMeans),
    run({ ...denverMeans, distanceM: 500_000 }),
    run({ ...denverMeans, distanceM: 2_000_000 }),
    run({ ...denverMeans, frostDates: TABLE }),
    run(warmer(here(stornowayMeans), 25)),
    run(warmer(here(stornowayMeans), 3)),
    run(warmer(here(stornowayMeans), -27)),
    run(eachMonth(denverMeans, { vapourPressurePa: null, radiationMJPerM2: 44 })),
    run(eachMonth(denverMeans, { tMinC: null })),
    run(denverMeans, { obstacles: [{ bearingDeg: 180, distanceM: 2, widthM: 40, heightM: 30 }] }),
  ];
  const given = runs.flatMap((r) => r.notes);
  expect(new Set(given.map((n) => n.code)).size).toBeGreaterThan(15);
  for (const n of given) {
    expect({ code: n.code, severity: listed.get(n.code)?.severity }).toEqual({ code: n.code, severity: n.severity });
    expect(Object.keys(n.params).filter((p) => !listed.get(n.code)?.params.includes(p))).toEqual([]);
  }
});
