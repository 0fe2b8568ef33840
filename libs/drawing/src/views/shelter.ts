import type { Member, PlacedOpening, Point } from '../model-types.js';
import { spokenLength } from '../lengths.js';
import type { Plate } from '../plate.js';
import { capHeight, textWidth } from '../primitives.js';
import { barLengths, drawScaleBar, SCALE_BAR_HEIGHT_MM } from '../scale.js';
import type { Scale, Shelter, UnitSystem, XY } from '../types.js';
import type { Words } from '../words.js';

export type ViewName = 'front' | 'back' | 'left' | 'right';

/** Outside width of a tube that nobody measured, for the drawing only: it stands in no number. */
const DRAWN_TUBE_M = 0.038;
export const tubeM = (shelter: Shelter): number => (shelter.structure.tube.outsideMm === 'unknown' ? DRAWN_TUBE_M : shelter.structure.tube.outsideMm / 1000);
/** Seen faces of the boards: a stud's edge and the height of a sill plate. */
export const STUD_M = 0.038;
export const SILL_M = 0.089;

export const spanOf = (view: ViewName, { structure }: Shelter): number => (view === 'front' || view === 'back' ? structure.widthM : structure.lengthM);

/** How far along the wall a point stands, from the wall's left end as seen from outside. */
export function alongWall(view: ViewName, shelter: Shelter): (p: Point) => number {
  const { widthM, lengthM } = shelter.structure;
  if (view === 'front') return (p) => p.xM;
  if (view === 'back') return (p) => widthM - p.xM;
  return view === 'left' ? (p) => lengthM - p.yM : (p) => p.yM;
}

const NEAR_WALL_M = 0.2;
/** How far behind the wall plane a point lies. */
export function behindWall(view: ViewName, shelter: Shelter): (p: Point) => number {
  const { widthM, lengthM } = shelter.structure;
  if (view === 'front') return (p) => p.yM;
  if (view === 'back') return (p) => lengthM - p.yM;
  return view === 'left' ? (p) => p.xM : (p) => widthM - p.xM;
}
export const membersIn = (view: ViewName, shelter: Shelter): Member[] => {
  const behind = behindWall(view, shelter);
  return shelter.geometry.members.filter((m) => Math.abs(behind(m.from)) < NEAR_WALL_M && Math.abs(behind(m.to)) < NEAR_WALL_M);
};

export interface SeenOpening {
  opening: PlacedOpening;
  u1: number;
  u2: number;
  z1: number;
  z2: number;
}
/** Openings that have a place in this wall. One that does not fit has none, and is not drawn. */
export function openingsIn(view: ViewName, shelter: Shelter): SeenOpening[] {
  const along = alongWall(view, shelter);
  return shelter.geometry.openings
    .filter((o) => o.wall === view && o.fits && o.corners.length === 4)
    .map((opening) => {
      const us = opening.corners.map(along);
      const zs = opening.corners.map((c) => c.zM);
      return { opening, u1: Math.min(...us), u2: Math.max(...us), z1: Math.min(...zs), z2: Math.max(...zs) };
    })
    .sort((a, b) => a.u1 - b.u1);
}

/** The bow's outline; a lean-to's or gable's corners come out exact. */
export function profile(shelter: Shelter): { x: number; z: number }[] {
  return shelter.geometry.bowProfile.map((p) => ({ x: p.xM, z: p.zM }));
}

/** The highest drawn place: an eave that was typed higher than the ridge stands over it. */
export const topM = (shelter: Shelter): number => Math.max(shelter.geometry.ridgeM, shelter.geometry.eaveM, ...profile(shelter).map((p) => p.z));

/** How far a high round arch bulges out over its own foot. */
export function bulgeM(shelter: Shelter): number {
  const out = Math.max(0, ...profile(shelter).map((p) => Math.max(-p.x, p.x - shelter.structure.widthM)));
  return out < 1e-6 ? 0 : out + tubeM(shelter);
}

/** The margin of a view holds a small bulge; only what is more needs room. */
const BULGE_HELD_MM = 4;
export const bulgeRoomMm = (shelter: Shelter, k: number): number => Math.max(0, bulgeM(shelter) * k - BULGE_HELD_MM);

/** True bearing that a wall faces. */
export function wallBearingDeg(view: ViewName, { structure }: Shelter): number {
  const turn = { front: 0, left: 90, back: 180, right: 270 }[view];
  return (((structure.frontFacesDeg + turn) % 360) + 360) % 360;
}
export const compassWord = (bearingDeg: number, words: Words): string => words.compass[Math.round((((bearingDeg % 360) + 360) % 360) / 45) % 8] ?? '';

/** A drawing is at least as wide as its title. */
export const headWidth = (title: string, scale: Scale, wanted: boolean): number => (wanted ? textWidth(`${title}, ${scale.text}`, 'head') + 1.5 : 0);

const HEAD_ROW_MM = 6;
const BAR_MAX_MM = 52;

export interface Heading {
  title: string;
  heightMm: number;
  /** How far the title and the bar reach from the left. */
  usedMm: number;
  draw: (plate: Plate, scale: Scale) => void;
}
/** View title and scale bar: side by side where the width allows, else one under the other. */
export function headingFor(title: string, widthMm: number, scale: Scale, words: Words, wanted: boolean): Heading {
  if (!wanted) return { title, heightMm: 1, usedMm: 0, draw: () => undefined };
  const full = `${title}, ${scale.text}`;
  const bar = barLengths(scale, Math.min(BAR_MAX_MM, widthMm - 12));
  const beside = textWidth(full, 'head') + 10 + bar.widthMm + 8 <= widthMm;
  return {
    title: full,
    heightMm: beside ? SCALE_BAR_HEIGHT_MM + 3 : HEAD_ROW_MM + SCALE_BAR_HEIGHT_MM + 2.5,
    usedMm: beside ? textWidth(full, 'head') + 10 + bar.widthMm : Math.max(textWidth(full, 'head'), bar.widthMm),
    draw: (plate, s) => {
      plate.text(0.5, capHeight('head') + 1.2, full, 'head');
      if (beside) drawScaleBar(plate, textWidth(full, 'head') + 10, 0, s, Math.min(BAR_MAX_MM, widthMm - 12), words);
      else drawScaleBar(plate, 0.5, HEAD_ROW_MM, s, Math.min(BAR_MAX_MM, widthMm - 12), words);
    },
  };
}

/** Both outlines of a tube or board of some width, white inside so that it covers what is behind; a single line when too thin to show both. */
const BOTH_LINES_FROM_MM = 1.05;
export function band(plate: Plate, points: readonly XY[], widthMm: number): void {
  if (widthMm < BOTH_LINES_FROM_MM) {
    plate.path(points, 'cut');
    return;
  }
  const offset = (side: number): XY[] =>
    points.map((p, i): XY => {
      const before = points[Math.max(i - 1, 0)] ?? p;
      const after = points[Math.min(i + 1, points.length - 1)] ?? p;
      const d = Math.hypot(after[0] - before[0], after[1] - before[1]) || 1;
      return [p[0] + ((after[1] - before[1]) / d) * side, p[1] - ((after[0] - before[0]) / d) * side];
    });
  plate.poly([...offset(widthMm / 2), ...offset(-widthMm / 2).reverse()], 'face');
}

/** What stands in the walls, for the accessible name. */
export const openingWords = (seen: readonly SeenOpening[], units: UnitSystem): string =>
  seen.map((s) => `${s.opening.openingId} ${spokenLength(s.opening.widthM, units)} by ${spokenLength(s.opening.heightM, units)}`).join(', ');

export const isBuy = (opening: PlacedOpening): 'pile' | 'buy' => (opening.stockTag === null ? 'buy' : 'pile');

export const HOST_M = 0.2;
/** Name of a lean-to's wall, on white, where the wall is thick enough on paper. */
export function hostName(plate: Plate, [x, y]: XY, thickMm: number, level: boolean, words: Words): void {
  if (thickMm < 3.9) return;
  const half = capHeight('small') / 2;
  const w = textWidth(words.hostWall, 'small') + 1.6;
  if (level) plate.rect(x - w / 2, y - 1.6, w, 3.2, 'blank');
  else plate.rect(x - 1.6, y - w / 2, 3.2, w, 'blank');
  if (level) plate.text(x, y + half, words.hostWall, 'small', 'middle');
  else plate.textTurned(x + half, y, words.hostWall, 'small', 'middle');
}

/** Height of an outline over a place across the shelter. */
export function topAt(line: readonly { x: number; z: number }[], x: number): number {
  let best = 0;
  line.slice(1).forEach((b, i) => {
    const a = line[i] ?? b;
    const [lo, hi] = [Math.min(a.x, b.x), Math.max(a.x, b.x)];
    if (x < lo - 1e-9 || x > hi + 1e-9) return;
    const z = hi - lo < 1e-9 ? Math.max(a.z, b.z) : a.z + ((b.z - a.z) * (x - a.x)) / (b.x - a.x);
    best = Math.max(best, z);
  });
  return best;
}
