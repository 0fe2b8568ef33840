import type { Point } from '../model-types.js';
import type { Shelter, XY } from '../types.js';
import { profile } from './shelter.js';

export type P3 = readonly [x: number, y: number, z: number];
export interface Padding {
  top: number;
  right: number;
  bottom: number;
  left: number;
}

export interface Camera {
  azimuthDeg: number;
  heightDeg: number;
}

const turn = ({ azimuthDeg, heightDeg }: Camera) => {
  const a = (azimuthDeg * Math.PI) / 180;
  const e = (heightDeg * Math.PI) / 180;
  return { sa: Math.sin(a), ca: Math.cos(a), se: Math.sin(e), ce: Math.cos(e) };
};

/** Parallel projection: x right, y away, z up, seen from the azimuth and height of the camera. Larger depth lies farther off. */
const project = (c: Camera, [x, y, z]: P3): { u: number; v: number; depth: number } => {
  const { sa, ca, se, ce } = turn(c);
  const back = x * sa + y * ca;
  return { u: x * ca - y * sa, v: -(z * ce + back * se), depth: back * ce - z * se };
};

export interface View3 {
  at: (p: P3) => XY;
  depth: (p: P3) => number;
  /** Does a face with this outward normal look at the reader? */
  faces: (normal: P3) => boolean;
}

/** Fits the points into a box of paper. The picture is not to scale. */
export function fitView(points: readonly P3[], wMm: number, hMm: number, camera: Camera, pad: Padding): View3 {
  const flat = points.map((p) => project(camera, p));
  const [u0, u1] = [Math.min(...flat.map((p) => p.u)), Math.max(...flat.map((p) => p.u))];
  const [v0, v1] = [Math.min(...flat.map((p) => p.v)), Math.max(...flat.map((p) => p.v))];
  const [w, h] = [wMm - pad.left - pad.right, hMm - pad.top - pad.bottom];
  const k = Math.min(w / Math.max(u1 - u0, 1e-6), h / Math.max(v1 - v0, 1e-6));
  const left = pad.left + (w - (u1 - u0) * k) / 2;
  const top = pad.top + (h - (v1 - v0) * k) / 2;
  return {
    at: (p) => {
      const { u, v } = project(camera, p);
      return [left + (u - u0) * k, top + (v - v0) * k];
    },
    depth: (p) => project(camera, p).depth,
    faces: (n) => project(camera, n).depth < -1e-6,
  };
}

/** A lean-to is seen from its low side, so that its wall stands behind it. */
export const cameraFor = (shelter: Shelter, heightDeg: number): Camera => ({ azimuthDeg: shelter.structure.kind === 'leanTo' ? 38 : -38, heightDeg });

export const p3 = (p: Point): P3 => [p.xM, p.yM, p.zM];
export const bowAt = (shelter: Shelter, y: number): P3[] => profile(shelter).map((p): P3 => [p.x, y, p.z]);
