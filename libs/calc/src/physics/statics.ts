import { cited } from '../sources/cite.js';

/** Standard acceleration of gravity, by which masses become weights. */
export const GRAVITY_M_PER_S2 = 9.806_65;

const STEEL_DENSITY = cited(7850, 'kg/m3', 'STATICS', 'density of steel; 10.69 (D - t) t lb/ft in US units', { min: 7750, max: 7900 });
const PA_PER_PSI = 6894.757;
/** Yield stress taken for reclaimed tube nobody has a certificate for. */
export const UNKNOWN_TUBE_YIELD_PA = cited(30_000 * PA_PER_PSI, 'Pa', 'TUBE-STEEL-MEMORY', 'unknown reclaimed tube: 30 ksi');
/** Safety factor on yield in bending. */
export const BENDING_OMEGA = cited(1.67, '1', 'TUBE-STEEL-MEMORY', 'allowable strength, flexure');

/** Value of a piecewise linear curve; held at its ends. */
export const linear = (x: number, points: readonly (readonly [number, number])[]): number => {
  const first = points[0];
  const last = points.at(-1);
  if (!first || !last) throw new Error('linear: no points');
  if (x <= first[0]) return first[1];
  for (let i = 1; i < points.length; i += 1) {
    const [x0, y0] = points[i - 1] ?? first;
    const [x1, y1] = points[i] ?? last;
    if (x <= x1) return x1 === x0 ? y1 : y0 + ((y1 - y0) * (x - x0)) / (x1 - x0);
  }
  return last[1];
};

/** Like `linear`, but straight in the logarithm of x: the way area-dependent wind coefficients are drawn. */
export const logLinear = (x: number, points: readonly (readonly [number, number])[]): number =>
  linear(
    Math.log(x),
    points.map(([a, y]) => [Math.log(a), y] as const),
  );

export interface Section {
  areaM2: number;
  /** Second moment of area, m4. */
  inertia: number;
  /** Elastic section modulus, m3. */
  elastic: number;
  /** Plastic section modulus, m3. */
  plastic: number;
  massKgPerM: number;
}

const finish = (areaM2: number, inertia: number, depthM: number, plastic: number): Section => ({
  areaM2,
  inertia,
  elastic: inertia / (depthM / 2),
  plastic,
  massKgPerM: areaM2 * STEEL_DENSITY,
});

/** Round tube: I = pi (D^4 - d^4) / 64, Z = (D^3 - d^3) / 6. */
export const roundTube = (outsideM: number, wallM: number): Section => {
  const inside = Math.max(outsideM - 2 * wallM, 0);
  return finish((Math.PI / 4) * (outsideM ** 2 - inside ** 2), (Math.PI / 64) * (outsideM ** 4 - inside ** 4), outsideM, (outsideM ** 3 - inside ** 3) / 6);
};

/** Square tube with sharp corners: up to six per cent more than a real tube with its rounded corners. */
export const squareTube = (outsideM: number, wallM: number): Section => {
  const inside = Math.max(outsideM - 2 * wallM, 0);
  return finish(outsideM ** 2 - inside ** 2, (outsideM ** 4 - inside ** 4) / 12, outsideM, (outsideM ** 3 - inside ** 3) / 4);
};

/** Solid rectangle, bent about its width: S = b d^2 / 6. */
export const rectangle = (widthM: number, depthM: number): { inertia: number; elastic: number } => ({
  inertia: (widthM * depthM ** 3) / 12,
  elastic: (widthM * depthM ** 2) / 6,
});

/** Moment a section may carry: yield stress times elastic modulus over 1.67. */
export const allowableMomentNm = (elastic: number, yieldPa: number): number => (yieldPa * elastic) / BENDING_OMEGA;

export const simpleBeamMomentNm = (loadNPerM: number, spanM: number): number => (loadNPerM * spanM ** 2) / 8;
export const simpleBeamDeflectionM = (loadNPerM: number, spanM: number, modulusPa: number, inertia: number): number =>
  (5 * loadNPerM * spanM ** 4) / (384 * modulusPa * inertia);

/** Two-hinged parabolic arch, load over the whole plan: thrust w L^2 / 8 h. */
export const archThrustFullN = (loadNPerM: number, spanM: number, riseM: number): number => (loadNPerM * spanM ** 2) / (8 * riseM);
/** The same with load on one half only: w L^2 / 16 h. */
export const archThrustHalfN = (loadNPerM: number, spanM: number, riseM: number): number => (loadNPerM * spanM ** 2) / (16 * riseM);
/** Largest moment under half-span load, at the quarter point: w L^2 / 16 - (w L^2 / 16 h)(3 h / 4) = w L^2 / 64. */
export const archMomentHalfNm = (loadNPerM: number, spanM: number): number => (loadNPerM * spanM ** 2) / 64;
/** Point load at the crown: thrust (25 / 128) W L / h. */
export const archThrustCrownN = (loadN: number, spanM: number, riseM: number): number => ((25 / 128) * loadN * spanM) / riseM;
/** Two-hinged semicircle: thrust 4 w R / 3 pi under a load on plan, W / pi under a crown load. */
export const semicircleThrustFullN = (loadNPerM: number, radiusM: number): number => (4 * loadNPerM * radiusM) / (3 * Math.PI);
export const semicircleThrustCrownN = (loadN: number): number => loadN / Math.PI;

/** Tension of a film sagging f over a span s under a pressure p, per metre of edge: p s^2 / 8 f. */
export const filmTensionNPerM = (pressurePa: number, spanM: number, sagM: number): number => (pressurePa * spanM ** 2) / (8 * sagM);

/** A force in the plane of a bow: x to the right, z up, acting at (xM, zM). */
export interface PlaneForce {
  xN: number;
  zN: number;
  xM: number;
  zM: number;
}

export interface TwoLegReactions {
  /** What each foot has to hold down: positive pulls the foot up. */
  leftN: number;
  rightN: number;
  upliftN: number;
  /** Sum of horizontal forces, positive to the right. */
  shearN: number;
}

/**
 * Vertical reactions of a frame on two feet at x = 0 and x = w. Two unknowns, two equations: no stiffness is needed.
 * Moments about the right foot give the left one; the right one is what is left of the uplift.
 */
export const twoLegReactions = (forces: readonly PlaneForce[], widthM: number): TwoLegReactions => {
  const upliftN = forces.reduce((sum, f) => sum + f.zN, 0);
  const shearN = forces.reduce((sum, f) => sum + f.xN, 0);
  const aboutRight = forces.reduce((sum, f) => sum + f.xN * f.zM + f.zN * (widthM - f.xM), 0);
  const leftN = aboutRight / widthM;
  return { leftN, rightN: upliftN - leftN, upliftN, shearN };
};

/** Overturning moment about the feet on the lee side; wind to the right turns the frame about its right feet. */
export const overturningNm = (forces: readonly PlaneForce[], widthM: number, toward: 'right' | 'left'): number =>
  forces.reduce((sum, f) => sum + (toward === 'right' ? f.xN * f.zM + f.zN * (widthM - f.xM) : -f.xN * f.zM + f.zN * f.xM), 0);

/**
 * Depth for a post set in soil without a floor to hold it: d = 0.5 A (1 + sqrt(1 + 4.36 h / A)), A = 2.34 P / (S1 b),
 * where S1 is the lateral soil pressure at a third of the depth, so the depth is found by going round.
 */
export const embedmentM = (pushN: number, heightM: number, widthM: number, lateralPaPerM: number, isolated: boolean): number => {
  const perM = lateralPaPerM * (isolated ? 2 : 1);
  let d = 1;
  for (let i = 0; i < 200; i += 1) {
    const a = (2.34 * pushN) / (((perM * d) / 3) * widthM);
    const next = 0.5 * a * (1 + Math.sqrt(1 + (4.36 * heightM) / a));
    if (Math.abs(next - d) < 1e-9) return next;
    d = (d + next) / 2;
  }
  return d;
};

/** The same with a stiff floor at grade: d^2 = 4.25 P h / (S3 b), S3 at depth d, hence d = cube root (4.25 P h / (s b)). */
export const embedmentConstrainedM = (momentNm: number, widthM: number, lateralPaPerM: number, isolated: boolean): number =>
  Math.cbrt((4.25 * momentNm) / (lateralPaPerM * (isolated ? 2 : 1) * widthM));
