import type { Member } from '../model-types.js';
import type { Plate } from '../plate.js';
import { HATCH } from '../primitives.js';
import type { Shelter, XY } from '../types.js';
import type { Words } from '../words.js';
import {
  alongWall,
  band,
  hostName,
  HOST_M,
  membersIn,
  openingsIn,
  profile,
  SILL_M,
  spanOf,
  STUD_M,
  tubeM,
  type SeenOpening,
  type ViewName,
} from './shelter.js';

type Project = (u: number, z: number) => XY;

interface WallBox {
  u1: number;
  z1: number;
  u2: number;
  z2: number;
}
const box = (plate: Plate, P: Project, { u1, z1, u2, z2 }: WallBox, stroke: 'face' | 'thin' = 'face'): void =>
  plate.poly([P(u1, z1), P(u2, z1), P(u2, z2), P(u1, z2)], stroke);

/** The sign of a hinged opening: its point lies at the hinge. */
function openingSign(plate: Plate, P: Project, s: SeenOpening, inset: number): void {
  const [u1, u2, z1, z2] = [s.u1 + inset, s.u2 - inset, s.z1 + inset, s.z2 - inset];
  const middleU = (u1 + u2) / 2;
  const middleZ = (z1 + z2) / 2;
  const { hinge } = s.opening;
  if (hinge === 'left') plate.path([P(u2, z1), P(u1, middleZ), P(u2, z2)], 'thin');
  if (hinge === 'right') plate.path([P(u1, z1), P(u2, middleZ), P(u1, z2)], 'thin');
  if (hinge === 'top') plate.path([P(u1, z1), P(middleU, z2), P(u2, z1)], 'thin');
}

function drawOpening(plate: Plate, P: Project, s: SeenOpening, k: number): void {
  box(plate, P, s);
  const inset = Math.max(0.04, 0.8 / k);
  if (s.u2 - s.u1 > 4 * inset && s.z2 - s.z1 > 4 * inset) box(plate, P, { u1: s.u1 + inset, z1: s.z1 + inset, u2: s.u2 - inset, z2: s.z2 - inset }, 'thin');
  openingSign(plate, P, s, inset);
  if (s.opening.kind === 'door' && s.opening.hinge !== 'none' && s.opening.hinge !== 'top') {
    const knob = s.opening.hinge === 'left' ? s.u2 - inset * 2 : s.u1 + inset * 2;
    plate.circle(P(knob, s.z1 + Math.min(0.95, (s.z2 - s.z1) / 2)), 0.6, 'face');
  }
}

/** Boards about the openings stand outside them: the opening is the rough size. */
function drawBoards(plate: Plate, P: Project, view: ViewName, shelter: Shelter, k: number, seen: readonly SeenOpening[]): void {
  const along = alongWall(view, shelter);
  const thick = STUD_M * k >= 1.05;
  const stud = (m: Member): void => {
    const u = along(m.from);
    const top = Math.max(m.from.zM, m.to.zM);
    const own = seen.find((s) => m.memberId.startsWith(`${s.opening.openingId}-`));
    const outward = own && Math.abs(u - own.u1) < Math.abs(u - own.u2) ? -STUD_M : STUD_M;
    if (thick) box(plate, P, { u1: Math.min(u, u + outward), z1: 0, u2: Math.max(u, u + outward), z2: top - 0.01 });
    else plate.line(P(u, 0), P(u, top), 'thin');
  };
  const level = (m: Member, up: number): void => {
    const u1 = Math.min(along(m.from), along(m.to));
    const u2 = Math.max(along(m.from), along(m.to));
    if (thick) box(plate, P, { u1, z1: Math.min(m.from.zM, m.from.zM + up), u2, z2: Math.max(m.from.zM, m.from.zM + up) });
    else plate.line(P(u1, m.from.zM), P(u2, m.from.zM), 'vis');
  };
  for (const m of membersIn(view, shelter)) {
    if (m.role === 'stud') stud(m);
    else if (m.role === 'header') level(m, STUD_M);
    else if (m.role === 'openingSill') level(m, -STUD_M);
    else if (m.role === 'sill') level(m, SILL_M);
  }
}

function endWall(plate: Plate, P: Project, view: ViewName, shelter: Shelter, k: number): void {
  const width = shelter.structure.widthM;
  const od = tubeM(shelter) * k;
  const line = profile(shelter).map((p): XY => P(view === 'back' ? width - p.x : p.x, p.z));
  if (shelter.structure.kind === 'roundArch') {
    band(plate, line, od);
    const spring = shelter.geometry.eaveM;
    if (spring > 0.05) for (const u of [0, width]) joint(plate, P(u, spring), od);
  } else {
    for (let i = 0; i + 1 < line.length; i++) band(plate, [line[i] ?? [0, 0], line[i + 1] ?? [0, 0]], od);
    line.slice(1, -1).forEach((p) => joint(plate, p, od));
  }
  const middle = width / 2;
  if (shelter.structure.kind !== 'leanTo')
    plate.line([P(middle, 0)[0], P(0, shelter.geometry.ridgeM)[1] - 3.5], [P(middle, 0)[0], P(0, shelter.geometry.ridgeM)[1] + 3.5], 'axis');
}
/** A fitting at a joint. No mark may cover it. */
function joint(plate: Plate, at: XY, od: number): void {
  const r = Math.max(0.8, od * 0.62);
  plate.circle(at, r, 'face');
  plate.avoid({ x: at[0] - r, y: at[1] - r, w: 2 * r, h: 2 * r });
}

function sideWall(plate: Plate, P: Project, view: ViewName, shelter: Shelter, k: number): void {
  const { geometry, structure } = shelter;
  const length = structure.lengthM;
  const high = structure.kind === 'leanTo' && view === 'right';
  const eave = high ? geometry.ridgeM : geometry.eaveM;
  const od = tubeM(shelter) * k;
  const along = alongWall(view, shelter);
  const stations = geometry.posts.filter((p) => p.row === (view === 'left' ? 'A' : 'B')).map((p) => along(p.at));
  for (const u of stations) if (!high && geometry.ridgeM > eave) plate.line(P(u, eave), P(u, geometry.ridgeM), 'thin');
  for (const m of membersIn(view, shelter)) if (m.role === 'brace') plate.line(P(along(m.from), m.from.zM), P(along(m.to), m.to.zM), 'vis');
  for (const u of stations) {
    if (eave > 0.05) band(plate, [P(u, 0), P(u, eave)], od);
    plate.avoid({ x: P(u, eave)[0] - 1, y: P(u, eave)[1] - 1, w: 2, h: 2 });
  }
  if (eave > 0.05) band(plate, [P(0, eave), P(length, eave)], od);
  if (!high) plate.path([P(0, eave), P(0, geometry.ridgeM), P(length, geometry.ridgeM), P(length, eave)], 'vis');
}

/** The wall a lean-to stands against: cut, so hatched. */
function hostWall(plate: Plate, P: Project, view: ViewName, shelter: Shelter, words: Words): void {
  const host = shelter.structure.hostWall;
  if (shelter.structure.kind !== 'leanTo' || (view !== 'front' && view !== 'back')) return;
  const top = Math.min(host?.heightM ?? shelter.geometry.ridgeM, shelter.geometry.ridgeM);
  const width = shelter.structure.widthM;
  const [u1, u2] = view === 'front' ? [width + 0.03, width + HOST_M] : [-HOST_M, -0.03];
  const corners: XY[] = [P(u1, 0), P(u2, 0), P(u2, top), P(u1, top)];
  plate.poly(corners, 'face');
  plate.hatch(corners, HATCH.close);
  hostName(plate, P((u1 + u2) / 2, top * 0.4), Math.abs(P(u2, 0)[0] - P(u1, 0)[0]), false, words);
}

/** Everything that is seen of one wall, from the back to the front. */
export function drawWall(plate: Plate, view: ViewName, shelter: Shelter, P: Project, k: number, words: Words): void {
  const span = spanOf(view, shelter);
  const seen = openingsIn(view, shelter);
  const end = view === 'front' || view === 'back';
  hostWall(plate, P, view, shelter, words);
  if (!end) sideWall(plate, P, view, shelter, k);
  drawBoards(plate, P, view, shelter, k, seen);
  if (end) endWall(plate, P, view, shelter, k);
  for (const s of seen) drawOpening(plate, P, s, k);
  plate.ground(P(0, 0)[0] - 6, P(span, 0)[0] + 6, P(0, 0)[1]);
}
