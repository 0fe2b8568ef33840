import type { DocumentOptions } from '@lathwork/model';

export type Orientation = 'portrait' | 'landscape';
interface Margins {
  top: number;
  right: number;
  bottom: number;
  left: number;
}

/** Width and height of the upright sheet, mm. */
const SHEETS = { a4: { width: 210, height: 297 }, letter: { width: 215.9, height: 279.4 } } as const;

/** The binding side is wider: left on upright pages, top on drawings that lie on their side. */
export const MARGINS: Record<Orientation, Margins> = {
  portrait: { top: 12, right: 12, bottom: 18, left: 20 },
  landscape: { top: 17, right: 12, bottom: 16, left: 12 },
};

/** A section of exactly the page height spills on to the next page; this much under it does not. */
const SPILL_GUARD_MM = 0.2;

export interface Live {
  widthMm: number;
  heightMm: number;
}

export function paperSize(paper: DocumentOptions['paper'], orientation: Orientation): Live {
  const { width, height } = SHEETS[paper];
  return orientation === 'portrait' ? { widthMm: width, heightMm: height } : { widthMm: height, heightMm: width };
}

/** The area inside the margins that a page may fill. */
export function liveArea(paper: DocumentOptions['paper'], orientation: Orientation): Live {
  const sheet = paperSize(paper, orientation);
  const margin = MARGINS[orientation];
  return { widthMm: sheet.widthMm - margin.left - margin.right, heightMm: sheet.heightMm - margin.top - margin.bottom - SPILL_GUARD_MM };
}
