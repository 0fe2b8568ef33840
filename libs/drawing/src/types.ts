import type { GeometryResult, StructureInputs } from '@lathwork/model';
import type { Words } from './words.js';

/** Which unit stands first. The second stands behind it in brackets. */
export type UnitSystem = 'metric' | 'us';

export type XY = readonly [xMm: number, yMm: number];

/** The line types of the house; the class is the meaning, the width is set once, in DRAWING_CSS. */
export const LINE_TYPES = ['cut', 'vis', 'thin', 'hid', 'over', 'axis', 'temp', 'grid'] as const;
export type LineType = (typeof LINE_TYPES)[number];

export interface Scale {
  /** 24 means 1:24. */
  denominator: number;
  text: string;
}

/** What a drawing had to give up for its box: nothing, some dimension chains, or its scale. A page prefers the first. */
export type Fit = 'whole' | 'reduced' | 'notToScale';

/** One finished drawing. In its SVG one user unit is one millimetre of paper. */
export interface Drawing {
  svg: string;
  widthMm: number;
  heightMm: number;
  /** 5 to 250 characters: the key dimensions, or what the chart shows. Also the accessible name of the SVG. */
  alt: string;
  /** For the line key of the sheet, which shows only what is used there. */
  usedLineTypes: readonly LineType[];
  /** Null: not drawn to scale. */
  scale: Scale | null;
  /** Marks and names that found no place in the drawing: the page lists them below it. */
  unplaced: readonly string[];
  fit: Fit;
}

export interface Shelter {
  geometry: GeometryResult;
  structure: StructureInputs;
}

/** Luggage tag for a thing from the pile, ring for a thing to buy. */
export type MarkSource = 'pile' | 'buy';

/** What a mark can point at. An opening is named by its id. */
export type MarkTarget = 'tube' | 'film' | 'batten' | 'sill' | 'knee' | 'brace' | 'anchor' | 'barrel' | 'rope' | { openingId: string };

export interface Mark {
  label: string;
  source: MarkSource;
  target: MarkTarget;
}

export interface Box {
  wMm: number;
  hMm: number;
}

/** What every view of the shelter takes. The drawing is never larger than the box. */
export interface ViewOptions {
  shelter: Shelter;
  units: UnitSystem;
  boxMm: Box;
  words?: Words;
  /** Draw the view title (name, compass side, scale) and the scale bar inside the drawing. Default true. */
  heading?: boolean;
}

/** A limit drawn as a broken line across a chart and named at its right end. */
export interface LimitLine {
  label: string;
  valueC: number;
}

/** Thrown inside the library when words cannot be set without lying over something; a view then gives up something else. Letters never shrink. */
export class DoesNotFitError extends Error {}
