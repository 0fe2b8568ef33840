import type { ClimateResult, GeometryResult, HourlyDay, SiteInputs, StructureInputs, ThermalResult, Wishes } from '@lathwork/model';
import { outsideCombinedWPerM2K, thinSheetUWPerM2K } from '../physics/convection.js';
import { groundYear, type GroundYear } from '../physics/ground.js';
import { leakageM3PerS } from '../physics/leakage.js';
import { rangeOf, rankCorrelation } from '../physics/sampling.js';
import { cited } from '../sources/cite.js';
import { outsideValidity, type RoomModel, type RoomOutput } from './room.js';
import { CENTRAL, drawsOf, DRIVER_OF, type Draw } from './thermal-draws.js';
import { curveOf, DESIGN_SPIN_UP, ensembleOf, MONTH_SPIN_UP, type Ensemble, type SpinUp } from './thermal-ensemble.js';
import { STEP_MIN } from './thermal-forcing.js';
import { cropLimits, nightVerdict, thermalNotes, ventSummary } from './thermal-judge.js';
import type { Opening } from './thermal-run.js';
import { shelterOf, type Shelter, type Variant } from './thermal-shelter.js';

export interface ThermalInput {
  site: SiteInputs;
  climate: ClimateResult;
  structure: StructureInputs;
  geometry: GeometryResult;
  wishes: Wishes;
  seed: number;
}

/** Draws of the design night, of the clear day, and of each month's night and day. */
export const DRAW_COUNTS = { night: 60, day: 40, month: 9 } as const;

export const THERMAL_MODEL = {
  room: 'thermal',
  title: 'Nights and days inside: one-zone node model with soil, film and sky',
  ranges: {
    elevationM: { unit: 'm', min: -430, max: 5000, sourceId: 'ASHRAE-F17-1', safety: false },
    outsideLowC: { unit: 'degC', min: -45, max: 30, sourceId: 'CLARK-ALLEN-1978', safety: true },
    floorAreaM2: { unit: 'm2', min: 0.8, max: 400, sourceId: 'THERMAL-JUDGEMENT', safety: false },
    heightRatio: { unit: '1', min: 0.02, max: 4, sourceId: 'THERMAL-JUDGEMENT', safety: false },
  },
  sources: [
    'EP-ENG-REF',
    'EP-IO-REF',
    'ASHRAE-F17-1',
    'ASHRAE-F09-16',
    'CLARK-ALLEN-1978',
    'BERDAHL-MARTIN-1984',
    'WALTON-1983',
    'KUSUDA-1965',
    'ISO-13370',
    'WATMUFF-1977',
    'BOULARD-BAILLE-1995',
    'HEAT-TRANSFER-TEXTS',
    'NRAES-33',
    'FILM-EXT',
    'BARTOK-2015-VENT',
    'FROST-CLASSES-2022',
    'PURDUE-HO-203',
    'CROP-LIMITS-MEMORY',
    'LHS-1979',
    'THERMAL-JUDGEMENT',
    'THERMAL-MEMORY',
  ],
} as const satisfies RoomModel;

interface Bench {
  shelter: Shelter;
  latitudeDeg: number;
  ground: GroundYear;
  /** Largest heat left unaccounted for in each set of runs, W. */
  residualsW: number[];
}

const AS_PLANNED = (s: Shelter): Variant => ({ secondFilm: s.secondFilm, innerCover: s.innerCover, water: true });
const BARE: Variant = { secondFilm: false, innerCover: false, water: false };

/** The year's soil wave from the months on record; with too few of them, the design day's own mean and no swing. */
const groundOf = (climate: ClimateResult): GroundYear => {
  const means = climate.months.map((m) => (m.tMaxC === null || m.tMinC === null ? null : (m.tMaxC + m.tMinC) / 2));
  const fitted = groundYear(means);
  if (fitted) return fitted;
  const known = means.filter((t) => t !== null);
  const day = climate.designNight?.day.airC ?? climate.clearDay?.airC ?? [10];
  const mean = known.length > 0 ? known.reduce((a, t) => a + t, 0) / known.length : day.reduce((a, t) => a + t, 0) / day.length;
  return { meanC: mean, swingK: 0, coldestDayD: 15 };
};

const lowOf = (day: HourlyDay): number => Math.min(...day.airC);
const highOf = (day: HourlyDay): number => Math.max(...day.airC);

const over = (b: Bench, variant: Variant, opening: Opening, day: HourlyDay, draws: readonly Draw[], spinUp: SpinUp): Ensemble => {
  const e = ensembleOf({ shelter: b.shelter, latitudeDeg: b.latitudeDeg, ground: b.ground, variant, opening, day, draws, spinUp });
  b.residualsW.push(e.largestResidualW);
  return e;
};

const openingOf = (wishes: Wishes): Opening => (wishes.ventsOpenedBy === 'someoneAllDay' ? 'whenWarm' : 'nineToFive');

const nightRun = (variant: ThermalResult['designNights'][number]['variant'], day: HourlyDay, e: Ensemble): ThermalResult['designNights'][number] => {
  const low = lowOf(day);
  return {
    variant,
    outsideLowC: low,
    insideLowC: rangeOf(e.airMinC),
    leafLowC: rangeOf(e.leafMinC),
    liftK: rangeOf(e.airMinC.map((t) => t - low)),
    curve: curveOf(day, e),
  };
};

const dayRun = (variant: 'closed' | 'opened', day: HourlyDay, e: Ensemble): ThermalResult['clearDays'][number] => {
  const high = highOf(day);
  return { variant, outsideHighC: high, insideHighC: rangeOf(e.airMaxC), riseK: rangeOf(e.airMaxC.map((t) => t - high)), curve: curveOf(day, e) };
};

/** The three ways of passing the design night. Where the plan has an inner cover already, its run serves for both. */
const designNights = (b: Bench, day: HourlyDay, draws: readonly Draw[]) => {
  const planned = AS_PLANNED(b.shelter);
  const run = (v: Variant) => over(b, v, 'never', day, draws, DESIGN_SPIN_UP);
  const asPlanned = run(planned);
  const innerCover = planned.innerCover ? asPlanned : run({ ...planned, innerCover: true });
  const isBare = !planned.secondFilm && !planned.innerCover && b.shelter.water.length === 0;
  return { bare: isBare ? asPlanned : run(BARE), asPlanned, innerCover };
};

const monthRow = (b: Bench, climate: ClimateResult, month: number, draws: readonly Draw[], opening: Opening): ThermalResult['months'][number] => {
  const night = climate.coldNights.find((d) => d.month === month);
  const clear = climate.clearDays.find((d) => d.month === month);
  const planned = AS_PLANNED(b.shelter);
  const run = (v: Variant, o: Opening, day: HourlyDay) => over(b, v, o, day, draws, MONTH_SPIN_UP);
  // The month chart shows what the inner cover buys, so both ways are always run, whatever the plan has.
  const dayVariant = { ...planned, innerCover: false };
  const open = night ? run(dayVariant, 'never', night) : null;
  const inner = night ? run({ ...planned, innerCover: true }, 'never', night) : null;
  return {
    month,
    outsideLowC: night ? lowOf(night) : null,
    insideLowC: open ? rangeOf(open.airMinC) : null,
    innerCoverLowC: inner ? rangeOf(inner.airMinC) : null,
    outsideHighC: clear ? highOf(clear) : null,
    closedHighC: clear ? rangeOf(run(dayVariant, 'never', clear).airMaxC) : null,
    openedHighC: clear ? rangeOf(run(dayVariant, opening, clear).airMaxC) : null,
  };
};

/** Rank correlation of each drawn input with the night minimum, strongest first. */
const driversOf = (draws: readonly Draw[], e: Ensemble): ThermalResult['drivers'] =>
  DRIVER_OF.map(({ name, value }) => ({ input: name, rankRatio: rankCorrelation(draws.map(value), e.airMinC) })).sort(
    (a, b) => Math.abs(b.rankRatio) - Math.abs(a.rankRatio),
  );

const INSIDE_SURFACE = cited(8.29, 'W/(m2.K)', 'THERMAL-MEMORY', 'winter inside surface coefficient');
const GAP_M2_K_PER_W = cited(0.12, 'm2.K/W', 'THERMAL-MEMORY', 'two films with an air gap', { min: 0.1, max: 0.18 });
const EDGE_W_PER_M_K = cited(1.26, 'W/(m.K)', 'THERMAL-MEMORY', 'uninsulated floor edge');
/** Difference at which the one-number summary is given. */
const SUMMARY_K = 5;

const summaryOf = (s: Shelter): { lossWPerK: number; leakageAirChangesPerH: number } => {
  const flow = leakageM3PerS(s.leakCm2, SUMMARY_K, CENTRAL.windMPerS, s.shelterClass);
  const single = thinSheetUWPerM2K(INSIDE_SURFACE, outsideCombinedWPerM2K(CENTRAL.windMPerS));
  const u = s.secondFilm ? 1 / (1 / single + GAP_M2_K_PER_W) : single;
  return {
    lossWPerK: u * (s.coverM2[0] + s.coverM2[1]) + 1207 * s.pressureRatio * flow + EDGE_W_PER_M_K * s.perimeterM,
    leakageAirChangesPerH: (flow * 3600) / s.volumeM3,
  };
};

/**
 * Gives: likely nights and days inside, each as a range, and what they hang on.
 * Model: nodes for air, vapour, roof and wall film, second film, inner cover, crop, floor, seven soil layers and each
 * class of water; long-wave rays with film transmission to the sky; leakage-area air model; implicit Euler, 15 min.
 * Assumptions: one well-mixed zone; clear night; no heater; water does not freeze (its freezing heat is left out); the
 * design day repeats. "Inside" is the air at the crop: under the inner cover where one is on.
 * Validity: THERMAL_MODEL. Screening only: no claim finer than 1 K without logged temperatures.
 * Fields: results/thermal. References: THERMAL_MODEL.sources.
 */
export const computeThermal = (x: ThermalInput): RoomOutput<ThermalResult> => {
  const shelter = shelterOf(x.site, x.structure, x.geometry);
  const bench: Bench = { shelter, latitudeDeg: x.site.latitudeDeg, ground: groundOf(x.climate), residualsW: [] };
  const night = x.climate.designNight?.day ?? null;
  const range = outsideValidity(THERMAL_MODEL, {
    elevationM: x.site.elevationM,
    outsideLowC: night ? lowOf(night) : 0,
    floorAreaM2: shelter.floorM2,
    heightRatio: x.geometry.ridgeM / Math.sqrt(shelter.floorM2),
  });
  // Outside a range that safety hangs on no number is given: the night falls away as if it had no record.
  const nightDay = range.some((n) => n.severity === 'stop') ? null : night;
  const draws = drawsOf(DRAW_COUNTS.night, x.seed);
  const dayDraws = drawsOf(DRAW_COUNTS.day, x.seed + 1);
  const monthDraws = drawsOf(DRAW_COUNTS.month, x.seed + 2);
  const opening = openingOf(x.wishes);
  const nights = nightDay ? designNights(bench, nightDay, draws) : null;
  const clear = x.climate.clearDay;
  const shut: Variant = { ...AS_PLANNED(shelter), innerCover: false };
  const closed = clear ? over(bench, shut, 'never', clear, dayDraws, DESIGN_SPIN_UP) : null;
  const opened = clear ? over(bench, shut, opening, clear, dayDraws, DESIGN_SPIN_UP) : null;
  const designNightRows =
    nightDay && nights
      ? [nightRun('bare', nightDay, nights.bare), nightRun('asPlanned', nightDay, nights.asPlanned), nightRun('innerCover', nightDay, nights.innerCover)]
      : [];
  const result: ThermalResult = {
    verdict: nightVerdict(designNightRows, x.wishes.nightTargetC),
    draws: DRAW_COUNTS.night,
    seed: x.seed,
    nodes: nights?.asPlanned.nodes ?? closed?.nodes ?? 0,
    stepMin: STEP_MIN,
    designNights: designNightRows,
    clearDays: clear && closed && opened ? [dayRun('closed', clear, closed), dayRun('opened', clear, opened)] : [],
    months: x.climate.months.filter((m) => m.hasRecord).map((m) => monthRow(bench, x.climate, m.month, monthDraws, opening)),
    crops: cropLimits(x.wishes.crops, nights?.asPlanned ?? null),
    drivers: nights ? driversOf(draws, nights.asPlanned) : [],
    vents: ventSummary(x.geometry),
    ...summaryOf(shelter),
    largestResidualW: 0,
  };
  result.largestResidualW = Math.max(0, ...bench.residualsW);
  return { result, notes: [...range, ...thermalNotes(result, x.structure, x.wishes, x.climate)], sources: [...THERMAL_MODEL.sources] };
};
