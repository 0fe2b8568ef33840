import { oneOf } from './quantity.js';

/**
 * What can stand on a list of materials. A key names the thing, not a seller's product; sections are actual
 * millimetres, so that a "2x4" cannot be mistaken for 2 by 4 inches.
 */
export const MATERIAL_KEYS = [
  'frame.tubeSet',
  'film.greenhouse',
  'film.utility',
  'film.innerCover',
  'batten.19x38',
  'board.38x89',
  'board.38x140',
  'sill.89x140',
  'screw.batten',
  'screw.tube',
  'screw.framing',
  'strap.tube',
  'anchor.auger',
  'anchor.pipe',
  'anchor.concreteBag',
  'anchor.sandbag',
  'brace.cable',
  'tape.contact',
  'paint.white',
  'door',
  'door.hardware',
  'window',
  'window.hardware',
  'vent.panel',
  'seal.strip',
  'mesh.rodent',
  'gravel',
  'fabric.ground',
  'barrel.water',
  'rope',
  'thermometer.minMax',
  'shade.cloth',
  'consumables',
  'contingency',
] as const;
export type MaterialKey = (typeof MATERIAL_KEYS)[number];
export const MaterialKeySchema = oneOf(...MATERIAL_KEYS);

export const AMOUNT_UNITS = ['each', 'm', 'm2', 'm3', 'L', 'kg', 'set', 'lump'] as const;
export type AmountUnit = (typeof AMOUNT_UNITS)[number];
export const AmountUnitSchema = oneOf(...AMOUNT_UNITS);

export const CROP_KEYS = [
  'lettuce',
  'spinach',
  'kale',
  'pea',
  'radish',
  'carrot',
  'onion',
  'broccoli',
  'potato',
  'tomato',
  'pepper',
  'cucumber',
  'bean',
  'basil',
] as const;
export type CropKey = (typeof CROP_KEYS)[number];
export const CropKeySchema = oneOf(...CROP_KEYS);
