import type { Plate } from './plate.js';
import type { Scale, UnitSystem } from './types.js';
import type { Words } from './words.js';

/** Standard series; the last ones are for long tunnels only. 1:24 is half an inch to a foot. */
export const SCALES: Record<UnitSystem, readonly number[]> = { metric: [10, 20, 25, 50, 100, 200, 500], us: [12, 16, 24, 32, 48, 64, 96, 192, 384, 600] };

export const scaleOf = (denominator: number): Scale => ({ denominator, text: `1:${denominator}` });

/** Largest scale of the series at which `fits` holds. */
export function pickScale(units: UnitSystem, fits: (mmPerMetre: number) => boolean): Scale | null {
  const denominator = SCALES[units].find((d) => fits(1000 / d));
  return denominator === undefined ? null : scaleOf(denominator);
}

const FOOT_M = 0.3048;
const FEET_STEPS = [1, 2, 3, 5, 10, 20, 50];
const METRE_STEPS = [0.5, 1, 2, 3, 5, 10, 20];
const largest = (steps: readonly number[], fits: (n: number) => boolean): number => [...steps].reverse().find(fits) ?? steps[0] ?? 1;

export interface BarLengths {
  feet: number;
  metres: number;
  widthMm: number;
}
export function barLengths(scale: Scale, maxMm: number): BarLengths {
  const k = 1000 / scale.denominator;
  const feet = largest(FEET_STEPS, (n) => n * FOOT_M * k <= maxMm);
  const metres = largest(METRE_STEPS, (n) => n * k <= maxMm);
  return { feet, metres, widthMm: Math.max(feet * FOOT_M, metres) * k };
}
export const SCALE_BAR_HEIGHT_MM = 9.4;

/** Feet above, metres below, on one line; y is the top of its box. */
export function drawScaleBar(plate: Plate, x: number, y: number, scale: Scale, maxMm: number, words: Words): void {
  const k = 1000 / scale.denominator;
  const { feet, metres } = barLengths(scale, maxMm);
  const top = y + 3.4;
  const cells = (n: number, lengthMm: number, cellY: number, firstDark: boolean): void => {
    for (let i = 0; i < n; i++) plate.rect(x + (i * lengthMm) / n, cellY, lengthMm / n, 1.2, i % 2 === (firstDark ? 0 : 1) ? 'box solid' : 'box');
  };
  const parts = (n: number, small: number): number => (n <= 1 ? small : n <= 5 ? n : 5);
  cells(parts(feet, 2), feet * FOOT_M * k, top, true);
  cells(parts(metres, 4), metres * k, top + 1.2, false);
  plate.text(x, top - 0.9, '0', 'small');
  plate.text(x + feet * FOOT_M * k, top - 0.9, `${feet} ${words.feet}`, 'small', 'end');
  plate.text(x, top + 5.3, '0', 'small');
  plate.text(x + metres * k, top + 5.3, `${metres} ${words.metres}`, 'small', 'end');
}
