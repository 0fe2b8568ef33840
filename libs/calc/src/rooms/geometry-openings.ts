import type { Note, Opening, PlacedOpening, Point, StructureInputs } from '@lathwork/model';
import type { Shape } from './geometry-shape.js';

/** Lengths that agree to a tenth of a millimetre agree. */
const SLACK_M = 1e-4;

/** Where an opening's left and right edge stand along its wall, in the shelter's own axes. */
const edges = (o: Opening, s: StructureInputs): { at: (alongM: number, zM: number) => Point; wallM: number; hasWall: boolean } => {
  const { widthM: w, lengthM: l } = s;
  // Offsets run from the left end as seen from outside: that is x = w for the back wall and y = l for the left wall.
  if (o.wall === 'front') return { at: (a, z) => ({ xM: a, yM: 0, zM: z }), wallM: w, hasWall: true };
  if (o.wall === 'back') return { at: (a, z) => ({ xM: w - a, yM: l, zM: z }), wallM: w, hasWall: true };
  if (o.wall === 'left') return { at: (a, z) => ({ xM: 0, yM: l - a, zM: z }), wallM: l, hasWall: s.eaveM > 0 };
  return { at: (a, z) => ({ xM: w, yM: a, zM: z }), wallM: l, hasWall: s.eaveM > 0 && s.kind !== 'leanTo' };
};

const topOver = (o: Opening, s: StructureInputs, shape: Shape, at: (alongM: number, zM: number) => Point): number => {
  if (o.wall === 'left') return shape.leftLegM;
  if (o.wall === 'right') return shape.rightLegM;
  const inside = (x: number) => Math.min(Math.max(x, 0), s.widthM);
  return Math.min(shape.topAt(inside(at(o.offsetM, 0).xM)), shape.topAt(inside(at(o.offsetM + o.widthM, 0).xM)));
};

/** The tallest opening of this width that an end wall can take: centred under the ridge, or against a lean-to's high side. */
const tallestInEndWall = (o: Opening, s: StructureInputs, shape: Shape): number =>
  shape.topAt(Math.min(Math.max(s.kind === 'leanTo' ? s.widthM - o.widthM : (s.widthM - o.widthM) / 2, 0), s.widthM));

const tooTall = (o: Opening, s: StructureInputs, shape: Shape, topM: number): Note => {
  const highestM = tallestInEndWall(o, s, shape);
  const remedies = [
    ...(highestM >= o.bottomM + o.heightM ? ['moveUnderRidge'] : []),
    ...(o.kind === 'door' || o.bottomM > 0 ? ['lowerThreshold'] : []),
    // Glass and hollow doors cannot be shortened: only a leaf that is solid through may be trimmed.
    ...(o.kind === 'door' && o.glazing === 'none' ? ['trimIfSolidWood'] : []),
    'otherTag',
  ];
  return {
    code: 'geometry.opening-too-tall',
    severity: 'stop',
    room: 'geometry',
    subject: o.openingId,
    beforeTask: 'endFrames',
    params: {
      shortfallM: o.bottomM + o.heightM - topM,
      openingTopM: o.bottomM + o.heightM,
      wallTopM: topM,
      tallestInEndWallM: highestM,
      wall: o.wall,
      remedies,
    },
  };
};

const overlaps = (a: Opening, b: Opening): boolean =>
  a.wall === b.wall &&
  a.offsetM < b.offsetM + b.widthM - SLACK_M &&
  b.offsetM < a.offsetM + a.widthM - SLACK_M &&
  a.bottomM < b.bottomM + b.heightM - SLACK_M &&
  b.bottomM < a.bottomM + a.heightM - SLACK_M;

const placeOne = (o: Opening, s: StructureInputs, shape: Shape, earlier: readonly PlacedOpening[]): { placed: PlacedOpening; notes: Note[] } => {
  const { at, wallM, hasWall } = edges(o, s);
  const topM = hasWall ? topOver(o, s, shape, at) : 0;
  const headroomM = topM - o.bottomM - o.heightM;
  const about = { room: 'geometry', severity: 'stop', subject: o.openingId, beforeTask: 'endFrames' } as const;
  const notes: Note[] = [];
  if (!hasWall) notes.push({ ...about, code: 'geometry.opening-has-no-wall', params: { wall: o.wall, kind: s.kind } });
  else if (headroomM < -SLACK_M) notes.push(tooTall(o, s, shape, topM));
  if (hasWall && o.offsetM + o.widthM > wallM + SLACK_M) {
    notes.push({ ...about, code: 'geometry.opening-off-the-wall', params: { wall: o.wall, overhangM: o.offsetM + o.widthM - wallM, wallM } });
  }
  for (const other of earlier) {
    if (other.fits && overlaps(o, other)) notes.push({ ...about, code: 'geometry.openings-overlap', params: { wall: o.wall, other: other.openingId } });
  }
  const fits = notes.length === 0;
  const top = o.bottomM + o.heightM;
  const right = o.offsetM + o.widthM;
  const areaM2 = o.widthM * o.heightM;
  return {
    notes,
    placed: {
      ...o,
      fits,
      headroomM,
      areaM2,
      freeAreaM2: fits ? areaM2 * o.freeOpenFrac : 0,
      // Without a place it has no corners, so that no drawing can put it through the roof.
      corners: fits ? [at(o.offsetM, o.bottomM), at(right, o.bottomM), at(right, top), at(o.offsetM, top)] : [],
    },
  };
};

/** Places every opening on its wall, in the order given; one that does not fit is kept, marked, and says why. */
export const placeOpenings = (s: StructureInputs, shape: Shape): { openings: PlacedOpening[]; notes: Note[] } => {
  const openings: PlacedOpening[] = [];
  const notes: Note[] = [];
  for (const o of s.openings) {
    const one = placeOne(o, s, shape, openings);
    openings.push(one.placed);
    notes.push(...one.notes);
  }
  return { openings, notes };
};
