import { computeGeometry, type SafetyInput } from '@lathwork/calc';
import type { StructureInputs } from '@lathwork/model';
import { inlandCanopy } from './gardens.js';
import { plainAnchorage } from './material-rooms.js';
import { structureWith } from './structures.js';

export type SafetyOver = Partial<Omit<SafetyInput, 'structure' | 'geometry'>> & { structure?: StructureInputs };

/** Only what rules look at is filled; the rest of the loads, climate and thermal results is of no concern to them. */
export const safetyInput = ({ structure = structureWith({}), ...over }: SafetyOver = {}): SafetyInput => ({
  site: inlandCanopy.site,
  structure,
  geometry: computeGeometry({ structure }).result,
  stock: [],
  climate: { designNight: null } as SafetyInput['climate'],
  wind: { totalUpliftN: null } as SafetyInput['wind'],
  snow: { groundPa: 0, clearAt: null } as SafetyInput['snow'],
  anchorage: { ...plainAnchorage, rated: true },
  thermal: { designNights: [], clearDays: [] } as unknown as SafetyInput['thermal'],
  ...over,
});
