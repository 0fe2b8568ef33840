import { lengthPair, spokenLength } from '../lengths.js';
import { Plate } from '../plate.js';
import { boxesMeet, HATCH, turnedCorners } from '../primitives.js';
import type { Drawing, ViewOptions, XY } from '../types.js';
import { ENGLISH } from '../words.js';
import { openingsIn, openingWords } from './shelter.js';
import { bowAt, cameraFor, fitView, type P3, type View3 } from './space.js';

const add = (p: P3, d: P3, t: number): P3 => [p[0] + d[0] * t, p[1] + d[1] * t, p[2] + d[2] * t];

const LINE_MM = 4.8;

interface Slanted {
  a: P3;
  b: P3;
  out: P3;
  text: string;
  side: 1 | -1;
}
interface SlantedPlace {
  ends: [XY, XY];
  at: XY;
  turnDeg: number;
  corners: XY[];
}
/** A dimension parallel to an edge of the picture; the letters stand on its far side, slanted with it. */
function placeSlanted(view: View3, { a, b, out, text, side }: Slanted): SlantedPlace {
  const [A, B] = [view.at(add(a, out, 1)), view.at(add(b, out, 1))];
  let turnDeg = (Math.atan2(B[1] - A[1], B[0] - A[0]) * 180) / Math.PI;
  if (turnDeg > 89.9) turnDeg -= 180;
  if (turnDeg < -90.1) turnDeg += 180;
  const t = (turnDeg * Math.PI) / 180;
  const off = side > 0 ? 3.9 : -1;
  const at: XY = [(A[0] + B[0]) / 2 - Math.sin(t) * off, (A[1] + B[1]) / 2 + Math.cos(t) * off];
  return { ends: [A, B], at, turnDeg, corners: turnedCorners(at[0], at[1], text, 'let', turnDeg) };
}
function drawSlanted(plate: Plate, view: View3, s: Slanted): void {
  const { ends, at, turnDeg } = placeSlanted(view, s);
  plate.line(ends[0], ends[1], 'thin');
  for (const p of [s.a, s.b]) plate.line(view.at(add(p, s.out, 0.14)), view.at(add(p, s.out, 1.12)), 'thin');
  for (const p of ends) plate.line([p[0] - 1.1, p[1] + 1.1], [p[0] + 1.1, p[1] - 1.1], 'tick');
  plate.textSlanted(at[0], at[1], s.text, turnDeg);
}

interface SideFace {
  corners: P3[];
  normal: P3;
  roof: boolean;
}
function skins(o: ViewOptions): { sides: SideFace[]; front: P3[] } {
  const { lengthM: l } = o.shelter.structure;
  const front = bowAt(o.shelter, 0);
  const sides = front.slice(1).map((b, i): SideFace => {
    const a = front[i] ?? b;
    const normal: P3 = [-(b[2] - a[2]), 0, b[0] - a[0]];
    return { corners: [a, b, [b[0], l, b[2]], [a[0], l, a[2]]], normal, roof: Math.abs(b[0] - a[0]) > Math.abs(b[2] - a[2]) * 0.25 };
  });
  return { sides, front };
}

function hostCorners(o: ViewOptions): P3[] {
  const { widthM: w, lengthM: l, hostWall, kind } = o.shelter.structure;
  const top = Math.min(hostWall?.heightM ?? o.shelter.geometry.ridgeM, o.shelter.geometry.ridgeM * 1.12);
  return kind === 'leanTo'
    ? [
        [w, -0.35, 0],
        [w, l + 0.35, 0],
        [w, l + 0.35, top],
        [w, -0.35, top],
      ]
    : [];
}
function drawHost(plate: Plate, o: ViewOptions, view: View3): void {
  const wall = hostCorners(o).map((p) => view.at(p));
  plate.poly(wall, 'face');
  plate.hatch(wall, { angleDeg: 45, gapMm: 3.2 });
}

function drawOpenings(plate: Plate, o: ViewOptions, view: View3): void {
  const left = o.shelter.structure.kind === 'leanTo';
  const walls = left ? (['front', 'left'] as const) : (['front', 'right'] as const);
  for (const wall of walls)
    for (const { opening } of openingsIn(wall, o.shelter)) {
      const at = opening.corners.map((c): P3 => [c.xM, c.yM, c.zM]);
      const mid: P3 = [at.reduce((s, p) => s + p[0], 0) / 4, at.reduce((s, p) => s + p[1], 0) / 4, at.reduce((s, p) => s + p[2], 0) / 4];
      plate.poly(
        at.map((p) => view.at(p)),
        'face',
      );
      plate.poly(
        at.map((p) => view.at([mid[0] + (p[0] - mid[0]) * 0.78, mid[1] + (p[1] - mid[1]) * 0.78, mid[2] + (p[2] - mid[2]) * 0.86])),
        'thin',
      );
    }
}

/** The finished shelter as one sees it, with width, length and height. Faces are drawn from the back to the front. */
export function pictorial(o: ViewOptions): Drawing {
  const words = o.words ?? ENGLISH;
  const { widthM: w, lengthM: l, kind } = o.shelter.structure;
  const { ridgeM } = o.shelter.geometry;
  const leanTo = kind === 'leanTo';
  const { sides, front } = skins(o);
  const back = bowAt(o.shelter, l);
  const off = Math.max(w, l) * 0.1;
  const sideX = leanTo ? 0 : w;
  const outX: P3 = [leanTo ? -off : off, 0, 0];
  const high: P3 = [sideX, l, 0];
  const need: P3[] = [
    ...hostCorners(o),
    ...front,
    ...back,
    [0, -off, 0],
    [w, -off, 0],
    add([sideX, 0, 0], outX, 1),
    add([sideX, l, ridgeM], outX, 1),
    add(high, outX, 1),
  ];
  const wanted: Slanted[] = [
    { a: [0, 0, 0], b: [w, 0, 0], out: [0, -off, 0], text: lengthPair(w, o.units), side: 1 },
    { a: [sideX, 0, 0], b: [sideX, l, 0], out: outX, text: lengthPair(l, o.units), side: 1 },
    { a: high, b: [sideX, l, ridgeM], out: outX, text: lengthPair(ridgeM, o.units), side: leanTo ? -1 : 1 },
  ];
  const { view, dimensions } = roomyView(o, need, wanted);
  const plate = new Plate();
  if (leanTo) drawHost(plate, o, view);
  const seen = sides.filter((s) => view.faces(s.normal)).sort((a, b) => Math.max(...b.corners.map(view.depth)) - Math.max(...a.corners.map(view.depth)));
  for (const s of seen) {
    const corners = s.corners.map((p) => view.at(p));
    plate.poly(corners, kind === 'roundArch' ? 'blank' : 'face');
    if (s.roof && kind !== 'roundArch') plate.hatch(corners, { ...HATCH.wide, angleDeg: leanTo ? -66 : 66, gapMm: 2.8 });
  }
  for (const post of o.shelter.geometry.posts.filter((p) => p.row === (leanTo ? 'A' : 'B') && p.at.yM > 0.05 && p.at.yM < l - 0.05)) {
    const bow = bowAt(o.shelter, post.at.yM);
    const shown = bow.slice(1).flatMap((b, i): [P3, P3][] => (view.faces(sides[i]?.normal ?? [0, 0, 1]) ? [[bow[i] ?? b, b]] : []));
    for (const [a, b] of shown) if (kind === 'roundArch' || Math.abs(a[0] - b[0]) < 1e-6) plate.line(view.at(a), view.at(b), 'thin');
  }
  plate.poly(
    front.map((p) => view.at(p)),
    'face',
  );
  drawOpenings(plate, o, view);
  outline(plate, view, sides, front);
  for (const d of dimensions) drawSlanted(plate, view, d);
  if (dimensions.length === 0)
    wanted.forEach((d, i) =>
      plate.text(o.boxMm.wMm / 2, o.boxMm.hMm - 1.5 - LINE_MM * (2 - i), `${d.text} ${[words.wide, words.long, words.high][i] ?? ''}`, 'let', 'middle'),
    );
  const doors = openingsIn('front', o.shelter);
  const alt = `${spokenLength(w, o.units)} ${words.wide}, ${spokenLength(l, o.units)} ${words.long}, ${spokenLength(ridgeM, o.units)} ${words.high}${doors.length > 0 ? `. ${openingWords(doors, o.units)}` : ''}. ${words.notToScale}.`;
  return plate.finish(o.boxMm.wMm, o.boxMm.hMm, alt);
}

/** Largest picture whose three dimensions stay on the paper and clear of each other: the picture gives way, never the letters. */
function roomyView(o: ViewOptions, need: readonly P3[], wanted: readonly Slanted[]): { view: View3; dimensions: Slanted[] } {
  const { wMm, hMm } = o.boxMm;
  // A dimension shorter than its letters is set farther out, clear of its neighbour's.
  for (const [heightDeg, widthBy, heightBy] of [
    [16, 1, 1],
    [24, 1, 1],
    [16, 1.8, 1],
    [24, 1.8, 1],
    [24, 1, 2.2],
    [24, 2.8, 1],
    [24, 1, 3.6],
    [24, 2, 3],
    [34, 3.6, 1],
    [34, 2, 5],
  ] as const) {
    const outBy = [widthBy, 1, heightBy];
    const dimensions = wanted.map((d, i): Slanted => ({ ...d, out: [d.out[0] * (outBy[i] ?? 1), d.out[1] * (outBy[i] ?? 1), d.out[2]] }));
    for (let pad = 3; pad < Math.min(wMm, hMm) * 0.42; pad += 1.5) {
      const view = fitView(need, wMm, hMm, cameraFor(o.shelter, heightDeg), { top: Math.min(pad, 12), right: pad, bottom: pad + 2, left: pad });
      const places = dimensions.map((d) => placeSlanted(view, d));
      const onPaper = places.every((p) => p.corners.every(([x, y]) => x > 0.2 && y > 0.2 && x < wMm - 0.2 && y < hMm - 0.2));
      if (onPaper && places.every((p, i) => places.slice(i + 1).every((q) => !boxesMeet(p.corners, q.corners)))) return { view, dimensions };
    }
  }
  // A small tall shelter has no edge long enough for its letters: the three sizes then stand in lines under the picture.
  return { view: fitView(need, wMm, hMm, cameraFor(o.shelter, 16), { top: 3, right: 3, bottom: 3 + LINE_MM * 3, left: 3 }), dimensions: [] };
}

/** The thick outline: edges between what is seen and what is not, and all of the front. */
function outline(plate: Plate, view: View3, sides: readonly SideFace[], front: readonly P3[]): void {
  const seen = sides.map((s) => view.faces(s.normal));
  sides.forEach((s, i) => {
    if (!seen[i]) return;
    const [a, b, bBack, aBack] = s.corners;
    if (!a || !b || !aBack || !bBack) return;
    plate.line(view.at(aBack), view.at(bBack), 'cut');
    if (seen[i - 1] !== true) plate.line(view.at(a), view.at(aBack), 'cut');
    if (seen[i + 1] !== true) plate.line(view.at(b), view.at(bBack), 'cut');
  });
  plate.poly(
    front.map((p): XY => view.at(p)),
    'cut',
  );
}
