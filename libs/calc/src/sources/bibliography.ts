import type { Source } from '@lathwork/model';
import { climateSources } from './bibliography/climate.js';
import { loadsSources } from './bibliography/loads.js';
import { materialsSources } from './bibliography/materials.js';
import { thermalSources } from './bibliography/thermal.js';

/** Every source a value may come from. One file an area; an id may stand in one of them only. */
export const BIBLIOGRAPHY = { ...climateSources, ...thermalSources, ...loadsSources, ...materialsSources } as const;

export type SourceId = keyof typeof BIBLIOGRAPHY;

/** The bibliography's entries for these ids, in the order given, each once. */
export const sourcesOf = (ids: readonly SourceId[]): Source[] => [...new Set(ids)].map((sourceId) => ({ sourceId, ...BIBLIOGRAPHY[sourceId] }));

/** The whole bibliography, by id. */
export const allSources = (): Source[] => sourcesOf((Object.keys(BIBLIOGRAPHY) as SourceId[]).sort());
