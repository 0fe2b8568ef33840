import { formatFeetInches } from '@lathwork/units';
import type { CutBoard } from '../model-types.js';
import type { CutDiagramOptions } from '../options.js';
import { wrapWords } from '../marks.js';
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
/** Boards that are cut alike are drawn once. */
interface Alike {
  board: CutBoard;
  names: readonly string[];
}
const nameOf = (b: CutBoard): string => b.stockTag ?? b.boardId;

function alikeOf(boards: readonly CutBoard[]): Alike[] {
  const groups = new Map<string, CutBoard[]>();
  for (const b of boards) {
    const cuts = b.cuts.map((c) => `${c.letter}${c.lengthMm}`).sort();
    const key = [b.material, b.lengthMm, b.kerfMm, b.stockTag === null, ...cuts].join('|');
    groups.set(key, [...(groups.get(key) ?? []), b]);
  }
  return [...groups.values()].flatMap((some) => (some[0] === undefined ? [] : [{ board: some[0], names: some.map(nameOf) }]));
}

/** `N2 to N6, N9`: names that follow each other in number are told as a run. */
function runsOfNames(all: readonly string[], words: Words): string {
  // One long board from the pile may be cut as several; its tag is told once.
  const names = [...new Set(all)];
  const runs: string[][] = [];
  const numberOf = (s: string): string => /(?<!\d)\d*$/.exec(s)?.[0] ?? '';
  const parted = (s: string): [string, string] => [s.slice(0, s.length - numberOf(s).length), numberOf(s)];
  for (const name of names) {
    const last = runs.at(-1);
    const [stem, number] = parted(name);
    const [lastStem, lastNumber] = parted(last?.at(-1) ?? '');
    const follows = last !== undefined && stem === lastStem && number !== '' && lastNumber !== '' && Number(number) === Number(lastNumber) + 1;
    if (follows) last.push(name);
    else runs.push([name]);
  }
  return runs.map((r) => (r.length > 2 ? `${r[0] ?? ''} ${words.to} ${r.at(-1) ?? ''}` : r.join(', '))).join(', ');
}

const headLines = ({ board: b, names }: Alike, units: UnitSystem, words: Words, widthMm: number): string[] => {
  const count = names.length > 1 ? `, ${names.length} ${words.boards}` : '';
  return wrapWords(`${runsOfNames(names, words)}${count}: ${words.boardNames[b.material] ?? b.material}, ${size(b.lengthMm, units)}`, 'let', widthMm - 1);
};

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
const heightOf = (a: Alike, k: number, o: CutDiagramOptions, words: Words): number => {
  const rows = Math.max(0, ...stair(piecesOf(a.board, k, o.units)).map((s) => s.row + 1));
  return NAME_MM * headLines(a, o.units, words, o.widthMm).length + BOARD_MM + (rows > 0 ? 2 + rows * STEP_MM : 0) + BETWEEN_MM;
};

function drawBoard(plate: Plate, a: Alike, y: number, k: number, o: CutDiagramOptions, words: Words): void {
  const b = a.board;
  const lines = headLines(a, o.units, words, o.widthMm);
  const top = y + NAME_MM * lines.length;
  lines.forEach((s, i) => plate.text(0.4, y + 3.4 + i * NAME_MM, s, 'let'));
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

/** Boards to one scale, those that are cut alike once, with lettered pieces and what is left over hatched. More boards than the height holds go to the next drawing. */
export function cutDiagrams(o: CutDiagramOptions): Drawing[] {
  const words = o.words ?? ENGLISH;
  const longest = Math.max(...o.boards.map((b) => b.lengthMm), 1);
  const k = (o.widthMm - RIGHT_MM) / longest;
  const groups: Alike[][] = [];
  let room = 0;
  for (const b of alikeOf(o.boards)) {
    const h = heightOf(b, k, o, words);
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
      y += heightOf(b, k, o, words);
    }
    const alt = some
      .map(
        ({ board: b, names }) =>
          `${runsOfNames(names, words)}: ${b.cuts.map((c) => `${c.letter} ${size(c.lengthMm, o.units)}`).join(', ')}, ${words.offcut} ${size(b.offcutMm, o.units)}`,
      )
      .join('. ');
    return plate.finish(o.widthMm, y, `${alt}.`);
  });
}
