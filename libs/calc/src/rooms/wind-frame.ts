import type { GeometryResult, StructureInputs } from '@lathwork/model';
import { overturningNm, twoLegReactions, type PlaneForce } from '../physics/statics.js';

/** A flat piece of the outline of a bow, left foot to right foot, and what it is. */
export interface Piece {
  surface: 'wallLeft' | 'wallRight' | 'roofLeft' | 'roofRight' | 'arch';
  /** Place of its middle across the span, 0 left to 1 right. */
  acrossFrac: number;
  from: { xM: number; zM: number };
  to: { xM: number; zM: number };
  /** False for the open side of a lean-to, which the host wall closes. */
  loaded: boolean;
}

/** Pressure on a piece at a place along the ridge: constant over `fromM`..`toM`, positive pushes in. */
export interface Patch {
  piece: Piece;
  fromM: number;
  toM: number;
  netPa: number;
  /** External coefficient, for the table of surfaces. */
  cp: number;
  /** What the table of surfaces calls it. */
  label: string;
}

/** Extra push across or along at a height that no patch carries (the least load of the standard). */
export interface Push {
  shearN: number;
  atM: number;
}

const surfaceOf = (kind: StructureInputs['kind'], piece: { vertical: boolean; midX: number; widthM: number }): Piece['surface'] => {
  const left = piece.midX < piece.widthM / 2;
  if (piece.vertical) return left ? 'wallLeft' : 'wallRight';
  if (kind === 'roundArch') return 'arch';
  return kind === 'leanTo' || left ? 'roofLeft' : 'roofRight';
};

/** The outline that the drawings show, cut into flat pieces. */
export const piecesOf = (structure: StructureInputs, geometry: GeometryResult): Piece[] => {
  const points = geometry.bowProfile;
  const { widthM } = structure;
  return points.slice(1).flatMap((to, i) => {
    const from = points[i];
    if (!from || Math.hypot(to.xM - from.xM, to.zM - from.zM) < 1e-9) return [];
    const onFeet = (x: number) => Math.abs(x) < 1e-6 || Math.abs(x - widthM) < 1e-6;
    const vertical = Math.abs(to.xM - from.xM) < 1e-9 && onFeet(to.xM) && (structure.kind !== 'roundArch' || Math.min(from.zM, to.zM) < 1e-9);
    const midX = (from.xM + to.xM) / 2;
    const surface = surfaceOf(structure.kind, { vertical, midX, widthM });
    return [
      {
        surface,
        acrossFrac: midX / widthM,
        from: { xM: from.xM, zM: from.zM },
        to: { xM: to.xM, zM: to.zM },
        loaded: !(structure.kind === 'leanTo' && surface === 'wallRight'),
      },
    ];
  });
};

/** A piece cut in equal parts, for coefficients that change across the span. */
export const cutPiece = (piece: Piece, fractions: readonly number[]): Piece[] => {
  const marks = [0, ...fractions.filter((f) => f > 1e-9 && f < 1 - 1e-9), 1];
  const at = (f: number) => ({ xM: piece.from.xM + f * (piece.to.xM - piece.from.xM), zM: piece.from.zM + f * (piece.to.zM - piece.from.zM) });
  const widthM = piece.acrossFrac > 1e-9 ? (piece.from.xM + piece.to.xM) / 2 / piece.acrossFrac : 1;
  return marks.slice(1).map((to, i) => {
    const [a, b] = [at(marks[i] ?? 0), at(to)];
    return { ...piece, from: a, to: b, acrossFrac: (a.xM + b.xM) / 2 / widthM };
  });
};

/**
 * Force of the patches on the stretch from y0 to y1 of the ridge. The outward normal of a piece that runs (dx, dz) is
 * (-dz, dx); a pressure p pushes against it with (p dz, -p dx) for each metre of ridge.
 */
export const forcesOn = (patches: readonly Patch[], fromM: number, toM: number): PlaneForce[] =>
  patches.flatMap(({ piece, fromM: a, toM: b, netPa }) => {
    const shareM = Math.min(b, toM) - Math.max(a, fromM);
    if (shareM <= 0 || !piece.loaded) return [];
    const dx = piece.to.xM - piece.from.xM;
    const dz = piece.to.zM - piece.from.zM;
    return [{ xN: netPa * dz * shareM, zN: -netPa * dx * shareM, xM: (piece.from.xM + piece.to.xM) / 2, zM: (piece.from.zM + piece.to.zM) / 2 }];
  });

export interface PostReaction {
  postId: string;
  /** Strength level, wind alone; positive pulls the post up. */
  pullN: number;
  horizontalN: number;
}

/** The stretch of ridge a post answers for: the tributary lengths laid end to end from the front. */
const stretches = (posts: GeometryResult['posts']): { post: GeometryResult['posts'][number]; fromM: number; toM: number }[] =>
  (['A', 'B'] as const).flatMap((row) => {
    let at = 0;
    return posts
      .filter((p) => p.row === row)
      .sort((p, q) => p.number - q.number)
      .map((post) => {
        const fromM = at;
        at += post.tributaryM;
        return { post, fromM, toM: at };
      });
  });

/**
 * What the wind alone asks of every post. Each bow is a frame on two feet that carries the patches on its own stretch,
 * so its vertical reactions follow from equilibrium; both legs share the push. A patch presses alike along its length,
 * so its reactions are found once for a metre of ridge and then taken by the length that a post answers for.
 */
export const postReactions = (patches: readonly Patch[], push: Push, structure: StructureInputs, posts: GeometryResult['posts']): PostReaction[] => {
  const perMetre = patches.map((patch) => ({ patch, r: twoLegReactions(forcesOn([{ ...patch, fromM: 0, toM: 1 }], 0, 1), structure.widthM) }));
  const extra = twoLegReactions([{ xN: push.shearN, zN: 0, xM: 0, zM: push.atM }], structure.widthM);
  return stretches(posts).map(({ post, fromM, toM }) => {
    const left = post.row === 'A';
    const share = (toM - fromM) / structure.lengthM;
    let pullN = share * (left ? extra.leftN : extra.rightN);
    let shearN = share * push.shearN;
    for (const { patch, r } of perMetre) {
      const lengthM = Math.min(patch.toM, toM) - Math.max(patch.fromM, fromM);
      if (lengthM <= 0) continue;
      pullN += lengthM * (left ? r.leftN : r.rightN);
      shearN += lengthM * r.shearN;
    }
    return { postId: post.postId, pullN, horizontalN: Math.abs(shearN) / 2 };
  });
};

/** Totals of the whole shelter, across the ridge. */
export const totalsAcross = (
  patches: readonly Patch[],
  push: Push,
  structure: StructureInputs,
  toward: 'right' | 'left',
): { upliftN: number; shearN: number; overturningNm: number } => {
  const forces = [...forcesOn(patches, 0, structure.lengthM), { xN: push.shearN, zN: 0, xM: 0, zM: push.atM }];
  const r = twoLegReactions(forces, structure.widthM);
  return { upliftN: r.upliftN, shearN: Math.abs(r.shearN), overturningNm: overturningNm(forces, structure.widthM, toward) };
};
