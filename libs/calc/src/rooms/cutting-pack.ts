/** One board to cut from, reclaimed (with its tag) or of the bought length. */
export interface Stick {
  tag: string | null;
  lengthMm: number;
}

/** One piece wanted. `key` is handed back, so that the caller knows which part it was. */
export interface Piece {
  key: string;
  lengthMm: number;
}

export interface PackedStick extends Stick {
  pieces: Piece[];
  offcutMm: number;
}

export interface Packing {
  sticks: PackedStick[];
  unplaced: Piece[];
  boughtCount: number;
  lowerBoundCount: number;
}

interface OpenStick extends PackedStick {
  usedMm: number;
}

/** Every piece costs its length and one kerf; the cut after the last piece of a board need not fit, as none follows it. */
const fits = (stick: OpenStick, piece: Piece): boolean => stick.usedMm + piece.lengthMm <= stick.lengthMm + 1e-6;

const place = (stick: OpenStick, piece: Piece, kerfMm: number): void => {
  stick.pieces.push(piece);
  stick.usedMm += piece.lengthMm + kerfMm;
};

/**
 * First fit decreasing: longest piece first, into the first board that takes it. Reclaimed boards come first, shortest
 * first, so that a long board is kept for a long piece; then boards already bought; then a new one.
 */
export const packFirstFit = (pieces: readonly Piece[], reclaimed: readonly Stick[], boughtLengthMm: number | null, kerfMm: number): Packing => {
  const open: OpenStick[] = [...reclaimed]
    .sort((a, b) => a.lengthMm - b.lengthMm || (a.tag ?? '').localeCompare(b.tag ?? ''))
    .map((s) => ({ ...s, pieces: [], offcutMm: 0, usedMm: 0 }));
  const unplaced: Piece[] = [];
  for (const piece of [...pieces].sort((a, b) => b.lengthMm - a.lengthMm || a.key.localeCompare(b.key))) {
    const stick = open.find((s) => fits(s, piece));
    if (stick) place(stick, piece, kerfMm);
    else if (boughtLengthMm !== null && piece.lengthMm <= boughtLengthMm + 1e-6) {
      const fresh: OpenStick = { tag: null, lengthMm: boughtLengthMm, pieces: [], offcutMm: 0, usedMm: 0 };
      place(fresh, piece, kerfMm);
      open.push(fresh);
    } else unplaced.push(piece);
  }
  const sticks = open.filter((s) => s.pieces.length > 0).map(({ usedMm, ...s }) => ({ ...s, offcutMm: Math.max(s.lengthMm - usedMm, 0) }));
  return {
    sticks,
    unplaced,
    boughtCount: sticks.filter((s) => s.tag === null).length,
    lowerBoundCount: lowerBound(pieces, reclaimed, boughtLengthMm, kerfMm, unplaced.length),
  };
};

/**
 * No plan can buy fewer boards than this: the length wanted less all that the pile could give, each piece with its kerf
 * and each board with one kerf of room more. Reclaimed boards shorter than the shortest piece give nothing.
 */
const lowerBound = (pieces: readonly Piece[], reclaimed: readonly Stick[], boughtLengthMm: number | null, kerfMm: number, unplacedCount: number): number => {
  if (boughtLengthMm === null || pieces.length === 0) return 0;
  const shortest = Math.min(...pieces.map((p) => p.lengthMm));
  const wanted = pieces.filter((p) => unplacedCount === 0 || p.lengthMm <= boughtLengthMm).reduce((sum, p) => sum + p.lengthMm + kerfMm, 0);
  const pile = reclaimed.filter((s) => s.lengthMm >= shortest).reduce((sum, s) => sum + s.lengthMm + kerfMm, 0);
  return Math.max(0, Math.ceil((wanted - pile) / (boughtLengthMm + kerfMm) - 1e-9));
};
