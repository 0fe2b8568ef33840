import type { GeometryResult, Note, SiteInputs, StructureInputs, WindResult } from '@lathwork/model';
import {
  EN_AIR_DENSITY,
  EN_WIND_FACTOR,
  FILM_AREA_M2,
  GCPI,
  GUST_LIMIT_MPERS,
  LEAST_CLADDING_PA,
  MEMORY_RAISE,
  SERVICE_DEAD,
  SERVICE_WIND,
} from '../data/wind-coefficients.js';
import { tubeSection } from '../data/tubes.js';
import { GRAVITY_M_PER_S2 } from '../physics/statics.js';
import type { SourceId } from '../sources/bibliography.js';
import { notesOf, outsideValidity, type RoomModel, type RoomOutput } from './room.js';
import { windApproach, type WindApproach } from './wind-basis.js';
import { asceVariants, enVariants, recalledRaise, sectionOf, type WindShape, type WindVariant } from './wind-cases.js';
import { archCp, claddingRoofGcp, claddingWallGcp } from './wind-coefficients.js';
import { claddingExposureFactor, elevationFactor, enPeakPressurePa, exposureFactor, velocityPressurePa, type EnTerrain } from './wind-pressure.js';

export interface WindArgs {
  site: SiteInputs;
  structure: StructureInputs;
  geometry: GeometryResult;
}

export const MODEL = {
  room: 'wind',
  title: 'Wind pressure, uplift, push and overturning; what every post must hold; suction on the film',
  ranges: {
    gustMPerS: { unit: 'm/s', min: 0, max: GUST_LIMIT_MPERS, sourceId: 'JUDGEMENT-LOADS', safety: true },
    meanRoofHeightM: { unit: 'm', min: 0, max: 18.3, sourceId: 'ASCE7-16', safety: true },
    roofSlopeDeg: { unit: 'deg', min: 0, max: 60, sourceId: 'ASCE7-16', safety: true },
    riseOverSpanRatio: { unit: '1', min: 0, max: 0.6, sourceId: 'ASCE7-16-MEMORY', safety: true },
    enPitchDeg: { unit: 'deg', min: 15, max: 30, sourceId: 'EN1991-1-4', safety: true },
  },
  sources: ['ASCE7-16', 'ASCE7-16-MEMORY', 'EN1991-1-4', 'EN1991-1-4-MEMORY', 'EN1990-MEMORY', 'GUST-RATIO', 'IBC-1609', 'STATICS', 'JUDGEMENT-LOADS'],
} as const satisfies RoomModel;

const EN_TERRAIN_OF: Readonly<Record<SiteInputs['exposure'], EnTerrain>> = { B: 'III', C: 'II', D: '0' };
const note = notesOf('wind');

/** Own weight: weighed, or the length of the frame's tubes times their weight, or nothing. Film and boards are not counted. */
const deadLoad = (structure: StructureInputs, geometry: GeometryResult): { deadN: number | null; notes: Note[] } => {
  if (structure.frameMassKg !== 'unknown') return { deadN: structure.frameMassKg * GRAVITY_M_PER_S2, notes: [] };
  const section = tubeSection(structure.tube);
  if (!section) return { deadN: null, notes: [note('weight-unknown', 'care', { usedN: 0 })] };
  const tubeM = geometry.members
    .filter((m) => ['leg', 'rafter', 'bow', 'ridge', 'eave', 'knee', 'brace'].includes(m.role))
    .reduce((sum, m) => sum + m.lengthM, 0);
  const massKg = tubeM * section.massKgPerM;
  return { deadN: massKg * GRAVITY_M_PER_S2, notes: [note('weight-estimated', 'note', { massKg, tubeM })] };
};

/** Reported cases: for each direction and enclosure the hardest lift, and the hardest push where that is another one. */
const reported = (variants: readonly WindVariant[]): WindResult['cases'] =>
  (['normalFromLeft', 'normalFromRight', 'parallel'] as const).flatMap((direction) =>
    (['enclosed', 'partiallyEnclosed'] as const).flatMap((enclosure) => {
      const same = variants.filter((v) => v.direction === direction && v.enclosure === enclosure);
      const most = (of: (v: WindVariant) => number) => same.reduce<WindVariant | undefined>((a, b) => (a && of(a) >= of(b) - 1e-9 ? a : b), undefined);
      const [lift, push] = [most((v) => v.upliftN), most((v) => v.shearN)];
      return [lift, push !== lift && push && lift && push.shearN > lift.shearN + 1 ? push : undefined].flatMap((v, i) => {
        if (!v) return [];
        const { posts: _posts, ...totals } = v;
        return [{ ...totals, caseId: `${direction}/${enclosure}${i === 1 ? '/push' : ''}` }];
      });
    }),
  );

interface PostSums {
  posts: WindResult['posts'];
  liftsAtMPerS: number | null;
}

/** Worst case of every post: service wind less 0.6 of the own weight it carries by its share of the length. */
const postLoads = (variants: readonly WindVariant[], args: WindArgs, deadN: number | null, gustMPerS: number, serviceWind: number): PostSums => {
  const { geometry, structure } = args;
  let lifts: number | null = null;
  const posts = geometry.posts.map(({ postId, tributaryM }, i) => {
    const heldN = (SERVICE_DEAD * (deadN ?? 0) * tributaryM) / structure.lengthM / 2;
    const all = variants.flatMap((v) => (v.posts[i] ? [{ ...v.posts[i], v }] : []));
    const worst = all.reduce((a, b) => (b.pullN > a.pullN ? b : a));
    // A gust that comes is not a map speed: it is compared without the factor that turns strength level into service level.
    if (deadN !== null && worst.pullN > 0) {
      const at = gustMPerS * Math.sqrt(heldN / worst.pullN);
      lifts = lifts === null ? at : Math.min(lifts, at);
    }
    return {
      postId,
      upliftN: Math.max(0, serviceWind * worst.pullN - heldN),
      horizontalN: serviceWind * Math.max(...all.map((r) => r.horizontalN)),
      governedBy: `${worst.v.direction}/${worst.v.enclosure}`,
    };
  });
  return { posts, liftsAtMPerS: lifts };
};

/** Service suction on film and battens: 0.6 q (|GCp| + GCpi), not under 0.6 of the least load of 30.2.2. */
const filmZones = (args: WindArgs, qPa: number): WindResult['zones'] => {
  const { structure, geometry } = args;
  const arch = structure.kind === 'roundArch';
  const rise = (structure.ridgeM - structure.eaveM) / structure.widthM;
  const pitchDeg = arch ? 2 * geometry.roofSlopeDeg : geometry.roofSlopeDeg;
  const archField =
    Math.max(...(['ground', 'elevated'] as const).flatMap((s) => archCp(rise, s).flatMap((set) => set.map((cp) => Math.abs(cp))))) * MEMORY_RAISE;
  const gcp = (surface: 'wall' | 'roof', zone: 'field' | 'edge' | 'corner'): number => {
    if (surface === 'wall') return Math.abs(claddingWallGcp(zone === 'field' ? 'field' : 'corner', FILM_AREA_M2));
    const roof = Math.abs(claddingRoofGcp(pitchDeg, zone, FILM_AREA_M2));
    return arch ? Math.max(zone === 'field' ? 0 : roof * MEMORY_RAISE, archField) : roof;
  };
  return (['wall', 'roof'] as const).flatMap((surface) =>
    (['field', 'edge', 'corner'] as const).map((zone) => ({
      zone,
      surface,
      suctionPa: SERVICE_WIND * Math.max(qPa * (gcp(surface, zone) + GCPI.enclosed), LEAST_CLADDING_PA),
    })),
  );
};

const emptyResult = (heightM: number, deadN: number | null, approach: WindApproach): WindResult => ({
  verdict: 'notAssessed',
  standard: 'none',
  gustMPerS: null,
  conversion: approach.conversion,
  velocityPressurePa: null,
  meanRoofHeightM: heightM,
  deadLoadN: deadN,
  cases: [],
  posts: [],
  totalUpliftN: null,
  liftsUnanchoredAtMPerS: null,
  zones: [],
});

/** Ranges of MODEL that this shelter must lie in; a range that does not apply is given a value that lies inside. */
const validity = (shape: WindShape, approach: WindApproach): Note[] => {
  const { structure, geometry, heightM } = shape;
  const en = approach.standard === 'EN 1991-1-4';
  const arch = structure.kind === 'roundArch';
  return outsideValidity(MODEL, {
    gustMPerS: approach.standard === 'ASCE 7-16' ? approach.gustMPerS : 0,
    meanRoofHeightM: heightM,
    roofSlopeDeg: arch ? 0 : geometry.roofSlopeDeg,
    riseOverSpanRatio: arch ? (structure.ridgeM - structure.eaveM) / structure.widthM : 0,
    enPitchDeg: en && structure.kind === 'gableCanopy' ? geometry.roofSlopeDeg : 20,
  });
};

const remarks = (args: WindArgs, variants: readonly WindVariant[], en: boolean, serviceWind: number): Note[] => {
  const { structure, geometry } = args;
  const notes: Note[] = [];
  if (structure.kind === 'roundArch' || en)
    notes.push(note('memory-coefficients', 'care', { raisedByFrac: MEMORY_RAISE - 1, about: en ? 'en-walls-and-inside' : 'arched-roof' }));
  if (en) notes.push(note('zones-not-held', 'ask', { standard: 'EN 1991-1-4' }));
  if (structure.kind === 'leanTo')
    notes.push(note('lean-to-host-wall', 'note', { hostHeightM: structure.hostWall?.heightM ?? 0, highSideM: structure.ridgeM }));
  if (structure.braced === 'none' || structure.braced === 'unknown')
    notes.push({ ...note('unbraced', 'care', { braced: structure.braced }), beforeTask: 'brace' });
  const push = Math.max(...variants.filter((v) => v.direction === 'parallel').map((v) => v.shearN));
  const extraUpliftN = (serviceWind * push * sectionOf(geometry).centreM) / structure.lengthM / 2;
  notes.push(note('lengthwise-push', 'note', { endPushN: serviceWind * push, extraUpliftPerCornerN: extraUpliftN }));
  if (structure.openings.length > 0) notes.push(note('door-open-in-a-gust', 'care', { openingsCount: structure.openings.length }));
  notes.push(note('frame-not-checked', 'note'));
  return notes;
};

const sourcesFor = (standard: WindResult['standard'], arch: boolean): SourceId[] => {
  if (standard === 'none') return [];
  if (standard === 'EN 1991-1-4') return ['EN1991-1-4', 'EN1991-1-4-MEMORY', 'EN1990-MEMORY', 'ASCE7-16', 'STATICS', 'JUDGEMENT-LOADS'];
  return ['ASCE7-16', ...(arch ? (['ASCE7-16-MEMORY'] as const) : []), 'IBC-1609', 'GUST-RATIO', 'STATICS', 'JUDGEMENT-LOADS'];
};

interface Pressures {
  qPa: number;
  filmPa: number | null;
  gustMPerS: number;
  serviceWind: number;
}

const pressures = (approach: Exclude<WindApproach, { standard: 'none' }>, site: SiteInputs, heightM: number, ridgeM: number): Pressures => {
  if (approach.standard === 'EN 1991-1-4') {
    // The characteristic pressure times the factor of EN 1990 plays the part of the strength level; service is the pressure itself.
    const qPa = EN_WIND_FACTOR * enPeakPressurePa(approach.basicMPerS, ridgeM, EN_TERRAIN_OF[site.exposure]);
    return { qPa, filmPa: null, gustMPerS: Math.sqrt((2 * qPa) / EN_AIR_DENSITY), serviceWind: 1 / EN_WIND_FACTOR };
  }
  // Thin air at height may be counted but need not be; below sea level the air is denser and is counted.
  const ke = Math.max(1, elevationFactor(site.elevationM));
  const at = (kz: number) => velocityPressurePa(approach.gustMPerS, kz, { ke });
  return {
    qPa: at(exposureFactor(heightM, site.exposure)),
    filmPa: at(claddingExposureFactor(heightM, site.exposure)),
    gustMPerS: approach.gustMPerS,
    serviceWind: SERVICE_WIND,
  };
};

/**
 * What it gives: strength-level totals for wind across (both ways) and along the ridge, closed and with one side open;
 * the net service uplift and push of every post; suction on the film; the gust that lifts the shelter with nothing anchored.
 * Model: ASCE 7-16 eq. 26.10-1 and fig. 27.3-1 (arched roofs recalled, raised by 20 per cent); EN 1991-1-4 4.5 and tables
 * 7.4a, 7.4b for a duopitch where the wind reading is European.
 * Assumptions: flat ground (Kzt 1); Ke 1 above sea level; each bow stands on two feet, so its vertical reactions follow from
 * equilibrium; each post answers for its share of the length and no total is divided by the number of posts; legs share the
 * push; one pressure, that of the mean roof height, on all surfaces; film and boards weigh nothing; a lean-to's high side is closed by the
 * host wall and carries nothing.
 * Validity: `MODEL.ranges`.
 * Fields: see WindResult. `posts[].upliftN` is 0.6 W - 0.6 D (EN: W - 0.6 D), `cases[]` are strength level without D.
 * Worked line: 10 x 20 ft canopy, 105 mph: middle windward post 853 lb (tests/reference/wind).
 * References: ASCE7-16, EN1991-1-4, STATICS.
 */
export const computeWind = (args: WindArgs): RoomOutput<WindResult> => {
  const { site, structure, geometry } = args;
  const heightM = geometry.roofSlopeDeg <= 10 && structure.kind !== 'roundArch' ? geometry.eaveM : geometry.meanRoofHeightM;
  const shape: WindShape = { structure, geometry, heightM, pitchDeg: geometry.roofSlopeDeg };
  const dead = deadLoad(structure, geometry);
  const approach = windApproach(site);
  const outside = validity(shape, approach);
  const notes = [...approach.notes, ...outside, ...dead.notes];
  const en = approach.standard === 'EN 1991-1-4';
  if (en && structure.kind !== 'gableCanopy') notes.push(note('en-shape-not-held', 'ask', { kind: structure.kind, standard: 'EN 1991-1-4' }));
  const stopped = outside.length > 0 || (en && structure.kind !== 'gableCanopy') || geometry.posts.length < 2;
  if (approach.standard === 'none' || stopped) return { result: emptyResult(heightM, dead.deadN, approach), notes, sources: [] };

  const p = pressures(approach, site, heightM, structure.ridgeM);
  const raise = recalledRaise(approach.standard, structure.kind);
  const variants = en ? enVariants(shape, p.qPa, raise) : asceVariants(shape, p.qPa, raise);
  const { posts, liftsAtMPerS } = postLoads(variants, args, dead.deadN, p.gustMPerS, p.serviceWind);
  const result: WindResult = {
    // Loads are found here and capacities elsewhere: a shelter that its own weight does not hold always wants help.
    verdict: posts.some((post) => post.upliftN > 0) ? 'marginal' : 'noRedFlag',
    standard: approach.standard,
    gustMPerS: p.gustMPerS,
    conversion: approach.conversion,
    velocityPressurePa: p.qPa,
    meanRoofHeightM: heightM,
    deadLoadN: dead.deadN,
    cases: reported(variants),
    posts,
    totalUpliftN: Math.max(...variants.map((v) => v.upliftN)),
    liftsUnanchoredAtMPerS: liftsAtMPerS,
    zones: p.filmPa === null ? [] : filmZones(args, p.filmPa),
  };
  return { result, notes: [...notes, ...remarks(args, variants, en, p.serviceWind)], sources: sourcesFor(approach.standard, structure.kind === 'roundArch') };
};
