import { newId } from '../../platform/database/ids.js';
import { refuse } from './archive-reading.js';
import { LISTS, type GardenContents, type ListName } from './garden-file.js';

export interface MovedId {
  what: ListName | 'garden';
  from: string;
  to: string;
}

/** A new id for everything, in the old order. Nothing keeps its id: the archive may be taken in twice, or come from here. */
export const newIds = (contents: GardenContents, gardenId: string): MovedId[] => [
  { what: 'garden', from: contents.garden.id, to: gardenId },
  ...LISTS.flatMap((what) => contents[what].map(({ id }) => ({ what, from: id, to: newId() }))),
];

/** The same value with every known id replaced, wherever it stands. */
const replaced = (value: unknown, ids: ReadonlyMap<string, string>): unknown => {
  if (typeof value === 'string') return ids.get(value) ?? value;
  if (Array.isArray(value)) return value.map((one) => replaced(one, ids));
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([key, one]) => [key, replaced(one, ids)]));
};

export const withIds = (contents: GardenContents, ids: readonly MovedId[]): GardenContents =>
  replaced(contents, new Map(ids.map(({ from, to }) => [from, to]))) as GardenContents;

/** Whatever points at something points at something of its own archive. */
export const mustHoldTogether = ({ sites, structures, stock, builds, claims, plans, photos, garden }: GardenContents): void => {
  const known = (list: readonly { id: string }[]): Set<string> => new Set(list.map(({ id }) => id));
  const [siteIds, structureIds, stockIds, buildIds] = [known(sites), known(structures), known(stock), known(builds)];
  const must = (set: ReadonlySet<string>, id: string | null, what: string): void => {
    if (id !== null && !set.has(id)) refuse(`a ${what} that something needs is not in it`);
  };
  for (const build of builds) {
    must(siteIds, build.siteId, 'site');
    must(structureIds, build.structureId, 'structure');
    must(buildIds, build.variantOf, 'build');
    if ((build.variantOf === null) !== (build.variantLabel === null)) refuse('a variant of a build has no label, or a label is of no variant');
  }
  for (const { stockId, buildId } of [...claims, ...photos]) {
    must(stockIds, stockId, 'stock item');
    must(buildIds, buildId, 'build');
  }
  for (const { id, buildId, revision, inputs, result } of plans) {
    must(buildIds, buildId, 'build');
    if (inputs.planId !== id || inputs.buildId !== buildId || inputs.gardenId !== garden.id || inputs.revision !== revision || result.planId !== id)
      refuse('a plan speaks of another plan');
  }
};
