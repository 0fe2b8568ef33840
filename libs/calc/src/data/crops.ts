import type { CropKey } from '@lathwork/model';
import { cited } from '../sources/cite.js';

export interface CropLimits {
  damageBeginsC: number;
  usuallyKilledC: number;
  heatHurtsC: number;
}

/** Where two lists disagree (lettuce, pea, potato) the warmer limit warns first. Frost classes: FROST-CLASSES-2022, PURDUE-HO-203. */
const limits = (damage: number, killed: number, heat: number): CropLimits => ({
  damageBeginsC: cited(damage, 'degC', 'CROP-LIMITS-MEMORY', 'damage begins', { min: -15, max: 15 }),
  usuallyKilledC: cited(killed, 'degC', 'CROP-LIMITS-MEMORY', 'usually killed, warmer end', { min: -15, max: 2 }),
  heatHurtsC: cited(heat, 'degC', 'CROP-LIMITS-MEMORY', 'set is lost, bolting begins', { min: 24, max: 42 }),
});

/** Leaf temperatures. For warm crops "damage begins" is chilling, above freezing. */
export const CROPS: Readonly<Record<CropKey, CropLimits>> = {
  lettuce: limits(-1, -4, 28),
  spinach: limits(-5, -9, 27),
  kale: limits(-6, -10, 29),
  pea: limits(-2, -4, 28),
  radish: limits(-2, -4, 29),
  carrot: limits(-4, -7, 30),
  onion: limits(-5, -8, 32),
  broccoli: limits(-3, -6, 28),
  potato: limits(0, -2, 30),
  tomato: limits(10, -1, 34),
  pepper: limits(12, 0, 34),
  cucumber: limits(11, 0, 36),
  bean: limits(8, -1, 34),
  basil: limits(10, 0, 36),
};

/** A leaf's limit is not known better than this. */
export const CROP_MARGIN_K = cited(2, 'K', 'THERMAL-JUDGEMENT', 'margin on crop limits', { min: 1, max: 3 });
