import type { Shelter } from '../types.js';
import { openingsIn } from './shelter.js';

export interface FloorBox {
  x: number;
  y: number;
  w: number;
  l: number;
}
export interface Barrel {
  x: number;
  y: number;
  r: number;
}

/** A drum of 208 litres is about 0.58 m across; others in proportion. For the drawing only. */
const DRUM = { litres: 208, acrossM: 0.58 };
const CLEAR_M = 0.3;
const AISLE_M = 0.45;
const TWO_BEDS_FROM_M = 2.3;

/** Barrels stand in a row at the back, on the side that has no door there. */
function barrelsOf({ structure }: Shelter, x: 'left' | 'right'): Barrel[] {
  const out: Barrel[] = [];
  let y = structure.lengthM - 0.12;
  for (const store of structure.waterStores) {
    const r = (DRUM.acrossM * Math.cbrt(store.volumeL / DRUM.litres)) / 2;
    for (let i = 0; i < store.count && y - 2 * r > structure.lengthM * 0.35; i++) {
      out.push({ x: x === 'right' ? structure.widthM - r - 0.08 : r + 0.08, y: y - r, r });
      y -= 2 * r + 0.06;
    }
  }
  return out;
}

/** A first proposal for beds of the asked area: along the sides, the aisle in line with the door. Sizes are not dimensioned. */
export function floorPlan(shelter: Shelter): { beds: FloorBox[]; barrels: Barrel[] } {
  const { structure } = shelter;
  const { widthM: w, lengthM: l } = structure;
  const door = openingsIn('front', shelter).find((s) => s.opening.kind === 'door');
  const doorX = door ? (door.u1 + door.u2) / 2 : w / 2;
  const long = l - 2 * CLEAR_M;
  const bedSide = doorX > w / 2 ? 'left' : 'right';
  const two = w >= TWO_BEDS_FROM_M;
  const barrels = barrelsOf(shelter, two || bedSide === 'left' ? 'right' : 'left');
  if (structure.bedsM2 <= 0.2 || long < 0.6) return { beds: [], barrels };
  const barrelsFrom = barrels.length > 0 ? Math.min(...barrels.map((b) => b.y - b.r)) : l;
  if (!two) {
    const width = Math.min(structure.bedsM2 / long, w - AISLE_M - CLEAR_M);
    return { beds: [{ x: bedSide === 'left' ? 0.08 : w - width - 0.08, y: CLEAR_M, w: width, l: long }], barrels };
  }
  const shorter = Math.max(Math.min(long, barrelsFrom - 2 * CLEAR_M), 0.5);
  const room = door ? Math.min(door.u1, w - door.u2) : Infinity;
  const width = Math.min(structure.bedsM2 / (long + shorter), (w - AISLE_M) / 2 - 0.08, Math.max(room, 0.5));
  return {
    beds: [
      { x: 0.08, y: CLEAR_M, w: width, l: long },
      { x: w - 0.08 - width, y: CLEAR_M, w: width, l: shorter },
    ],
    barrels,
  };
}
