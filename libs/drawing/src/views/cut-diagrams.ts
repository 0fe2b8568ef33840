import { formatFeetInches } from '@lathwork/units';
import type { CutBoard } from '../model-types.js';
import type { CutDiagramOptions } from '../options.js';
import { Plate } from '../plate.js';
import { HATCH, textWidth } from '../primitives.js';
import type { Drawing, UnitSystem, XY } from '../types.js';
import { ENGLISH, type Words } from '../words.js';

const BOARD_MM = 7;
const ROW_MM = 20;
const NAME_MM = 5;
const MM_M = 0.001;

const size = (mm: number, units: UnitSystem): string => (units === 'us' ? formatFeetInches(mm * MM_M) : String(Math.round(mm)));
const board = (b: CutBoard, units: UnitSystem, words: Words): string => `${b.stockTag ?? b.boardId}  ${words.boardNames[b.material] ?? b.material}  ${size(b.lengthMm, units)}`;

interface Piece {
  letter: string;
  from: number;
  to: number;
  text: string;
}

/** Letters stand in their piece where it is wide enough, else below it; below, labels are set side by side in their order. */
function drawPieces(plate: Plate, pieces: readonly Piece[], top: number, right: number): void {
  let inRow = [0, 0];
  for (const p of pieces) {
    const room = p.to - p.from;
    const middle = (p.from + p.to) / 2;
    const both = `${p.letter}  ${p.text}`;
    if (textWidth(both, 'let b') + 1.6 < room) {
      plate.text(middle, top + BOARD_MM / 2 + 1.25, both, 'let b', 'middle');
      continue;
    }
    const w = textWidth(both, 'let');
    const row = (inRow[0] ?? 0) <= Math.max(middle - w / 2, 0) || (inRow[0] ?? 0) <= (inRow[1] ?? 0) ? 0 : 1;
    const x = Math.max(Math.min(middle - w / 2, right - w), inRow[row] ?? 0);
    if (x + w > right + 0.1) continue;
    plate.line([middle, top + BOARD_MM], [x + w / 2, top + BOARD_MM + 1.6 + row * 4.4], 'thin');
    plate.text(x, top + BOARD_MM + 4.6 + row * 4.4, both, 'let');
    inRow = inRow.map((v, i) => (i === row ? x + w + 2 : v));
  }
}

function drawBoard(plate: Plate, b: CutBoard, y: number, k: number, o: CutDiagramOptions, words: Words): void {
  const top = y + NAME_MM;
  plate.text(0.4, y + 3.4, board(b, o.units, words), 'let');
  const x0 = 0.4;
  plate.rect(x0, top, b.lengthMm * k, BOARD_MM, 'face');
  let at = 0;
  const pieces: Piece[] = [];
  for (const cut of b.cuts) {
    pieces.push({ letter: cut.letter, from: x0 + at * k, to: x0 + (at + cut.lengthMm) * k, text: size(cut.lengthMm, o.units) });
    at += cut.lengthMm;
    plate.line([x0 + at * k, top], [x0 + at * k, top + BOARD_MM], 'vis');
    at = Math.min(at + b.kerfMm, b.lengthMm);
  }
  drawPieces(plate, pieces, top, o.widthMm - 0.4);
  const end: XY[] = [[x0 + at * k, top], [x0 + b.lengthMm * k, top], [x0 + b.lengthMm * k, top + BOARD_MM], [x0 + at * k, top + BOARD_MM]];
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
  const k = (o.widthMm - 0.8) / longest;
  const perDrawing = Math.max(1, Math.floor(o.maxHeightMm / ROW_MM));
  const out: Drawing[] = [];
  for (let i = 0; i < o.boards.length; i += perDrawing) {
    const some = o.boards.slice(i, i + perDrawing);
    const plate = new Plate();
    some.forEach((b, j) => drawBoard(plate, b, j * ROW_MM, k, o, words));
    const alt = some.map((b) => `${b.stockTag ?? b.boardId}: ${b.cuts.map((c) => `${c.letter} ${size(c.lengthMm, o.units)}`).join(', ')}, ${words.offcut} ${size(b.offcutMm, o.units)}`).join('. ');
    out.push(plate.finish(o.widthMm, some.length * ROW_MM, `${alt}.`));
  }
  return out;
}
