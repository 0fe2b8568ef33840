import { drawMark, markRect } from './marks.js';
import type { Plate } from './plate.js';
import { inside, overlap, segmentHits, segmentsCross, type Rect } from './primitives.js';
import { DoesNotFitError, type MarkSource, type XY } from './types.js';

export interface MarkToPlace {
  label: string;
  source: MarkSource;
  /** The spot on the thing the leader ends at. */
  at: XY;
  /** Other spots on the same thing, tried in turn when the first has no room about it. */
  otherSpots?: readonly XY[];
  /** The mark may stand on the thing itself, without a leader, when this box has room for it. */
  within?: Rect;
}

const DIRECTIONS = 24;
const DISTANCES_MM = [8, 10, 12, 15, 18, 22, 27, 33, 40, 50, 62];
const GRID_MM = 3.5;
const CLEAR_MM = 0.7;
const COST = { covers: 3, leaderCrosses: 0.6 };

const grow = (r: Rect, by: number): Rect => ({ x: r.x - by, y: r.y - by, w: r.w + 2 * by, h: r.h + 2 * by });

/**
 * What may give way, step by step, when a picture is crowded: leaders may run over joints and feet, then marks may stand
 * on them, then leaders may cross each other. No mark ever covers letters or another mark.
 */
const STRICTNESS = ['all', 'leadersOverJoints', 'marksOverJoints', 'leadersCross'] as const;
type Strictness = (typeof STRICTNESS)[number];
const gives = (strict: Strictness, what: Exclude<Strictness, 'all'>): boolean => STRICTNESS.indexOf(strict) >= STRICTNESS.indexOf(what);

function allowed(plate: Plate, box: Rect, centre: XY, target: XY | null, bounds: Rect, strict: Strictness): boolean {
  if (!inside(box, bounds) || !plate.isFree(box, CLEAR_MM)) return false;
  if (!gives(strict, 'marksOverJoints') && plate.avoided.some((t) => overlap(t, box, CLEAR_MM))) return false;
  if (plate.leaders.some(([a, b]) => segmentHits(a, b, grow(box, gives(strict, 'leadersCross') ? 0 : 0.5)))) return false;
  if (target === null) return true;
  if (segmentHits(target, target, grow(box, 1))) return false;
  // The thing itself (a foot, an anchor) may be touched: the leader ends on it.
  const blocks = (t: Rect): boolean => !segmentHits(target, target, t) && segmentHits(centre, target, grow(t, 0.3));
  if (plate.taken.some(blocks) || (!gives(strict, 'leadersOverJoints') && plate.avoided.some(blocks))) return false;
  return gives(strict, 'leadersCross') || !plate.leaders.some(([a, b]) => segmentsCross(centre, target, a, b));
}

const linesUnder = (plate: Plate, box: Rect): number => plate.lines.filter(([a, b]) => segmentHits(a, b, box)).length;
const linesCrossed = (plate: Plate, a: XY, b: XY): number => plate.lines.filter(([c, d]) => segmentsCross(a, b, c, d)).length;

function candidates(at: XY, bounds: Rect): XY[] {
  const round = DISTANCES_MM.flatMap((d) =>
    Array.from({ length: DIRECTIONS }, (_, i): XY => {
      const a = ((i + 0.5) * 2 * Math.PI) / DIRECTIONS;
      return [at[0] + d * Math.cos(a), at[1] + d * Math.sin(a)];
    }),
  );
  return round.filter(([x, y]) => x > bounds.x && x < bounds.x + bounds.w && y > bounds.y && y < bounds.y + bounds.h);
}
function gridOf(bounds: Rect): XY[] {
  const out: XY[] = [];
  for (let x = bounds.x + 4; x < bounds.x + bounds.w - 4; x += GRID_MM) for (let y = bounds.y + 4; y < bounds.y + bounds.h - 4; y += GRID_MM) out.push([x, y]);
  return out;
}

interface Choice {
  at: XY;
  centre: XY;
  leader: boolean;
  cost: number;
}

function onTheThing(plate: Plate, mark: MarkToPlace, bounds: Rect): Choice | null {
  const within = mark.within;
  if (within === undefined) return null;
  let best: Choice | null = null;
  for (const fx of [0.5, 0.35, 0.65, 0.25, 0.75])
    for (const fy of [0.5, 0.35, 0.65, 0.22, 0.78]) {
      const centre: XY = [within.x + within.w * fx, within.y + within.h * fy];
      const box = markRect(centre, mark.label, mark.source);
      if (!inside(grow(box, 0.8), within) || !allowed(plate, box, centre, null, bounds, 'all')) continue;
      const cost = linesUnder(plate, box) + 4 * Math.abs(fx - 0.5) + 4 * Math.abs(fy - 0.5);
      if (best === null || cost < best.cost) best = { at: centre, centre, leader: false, cost };
    }
  return best;
}

function beside(plate: Plate, mark: MarkToPlace, bounds: Rect, spots: readonly XY[], strict: Strictness): Choice | null {
  let best: Choice | null = null;
  for (const centre of spots) {
    const far = Math.hypot(centre[0] - mark.at[0], centre[1] - mark.at[1]);
    if (best !== null && far * 0.5 >= best.cost) continue;
    const box = markRect(centre, mark.label, mark.source);
    if (!allowed(plate, box, centre, mark.at, bounds, strict)) continue;
    const covering = far * 0.5 + COST.covers * linesUnder(plate, box);
    if (best !== null && covering >= best.cost) continue;
    const cost = covering + COST.leaderCrosses * linesCrossed(plate, centre, mark.at);
    if (best === null || cost < best.cost) best = { at: mark.at, centre, leader: true, cost };
  }
  return best;
}

function anywhere(plate: Plate, mark: MarkToPlace, bounds: Rect): Choice | null {
  for (const strict of STRICTNESS)
    for (const at of [mark.at, ...(mark.otherSpots ?? [])]) {
      const there = { ...mark, at };
      const choice = beside(plate, there, bounds, candidates(at, bounds), strict) ?? beside(plate, there, bounds, gridOf(bounds), strict);
      if (choice !== null) return choice;
    }
  return null;
}

/** Places marks one after another where they cover nothing; returns those without a place rather than lay one over another. */
export function placeMarks(plate: Plate, marks: readonly MarkToPlace[], bounds: Rect): string[] {
  const unplaced: string[] = [];
  for (const mark of marks) {
    const choice = onTheThing(plate, mark, bounds) ?? anywhere(plate, mark, bounds);
    if (choice === null) {
      unplaced.push(mark.label);
      continue;
    }
    if (choice.leader) plate.leader(choice.centre, choice.at);
    drawMark(plate, choice.centre, mark.label, mark.source);
  }
  return unplaced;
}

/**
 * Shifts labels along one axis so that they keep `stepMm` apart and stay between the limits, each as near to its own
 * place as the others let it. Returns the new places in the order given.
 */
export function spread(wanted: readonly number[], stepMm: number, low: number, high: number): number[] {
  if (wanted.length === 0) return [];
  const order = wanted.map((_, i) => i).sort((a, b) => (wanted[a] ?? 0) - (wanted[b] ?? 0));
  if ((order.length - 1) * stepMm > high - low + 1e-9) throw new DoesNotFitError(`${order.length} labels do not fit beside a chart`);
  // Blocks of touching labels are moved together to their mean wish.
  const blocks: { members: number[]; start: number }[] = [];
  const settle = (members: number[]): number => {
    const mean = members.reduce((sum, i, j) => sum + (wanted[i] ?? 0) - j * stepMm, 0) / members.length;
    return Math.min(Math.max(mean, low), high - (members.length - 1) * stepMm);
  };
  for (const i of order) {
    blocks.push({ members: [i], start: settle([i]) });
    for (let b = blocks.length - 1; b > 0; b--) {
      const last = blocks[b];
      const before = blocks[b - 1];
      if (!last || !before || before.start + before.members.length * stepMm <= last.start + 1e-9) break;
      const members = [...before.members, ...last.members];
      blocks.splice(b - 1, 2, { members, start: settle(members) });
    }
  }
  const out = wanted.map(() => 0);
  for (const block of blocks) block.members.forEach((i, j) => (out[i] = block.start + j * stepMm));
  return out;
}
