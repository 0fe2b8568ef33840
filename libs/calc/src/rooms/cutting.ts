/**
 * Cutting: which piece is cut from which board.
 *
 * Gives: lettered parts from the wood of the frame and from the battens, a cut for each board, and what found no board.
 * Model: one-dimensional cutting by first fit decreasing, reclaimed boards before bought ones, one bought length for
 *   each material (the one whose plan is the cheapest), a kerf at every cut; the lower bound is the length balance.
 * Assumes: pieces longer than the longest board are spliced from equal lengths over a post; reclaimed boards are worth
 *   their usable length only; grade X, creosote and old treated wood are never cut.
 * Validity: see MODEL. First fit decreasing never needs more than 11/9 of the best plan plus one board.
 * Fields: lengths mm.
 * References: JUDGEMENT-MATERIALS (kerf), PS20-20 (sections).
 */
import type { CutPart, CuttingResult, GeometryResult, MaterialKey, Note, Price, StockItem, StructureInputs } from '@lathwork/model';
import { KERF_MM, refusalOf, SECTION_SLACK_FRAC, SECTIONS } from '../data/timber.js';
import { packFirstFit, type Packing, type Piece, type Stick } from './cutting-pack.js';
import { outsideValidity, type RoomModel, type RoomOutput } from './room.js';

export const CUTTING_MODEL = {
  room: 'cutting',
  title: 'First fit decreasing with kerf, reclaimed boards first',
  ranges: { longestPartMm: { unit: 'mm', min: 0, max: 6100, sourceId: 'JUDGEMENT-MATERIALS', safety: false } },
  sources: ['PS20-20', 'JUDGEMENT-MATERIALS'],
} as const satisfies RoomModel<'longestPartMm'>;

export interface CuttingInput {
  structure: StructureInputs;
  geometry: GeometryResult;
  stock: readonly StockItem[];
  prices: readonly Price[];
}

const CUT_MATERIALS = ['sill.89x140', 'board.38x89', 'batten.19x38'] as const satisfies readonly MaterialKey[];
type CutMaterial = (typeof CUT_MATERIALS)[number];

interface Wanted {
  use: CutPart['use'];
  forOpening: string | null;
  material: CutMaterial;
  lengthMm: number;
}

const WOOD_ROLES = ['sill', 'nailer', 'stud', 'header', 'jamb', 'openingSill'] as const;
type WoodRole = (typeof WOOD_ROLES)[number];
const isWood = (role: string): role is WoodRole => (WOOD_ROLES as readonly string[]).includes(role);

const mm = (m: number): number => Math.round(m * 1000);

/** Pieces of wood, and each straight line of batten as one length. */
const wantedLengths = (geometry: GeometryResult): Wanted[] => {
  const wood = geometry.members.flatMap((m): Wanted[] => {
    if (!isWood(m.role)) return [];
    const opening = /^([DWV]\d{1,2})-/.exec(m.memberId)?.[1] ?? null;
    return [{ use: m.role, forOpening: opening, material: m.role === 'sill' ? 'sill.89x140' : 'board.38x89', lengthMm: mm(m.lengthM) }];
  });
  // A run that was cut up by wind zone is one line again: its number behind the last dash is the zone's.
  const lines = new Map<string, number>();
  for (const run of geometry.battenRuns.filter((r) => r.along !== 'opening')) {
    const line = run.runId.replace(/-\d$/, '');
    lines.set(line, (lines.get(line) ?? 0) + run.lengthM);
  }
  const straight = [...lines.values()].map((lengthM): Wanted => ({ use: 'batten', forOpening: null, material: 'batten.19x38', lengthMm: mm(lengthM) }));
  const round = geometry.openings
    .filter((o) => o.fits)
    .flatMap((o) =>
      [o.heightM, o.heightM, o.widthM, ...(o.bottomM > 0 ? [o.widthM] : [])].map((lengthM): Wanted => ({
        use: 'batten',
        forOpening: o.openingId,
        material: 'batten.19x38',
        lengthMm: mm(lengthM),
      })),
    );
  return [...wood, ...straight, ...round].filter((w) => w.lengthMm > 0);
};

/** A length that no board has is spliced from equal pieces. */
const spliced = (wanted: readonly Wanted[], longestMm: number): { wanted: Wanted[]; splicesCount: number } => {
  let splicesCount = 0;
  const pieces = wanted.flatMap((w) => {
    const count = longestMm > 0 ? Math.ceil(w.lengthMm / longestMm - 1e-9) : 1;
    splicesCount += count - 1;
    return Array.from({ length: count }, () => ({ ...w, lengthMm: Math.ceil(w.lengthMm / count) }));
  });
  return { wanted: pieces, splicesCount };
};

/** Letters that no one reads as a figure on a dusty board: I, O, Q, S and Z are left out. */
const LETTERS = 'ABCDEFGHJKLMNPRTUVWXY';
const letterOf = (n: number): string =>
  n < LETTERS.length ? LETTERS.charAt(n) : letterOf(Math.floor(n / LETTERS.length) - 1) + LETTERS.charAt(n % LETTERS.length);

/** Alike pieces share a letter; letters run through the materials from the sills upwards. */
const partsOf = (wanted: readonly Wanted[], firstLetter: number): CutPart[] => {
  const groups = new Map<string, CutPart>();
  for (const w of wanted) {
    const partId = [w.use, w.forOpening ?? 'frame', w.lengthMm].join('-');
    const known = groups.get(partId);
    if (known) known.count += 1;
    else
      groups.set(partId, {
        letter: letterOf(firstLetter + groups.size),
        partId,
        use: w.use,
        forOpening: w.forOpening,
        material: w.material,
        lengthMm: w.lengthMm,
        count: 1,
      });
  }
  return [...groups.values()];
};

const usableSticks = (stock: readonly StockItem[], material: CutMaterial): Stick[] =>
  stock
    .filter((i) => i.material === material && refusalOf(i) === null)
    .flatMap((i) => Array.from({ length: i.count }, () => ({ tag: i.tag, lengthMm: Math.floor(i.usableLengthMm ?? i.lengthMm ?? 0) })))
    .filter((s) => s.lengthMm > 0);

interface MaterialPlan {
  parts: CutPart[];
  packing: Packing;
  splicesCount: number;
}

const planMaterial = (wanted: readonly Wanted[], sticks: readonly Stick[], bought: number | null, firstLetter: number): MaterialPlan => {
  const longestMm = bought ?? Math.max(0, ...sticks.map((s) => s.lengthMm));
  const cut = spliced(wanted, longestMm);
  const parts = partsOf(cut.wanted, firstLetter);
  const pieces = parts.flatMap((part) => Array.from({ length: part.count }, (): Piece => ({ key: part.letter, lengthMm: part.lengthMm })));
  return { parts, packing: packFirstFit(pieces, sticks, bought, KERF_MM), splicesCount: cut.splicesCount };
};

/** Tries every length on the price list and keeps the plan that leaves nothing out, then costs least. Costs of unlike currencies are compared by length. */
const bestPlan = (wanted: readonly Wanted[], sticks: readonly Stick[], prices: readonly Price[], firstLetter: number): MaterialPlan => {
  const offers = prices
    .filter((p) => p.unit === 'm' && p.pieceLengthM !== null)
    .map((p) => ({ lengthMm: mm(p.pieceLengthM ?? 0), minor: (p.packPrice.minor * (p.pieceLengthM ?? 0)) / p.packAmount, currency: p.packPrice.currency }));
  const oneCurrency = new Set(offers.map((o) => o.currency)).size === 1;
  const none: MaterialPlan = planMaterial(wanted, sticks, null, firstLetter);
  const plans = offers.map((o) => {
    const plan = planMaterial(wanted, sticks, o.lengthMm, firstLetter);
    return { plan, left: plan.packing.unplaced.length, cost: plan.packing.boughtCount * (oneCurrency ? o.minor : o.lengthMm), splices: plan.splicesCount };
  });
  plans.sort((a, b) => a.left - b.left || a.cost - b.cost || a.splices - b.splices);
  return plans[0]?.plan ?? none;
};

const refusalNotes = (stock: readonly StockItem[]): Note[] =>
  stock
    .filter((i) => (CUT_MATERIALS as readonly string[]).includes(i.material))
    .flatMap((i): Note[] => {
      const reason = refusalOf(i);
      if (reason) return [{ code: 'cutting.board-refused', severity: 'note', room: 'cutting', subject: i.tag, params: { reason } }];
      const section = SECTIONS[i.material];
      const thin =
        section &&
        ((i.thicknessMm ?? section.thicknessMm) < section.thicknessMm * (1 - SECTION_SLACK_FRAC) ||
          (i.widthMm ?? section.widthMm) < section.widthMm * (1 - SECTION_SLACK_FRAC));
      return thin
        ? [
            {
              code: 'cutting.board-thinner',
              severity: 'care',
              room: 'cutting',
              subject: i.tag,
              beforeTask: 'denail',
              params: {
                thicknessMm: i.thicknessMm ?? section.thicknessMm,
                widthMm: i.widthMm ?? section.widthMm,
                wantedThicknessMm: section.thicknessMm,
                wantedWidthMm: section.widthMm,
              },
            },
          ]
        : [];
    });

const unplacedParts = (plan: MaterialPlan): CutPart[] =>
  plan.parts.flatMap((part) => {
    const count = plan.packing.unplaced.filter((u) => u.key === part.letter).length;
    return count > 0 ? [{ ...part, count }] : [];
  });

export const computeCutting = ({ geometry, stock, prices }: CuttingInput): RoomOutput<CuttingResult> => {
  const wanted = wantedLengths(geometry);
  const plans: MaterialPlan[] = [];
  for (const material of CUT_MATERIALS) {
    const firstLetter = plans.reduce((n, p) => n + p.parts.length, 0);
    plans.push(
      bestPlan(
        wanted.filter((w) => w.material === material),
        usableSticks(stock, material),
        prices.filter((p) => p.material === material),
        firstLetter,
      ),
    );
  }
  const parts = plans.flatMap((p) => p.parts);
  const boards = plans.flatMap((plan, i) =>
    plan.packing.sticks.map((stick) => ({
      stockTag: stick.tag,
      material: CUT_MATERIALS[i] ?? 'board.38x89',
      lengthMm: stick.lengthMm,
      kerfMm: KERF_MM,
      cuts: stick.pieces.map((piece) => ({ letter: piece.key, lengthMm: piece.lengthMm })),
      offcutMm: stick.offcutMm,
    })),
  );
  const unplaced = plans.flatMap(unplacedParts);
  const totalMm = boards.reduce((sum, b) => sum + b.lengthMm, 0);
  const cutMm = boards.reduce((sum, b) => sum + b.cuts.reduce((s, c) => s + c.lengthMm, 0), 0);
  const sum = (of: (p: MaterialPlan) => number) => plans.reduce((n, p) => n + of(p), 0);
  const splicesCount = sum((p) => p.splicesCount);
  const notes: Note[] = [
    ...unplaced.map((u): Note => ({
      code: 'cutting.part-unplaced',
      severity: 'care',
      room: 'cutting',
      subject: u.letter,
      beforeTask: 'denail',
      params: { material: u.material, lengthMm: u.lengthMm, piecesCount: u.count },
    })),
    ...(splicesCount > 0 ? [{ code: 'cutting.parts-spliced', severity: 'note', room: 'cutting', params: { splicesCount } } satisfies Note] : []),
    ...refusalNotes(stock),
    ...outsideValidity(CUTTING_MODEL, { longestPartMm: Math.max(0, ...parts.map((p) => p.lengthMm)) }),
  ];
  return {
    result: {
      parts,
      boards: boards.map((b, i) => ({ boardId: `${b.stockTag === null ? 'N' : 'R'}${i + 1}`, ...b })),
      unplaced,
      method: 'firstFitDecreasing',
      wasteFrac: totalMm > 0 ? 1 - cutMm / totalMm : 0,
      lowerBoundBoards: sum((p) => p.packing.lowerBoundCount),
      boughtBoards: sum((p) => p.packing.boughtCount),
    },
    notes,
    sources: [...CUTTING_MODEL.sources],
  };
};
