import type { Post } from '../model-types.js';
import type { Plate } from '../plate.js';
import { drawAnchor, drawGridRing, GRID_RING_MM } from '../marks.js';
import { HATCH } from '../primitives.js';
import type { Shelter, XY } from '../types.js';
import type { Words } from '../words.js';
import { hostName, HOST_M, openingsIn, tubeM, type SeenOpening, type ViewName } from './shelter.js';

/** Shelter metres (x across, y front to back) to paper. */
export type OnPlan = (x: number, y: number) => XY;

/** How a plan lies on its paper. */
export interface OnPaper {
  P: OnPlan;
  /** Paper mm to the metre. */
  k: number;
  lying: boolean;
}

/** Front at the bottom; or, lying on its side, front at the left and the left side on top. */
export const planProjection = (lying: boolean, k: number, ox: number, oy: number): OnPlan =>
  lying ? (x, y) => [ox + y * k, oy + x * k] : (x, y) => [ox + x * k, oy - y * k];

export const WALL_NAMES: readonly ViewName[] = ['front', 'back', 'left', 'right'];

/** Where a stretch of wall lies on the ground; positions run from the wall's left end as seen from outside. */
function onWall(view: ViewName, { structure }: Shelter): (u: number, out: number) => [number, number] {
  const { widthM: w, lengthM: l } = structure;
  if (view === 'front') return (u, out) => [u, -out];
  if (view === 'back') return (u, out) => [w - u, l + out];
  return view === 'left' ? (u, out) => [-out, l - u] : (u, out) => [w + out, u];
}

const WALL_M = 0.09;

function drawPlanOpening(plate: Plate, P: OnPlan, view: ViewName, shelter: Shelter, s: SeenOpening, k: number): void {
  const at = onWall(view, shelter);
  const p = (u: number, out: number): XY => P(...at(u, out));
  plate.poly([p(s.u1, -WALL_M / 2), p(s.u2, -WALL_M / 2), p(s.u2, WALL_M / 2), p(s.u1, WALL_M / 2)], 'facethin');
  for (const u of [s.u1, s.u2]) plate.line(p(u, -WALL_M / 2), p(u, WALL_M / 2), 'cut');
  const { kind, hinge } = s.opening;
  if (kind !== 'door' || (hinge !== 'left' && hinge !== 'right')) return;
  const leaf = s.u2 - s.u1;
  const [pin, free] = hinge === 'left' ? [s.u1, s.u2] : [s.u2, s.u1];
  plate.line(p(pin, 0), p(pin, leaf), 'vis');
  const [from, to, centre] = [p(pin, leaf), p(free, 0), p(pin, 0)];
  const turn = (from[0] - centre[0]) * (to[1] - centre[1]) - (from[1] - centre[1]) * (to[0] - centre[0]);
  plate.arc(from, to, leaf * k, turn > 0 ? 1 : 0);
}

/** How far an open door reaches out of a wall. */
export const swingM = (view: ViewName, shelter: Shelter): number =>
  Math.max(
    0,
    ...openingsIn(view, shelter)
      .filter((s) => s.opening.kind === 'door')
      .map((s) => s.u2 - s.u1),
  );

export function drawWalls(plate: Plate, shelter: Shelter, { P, k, lying }: OnPaper, words: Words, openings = true): void {
  const { widthM: w, lengthM: l, kind } = shelter.structure;
  const e = tubeM(shelter) / 2;
  if (kind === 'leanTo') {
    const host: XY[] = [P(w + e, 0), P(w + e + HOST_M, 0), P(w + e + HOST_M, l), P(w + e, l)];
    plate.poly(host, 'face');
    plate.hatch(host, HATCH.close);
    hostName(plate, P(w + e + HOST_M / 2, l / 2), HOST_M * k, lying, words);
  }
  plate.poly([P(0, 0), P(w, 0), P(w, l), P(0, l)], 'cut');
  if (!openings) return;
  for (const view of WALL_NAMES) for (const s of openingsIn(view, shelter)) drawPlanOpening(plate, P, view, shelter, s, k);
}

export const stationsM = ({ geometry }: Shelter): Post[] => geometry.posts.filter((p) => p.row === 'A').sort((a, b) => a.at.yM - b.at.yM);

/** Bows, grid rings and numbers. Where the bows stand closer than the rings, only some get a ring; the first and last always do. */
export function drawGrid(plate: Plate, shelter: Shelter, { P, k, lying }: OnPaper, ringsOffMm: number, lettersOffMm: number): void {
  const { widthM: w } = shelter.structure;
  const posts = stationsM(shelter);
  const spacing = shelter.geometry.posts.length > 2 ? (Math.max(...posts.map((p) => p.at.yM)) / Math.max(posts.length - 1, 1)) * k : 100;
  const every = Math.max(1, Math.ceil((2 * GRID_RING_MM + 1.2) / Math.max(spacing, 0.1)));
  posts.forEach((post, i) => {
    const y = post.at.yM;
    const [px, py] = P(0, y);
    const [qx, qy] = P(w, y);
    const last = posts.length - 1;
    const ring = i === last || (i % every === 0 && (last - i >= every || i === 0));
    const centre: XY = lying ? [px, py - ringsOffMm] : [px - ringsOffMm, py];
    const start: XY = ring ? (lying ? [px, centre[1] + GRID_RING_MM] : [centre[0] + GRID_RING_MM, py]) : [px, py];
    plate.line(start, lying ? [qx, qy + 2] : [qx + 2, qy], 'axis');
    if (ring) drawGridRing(plate, centre, String(post.number));
  });
  (['A', 'B'] as const).forEach((letter) => {
    const [px, py] = P(letter === 'A' ? 0 : w, 0);
    const centre: XY = lying ? [px - lettersOffMm, py] : [px, py + lettersOffMm];
    plate.line(lying ? [centre[0] + GRID_RING_MM, py] : [px, centre[1] - GRID_RING_MM], lying ? [px + 3, py] : [px, py - 3], 'axis');
    drawGridRing(plate, centre, letter);
  });
}

/** Posts solid, with an anchor beside each where one is planned. */
export function drawPosts(plate: Plate, shelter: Shelter, { P, k, lying }: OnPaper, anchors: boolean): void {
  const r = Math.max(0.75, (tubeM(shelter) * k) / 2);
  for (const post of shelter.geometry.posts) {
    const c = P(post.at.xM, post.at.yM);
    plate.circle(c, r, 'poche');
    plate.avoid({ x: c[0] - r, y: c[1] - r, w: 2 * r, h: 2 * r });
    if (!anchors || (shelter.structure.kind === 'leanTo' && post.row === 'B')) continue;
    const side = post.row === 'A' ? -1 : 1;
    drawAnchor(plate, lying ? [c[0], c[1] + side * 3] : [c[0] + side * 3, c[1]]);
  }
}
