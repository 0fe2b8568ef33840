import type { MaterialKey, StockItem } from '@lathwork/model';
import { cited } from '../sources/cite.js';

/** Width of a saw cut. */
export const KERF_MM = cited(3, 'mm', 'JUDGEMENT-MATERIALS', 'hand-held circular saw, 2.5 to 3.5 mm', { min: 2, max: 4 });

/** Actual sections, as dressed. */
export const SECTIONS: Partial<Record<MaterialKey, { thicknessMm: number; widthMm: number }>> = {
  'batten.19x38': {
    thicknessMm: cited(19, 'mm', 'PS20-20', 'table 3, nominal 1 in: 3/4 in'),
    widthMm: cited(38, 'mm', 'PS20-20', 'table 3, nominal 2 in: 1-1/2 in'),
  },
  'board.38x89': {
    thicknessMm: cited(38, 'mm', 'PS20-20', 'table 3, nominal 2 in: 1-1/2 in'),
    widthMm: cited(89, 'mm', 'PS20-20', 'table 3, nominal 4 in: 3-1/2 in'),
  },
  'board.38x140': {
    thicknessMm: cited(38, 'mm', 'PS20-20', 'table 3, nominal 2 in: 1-1/2 in'),
    widthMm: cited(140, 'mm', 'PS20-20', 'table 3, nominal 6 in: 5-1/2 in'),
  },
  'sill.89x140': {
    thicknessMm: cited(89, 'mm', 'PS20-20', 'table 4, nominal 4 in: 3-1/2 in'),
    widthMm: cited(140, 'mm', 'PS20-20', 'table 4, nominal 6 in: 5-1/2 in'),
  },
};

/** A board may be this much under its section before it is said. */
export const SECTION_SLACK_FRAC = cited(0.15, '1', 'JUDGEMENT-MATERIALS', 'old and planed boards vary; more than this weakens a stud');

export type Refusal = 'gradeX' | 'creosote' | 'treatedWoodOld' | 'barrelContentsUnknown' | 'pvcContact';

/** Why a thing from the pile is never used in a growing shelter, or null. Grade X is final; the rest are hazards beside food. */
export const refusalOf = (item: StockItem): Refusal | null => {
  if (item.grade === 'X') return 'gradeX';
  for (const hazard of ['creosote', 'treatedWoodOld', 'barrelContentsUnknown', 'pvcContact'] as const) if (item.hazards.includes(hazard)) return hazard;
  return null;
};
