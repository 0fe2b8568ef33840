import {
  beyondChain,
  drawChain,
  FIRST_CHAIN_MM,
  gap,
  layoutChain,
  NEXT_CHAIN_MM,
  openingPart,
  partsAlong,
  stationsOf,
  type ChainLayout,
} from '../dimension.js';
import { lengthPair, spokenLength, type ChainPart } from '../lengths.js';
import type { ElevationOptions } from '../options.js';
import { placeMarks, type MarkToPlace } from '../place-labels.js';
import { Plate } from '../plate.js';
import { textWidth } from '../primitives.js';
import { atLargestScale, firstThatFits, fitOf, LEVELS, orNull, ring, scaleAt, sketch, within, type Level } from '../fallback.js';
import type { Drawing, Scale, UnitSystem, XY } from '../types.js';
import { ENGLISH, type Words } from '../words.js';
import { drawWall } from './wall.js';
import {
  alongWall,
  bulgeRoomMm,
  compassWord,
  headingFor,
  headWidth,
  HOST_M,
  isBuy,
  membersIn,
  openingsIn,
  openingWords,
  profile,
  spanOf,
  topAt,
  topM,
  tubeM,
  wallBearingDeg,
  type Heading,
  type SeenOpening,
} from './shelter.js';

const EDGE_MM = 4.6;
const GROUND_MM = 2.4;

interface Chains {
  below: ChainLayout[];
  left: { layout: ChainLayout; name: string }[];
  right: ChainLayout[];
}

interface Layout {
  k: number;
  scale: Scale;
  heading: Heading;
  ox: number;
  ground: number;
  widthMm: number;
  heightMm: number;
  chains: Chains;
}

/** Heights of alike openings stand in one chain, named by the openings it belongs to. */
function heightGroups(seen: readonly SeenOpening[]): { name: string; parts: (topM: number) => ChainPart[] }[] {
  const groups = new Map<string, SeenOpening[]>();
  for (const s of seen) {
    const key = `${Math.round(s.z1 * 1000)}-${Math.round(s.z2 * 1000)}`;
    groups.set(key, [...(groups.get(key) ?? []), s]);
  }
  return [...groups.values()].map((alike) => {
    const { z1, z2 } = alike[0] ?? { z1: 0, z2: 1 };
    const parts = (topM: number): ChainPart[] => [...(z1 > 0.0005 ? [gap(z1)] : []), openingPart(z2 - z1), ...(topM - z2 > 0.0005 ? [gap(topM - z2)] : [])];
    return { name: alike.map((s) => s.opening.openingId).join(' '), parts };
  });
}

const bays = (o: ElevationOptions): ChainPart[] => {
  const { structure, geometry } = o.shelter;
  const ys = [...new Set(geometry.posts.map((p) => p.at.yM))].sort((a, b) => a - b);
  const from = [0, ...ys.filter((y) => y > 0.0005 && y < structure.lengthM - 0.0005), structure.lengthM];
  const parts = from.slice(1).map((y, i) => gap(y - (from[i] ?? 0)));
  return o.view === 'left' ? parts.reverse() : parts;
};

/** What is left out level by level: first chains whose letters find no room in them, then all but the overall sizes. */
function kept(chains: Chains, level: Level): Chains {
  if (level === 'whole' || level === 'loose') return chains;
  const some = <T>(list: readonly T[], layoutOf: (item: T) => ChainLayout): T[] =>
    list.filter((item, i) => i === list.length - 1 || (level === 'roomy' && layoutOf(item).extraMm === 0));
  const left = level === 'overall' ? [] : chains.left.filter((l) => l.layout.extraMm === 0);
  return { below: some(chains.below, (l) => l), left, right: some(chains.right, (l) => l) };
}

interface Where {
  ox: number;
  ground: number;
  /** Ends between which the letters of the chains below must stay. */
  limits: readonly [number, number];
  level: Level;
}
function chainsAt(o: ElevationOptions, seen: readonly SeenOpening[], k: number, { ox, ground, limits, level }: Where): Chains {
  const { geometry } = o.shelter;
  const span = spanOf(o.view, o.shelter);
  const side = o.view === 'left' || o.view === 'right';
  const row = (parts: ChainPart[]): ChainLayout => layoutChain(stationsOf(ox, parts, k), parts, o.units, limits, (o.words ?? ENGLISH).equal);
  const rows = [
    ...(seen.length > 0
      ? [
          partsAlong(
            seen.map((s) => [s.u1, s.u2] as const),
            span,
          ),
        ]
      : []),
    ...(side ? [bays(o)] : []),
    [gap(span)],
  ].filter((parts, i, all) => i === all.length - 1 || parts.length > 1);
  const column = (parts: ChainPart[]): ChainLayout =>
    layoutChain(stationsOf(ground, parts, -k), parts, o.units, [ground + 20, ground - geometry.ridgeM * k - (level === 'whole' ? 12 : LOOSE.aboveMm)]);
  const highSide = o.shelter.structure.kind === 'leanTo' && o.view === 'right';
  const heights =
    !highSide && geometry.eaveM > 0.0005 && geometry.ridgeM - geometry.eaveM > 0.0005 ? [[gap(geometry.eaveM), gap(geometry.ridgeM - geometry.eaveM)]] : [];
  const all = {
    below: rows.map(row),
    left: heightGroups(seen).map((g) => ({ name: g.name, layout: column(g.parts(geometry.eaveM)) })),
    right: (o.heights === false ? [] : [...heights, [gap(geometry.ridgeM)]]).map(column),
  };
  return kept(all, level);
}

/** Room beside an end view that the wall of a lean-to takes. */
const hostRoomM = (o: ElevationOptions): number => (o.shelter.structure.kind === 'leanTo' && (o.view === 'front' || o.view === 'back') ? HOST_M : 0);

/** An arch that bulges over its foot needs room beside an end view too. */
const bulgeMm = (o: ElevationOptions, k: number): number => (o.view === 'front' || o.view === 'back' ? bulgeRoomMm(o.shelter, k) : 0);

const depthOf = (layouts: readonly ChainLayout[], edgeMm: number): number =>
  layouts.reduce((sum, l, i) => sum + (i === 0 ? FIRST_CHAIN_MM : NEXT_CHAIN_MM) + l.extraMm, 0) + (layouts.length > 0 ? edgeMm : 0);
/** Left of the ground's ends. */
const LEFT_MIN_MM = 7;
/** More room for letters about a very small or flat view. */
const LOOSE = { besideMm: 200, aboveMm: 24 } as const;
const widestOut = (layouts: readonly ChainLayout[]): number =>
  Math.max(0, ...layouts.flatMap((l) => l.places.map((p) => (p.kind === 'out' ? textWidth(p.text) + 3 : 0))));

function layoutAt(o: ElevationOptions, title: string, seen: readonly SeenOpening[], k: number, words: Words, level: Level): Layout {
  const loose = level !== 'whole';
  const span = spanOf(o.view, o.shelter);
  const scale = scaleAt(k);
  const beside = loose ? LOOSE.besideMm : 20;
  const first = chainsAt(o, seen, k, { ox: 0, ground: 0, limits: [-beside, span * k + beside], level });
  const nameRoom = Math.max(0, ...first.left.map((l) => textWidth(l.name, 'small b') / 2 - EDGE_MM + 1));
  const host = hostRoomM(o) * k;
  const bulge = bulgeMm(o, k);
  const left =
    bulge +
    Math.max(
      depthOf(
        first.left.map((l) => l.layout),
        EDGE_MM,
      ) + nameRoom,
      LEFT_MIN_MM,
    ) +
    (o.view === 'back' ? host : 0);
  const right = bulge + Math.max(depthOf(first.right, beyondChain(first.right.at(-1))), LEFT_MIN_MM) + (o.view === 'front' ? host : 0);
  const widthMm = Math.max(left + span * k + right, headWidth(title, scale, o.heading ?? true), loose ? widestOut(first.below) : 0);
  const heading = headingFor(title, widthMm, scale, words, o.heading ?? true);
  const ground = heading.heightMm + (loose ? LOOSE.aboveMm - 6 : 4.5) + topM(o.shelter) * k;
  const chains = chainsAt(o, seen, k, { ox: left, ground, limits: [0.5, widthMm - 0.5], level });
  const heightMm = ground + GROUND_MM + depthOf(chains.below, beyondChain(chains.below.at(-1)) + 0.6);
  return { k, scale, heading, ox: left, ground, widthMm, heightMm, chains };
}

function drawChains(plate: Plate, o: ElevationOptions, l: Layout): void {
  const { chains, ox, ground, k } = l;
  const span = spanOf(o.view, o.shelter) * k;
  let at = ground + GROUND_MM;
  chains.below.forEach((layout, i) => {
    at += i === 0 ? FIRST_CHAIN_MM - GROUND_MM + 1 : NEXT_CHAIN_MM;
    drawChain(plate, layout, { at, from: i === 0 ? ground + GROUND_MM : at - 3.2, side: 1 });
    at += layout.extraMm;
  });
  const host = hostRoomM(o) * k;
  const bulge = bulgeMm(o, k);
  let x = ox - bulge - (o.view === 'back' ? host : 0);
  chains.left.forEach(({ layout, name }, i) => {
    x -= i === 0 ? FIRST_CHAIN_MM : NEXT_CHAIN_MM;
    drawChain(plate, layout, { at: x, from: layout.stations.map((_, j) => (j === 0 ? null : x + 4)), side: -1, vertical: true });
    plate.text(x, Math.min(...layout.stations) - 3, name, 'small b', 'middle');
    x -= layout.extraMm;
  });
  const edge = ox + span + bulge + (o.view === 'front' ? host : 0);
  x = edge;
  chains.right.forEach((layout, i) => {
    x += i === 0 ? FIRST_CHAIN_MM : NEXT_CHAIN_MM;
    drawChain(plate, layout, {
      at: x,
      from: layout.stations.map((_, j) => (j === 0 ? null : j === layout.stations.length - 1 ? topEdge(o, l, i) : edge + 1)),
      side: 1,
      vertical: true,
    });
    x += layout.extraMm;
  });
}

/** The extension line of the ridge starts at the ridge; the outer chain's starts behind the inner chain. */
function topEdge(o: ElevationOptions, l: Layout, chain: number): number {
  const span = spanOf(o.view, o.shelter) * l.k;
  const host = o.view === 'front' ? hostRoomM(o) * l.k : 0;
  if (chain > 0) return l.ox + span + host + FIRST_CHAIN_MM + 0.5;
  const lean = o.shelter.structure.kind === 'leanTo';
  const end = o.view === 'front' || o.view === 'back';
  return end && !(lean && o.view === 'front') ? l.ox + (lean ? 0 : span / 2) + tubeM(o.shelter) * l.k + 1.5 : l.ox + span + host + 1;
}

/** Places on bare film: under the roof line of an end, on the roof and wall of a side, and never in an opening. */
function filmSpots(o: ElevationOptions, seen: readonly SeenOpening[]): [number, number][] {
  const { geometry, structure } = o.shelter;
  const end = o.view === 'front' || o.view === 'back';
  const span = spanOf(o.view, o.shelter);
  const outline = profile(o.shelter);
  const spots = FILM_SPOTS.map(([f, g]): [number, number] => {
    const x = o.view === 'back' ? structure.widthM - span * f : span * f;
    return [span * f, (end ? topAt(outline, x) : geometry.ridgeM) * g];
  });
  return spots.filter(([u, z]) => !seen.some((s) => u > s.u1 - BOARD_ROOM_M && u < s.u2 + BOARD_ROOM_M && z > s.z1 - BOARD_ROOM_M && z < s.z2 + BOARD_ROOM_M));
}
const BOARD_ROOM_M = 0.08;
const FILM_SPOTS = [
  [0.5, 0.92],
  [0.22, 0.6],
  [0.78, 0.6],
  [0.12, 0.85],
  [0.15, 0.35],
  [0.6, 0.4],
  [0.9, 0.25],
] as const;

function marksFor(o: ElevationOptions, seen: readonly SeenOpening[], l: Layout): MarkToPlace[] {
  const P = (u: number, z: number): XY => [l.ox + u * l.k, l.ground - z * l.k];
  const { geometry } = o.shelter;
  const span = spanOf(o.view, o.shelter);
  const own = seen.map(({ opening, u1, u2, z1, z2 }): MarkToPlace => {
    const [x, y] = P(u1, z2);
    return { label: opening.openingId, source: isBuy(opening), at: P((u1 + u2) / 2, (z1 + z2) / 2), within: { x, y, w: (u2 - u1) * l.k, h: (z2 - z1) * l.k } };
  });
  const has = (role: string): boolean => membersIn(o.view, o.shelter).some((m) => m.role === role);
  const wallM = geometry.eaveM > 0.4 ? geometry.eaveM : 0.4;
  const spots: Partial<Record<string, XY[]>> = {
    film: filmSpots(o, seen).map(([u, z]) => P(u, z)),
    tube: [0.62, 0.4, 0.75, 0.25].flatMap((f) => [P(0, wallM * f), P(span, wallM * f)]),
    ...(has('sill') ? { sill: [0.93, 0.07, 0.85, 0.6, 0.3].map((f) => P(span * f, SILL_MIDDLE_M)) } : {}),
    ...(has('knee') ? { knee: [P(span * 0.08, geometry.eaveM * 0.9)] } : {}),
    brace: membersIn(o.view, o.shelter)
      .filter((m) => m.role === 'brace')
      .flatMap((m) =>
        [0.5, 0.35, 0.65].map((f) =>
          P(
            alongWall(o.view, o.shelter)({ xM: m.from.xM + (m.to.xM - m.from.xM) * f, yM: m.from.yM + (m.to.yM - m.from.yM) * f, zM: 0 }),
            m.from.zM + (m.to.zM - m.from.zM) * f,
          ),
        ),
      ),
    batten: seen.flatMap((s) => [0.3, 0.6, 0.1].flatMap((f) => [P(s.u2 + 0.019, s.z1 + (s.z2 - s.z1) * f), P(s.u1 - 0.019, s.z1 + (s.z2 - s.z1) * f)])),
  };
  const extra = (o.marks ?? []).flatMap((m): MarkToPlace[] => {
    const [at, ...otherSpots] = (typeof m.target === 'string' ? spots[m.target] : undefined) ?? [];
    return at === undefined ? [] : [{ label: m.label, source: m.source, at, otherSpots }];
  });
  return [...own, ...extra];
}
const SILL_MIDDLE_M = 0.045;

const altOf = (o: ElevationOptions, title: string, seen: readonly SeenOpening[], units: UnitSystem, words: Words): string => {
  const size = `${spokenLength(spanOf(o.view, o.shelter), units)} ${o.view === 'front' || o.view === 'back' ? words.wide : words.long}, ${spokenLength(o.shelter.geometry.ridgeM, units)} ${words.high}`;
  return `${title}: ${size}${seen.length > 0 ? `. ${openingWords(seen, units)}` : ''}.`;
};

/** One side of the shelter, true to scale, with openings, marks, chains of parts and overall, and heights. */
export function elevation(o: ElevationOptions): Drawing {
  const words = o.words ?? ENGLISH;
  const title = `${words.elevation[o.view]}, ${compassWord(wallBearingDeg(o.view, o.shelter), words)}`;
  const seen = openingsIn(o.view, o.shelter);
  const scaled = (level: Level) => (): Drawing => {
    const lay = (k: number): Layout | null => orNull(() => layoutAt(o, title, seen, k, words, level));
    const fits = (k: number): boolean => within(lay(k), o.boxMm);
    return atLargestScale(o.units, fits, (k) => drawAt(o, title, seen, layoutAt(o, title, seen, k, words, level), level), title);
  };
  return firstThatFits(LEVELS.map(scaled), () => sketchOf(o, title, seen, words));
}

function drawAt(o: ElevationOptions, title: string, seen: readonly SeenOpening[], l: Layout, level: Level): Drawing {
  const words = o.words ?? ENGLISH;
  const plate = new Plate();
  drawWall(plate, o.view, o.shelter, (u, z) => [l.ox + u * l.k, l.ground - z * l.k], l.k, words);
  l.heading.draw(plate, l.scale);
  drawChains(plate, o, l);
  plate.mustHold(l.widthMm, l.heightMm);
  const unplaced = placeMarks(plate, marksFor(o, seen, l), { x: 0.5, y: 0.5, w: l.widthMm - 1, h: l.heightMm - 1 });
  return plate.finishHeld(l.widthMm, l.heightMm, altOf(o, title, seen, o.units, words), l.scale, { unplaced, fit: fitOf(level) });
}

function sketchOf(o: ElevationOptions, title: string, seen: readonly SeenOpening[], words: Words): Drawing {
  const end = o.view === 'front' || o.view === 'back';
  const span = spanOf(o.view, o.shelter);
  const { ridgeM, eaveM } = o.shelter.geometry;
  const outline: XY[] = end
    ? profile(o.shelter).map((p): XY => [o.view === 'back' ? span - p.x : p.x, -p.z])
    : [
        [0, 0],
        [0, -ridgeM],
        [span, -ridgeM],
        [span, 0],
      ];
  return sketch({
    box: o.boxMm,
    words,
    title,
    outlines: [
      ring(outline),
      ...seen.map((s): XY[] =>
        ring([
          [s.u1, -s.z1],
          [s.u2, -s.z1],
          [s.u2, -s.z2],
          [s.u1, -s.z2],
        ]),
      ),
    ],
    facts: [
      `${lengthPair(span, o.units)} ${end ? words.wide : words.long}`,
      `${lengthPair(ridgeM, o.units)} ${words.high}`,
      ...(eaveM > 0.0005 && o.heights !== false ? [`${words.eave} ${lengthPair(eaveM, o.units)}`] : []),
    ],
    alt: altOf(o, title, seen, o.units, words),
    unplaced: [...seen.map((s) => s.opening.openingId), ...(o.marks ?? []).map((m) => m.label)],
  });
}
