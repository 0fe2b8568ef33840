import { Type, type Static } from '@sinclair/typebox';
import { isoDate, list, object, oneOf, orUnknown, quantity, text } from '../quantity.js';

/** A wind speed means nothing without its basis, so the basis is part of the value. */
export const WindBasisSchema = object({
  speedMPerS: quantity('m/s', { minimum: 5, maximum: 120 }),
  averaging: oneOf('gust3s', 'mean10min', 'fastestMile'),
  level: oneOf('ultimate', 'service'),
  codeEdition: text(60),
  riskCategory: oneOf('I', 'II', 'III', 'IV', 'none'),
  source: text(200),
  readOn: isoDate(),
});
export type WindBasis = Static<typeof WindBasisSchema>;

export const SnowBasisSchema = object({
  loadPa: quantity('Pa', { minimum: 0, maximum: 30_000 }),
  surface: oneOf('ground', 'roof'),
  level: oneOf('ultimate', 'service'),
  codeEdition: text(60),
  source: text(200),
  readOn: isoDate(),
});
export type SnowBasis = Static<typeof SnowBasisSchema>;

export const SOIL_CLASSES = ['1', '2', '3', '4A', '4B', '5'] as const;

/** Something that stands between the plot and the sun: a wall, a house, a row of trees, seen as a flat screen square to the line of sight. */
export const ObstacleSchema = object({
  bearingDeg: quantity('deg', { minimum: 0, maximum: 360, description: 'from the plot to its middle, clockwise from north' }),
  distanceM: quantity('m', { minimum: 0.5, maximum: 5000 }),
  widthM: quantity('m', { minimum: 0.1, maximum: 5000 }),
  heightM: quantity('m', { minimum: 0, maximum: 2000, description: 'above the ground of the plot' }),
});
export type Obstacle = Static<typeof ObstacleSchema>;

/** The place, as far as a plan may know it: coordinates are rounded to 0.01 degrees before they get here. */
export const SiteInputsSchema = object({
  siteId: Type.String({ format: 'uuid' }),
  latitudeDeg: quantity('deg', { minimum: -90, maximum: 90 }),
  longitudeDeg: quantity('deg', { minimum: -180, maximum: 180 }),
  elevationM: quantity('m', { minimum: -430, maximum: 9000 }),
  timeZone: text(60),
  exposure: oneOf('B', 'C', 'D'),
  nearHilltop: oneOf('no', 'yes', 'unknown'),
  /** Soil class of 24 CFR 3285.202; 5 is uncompacted fill, peat or organic clay. */
  soilClass: orUnknown(oneOf(...SOIL_CLASSES)),
  frostDepthM: orUnknown(quantity('m', { minimum: 0, maximum: 4 })),
  wind: orUnknown(WindBasisSchema),
  snow: orUnknown(SnowBasisSchema),
  /** Fall across the ridge and along it, signed; a below-datum reading is valid. */
  fallAcrossM: orUnknown(quantity('m', { minimum: -5, maximum: 5 })),
  fallAlongM: orUnknown(quantity('m', { minimum: -10, maximum: 10 })),
  stormWindFromDeg: orUnknown(quantity('deg', { minimum: 0, maximum: 360 })),
  permanentAnchors: oneOf('allowed', 'forbidden', 'unknown'),
  glassRule: oneOf('allowed', 'forbidden', 'unknown'),
  shadedFrac: quantity('1', { minimum: 0, maximum: 1, description: 'share of direct sun lost to neighbours and trees over the year' }),
  /** What shades the plot, where someone has measured it. Absent is not measured; an empty list is a free horizon. */
  obstacles: Type.Optional(list(ObstacleSchema, 40)),
});
export type SiteInputs = Static<typeof SiteInputsSchema>;
