import type { StructureInputs } from '@lathwork/model';
import { roundTube, squareTube, type Section } from '../physics/statics.js';

/** The section of the frame's tube, or null when its size or wall was not measured: a gauge label is no measurement. */
export const tubeSection = (tube: StructureInputs['tube']): Section | null => {
  const { outsideMm, wallMm, shape } = tube;
  if (outsideMm === 'unknown' || wallMm === 'unknown' || 2 * wallMm > outsideMm) return null;
  return (shape === 'round' ? roundTube : squareTube)(outsideMm / 1000, wallMm / 1000);
};
