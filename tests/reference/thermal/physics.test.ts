import { referenceTable, type ReferenceCheck } from '../../support/reference.js';
import { saturationPa } from '../../../libs/calc/src/physics/air.js';
import {
  bodyWPerM2K,
  buoyantWPerM2K,
  outsideCombinedWPerM2K,
  stableWPerM2K,
  thinSheetUWPerM2K,
  uprightWPerM2K,
  windAtHeightRatio,
} from '../../../libs/calc/src/physics/convection.js';
import { dampingDepthM, kusudaC, slabLoss, surfaceAdmittance } from '../../../libs/calc/src/physics/ground.js';
import { blastFactor, doe2Factor, leakageM3PerS, tracerAirChangesPerH } from '../../../libs/calc/src/physics/leakage.js';
import { steadyLossW, steadyRiseK } from '../../../libs/calc/src/physics/network.js';
import * as sky from '../../../libs/calc/src/physics/radiation.js';
import { bothWaysDischarge, stackVentM3PerS, windVentM3PerS } from '../../../libs/calc/src/physics/ventilation.js';
import { saturationPa as magnusPa } from '../../../libs/calc/src/rooms/thermal-vapour.js';
import { CROPS } from '../../../libs/calc/src/data/crops.js';
import { VENT_WANTED_FRAC } from '../../../libs/calc/src/data/covers.js';

const EP_TEST = 'EnergyPlus unit test WeatherManager, SkyEmissivityTest';
const EP = 'EnergyPlus Engineering Reference';
const PRINTED = 'three decimals are printed';
const base = { room: 'thermal' as const, kind: 'published' as const };
const worked = { room: 'thermal' as const, kind: 'worked' as const };

const POINTS = [
  { airC: 25, dewC: 16.7 },
  { airC: 5, dewC: -2.13 },
];
const vapourPa = (airC: number) => 0.6 * saturationPa(airC);

const skyChecks: ReferenceCheck[] = [
  {
    ...base,
    id: 'sky-ep-ClarkAllen',
    source: EP_TEST,
    unit: '1',
    expected: [0.832, 0.781],
    tolerance: { abs: 0.001, why: PRINTED },
    got: () => POINTS.map((p) => sky.clarkAllenEmissivity(p.dewC)),
  },
  {
    ...base,
    id: 'sky-ep-Brunt',
    source: EP_TEST,
    unit: '1',
    expected: [0.862, 0.746],
    tolerance: { abs: 0.001, why: PRINTED },
    got: () => POINTS.map((p) => sky.bruntEmissivity(vapourPa(p.airC))),
  },
  {
    ...base,
    id: 'sky-ep-Idso',
    source: EP_TEST,
    unit: '1',
    expected: [0.867, 0.76],
    tolerance: { abs: 0.001, why: PRINTED },
    got: () => POINTS.map((p) => sky.idsoEmissivity(vapourPa(p.airC), p.airC)),
  },
  {
    ...base,
    id: 'sky-ep-BerdahlMartin',
    source: EP_TEST,
    unit: '1',
    expected: [0.862, 0.747],
    tolerance: { abs: 0.001, why: PRINTED },
    got: () => POINTS.map((p) => sky.berdahlMartinEnergyPlusEmissivity(p.dewC)),
  },
  {
    ...base,
    id: 'sky-ep-example',
    source: `${EP}, climate calculations, worked example`,
    unit: '1; W/m2',
    expected: [0.815, 340.6],
    tolerance: { abs: 0.8, why: 'the text rounds ln(283/273) to 0.036; exact 0.8145 and 340.3' },
    got: () => [sky.clarkAllenEmissivity(283 - 273.15), sky.skyLongWaveWPerM2(sky.clarkAllenEmissivity(283 - 273.15), 293 - 273.15)],
  },
  {
    ...worked,
    id: 'sky-cloud10',
    source: `${EP}, cloud factor of Walton 1983; 1 + 0.224 - 0.35 + 0.28`,
    unit: '1',
    expected: 1.154,
    tolerance: { abs: 0.001, why: 'arithmetic by hand' },
    got: () => sky.cloudFactor(10),
  },
  {
    ...worked,
    id: 'sky-tsky-clear',
    source: 'Clark and Allen at 0 degC, dew point -5 degC',
    unit: 'degC',
    expected: -17,
    tolerance: { abs: 0.1, why: 'rounded to a tenth' },
    got: () => sky.skyTemperatureC(sky.clarkAllenEmissivity(-5), 0),
  },
  {
    ...worked,
    id: 'sky-swinbank',
    fromMemory: true,
    source: 'Swinbank 1963, 0.0552 T^1.5',
    unit: 'K',
    expected: 263,
    tolerance: { abs: 0.1, why: 'rounded to a tenth' },
    got: () => sky.swinbankSkyK(283.15),
  },
  {
    ...worked,
    id: 'lw-view',
    source: `${EP}, outside heat balance: F^1.5, F = (1+cos)/2`,
    unit: '1',
    expected: [1, 0.9013, 0.3536],
    tolerance: { abs: 0.001, why: 'four decimals' },
    got: () => [0, 30, 90].map(sky.skyShare),
  },
  {
    ...base,
    id: 'view-facing-squares',
    fromMemory: true,
    source: 'View factor of opposite faces of a cube, radiation texts (0.1998)',
    unit: '1',
    expected: 0.1998,
    tolerance: { abs: 0.0001, why: 'four decimals' },
    got: () => sky.facingRectanglesFrac(1, 1, 1),
  },
];

const surfaceChecks: ReferenceCheck[] = [
  {
    ...worked,
    id: 'env-film-U',
    fromMemory: true,
    source: 'ASHRAE winter surface coefficients 8.29 and 34.0 (recalled)',
    unit: 'W/(m2.K)',
    expected: 6.66,
    tolerance: { abs: 0.02, why: 'two decimals' },
    got: () => thinSheetUWPerM2K(8.29, 34),
  },
  {
    ...worked,
    id: 'env-iso-film',
    source: 'ISO 6946 surfaces Rsi 0.13, Rse 0.04: 1/0.17',
    unit: 'W/(m2.K)',
    expected: 5.88,
    tolerance: { abs: 0.01, why: 'two decimals' },
    got: () => thinSheetUWPerM2K(1 / 0.13, 1 / 0.04),
  },
  ...(
    [
      [0, 8.23],
      [3.35, 18.98],
      [6.7, 28.92],
    ] as const
  ).map(([v, h]): ReferenceCheck => ({
    ...worked,
    id: `h-ext-glass-${v}`,
    source: `${EP}, simple combined coefficient 8.23 + 3.33 v - 0.036 v2`,
    unit: 'W/(m2.K)',
    expected: h,
    tolerance: { abs: 0.02, why: 'two decimals' },
    got: () => outsideCombinedWPerM2K(v),
  })),
  {
    ...worked,
    id: 'h-int-tarp',
    source: `${EP}, inside convection (TARP), 5 K`,
    unit: 'W/(m2.K)',
    expected: [2.24, 2.581, 1.299],
    tolerance: { abs: 0.005, why: 'rounding' },
    got: () => [uprightWPerM2K(5), buoyantWPerM2K(5, 1), stableWPerM2K(5, 1)],
  },
  {
    ...worked,
    id: 'wind-profile',
    source: `${EP}, local wind: 1.5 m over open, wooded and town ground`,
    unit: '1',
    expected: [0.767, 0.471, 0.24],
    tolerance: { abs: 0.002, why: 'three decimals' },
    got: () => [windAtHeightRatio(1.5, 0.14, 270), windAtHeightRatio(1.5, 0.22, 370), windAtHeightRatio(1.5, 0.33, 460)],
  },
  {
    ...worked,
    id: 'mass-barrel-tau',
    fromMemory: true,
    source: '1.42 (dT/L)^0.25 and 0.9 x 4 sigma T3 on a full 208 L drum (recalled)',
    unit: 'W/(m2.K); W/(m2.K); h',
    expected: [2.19, 4.63, 19.2],
    tolerance: { rel: 0.01, why: 'rounded by hand' },
    got: () => {
      const h = bodyWPerM2K(5, 0.88);
      const r = 0.9 * sky.longWaveSlope(10, 10);
      return [h, r, (208 * 4186) / ((h + r) * 1.85) / 3600];
    },
  },
];

const AIR: ReferenceCheck[] = [
  {
    ...worked,
    id: 'inf-ela',
    source: 'EnergyPlus I/O Reference coefficients: 500/1000 sqrt(0.000145 x 20 + 0.000174 x 9)',
    unit: 'm3/s',
    expected: 0.03341,
    tolerance: { rel: 0.001, why: 'four digits' },
    got: () => leakageM3PerS(500, 20, 3, 3),
  },
  {
    ...base,
    id: 'inf-blast',
    source: `${EP}, BLAST coefficients, two printed conditions`,
    unit: '1',
    expected: [1.0, 2.75],
    tolerance: { abs: 0.02, why: 'the text prints 2.75, its formula gives 2.767' },
    got: () => [blastFactor(0, 3.35), blastFactor(40, 6)],
  },
  {
    ...base,
    id: 'inf-doe2',
    source: `${EP}, DOE-2 coefficient, three printed winds`,
    unit: '1',
    expected: [0.75, 1.34, 1.0],
    tolerance: { abs: 0.01, why: 'two decimals are printed' },
    got: () => [3.35, 6, 4.47].map(doe2Factor),
  },
  {
    ...worked,
    id: 'vent-stack',
    source: 'ASHRAE 2009 ch 16 Eq 38, 1 m2, 1 m, 30 and 25 degC',
    unit: 'm3/s',
    expected: 0.3698,
    tolerance: { rel: 0.001, why: 'four digits' },
    got: () => stackVentM3PerS(1, 1, 303.15, 298.15, 0.65),
  },
  {
    ...worked,
    id: 'vent-wind',
    source: 'ASHRAE 2009 ch 16 Eq 37, 1 m2, 2 m/s, 0.55',
    unit: 'm3/s',
    expected: 1.1,
    tolerance: { rel: 0.001, why: 'arithmetic by hand' },
    got: () => windVentM3PerS(1, 2, 0.55),
  },
  {
    ...worked,
    id: 'vent-cd-auto',
    source: 'ASHRAE 2009 ch 16 Eq 39, 5 K',
    unit: '1',
    expected: 0.4225,
    tolerance: { abs: 1e-4, why: 'arithmetic by hand' },
    got: () => bothWaysDischarge(5),
  },
  {
    ...base,
    id: 'vent-asabe-15-20',
    source: 'Bartok, Greenhouse Management August 2015, quoting ASABE: 15 to 20 % of floor',
    unit: '%',
    expected: 20,
    tolerance: { abs: 0, why: 'the upper end of the printed range is the figure used' },
    got: () => VENT_WANTED_FRAC * 100,
  },
  {
    ...worked,
    id: 'ach-tracer',
    source: 'Decay of a tracer, ln 2 / 0.5 h',
    unit: '1/h',
    expected: 1.386,
    tolerance: { abs: 0.001, why: 'three decimals' },
    got: () => tracerAirChangesPerH(2000, 1000, 0.5),
  },
  ...(
    [
      [0.5, 0.743, 5.4],
      [0.5, 0.0122, 17.7],
      [0.3, 0.0122, 24.8],
    ] as const
  ).map(([e, flow, rise], i): ReferenceCheck => ({
    ...worked,
    id: `heat-rise-${i}`,
    fromMemory: true,
    source: 'Steady rise of ASABE EP406 form (recalled)',
    unit: 'K',
    expected: rise,
    tolerance: { abs: 0.1, why: 'one decimal' },
    got: () =>
      steadyRiseK({
        evaporatedFrac: e,
        transmittedFrac: 0.8,
        sunWPerM2: 900,
        floorM2: 18.3,
        coverM2: 59.5,
        uValueWPerM2K: 6,
        flowM3PerS: flow,
        airKgPerM3: 1.16,
      }),
  })),
];

const diffusivity = (1.8 / (920 * 2200)) * 86_400;
const year = { meanC: 15.5, swingK: 3.2, coldestDayD: 8 };
const slab = { insideM2KPerW: 0.17, outsideM2KPerW: 0.04 };

const ground: ReferenceCheck[] = [
  {
    ...worked,
    id: 'gnd-kusuda-1',
    source: 'Kusuda and Achenbach 1965, six points worked apart',
    unit: 'degC',
    expected: [12.3, 18.7, 13.337, 14.776, 14.519, 16.282],
    tolerance: { abs: 0.002, why: 'three decimals' },
    got: () =>
      (
        [
          [0, 8],
          [0, 190.5],
          [1, 8],
          [1, 100],
          [3, 100],
          [3, 200],
        ] as const
      ).map(([z, t]) => kusudaC(year, z, t, diffusivity)),
  },
  {
    ...base,
    id: 'gnd-z0',
    source: 'groundTemp package vignette: damping depth of the year at 1e-6 m2/s',
    unit: 'm',
    expected: 3.17,
    tolerance: { abs: 0.005, why: 'two decimals are printed' },
    got: () => dampingDepthM(1e-6, 365.2422 * 86_400),
  },
  {
    ...base,
    id: 'gnd-gc10a',
    source: 'ASHRAE 140 case GC10a, analytic 2432.6 W',
    unit: 'W',
    expected: 2432.597,
    tolerance: { rel: 0.035, why: 'ISO 13370 is known to lie 3.1 % above the exact answer of this case' },
    got: () =>
      slabLoss({ areaM2: 144, perimeterM: 48, wallM: 0.24, conductivity: 1.9, floorM2KPerW: 0, insideM2KPerW: 0, outsideM2KPerW: 0 }).uValueWPerM2K * 144 * 20,
  },
  {
    ...worked,
    id: 'gnd-iso13370-gc10a',
    source: 'ISO 13370 equations worked on the GC10a slab',
    unit: 'W',
    expected: 2508.9,
    tolerance: { rel: 0.001, why: 'five digits' },
    got: () =>
      slabLoss({ areaM2: 144, perimeterM: 48, wallM: 0.24, conductivity: 1.9, floorM2KPerW: 0, insideM2KPerW: 0, outsideM2KPerW: 0 }).uValueWPerM2K * 144 * 20,
  },
  {
    ...worked,
    id: 'gnd-iso13370-shelter',
    source: 'ISO 13370 equations worked on a 10 x 20 ft bare floor',
    unit: 'm; m; W/(m2.K)',
    expected: [2.011, 0.47, 1.574],
    tolerance: { rel: 0.002, why: 'three decimals' },
    got: () => {
      const s = slabLoss({ areaM2: 18.3, perimeterM: 18.2, wallM: 0.05, conductivity: 2, floorM2KPerW: 0, ...slab });
      return [s.characteristicM, s.equivalentM, s.uValueWPerM2K];
    },
  },
  {
    ...worked,
    id: 'gnd-iso13370-100',
    source: 'ISO 13370 equations worked on 100 m2 with 1 m2K/W',
    unit: 'm; m; W/(m2.K)',
    expected: [5, 2.62, 0.4245],
    tolerance: { rel: 0.002, why: 'three decimals' },
    got: () => {
      const s = slabLoss({ areaM2: 100, perimeterM: 40, wallM: 0.2, conductivity: 2, floorM2KPerW: 1, ...slab });
      return [s.characteristicM, s.equivalentM, s.uValueWPerM2K];
    },
  },
  {
    ...worked,
    id: 'mass-soil-diurnal',
    source: 'Semi-infinite solid, 24 h wave, k 1.2, c 2.2e6',
    unit: 'W/(m2.K); m',
    expected: [13.86, 0.1225],
    tolerance: { rel: 0.001, why: 'four digits' },
    got: () => [surfaceAdmittance(1.2, 2.2e6, 86_400), dampingDepthM(1.2 / 2.2e6, 86_400)],
  },
];

const BTU_H = 0.29307107;
const FT2 = 0.09290304;
const load = (u: number, changes: number) =>
  steadyLossW({
    uValueWPerM2K: u * 5.678263,
    coverM2: 644.2971623228059 * FT2,
    airChangesPerH: changes,
    volumeM3: 1570 * 0.028316847,
    edgeWPerMK: (0.8 * BTU_H * 1.8) / 0.3048,
    perimeterM: 60 * 0.3048,
    differenceK: 40 / 1.8,
  }) / BTU_H;

const rest: ReferenceCheck[] = [
  {
    ...worked,
    id: 'load-singlePE',
    fromMemory: true,
    source: 'Handbook form UA dT + 0.018 N V dT + 0.8 P dT (recalled), 10 x 20 ft canopy',
    unit: 'Btu/h',
    expected: 35_107,
    tolerance: { rel: 0.001, why: 'the SI form rounds 0.018 Btu/(ft3 F)' },
    got: () => load(1.2, 2),
  },
  {
    ...worked,
    id: 'load-doublePE',
    fromMemory: true,
    source: 'the same with two films and one air change',
    unit: 'Btu/h',
    expected: 21_091,
    tolerance: { rel: 0.001, why: 'the SI form rounds 0.018 Btu/(ft3 F)' },
    got: () => load(0.7, 1),
  },
  ...(
    [
      [5, 872.6],
      [25, 3169.7],
      [50, 12351.3],
    ] as const
  ).map(([t, p]): ReferenceCheck => ({
    ...base,
    id: `psy-pws-${t}-night-model`,
    source: 'ASHRAE Fundamentals 2017 ch 1 table 3, as pinned by psychrolib',
    unit: 'Pa',
    expected: p,
    tolerance: { rel: 0.004, why: 'the night model uses the Magnus form for speed' },
    got: () => magnusPa(t),
  })),
  {
    ...base,
    id: 'crop-frostclass',
    source: 'Frost classes, PMC10202904 table 2: potato foliage 0 to -2, spring pea -2 to -4, carrot -4 to -7',
    unit: 'degC',
    expected: { potato: [0, -2], pea: [-2, -4], carrot: [-4, -7] },
    tolerance: { abs: 0, why: 'class limits are whole degrees' },
    got: () => ({
      potato: [CROPS.potato.damageBeginsC, CROPS.potato.usuallyKilledC],
      pea: [CROPS.pea.damageBeginsC, CROPS.pea.usuallyKilledC],
      carrot: [CROPS.carrot.damageBeginsC, CROPS.carrot.usuallyKilledC],
    }),
  },
];

referenceTable('sky and long wave', skyChecks);
referenceTable('surfaces and bodies', surfaceChecks);
referenceTable('leaks, vents and heat', AIR);
referenceTable('ground', ground);
referenceTable('loads, vapour and crops', rest);
