import { expect, test } from '@jest/globals';
import fc from 'fast-check';
import type { ClimateInputs, SiteInputs } from '@lathwork/model';
import { computeClimate } from '@lathwork/calc';
import { denverMeans } from '../support/climates.js';
import { dewPointC, hourlyAirC, saturationPa } from '../../libs/calc/src/physics/air.js';
import { hourlySun } from '../../libs/calc/src/physics/sky.js';
import * as sun from '../../libs/calc/src/physics/sun.js';

const latitude = fc.oneof(fc.double({ min: -90, max: 90, noNaN: true }), fc.constantFrom(-90, -66.6, -5, 0, 5, 66.6, 90));
const day = fc.integer({ min: 1, max: 366 });

test('length of day: 0 to 24 h, and the two hemispheres add up to 24 on any day', () => {
  fc.assert(
    fc.property(latitude, day, (lat, n) => {
      const light = sun.daylightH(lat, n);
      expect(light).toBeGreaterThanOrEqual(0);
      expect(light).toBeLessThanOrEqual(24);
      expect(light + sun.daylightH(-lat, n)).toBeCloseTo(24, 6);
    }),
  );
});

test('six months apart the hemispheres change places, within what the ellipse of the orbit allows', () => {
  fc.assert(
    fc.property(fc.double({ min: -55, max: 55, noNaN: true }), fc.integer({ min: 1, max: 182 }), (lat, n) => {
      expect(Math.abs(sun.daylightH(lat, n) - sun.daylightH(-lat, n + 183))).toBeLessThan(0.6);
    }),
  );
});

test("a day's sun is kept in its hours, finite and never under zero, at every latitude", () => {
  fc.assert(
    fc.property(latitude, day, fc.double({ min: 0, max: 0.8, noNaN: true }), (lat, n, kt) => {
      const above = sun.extraterrestrialDayMJPerM2(lat, n);
      const hours = hourlySun({ latitudeDeg: lat, dayOfYear: n, dayMJPerM2: kt * above });
      const all = [...hours.globalWPerM2, ...hours.beamNormalWPerM2, ...hours.diffuseWPerM2];
      expect(all.every((v) => Number.isFinite(v) && v >= 0)).toBe(true);
      const sum = (hours.globalWPerM2.reduce((a, v) => a + v, 0) * 3600) / 1e6;
      if (sum > 0) expect(sum).toBeCloseTo(kt * above, 9);
      else expect(kt * above).toBeLessThan(0.1);
      expect(Math.max(...hours.beamNormalWPerM2)).toBeLessThanOrEqual(sun.extraterrestrialNormalWPerM2(n));
    }),
    { numRuns: 300 },
  );
});

test('a tilted plane: parts are finite and never negative, the level plane gets the level sun', () => {
  const angle = fc.double({ min: 0, max: 180, noNaN: true });
  fc.assert(
    fc.property(latitude, day, fc.integer({ min: 0, max: 23 }), angle, fc.double({ min: 0, max: 360, noNaN: true }), (lat, n, hour, tilt, azimuth) => {
      const hours = hourlySun({ latitudeDeg: lat, dayOfYear: n, dayMJPerM2: 0.7 * sun.extraterrestrialDayMJPerM2(lat, n) });
      const at = {
        latitudeDeg: lat,
        dayOfYear: n,
        solarHour: hour + 0.5,
        beamNormalWPerM2: hours.beamNormalWPerM2[hour] ?? NaN,
        diffuseWPerM2: hours.diffuseWPerM2[hour] ?? NaN,
        albedoFrac: 0.2,
      };
      const plane = sun.planeIrradiance({ ...at, tiltDeg: tilt, azimuthDeg: azimuth });
      expect(Object.values(plane).every((v) => Number.isFinite(v) && v >= 0)).toBe(true);
      const level = sun.planeIrradiance({ ...at, tiltDeg: 0, azimuthDeg: azimuth });
      expect(level.groundWPerM2).toBeCloseTo(0, 9);
      const hourLong = sun.planeOfHour({ ...at, fromSolarHour: hour, tiltDeg: tilt, azimuthDeg: azimuth });
      expect(Object.values(hourLong).every((v) => Number.isFinite(v) && v >= 0)).toBe(true);
      if (sun.sunPosition(at).up > 0.1) expect(level.beamWPerM2 + level.skyWPerM2).toBeCloseTo(hours.globalWPerM2[hour] ?? NaN, 6);
    }),
    { numRuns: 300 },
  );
});

test('a plane and its mirror image see the same sun in forenoon and afternoon', () => {
  fc.assert(
    fc.property(
      latitude,
      day,
      fc.double({ min: 0, max: 12, noNaN: true }),
      fc.double({ min: 0, max: 90, noNaN: true }),
      fc.double({ min: 0, max: 180, noNaN: true }),
      (lat, n, before, tilt, turn) => {
        const at = (solarHour: number, azimuthDeg: number) =>
          sun.cosIncidence(sun.sunPosition({ latitudeDeg: lat, dayOfYear: n, solarHour }), tilt, azimuthDeg);
        expect(at(12 - before, turn)).toBeCloseTo(at(12 + before, 360 - turn), 9);
      },
    ),
  );
});

test('the hours of air reach both extremes exactly and never pass them', () => {
  fc.assert(
    fc.property(latitude, day, fc.double({ min: -60, max: 30, noNaN: true }), fc.double({ min: 0, max: 25, noNaN: true }), (lat, n, minC, rangeK) => {
      const hours = hourlyAirC({ latitudeDeg: lat, dayOfYear: n, maxC: minC + rangeK, minC });
      expect(Math.min(...hours)).toBeCloseTo(minC, 9);
      expect(Math.max(...hours)).toBeCloseTo(minC + rangeK, 9);
    }),
    { numRuns: 300 },
  );
});

test("dew point and saturation are each other's reverse, through the triple point too", () => {
  fc.assert(
    fc.property(fc.oneof(fc.double({ min: -60, max: 60, noNaN: true }), fc.double({ min: -0.05, max: 0.05, noNaN: true })), (t) =>
      expect(Math.abs(dewPointC(saturationPa(t)) - t)).toBeLessThan(0.01),
    ),
  );
});

const allNumbers = (value: unknown): number[] => {
  if (typeof value === 'number') return [value];
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(allNumbers) : [];
};
/** A record with holes: any month may lack any figure. */
const record: fc.Arbitrary<ClimateInputs> = fc
  .record({
    holes: fc.array(fc.nat(255), { minLength: 12, maxLength: 12 }),
    distanceM: fc.integer({ min: 0, max: 2e7 }),
    extreme: fc.option(fc.integer({ min: -60, max: 25 })),
  })
  .map(({ holes, distanceM, extreme }) => ({
    ...denverMeans,
    distanceM,
    annualExtremeMinC: extreme,
    months: denverMeans.months.map((m, i) => {
      const h = holes[i] ?? 0;
      const keep = (bit: number, v: number | null) => ((h & (3 << bit)) === 0 ? null : v);
      return {
        ...m,
        tMaxC: keep(0, m.tMaxC),
        tMinC: keep(2, m.tMinC),
        vapourPressurePa: keep(4, m.vapourPressurePa),
        absoluteMinMeanC: keep(6, m.absoluteMinMeanC),
        sunshineH: h > 200 ? 120 : null,
      };
    }),
  }));

test('the room answers any latitude, height and holes in the record with finite numbers or null', () => {
  fc.assert(
    fc.property(latitude, fc.integer({ min: -430, max: 6000 }), record, (latitudeDeg, elevationM, climate) => {
      const { result, notes } = computeClimate({ site: { latitudeDeg, elevationM } as SiteInputs, climate });
      expect([...allNumbers(result), ...allNumbers(notes)].every(Number.isFinite)).toBe(true);
      expect(result.months).toHaveLength(12);
      expect(result.designNight === null).toBe(notes.some((n) => n.code === 'climate.night-blocked'));
      expect(notes.filter((n) => n.code === 'climate.month-missing')).toHaveLength(12 - result.monthsWithRecordCount);
      for (const d of [...result.clearDays, ...result.coldNights]) expect(d.dewPointC).toBeLessThanOrEqual(Math.min(...d.airC) + 1e-9);
    }),
    { numRuns: 300 },
  );
});
