import type { GeometryResult, Note, PlacedOpening, Point, StructureInputs } from '@lathwork/model';
import { cited } from '../sources/cite.js';
import type { Shape } from './geometry-shape.js';

type Post = GeometryResult['posts'][number];
type Member = GeometryResult['members'][number];

/** Rafters that agree to half an inch close. */
const CLOSES_WITHIN_M = cited(0.0127, 'm', 'JUDGEMENT-MATERIALS', 'member lengths close within half an inch');
/** Thickness of a nominal 2-inch board, by which headers bear on each side. */
const BOARD_M = cited(0.038, 'm', 'PS20-20', 'table 3, nominal 2 in dressed dry: 1-1/2 in');

const p = (xM: number, yM: number, zM: number): Point => ({ xM, yM, zM });
const distance = (a: Point, b: Point): number => Math.hypot(a.xM - b.xM, a.yM - b.yM, a.zM - b.zM);
const straight = (memberId: string, role: Member['role'], from: Point, to: Point): Member => ({ memberId, role, from, to, lengthM: distance(from, to) });

/** Bow stations in order, each once, and what is wrong with them. */
export const stations = (s: StructureInputs): { atM: number[]; notes: Note[] } => {
  const atM = [...new Set(s.bowsAtM)].sort((a, b) => a - b);
  const about = { room: 'geometry', beforeTask: 'erect' } as const;
  const notes: Note[] = [];
  const outside = atM.filter((y) => y < 0 || y > s.lengthM + CLOSES_WITHIN_M);
  if (outside.length > 0)
    notes.push({
      ...about,
      code: 'geometry.bow-outside-length',
      severity: 'stop',
      params: { atM: outside[0] ?? 0, lengthM: s.lengthM, bowsCount: outside.length },
    });
  const kept = atM.filter((y) => !outside.includes(y));
  if (kept.length < 2)
    notes.push({ ...about, code: 'geometry.too-few-legs', severity: 'stop', params: { bowsCount: kept.length, legsCount: 2 * kept.length } });
  const first = kept[0] ?? 0;
  const last = kept.at(-1) ?? 0;
  if (first > CLOSES_WITHIN_M || last < s.lengthM - CLOSES_WITHIN_M) {
    notes.push({
      ...about,
      code: 'geometry.bows-do-not-cover-length',
      severity: 'stop',
      params: { firstM: first, lastM: last, lengthM: s.lengthM, missingM: first + Math.max(s.lengthM - last, 0) },
    });
  }
  return { atM: kept, notes };
};

/** Row A stands on the left, B on the right; each post answers for half the way to its neighbours, the end ones for the rest. */
export const postsOf = (s: StructureInputs, atM: readonly number[]): Post[] =>
  (['A', 'B'] as const).flatMap((row) =>
    atM.map((y, i) => {
      const from = i === 0 ? 0 : (y + (atM[i - 1] ?? y)) / 2;
      const to = i === atM.length - 1 ? s.lengthM : (y + (atM[i + 1] ?? y)) / 2;
      return { postId: `${row}${i + 1}`, row, number: i + 1, at: p(row === 'A' ? 0 : s.widthM, y, 0), tributaryM: Math.max(to - from, 0) };
    }),
  );

const tubes = (s: StructureInputs, shape: Shape, atM: readonly number[]): Member[] => {
  const w = s.widthM;
  const top = (x: number, y: number) => p(x, y, shape.topAt(x));
  return atM.flatMap((y, i) => {
    const n = i + 1;
    const legs = [straight(`legA${n}`, 'leg', p(0, y, 0), p(0, y, shape.leftLegM)), straight(`legB${n}`, 'leg', p(w, y, 0), p(w, y, shape.rightLegM))].filter(
      (m) => m.lengthM > 0,
    );
    if (s.kind === 'roundArch')
      return [...legs, { memberId: `bow${n}`, role: 'bow' as const, from: p(0, y, shape.leftLegM), to: p(w, y, shape.rightLegM), lengthM: shape.roofLineM }];
    if (s.kind === 'leanTo') return [...legs, straight(`rafterA${n}`, 'rafter', top(0, y), top(w, y))];
    return [...legs, straight(`rafterA${n}`, 'rafter', top(0, y), top(w / 2, y)), straight(`rafterB${n}`, 'rafter', top(w, y), top(w / 2, y))];
  });
};

const lengthwise = (s: StructureInputs, shape: Shape): Member[] => {
  const { widthM: w, lengthM: l } = s;
  const line = (id: string, role: Member['role'], x: number, z: number) => straight(id, role, p(x, 0, z), p(x, l, z));
  const ridgeX = s.kind === 'leanTo' ? w : w / 2;
  return [
    line('ridge', 'ridge', ridgeX, shape.topAt(ridgeX)),
    ...(shape.leftLegM > 0 ? [line('eaveA', 'eave', 0, shape.leftLegM)] : []),
    ...(s.kind === 'leanTo' || shape.rightLegM <= 0 ? [] : [line('eaveB', 'eave', w, shape.rightLegM)]),
  ];
};

/** Diagonals in the side walls, where the survey says the frame is braced: both ends lean against each other. */
const braces = (s: StructureInputs, shape: Shape, atM: readonly number[]): Member[] => {
  if (s.braced !== 'endBays' && s.braced !== 'everyBay') return [];
  const bays = atM.slice(1).map((y, i) => [atM[i] ?? 0, y] as const);
  return bays.flatMap(([from, to], i) => {
    if (s.braced === 'endBays' && i !== 0 && i !== bays.length - 1) return [];
    const [low, high] = i < bays.length / 2 ? [from, to] : [to, from];
    return [
      straight(`braceA${i + 1}`, 'brace', p(0, low, 0), p(0, high, shape.leftLegM)),
      straight(`braceB${i + 1}`, 'brace', p(s.widthM, low, 0), p(s.widthM, high, shape.rightLegM)),
    ].filter((m) => Math.abs(m.to.zM - m.from.zM) > 0);
  });
};

/** Sills under the film line: round the foot of the film, between the doors. */
const sills = (s: StructureInputs, openings: readonly PlacedOpening[]): Member[] => {
  const { widthM: w, lengthM: l } = s;
  const walls: [string, number, (m: number) => Point][] = [
    ['left', l, (m) => p(0, m, 0)],
    ...(s.kind === 'leanTo' ? [] : [['right', l, (m) => p(w, m, 0)] satisfies [string, number, (m: number) => Point]]),
    ['front', w, (m) => p(m, 0, 0)],
    ['back', w, (m) => p(m, l, 0)],
  ];
  return walls.flatMap(([wall, wallM, at]) => {
    const doors = openings
      .filter((o) => o.fits && o.wall === wall && o.bottomM === 0)
      .map((o) => o.corners.map((c) => (wall === 'front' || wall === 'back' ? c.xM : c.yM)));
    const gaps = doors.map((along) => [Math.min(...along), Math.max(...along)] as const).sort((a, b) => a[0] - b[0]);
    const starts = [0, ...gaps.map((g) => g[1])];
    const ends = [...gaps.map((g) => g[0]), wallM];
    return starts.flatMap((from, i) => ((ends[i] ?? 0) - from > 1e-6 ? [straight(`sill-${wall}${i + 1}`, 'sill', at(from), at(ends[i] ?? 0))] : []));
  });
};

/** Boards on the tubes that the battens screw into. A bent bow takes short battens straight on the tube, so it has none. */
const nailers = (s: StructureInputs, shape: Shape): Member[] => {
  const { widthM: w, lengthM: l } = s;
  const copy = (m: Member, id: string): Member => ({ ...m, memberId: id, role: 'nailer' });
  const along = lengthwise(s, shape)
    .filter((m) => m.role === 'eave' || s.kind === 'leanTo')
    .map((m) => copy(m, `nailer-${m.memberId}`));
  const ends = [0, l].flatMap((y, i) => {
    const end = i === 0 ? 'front' : 'back';
    return tubes(s, shape, [y])
      .filter((m) => m.role !== 'bow')
      .map((m) => copy(m, `nailer-${end}-${m.memberId.replace('1', '')}`.slice(0, 20)));
  });
  return w > 0 ? [...along, ...ends] : along;
};

/** Two full-height studs, a header and a sill for each opening; a door has jambs instead of the sill. */
const openingWood = (s: StructureInputs, shape: Shape, o: PlacedOpening): Member[] => {
  const [a, b, c, d] = o.corners;
  if (!o.fits || !a || !b || !c || !d) return [];
  const id = o.openingId;
  const onEnd = o.wall === 'front' || o.wall === 'back';
  const sideTop = o.wall === 'left' ? shape.leftLegM : shape.rightLegM;
  const studTop = (at: Point): Point => p(at.xM, at.yM, onEnd ? shape.topAt(Math.min(Math.max(at.xM, 0), s.widthM)) : sideTop);
  const foot = (at: Point): Point => p(at.xM, at.yM, 0);
  const bearing = (m: Member): Member => ({ ...m, lengthM: m.lengthM + 2 * BOARD_M });
  return [
    straight(`${id}-stud-left`, 'stud', foot(a), studTop(a)),
    straight(`${id}-stud-right`, 'stud', foot(b), studTop(b)),
    bearing(straight(`${id}-header`, 'header', d, c)),
    ...(o.kind === 'door'
      ? [straight(`${id}-jamb-left`, 'jamb', a, d), straight(`${id}-jamb-right`, 'jamb', b, c)]
      : [straight(`${id}-sill`, 'openingSill', a, b)]),
  ];
};

export const membersOf = (s: StructureInputs, shape: Shape, atM: readonly number[], openings: readonly PlacedOpening[]): Member[] => [
  ...tubes(s, shape, atM),
  ...lengthwise(s, shape),
  ...braces(s, shape, atM),
  ...sills(s, openings),
  ...nailers(s, shape),
  ...openings.flatMap((o) => openingWood(s, shape, o)),
];

/**
 * Do the two measured rafters meet? They are never averaged: unequal ones meet off the middle, and the place where they
 * would is given so that the builder can choose between a crooked ridge, cutting the long one or packing the short one.
 */
export const closure = (s: StructureInputs): { residualM: number; notes: Note[] } => {
  if (s.measuredRaftersM === null || s.kind !== 'gableCanopy') return { residualM: 0, notes: [] };
  const { leftM, rightM } = s.measuredRaftersM;
  const about = { room: 'geometry', subject: 'rafters', beforeTask: 'erect' } as const;
  const gapM = Math.max(s.widthM - leftM - rightM, Math.abs(leftM - rightM) - s.widthM);
  if (gapM > 0)
    return {
      residualM: gapM,
      notes: [{ ...about, code: 'geometry.rafters-cannot-meet', severity: 'stop', params: { leftM, rightM, widthM: s.widthM, residualM: gapM } }],
    };
  const ridgeXM = (leftM ** 2 - rightM ** 2 + s.widthM ** 2) / (2 * s.widthM);
  const ridgeZM = s.eaveM + Math.sqrt(Math.max(leftM ** 2 - ridgeXM ** 2, 0));
  const residualM = Math.abs(leftM - rightM);
  const notes: Note[] = [];
  if (residualM > CLOSES_WITHIN_M) {
    const params = {
      leftM,
      rightM,
      residualM,
      ridgeOffCentreM: ridgeXM - s.widthM / 2,
      ridgeAtM: ridgeZM,
      remedies: ['ridgeOffCentre', 'cutLonger', 'packShorter'],
    };
    notes.push({ ...about, code: 'geometry.rafters-do-not-close', severity: 'care', params });
  }
  const ridgeErrorM = ridgeZM - s.ridgeM;
  // A small error of a rafter moves a low ridge a long way, so the ridge is given four times the slack of the rafters.
  if (Math.abs(ridgeErrorM) > 4 * CLOSES_WITHIN_M)
    notes.push({ ...about, code: 'geometry.ridge-differs-from-rafters', severity: 'care', params: { ridgeFromRaftersM: ridgeZM, ridgeGivenM: s.ridgeM } });
  return { residualM, notes };
};
