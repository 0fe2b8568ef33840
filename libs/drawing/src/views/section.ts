import { beyondChain, drawChain, FIRST_CHAIN_MM, gap, layoutChain, NEXT_CHAIN_MM, stationsOf, type ChainLayout } from '../dimension.js';
import { lengthPair, spokenLength, type ChainPart } from '../lengths.js';
import { Plate } from '../plate.js';
import { atLargestScale, firstThatFits, fitOf, LEVELS, orNull, ring, scaleAt, sketch, within, type Level } from '../fallback.js';
import type { Drawing, ViewOptions, XY } from '../types.js';
import { ENGLISH, type Words } from '../words.js';
import { floorPlan } from './inside.js';
import { band, bulgeRoomMm, headingFor, headWidth, HOST_M, hostName, profile, topM, tubeM } from './shelter.js';
import { HATCH, textWidth } from '../primitives.js';

const GROUND_MM = 2.4;
const BED_HIGH_M = 0.2;

interface Layout {
  k: number;
  ox: number;
  ground: number;
  widthMm: number;
  heightMm: number;
  below: ChainLayout[];
  right: ChainLayout[];
}

const LOOSE_MM = 12;

function layoutAt(o: ViewOptions, k: number, words: Words, level: Level): Layout {
  const more = level === 'whole' ? 0 : LOOSE_MM;
  const { structure, geometry } = o.shelter;
  const w = structure.widthM;
  const halves: ChainPart[][] = structure.kind === 'leanTo' ? [] : [[gap(w / 2), gap(w / 2)]];
  const heights: ChainPart[][] =
    geometry.eaveM > 0.0005 && geometry.ridgeM - geometry.eaveM > 0.0005 ? [[gap(geometry.eaveM), gap(geometry.ridgeM - geometry.eaveM)]] : [];
  const kept = (rows: ChainLayout[]): ChainLayout[] =>
    level === 'whole' || level === 'loose' ? rows : rows.filter((r, i) => i === rows.length - 1 || (level === 'roomy' && r.extraMm === 0));
  const build = (ox: number, ground: number): Pick<Layout, 'below' | 'right'> => ({
    below: kept(
      [...halves, [gap(w)]].map((parts) => layoutChain(stationsOf(ox, parts, k), parts, o.units, [Math.max(0.5, ox - 9 - more), ox + w * k + 9 + more])),
    ),
    right: kept(
      [...heights, [gap(geometry.ridgeM)]].map((parts) =>
        layoutChain(stationsOf(ground, parts, -k), parts, o.units, [ground + 12, ground - geometry.ridgeM * k - 8 - more]),
      ),
    ),
  });
  const depth = (rows: readonly ChainLayout[]): number =>
    rows.reduce((sum, r, i) => sum + r.extraMm + (i === 0 ? FIRST_CHAIN_MM : NEXT_CHAIN_MM), beyondChain(rows.at(-1)) + 0.6);
  const first = build(0, 0);
  const host = structure.kind === 'leanTo' ? (HOST_M + 0.05) * k : 0;
  const bulge = bulgeRoomMm(o.shelter, k);
  const ox = 7 + more + bulge;
  const widthMm = Math.max(ox + w * k + bulge + host + depth(first.right), headWidth(words.section, scaleAt(k), o.heading ?? true));
  const top = headingFor(words.section, widthMm, scaleAt(k), words, o.heading ?? true).heightMm + 9 + more;
  const ground = top + topM(o.shelter) * k;
  return { k, ox, ground, widthMm, heightMm: ground + GROUND_MM + depth(first.below), ...build(ox, ground) };
}

function drawFrame(plate: Plate, o: ViewOptions, P: (x: number, z: number) => XY, k: number, words: Words): void {
  const { shelter } = o;
  const { widthM: w, kind } = shelter.structure;
  if (kind === 'leanTo') {
    const top = Math.min(shelter.structure.hostWall?.heightM ?? shelter.geometry.ridgeM, shelter.geometry.ridgeM);
    const wall: XY[] = [P(w + 0.03, 0), P(w + HOST_M, 0), P(w + HOST_M, top), P(w + 0.03, top)];
    plate.poly(wall, 'face');
    plate.hatch(wall, HATCH.close);
    hostName(plate, P(w + 0.03 + (HOST_M - 0.03) / 2, top * 0.4), (HOST_M - 0.03) * k, false, words);
  }
  for (const b of floorPlan(shelter).beds) {
    const bed: XY[] = [P(b.x, 0), P(b.x + b.w, 0), P(b.x + b.w, BED_HIGH_M), P(b.x, BED_HIGH_M)];
    plate.poly(bed, 'vis');
    plate.hatch(bed, HATCH.wide);
  }
  const line = profile(shelter).map((p) => P(p.x, p.z));
  if (kind === 'roundArch') band(plate, line, tubeM(shelter) * k);
  else for (let i = 0; i + 1 < line.length; i++) band(plate, [line[i] ?? [0, 0], line[i + 1] ?? [0, 0]], tubeM(shelter) * k);
  for (const m of shelter.geometry.members) if (m.role === 'knee') plate.line(P(m.from.xM, m.from.zM), P(m.to.xM, m.to.zM), 'vis');
}

/** Roof slope as an angle, and the length over the top: what a string measures in the field. */
function drawSlope(plate: Plate, o: ViewOptions, P: (x: number, z: number) => XY, words: Words): void {
  const { geometry, structure } = o.shelter;
  const w = structure.widthM;
  const rafter = geometry.members.find((m) => m.role === 'rafter');
  const [x, y] = P(w / 2, geometry.eaveM + (geometry.ridgeM - geometry.eaveM) * 0.25);
  const room = P(w, 0)[0] - P(0, 0)[0] - 8;
  const facts = [
    structure.kind === 'roundArch' ? '' : `${words.fallOfRoof} ${geometry.roofSlopeDeg.toFixed(0)}°`,
    rafter ? `${words.rafter} ${lengthPair(rafter.lengthM, o.units)}` : '',
    `${words.girth} ${lengthPair(geometry.girthM, o.units)}`,
  ].filter((s) => s !== '');
  const low = P(0, Math.max(geometry.ridgeM * 0.62, BED_HIGH_M + 0.2))[1];
  const start = Math.max(y, low) - 1;
  facts.filter((s) => textWidth(s, 'let') < room).forEach((s, i) => plate.label(x, start + i * 5, s, 'let', 'middle'));
}

/** Cut across the shelter, looking to the back: the bow or rafters, heights, half widths, slope. */
export function section(o: ViewOptions): Drawing {
  const words = o.words ?? ENGLISH;
  const scaled = (level: Level) => (): Drawing => {
    const fits = (k: number): boolean =>
      within(
        orNull(() => layoutAt(o, k, words, level)),
        o.boxMm,
      );
    return atLargestScale(o.units, fits, (k) => drawAt(o, layoutAt(o, k, words, level), level, words), words.section);
  };
  return firstThatFits(LEVELS.map(scaled), () => sketchOf(o, words));
}

const altOf = ({ shelter: { structure, geometry }, units }: ViewOptions, words: Words): string =>
  `${words.section}: ${spokenLength(structure.widthM, units)} ${words.wide}, ${spokenLength(geometry.ridgeM, units)} ${words.high}, ${words.girth} ${spokenLength(geometry.girthM, units)}.`;

function sketchOf(o: ViewOptions, words: Words): Drawing {
  const { structure, geometry } = o.shelter;
  return sketch({
    box: o.boxMm,
    words,
    title: words.section,
    outlines: [ring(profile(o.shelter).map((p): XY => [p.x, -p.z]))],
    facts: [
      `${lengthPair(structure.widthM, o.units)} ${words.wide}`,
      `${lengthPair(geometry.ridgeM, o.units)} ${words.high}`,
      ...(geometry.eaveM > 0.0005 ? [`${words.eave} ${lengthPair(geometry.eaveM, o.units)}`] : []),
      `${words.girth} ${lengthPair(geometry.girthM, o.units)}`,
    ],
    alt: altOf(o, words),
    unplaced: [],
  });
}

function drawAt(o: ViewOptions, l: Layout, level: Level, words: Words): Drawing {
  const { structure, geometry } = o.shelter;
  const scale = scaleAt(l.k);
  const w = structure.widthM;
  const P = (x: number, z: number): XY => [l.ox + x * l.k, l.ground - z * l.k];
  const plate = new Plate();
  headingFor(words.section, l.widthMm, scale, words, o.heading ?? true).draw(plate, scale);
  drawFrame(plate, o, P, l.k, words);
  plate.ground(P(0, 0)[0] - 6, P(w, 0)[0] + 6, l.ground);
  if (structure.kind !== 'leanTo') plate.line([P(w / 2, 0)[0], P(0, geometry.ridgeM)[1] - 4], [P(w / 2, 0)[0], l.ground + 2], 'axis');
  drawSlope(plate, o, P, words);
  let at = l.ground + GROUND_MM + 1;
  l.below.forEach((layout, i) => {
    at += i === 0 ? FIRST_CHAIN_MM - GROUND_MM : NEXT_CHAIN_MM;
    drawChain(plate, layout, { at, from: i === 0 ? l.ground + GROUND_MM : at - 3.2, side: 1 });
    at += layout.extraMm;
  });
  const edge = P(w, 0)[0] + bulgeRoomMm(o.shelter, l.k) + (structure.kind === 'leanTo' ? HOST_M * l.k : 0);
  let x = edge;
  l.right.forEach((layout, i) => {
    x += i === 0 ? FIRST_CHAIN_MM : NEXT_CHAIN_MM;
    const ridgeFrom = i > 0 ? x - 4 : structure.kind === 'leanTo' ? edge : P(w / 2, 0)[0] + 3;
    drawChain(plate, layout, {
      at: x,
      from: layout.stations.map((_, j) => (j === 0 ? null : j === layout.stations.length - 1 ? ridgeFrom : edge)),
      side: 1,
      vertical: true,
    });
    x += layout.extraMm;
  });
  return plate.finishHeld(l.widthMm, l.heightMm, altOf(o, words), scale, { fit: fitOf(level) });
}
