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
  for (const { m, stroke } of list)
    plate.path(
      pathOf(m, o).map((p) => view.at(p)),
      stroke,
    );
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
  for (const y of [0, l])
    plate.poly(
      bowAt(o.shelter, y).map((p) => view.at(p)),
      stroke,
    );
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
  return [
    [
      [x, 0, ridgeM],
      [x - w * 0.4, -ridgeM * 0.5, 0],
    ],
    [
      [x, 0, ridgeM],
      [x + (kind === 'leanTo' ? 0 : w * 0.3), -ridgeM * 0.6, 0],
    ],
  ];
};

/** Spots on the nearest members of a kind, so that a mark finds room about one of them. */
function spotsOn(o: FramePictureOptions, view: View3, roles: readonly FramePart[]): XY[] {
  return o.shelter.geometry.members
    .filter((m) => roles.includes(m.role) && strokeOf(m.role, o) !== null && m.role !== 'bow')
    .sort((a, b) => view.depth(p3(a.from)) - view.depth(p3(b.from)))
    .slice(0, 6)
    .flatMap((m) =>
      [0.42, 0.65, 0.25].map((f) =>
        view.at([m.from.xM + (m.to.xM - m.from.xM) * f, m.from.yM + (m.to.yM - m.from.yM) * f, m.from.zM + (m.to.zM - m.from.zM) * f]),
      ),
    );
}

function markSpots(o: FramePictureOptions, view: View3): Partial<Record<string, XY[]>> {
  const { posts, ridgeM } = o.shelter.geometry;
  const { widthM: w, lengthM: l, kind } = o.shelter.structure;
  const top = kind === 'leanTo' ? w : w / 2;
  const side = posts.filter((p) => p.row === (kind === 'leanTo' ? 'A' : 'B'));
  return {
    tube: spotsOn(o, view, ['ridge', 'rafter', 'leg', 'eave']),
    sill: spotsOn(o, view, ['sill']),
    knee: spotsOn(o, view, ['knee']),
    brace: spotsOn(o, view, ['brace']),
    batten: strokeOf('batten', o) === null ? [] : spotsOn({ ...o, standing: new Set([...o.standing, 'nailer']) }, view, ['nailer']),
    film: strokeOf('film', o) === null ? [] : [0.5, 0.3, 0.7, 0.15].map((f) => view.at([top, l * f, ridgeM])),
    anchor: strokeOf('anchor', o) === null ? [] : side.map((p) => view.at(p3(p.at))),
    rope:
      strokeOf('rope', o) === null
        ? []
        : ropesOf(o).flatMap(([a, b]) => [0.5, 0.7, 0.3].map((f) => view.at([a[0] + (b[0] - a[0]) * f, a[1] + (b[1] - a[1]) * f, a[2] + (b[2] - a[2]) * f]))),
  };
}

function drawGridRings(plate: Plate, o: FramePictureOptions, view: View3, off: number): void {
  const { geometry, structure } = o.shelter;
  const left = structure.kind === 'leanTo';
  const x = left ? -off : structure.widthM + off;
  for (const p of geometry.posts.filter((q) => q.row === (left ? 'A' : 'B'))) {
    const at = view.at([x, p.at.yM, 0]);
    if (plate.isFree({ x: at[0] - 2.6, y: at[1] - 2.6, w: 5.2, h: 5.2 }, 0.4)) drawGridRing(plate, at, String(p.number));
  }
  for (const [letter, px] of [
    ['A', 0],
    ['B', structure.widthM],
  ] as const) {
    const at = view.at([px, -off, 0]);
    if (plate.isFree({ x: at[0] - 2.6, y: at[1] - 2.6, w: 5.2, h: 5.2 }, 0.2)) drawGridRing(plate, at, letter);
  }
}

function marksOf(o: FramePictureOptions, view: View3): MarkToPlace[] {
  const spots = markSpots(o, view);
  return (o.marks ?? []).flatMap((m): MarkToPlace[] => {
    const opening = typeof m.target === 'string' ? null : m.target.openingId;
    const found = opening === null ? undefined : o.shelter.geometry.openings.find((x) => x.openingId === opening && x.corners.length === 4);
    const on = found
      ? [view.at([mean(found.corners.map((c) => c.xM)), mean(found.corners.map((c) => c.yM)), mean(found.corners.map((c) => c.zM))])]
      : typeof m.target === 'string'
        ? (spots[m.target] ?? [])
        : [];
    const [at, ...otherSpots] = on;
    return at === undefined ? [] : [{ label: m.label, source: m.source, at, otherSpots }];
  });
}

/** The frame on the day of one stage card, with the same grid letters as the plan. Not to scale. */
export function framePicture(o: FramePictureOptions): Drawing {
  const words = o.words ?? ENGLISH;
  const { widthM: w, lengthM: l } = o.shelter.structure;
  const { ridgeM, posts } = o.shelter.geometry;
  const off = Math.max(w, l) * 0.12 + 0.15;
  const ropes = strokeOf('rope', o) === null ? [] : ropesOf(o);
  const need: P3[] = [
    ...bowAt(o.shelter, 0),
    ...bowAt(o.shelter, l),
    [-off, 0, 0],
    [0, -off, 0],
    [w + off, 0, 0],
    [w + off, l, 0],
    [-off, l, 0],
    [w, -off, 0],
    ...ropes.map((r) => r[1]),
  ];
  const marks = o.marks ?? [];
  const pad = marks.length > 0 ? 10 : 3;
  const view = fitView(need, o.boxMm.wMm, o.boxMm.hMm, cameraFor(o.shelter, 24), {
    top: pad,
    right: Math.max(pad, 3.5),
    bottom: Math.max(pad - 5, 3.5),
    left: Math.max(pad, 3.5),
  });
  const plate = new Plate();
  const ground = strokeOf('ground', o);
  plate.poly(
    (
      [
        [0, 0, 0],
        [w, 0, 0],
        [w, l, 0],
        [0, l, 0],
      ] as P3[]
    ).map((p) => view.at(p)),
    ground ?? 'thin',
  );
  if (ground === 'vis')
    for (const [a, b] of [
      [
        [0, 0, 0],
        [w, l, 0],
      ],
      [
        [w, 0, 0],
        [0, l, 0],
      ],
    ] as [P3, P3][])
      plate.line(view.at(a), view.at(b), 'axis');
  drawMembers(plate, o, view);
  drawFilm(plate, o, view);
  drawOpenings(plate, o, view);
  for (const [a, b] of ropes) plate.line(view.at(a), view.at(b), o.today.has('rope') && !o.temporary.has('rope') ? 'vis' : 'temp');
  drawFeet(plate, o, view);
  drawGridRings(plate, o, view, off);
  const unplaced = placeMarks(plate, marksOf(o, view), { x: 0.4, y: 0.4, w: o.boxMm.wMm - 0.8, h: o.boxMm.hMm - 0.8 });
  const alt = `${words.framePicture}: ${posts.length} ${words.posts}, ${spokenLength(w, o.units)} ${words.wide}, ${spokenLength(l, o.units)} ${words.long}, ${spokenLength(ridgeM, o.units)} ${words.high}. ${words.notToScale}.`;
  return plate.finish(o.boxMm.wMm, o.boxMm.hMm, alt, null, { unplaced });
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
