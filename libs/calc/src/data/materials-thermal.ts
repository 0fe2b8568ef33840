import type { StructureInputs } from '@lathwork/model';
import { cited } from '../sources/cite.js';

export interface FloorFinish {
  /** Share of the sun taken up. */
  absorbedFrac: number;
  /** Between the walked-on surface and the soil, m2 K/W. */
  resistanceM2KPerW: number;
  /** Heat store of the finish itself, J/(m2 K). */
  storeJPerM2K: number;
  /** How freely it gives off water when moist, against an open water surface. */
  wetFrac: number;
}

/** What lies on the soil. */
export const FLOORS: Readonly<Record<StructureInputs['floor'], FloorFinish>> = {
  soil: {
    absorbedFrac: cited(0.8, '1', 'THERMAL-MEMORY', 'dark soil', { min: 0.7, max: 0.9 }),
    resistanceM2KPerW: 0,
    storeJPerM2K: 2000,
    wetFrac: cited(0.4, '1', 'THERMAL-JUDGEMENT', 'moist bare soil against open water', { min: 0.2, max: 0.7 }),
  },
  mulch: {
    absorbedFrac: cited(0.65, '1', 'THERMAL-MEMORY', 'straw or chips', { min: 0.5, max: 0.8 }),
    resistanceM2KPerW: cited(0.5, 'm2.K/W', 'THERMAL-MEMORY', '50 mm of dry mulch at 0.1 W/(m K)', { min: 0.3, max: 1 }),
    storeJPerM2K: 8000,
    wetFrac: 0.1,
  },
  gravel: {
    absorbedFrac: cited(0.6, '1', 'THERMAL-MEMORY', 'grey gravel', { min: 0.5, max: 0.75 }),
    resistanceM2KPerW: cited(0.12, 'm2.K/W', 'THERMAL-MEMORY', '70 mm at 0.6 W/(m K)', { min: 0.05, max: 0.25 }),
    storeJPerM2K: 50_000,
    wetFrac: 0.1,
  },
  brick: {
    absorbedFrac: cited(0.65, '1', 'THERMAL-MEMORY', 'red brick', { min: 0.55, max: 0.75 }),
    resistanceM2KPerW: cited(0.08, 'm2.K/W', 'THERMAL-MEMORY', '60 mm at 0.75 W/(m K)', { min: 0.05, max: 0.12 }),
    storeJPerM2K: 45_000,
    wetFrac: 0.1,
  },
  decking: {
    absorbedFrac: cited(0.7, '1', 'THERMAL-MEMORY', 'weathered boards', { min: 0.55, max: 0.8 }),
    resistanceM2KPerW: cited(0.35, 'm2.K/W', 'THERMAL-MEMORY', '25 mm board over an air gap', { min: 0.25, max: 0.5 }),
    storeJPerM2K: 15_000,
    wetFrac: 0.05,
  },
};

export const SOIL = {
  moistJPerM3K: cited(2.2e6, 'J/(m3.K)', 'THERMAL-MEMORY', 'moist soil, volumetric heat', { min: 2.0e6, max: 2.6e6 }),
  dryJPerM3K: cited(1.4e6, 'J/(m3.K)', 'THERMAL-MEMORY', 'dry soil, volumetric heat', { min: 1.2e6, max: 1.5e6 }),
  /** Conductivity of the top 14 cm of a dry floor, against the moist soil under it. */
  dryTopFactor: cited(0.35, '1', 'THERMAL-MEMORY', 'dry 0.25 to 0.5 against moist 0.8 to 1.5 W/(m K)', { min: 0.2, max: 0.6 }),
  emittedFrac: cited(0.95, '1', 'THERMAL-MEMORY', 'soil, emissivity', { min: 0.9, max: 0.98 }),
} as const;

export const LEAF = {
  emittedFrac: cited(0.95, '1', 'THERMAL-MEMORY', 'leaf, emissivity', { min: 0.94, max: 0.98 }),
  absorbedFrac: cited(0.7, '1', 'THERMAL-MEMORY', 'canopy, sun taken up', { min: 0.5, max: 0.8 }),
  /** Share of the sun on a watered canopy that becomes vapour. */
  evaporatedFrac: cited(0.5, '1', 'NRAES-33', 'E of a full canopy', { min: 0.2, max: 1 }),
  storeJPerM2K: cited(2000, 'J/(m2.K)', 'THERMAL-MEMORY', 'half a kilogram of water per square metre of leaf', { min: 800, max: 8000 }),
  lengthM: cited(0.06, 'm', 'THERMAL-JUDGEMENT', 'width of a leaf', { min: 0.02, max: 0.2 }),
  /** Leaf over bed area, and the least leaf that is followed where no bed is given. */
  ofBedsFrac: cited(0.5, '1', 'THERMAL-JUDGEMENT', 'young crop over its bed', { min: 0.2, max: 0.9 }),
  leastOfFloorFrac: cited(0.03, '1', 'THERMAL-JUDGEMENT', 'a tray of seedlings'),
} as const;

export const WATER = {
  storeJPerLK: cited(4186, 'J/(L.K)', 'THERMAL-MEMORY', 'water'),
  /** Skin of a full 208 L drum, and how it shrinks with volume (two thirds power). */
  drumM2: cited(1.85, 'm2', 'HEAT-TRANSFER-TEXTS', '208 L drum, 0.58 m by 0.88 m'),
  drumL: 208,
  emittedFrac: cited(0.9, '1', 'THERMAL-MEMORY', 'painted drum, emissivity'),
  absorbedFrac: {
    dark: cited(0.92, '1', 'THERMAL-MEMORY', 'matt black', { min: 0.9, max: 0.95 }),
    mid: cited(0.7, '1', 'THERMAL-MEMORY', 'blue, red or rust', { min: 0.6, max: 0.85 }),
    light: cited(0.4, '1', 'THERMAL-MEMORY', 'white or clear', { min: 0.3, max: 0.5 }),
  },
} as const;

/** Light that crosses the house above the floor and meets frame, pots and plants; it warms the air. */
export const STRUCTURE_FRAC = cited(0.15, '1', 'THERMAL-JUDGEMENT', 'five to ten per cent of all light straight to the air', { min: 0.05, max: 0.3 });
