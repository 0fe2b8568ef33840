import type { ClimateInputs, ClimateResult, SiteInputs } from '@lathwork/model';
import { computeClimate } from '@lathwork/calc';
import { canberraMeans, denverMeans } from '../../support/climates.js';
import { referenceTable, type ReferenceCheck } from '../../support/reference.js';
import { hardinessClassOf } from '../../../libs/calc/src/data/hardiness.js';
import { frostFreeDays } from '../../../libs/calc/src/physics/weather-frost.js';
import { dailyCurve, meanShortfallK, MONTH_STARTS, normalShare } from '../../../libs/calc/src/physics/weather-normal.js';
import { normalAt } from '../../../libs/calc/src/physics/sampling.js';

const published = { room: 'climate' as const, kind: 'published' as const };
const NCEI = 'NOAA/NCEI U.S. Climate Normals 1991-2020 by station, USW00094765 Lebanon NH';
const fromF = (f: number): number => (f - 32) / 1.8;
const dayOf = (text: string): number => {
  const [month = 1, day = 1] = text.split('/').map(Number);
  return (MONTH_STARTS[month - 1] ?? 0) + day;
};

/** Monthly normals as printed, degF; nothing else about the nights is in that file. */
const LEBANON_MAX = [30.3, 33.9, 43.0, 56.6, 69.7, 77.9, 82.7, 81.1, 72.9, 59.8, 46.8, 35.5];
const LEBANON_MIN = [9.3, 11.0, 20.7, 31.9, 43.7, 52.4, 57.8, 56.2, 48.6, 37.4, 27.7, 18.1];
const lebanon: ClimateInputs = {
  stationId: 'USW00094765',
  stationName: 'Lebanon NH',
  country: 'United States',
  stationLatitudeDeg: 43.6264,
  stationLongitudeDeg: -72.3,
  stationElevationM: 182.3,
  distanceM: 0,
  period: '1991-2020',
  kind: 'normals',
  credit: 'NOAA/NCEI',
  annualExtremeMinC: null,
  annualExtremeMinYearsCount: null,
  months: LEBANON_MAX.map((max, m) => ({
    tMaxC: fromF(max),
    tMinC: fromF(LEBANON_MIN[m] ?? NaN),
    vapourPressurePa: null,
    precipitationMm: null,
    sunshineH: null,
    absoluteMinMeanC: null,
  })),
};
const at = (climate: ClimateInputs, upM = 0): ClimateResult =>
  computeClimate({
    site: { latitudeDeg: climate.stationLatitudeDeg, longitudeDeg: climate.stationLongitudeDeg, elevationM: climate.stationElevationM + upM } as SiteInputs,
    climate,
  }).result;
const PRINTED = { last: ['04/27', '05/09', '05/24'].map(dayOf), first: ['09/23', '10/06', '10/19'].map(dayOf), free: [128, 148, 167] };
const spread = ([p10, p50, p90]: readonly number[]) => ({ p10: p10 ?? null, p50: p50 ?? null, p90: p90 ?? null });
const table = { thresholdC: 0, lastDayD: spread(PRINTED.last), firstDayD: spread(PRINTED.first), publisher: 'NOAA/NCEI' };
const three = (d: { p10: number | null; p50: number | null; p90: number | null } | undefined): number[] => [d?.p10 ?? NaN, d?.p50 ?? NaN, d?.p90 ?? NaN];

const dates: ReferenceCheck[] = [
  {
    ...published,
    id: 'frost-lebanon-last',
    source: `${NCEI}: ANN-TMIN-PRBLST-T32FP90, 50 and 10`,
    unit: 'd',
    expected: PRINTED.last,
    tolerance: { abs: 10, why: 'the stated doubt of dates worked out from monthly means; the share of nights in runs was chosen by this station' },
    got: () => three(at(lebanon).frost?.lastDayD),
  },
  {
    ...published,
    id: 'frost-lebanon-first',
    source: `${NCEI}: ANN-TMIN-PRBFST-T32FP10, 50 and 90`,
    unit: 'd',
    expected: PRINTED.first,
    tolerance: { abs: 10, why: 'the stated doubt of dates worked out from monthly means' },
    got: () => three(at(lebanon).frost?.firstDayD),
  },
  {
    ...published,
    id: 'frost-lebanon-free',
    source: `${NCEI}: ANN-TMIN-PRBGSL-T32FP90, 50 and 10, from the printed dates`,
    unit: 'd',
    expected: PRINTED.free,
    tolerance: { abs: 3, why: 'the two dates are not quite independent' },
    got: () => three(frostFreeDays(table.lastDayD, table.firstDayD)),
  },
  {
    ...published,
    id: 'frost-westchester-free',
    source: 'NOAA/NCEI U.S. Climate Normals 2006-2020 by station, USW00094745 Westchester NY: PRBGSL from PRBLST and PRBFST at 32 F',
    unit: 'd',
    expected: [184, 204, 222],
    tolerance: { abs: 3, why: 'the two dates are not quite independent' },
    got: () => three(frostFreeDays(spread(['03/31', '04/10', '04/25'].map(dayOf)), spread(['10/18', '11/01', '11/16'].map(dayOf)))),
  },
  {
    ...published,
    id: 'frost-table-first',
    source: `${NCEI}: printed dates, given to the room`,
    unit: 'd',
    expected: [...PRINTED.last, ...PRINTED.first],
    tolerance: { abs: 0, why: 'a printed table is handed on as it is' },
    got: () => {
      const frost = at({ ...lebanon, frostDates: table }).frost;
      return [...three(frost?.lastDayD), ...three(frost?.firstDayD)];
    },
  },
  {
    room: 'climate',
    kind: 'worked',
    id: 'frostdate-norm',
    source: 'normal dates (after Thom and Shaw 1958): 125 + 1.2816 x 10; docs/worked/climate.md',
    unit: 'd',
    expected: [137.8, 0.9],
    tolerance: { abs: 0.1, why: 'rounded to 0.1 d; the share is the reverse of the same' },
    got: () => [125 + normalAt(0.9) * 10, normalShare((137.816 - 125) / 10)],
  },
];

/** Classes as they are printed: lower bound of the half class, degF. */
const CLASSES: readonly (readonly [string, number, number])[] = [
  ['5b', -15, -10],
  ['7a', 0, 5],
  ['8a', 10, 15],
];
const classes: ReferenceCheck[] = [
  ...CLASSES.map(([name, low, high]): ReferenceCheck => ({
    ...published,
    id: name === '5b' ? 'zone-usda' : `zone-usda-${name}`,
    source: 'USDA plant hardiness zones as printed on reference pages: class k runs from -60 + 10 (k - 1) degF, halves of 5 degF',
    unit: 'class, degC',
    expected: [name, name, fromF(low), fromF(high)],
    tolerance: { abs: 1e-9, why: 'bounds by definition' },
    got: () => {
      const c = hardinessClassOf(fromF(low));
      return [c.name, hardinessClassOf(fromF(high) - 0.01).name, c.minC, c.maxC];
    },
  })),
  {
    ...published,
    id: 'zone-denver-canberra',
    source: 'mean annual extreme minimum of the station table (-24.7 and about -6 degC: -12.5 and 21 degF) in the printed bounds',
    unit: 'class',
    expected: ['5b', '9a'],
    tolerance: { why: 'words' },
    got: () => [at(denverMeans).hardiness?.hardinessClass ?? '', at(canberraMeans).hardiness?.hardinessClass ?? ''],
  },
  {
    room: 'climate',
    kind: 'practice',
    id: 'zone-ends',
    source: 'a table has a first and a last class; colder and milder places are named by those',
    unit: 'class',
    expected: ['1a', '13b'],
    tolerance: { why: 'words' },
    got: () => [hardinessClassOf(-80).name, hardinessClassOf(28).name],
  },
];

const HEATING_F = [1401.1, 1191.4, 1027.7, 624.2, 277.2, 75.4, 13.7, 26.6, 168.7, 510.8, 832.5, 1184.2];
const sums: ReferenceCheck[] = [
  {
    ...published,
    id: 'degree-days-heating-lebanon',
    source: `${NCEI}: ANN-HTDD-NORMAL 7333.4 degF.d`,
    unit: 'K.d',
    expected: 7333.4 / 1.8,
    tolerance: { rel: 0.02, why: 'the spread of days is that of nights, by a rule' },
    got: () => at(lebanon).degreeDays?.heatingKD ?? NaN,
  },
  {
    ...published,
    id: 'degree-days-growing-lebanon',
    source: `${NCEI}: ANN-GRDD-BASE50 2363.7 degF.d`,
    unit: 'K.d',
    expected: 2363.7 / 1.8,
    tolerance: { rel: 0.05, why: 'the spread of days is that of nights, by a rule' },
    got: () => at(lebanon).degreeDays?.growingKD ?? NaN,
  },
  {
    ...published,
    id: 'degree-days-monthly-lebanon',
    source: `${NCEI}: MLY-HTDD-NORMAL of twelve months, with a daily spread of 4.5 K`,
    unit: 'K.d',
    expected: HEATING_F.map((f) => f / 1.8),
    tolerance: { abs: 20, why: 'one spread for every month' },
    got: () =>
      HEATING_F.map((_, m) => (MONTH_STARTS[m + 1]! - MONTH_STARTS[m]!) * meanShortfallK(fromF((LEBANON_MAX[m]! + LEBANON_MIN[m]!) / 2), 4.5, fromF(65))),
  },
  {
    room: 'climate',
    kind: 'worked',
    id: 'shortfall-at-the-base',
    source: 'mean of half a normal distribution: s/sqrt(2 pi) = 0.3989 x 4; docs/worked/climate.md',
    unit: 'K',
    expected: 1.5958,
    tolerance: { abs: 0.001, why: 'rounded' },
    got: () => meanShortfallK(10, 4, 10),
  },
  {
    room: 'climate',
    kind: 'worked',
    id: 'daily-curve-keeps-means',
    source: 'the means of the months of the curve are the twelve numbers given',
    unit: 'degC',
    expected: LEBANON_MIN.map(fromF),
    tolerance: { abs: 0.01, why: 'nine rounds' },
    got: () => {
      const curve = dailyCurve(LEBANON_MIN.map(fromF));
      return LEBANON_MIN.map((_, m) => {
        const days = curve.slice(MONTH_STARTS[m], MONTH_STARTS[m + 1]);
        return days.reduce((a, v) => a + v, 0) / days.length;
      });
    },
  },
];

referenceTable('climate: frost dates', dates);
referenceTable('climate: classes of winter cold', classes);
referenceTable('climate: degree-days', sums);
