import { spokenLength } from '../lengths.js';
import { drawGridRing } from '../marks.js';
import type { FramePart, FramePictureOptions } from '../options.js';
import type { Member } from '../model-types.js';
import { placeMarks, type MarkToPlace } from '../place-labels.js';
import { Plate, type Stroke } from '../plate.js';
import type { Drawing, XY } from '../types.js';
import { ENGLISH } from '../words.js';
import { bowAt, cameraFor, fitView, p3, type P3, type View3 } from './space.js';

/** Today's work is thick, what stands already is thin, what goes away again is broken. Straps and boards are lighter than tubes. */
const TUBES: readonly FramePart[] = ['leg', 'rafter', 'bow', 'ridge', 'eave'];
function strokeOf(part: FramePart, o: FramePictureOptions): Stroke | null {
  if (o.today.has(part)) return TUBES.includes(part) || part === 'sill' ? 'cut' : 'vis';
  if (o.temporary.has(part)) return 'temp';
  return o.standing.has(part) ? 'thin' : null;
}

const pathOf = (m: Member, o: FramePictureOptions): P3[] => {
  if (m.role !== 'bow') return [p3(m.from), p3(m.to)];
  const leg = o.shelter.geometry.eaveM;
  return bowAt(o.shelter, m.from.yM).filter((p) => p[2] >= leg - 1e-6);
};

function drawMembers(plate: Plate, o: FramePictureOptions, view: View3): void {
  const far = (m: Member): number => view.depth([(m.from.xM + m.to.xM) / 2, (m.from.yM + m.to.yM) / 2, 0]);
  const order = ['thin', 'temp', 'vis', 'cut'];
  const list = o.shelter.geometry.members
    .map((m) => ({ m, stroke: strokeOf(m.role, o) }))
    .filter((x): x is { m: Member; stroke: Stroke } => x.stroke !== null)
    .sort((a, b) => order.indexOf(a.stroke) - order.indexOf(b.stroke) || far(b.m) - far(a.m));
  for (const { m, stroke } of list) plate.path(pathOf(m, o).map((p) => view.at(p)), stroke);
}

function drawFilm(plate: Plate, o: FramePictureOptions, view: View3): void {
  const stroke = strokeOf('film', o);
  if (stroke === null) return;
  const l = o.shelter.structure.lengthM;
  const front = bowAt(o.shelter, 0);
  front.slice(1).forEach((b, i) => {
    const a = front[i] ?? b;
    const normal: P3 = [-(b[2] - a[2]), 0, b[0] - a[0]];
    if (!view.faces(normal)) return;
    const corners = ([a, b, [b[0], l, b[2]], [a[0], l, a[2]]] as P3[]).map((p) => view.at(p));
    if (stroke === 'vis') plate.hatch(corners, { angleDeg: 62, gapMm: 2.8 });
  });
  for (const y of [0, l]) plate.poly(bowAt(o.shelter, y).map((p) => view.at(p)), stroke);
}

function drawOpenings(plate: Plate, o: FramePictureOptions, view: View3): void {
  const stroke = strokeOf('opening', o);
  if (stroke === null) return;
  for (const opening of o.shelter.geometry.openings) {
    if (!opening.fits || opening.corners.length !== 4) continue;
    const corners = opening.corners.map((c) => view.at(p3(c)));
    plate.poly(corners, stroke);
    const [a, , c] = corners;
    if (o.today.has('opening') && a && c) plate.line(a, c, 'thin');
  }
}

/** Two ropes from the ridge to the ground hold the frame while it is being squared. */
const ropesOf = (o: FramePictureOptions): [P3, P3][] => {
  const { widthM: w, kind } = o.shelter.structure;
  const { ridgeM } = o.shelter.geometry;
  const x = kind === 'leanTo' ? w : w / 2;
  return [[[x, 0, ridgeM], [x - w * 0.4, -ridgeM * 0.5, 0]], [[x, 0, ridgeM], [x + (kind === 'leanTo' ? 0 : w * 0.3), -ridgeM * 0.6, 0]]];
};

function markSpots(o: FramePictureOptions, view: View3): Partial<Record<string, XY>> {
  const { members, posts, ridgeM } = o.shelter.geometry;
  const { widthM: w, lengthM: l } = o.shelter.structure;
  const middle = (roles: readonly string[]): P3 | null => {
    const m = members.find((x) => roles.includes(x.role) && strokeOf(x.role, o) !== null);
    return m ? [(m.from.xM + m.to.xM) / 2, m.from.yM + (m.to.yM - m.from.yM) * 0.42, (m.from.zM + m.to.zM) / 2] : null;
  };
  const near = posts.find((p) => p.row === (o.shelter.structure.kind === 'leanTo' ? 'A' : 'B'));
  const rope = strokeOf('rope', o) === null ? undefined : ropesOf(o)[0];
  const spots: [string, P3 | null | undefined][] = [
    ['tube', middle(['ridge', 'rafter', 'leg'])],
    ['sill', middle(['sill'])],
    ['knee', middle(['knee'])],
    ['brace', middle(['brace'])],
    ['batten', strokeOf('batten', o) === null ? null : middle(['nailer'])],
    ['film', strokeOf('film', o) === null ? null : [w / 2, l * 0.5, ridgeM]],
    ['anchor', strokeOf('anchor', o) !== null && near ? p3(near.at) : null],
    ['rope', rope ? ([(rope[0][0] + rope[1][0]) / 2, (rope[0][1] + rope[1][1]) / 2, (rope[0][2] + rope[1][2]) / 2] as P3) : null],
  ];
  return Object.fromEntries(spots.filter((s): s is [string, P3] => s[1] !== null && s[1] !== undefined).map(([k, p]) => [k, view.at(p)]));
}

function drawGridRings(plate: Plate, o: FramePictureOptions, view: View3, off: number): void {
  const { geometry, structure } = o.shelter;
  const left = structure.kind === 'leanTo';
  const x = left ? -off : structure.widthM + off;
  for (const p of geometry.posts.filter((q) => q.row === (left ? 'A' : 'B'))) {
    const at = view.at([x, p.at.yM, 0]);
    if (plate.isFree({ x: at[0] - 2.6, y: at[1] - 2.6, w: 5.2, h: 5.2 }, 0.4)) drawGridRing(plate, at, String(p.number));
  }
  for (const [letter, px] of [['A', 0], ['B', structure.widthM]] as const) {
    const at = view.at([px, -off, 0]);
    if (plate.isFree({ x: at[0] - 2.6, y: at[1] - 2.6, w: 5.2, h: 5.2 }, 0.2)) drawGridRing(plate, at, letter);
  }
}

/** The frame on the day of one stage card, with the same grid letters as the plan. Not to scale. */
export function framePicture(o: FramePictureOptions): Drawing {
  const words = o.words ?? ENGLISH;
  const { widthM: w, lengthM: l } = o.shelter.structure;
  const { ridgeM, posts } = o.shelter.geometry;
  const off = Math.max(w, l) * 0.12 + 0.15;
  const ropes = strokeOf('rope', o) === null ? [] : ropesOf(o);
  const need: P3[] = [...bowAt(o.shelter, 0), ...bowAt(o.shelter, l), [-off, 0, 0], [0, -off, 0], [w + off, 0, 0], [w + off, l, 0], [-off, l, 0], [w, -off, 0], ...ropes.map((r) => r[1])];
  const marks = o.marks ?? [];
  const pad = marks.length > 0 ? 10 : 3;
  const view = fitView(need, o.boxMm.wMm, o.boxMm.hMm, cameraFor(o.shelter, 24), { top: pad, right: Math.max(pad, 3.5), bottom: Math.max(pad - 5, 3.5), left: Math.max(pad, 3.5) });
  const plate = new Plate();
  const ground = strokeOf('ground', o);
  plate.poly(([[0, 0, 0], [w, 0, 0], [w, l, 0], [0, l, 0]] as P3[]).map((p) => view.at(p)), ground ?? 'thin');
  if (ground === 'vis') for (const [a, b] of [[[0, 0, 0], [w, l, 0]], [[w, 0, 0], [0, l, 0]]] as [P3, P3][]) plate.line(view.at(a), view.at(b), 'axis');
  drawMembers(plate, o, view);
  drawFilm(plate, o, view);
  drawOpenings(plate, o, view);
  for (const [a, b] of ropes) plate.line(view.at(a), view.at(b), o.today.has('rope') && !o.temporary.has('rope') ? 'vis' : 'temp');
  drawFeet(plate, o, view);
  drawGridRings(plate, o, view, off);
  const spots = markSpots(o, view);
  const placed = marks.flatMap((m): MarkToPlace[] => {
    const opening = typeof m.target === 'string' ? null : m.target.openingId;
    const found = opening === null ? undefined : o.shelter.geometry.openings.find((x) => x.openingId === opening && x.corners.length === 4);
    const at = found ? view.at([mean(found.corners.map((c) => c.xM)), mean(found.corners.map((c) => c.yM)), mean(found.corners.map((c) => c.zM))]) : typeof m.target === 'string' ? spots[m.target] : undefined;
    return at === undefined ? [] : [{ label: m.label, source: m.source, at }];
  });
  placeMarks(plate, placed, { x: 0.4, y: 0.4, w: o.boxMm.wMm - 0.8, h: o.boxMm.hMm - 0.8 });
  const alt = `${words.framePicture}: ${posts.length} ${words.posts}, ${spokenLength(w, o.units)} ${words.wide}, ${spokenLength(l, o.units)} ${words.long}, ${spokenLength(ridgeM, o.units)} ${words.high}. ${words.notToScale}.`;
  return plate.finish(o.boxMm.wMm, o.boxMm.hMm, alt);
}
const mean = (values: readonly number[]): number => values.reduce((a, b) => a + b, 0) / Math.max(values.length, 1);

/** Feet as dots; anchors worked on today as circles with a cross. */
function drawFeet(plate: Plate, o: FramePictureOptions, view: View3): void {
  const anchors = strokeOf('anchor', o);
  for (const p of o.shelter.geometry.posts) {
    const c = view.at(p3(p.at));
    if (anchors === 'vis') {
      plate.circle(c, 1.6, 'face');
      plate.line([c[0] - 1.6, c[1]], [c[0] + 1.6, c[1]], 'vis');
      plate.line([c[0], c[1] - 1.6], [c[0], c[1] + 1.6], 'vis');
    } else plate.circle(c, 0.9, 'dot');
    plate.avoid({ x: c[0] - 1.7, y: c[1] - 1.7, w: 3.4, h: 3.4 });
  }
}
