import { INCH_M } from './factors.js';

export type ChainStep = 'mm' | 'eighthInch';
const STEP_M: Readonly<Record<ChainStep, number>> = { mm: 0.001, eighthInch: INCH_M / 8 };
/** What a builder does not see: a sixteenth of an inch. */
const UNSEEN_M = INCH_M / 16;

export interface RoundedChain {
  /** Whole millimetres, or whole eighths of an inch, in the order given; they add up to `total`. */
  parts: number[];
  total: number;
  /** How far the worst part lies from its true length. */
  worstOffM: number;
  /** False where the chain has too few gaps to hide its residue in: the caller should take another step or more gaps. */
  withinSixteenthInch: boolean;
}

/**
 * Rounds a chain of dimensions so that its parts add up to its overall. Each part is rounded to its nearest step; what is
 * then left over goes to the gaps, one step at a time, the widest first, each no farther than a sixteenth of an inch
 * while any gap can still take it. A fixed part (an opening) is never moved.
 */
export const roundChain = (partsM: readonly number[], totalM: number, step: ChainStep, fixed: readonly boolean[]): RoundedChain => {
  if (fixed.length !== partsM.length) throw new RangeError('roundChain: say of each part whether it is fixed');
  if (![...partsM, totalM].every((v) => Number.isFinite(v) && v >= 0)) throw new RangeError('roundChain: a part is not a length');
  if (Math.abs(partsM.reduce((a, v) => a + v, 0) - totalM) > 1e-6) throw new RangeError('roundChain: the parts do not add up to the total');
  const size = STEP_M[step];
  const parts = partsM.map((v) => Math.round(v / size));
  const total = Math.round(totalM / size);
  let left = total - parts.reduce((a, v) => a + v, 0);
  const gaps = partsM.map((widthM, i) => ({ widthM, i })).filter(({ i }) => fixed[i] === false);
  if (left !== 0 && gaps.length === 0) throw new RangeError('roundChain: every part is fixed, so nothing can take the residue');
  gaps.sort((a, b) => b.widthM - a.widthM || a.i - b.i);
  const offAfter = (i: number, by: number): number => Math.abs(((parts[i] ?? 0) + by) * size - (partsM[i] ?? 0));
  while (left !== 0) {
    const by = Math.sign(left);
    const open = gaps.filter(({ i }) => (parts[i] ?? 0) + by >= 0);
    const unseen = open.find(({ i }) => offAfter(i, by) <= UNSEEN_M + 1e-12);
    const least = open.reduce<(typeof open)[number] | undefined>(
      (a, g) => (a === undefined || offAfter(g.i, by) < offAfter(a.i, by) - 1e-9 ? g : a),
      undefined,
    );
    const taker = unseen ?? least;
    if (!taker) throw new RangeError('roundChain: no gap is wide enough to take the residue');
    parts[taker.i] = (parts[taker.i] ?? 0) + by;
    left -= by;
  }
  const worstOffM = Math.max(0, ...partsM.map((_, i) => offAfter(i, 0)));
  return { parts, total, worstOffM, withinSixteenthInch: worstOffM <= UNSEEN_M + 1e-9 };
};
