import { describe, expect, test } from '@jest/globals';
import type { ClimateInputs, ClimateMonthInputs, SiteInputs } from '@lathwork/model';
import { CLIMATE_MODEL, computeClimate } from '@lathwork/calc';
import { canberraMeans, denverMeans, invercargillMeans, stornowayMeans } from '../../support/climates.js';

const siteAt = (climate: ClimateInputs, change: Partial<SiteInputs> = {}): SiteInputs => ({
  siteId: '00000000-0000-7000-8000-000000000001',
  latitudeDeg: climate.stationLatitudeDeg,
  longitudeDeg: climate.stationLongitudeDeg,
  elevationM: climate.stationElevationM,
  timeZone: 'Etc/UTC',
  exposure: 'B',
  nearHilltop: 'no',
  soilClass: 'unknown',
  frostDepthM: 'unknown',
  wind: 'unknown',
  snow: 'unknown',
  fallAcrossM: 'unknown',
  fallAlongM: 'unknown',
  stormWindFromDeg: 'unknown',
  permanentAnchors: 'unknown',
  glassRule: 'unknown',
  shadedFrac: 0,
  ...change,
});
const run = (climate: ClimateInputs, site: Partial<SiteInputs> = {}) => computeClimate({ site: siteAt(climate, site), climate });
const codes = (out: ReturnType<typeof run>) => out.notes.map((n) => n.code);
const NOTHING: ClimateMonthInputs = { tMaxC: null, tMinC: null, vapourPressurePa: null, precipitationMm: null, sunshineH: null, absoluteMinMeanC: null };
const without = (climate: ClimateInputs, ...months: number[]): ClimateInputs => ({
  ...climate,
  months: climate.months.map((m, i) => (months.includes(i + 1) ? NOTHING : m)),
});
const onlyNights = (climate: ClimateInputs, keepAbsolute: boolean): ClimateInputs => ({
  ...climate,
  annualExtremeMinC: null,
  annualExtremeMinYearsCount: null,
  months: climate.months.map((m) => (keepAbsolute ? m : { ...m, absoluteMinMeanC: null })),
});

describe('design night', () => {
  test("the mean of each year's coldest night comes first, and the hours reach it exactly", () => {
    const night = run(denverMeans).result.designNight;
    expect(night).toMatchObject({ basis: 'annualExtremeMinimum', lowC: -24.7, day: { month: 12 } });
    expect(Math.min(...(night?.day.airC ?? []))).toBe(-24.7);
    expect(night?.day.dewPointC).toBeLessThanOrEqual(-24.7);
    expect(night?.doubtK).toBeGreaterThan(4);
  });

  test('then the lowest month, then the mean less its spread; both lie near the first', () => {
    const byMonth = run(onlyNights(denverMeans, true)).result.designNight;
    const byMean = run(onlyNights(denverMeans, false)).result.designNight;
    expect([byMonth?.basis, byMean?.basis]).toEqual(['monthlyAbsoluteMinimum', 'monthlyMeanLessSpread']);
    expect(byMonth?.lowC).toBeCloseTo(-20.6 - 1.4, 6);
    expect(byMean?.lowC).toBeCloseTo(-8 - 8.4, 6);
    expect(byMean?.doubtK ?? 0).toBeGreaterThan(byMonth?.doubtK ?? 99);
  });

  test.each([
    ['Denver', denverMeans],
    ['Stornoway', stornowayMeans],
    ['Invercargill', invercargillMeans],
    ['Canberra', canberraMeans],
  ])('%s: with the record of the year kept back, the other two bases catch it within their doubt', (_, climate) => {
    for (const kept of [true, false]) {
      const night = run(onlyNights(climate, kept)).result.designNight;
      expect(Math.abs((night?.lowC ?? NaN) - (climate.annualExtremeMinC ?? NaN))).toBeLessThan((night?.doubtK ?? NaN) * 1.5);
    }
  });
});

describe('missing months', () => {
  test('a missing month stays missing, is said, and the others go on', () => {
    const out = run(without(denverMeans, 6));
    expect(out.result.months[5]).toMatchObject({
      hasRecord: false,
      tMaxC: null,
      tMinC: null,
      coldNightC: null,
      coldNightBasis: 'none',
      sunMJPerM2: null,
      sunBasis: 'none',
    });
    expect(out.result.monthsWithRecordCount).toBe(11);
    expect(out.result.clearDays.map((d) => d.month)).toEqual([1, 2, 3, 4, 5, 7, 8, 9, 10, 11, 12]);
    expect(out.result.designNight).not.toBeNull();
    expect(out.notes.find((n) => n.code === 'climate.month-missing')).toMatchObject({ severity: 'care', params: { month: 6, recordCount: 11 } });
  });

  test.each([
    ['north, January', denverMeans, [1]],
    ['north, February beside a known January', stornowayMeans, [1, 2]],
    ['north, December, which was the coldest', denverMeans, [12]],
    ['south, July', canberraMeans, [7]],
  ])('%s missing: no night is promised and a stop says why', (_, climate, months) => {
    const out = run(without(climate, ...months));
    expect(out.result.designNight).toBeNull();
    expect(out.notes.find((n) => n.code === 'climate.night-blocked')).toMatchObject({
      severity: 'stop',
      params: { reason: 'coldestMonthMissing', months: months.map(String) },
    });
  });

  test('January is no winter month in the south', () => {
    expect(run(without(canberraMeans, 1)).result.designNight).not.toBeNull();
  });

  test('no month at all: nulls, empty lists, a stop, and no number that is not one', () => {
    const out = run({ ...without(denverMeans, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12), annualExtremeMinC: -20 });
    expect(out.result).toMatchObject({
      monthsWithRecordCount: 0,
      coldestMonth: null,
      hottestMonth: null,
      designNight: null,
      clearDay: null,
      clearDays: [],
      coldNights: [],
    });
    expect(out.notes.find((n) => n.code === 'climate.night-blocked')?.params['reason']).toBe('noRecord');
    expect(JSON.stringify(out)).not.toMatch(/null,null,null|NaN/);
  });

  test('a month whose night is warmer than its day is left out and asked about', () => {
    const out = run({ ...denverMeans, months: denverMeans.months.map((m, i) => (i === 5 ? { ...m, tMinC: 40 } : m)) });
    expect(out.result.months[5]?.hasRecord).toBe(false);
    expect(out.notes.find((n) => n.code === 'climate.month-contradicts')?.params).toEqual({ months: ['6'] });
  });
});

describe('the place', () => {
  test('a site above its station is colder by 6.5 K a kilometre, in every temperature', () => {
    const [low, high] = [run(denverMeans), run(denverMeans, { elevationM: denverMeans.stationElevationM + 400 })];
    expect(high.result.heightCorrectionK).toBeCloseTo(-2.6, 9);
    for (const key of ['tMaxC', 'tMinC', 'coldNightC', 'sunnyDayMaxC'] as const)
      expect((high.result.months[0]?.[key] ?? NaN) - (low.result.months[0]?.[key] ?? NaN)).toBeCloseTo(-2.6, 9);
    expect((high.result.designNight?.lowC ?? NaN) - (low.result.designNight?.lowC ?? NaN)).toBeCloseTo(-2.6, 9);
    expect(high.result.designNight?.doubtK).toBeGreaterThan(low.result.designNight?.doubtK ?? NaN);
  });

  test.each([
    [300_000, 500, 'near', []],
    [300_001, 0, 'far', ['climate.far-station']],
    [0, -501, 'far', ['climate.far-station']],
    [1_000_001, 0, 'tooFar', ['climate.station-too-far']],
    [0, 1501, 'tooFar', ['climate.station-too-far']],
  ])('%d m away and %d m up is %s', (distanceM, up, fit, said) => {
    const out = run({ ...denverMeans, distanceM }, { elevationM: denverMeans.stationElevationM + up });
    expect(out.result.stationFit).toBe(fit);
    const asks = out.notes.filter((n) => n.code === 'climate.far-station' || n.code === 'climate.station-too-far');
    expect(asks.map((n) => n.code)).toEqual(said);
    expect(asks.every((n) => n.severity === 'ask')).toBe(true);
    expect(out.result.designNight === null).toBe(fit === 'tooFar');
  });

  test('a far station widens the doubt', () => {
    expect(run({ ...denverMeans, distanceM: 400_000 }).result.designNight?.doubtK).toBeGreaterThan(
      run({ ...denverMeans, distanceM: 0 }).result.designNight?.doubtK ?? NaN,
    );
  });

  test('below the sea is a place like any other', () => {
    const out = run({ ...canberraMeans, stationElevationM: -350 }, { elevationM: -430 });
    expect(codes(out)).not.toContain('climate.outside-validity');
    expect(out.result.heightCorrectionK).toBeCloseTo(0.52, 9);
  });

  test('a latitude that is not on the globe is outside the model: a stop and no night', () => {
    const out = run(denverMeans, { latitudeDeg: 90.0001 });
    expect(out.notes.find((n) => n.code === 'climate.outside-validity')).toMatchObject({
      severity: 'stop',
      subject: 'latitudeDeg',
      params: { max: CLIMATE_MODEL.ranges.latitudeDeg.max },
    });
    expect(out.result.designNight).toBeNull();
  });

  test.each([
    [40, 'north', 8],
    [-40, 'south', 2],
    [4.9, 'equatorial', 1],
    [-4.9, 'equatorial', 1],
    [5, 'north', 8],
    [-5, 'south', 2],
  ])('latitude %d is %s and its chart starts with month %d', (latitudeDeg, hemisphere, chartStartMonth) => {
    expect(run(denverMeans, { latitudeDeg }).result).toMatchObject({ hemisphere, chartStartMonth });
  });
});

describe('sun and clear days', () => {
  test('sunshine hours come first; without them the daily range, and the basis is said', () => {
    const out = run(canberraMeans);
    expect(out.result.months.map((m) => m.sunBasis).filter((b) => b === 'sunshineHours')).toHaveLength(4);
    expect(out.notes.find((n) => n.code === 'climate.sun-basis')?.params).toMatchObject({ sunshineMonthsCount: 4, rangeMonthsCount: 8, noneMonthsCount: 0 });
  });

  test('the mean day never has more sun than the clear day', () => {
    for (const climate of [denverMeans, stornowayMeans, canberraMeans])
      for (const m of run(climate).result.months) expect(m.sunMJPerM2).toBeLessThanOrEqual(m.clearSkyMJPerM2);
  });

  test('an hour of sun more than the day is long is held to it and said', () => {
    const out = run({ ...stornowayMeans, months: stornowayMeans.months.map((m, i) => (i === 11 ? { ...m, sunshineH: 400 } : m)) });
    expect(out.notes.find((n) => n.code === 'climate.sunshine-over-daylight')?.params).toEqual({ months: ['12'] });
  });

  test('the clear day is of a month whose nights still call for a shut shelter, in spring or autumn', () => {
    const day = run(denverMeans).result.clearDay;
    expect([4, 5, 9]).toContain(day?.month);
    expect(run(denverMeans).result.months[(day?.month ?? 1) - 1]?.coldNightC).toBeLessThanOrEqual(5);
    expect([3, 4, 5, 9, 10, 11]).toContain(run(canberraMeans).result.clearDay?.month);
  });

  test('where no night is cold the hottest clear day is shown, and it is said', () => {
    const tropical: ClimateInputs = {
      ...denverMeans,
      annualExtremeMinC: 20,
      months: denverMeans.months.map((m) => ({ ...m, tMaxC: 31, tMinC: 24, absoluteMinMeanC: 21 })),
    };
    expect(codes(run(tropical, { latitudeDeg: 1 }))).toContain('climate.no-shut-nights');
  });

  test('every room note is listed for the words', async () => {
    const { readFileSync } = await import('node:fs');
    const listed = readFileSync('docs/notes/climate.md', 'utf8');
    const outs = [
      run(without(denverMeans, 1)),
      run({ ...denverMeans, distanceM: 2e6 }),
      run({ ...denverMeans, distanceM: 4e5 }),
      run(denverMeans, { latitudeDeg: 91 }),
      run(onlyNights(denverMeans, false)),
      run(stornowayMeans, { latitudeDeg: 80 }),
    ];
    const said = new Set(outs.flatMap(codes));
    expect(said.size).toBeGreaterThan(8);
    expect([...said].filter((code) => !listed.includes(`\n${code} | `))).toEqual([]);
  });
});
