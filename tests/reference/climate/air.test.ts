import { referenceTable, type ReferenceCheck } from '../../support/reference.js';
import * as air from '../../../libs/calc/src/physics/air.js';

/*
 * Left out on purpose: tmp-pl-1 and tmp-cn-1 are other courses of the day (the first never reaches its minimum); fao-ex2
 * takes its pressure from an air of 20 degC, not the standard atmosphere; fao-ex11 is the net long-wave of a crop, for which the
 * thermal room has a sky temperature; frost-fao-* forecast a night from its evening. Sky emissivity and the wind profile are checked with
 * the thermal room, which uses them.
 */
const ASHRAE = 'ASHRAE Fundamentals 2017 chapter 1, as pinned in PsychroLib tests, commit 3066345';
const FAO = 'FAO-56 (Allen et al. 1998), as pinned in PyETo tests/test_fao.py';
const published = { room: 'climate' as const, kind: 'published' as const };
const SEA_PA = 101_325;
const ratioAt = (airC: number) => air.humidityRatio(air.saturationPa(airC), SEA_PA);

const SATURATION: readonly (readonly [number, number])[] = [
  [-60, 1.08],
  [-20, 103.24],
  [5, 872.6],
  [25, 3169.7],
  [50, 12351.3],
  [100, 101418],
];
const RATIO: readonly (readonly [number, number, number])[] = [
  [-20, 0.0006373, 0.01],
  [-5, 0.0024863, 0.005],
  [5, 0.005425, 0.005],
  [25, 0.020173, 0.005],
  [50, 0.086863, 0.01],
];
const HEAT: readonly (readonly [number, number, number])[] = [
  [-20, -18542, 0.01],
  [-5, 1164, 0.03],
  [25, 76504, 0.01],
];
const HEIGHT: readonly (readonly [number, number])[] = [
  [-500, 107478],
  [0, 101325],
  [500, 95461],
  [1000, 89875],
  [4000, 61640],
];
const moist: ReferenceCheck[] = [
  ...SATURATION.map(([t, expected]): ReferenceCheck => ({
    ...published,
    id: `psy-pws-${t}`,
    source: `${ASHRAE}: table 3`,
    unit: 'Pa',
    expected,
    tolerance: { abs: 0.01, rel: 0.0003, why: 'fit of the table' },
    got: () => air.saturationPa(t),
  })),
  ...RATIO.map(([t, expected, rel]): ReferenceCheck => ({
    ...published,
    id: `psy-ws-${t}`,
    source: `${ASHRAE}: table 2`,
    unit: 'kg/kg',
    expected,
    tolerance: { rel, why: 'the table holds an enhancement factor that the ideal form leaves out' },
    got: () => ratioAt(t),
  })),
  ...HEAT.map(([t, expected, rel]): ReferenceCheck => ({
    ...published,
    id: `psy-hs-${t}`,
    source: `${ASHRAE}: table 2`,
    unit: 'J/kg',
    expected,
    tolerance: { rel, why: 'the same enhancement factor' },
    got: () => air.enthalpyJPerKg(t, ratioAt(t)),
  })),
  ...HEIGHT.map(([z, expected]): ReferenceCheck => ({
    ...published,
    id: `psy-p-${z}`,
    source: `${ASHRAE}: table 1`,
    unit: 'Pa',
    expected,
    tolerance: { abs: 1, why: 'printed in whole pascals' },
    got: () => air.pressurePa(z),
  })),
  {
    ...published,
    id: 'psy-W-vp',
    source: ASHRAE,
    unit: 'kg/kg',
    expected: 0.0213603998047487,
    tolerance: { rel: 1e-6, why: 'same formula' },
    got: () => air.humidityRatio(3169.7, 95461),
  },
  {
    ...published,
    id: 'psy-wb-above',
    source: ASHRAE,
    unit: 'kg/kg',
    expected: 0.0192281274241096,
    tolerance: { rel: 0.0003, why: 'as that suite allows' },
    got: () => air.humidityRatioOfWetBulb(30, 25, 95461),
  },
  {
    ...published,
    id: 'psy-wb-below',
    source: ASHRAE,
    unit: 'kg/kg',
    expected: 0.00120399819933844,
    tolerance: { rel: 0.0003, why: 'as that suite allows' },
    got: () => air.humidityRatioOfWetBulb(-1, -5, 95461),
  },
  {
    ...published,
    id: 'psy-twb',
    source: ASHRAE,
    unit: 'degC',
    expected: 3.92667433781955,
    tolerance: { rel: 0.001, why: 'as that suite allows' },
    got: () => air.wetBulbC(7, air.humidityRatio(0.61 * air.saturationPa(7), 100_000), 100_000),
  },
  {
    ...published,
    id: 'psy-tdp',
    source: 'PsychroLib header example',
    unit: 'degC',
    expected: 21.3094,
    tolerance: { abs: 0.001, why: 'printed to 0.0001' },
    got: () => air.dewPointC(0.8 * air.saturationPa(25)),
  },
  {
    ...published,
    id: 'psy-rho',
    source: ASHRAE,
    unit: 'kg/m3',
    expected: 1.08411986348219,
    tolerance: { rel: 0.0003, why: 'as that suite allows' },
    got: () => air.densityKgPerM3(30, 0.02, 95461),
  },
];

const handbook = () => {
  const ratio = air.humidityRatioOfWetBulb(40, 20, SEA_PA);
  const vapour = air.vapourOfRatioPa(ratio, SEA_PA);
  return {
    ratio,
    dew: air.dewPointC(vapour),
    humidity: vapour / air.saturationPa(40),
    heat: air.enthalpyJPerKg(40, ratio),
    volume: air.volumeM3PerKg(40, ratio, SEA_PA),
  };
};
const example1: ReferenceCheck[] = (
  [
    ['ratio', 'kg/kg', 0.0065, 1e-4],
    ['dew', 'degC', 7, 0.5],
    ['humidity', '1', 0.14, 0.01],
    ['heat', 'J/kg', 56_700, 100],
    ['volume', 'm3/kg', 0.896, 0.009],
  ] as const
).map(([key, unit, expected, abs]): ReferenceCheck => ({
  ...published,
  id: `psy-ex1-${key}`,
  source: `${ASHRAE}: example 1`,
  unit,
  expected,
  tolerance: { abs, why: 'the example is read off a chart' },
  got: () => handbook()[key],
}));

const course: ReferenceCheck[] = [
  {
    ...published,
    id: 'tmp-cs-1',
    source: 'TrenchR tests/testthat/test-22, commit ca58d44; Cesaraccio et al. 2001',
    unit: 'degC',
    expected: [17.65367, 14.01487, 27.94389, 18.49743],
    tolerance: { abs: 0.001, why: 'same formula' },
    got: () => [8, 2, 16, 20].map((h) => air.airAtHourC(h, { maxC: 30, minC: 10, nextMinC: 12, sunriseH: 6, sunsetH: 18 })),
  },
  {
    ...published,
    id: 'tmp-ashrae-profile',
    source: 'ASHRAE Fundamentals 2009 chapter 14 table 6, as listed in ladybug designday.py',
    unit: '1',
    expected: [0.82, 0.88, 0.92, 0.95, 0.98, 1, 0.98, 0.91, 0.74, 0.55, 0.38, 0.23, 0.13, 0.05, 0, 0, 0.06, 0.14, 0.24, 0.39, 0.5, 0.59, 0.68, 0.75],
    tolerance: { abs: 0.0001, why: 'a table' },
    got: () => air.hourlyAirC({ latitudeDeg: 85, dayOfYear: 347, maxC: 0, minC: -1 }).map((t) => -t),
  },
  {
    room: 'climate',
    kind: 'worked',
    id: 'tmp-ashrae-mean',
    source: 'mean of the printed list',
    unit: '1',
    expected: 0.5363,
    tolerance: { abs: 0.001, why: 'rounded' },
    got: () => air.RANGE_FRACTIONS.reduce((a, f) => a + f, 0) / 24,
  },
  {
    ...published,
    id: 'fao-ex3',
    source: `${FAO}, example 3`,
    unit: 'Pa',
    expected: 2390,
    tolerance: { abs: 5, why: 'printed to 0.01 kPa' },
    got: () => (air.saturationPa(15) + air.saturationPa(24.5)) / 2,
  },
  {
    ...published,
    id: 'fao-ex20',
    source: `${FAO}, example 20`,
    unit: 'Pa',
    expected: 1680,
    tolerance: { abs: 10, why: 'printed to 0.01 kPa' },
    got: () => air.saturationPa(14.8),
  },
  {
    ...published,
    id: 'fao-ex4',
    source: `${FAO}, example 4`,
    unit: 'Pa',
    expected: 1910,
    tolerance: { abs: 15, why: 'printed to 0.01 kPa with a constant of 0.000662 per degC and 87.9 kPa; here the heat balance of the wet bulb' },
    got: () => air.vapourOfRatioPa(air.humidityRatioOfWetBulb(25.6, 19.5, 87_900), 87_900),
  },
  {
    ...published,
    id: 'fao-ex5',
    source: `${FAO}, example 5`,
    unit: 'Pa',
    expected: 1700,
    tolerance: { abs: 5, why: 'printed to 0.01 kPa' },
    got: () => air.vapourOfExtremesPa({ coldSaturationPa: 2064, warmSaturationPa: 3168, moistFrac: 0.82, dryFrac: 0.54 }),
  },
  {
    ...published,
    id: 'dew-from-humidity',
    source: 'PsychroLib header example: 25 degC and 80 per cent, given as a mean of 20 and 30 degC',
    unit: 'degC',
    expected: 21.3094,
    tolerance: { abs: 0.001, why: 'printed to 0.0001' },
    got: () => air.dewPointFrom({ vapourPressurePa: null, relativeHumidityFrac: 0.8, maxC: 30, minC: 20 }).dewPointC,
  },
  {
    room: 'climate',
    kind: 'worked',
    id: 'shelter-wind',
    source: 'power laws of EnergyPlus terrain: 4 m/s x 0.767 in the open and x 0.471 among woods (wind-profile); docs/worked/climate.md',
    unit: 'm/s',
    expected: { lowMPerS: 0.94, likelyMPerS: 1.88, highMPerS: 3.07 },
    tolerance: { abs: 0.01, why: 'rounded to 0.01' },
    got: () => ({ ...air.shelterWind(4, 'B', 1.5) }),
  },
  {
    ...published,
    id: 'fao-ex14',
    source: `${FAO}, example 14`,
    unit: 'm/s',
    expected: 2.4,
    tolerance: { abs: 0.05, why: 'printed to 0.1' },
    got: () => air.windAtTwoMetres(3.2, 10),
  },
];

referenceTable('climate: moist air', moist);
referenceTable('climate: handbook example 1', example1);
referenceTable('climate: course of the day', course);
