import { expect, test } from '@jest/globals';
import fc from 'fast-check';
import type { ClimateInputs, SiteInputs } from '@lathwork/model';
import { computeClimate, syntheticYear, typicalDay, type SyntheticYear } from '@lathwork/calc';
import { canberraMeans, denverMeans, invercargillMeans, stornowayMeans } from '../support/climates.js';
import { seenSun, skyLine } from '../../libs/calc/src/physics/horizon.js';
import { skyC } from '../../libs/calc/src/physics/radiation.js';
import { sunOfDay } from '../../libs/calc/src/physics/sky.js';
import { julianDay, sunAtInstant, sunTimes } from '../../libs/calc/src/physics/sun-instant.js';
import { frostYear } from '../../libs/calc/src/physics/weather-frost.js';
import { dailyCurve, MONTH_DAYS } from '../../libs/calc/src/physics/weather-normal.js';

const real = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const latitude = fc.oneof(real(-90, 90), fc.constantFrom(-90, -66.6, -5, 0, 5, 66.6, 90));
const longitude = fc.oneof(real(-180, 180), fc.constantFrom(-180, 0, 180));

/** A year of any place: a mean, a swing either way round, a range, a spread of lowest nights that may be missing. */
const anyYear: fc.Arbitrary<ClimateInputs> = fc
  .record({
    mean: real(-30, 28),
    swing: real(0, 25),
    south: fc.boolean(),
    range: real(0.5, 20),
    drop: fc.option(real(1, 14)),
    bright: fc.option(real(0, 1)),
    lat: latitude,
  })
  .map(({ mean, swing, south, range, drop, bright, lat }) => ({
    ...denverMeans,
    stationLatitudeDeg: lat,
    distanceM: 0,
    annualExtremeMinC: null,
    annualExtremeMinYearsCount: null,
    months: denverMeans.months.map((m, i) => {
      const t = mean + (south ? 1 : -1) * swing * Math.cos((2 * Math.PI * (i - 0.5)) / 12);
      return {
        ...m,
        tMaxC: t + range / 2,
        tMinC: t - range / 2,
        vapourPressurePa: null,
        sunshineH: bright === null ? null : bright * 200,
        absoluteMinMeanC: drop === null ? null : t - range / 2 - drop,
      };
    }),
  }));
const siteOf = (climate: ClimateInputs): SiteInputs =>
  ({ latitudeDeg: climate.stationLatitudeDeg, longitudeDeg: 0, elevationM: climate.stationElevationM }) as SiteInputs;
const yearOf = (climate: ClimateInputs, seed: number): SyntheticYear => {
  const year = syntheticYear({ site: siteOf(climate), climate, seed });
  if ('missingMonths' in year) throw new Error(`no year: ${year.missingMonths.join(', ')}`);
  return year;
};

/** Means over each month of the daily highest, the daily lowest and all hours, and of the daily sun. */
const monthsOf = (year: SyntheticYear) => {
  let at = 0;
  return MONTH_DAYS.map((days) => {
    const sum = { high: 0, low: 0, mean: 0, sun: 0 };
    for (let d = 0; d < days; d++, at += 24) {
      const hours = year.airC.subarray(at, at + 24);
      sum.high += Math.max(...hours) / days;
      sum.low += Math.min(...hours) / days;
      sum.mean += hours.reduce((a, v) => a + v, 0) / 24 / days;
      sum.sun += (year.globalWPerM2.subarray(at, at + 24).reduce((a, v) => a + v, 0) * 3600) / 1e6 / days;
    }
    return sum;
  });
};
const expectMeans = (climate: ClimateInputs, seed: number): void => {
  const asked = computeClimate({ site: siteOf(climate), climate }).result.months;
  monthsOf(yearOf(climate, seed)).forEach((got, m) => {
    const want = asked[m];
    expect(Math.abs(got.high - (want?.tMaxC ?? NaN))).toBeLessThan(0.1);
    expect(Math.abs(got.low - (want?.tMinC ?? NaN))).toBeLessThan(0.1);
    expect(Math.abs(got.mean - ((want?.tMaxC ?? NaN) + (want?.tMinC ?? NaN)) / 2)).toBeLessThan(0.1);
    // A month of which a few minutes of sun are left over has too little of it for a share: 0.05 MJ/m2 is 0.6 W/m2.
    expect(Math.abs(got.sun - (want?.sunMJPerM2 ?? NaN))).toBeLessThan(Math.max(0.05, 0.02 * (want?.sunMJPerM2 ?? NaN)));
  });
};

test.each([
  ['Denver', denverMeans],
  ['Stornoway', stornowayMeans],
  ['Invercargill', invercargillMeans],
])('%s: a made year has the monthly means of the record, within 0.1 K and 2 per cent of sun', (_, climate) => expectMeans(climate, 11));

test('and so has the year of any place whose days differ more from its nights than from each other', () => {
  // Under two or three kelvins between day and night the spells alone part the extremes; the mean of all hours is then let go.
  fc.assert(
    fc.property(
      anyYear.filter((c) => (c.months[0]?.tMaxC ?? 0) - (c.months[0]?.tMinC ?? 0) > 4),
      fc.nat(1e6),
      expectMeans,
    ),
    { numRuns: 15 },
  );
});

test('a made year is finite, never below nought in sun, its dew never above its air, its beam never above the sun over the air', () => {
  fc.assert(
    fc.property(anyYear, fc.nat(1e6), (climate, seed) => {
      const year = yearOf(climate, seed);
      expect(year.airC).toHaveLength(8760);
      for (let i = 0; i < 8760; i++) {
        const [air = NaN, dew = NaN, all = NaN, beam = NaN, dome = NaN, cloud = NaN] = [
          year.airC[i],
          year.dewPointC[i],
          year.globalWPerM2[i],
          year.beamNormalWPerM2[i],
          year.diffuseWPerM2[i],
          year.cloudFrac[i],
        ];
        if (!(Number.isFinite(air) && dew <= air && all >= 0 && beam >= 0 && beam <= 1420 && dome >= -1e-9 && cloud >= 0 && cloud <= 1))
          throw new Error(`hour ${i}: ${[air, dew, all, beam, dome, cloud].join(' ')}`);
      }
    }),
    { numRuns: 12 },
  );
});

test('one seed gives one year, another seed another', () => {
  // Canberra's sunshine has gaps; its range of temperature fills them.
  expect(yearOf(canberraMeans, 5)).toEqual(yearOf(canberraMeans, 5));
  expect(yearOf(canberraMeans, 5).airC).not.toEqual(yearOf(canberraMeans, 6).airC);
});

test('a made year has memory: a day is more like its neighbour than like the day a fortnight on, and has clear and dark days', () => {
  const year = yearOf(stornowayMeans, 3);
  const days = Array.from({ length: 365 }, (_, d) => year.airC.subarray(d * 24, d * 24 + 24).reduce((a, v) => a + v, 0) / 24);
  const apart = (gap: number): number => days.slice(0, 365 - gap).reduce((a, v, d) => a + Math.abs((days[d + gap] ?? 0) - v), 0) / (365 - gap);
  expect(apart(1)).toBeLessThan(0.7 * apart(14));
  const june = Array.from({ length: 30 }, (_, d) => year.cloudFrac[(151 + d) * 24] ?? NaN);
  expect(Math.max(...june) - Math.min(...june)).toBeGreaterThan(0.4);
});

test('a missing month makes no year', () => {
  const climate = { ...denverMeans, months: denverMeans.months.map((m, i) => (i === 6 ? { ...m, tMaxC: null } : m)) };
  expect(syntheticYear({ site: siteOf(climate), climate, seed: 1 })).toEqual({ missingMonths: [7] });
});

const kinds = ['mean', 'clearDay', 'clearNight', 'cloudy'] as const;
test('typical days hold what they are asked for, at every latitude', () => {
  fc.assert(
    fc.property(anyYear, fc.integer({ min: 0, max: 11 }), (climate, m) => {
      const month = computeClimate({ site: siteOf(climate), climate }).result.months[m];
      if (!month) throw new Error('no month');
      const days = Object.fromEntries(kinds.map((k) => [k, typicalDay(siteOf(climate), month, k)]));
      const air = (k: (typeof kinds)[number]) => days[k]?.airC ?? [];
      expect(Math.min(...air('mean'))).toBeCloseTo(month.tMinC ?? NaN, 9);
      expect(Math.max(...air('mean'))).toBeCloseTo(month.tMaxC ?? NaN, 9);
      expect(Math.min(...air('clearNight'))).toBeCloseTo(month.coldNightC ?? NaN, 9);
      expect(Math.max(...air('clearDay'))).toBeCloseTo(month.sunnyDayMaxC ?? NaN, 9);
      const range = (k: (typeof kinds)[number]) => Math.max(...air(k)) - Math.min(...air(k));
      expect(range('cloudy')).toBeLessThanOrEqual(range('mean') + 1e-9);
      const sum = (k: (typeof kinds)[number]) => (days[k]?.globalWPerM2 ?? []).reduce((a, v) => a + v, 0);
      expect(sum('cloudy')).toBeLessThanOrEqual(sum('mean') + 1e-9);
      expect(sum('mean')).toBeLessThanOrEqual(sum('clearDay') + 1e-6);
    }),
    { numRuns: 80 },
  );
});

test('design values answer any latitude and any year: frost, season, class and degree-days agree with one another', () => {
  fc.assert(
    fc.property(anyYear, (climate) => {
      const { result, notes } = computeClimate({ site: siteOf(climate), climate });
      const frost = result.frost;
      if (!frost || !result.degreeDays) throw new Error('no frost dates of a whole year');
      const all = [frost.lastDayD, frost.firstDayD].flatMap((d) => [d.p10, d.p50, d.p90]).filter((d): d is number => d !== null);
      expect(all.every((d) => Number.isInteger(d) && d >= 1 && d <= 365)).toBe(true);
      if (frost.pattern === 'never') {
        expect(all).toEqual([]);
        expect(frost.freeD.p50).toBe(365);
        expect(frost.yearsWithFrostFrac).toBeLessThan(0.1);
      }
      if (frost.pattern === 'allYear') expect(frost.freeD.p50).toBe(0);
      if (frost.freeD.p10 !== null) {
        expect(frost.freeD.p10).toBeLessThanOrEqual(frost.freeD.p50 ?? NaN);
        expect(frost.freeD.p50).toBeLessThanOrEqual(frost.freeD.p90 ?? NaN);
      }
      expect(result.hardiness?.classMinC).toBeLessThanOrEqual(Math.max(result.designNight?.lowC ?? NaN, -51.11) + 1e-9);
      expect(result.degreeDays.heatingKD).toBeGreaterThanOrEqual(0);
      expect(result.degreeDays.growingKD).toBeGreaterThanOrEqual(0);
      const coldest = Math.min(...climate.months.map((m) => m.tMinC ?? Infinity));
      if (coldest > 20) expect(frost.pattern).toBe('never');
      if (coldest < -5) expect(['everyYear', 'allYear']).toContain(frost.pattern);
      expect(notes.filter((n) => n.code.startsWith('climate.frost-')).length).toBeLessThanOrEqual(2);
      expect(result.sunHours).toHaveLength(12);
    }),
    { numRuns: 150 },
  );
});

test('a warmer year has a longer season and a milder class; the two hemispheres change places by half a year', () => {
  const night = (shift: number, south: boolean) =>
    dailyCurve(Array.from({ length: 12 }, (_, i) => shift + 4 + (south ? 1 : -1) * 10 * Math.cos((2 * Math.PI * (i - 0.5)) / 12)));
  const spread = new Float64Array(365).fill(4);
  fc.assert(
    fc.property(real(-2, 4), real(0.2, 3), (shift, more) => {
      const [cool, warm] = [frostYear(night(shift, false), spread, 0), frostYear(night(shift + more, false), spread, 0)];
      expect(warm.yearsWithFrostFrac).toBeLessThanOrEqual(cool.yearsWithFrostFrac);
      if (cool.freeD.p50 !== null && warm.freeD.p50 !== null) expect(warm.freeD.p50).toBeGreaterThanOrEqual(cool.freeD.p50);
      const south = frostYear(night(shift, true), spread, 0);
      const turned = (((south.lastDayD.p50 ?? NaN) - (cool.lastDayD.p50 ?? NaN) + 365) % 365) - 182.5;
      expect(Math.abs(turned)).toBeLessThan(5);
    }),
  );
});

test('obstacles only take sun away, and a wall round the plot takes it all', () => {
  const screen = fc.record({ bearingDeg: real(0, 360), distanceM: real(0.5, 500), widthM: real(0.1, 500), heightM: real(0, 60) });
  fc.assert(
    fc.property(latitude, fc.integer({ min: 1, max: 365 }), fc.array(screen, { maxLength: 5 }), screen, (latitudeDeg, dayOfYear, some, one) => {
      const few = seenSun({ latitudeDeg, dayOfYear, line: skyLine(some) });
      const more = seenSun({ latitudeDeg, dayOfYear, line: skyLine([...some, one]) });
      const free = seenSun({ latitudeDeg, dayOfYear, line: skyLine([]) });
      expect(free.clearedH).toBeCloseTo(free.openH, 9);
      expect(more.clearedH).toBeLessThanOrEqual(few.clearedH + 1e-9);
      expect(more.lostFrac).toBeGreaterThanOrEqual(few.lostFrac - 1e-9);
      expect(few.clearedH).toBeLessThanOrEqual(few.openH + 1e-9);
    }),
    { numRuns: 60 },
  );
  const round = [0, 90, 180, 270].map((bearingDeg) => ({ bearingDeg, distanceM: 1, widthM: 10, heightM: 1000 }));
  expect(seenSun({ latitudeDeg: 50, dayOfYear: 172, line: skyLine(round) })).toMatchObject({ clearedH: 0, lostFrac: 1 });
});

test('the sun at any instant and place is a direction, and its times are in order', () => {
  fc.assert(
    fc.property(
      latitude,
      longitude,
      fc.integer({ min: 1900, max: 2100 }),
      fc.integer({ min: 1, max: 12 }),
      fc.integer({ min: 1, max: 28 }),
      (latitudeDeg, longitudeDeg, year, month, day) => {
        const seen = sunAtInstant({ julian: julianDay({ year, month, day, hourUtc: 7.3 }), latitudeDeg, longitudeDeg });
        expect(Math.hypot(seen.east, seen.north, seen.up)).toBeCloseTo(1, 9);
        const t = sunTimes({ year, month, day, latitudeDeg, longitudeDeg });
        expect(Number.isFinite(t.transitH)).toBe(true);
        if (t.season === 'risesAndSets') {
          expect(t.riseH).toBeLessThanOrEqual(t.transitH + 0.5);
          expect(t.setH).toBeGreaterThanOrEqual(t.transitH - 0.5);
        } else expect([t.riseH, t.setH]).toEqual([null, null]);
      },
    ),
    { numRuns: 300 },
  );
});

test('a sky is never warmer than its air, and cloud only warms it', () => {
  fc.assert(
    fc.property(real(-40, 40), real(0, 25), real(0, 9), real(0, 1), real(-1, 1), (airC, dryK, tenths, more, position) => {
      const at = (cloudTenths: number) => skyC({ airC, dewPointC: airC - dryK, cloudTenths, position });
      expect(at(tenths)).toBeLessThanOrEqual(airC + 1e-9);
      // Walton's polynomial rises from nought to ten tenths.
      expect(at(tenths + more)).toBeGreaterThanOrEqual(at(tenths) - 1e-6);
    }),
    { numRuns: 300 },
  );
});

test('sun is taken from radiation, then sunshine, then range, with doubt that grows in that order', () => {
  fc.assert(
    fc.property(real(5, 42), real(0, 1), real(0, 25), real(0, 45), (above, bright, rangeK, mj) => {
      const clear = 0.76 * above;
      const by = (radiation: boolean, sunshine: boolean, range: boolean) =>
        sunOfDay({ radiationMJPerM2: radiation ? mj : null, sunshineFrac: sunshine ? bright : null, rangeK: range ? rangeK : null }, above, clear);
      const found = [by(true, true, true), by(false, true, true), by(false, false, true), by(false, false, false)];
      expect(found.map((f) => f.basis)).toEqual(['radiation', 'sunshineHours', 'temperatureRange', 'none']);
      expect(found.slice(0, 3).every((f) => f.sunMJPerM2 !== null && f.sunMJPerM2 >= 0 && f.sunMJPerM2 <= clear)).toBe(true);
      expect(found[3]).toMatchObject({ sunMJPerM2: null, doubtFrac: null });
      const [a = 0, b = 0, c = 0] = found.map((f) => f.doubtFrac ?? NaN);
      expect(a < b && b < c).toBe(true);
    }),
  );
});
