import type { GeometryResult, StructureInputs } from '@lathwork/model';
import {
  EN_DUOPITCH,
  EN_DUOPITCH_ALONG,
  EN_INSIDE,
  EN_WALLS,
  GCPI,
  GUST_FACTOR,
  LEAST_ROOF_PA,
  LEAST_WALL_PA,
  MEMORY_RAISE,
  WALL_SIDE,
  WALL_WINDWARD,
  ROOF_ALONG_OTHER,
} from '../data/wind-coefficients.js';
import { linear } from '../physics/statics.js';
import { alongRoofBands, archCp, leewardRoofCp, leewardWallCp, windwardRoofCp } from './wind-coefficients.js';
import { cutPiece, forcesOn, piecesOf, postReactions, totalsAcross, type Patch, type Piece, type PostReaction } from './wind-frame.js';

export type Direction = 'normalFromLeft' | 'normalFromRight' | 'parallel';
export type Enclosure = 'enclosed' | 'partiallyEnclosed';

/** One way the wind may press, worked out to totals and to every post. Strength level, dead load not taken off. */
export interface WindVariant {
  direction: Direction;
  enclosure: Enclosure;
  upliftN: number;
  shearN: number;
  overturningNm: number;
  surfaces: { surface: string; cp: number; netPa: number }[];
  posts: PostReaction[];
}

/** What both standards need of the shelter. */
export interface WindShape {
  structure: StructureInputs;
  geometry: GeometryResult;
  /** Mean roof height; the eave for pitches up to 10 degrees. */
  heightM: number;
  pitchDeg: number;
}

/** External coefficients of one wind: a patch list without its net pressure. */
type Coefficients = Omit<Patch, 'netPa'>[];
interface External {
  direction: Direction;
  /** Parallel wind that comes from the back is reported with the one from the front. */
  fromBack: boolean;
  coefficients: Coefficients;
  /** Lengthwise push of the end walls per unit of pressure (parallel wind only), m2. */
  endPushM2: number;
}

const DIRECTIONS = ['normalFromLeft', 'normalFromRight'] as const;

/** Area of the cross-section and the height of its middle. */
export const sectionOf = (geometry: GeometryResult): { areaM2: number; centreM: number } => {
  const p = geometry.bowProfile;
  let area = 0;
  let moment = 0;
  p.forEach((a, i) => {
    const b = p[(i + 1) % p.length];
    if (!b) return;
    const cross = a.xM * b.zM - b.xM * a.zM;
    area += cross / 2;
    moment += (cross * (a.zM + b.zM)) / 6;
  });
  return { areaM2: Math.abs(area), centreM: area === 0 ? 0 : moment / area };
};

const whole = (piece: Piece, cp: number, label: string, lengthM: number): Coefficients[number] => ({ piece, fromM: 0, toM: lengthM, cp, label });
const wallPiece = (p: Piece): boolean => p.surface === 'wallLeft' || p.surface === 'wallRight';

/** Mean of the bands of `alongRoofBands` between two distances from the windward edge. */
const meanBand = (bands: ReturnType<typeof alongRoofBands>, a: number, b: number): number =>
  bands.reduce((sum, band) => sum + band.cp * Math.max(0, Math.min(b, band.toM) - Math.max(a, band.fromM)), 0) / Math.max(b - a, 1e-9);

const acrossRoofSets = (shape: WindShape, pieces: readonly Piece[], fromLeft: boolean): Coefficients[] => {
  const { structure, heightM, pitchDeg } = shape;
  const { kind, widthM, lengthM, eaveM, ridgeM } = structure;
  const roof = pieces.filter((p) => !wallPiece(p));
  const across = (p: Piece) => (fromLeft ? p.acrossFrac : 1 - p.acrossFrac);
  if (kind === 'roundArch') {
    const r = (ridgeM - eaveM) / widthM;
    const sets = [...(eaveM > 0 ? archCp(r, 'elevated') : []), ...(eaveM < ridgeM - eaveM ? archCp(r, 'ground') : [])];
    const label = (x: number) => (x < 0.25 ? 'archWindwardQuarter' : x > 0.75 ? 'archLeewardQuarter' : 'archCentreHalf');
    return sets.map((set) => roof.map((p) => whole(p, across(p) < 0.25 ? set[0] : across(p) > 0.75 ? set[2] : set[1], label(across(p)), lengthM)));
  }
  const overLength = heightM / widthM;
  if (pitchDeg < 10) {
    const bands = alongRoofBands(heightM, widthM);
    const parts = roof.flatMap((p) => cutPiece(p, [0.125, 0.25, 0.375, 0.5, 0.625, 0.75, 0.875]));
    const edges = (p: Piece): [number, number] => (fromLeft ? [p.from.xM, p.to.xM] : [widthM - p.to.xM, widthM - p.from.xM]);
    return [parts.map((p) => whole(p, meanBand(bands, ...edges(p)), p.surface, lengthM)), parts.map((p) => whole(p, ROOF_ALONG_OTHER, p.surface, lengthM))];
  }
  const windward = windwardRoofCp(pitchDeg, overLength);
  const leeward = leewardRoofCp(pitchDeg, overLength);
  // A lean-to's one slope faces the wind from its low side; from the host wall it is wholly leeward.
  const facesWind = (p: Piece) => (kind === 'leanTo' ? fromLeft : across(p) < 0.5);
  return [windward.suction, windward.other].map((cp) => roof.map((p) => whole(p, facesWind(p) ? cp : leeward, p.surface, lengthM)));
};

const acrossExternal = (shape: WindShape): External[] => {
  const { structure, geometry } = shape;
  const { widthM, lengthM } = structure;
  const pieces = piecesOf(structure, geometry);
  return DIRECTIONS.flatMap((direction) => {
    const fromLeft = direction === 'normalFromLeft';
    const walls = pieces
      .filter(wallPiece)
      .map((p) => whole(p, (p.surface === 'wallLeft') === fromLeft ? WALL_WINDWARD : leewardWallCp(widthM / lengthM), p.surface, lengthM));
    return acrossRoofSets(shape, pieces, fromLeft).map((roof) => ({ direction, fromBack: false, coefficients: [...walls, ...roof], endPushM2: 0 }));
  });
};

const alongExternal = (shape: WindShape): External[] => {
  const { structure, geometry, heightM } = shape;
  const { widthM, lengthM } = structure;
  const pieces = piecesOf(structure, geometry);
  const bands = alongRoofBands(heightM, lengthM);
  const endPushM2 = sectionOf(geometry).areaM2 * (WALL_WINDWARD - leewardWallCp(lengthM / widthM)) * GUST_FACTOR;
  return [false, true].map((fromBack) => ({
    direction: 'parallel' as const,
    fromBack,
    endPushM2,
    coefficients: pieces.flatMap((piece) =>
      wallPiece(piece)
        ? [whole(piece, WALL_SIDE, piece.surface, lengthM)]
        : bands.map((b, i) => ({
            piece,
            fromM: fromBack ? lengthM - b.toM : b.fromM,
            toM: fromBack ? lengthM - b.fromM : b.toM,
            cp: b.cp,
            label: `${piece.surface}Band${i + 1}`,
          })),
    ),
  }));
};

/** One line for each name, with the hardest pull or push of what goes under it. */
const surfacesOf = (patches: readonly Patch[]): WindVariant['surfaces'] => {
  const byName = new Map<string, Patch>();
  for (const p of patches) {
    const known = byName.get(p.label);
    if (!known || Math.abs(p.netPa) > Math.abs(known.netPa)) byName.set(p.label, p);
  }
  return [...byName].slice(0, 20).map(([surface, p]) => ({ surface, cp: p.cp, netPa: p.netPa }));
};

interface Settings {
  qPa: number;
  gust: number;
  inside: number;
  raise: number;
  leastLoads: boolean;
}

const raised = (value: number, by: number): number => (value > 0 ? value * by : value / by);

/** Works one set of coefficients out to totals and posts; `inside` is the internal coefficient with its sign. */
const workOut = (shape: WindShape, external: External, enclosure: Enclosure, set: Settings): WindVariant => {
  const { structure, geometry } = shape;
  const { eaveM, ridgeM, lengthM } = structure;
  const patches: Patch[] = external.coefficients.map((c) => ({ ...c, netPa: set.qPa * (set.gust * c.cp - set.inside) }));
  const { direction } = external;
  const section = sectionOf(geometry);
  if (direction === 'parallel') {
    const t = totalsAcross(patches, { shearN: 0, atM: 0 }, structure, 'right');
    const shearN = Math.max(set.qPa * external.endPushM2, set.leastLoads ? LEAST_WALL_PA * section.areaM2 : 0);
    const uplifts = patches.map((p) => ({ zN: forcesOn([p], 0, lengthM).reduce((s, f) => s + f.zN, 0), atM: (p.fromM + p.toM) / 2 }));
    const aboutLee = uplifts.reduce((s, u) => s + u.zN * (external.fromBack ? u.atM : lengthM - u.atM), shearN * section.centreM);
    const posts = postReactions(patches, { shearN: 0, atM: 0 }, structure, geometry.posts).map((p, i) => {
      const trib = geometry.posts[i]?.tributaryM ?? 0;
      return { ...p, pullN: raised(p.pullN, set.raise), horizontalN: ((shearN * trib) / lengthM / 2) * set.raise };
    });
    return {
      direction,
      enclosure,
      upliftN: raised(t.upliftN, set.raise),
      shearN: shearN * set.raise,
      overturningNm: raised(aboutLee, set.raise),
      surfaces: surfacesOf(patches),
      posts,
    };
  }
  const toward = direction === 'normalFromLeft' ? 'right' : 'left';
  const sign = toward === 'right' ? 1 : -1;
  const bare = totalsAcross(patches, { shearN: 0, atM: 0 }, structure, toward);
  const leastN = set.leastLoads ? (LEAST_WALL_PA * eaveM + LEAST_ROOF_PA * Math.max(ridgeM - eaveM, 0)) * lengthM : 0;
  const push = { shearN: sign * Math.max(0, leastN - bare.shearN), atM: section.centreM };
  const t = totalsAcross(patches, push, structure, toward);
  const posts = postReactions(patches, push, structure, geometry.posts).map((p) => ({
    ...p,
    pullN: raised(p.pullN, set.raise),
    horizontalN: p.horizontalN * set.raise,
  }));
  return {
    direction,
    enclosure,
    upliftN: raised(t.upliftN, set.raise),
    shearN: t.shearN * set.raise,
    overturningNm: raised(t.overturningNm, set.raise),
    surfaces: surfacesOf(patches),
    posts,
  };
};

/** By how much the demand is raised where coefficients were recalled and not read. */
export const recalledRaise = (standard: 'ASCE 7-16' | 'EN 1991-1-4', kind: StructureInputs['kind']): number =>
  standard === 'EN 1991-1-4' || kind === 'roundArch' ? MEMORY_RAISE : 1;

/** Every wind of ASCE 7-16: three directions, closed and with one side open, suction and push inside. */
export const asceVariants = (shape: WindShape, qPa: number, raise: number): WindVariant[] =>
  [...acrossExternal(shape), ...alongExternal(shape)].flatMap((external) =>
    (['enclosed', 'partiallyEnclosed'] as const).flatMap((enclosure) =>
      [1, -1].map((sign) => workOut(shape, external, enclosure, { qPa, gust: GUST_FACTOR, inside: sign * GCPI[enclosure], raise, leastLoads: true })),
    ),
  );

const enAcross = (shape: WindShape): External[] => {
  const { structure, geometry, pitchDeg } = shape;
  const { lengthM, widthM, ridgeM } = structure;
  const e = Math.min(lengthM, 2 * ridgeM);
  const strip = e / 10 / (widthM / 2);
  const pieces = piecesOf(structure, geometry);
  const cp = (zone: keyof typeof EN_DUOPITCH, set: 'suction' | 'pressure') => linear(pitchDeg, EN_DUOPITCH[zone][set]);
  const sets = (['suction', 'pressure'] as const).flatMap((w) => (['suction', 'pressure'] as const).map((l) => [w, l] as const));
  return DIRECTIONS.flatMap((direction) =>
    sets.map(([w, l]) => {
      const fromLeft = direction === 'normalFromLeft';
      const coefficients = pieces.flatMap((piece): Coefficients => {
        if (wallPiece(piece)) return [whole(piece, (piece.surface === 'wallLeft') === fromLeft ? EN_WALLS.windward : EN_WALLS.leeward, piece.surface, lengthM)];
        // Left to right a slope begins with its strip when it lies behind (eave or ridge), and the wind from the right sees it mirrored.
        const [first, second] = cutPiece(piece, [fromLeft ? strip : 1 - strip]);
        if (!first || !second) return [];
        const [edge, rest] = fromLeft ? [first, second] : [second, first];
        if ((piece.surface === 'roofLeft') !== fromLeft) return [whole(edge, cp('J', l), 'zoneJ', lengthM), whole(rest, cp('I', l), 'zoneI', lengthM)];
        const corner = e / 4;
        return [
          { piece: edge, fromM: 0, toM: corner, cp: cp('F', w), label: 'zoneF' },
          { piece: edge, fromM: corner, toM: lengthM - corner, cp: cp('G', w), label: 'zoneG' },
          { piece: edge, fromM: lengthM - corner, toM: lengthM, cp: cp('F', w), label: 'zoneF' },
          whole(rest, cp('H', w), 'zoneH', lengthM),
        ];
      });
      return { direction, fromBack: false, coefficients, endPushM2: 0 };
    }),
  );
};

const enAlong = (shape: WindShape): External[] => {
  const { structure, geometry, pitchDeg } = shape;
  const { lengthM, widthM, ridgeM } = structure;
  const e = Math.min(widthM, 2 * ridgeM);
  const eaveStrip = e / 4 / (widthM / 2);
  const cp = (zone: keyof typeof EN_DUOPITCH_ALONG) => linear(pitchDeg, EN_DUOPITCH_ALONG[zone]);
  const pieces = piecesOf(structure, geometry);
  return [false, true].map((fromBack) => {
    const place = (a: number, b: number) => (fromBack ? { fromM: lengthM - Math.min(b, lengthM), toM: lengthM - a } : { fromM: a, toM: Math.min(b, lengthM) });
    const coefficients = pieces.flatMap((piece): Coefficients => {
      if (wallPiece(piece)) return [whole(piece, EN_WALLS.leeward, piece.surface, lengthM)];
      const left = piece.surface === 'roofLeft';
      const [first, second] = cutPiece(piece, [left ? eaveStrip : 1 - eaveStrip]);
      const eave = (left ? first : second) ?? piece;
      const ridge = (left ? second : first) ?? piece;
      const rest = e / 10;
      return [
        { piece: eave, ...place(0, rest), cp: cp('F'), label: 'zoneF' },
        { piece: ridge, ...place(0, rest), cp: cp('G'), label: 'zoneG' },
        { piece, ...place(rest, e / 2), cp: cp('H'), label: 'zoneH' },
        { piece, ...place(e / 2, lengthM), cp: cp('I'), label: 'zoneI' },
      ].filter((p) => p.toM > p.fromM);
    });
    return { direction: 'parallel' as const, fromBack, coefficients, endPushM2: sectionOf(geometry).areaM2 * (EN_WALLS.windward - EN_WALLS.leeward) };
  });
};

/** Winds of EN 1991-1-4 on a duopitch: the walls and the inside are recalled, so the demand is raised. `qPa` carries the factor of EN 1990. */
export const enVariants = (shape: WindShape, qPa: number, raise: number): WindVariant[] =>
  [...enAcross(shape), ...enAlong(shape)].flatMap((external) =>
    (['enclosed', 'partiallyEnclosed'] as const).flatMap((enclosure) =>
      [1, -1].map((sign) => workOut(shape, external, enclosure, { qPa, gust: 1, inside: sign * EN_INSIDE[enclosure], raise, leastLoads: false })),
    ),
  );
