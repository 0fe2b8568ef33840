import type { Anchor, AnchorageResult, GeometryResult, Note, SiteInputs, StructureInputs, Verdict, WindResult } from '@lathwork/model';
import { BARE_PIPE_N, COMMON_PIER, DEAD_WEIGHT_FRAC, HAND_TORQUE_NM, TORQUE_FACTOR_PER_M, TORQUE_FS, UNTESTED_SOIL_FS } from '../data/anchors.js';
import { BELOW_FROST_M, FRICTION_RATIO } from '../data/soils.js';
import { SERVICE_DEAD, SERVICE_WIND } from '../data/wind-coefficients.js';
import { tubeSection } from '../data/tubes.js';
import { GRAVITY_M_PER_S2 } from '../physics/statics.js';
import type { SourceId } from '../sources/bibliography.js';
import { capacityOf, concreteWeightN, leansOnSoil, pierVolumeM3, type Capacity } from './anchorage-capacity.js';
import { notesOf, outsideValidity, type RoomModel, type RoomOutput } from './room.js';

export interface AnchorageArgs {
  site: SiteInputs;
  structure: StructureInputs;
  geometry: GeometryResult;
  wind: WindResult;
}

export const MODEL = {
  room: 'anchorage',
  title: 'What every post must hold, against the anchor chosen for it',
  ranges: {
    anchorDepthM: { unit: 'm', min: 0, max: 3, sourceId: 'JUDGEMENT-LOADS', safety: true },
    // Torque over what a helical shaft of garden size can bear is a slip of the pen.
    installTorqueNm: { unit: 'N.m', min: 0, max: 7500, sourceId: 'HELICAL-TORQUE', safety: true },
  },
  sources: [
    'CFR-3280',
    'CFR-3285',
    'TENT-STAKE-2009',
    'HELICAL-TORQUE',
    'PIPE-PULL-2015',
    'EP486',
    'CONCRETE-150',
    'IBC-1806',
    'ASCE7-16',
    'STATICS',
    'JUDGEMENT-LOADS',
  ],
} as const satisfies RoomModel;

const note = notesOf('anchorage', 'anchors');

const frictionOf = (site: SiteInputs): number => FRICTION_RATIO[site.soilClass === 'unknown' ? '5' : site.soilClass];

/** Words of the screening by demand over capacity. */
export const verdictByRatio = (ratio: number): Verdict => (ratio > 1 ? 'doesNotPass' : ratio >= 0.7 ? 'marginal' : 'noRedFlag');

const WORST: readonly Verdict[] = ['noRedFlag', 'marginal', 'notAssessed', 'doesNotPass'];
const worstOf = (verdicts: readonly Verdict[]): Verdict =>
  verdicts.reduce<Verdict>((a, b) => (WORST.indexOf(b) > WORST.indexOf(a) ? b : a), verdicts[0] ?? 'notAssessed');

/** Loose ballast must also not slide: the weight that friction needs is added to the uplift. */
const demandOf = (post: WindResult['posts'][number], anchor: Anchor, site: SiteInputs): number =>
  anchor.kind === 'ballast' ? post.upliftN + post.horizontalN / frictionOf(site) : post.upliftN;

const postAnchors = (args: AnchorageArgs, capacityN: number | null): AnchorageResult['posts'] =>
  args.wind.posts.map((post) => {
    const demandN = demandOf(post, args.structure.anchor, args.site);
    if (demandN === 0) return { postId: post.postId, demandN, capacityN, demandRatio: 0, verdict: capacityN === null ? 'notAssessed' : 'noRedFlag' };
    if (capacityN === null) return { postId: post.postId, demandN, capacityN, demandRatio: null, verdict: 'notAssessed' };
    if (capacityN === 0) return { postId: post.postId, demandN, capacityN, demandRatio: null, verdict: 'doesNotPass' };
    return { postId: post.postId, demandN, capacityN, demandRatio: demandN / capacityN, verdict: verdictByRatio(demandN / capacityN) };
  });

/** What would hold an uplift and a push by itself, for each common kind. */
export const wouldHold = (upliftN: number, pushN: number, frictionRatio: number): AnchorageResult['wouldHold'] => {
  const torqueNm = (upliftN * TORQUE_FS) / TORQUE_FACTOR_PER_M;
  const augers = Math.max(1, Math.ceil(torqueNm / HAND_TORQUE_NM - 1e-9));
  const pierN = concreteWeightN(pierVolumeM3(COMMON_PIER.diameterM, COMMON_PIER.depthM));
  return [
    // Never more than two people turn in by hand: beyond that, more augers of less torque each.
    { kind: 'augerTorque', torqueNm: torqueNm / augers, massKg: null, count: augers },
    {
      kind: 'concretePier',
      torqueNm: null,
      massKg: upliftN / DEAD_WEIGHT_FRAC / GRAVITY_M_PER_S2,
      count: Math.ceil(upliftN / DEAD_WEIGHT_FRAC / pierN - 1e-9),
    },
    { kind: 'ballast', torqueNm: null, massKg: (upliftN + pushN / frictionRatio) / DEAD_WEIGHT_FRAC / GRAVITY_M_PER_S2, count: null },
    { kind: 'drivenPipe', torqueNm: null, massKg: null, count: Math.ceil((upliftN * UNTESTED_SOIL_FS.low) / BARE_PIPE_N - 1e-9) },
  ];
};

/**
 * The forecast gust at which the first post asks for all its anchor may hold: k V^2 = R + 0.6 D. A gust that comes is
 * compared without the factor that turns a strength-level map speed into a service load.
 */
const gustLimitMPerS = (args: AnchorageArgs, capacityN: number): number | null => {
  const { wind, geometry, structure } = args;
  if (wind.gustMPerS === null) return null;
  const factor = wind.standard === 'EN 1991-1-4' ? 1 / 1.5 : SERVICE_WIND;
  const limits = wind.posts.flatMap((post) => {
    const tributaryM = geometry.posts.find((p) => p.postId === post.postId)?.tributaryM ?? 0;
    const heldN = (SERVICE_DEAD * (wind.deadLoadN ?? 0) * tributaryM) / structure.lengthM / 2;
    // The whole of what a strength-level gust asks of this post: its service demand with the own weight added back.
    const askedN = (demandOf(post, structure.anchor, args.site) + heldN) / factor;
    return post.upliftN > 0 ? [(wind.gustMPerS ?? 0) * Math.sqrt((capacityN + heldN) / askedN)] : [];
  });
  return limits.length === 0 ? null : Math.min(...limits);
};

const frostNotes = (anchor: Anchor, site: SiteInputs): Note[] => {
  if (anchor.kind === 'none' || anchor.kind === 'ballast') return [];
  if (site.frostDepthM === 'unknown') return [note('frost-ask', 'ask')];
  const wantedM = site.frostDepthM === 0 ? 0 : site.frostDepthM + BELOW_FROST_M;
  return anchor.depthM !== 'unknown' && anchor.depthM < wantedM
    ? [note('frost-heave', 'care', { depthM: anchor.depthM, frostDepthM: site.frostDepthM, wantedM })]
    : [];
};

/** Removable holds: the office decides whether they count as temporary; both needs are shown and neither wins here. */
const REMOVABLE = ['ballast', 'auger', 'drivenPipe'];
const permitNotes = (anchor: Anchor, site: SiteInputs, needed: boolean): Note[] => {
  const fixed = anchor.kind === 'concretePier' || anchor.kind === 'groundPost';
  if (site.permanentAnchors === 'forbidden' && (fixed || (needed && anchor.kind === 'none')))
    return [{ ...note('permit-conflict', 'ask', { kind: anchor.kind, removableKinds: REMOVABLE, anchorsNeeded: needed }), beforeTask: 'permission' }];
  if (site.permanentAnchors === 'forbidden' && leansOnSoil(anchor.kind))
    return [{ ...note('permit-ask', 'ask', { kind: anchor.kind, permanentAnchors: 'forbidden' }), beforeTask: 'permission' }];
  if (site.permanentAnchors === 'unknown' && fixed)
    return [{ ...note('permit-ask', 'ask', { kind: anchor.kind, permanentAnchors: 'unknown' }), beforeTask: 'permission' }];
  return [];
};

/** What keeps the anchors from being rated, whatever they are. */
const unratedNotes = ({ site, structure, wind }: AnchorageArgs): Note[] => [
  ...(site.soilClass === 'unknown' ? [note('unrated', 'stop', { reason: 'soil-unknown' })] : []),
  ...(tubeSection(structure.tube) === null ? [note('unrated', 'stop', { reason: 'tube-unknown' })] : []),
  ...(wind.verdict === 'notAssessed' ? [note('unrated', 'stop', { reason: 'wind-not-assessed' })] : []),
];

const outsideOf = (anchor: Anchor): Note[] =>
  outsideValidity(MODEL, {
    anchorDepthM: anchor.depthM === 'unknown' ? 0 : anchor.depthM,
    installTorqueNm: anchor.installTorqueNm === 'unknown' ? 0 : anchor.installTorqueNm,
  });

const SOURCES: Readonly<Record<Capacity['basis'], readonly SourceId[]>> = {
  pullCheck: ['CFR-3280', 'TENT-STAKE-2009'],
  torque: ['HELICAL-TORQUE'],
  weight: ['ASCE7-16', 'CONCRETE-150'],
  published: ['PIPE-PULL-2015', 'EP486'],
  none: [],
};

/** Notes that hang on the finished numbers. */
const remarks = (args: AnchorageArgs, posts: AnchorageResult['posts'], capacityN: number | null): Note[] => {
  const { structure, site } = args;
  const { anchor } = structure;
  const needed = args.wind.posts.some((p) => p.upliftN > 0);
  const failing = posts.filter((p) => p.verdict === 'doesNotPass').map((p) => p.postId);
  const limit = capacityN === null ? null : gustLimitMPerS(args, capacityN);
  return [
    ...(leansOnSoil(anchor.kind) ? [note('locate-utilities', 'ask', { kind: anchor.kind })] : []),
    ...frostNotes(anchor, site),
    ...permitNotes(anchor, site, needed),
    ...(failing.length > 0
      ? [note('does-not-hold', 'stop', { postIds: failing, capacityN: capacityN ?? 0, worstN: Math.max(...posts.map((p) => p.demandN ?? 0)) })]
      : []),
    ...(limit !== null ? [note('gust-limit', 'care', { gustMPerS: limit, capacityN: capacityN ?? 0 })] : []),
    ...(leansOnSoil(anchor.kind) ? [note('check-again-when-wet', 'care')] : []),
  ];
};

/**
 * What it gives: for every post the net uplift to hold against what its anchors may hold, and what else would hold the worst
 * post.
 * Model: a pull check over 1.5 and halved for wet soil; torque Qu = Kt T over 2; dead weight 0.6 D; published pull-outs of bare
 * pipe over 2.5; loose ballast must hold the uplift and, by friction, the push.
 * Assumptions: demands of the wind room, each post for itself; shop ratings are never used; deeper bare pipe than tested earns
 * nothing more; piers hold by weight alone (no soil cone, which fails when saturated).
 * Validity: `MODEL.ranges`. Soil or tube unknown, wind not assessed, soft ground: not rated, no number, a stop note.
 * Fields: see AnchorageResult; verdict over 1 does not pass, from 0.7 marginal.
 * Worked line: 853 lb at the middle post: 9.47 ft3 of concrete, or 171 ft-lb of torque (tests/reference/anchorage).
 * References: CFR-3280, HELICAL-TORQUE, PIPE-PULL-2015, EP486, IBC-1806.
 */
export const computeAnchorage = (args: AnchorageArgs): RoomOutput<AnchorageResult> => {
  const { site, structure, wind } = args;
  const { anchor } = structure;
  const outside = outsideOf(anchor);
  const capacity = capacityOf(anchor, site);
  // With nothing chosen there is nothing to rate: a shelter that lifts does not pass, whatever the soil.
  const nothingChosen = capacity.eachN === 0;
  const unrated = unratedNotes(args).filter((n) => !nothingChosen || n.params['reason'] === 'wind-not-assessed');
  const rated = unrated.length === 0 && outside.length === 0 && capacity.eachN !== null;
  const eachN = rated ? capacity.eachN : null;
  const capacityN = eachN === null ? null : eachN * anchor.perPostCount;
  const posts = postAnchors(args, capacityN);
  const worst = posts.reduce<(typeof posts)[number] | null>((a, b) => (a === null || (b.demandN ?? 0) > (a.demandN ?? 0) ? b : a), null);
  const worstPost = wind.posts.reduce<WindResult['posts'][number] | null>((a, b) => (a === null || b.upliftN > a.upliftN ? b : a), null);
  const result: AnchorageResult = {
    verdict: rated ? worstOf(posts.map((p) => p.verdict)) : 'notAssessed',
    rated,
    anchorKind: anchor.kind,
    capacityEachN: eachN,
    factorOfSafety: rated ? capacity.factorOfSafety : null,
    capacityBasis: rated ? capacity.basis : 'none',
    posts,
    wouldHold: worstPost === null || worstPost.upliftN <= 0 ? [] : wouldHold(worstPost.upliftN, worstPost.horizontalN, frictionOf(site)),
    slidingForceN: wind.posts.length === 0 ? null : wind.posts.reduce((sum, p) => sum + p.horizontalN, 0),
    worstPostId: worst?.postId ?? null,
    worstDemandN: worst?.demandN ?? null,
  };
  const notes = [...unrated, ...outside, ...capacity.notes, ...remarks(args, posts, capacityN)];
  return {
    result,
    notes,
    sources: [...SOURCES[rated ? capacity.basis : 'none'], 'IBC-1806', 'HELICAL-TORQUE', 'PIPE-PULL-2015', 'CONCRETE-150', 'CFR-3285', 'STATICS'],
  };
};
