import { referenceTable, type ReferenceCheck } from '../../support/reference.js';
import {
  diffuseFracOfDay,
  diffuseFracOfHour,
  diffuseFracOfMonth,
  diffuseHourFrac,
  globalHourFrac,
  sunFromRange,
  sunFromSunshine,
} from '../../../libs/calc/src/physics/sky.js';
import * as sun from '../../../libs/calc/src/physics/sun.js';

/*
 * Left out on purpose: sol-klein-* print a declination by one sine, which is a whole degree off the ephemeris in September; the
 * characteristic days of sol-iqbal-days are used instead. sol-pv-hay and sol-pv-klucher are other models of the dome, sol-pv-airmass
 * is used nowhere. The parts of the full ephemeris are in sun-instant.test.ts.
 */
const DB = 'Duffie & Beckman, Solar Engineering of Thermal Processes';
const PVLIB = 'pvlib-python test suite, commit 6382338';
const SPA = 'NREL SPA reference case (NREL/TP-560-34302, appendix A.5), as pinned in pvlib tests/test_spa.py';
const FAO = 'FAO-56 (Allen et al. 1998), as pinned in PyETo tests/test_fao.py';
const published = { room: 'climate' as const, kind: 'published' as const };
const memory = { ...published, fromMemory: true };
const worked = { room: 'climate' as const, kind: 'worked' as const };
const RAD = Math.PI / 180;
/** The one-sine declination of that book (eq. 1.6.1a) and of FAO-56, fed in where an example was worked with it. */
const bookDeclination = (n: number): number => 23.45 * Math.sin(((360 * (284 + n)) / 365) * RAD);
const printed = (digits: string) => `printed to ${digits}`;

/** Azimuth as that book counts it: from south, west positive. */
const fromSouth = (s: sun.Sun): number => s.azimuthDeg - 180;

const golden = { latitudeDeg: 39.742476, longitudeDeg: -105.1786, zoneH: -7 };
const goldenSun = () =>
  sun.sunPosition({ latitudeDeg: golden.latitudeDeg, dayOfYear: 290, solarHour: sun.solarHourOf(12 + 30.5 / 60, { ...golden, dayOfYear: 290 }) });

const clock = (hours: number): string => {
  const s = Math.round(hours * 3600);
  return [Math.floor(s / 3600), Math.floor(s / 60) % 60, s % 60].map((n) => String(n).padStart(2, '0')).join(':');
};
const riseAndSet = (x: { latitudeDeg: number; longitudeDeg: number; zoneH: number }, dayOfYear: number): { sunrise: string; sunset: string } => {
  const half = sun.daylightH(x.latitudeDeg, dayOfYear) / 2;
  return { sunrise: clock(sun.clockHourOf(12 - half, { ...x, dayOfYear })), sunset: clock(sun.clockHourOf(12 + half, { ...x, dayOfYear })) };
};

const position: ReferenceCheck[] = [
  {
    ...published,
    id: 'sol-spa-delta',
    source: SPA,
    unit: 'deg',
    expected: -9.31434,
    tolerance: { abs: 0.4, why: 'one declination a day, at its noon in Greenwich; it moves 0.37 deg a day' },
    got: () => sun.declinationDeg(290),
  },
  {
    ...published,
    id: 'sol-spa-eot',
    source: SPA,
    unit: 'min',
    expected: 14.64,
    tolerance: { abs: 0.6, why: 'stated error of the series' },
    got: () => sun.equationOfTimeMin(290),
  },
  {
    ...published,
    id: 'sol-simple-vs-spa-elev',
    source: SPA,
    unit: 'deg',
    expected: 39.872046,
    tolerance: { abs: 0.5, why: 'daily series; pvlib allows 0.86 deg over a year' },
    got: () => 90 - goldenSun().zenithDeg,
  },
  {
    ...published,
    id: 'sol-simple-vs-spa-az',
    source: SPA,
    unit: 'deg',
    expected: 194.340241,
    tolerance: { abs: 0.3, why: 'daily series' },
    got: () => goldenSun().azimuthDeg,
  },
  {
    ...published,
    id: 'sol-golden-jan',
    source: `${PVLIB}: test_solarposition.py`,
    unit: 'hh:mm:ss',
    expected: { sunrise: '07:21:55', sunset: '16:47:43' },
    tolerance: { abs: 420, why: 'no refraction, centre of the disc: up to 7 min' },
    got: () => riseAndSet(golden, 2),
  },
  {
    ...published,
    id: 'sol-golden-aug',
    source: `${PVLIB}: test_solarposition.py`,
    unit: 'hh:mm:ss',
    expected: { sunrise: '05:00:27', sunset: '19:13:58' },
    tolerance: { abs: 420, why: 'no refraction, centre of the disc: up to 7 min' },
    got: () => riseAndSet(golden, 214),
  },
  {
    ...published,
    id: 'sol-spa-35S-rise',
    source: `${PVLIB}: test_spa.py`,
    unit: 'hh:mm:ss',
    expected: { sunrise: '07:08:15', sunset: '17:01:04' },
    tolerance: { abs: 420, why: 'no refraction, centre of the disc: up to 7 min' },
    got: () => riseAndSet({ latitudeDeg: -35, longitudeDeg: 0, zoneH: 0 }, 187),
  },
  {
    ...published,
    id: 'sol-spa-35N-rise',
    source: `${PVLIB}: test_spa.py`,
    unit: 'hh:mm:ss',
    expected: { sunrise: '07:08:12', sunset: '16:59:55' },
    tolerance: { abs: 420, why: 'no refraction, centre of the disc: up to 7 min' },
    got: () => riseAndSet({ latitudeDeg: 35, longitudeDeg: 0, zoneH: 0 }, 2),
  },
  {
    ...published,
    id: 'sol-iqbal-days',
    source: 'Iqbal (1983), table 4.2.1, reproduced in Applied Photovoltaics, appendix C',
    unit: 'd, deg',
    expected: {
      n: [17, 45, 74, 105, 135, 161, 199, 230, 261, 292, 322, 347],
      declination: [-20.84, -13.32, -2.4, 9.46, 18.78, 23.04, 21.11, 13.28, 1.97, -9.84, -19.02, -23.12],
    },
    tolerance: { abs: 0.22, why: 'the table prints the mean of the month, on the nearest whole day: half a day is 0.2 deg' },
    got: () => ({ n: sun.MEAN_DAYS, declination: sun.MEAN_DAYS.map(sun.declinationDeg) }),
  },
  {
    ...published,
    id: 'sol-eot-n34',
    source: `${DB}, example 1.5.1`,
    unit: 'min',
    expected: -13.5,
    tolerance: { abs: 0.05, why: printed('0.1 min') },
    got: () => sun.equationOfTimeMin(34),
  },
  {
    ...published,
    id: 'sol-time-n34',
    source: `${DB}, example 1.5.1`,
    unit: 'hh:mm:ss',
    expected: '10:18:55',
    tolerance: { abs: 60, why: 'the book rounds to the minute' },
    got: () => clock(sun.solarHourOf(10.5, { longitudeDeg: -89.4, zoneH: -6, dayOfYear: 34 })),
  },
  {
    ...published,
    id: 'sol-gon-n1',
    source: `${DB}, eq. 1.4.1a`,
    unit: 'W/m2',
    expected: 1412.1043,
    tolerance: { abs: 0.01, why: 'same formula and constant' },
    got: () => sun.extraterrestrialNormalWPerM2(1),
  },
  {
    ...published,
    id: 'sol-gon-spencer',
    source: `${PVLIB}: test_irradiance.py`,
    unit: 'W/m2',
    expected: 1383.636203,
    tolerance: { abs: 10, why: 'as that suite allows between forms' },
    got: () => sun.extraterrestrialNormalWPerM2(300),
  },
];

const at43 = (declination: number, solarHour: number) => sun.sunPosition({ latitudeDeg: 43, declination, solarHour });
const examples: ReferenceCheck[] = [
  {
    ...memory,
    id: 'sol-db-161',
    source: `${DB}, example 1.6.1`,
    unit: 'deg',
    expected: 35,
    tolerance: { abs: 0.3, why: 'book rounds the cosine' },
    got: () => Math.acos(sun.cosIncidence(at43(-14, 10.5), 45, 195)) / RAD,
  },
  {
    ...memory,
    id: 'sol-db-162a',
    source: `${DB}, example 1.6.2`,
    unit: 'deg',
    expected: [66.5, -40],
    tolerance: { abs: 0.15, why: printed('0.5 deg') },
    got: () => [at43(-14, 9.5).zenithDeg, fromSouth(at43(-14, 9.5))],
  },
  {
    ...memory,
    id: 'sol-db-162b',
    source: `${DB}, example 1.6.2`,
    unit: 'deg',
    expected: [79.6, 112],
    tolerance: { abs: 0.15, why: printed('0.1 deg') },
    got: () => [at43(23.1, 18.5).zenithDeg, fromSouth(at43(23.1, 18.5))],
  },
  {
    ...memory,
    id: 'sol-db-163',
    source: `${DB}, example 1.6.3`,
    unit: 'deg',
    expected: [19.7, 70.3, 66.8, 87.8],
    tolerance: { abs: 0.1, why: printed('0.1 deg') },
    got: () => [90 - at43(-2.4, 16).zenithDeg, at43(-2.4, 16).zenithDeg, fromSouth(at43(-2.4, 16)), sun.sunsetAngleDeg(43, -2.4)],
  },
  {
    ...memory,
    id: 'sol-db-181',
    source: `${DB}, example 1.8.1`,
    unit: '1',
    expected: 1.66,
    tolerance: { abs: 0.01, why: printed('0.01') },
    got: () => sun.beamRatio(at43(-14, 10.5), 45, 195),
  },
  {
    ...memory,
    id: 'sol-db-182',
    source: `${DB}, example 1.8.2`,
    unit: '1',
    expected: 1.61,
    tolerance: { abs: 0.01, why: printed('0.01') },
    got: () => sun.beamRatio(sun.sunPosition({ latitudeDeg: 40, declination: -13, solarHour: 9.5 }), 30, 180),
  },
  {
    ...memory,
    id: 'sol-db-183',
    source: `${DB}, example 1.8.3`,
    unit: '1',
    expected: 1.79,
    tolerance: { abs: 0.01, why: printed('0.01') },
    got: () => sun.beamRatio(sun.sunPosition({ latitudeDeg: 40, declination: -13, solarHour: 9.5 }), 50, 180),
  },
  {
    ...memory,
    id: 'sol-db-1101',
    source: `${DB}, example 1.10.1`,
    unit: 'MJ/m2',
    expected: 33.8,
    tolerance: { abs: 0.05, why: printed('0.1') },
    got: () => sun.extraterrestrialDayMJPerM2(43, 105, bookDeclination(105)),
  },
  {
    ...memory,
    id: 'sol-db-1102',
    source: `${DB}, example 1.10.2`,
    unit: 'MJ/m2',
    expected: 3.79,
    tolerance: { abs: 0.01, why: printed('0.01') },
    got: () => sun.extraterrestrialHourMJPerM2(43, 105, 10, bookDeclination(105)),
  },
  {
    ...worked,
    id: 'sol-db-2111',
    source: `${DB}, example 2.11.1, computed from eq. 2.11.1`,
    unit: 'MJ/m2, 1, 1',
    expected: [33.25, 0.692, 0.253],
    tolerance: { abs: 0.01, why: 'computed with the same equations' },
    got: () => withClearness(38.6, 246, 23, diffuseFracOfDay),
  },
  {
    ...worked,
    id: 'sol-db-2121',
    source: `${DB}, example 2.12.1, computed from eq. 2.12.1`,
    unit: 'MJ/m2, 1, 1',
    expected: [41.78, 0.5505, 0.382],
    tolerance: { abs: 0.005, why: 'computed with the same equations' },
    got: () => withClearness(43, 162, 23, diffuseFracOfMonth),
  },
  {
    ...worked,
    id: 'sol-db-2131',
    source: `${DB}, example 2.13.1, computed from eq. 2.13.1`,
    unit: '1',
    expected: 0.0759,
    tolerance: { abs: 0.0005, why: 'declination by another series' },
    got: () => globalHourFrac(-52.5, sun.sunsetAngleDeg(-38, sun.declinationDeg(17))),
  },
  {
    ...worked,
    id: 'sol-db-2132',
    source: `${DB}, example 2.13.2, computed from eq. 2.13.1`,
    unit: 'MJ/m2',
    expected: 3.7,
    tolerance: { abs: 0.02, why: printed('0.01') },
    got: () => 31.4 * globalHourFrac(22.5, sun.sunsetAngleDeg(43, sun.declinationDeg(235))),
  },
  {
    ...worked,
    id: 'sol-db-2133',
    source: `${DB}, example 2.13.3, computed from eq. 2.13.1 and 2.13.4`,
    unit: 'MJ/m2',
    expected: [2.49, 0.89, 1.6],
    tolerance: { abs: 0.02, why: printed('0.01') },
    got: () => {
      const set = sun.sunsetAngleDeg(43, sun.declinationDeg(162));
      const all = 23 * globalHourFrac(-22.5, set);
      const dome = 23 * 0.382 * diffuseHourFrac(-22.5, set);
      return [all, dome, all - dome];
    },
  },
  {
    ...worked,
    id: 'sol-rt-sum',
    source: 'a day is the sum of its hours',
    unit: '1',
    expected: 1,
    tolerance: { abs: 0.01, why: 'mid-hour values of a series meant for the integral' },
    got: () =>
      Array.from({ length: 24 }, (_, h) => globalHourFrac(15 * (h - 11.5), sun.sunsetAngleDeg(43, sun.declinationDeg(162)))).reduce((a, v) => a + v, 0),
  },
];
const withClearness = (latitudeDeg: number, day: number, mj: number, share: (kt: number, set: number) => number): number[] => {
  const above = sun.extraterrestrialDayMJPerM2(latitudeDeg, day, bookDeclination(day));
  return [above, mj / above, share(mj / above, sun.sunsetAngleDeg(latitudeDeg, bookDeclination(day)))];
};

/** The hour of examples 2.15.1 and 2.16.1: level sun 1.04 MJ/m2, of which a share of 0.765 is diffuse; 1 MJ/m2 an hour is 277.8 W/m2. */
const MJ_HOUR = 1e6 / 3600;
const example215 = (planeOf: (s: sun.Sun, aboveWPerM2: number, shine: Parameters<typeof sun.planeUnderEvenDome>[1]) => sun.PlaneSun): number => {
  const s = sun.sunPosition({ latitudeDeg: 40, declination: bookDeclination(51), solarHour: 9.5 });
  const above = sun.extraterrestrialHourMJPerM2(40, 51, 9, bookDeclination(51));
  const beam = (1.04 * (1 - diffuseFracOfHour(1.04 / above)) * MJ_HOUR) / s.up;
  const p = planeOf(s, sun.extraterrestrialNormalWPerM2(51), {
    tiltDeg: 60,
    azimuthDeg: 180,
    beamNormalWPerM2: beam,
    diffuseWPerM2: 1.04 * MJ_HOUR - beam * s.up,
    albedoFrac: 0.6,
  });
  return (p.beamWPerM2 + p.skyWPerM2 + p.groundWPerM2) / MJ_HOUR;
};
const three = {
  dni: [316.1949056, 939.95469881, 646.22886049],
  dhi: [40.46149818, 118.45831879, 62.03376265],
  zenith: [82.85457044, 10.56413562, 72.41687122],
  azimuth: [66.71410338, 144.76567754, 287.04104128],
};
/** Diffuse on a plane of 40 deg facing south: dome, horizon and halo, without the disc. */
const diffuseOnPlane = (i: number): number => {
  const s = sun.sunFromAngles(three.zenith[i] ?? NaN, three.azimuth[i] ?? NaN);
  const beamNormalWPerM2 = three.dni[i] ?? NaN;
  const p = sun.planeFromSun(s, 1321.1655834833093, { tiltDeg: 40, azimuthDeg: 180, beamNormalWPerM2, diffuseWPerM2: three.dhi[i] ?? NaN, albedoFrac: 0.2 });
  return p.skyWPerM2 + p.beamWPerM2 - beamNormalWPerM2 * Math.max(0, sun.cosIncidence(s, 40, 180));
};
const AOI: readonly (readonly [number, number, number, number, number])[] = [
  [30, 180, 30, 180, 0],
  [30, 180, 150, 0, 180],
  [90, 0, 30, 60, 75.5224878],
  [90, 0, 30, 170, 119.4987042],
];
const noSun = sun.sunFromAngles(120, 0);
const planes: ReferenceCheck[] = [
  {
    ...memory,
    id: 'sol-db-2161',
    source: `${DB}, example 2.16.1`,
    unit: 'MJ/m2',
    expected: 1.28,
    tolerance: { abs: 0.01, why: printed('0.01') },
    got: () => example215(sun.planeFromSun),
  },
  {
    ...memory,
    id: 'sol-db-2151',
    source: `${DB}, example 2.15.1`,
    unit: 'MJ/m2',
    expected: 1.17,
    tolerance: { abs: 0.01, why: printed('0.01') },
    got: () => example215((s, _, shine) => sun.planeUnderEvenDome(s, shine)),
  },
  {
    ...published,
    id: 'sol-pv-iso',
    source: `${PVLIB}: test_isotropic_float`,
    unit: 'W/m2',
    expected: 88.30222215594891,
    tolerance: { rel: 1e-6, why: 'same formula; with no beam the dome is even' },
    got: () => sun.planeFromSun(noSun, 1367, { tiltDeg: 40, azimuthDeg: 180, beamNormalWPerM2: 0, diffuseWPerM2: 100, albedoFrac: 0.2 }).skyWPerM2,
  },
  {
    ...published,
    id: 'sol-pv-ground',
    source: `${PVLIB}: test_get_ground_diffuse_simple_float`,
    unit: 'W/m2',
    expected: 26.32000014911496,
    tolerance: { rel: 1e-6, why: 'same formula' },
    got: () => sun.planeFromSun(noSun, 1367, { tiltDeg: 40, azimuthDeg: 180, beamNormalWPerM2: 0, diffuseWPerM2: 900, albedoFrac: 0.25 }).groundWPerM2,
  },
  {
    ...published,
    id: 'sol-pv-reindl',
    source: `${PVLIB}: test_reindl`,
    unit: 'W/m2',
    expected: [27.9412, 104.1317, 34.1663],
    tolerance: { abs: 0.01, why: "that data's level sun is given apart from its parts" },
    got: () => [0, 1, 2].map(diffuseOnPlane),
  },
  ...AOI.map(([tilt, surface, zenith, azimuth, expected], i): ReferenceCheck => ({
    ...published,
    id: `sol-pv-aoi-${i}`,
    source: `${PVLIB}: test_aoi_and_aoi_projection`,
    unit: 'deg',
    expected,
    tolerance: { abs: 1e-4, why: 'exact geometry' },
    got: () => Math.acos(Math.max(-1, Math.min(1, sun.cosIncidence(sun.sunFromAngles(zenith, azimuth), tilt, surface)))) / RAD,
  })),
];

const ERBS: readonly (readonly [number, number, number, number[]])[] = [
  [50, 85, 1, [96.7192672, 41.5703604, 0.405723511]],
  [1000, 10, 1, [794.205651, 217.860117, 0.718132729]],
  [1000, 10, 171, [842.001578, 170.790318, 0.768214312]],
];
const clearness: ReferenceCheck[] = [
  ...ERBS.map(([ghi, zenith, day, expected], i): ReferenceCheck => ({
    ...published,
    id: `sol-pv-erbs-${i}`,
    source: `${PVLIB}: test_erbs`,
    unit: 'W/m2, W/m2, 1',
    expected,
    tolerance: { abs: 5, rel: 0.01, why: 'solar constant 1367 here and 1366.1 there, one cosine against five terms for the distance' },
    got: () => {
      const up = Math.cos(zenith * RAD);
      const kt = ghi / (sun.extraterrestrialNormalWPerM2(day) * up);
      const diffuse = ghi * diffuseFracOfHour(kt);
      return [(ghi - diffuse) / up, diffuse, kt];
    },
  })),
  {
    ...published,
    id: 'sol-trench-erbs',
    source: 'TrenchR tests/testthat/test-26',
    unit: '1',
    expected: [0.997, 0.65915, 0.165],
    tolerance: { abs: 0.01, why: 'that package prints 0.997 where the formula gives 0.991' },
    got: () => [0.1, 0.5, 0.85].map(diffuseFracOfHour),
  },
  {
    ...published,
    id: 'fao-ex8-ra',
    source: `${FAO}, example 8`,
    unit: 'MJ/m2',
    expected: 32.2,
    tolerance: { abs: 0.1, why: printed('0.1') },
    got: () => sun.extraterrestrialDayMJPerM2(-20, 246, 0.12 / RAD),
  },
  {
    ...published,
    id: 'fao-ex8-parts',
    source: `${FAO}, example 8`,
    unit: '1, rad',
    expected: [0.985, 1.527],
    tolerance: { abs: 0.001, why: 'printed to 0.001; its declination of 0.120 rad is given, being 0.7 deg off the ephemeris' },
    got: () => [sun.distanceFactor(246), sun.sunsetAngleDeg(-20, 0.12 / RAD) * RAD],
  },
  {
    ...published,
    id: 'fao-ex9',
    source: `${FAO}, example 9`,
    unit: 'h',
    expected: 11.7,
    tolerance: { abs: 0.05, why: printed('0.1 h') },
    got: () => sun.daylightH(-20, 246, 0.12 / RAD),
  },
  {
    ...published,
    id: 'fao-ex10',
    source: `${FAO}, example 10`,
    unit: 'MJ/m2',
    expected: 14.45,
    tolerance: { abs: 0.05, why: printed('0.1') },
    got: () => sunFromSunshine(25.1, 7.1 / 10.9),
  },
  {
    ...published,
    id: 'fao-ex15',
    source: `${FAO}, example 15`,
    unit: 'MJ/m2',
    expected: 22.3,
    tolerance: { abs: 0.05, why: printed('0.1') },
    got: () => sunFromRange(40.6, 26.6 - 14.8, 0.16),
  },
];

referenceTable('climate: where the sun stands', position);
referenceTable('climate: textbook examples of the sun', examples);
referenceTable('climate: tilted planes', planes);
referenceTable('climate: clearness and the day above the air', clearness);
