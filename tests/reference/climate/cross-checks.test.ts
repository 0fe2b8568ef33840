import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type * as Astronomy from 'astronomy-engine';
import type Psychrolib from 'psychrolib';
import { parseStations } from '@lathwork/formats';
import { referenceTable, type ReferenceCheck } from '../../support/reference.js';
import { dataFile } from '../../support/data-folder.js';
import * as air from '../../../libs/calc/src/physics/air.js';
import * as sun from '../../../libs/calc/src/physics/sun.js';

const require = createRequire(import.meta.url);
const astronomy = require('astronomy-engine') as typeof Astronomy;
const psychrolib = require('psychrolib') as typeof Psychrolib;
psychrolib.SetUnitSystem(psychrolib.SI);

const RAD = Math.PI / 180;
/** Numbers between 0 and 1 from a fixed seed (mulberry32), so that a failure can be met again. */
const draws = (seed: number) => () => {
  seed = (seed + 0x6d2b79f5) | 0;
  let t = Math.imul(seed ^ (seed >>> 15), 1 | seed);
  t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
  return ((t ^ (t >>> 14)) >>> 0) / 4_294_967_296;
};
const worst = (count: number, seed: number, off: (between: (low: number, high: number) => number) => number): number => {
  const next = draws(seed);
  return Math.max(...Array.from({ length: count }, () => off((low, high) => low + (high - low) * next())));
};
const cross = { room: 'climate' as const, kind: 'cross-check' as const, expected: 0 };
const PSY = 'psychrolib 1.1.1 over 500 random inputs: greatest difference';
const AST = 'astronomy-engine 2.1.19 over random places and times, 2003 to 2026: greatest difference';

const moist: ReferenceCheck[] = [
  {
    ...cross,
    id: 'x-psychrolib-saturation',
    source: PSY,
    unit: '1',
    tolerance: { abs: 1e-9, why: 'same equations' },
    got: () => worst(500, 1, (b) => relative((t) => [air.saturationPa(t), psychrolib.GetSatVapPres(t)], b(-60, 60))),
  },
  {
    ...cross,
    id: 'x-psychrolib-dew-point',
    source: PSY,
    unit: 'K',
    tolerance: { abs: 0.002, why: 'that library stops its search at 0.001 K' },
    got: () =>
      worst(500, 2, (b) => {
        const t = b(-40, 50);
        const vapour = b(0.05, 1) * air.saturationPa(t);
        return Math.abs(air.dewPointC(vapour) - psychrolib.GetTDewPointFromVapPres(t, vapour));
      }),
  },
  {
    ...cross,
    id: 'x-psychrolib-wet-bulb',
    source: PSY,
    unit: 'K',
    tolerance: { abs: 0.003, why: 'that library stops its search at 0.001 K' },
    got: () =>
      worst(500, 3, (b) => {
        const [t, p] = [b(2, 50), b(60_000, 105_000)];
        const ratio = air.humidityRatio(b(0.3, 1) * air.saturationPa(t), p);
        const theirs = psychrolib.GetTWetBulbFromHumRatio(t, ratio, p);
        return Math.abs(theirs) < 0.05 ? 0 : Math.abs(air.wetBulbC(t, ratio, p) - theirs);
      }),
  },
  {
    ...cross,
    id: 'x-psychrolib-enthalpy',
    source: PSY,
    unit: 'J/kg',
    tolerance: { abs: 1e-6, why: 'same equation' },
    got: () =>
      worst(500, 4, (b) => {
        const [t, w] = [b(-30, 50), b(1e-4, 0.03)];
        return Math.abs(air.enthalpyJPerKg(t, w) - psychrolib.GetMoistAirEnthalpy(t, w));
      }),
  },
  {
    ...cross,
    id: 'x-psychrolib-density',
    source: PSY,
    unit: 'kg/m3',
    tolerance: { abs: 1e-9, why: 'same equation' },
    got: () =>
      worst(500, 5, (b) => {
        const [t, w, p] = [b(-30, 50), b(1e-4, 0.03), b(50_000, 105_000)];
        return Math.abs(air.densityKgPerM3(t, w, p) - psychrolib.GetMoistAirDensity(t, w, p));
      }),
  },
  {
    ...cross,
    id: 'x-psychrolib-pressure',
    source: PSY,
    unit: 'Pa',
    tolerance: { abs: 1e-6, why: 'same equation' },
    got: () =>
      worst(500, 6, (b) => {
        const z = b(-430, 9000);
        return Math.abs(air.pressurePa(z) - psychrolib.GetStandardAtmPressure(z));
      }),
  },
];

function relative(pair: (t: number) => [number, number], t: number): number {
  const [mine, theirs] = pair(t);
  return Math.abs(mine / theirs - 1);
}

/** A random moment with the ephemeris's sun above or below a random place. */
const moment = (b: (low: number, high: number) => number) => {
  const year = Math.floor(b(2003, 2027));
  const start = Date.UTC(year, 0, 1);
  const when = new Date(start + b(0, 365) * 86_400_000);
  const dayOfYear = Math.floor((when.getTime() - start) / 86_400_000) + 1;
  const clockH = when.getUTCHours() + when.getUTCMinutes() / 60 + when.getUTCSeconds() / 3600;
  return { when, dayOfYear, clockH, latitudeDeg: b(-90, 90), longitudeDeg: b(-180, 180) };
};
const ephemeris: ReferenceCheck[] = [
  {
    ...cross,
    id: 'x-astronomy-direction',
    source: AST,
    unit: 'deg',
    tolerance: { abs: 0.55, why: 'one declination a day and a mean year; 2 sun widths' },
    got: () =>
      worst(2000, 7, (b) => {
        const m = moment(b);
        const observer = new astronomy.Observer(m.latitudeDeg, m.longitudeDeg, 0);
        const place = astronomy.Equator(astronomy.Body.Sun, m.when, observer, true, true);
        const theirs = astronomy.Horizon(m.when, observer, place.ra, place.dec);
        const flat = Math.cos(theirs.altitude * RAD);
        const mine = sun.sunPosition({
          latitudeDeg: m.latitudeDeg,
          dayOfYear: m.dayOfYear,
          solarHour: sun.solarHourOf(m.clockH, { longitudeDeg: m.longitudeDeg, zoneH: 0, dayOfYear: m.dayOfYear }),
        });
        const dot =
          mine.up * Math.sin(theirs.altitude * RAD) + flat * (mine.east * Math.sin(theirs.azimuth * RAD) + mine.north * Math.cos(theirs.azimuth * RAD));
        return Math.acos(Math.min(1, dot)) / RAD;
      }),
  },
  {
    ...cross,
    id: 'x-astronomy-declination-noon',
    source: AST,
    unit: 'deg',
    tolerance: { abs: 0.35, why: 'mean year of the series against leap years' },
    got: () =>
      worst(2000, 8, (b) => {
        const [year, day] = [Math.floor(b(2003, 2027)), Math.floor(b(1, 366))];
        const noon = new Date(Date.UTC(year, 0, day, 12));
        return Math.abs(sun.declinationDeg(day) - astronomy.Equator(astronomy.Body.Sun, noon, new astronomy.Observer(0, 0, 0), true, true).dec);
      }),
  },
  {
    ...cross,
    id: 'x-astronomy-equation-of-time',
    source: AST,
    unit: 'min',
    tolerance: { abs: 0.9, why: 'mean year of the series against leap years: 13 seconds at the turn of the year for each half day' },
    got: () =>
      worst(500, 9, (b) => {
        const [year, day] = [Math.floor(b(2003, 2027)), Math.floor(b(1, 366))];
        const hour = astronomy.HourAngle(astronomy.Body.Sun, new Date(Date.UTC(year, 0, day, 12)), new astronomy.Observer(0, 0, 0));
        return Math.abs(sun.equationOfTimeMin(day) - (((hour + 12) % 24) - 12) * 60);
      }),
  },
  {
    ...cross,
    id: 'x-astronomy-distance',
    source: AST,
    unit: '1',
    tolerance: { abs: 0.003, why: 'one cosine for the distance, 0.3 per cent' },
    got: () =>
      worst(500, 10, (b) => {
        const [year, day] = [Math.floor(b(2003, 2027)), Math.floor(b(1, 366))];
        const v = astronomy.GeoVector(astronomy.Body.Sun, new Date(Date.UTC(year, 0, day, 12)), false);
        return Math.abs(sun.distanceFactor(day) - 1 / (v.x ** 2 + v.y ** 2 + v.z ** 2));
      }),
  },
];

const table = () => parseStations(readFileSync('prisma/seed/stations.csv', 'utf8')).stations;
const mean = (values: readonly number[]): number => values.reduce((a, v) => a + v, 0) / values.length;
const known = (values: readonly (number | null)[]): number[] => values.filter((v): v is number => v !== null);
const lows = (of: 'tMinC' | 'absoluteMinMeanC') =>
  table().flatMap((s) => {
    const months = known(s.months.map((m) => m[of]));
    return s.annualExtremeMinC === null || months.length < 12 ? [] : [Math.min(...months) - s.annualExtremeMinC];
  });
const counted = {
  room: 'climate' as const,
  kind: 'worked' as const,
  source: 'counted here over prisma/seed/stations.csv (data: Deutscher Wetterdienst)',
  unit: 'K',
};
const spreads: ReferenceCheck[] = [
  {
    ...counted,
    id: 'spread-month',
    expected: 5.8,
    tolerance: { abs: 0.05, why: 'rounded to 0.1 K' },
    got: () => mean(table().flatMap((s) => s.months.flatMap((m) => (m.tMinC === null || m.absoluteMinMeanC === null ? [] : [m.tMinC - m.absoluteMinMeanC])))),
  },
  { ...counted, id: 'spread-year-under-month', expected: 1.4, tolerance: { abs: 0.05, why: 'rounded to 0.1 K' }, got: () => mean(lows('absoluteMinMeanC')) },
  { ...counted, id: 'spread-year-under-mean', expected: 8.4, tolerance: { abs: 0.05, why: 'rounded to 0.1 K' }, got: () => mean(lows('tMinC')) },
];

/** How far the coldest night of all years lies under their mean: a column that the project's own table does not carry. */
const RAW = dataFile('climate/world-station-means-2003-2021.csv');
const worstYears = (): number => {
  const [header = '', ...lines] = readFileSync(RAW.path, 'utf8').trim().split('\n');
  const names = header.trim().split(',');
  // Counted from the end of the line, because a country's name may hold a quoted comma.
  const fromEnd = (name: string): number => names.indexOf(name) - names.length;
  const [meanAt, lowestAt] = [fromEnd('annual_extreme_min_mean_c'), fromEnd('annual_extreme_min_lowest_c')];
  return mean(
    lines.flatMap((line) => {
      const fields = line.trim().split(',');
      const [average, lowest] = [fields.at(meanAt), fields.at(lowestAt)];
      return average && lowest ? [Number(average) - Number(lowest)] : [];
    }),
  );
};
spreads.push({
  ...counted,
  id: 'spread-worst-year',
  source: 'counted here over the table of world station means 2003-2021 (data: Deutscher Wetterdienst)',
  expected: 4.4,
  tolerance: { abs: 0.05, why: 'rounded to 0.1 K' },
  skip: RAW.skip,
  got: worstYears,
});

/** Whole-year sun on five planes of the Standard 140 weather file; an hour of that file ends at its label. */
const DENVER = dataFile('weather/725650TYCST.epw');
const yearOn = (tiltDeg: number, azimuthDeg: number): number => {
  const place = { latitudeDeg: 39.83, longitudeDeg: -104.65, zoneH: -7 };
  const rows = readFileSync(DENVER.path, 'latin1')
    .trim()
    .split(/\r?\n/)
    .slice(8)
    .map((line) => line.split(',').map(Number));
  return rows.reduce((sum, row, i) => {
    const dayOfYear = Math.floor(i / 24) + 1;
    const p = sun.planeOfHour({
      latitudeDeg: place.latitudeDeg,
      dayOfYear,
      fromSolarHour: sun.solarHourOf(i % 24, { ...place, dayOfYear }),
      tiltDeg,
      azimuthDeg,
      beamNormalWPerM2: row[14] ?? NaN,
      diffuseWPerM2: row[15] ?? NaN,
      albedoFrac: 0.2,
    });
    return sum + (p.beamWPerM2 + p.skyWPerM2 + p.groundWPerM2) / 1000;
  }, 0);
};
const denver = (id: string, tilt: number, azimuth: number, low: number, high: number): ReferenceCheck => ({
  room: 'climate',
  kind: 'published',
  id: `bestest2020-solar-${id}`,
  source: 'ANSI/ASHRAE 140-2020 example results (RESULTS5-2A): middle of the range of six programs',
  unit: 'kWh/m2',
  expected: (low + high) / 2,
  tolerance: { abs: (high - low) / 2, why: 'the range of six programs' },
  skip: DENVER.skip,
  got: () => yearOn(tilt, azimuth),
});

referenceTable('climate: moist air against an independent library', moist);
referenceTable('climate: the sun against an ephemeris', ephemeris);
referenceTable('climate: spread of nights over the station table', spreads);
referenceTable('climate: a year of sun on five planes', [
  denver('horizontal', 0, 180, 1662.5, 1670),
  denver('south', 90, 180, 1291, 1387),
  denver('east', 90, 90, 1017, 1068),
  denver('west', 90, 270, 903, 997),
  denver('north', 90, 0, 399, 477),
]);
