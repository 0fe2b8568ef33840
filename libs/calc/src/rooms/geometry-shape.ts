import type { StructureInputs } from '@lathwork/model';

/** One point of a bow's outline, in the plane of the bow. */
export interface ProfilePoint {
  xM: number;
  zM: number;
}

/** The cross-section that every later step of the room reads: one value for three kinds of shelter. */
export interface Shape {
  /** Left foot to right foot. */
  profile: ProfilePoint[];
  /** Height of the roof line above the ground at x; only for 0 <= x <= width. */
  topAt: (xM: number) => number;
  sectionM2: number;
  /** Straight legs: left, right. */
  leftLegM: number;
  rightLegM: number;
  /** Length of the film over the roof, eave to eave (arch: the arc; lean-to: the slope). */
  roofLineM: number;
  /** Over the top of one bow, ground to ground; the lean-to ends at its host wall. */
  girthM: number;
  /** Slope of the chord from eave to ridge. */
  slopeDeg: number;
  /** Mean tilt of the roof skin from the horizontal. */
  meanTiltDeg: number;
  /** How far an arch of more than a half circle stands out beyond its feet. */
  bulgeM: number;
}

const ARC_PIECES = 32;
const DEG = 180 / Math.PI;

const gable = (widthM: number, eaveM: number, ridgeM: number): Shape => {
  const half = widthM / 2;
  const rise = Math.max(ridgeM - eaveM, 0);
  const rafter = Math.hypot(half, rise);
  return {
    profile: [
      { xM: 0, zM: 0 },
      { xM: 0, zM: eaveM },
      { xM: half, zM: eaveM + rise },
      { xM: widthM, zM: eaveM },
      { xM: widthM, zM: 0 },
    ],
    topAt: (x) => eaveM + rise * (1 - Math.abs(x - half) / half),
    sectionM2: widthM * eaveM + (widthM * rise) / 2,
    leftLegM: eaveM,
    rightLegM: eaveM,
    roofLineM: 2 * rafter,
    girthM: 2 * eaveM + 2 * rafter,
    slopeDeg: Math.atan2(rise, half) * DEG,
    meanTiltDeg: Math.atan2(rise, half) * DEG,
    bulgeM: 0,
  };
};

/**
 * An arc of one circle on two straight legs. With the rise h and half the width a: radius R = (a2 + h2) / 2h, and the
 * arc spans 2*phi with phi = 2 atan(h / a), which also holds beyond the half circle.
 */
const arch = (widthM: number, eaveM: number, ridgeM: number): Shape => {
  const half = widthM / 2;
  const rise = ridgeM - eaveM;
  if (rise <= 0) return gable(widthM, eaveM, eaveM);
  const radius = (half * half + rise * rise) / (2 * rise);
  const phi = 2 * Math.atan2(rise, half);
  const centreZ = ridgeM - radius;
  const arc = Array.from({ length: ARC_PIECES + 1 }, (_, i) => {
    const angle = -phi + (2 * phi * i) / ARC_PIECES;
    return { xM: half + radius * Math.sin(angle), zM: centreZ + radius * Math.cos(angle) };
  });
  const legs = eaveM > 0;
  return {
    profile: legs ? [{ xM: 0, zM: 0 }, ...arc, { xM: widthM, zM: 0 }] : arc,
    topAt: (x) => centreZ + Math.sqrt(Math.max(radius * radius - (x - half) ** 2, 0)),
    sectionM2: widthM * eaveM + ((radius * radius) / 2) * (2 * phi - Math.sin(2 * phi)),
    leftLegM: eaveM,
    rightLegM: eaveM,
    roofLineM: 2 * radius * phi,
    girthM: 2 * eaveM + 2 * radius * phi,
    slopeDeg: Math.atan2(rise, half) * DEG,
    meanTiltDeg: (phi / 2) * DEG,
    bulgeM: phi > Math.PI / 2 ? radius - half : 0,
  };
};

const leanTo = (widthM: number, eaveM: number, ridgeM: number): Shape => {
  const rise = Math.max(ridgeM - eaveM, 0);
  const slope = Math.hypot(widthM, rise);
  return {
    profile: [
      { xM: 0, zM: 0 },
      { xM: 0, zM: eaveM },
      { xM: widthM, zM: eaveM + rise },
      { xM: widthM, zM: 0 },
    ],
    topAt: (x) => eaveM + (rise * x) / widthM,
    sectionM2: widthM * (eaveM + rise / 2),
    leftLegM: eaveM,
    rightLegM: eaveM + rise,
    roofLineM: slope,
    girthM: eaveM + slope,
    slopeDeg: Math.atan2(rise, widthM) * DEG,
    meanTiltDeg: Math.atan2(rise, widthM) * DEG,
    bulgeM: 0,
  };
};

/** The cross-section of the structure. A ridge that is not above the eave is drawn flat at the eave (and noted by the room). */
export const shapeOf = (structure: StructureInputs): Shape => {
  const { kind, widthM, eaveM, ridgeM } = structure;
  if (kind === 'roundArch') return arch(widthM, eaveM, ridgeM);
  return kind === 'leanTo' ? leanTo(widthM, eaveM, ridgeM) : gable(widthM, eaveM, ridgeM);
};
