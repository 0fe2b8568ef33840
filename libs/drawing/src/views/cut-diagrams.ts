import { formatFeetInches } from '@lathwork/units';
import type { CutBoard } from '../model-types.js';
import type { CutDiagramOptions } from '../options.js';
import { Plate } from '../plate.js';
import { HATCH, textWidth } from '../primitives.js';
import type { Drawing, UnitSystem, XY } from '../types.js';
import { ENGLISH, type Words } from '../words.js';

const BOARD_MM = 7;
const NAME_MM = 5;
const BETWEEN_MM = 3;
const STEP_MM = 4.4;
const X0_MM = 0.4;
/** Room right of the longest board, for the label of a short last piece. */
const RIGHT_MM = 26;
const MM_M = 0.001;

const size = (mm: number, units: UnitSystem): string => (units === 'us' ? formatFeetInches(mm * MM_M) : String(Math.round(mm)));
const board = (b: CutBoard, units: UnitSystem, words: Words): string =>
  `${b.stockTag ?? b.boardId}  ${words.boardNames[b.material] ?? b.material}  ${size(b.lengthMm, units)}`;

interface Piece {
  letter: string;
  from: number;
  to: number;
  text: string;
}

interface Below {
  piece: Piece;
  both: string;
  middle: number;
  row: number;
}
const label = (p: Piece): string => `${p.letter}  ${p.text}`;
const fitsInside = (p: Piece): boolean => textWidth(label(p), 'let b') + 1.6 < p.to - p.from;

/**
 * Labels that find no room in their piece stand below it, each starting under its own leader. Taken from the right they
 * step down like a stair, so that no leader passes through another label.
 */
function stair(pieces: readonly Piece[]): Below[] {
  const starts: number[] = [];
  return [...pieces]
    .reverse()
    .filter((p) => !fitsInside(p))
    .map((piece) => {
      const both = label(piece);
      const middle = (piece.from + piece.to) / 2;
      const end = middle - 0.6 + textWidth(both) + 1.8;
      const found = starts.findIndex((start) => end <= start);
      // A row above must not be passed through, so the row is either the first that is free or a new one.
      const row = found === 0 || (found > 0 && starts.slice(0, found).every((start) => start > middle + 0.6)) ? found : starts.length;
      starts[row] = middle - 0.6;
      return { piece, both, middle, row };
    });
}

function drawPieces(plate: Plate, pieces: readonly Piece[], top: number): void {
  for (const p of pieces) if (fitsInside(p)) plate.text((p.from + p.to) / 2, top + BOARD_MM / 2 + 1.25, label(p), 'let b', 'middle');
  for (const b of stair(pieces)) {
    const y = top + BOARD_MM + 4.8 + b.row * STEP_MM;
    plate.line([b.middle, top + BOARD_MM - 1.5], [b.middle, y - 3], 'thin');
    plate.text(b.middle - 0.6, y, b.both, 'let');
  }
}

function piecesOf(b: CutBoard, k: number, units: UnitSystem): Piece[] {
  let at = 0;
  return b.cuts.map((cut) => {
    const from = at;
    at += cut.lengthMm + b.kerfMm;
    return { letter: cut.letter, from: X0_MM + from * k, to: X0_MM + (from + cut.lengthMm) * k, text: size(cut.lengthMm, units) };
  });
}
const heightOf = (b: CutBoard, k: number, units: UnitSystem): number => {
  const rows = Math.max(0, ...stair(piecesOf(b, k, units)).map((s) => s.row + 1));
  return NAME_MM + BOARD_MM + (rows > 0 ? 2 + rows * STEP_MM : 0) + BETWEEN_MM;
};

function drawBoard(plate: Plate, b: CutBoard, y: number, k: number, o: CutDiagramOptions, words: Words): void {
  const top = y + NAME_MM;
  plate.text(0.4, y + 3.4, board(b, o.units, words), 'let');
  const x0 = X0_MM;
  plate.rect(x0, top, b.lengthMm * k, BOARD_MM, 'face');
  const pieces = piecesOf(b, k, o.units);
  for (const p of pieces) if (p.to < x0 + b.lengthMm * k - 0.05) plate.line([p.to, top], [p.to, top + BOARD_MM], 'vis');
  drawPieces(plate, pieces, top);
  const used = b.cuts.reduce((sum, c) => sum + c.lengthMm + b.kerfMm, 0);
  const at = Math.min(used, b.lengthMm);
  const end: XY[] = [
    [x0 + at * k, top],
    [x0 + b.lengthMm * k, top],
    [x0 + b.lengthMm * k, top + BOARD_MM],
    [x0 + at * k, top + BOARD_MM],
  ];
  if (b.lengthMm - at < 1) return;
  plate.poly(end, 'vis');
  plate.hatch(end, HATCH.close);
  const s = `${words.offcut} ${size(b.offcutMm, o.units)}`;
  if (textWidth(s) + 3 < (b.lengthMm - at) * k) plate.label(x0 + ((at + b.lengthMm) / 2) * k, top + BOARD_MM / 2 + 1.25, s, 'let', 'middle');
}

/** Boards to one scale, with lettered pieces and what is left over hatched. More boards than the height holds go to the next drawing. */
export function cutDiagrams(o: CutDiagramOptions): Drawing[] {
  const words = o.words ?? ENGLISH;
  const longest = Math.max(...o.boards.map((b) => b.lengthMm), 1);
  const k = (o.widthMm - RIGHT_MM) / longest;
  const groups: CutBoard[][] = [];
  let room = 0;
  for (const b of o.boards) {
    const h = heightOf(b, k, o.units);
    if (groups.length === 0 || h > room) {
      groups.push([]);
      room = o.maxHeightMm;
    }
    groups.at(-1)?.push(b);
    room -= h;
  }
  return groups.map((some) => {
    const plate = new Plate();
    let y = 0;
    for (const b of some) {
      drawBoard(plate, b, y, k, o, words);
      y += heightOf(b, k, o.units);
    }
    const alt = some
      .map(
        (b) =>
          `${b.stockTag ?? b.boardId}: ${b.cuts.map((c) => `${c.letter} ${size(c.lengthMm, o.units)}`).join(', ')}, ${words.offcut} ${size(b.offcutMm, o.units)}`,
      )
      .join('. ');
    return plate.finish(o.widthMm, y, `${alt}.`);
  });
}
