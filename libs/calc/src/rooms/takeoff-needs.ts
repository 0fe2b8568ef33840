import type { AnchorageResult, AmountUnit, CuttingResult, FasteningResult, GeometryResult, MaterialKey, StructureInputs, TakeOffLine } from '@lathwork/model';
import { ALLOWANCE, WASTE } from '../data/waste.js';
import { sumOf } from './room.js';

/** What one line wants before the pile and the shop are asked. */
export interface Need {
  lineId: string;
  group: TakeOffLine['group'];
  material: MaterialKey;
  mark: string | null;
  unit: AmountUnit;
  need: number;
  wasteFrac: number;
  wasteReason: TakeOffLine['wasteReason'];
  /** Tags that were chosen for this line; they come first, and for openings nothing else is taken. */
  tags: string[];
  /** Whether other alike things of the pile may fill the rest. */
  anyFromPile: boolean;
  /** Timber: what the cutting plan takes from the pile, the piece it buys, and in metres what it lacks and what is spare. */
  cut?: { reclaimed: { tag: string; amount: number; pieces: number }[]; boughtPieceM: number | null; unplacedM: number; spareM: number };
  /** Film: the pieces that a used film would have to cover whole. */
  filmPieces?: { widthM: number; lengthM: number }[];
  /** Width of the piece to buy, where it matters. */
  pieceWidthM?: number;
}

export interface NeedsInput {
  structure: StructureInputs;
  geometry: GeometryResult;
  fastening: FasteningResult;
  anchorage: AnchorageResult;
  cutting: CuttingResult;
}

type Simple = Pick<Need, 'lineId' | 'group' | 'material' | 'unit' | 'need'> & Partial<Need>;
const line = (n: Simple): Need => ({ mark: null, wasteFrac: 0, wasteReason: 'none', tags: [], anyFromPile: true, ...n });

/** Area of roll that goes into a sheet: strips in the roll's full width, since what is left beside them is a remnant. */
const rollAreaM2 = (sheet: GeometryResult['filmSheets'][number], rollM: number): number => sheet.strips * sheet.lengthM * rollM;

const filmLine = (lineId: string, mark: string, sheets: GeometryResult['filmSheets'], netM2: number, usedM2: number, s: StructureInputs): Need => {
  const layers = s.cover.secondFilm ? 2 : 1;
  return line({
    lineId,
    group: 'film',
    material: s.cover.film === 'utility' ? 'film.utility' : 'film.greenhouse',
    mark,
    unit: 'm2',
    need: netM2 * layers,
    wasteFrac: usedM2 / netM2 - 1,
    wasteReason: 'wrapAndLap',
    filmPieces: Array.from({ length: layers }, () => sheets.map((f) => ({ widthM: f.widthM, lengthM: f.lengthM }))).flat(),
    pieceWidthM: s.cover.rollWidthM,
  });
};

const film = ({ structure: s, geometry: g }: NeedsInput): Need[] => {
  const over = g.filmSheets.filter((f) => f.covers === 'overTheTop');
  const ends = g.filmSheets.filter((f) => f.covers !== 'overTheTop');
  const endM2 = sumOf(
    g.faces.filter((f) => f.faceId === 'front' || f.faceId === 'back'),
    (f) => f.grossM2,
  );
  // Two whole end sheets that lie side by side in the roll are cut from one length of it.
  const sideBySide = ends.length === 2 && ends.every((f) => f.strips === 1) && sumOf(ends, (f) => f.widthM) <= s.cover.rollWidthM;
  const endUsed = sideBySide ? Math.max(...ends.map((f) => f.lengthM)) * s.cover.rollWidthM : sumOf(ends, (f) => rollAreaM2(f, s.cover.rollWidthM));
  const roofM2 = sumOf(
    g.faces.filter((f) => f.role === 'roof'),
    (f) => f.grossM2,
  );
  return [
    filmLine(
      'film-main',
      'F1',
      over,
      g.coverM2 - endM2,
      sumOf(over, (f) => rollAreaM2(f, s.cover.rollWidthM)),
      s,
    ),
    filmLine('film-ends', 'F2', ends, endM2, endUsed, s),
    ...(s.cover.innerCover && s.bedsM2 > 0
      ? [
          line({
            lineId: 'film-inner',
            group: 'film',
            material: 'film.innerCover',
            unit: 'm2',
            need: s.bedsM2,
            wasteFrac: WASTE.innerCoverFrac,
            wasteReason: 'cuttingEnds',
          }),
        ]
      : []),
    ...(s.cover.shadeFrac > 0
      ? [line({ lineId: 'shade', group: 'film', material: 'shade.cloth', unit: 'm2', need: roofM2, wasteFrac: WASTE.meshLapFrac, wasteReason: 'wrapAndLap' })]
      : []),
  ];
};

/** Marks of the drawings: P sill plate, L lumber, C batten. Never a letter that reads as a figure, nor A, B or N of the grid. */
const TIMBER = [
  ['timber-sill', 'sill.89x140', 'P1'],
  ['timber-board', 'board.38x89', 'L1'],
  ['timber-batten', 'batten.19x38', 'C1'],
] as const;

const timber = ({ cutting }: NeedsInput): Need[] =>
  TIMBER.flatMap(([lineId, material, mark]) => {
    const parts = cutting.parts.filter((p) => p.material === material);
    if (parts.length === 0) return [];
    const boards = cutting.boards.filter((b) => b.material === material);
    const need = sumOf(parts, (p) => (p.lengthMm * p.count) / 1000);
    const unplaced = sumOf(
      cutting.unplaced.filter((u) => u.material === material),
      (u) => (u.lengthMm * u.count) / 1000,
    );
    const boughtBoards = boards.filter((b) => b.stockTag === null);
    const tags = [...new Set(boards.flatMap((b) => b.stockTag ?? []))];
    const reclaimed = tags.map((tag) => ({
      tag,
      amount: sumOf(
        boards.filter((b) => b.stockTag === tag),
        (b) => b.lengthMm / 1000,
      ),
      pieces: boards.filter((b) => b.stockTag === tag).length,
    }));
    const planned = sumOf(boards, (b) => b.lengthMm / 1000) + unplaced;
    // Laths split and snap: the plan is never trusted below the usual allowance.
    const wanted = material === 'batten.19x38' ? Math.max(planned, need * (1 + WASTE.battenCuttingFrac)) : planned;
    const boughtPieceM = boughtBoards[0] ? boughtBoards[0].lengthMm / 1000 : null;
    return [
      line({
        lineId,
        group: 'timber',
        material,
        mark,
        unit: 'm',
        need,
        wasteFrac: wanted / need - 1,
        wasteReason: 'cuttingEnds',
        cut: { reclaimed, boughtPieceM, unplacedM: unplaced, spareM: wanted - planned },
      }),
    ];
  });

const openings = ({ geometry }: NeedsInput): Need[] => {
  const fitting = geometry.openings.filter((o) => o.fits);
  const things = fitting.map((o) => {
    const material = o.kind === 'vent' ? 'vent.panel' : o.kind;
    return line({
      lineId: `opening-${o.openingId}`,
      group: 'openings',
      material,
      mark: o.openingId,
      unit: 'each',
      need: 1,
      tags: o.stockTag === null ? [] : [o.stockTag],
      anyFromPile: false,
    });
  });
  const doors = fitting.filter((o) => o.kind === 'door');
  const moving = fitting.filter((o) => o.kind !== 'door' && o.freeOpenFrac > 0);
  return [
    ...things,
    ...(doors.length > 0 ? [line({ lineId: 'door-hardware', group: 'openings', material: 'door.hardware', unit: 'set', need: doors.length })] : []),
    ...(moving.length > 0 ? [line({ lineId: 'window-hardware', group: 'openings', material: 'window.hardware', unit: 'set', need: moving.length })] : []),
    ...(doors.length > 0
      ? [
          line({
            lineId: 'door-seal',
            group: 'openings',
            material: 'seal.strip',
            unit: 'm',
            need: sumOf(doors, (o) => 2 * (o.widthM + o.heightM)),
            wasteFrac: WASTE.meshLapFrac,
            wasteReason: 'cuttingEnds',
          }),
        ]
      : []),
  ];
};

const anchors = ({ structure: s, geometry: g }: NeedsInput): Need[] => {
  const { kind, perPostCount, depthM, diameterM, ballastKg, ballastIsWater } = s.anchor;
  const count = perPostCount * g.posts.length;
  if (kind === 'none' || count === 0) return [];
  const make = (material: MaterialKey, need: number, wasteFrac: number, wasteReason: Need['wasteReason']) => [
    line({ lineId: 'anchors', group: 'anchors', material, mark: 'G1', unit: 'each', need, wasteFrac, wasteReason }),
  ];
  if (kind === 'auger') return make('anchor.auger', count, ALLOWANCE.spareAnchorsCount / count, 'spares');
  if (kind === 'drivenPipe' || kind === 'groundPost') return make('anchor.pipe', count, ALLOWANCE.spareAnchorsCount / count, 'spares');
  if (kind === 'concretePier') {
    if (depthM === 'unknown' || diameterM === 'unknown') return [];
    return make('anchor.concreteBag', (count * depthM * Math.PI * diameterM ** 2) / 4 / ALLOWANCE.concreteBagM3, WASTE.concreteFrac, 'spares');
  }
  if (ballastKg === 'unknown') return [];
  return ballastIsWater
    ? make('barrel.water', count * Math.ceil(ballastKg / ALLOWANCE.barrelHoldsKg), 0, 'none')
    : make('anchor.sandbag', (count * ballastKg) / ALLOWANCE.sandbagKg, WASTE.fixingSparesFrac, 'spares');
};

/** Length of diagonal: those of the survey, or one in each end bay of both sides where there are none. */
const bracingM = ({ structure: s, geometry: g }: NeedsInput): number => {
  const drawn = sumOf(
    g.members.filter((m) => m.role === 'brace'),
    (m) => m.lengthM,
  );
  return drawn > 0 ? drawn : 4 * Math.hypot(g.bowSpacingMaxM, s.eaveM);
};

const fixings = (input: NeedsInput): Need[] => {
  const { geometry: g, fastening, cutting } = input;
  const each = (lineId: string, material: MaterialKey, need: number, wasteFrac: number) =>
    line({ lineId, group: 'fixings', material, unit: 'each', need, wasteFrac, wasteReason: 'spares' });
  const framingParts = sumOf(
    cutting.parts.filter((p) => p.use !== 'batten'),
    (p) => p.count,
  );
  const touchingM = sumOf(
    g.members.filter((m) => m.role === 'rafter' || m.role === 'bow' || m.role === 'ridge'),
    (m) => m.lengthM,
  );
  const paintedM2 =
    sumOf(
      g.members.filter((m) => m.role === 'nailer'),
      (m) => m.lengthM,
    ) * ALLOWANCE.nailerGirthM;
  return [
    each('screw-batten', 'screw.batten', fastening.screwsCount, WASTE.screwSparesFrac),
    each('screw-tube', 'screw.tube', fastening.tubeScrewsCount, WASTE.screwSparesFrac),
    each('screw-framing', 'screw.framing', framingParts * ALLOWANCE.framingScrewsPerPartCount, WASTE.fixingSparesFrac),
    each('straps', 'strap.tube', g.posts.length * ALLOWANCE.strapsPerPostCount, WASTE.fixingSparesFrac),
    line({
      lineId: 'brace-cable',
      group: 'fixings',
      material: 'brace.cable',
      unit: 'm',
      need: bracingM(input),
      wasteFrac: WASTE.fixingSparesFrac,
      wasteReason: 'spares',
    }),
    line({ lineId: 'contact-tape', group: 'fixings', material: 'tape.contact', unit: 'each', need: touchingM / ALLOWANCE.contactTapeRollM }),
    line({ lineId: 'paint', group: 'fixings', material: 'paint.white', unit: 'L', need: paintedM2 * ALLOWANCE.paintLPerM2 }),
  ];
};

const groundAndSundries = ({ structure: s, geometry: g }: NeedsInput): Need[] => {
  const barrels = sumOf(s.waterStores, (w) => w.count);
  return [
    ...(s.floor === 'gravel'
      ? [
          line({
            lineId: 'gravel',
            group: 'ground',
            material: 'gravel',
            unit: 'm3',
            need: g.footprintM2 * ALLOWANCE.gravelDepthM,
            wasteFrac: WASTE.gravelCompactionFrac,
            wasteReason: 'compaction',
          }),
        ]
      : []),
    ...(s.floor === 'gravel'
      ? [
          line({
            lineId: 'fabric',
            group: 'ground',
            material: 'fabric.ground',
            unit: 'm2',
            need: g.footprintM2,
            wasteFrac: WASTE.fabricLapFrac,
            wasteReason: 'wrapAndLap',
          }),
        ]
      : []),
    line({ lineId: 'mesh', group: 'ground', material: 'mesh.rodent', unit: 'm', need: g.perimeterM, wasteFrac: WASTE.meshLapFrac, wasteReason: 'wrapAndLap' }),
    ...(barrels > 0
      ? [
          line({
            lineId: 'barrels',
            group: 'water',
            material: 'barrel.water',
            unit: 'each',
            need: barrels,
            tags: s.waterStores.flatMap((w) => w.stockTag ?? []),
          }),
        ]
      : []),
    line({ lineId: 'ropes', group: 'sundries', material: 'rope', unit: 'each', need: ALLOWANCE.ropesCount }),
    line({ lineId: 'thermometer', group: 'sundries', material: 'thermometer.minMax', unit: 'each', need: 1 }),
  ];
};

/** Every line a build of this kind wants, frame first. */
export const needsOf = (input: NeedsInput): Need[] => [
  line({
    lineId: 'frame',
    group: 'frame',
    material: 'frame.tubeSet',
    unit: 'each',
    need: 1,
    tags: input.structure.frameStockTag === null ? [] : [input.structure.frameStockTag],
    anyFromPile: false,
  }),
  ...film(input),
  ...timber(input),
  ...openings(input),
  ...groundAndSundries(input).filter((n) => n.group === 'water'),
  ...anchors(input),
  ...fixings(input),
  ...groundAndSundries(input).filter((n) => n.group !== 'water'),
];
