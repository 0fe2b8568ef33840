import { beyondChain, drawChain, FIRST_CHAIN_MM, gap, layoutChain, NEXT_CHAIN_MM, stationsOf, type ChainLayout } from '../dimension.js';
import { lengthPair, spokenLength, type ChainPart } from '../lengths.js';
import { drawNorthArrow, drawWindArrow, northOnPaperDeg, windOnPaperDeg } from '../marks.js';
import type { PlanOptions } from '../options.js';
import { placeMarks, type MarkToPlace } from '../place-labels.js';
import { Plate } from '../plate.js';
import { pickScale } from '../scale.js';
import { firstThatFits, fitOf, LEVELS, orNull, ring, scaleAt, sketch, within, type Level } from '../fallback.js';
import { DoesNotFitError, type Drawing, type Scale, type Shelter, type XY } from '../types.js';
import { ENGLISH, type Words } from '../words.js';
import { drawGrid, drawPosts, drawWalls, planProjection, stationsM, swingM, WALL_NAMES, type OnPlan } from './ground-plan.js';
import { floorPlan } from './inside.js';
import { headingFor, headWidth, isBuy, openingsIn, openingWords, type Heading } from './shelter.js';
import { overlap, segmentHits, textRect, textWidth, turnedRect, type Rect } from '../primitives.js';

const RINGS_OFF_MM = 10;
const LETTERS_OFF_MM = 6.5;
/** Room for north and storm wind at the right of the heading. */
const ARROWS = { wMm: 53, hMm: 17 };
const HOST_ROOM_M = 0.28;
/** The width chain of a bare plan stands this far inside the front wall; the ridge line starts above its letters. */
const INSIDE_MM = 1.3;
const INSIDE_CLEAR_MM = 6;

/** How far moved-out labels may reach beyond the ends of the ground plan: into the rows of rings and chains. */
const ALONG_ROOM = [8, 8] as const;
/** A bare plan has nothing beyond its back wall. */
const BARE_ALONG_ROOM = [0.8, 8] as const;
const ACROSS_ROOM = [12, 21] as const;
/** For the letters of a very small plan, with as much room beyond its ends. */
const LOOSE_ROOM = [16, 16] as const;

/** The width of a bare plan stands inside it, unless it is too narrow for the letters. */
const widthInside = (o: PlanOptions, level: Level): boolean => o.bare === true && level === 'whole';

interface PlanLayout {
  lying: boolean;
  k: number;
  scale: Scale;
  heading: Heading;
  P: OnPlan;
  widthMm: number;
  heightMm: number;
  length: ChainLayout[];
  across: ChainLayout;
  /** Paper edges of the ground plan. */
  edge: { x1: number; x2: number; y1: number; y2: number };
  arrows: XY;
  level: Level;
}

const bayParts = (shelter: Shelter): ChainPart[] => {
  const ys = stationsM(shelter)
    .map((p) => p.at.yM)
    .filter((y) => y > 0.0005 && y < shelter.structure.lengthM - 0.0005);
  const all = [0, ...ys, shelter.structure.lengthM];
  return all.slice(1).map((y, i) => gap(y - (all[i] ?? 0)));
};

/** Room on each side of the ground plan, in paper mm. */
function margins(
  o: PlanOptions,
  k: number,
  extras: { length: number; across: number; beyond: number },
  level: Level,
): { front: number; back: number; a: number; b: number } {
  const { shelter } = o;
  const inside = widthInside(o, level);
  const more = level === 'whole' ? 0 : LOOSE_ROOM[0] - 8;
  const a = Math.max(RINGS_OFF_MM + 3.2, swingM('left', shelter) * k + 2);
  const front = Math.max(LETTERS_OFF_MM + 3.2, swingM('front', shelter) * k + (inside ? 0.6 : 2.5)) + more;
  const hostB = shelter.structure.kind === 'leanTo' ? HOST_ROOM_M * k : 0;
  const b = Math.max(hostB, 4.4, swingM('right', shelter) * k) + FIRST_CHAIN_MM - 2 + NEXT_CHAIN_MM + extras.length + extras.beyond;
  const back = Math.max(swingM('back', shelter) * k, inside ? 1.4 : 2) + (inside ? 0 : FIRST_CHAIN_MM + extras.across + 4.6) + more;
  return { front, back, a, b };
}

interface Way {
  k: number;
  lying: boolean;
  level: Level;
}

function layoutAt(o: PlanOptions, { k, lying, level }: Way, words: Words): PlanLayout {
  const withArrows = o.bare !== true;
  const { widthM: w, lengthM: l } = o.shelter.structure;
  const bays = bayParts(o.shelter);
  const chain = (parts: ChainPart[], start: number, sign: number, room: readonly [number, number]): ChainLayout => {
    const stations = stationsOf(start, parts, sign * k);
    const ends = [stations[0] ?? 0, stations.at(-1) ?? 0];
    return layoutChain(stations, parts, o.units, [Math.min(...ends) - room[0], Math.max(...ends) + room[1]], words.equal);
  };
  const sign = lying ? 1 : -1;
  const inside = widthInside(o, level);
  const along = level !== 'whole' ? LOOSE_ROOM : inside ? BARE_ALONG_ROOM : ALONG_ROOM;
  const crowded = level === 'overall' || (level === 'roomy' && chain(bays, 0, sign, along).extraMm > 0);
  const rows = [...(bays.length > 1 && !crowded ? [bays] : []), [gap(l)]];
  const extras = {
    length: rows.reduce((sum, parts) => sum + chain(parts, 0, sign, along).extraMm, 0),
    across: inside ? 0 : chain([gap(w)], 0, 1, ACROSS_ROOM).extraMm,
    beyond: beyondChain(chain(rows.at(-1) ?? [], 0, sign, along)) + (rows.length > 1 ? 0 : 2.8),
  };
  const across = chain([gap(w)], 0, 1, ACROSS_ROOM);
  if (inside && across.places.some((p) => p.kind !== 'one')) throw new DoesNotFitError('the width does not fit inside the plan');
  const m = margins(o, k, extras, level);
  const scale = scaleAt(k);
  const bodyW = Math.max(lying ? m.front + l * k + m.back : m.a + w * k + m.b, headWidth(words.plan, scale, o.heading ?? true), withArrows ? ARROWS.wMm : 0);
  const bodyH = lying ? m.a + w * k + m.b : m.back + l * k + m.front;
  const heading = headingFor(words.plan, bodyW, scale, words, o.heading ?? true);
  const beside = heading.usedMm + ARROWS.wMm + 3 <= bodyW;
  const top = withArrows ? (beside ? Math.max(heading.heightMm, ARROWS.hMm) : heading.heightMm + ARROWS.hMm) : heading.heightMm;
  const ox = lying ? m.front : m.a;
  const oy = lying ? top + m.a : top + m.back + l * k;
  const P = planProjection(lying, k, ox, oy);
  const edge = lying ? { x1: ox, x2: ox + l * k, y1: oy, y2: oy + w * k } : { x1: ox, x2: ox + w * k, y1: oy - l * k, y2: oy };
  const arrows: XY = [Math.max(bodyW - ARROWS.wMm, 0.5), top - ARROWS.hMm];
  const start = lying ? ox : oy;
  return {
    lying,
    k,
    scale,
    heading,
    P,
    widthMm: bodyW,
    heightMm: top + bodyH,
    length: rows.map((parts) => chain(parts, start, sign, along)),
    across: chain([gap(w)], lying ? oy : ox, 1, ACROSS_ROOM),
    edge,
    arrows,
    level,
  };
}

/** The larger of the two ways to lay the plan on its paper. */
function drawnLargest(o: PlanOptions, level: Level, words: Words): Drawing {
  let best: { k: number; drawing: Drawing } | null = null;
  for (const lying of o.bare === true ? [false] : [false, true]) {
    pickScale(o.units, (k) => {
      if (best !== null && k <= best.k) return true;
      const layout = orNull(() => layoutAt(o, { k, lying, level }, words));
      const drawing = layout !== null && within(layout, o.boxMm) ? orNull(() => drawAt(o, layout, words)) : null;
      if (drawing !== null) best = { k, drawing };
      return drawing !== null;
    });
  }
  const found = best as { drawing: Drawing } | null;
  if (found === null) throw new DoesNotFitError('the plan does not fit its box at any scale');
  return found.drawing;
}

function drawPlanChains(plate: Plate, o: PlanOptions, l: PlanLayout): void {
  const { shelter } = o;
  const host = shelter.structure.kind === 'leanTo' ? HOST_ROOM_M * l.k : 0;
  const edgeB = (l.lying ? l.edge.y2 : l.edge.x2) + Math.max(host, 4.4, swingM('right', shelter) * l.k);
  let at = edgeB;
  l.length.forEach((layout, i) => {
    at += i === 0 ? FIRST_CHAIN_MM - 2 : NEXT_CHAIN_MM;
    drawChain(plate, layout, { at, from: i === 0 ? edgeB - 0.5 : at - 4, side: 1, vertical: !l.lying });
    at += layout.extraMm;
  });
  const back = Math.max(swingM('back', shelter) * l.k, 2);
  // Inside the front wall, in the strip that stays free of beds.
  if (widthInside(o, l.level)) drawChain(plate, l.across, { at: l.edge.y2 - INSIDE_MM, from: null, side: -1 });
  else if (l.lying) drawChain(plate, l.across, { at: l.edge.x2 + back + FIRST_CHAIN_MM - 1, from: l.edge.x2 + back, side: 1, vertical: true });
  else drawChain(plate, l.across, { at: l.edge.y1 - back - FIRST_CHAIN_MM + 2, from: l.edge.y1 - back, side: -1 });
}

function drawArrows(plate: Plate, o: PlanOptions, l: PlanLayout, words: Words): void {
  const { frontFacesDeg } = o.shelter.structure;
  const [x, y] = l.arrows;
  drawNorthArrow(plate, [x + 8, y + 8.5], 4, northOnPaperDeg(frontFacesDeg, l.lying), words);
  const wind = o.stormWindFromDeg === 'unknown' ? null : windOnPaperDeg(frontFacesDeg, o.stormWindFromDeg, l.lying);
  drawWindArrow(plate, [x + 25, y + 8.5], 13, wind, words, 20);
}

function drawInside(plate: Plate, o: PlanOptions, l: PlanLayout, words: Words): void {
  const { widthM: w, lengthM: len, kind } = o.shelter.structure;
  const { beds, barrels } = floorPlan(o.shelter);
  const corners = (x: number, y: number, dx: number, dy: number): XY[] => [l.P(x, y), l.P(x + dx, y), l.P(x + dx, y + dy), l.P(x, y + dy)];
  for (const b of beds) plate.poly(corners(b.x, b.y, b.w, b.l), 'vis');
  for (const b of barrels) {
    const c = l.P(b.x, b.y);
    plate.circle(c, b.r * l.k, 'vis');
    if (b.r * l.k > 2.4) plate.circle(c, b.r * l.k - 1, 'thin');
  }
  if (kind === 'leanTo') return;
  plate.line(l.P(w / 2, widthInside(o, l.level) ? INSIDE_CLEAR_MM / l.k : 0.08), l.P(w / 2, len - 0.08), 'over');
  const s = kind === 'roundArch' ? words.crownAbove : words.ridgeAbove;
  for (const f of [0.55, 0.42, 0.68, 0.3, 0.8, 0.5, 0.6, 0.36, 0.74, 0.2, 0.46, 0.64]) {
    const [x, y] = l.P(w / 2, len * f);
    const rect = l.lying ? textRect(x, y - 1, s, 'small', 'middle') : turnedRect(x - 1, y, s, 'small', 'middle');
    const clear = [...beds.map((b) => corners(b.x, b.y, b.w, b.l))].every((c) => !overlap(rect, boxOf(c)));
    if (!clear || acrossLine(plate, rect, l.lying) || !plate.isFree(rect) || textWidth(s, 'small') > len * l.k - 6) continue;
    if (l.lying) plate.text(x, y - 1, s, 'small', 'middle');
    else plate.textTurned(x - 1, y, s, 'small', 'middle');
    break;
  }
}
/** Does a grid line run through these letters? */
const acrossLine = (plate: Plate, rect: Rect, lying: boolean): boolean => {
  const along = lying ? 0 : 1;
  return plate.lines.some(
    ([p, q]) => Math.abs(p[along] - q[along]) < 0.01 && segmentHits(p, q, { x: rect.x - 1, y: rect.y - 1, w: rect.w + 2, h: rect.h + 2 }),
  );
};
const boxOf = (points: readonly XY[]): { x: number; y: number; w: number; h: number } => {
  const xs = points.map((p) => p[0]);
  const ys = points.map((p) => p[1]);
  return { x: Math.min(...xs), y: Math.min(...ys), w: Math.max(...xs) - Math.min(...xs), h: Math.max(...ys) - Math.min(...ys) };
};

/** Bed names stand in their beds where there is room; never a smaller letter. */
function drawBedNames(plate: Plate, o: PlanOptions, l: PlanLayout, words: Words): void {
  floorPlan(o.shelter).beds.forEach((b, i, all) => {
    const s = all.length > 1 ? `${words.bed} ${i + 1}` : words.bed;
    const room = boxOf([l.P(b.x, b.y), l.P(b.x + b.w, b.y + b.l)]);
    for (const f of [0.72, 0.66, 0.6, 0.8, 0.55, 0.45, 0.3, 0.2]) {
      const x = room.x + room.w * (l.lying ? 1 - f : 0.5);
      const y = room.y + room.h * (l.lying ? 0.5 : f) + 1.2;
      const rect = textRect(x, y, s, 'let', 'middle');
      const crossed = acrossLine(plate, rect, l.lying);
      if (rect.w + 1.5 > room.w || rect.h > room.h || crossed || !plate.isFree(rect)) continue;
      plate.text(x, y, s, 'let', 'middle');
      break;
    }
  });
}

function planMarks(o: PlanOptions, l: PlanLayout): MarkToPlace[] {
  const { widthM: w, lengthM: len } = o.shelter.structure;
  const own = (['front', 'back', 'left', 'right'] as const).flatMap((view) =>
    openingsIn(view, o.shelter).map(({ opening, u1, u2 }, i, all): MarkToPlace => {
      // A vent over a window lies at the same place on a plan: their leaders end side by side.
      const shared = all.filter((other) => other.u1 < u2 && other.u2 > u1).length;
      const share = shared > 1 ? (view === 'back' || view === 'left' ? all.length - i : i + 1) / (all.length + 1) : 0.5;
      const xs = opening.corners.map((c) => c.xM);
      const ys = opening.corners.map((c) => c.yM);
      return {
        label: opening.openingId,
        source: isBuy(opening),
        at: l.P(Math.min(...xs) + (Math.max(...xs) - Math.min(...xs)) * share, Math.min(...ys) + (Math.max(...ys) - Math.min(...ys)) * share),
      };
    }),
  );
  const barrel = floorPlan(o.shelter).barrels[0];
  const spots: Partial<Record<string, XY>> = {
    ...(barrel ? { barrel: l.P(barrel.x, barrel.y) } : {}),
    film: l.P(0, len * 0.55),
    sill: l.P(w, len * 0.45),
    tube: l.P(w / 2, len * 0.5),
  };
  const extra = (o.marks ?? []).flatMap((m): MarkToPlace[] => {
    const at = typeof m.target === 'string' ? spots[m.target] : undefined;
    return at === undefined ? [] : [{ label: m.label, source: m.source, at }];
  });
  return [...own, ...extra];
}

/** Plan of the ground: posts and grid, openings, beds, barrels, the ridge above, chains, north and storm wind. */
export function planView(o: PlanOptions): Drawing {
  const words = o.words ?? ENGLISH;
  const asked = o.bare === true ? { ...o, heading: false } : o;
  return firstThatFits(
    LEVELS.map((level) => () => drawnLargest(asked, level, words)),
    () => sketchOf(asked, words),
  );
}

function altOf(o: PlanOptions, words: Words): string {
  const s = o.shelter.structure;
  const seen = WALL_NAMES.flatMap((v) => openingsIn(v, o.shelter));
  return `${words.plan}: ${spokenLength(s.widthM, o.units)} ${words.wide}, ${spokenLength(s.lengthM, o.units)} ${words.long}, ${stationsM(o.shelter).length} x 2${seen.length > 0 ? `. ${openingWords(seen, o.units)}` : ''}.`;
}

function sketchOf(o: PlanOptions, words: Words): Drawing {
  const { widthM: w, lengthM: l } = o.shelter.structure;
  return sketch({
    box: o.boxMm,
    words,
    title: words.plan,
    outlines: [
      ring([
        [0, 0],
        [w, 0],
        [w, l],
        [0, l],
      ]),
    ],
    facts: [`${lengthPair(w, o.units)} ${words.wide}`, `${lengthPair(l, o.units)} ${words.long}`],
    alt: altOf(o, words),
    unplaced: [...WALL_NAMES.flatMap((v) => openingsIn(v, o.shelter)).map((s) => s.opening.openingId), ...(o.marks ?? []).map((m) => m.label)],
  });
}

function drawAt(o: PlanOptions, l: PlanLayout, words: Words): Drawing {
  const plate = new Plate();
  l.heading.draw(plate, l.scale);
  drawPlanChains(plate, o, l);
  drawGrid(plate, o.shelter, l, RINGS_OFF_MM, LETTERS_OFF_MM);
  if (o.bare !== true) drawArrows(plate, o, l, words);
  drawInside(plate, o, l, words);
  drawWalls(plate, o.shelter, l, words);
  drawPosts(plate, o.shelter, l, o.shelter.structure.anchor.kind !== 'none');
  drawBedNames(plate, o, l, words);
  plate.mustHold(l.widthMm, l.heightMm);
  const unplaced = placeMarks(plate, planMarks(o, l), { x: 0.5, y: l.heading.heightMm, w: l.widthMm - 1, h: l.heightMm - l.heading.heightMm - 0.5 });
  return plate.finishHeld(l.widthMm, l.heightMm, altOf(o, words), l.scale, { unplaced, fit: fitOf(l.level) });
}
