import { ROW_COVER } from '../data/covers.js';
import { LEAF, SOIL, WATER, type FloorFinish } from '../data/materials-thermal.js';
import { SOIL_LAYERS_M } from '../physics/ground.js';
import type { Shelter, Variant } from './thermal-shelter.js';

/** Places of the stores in the network. Soil comes first, deepest first, so that solving causes no fill. */
export interface Nodes {
  size: number;
  capacity: Float64Array;
  /** Columns of soil, top layer first; two when the beds lie under an inner cover. */
  soil: number[][];
  soilM2: number[];
  /** What lies on each column. */
  finish: FloorFinish[];
  floor: number[];
  water: number[];
  leaf: number;
  /** Air at the crop: under the inner cover where there is one, else the house's. */
  cropAir: number;
  row: number;
  second: number[];
  film: number[];
  air: number;
  /** Always the last store: its links follow two slopes. */
  vapour: number;
}

const ROW_STORE_J_PER_M2K = 40;
const AIR_J_PER_M3K = 1207;
/** Height of the air under an inner cover, m. */
const ROW_HEIGHT_M = 0.5;

/** Lays out the stores of one way of running a shelter and their heat capacities, J/K. */
export const nodesOf = (s: Shelter, v: Variant): Nodes => {
  const capacity: number[] = [];
  const add = (c: number) => capacity.push(c) - 1;
  const soilM2 = v.innerCover ? [s.floorM2 - s.bedM2, s.bedM2] : [s.floorM2];
  const layerStore = (i: number) => (s.floorMoist || i >= 3 ? SOIL.moistJPerM3K : SOIL.dryJPerM3K) * SOIL_LAYERS_M[i]!;
  const soil = soilM2.map((area) => {
    const column = new Array<number>(SOIL_LAYERS_M.length).fill(0);
    for (let i = SOIL_LAYERS_M.length - 1; i >= 0; i--) column[i] = add(layerStore(i) * area);
    return column;
  });
  const finish = v.innerCover ? [s.pathFloor, s.bedFloor] : [s.floor];
  const floor = soilM2.map((area, c) => add(Math.max(finish[c]?.storeJPerM2K ?? 0, 2000) * area));
  const water = v.water ? s.water.map((w) => add(w.storeJPerK)) : [];
  const leaf = add(LEAF.storeJPerM2K * s.leafM2);
  const underM3 = v.innerCover ? Math.min(ROW_HEIGHT_M * s.bedM2, 0.5 * s.volumeM3) : 0;
  const under = v.innerCover ? add(AIR_J_PER_M3K * underM3) : -1;
  const row = v.innerCover ? add(ROW_STORE_J_PER_M2K * s.bedM2) : -1;
  const skin = (g: 0 | 1) => add(Math.max(s.filmStoreJPerM2K * s.coverM2[g], 1));
  const second = v.secondFilm ? [skin(0), skin(1)] : [];
  const film = [skin(0), skin(1)];
  const airStore = AIR_J_PER_M3K * s.pressureRatio * (s.volumeM3 - underM3);
  const air = add(airStore);
  const vapour = add(airStore);
  return {
    size: capacity.length,
    capacity: Float64Array.from(capacity),
    soil,
    soilM2,
    finish,
    floor,
    water,
    leaf,
    cropAir: v.innerCover ? under : air,
    row,
    second,
    film,
    air,
    vapour,
  };
};

/** A face inside that sends heat rays: the black area it stands for, and the share of it that looks at the roof. */
export interface Ray {
  node: number;
  blackM2: number;
  toRoofFrac: number;
}

/** Floors first, then leaf, water and, where there is one, the inner cover. */
export const raysOf = (s: Shelter, v: Variant, at: Nodes): Ray[] => {
  const toRoofFrac = s.floorToRoofFrac;
  const last = at.floor.length - 1;
  const bareM2 = (c: number) => Math.max(0, at.soilM2[c]! - (c === last ? s.leafM2 : 0));
  return [
    ...at.floor.map((node, c) => ({ node, blackM2: bareM2(c) * SOIL.emittedFrac, toRoofFrac })),
    { node: at.leaf, blackM2: s.leafM2 * LEAF.emittedFrac, toRoofFrac },
    ...at.water.map((node, w) => ({ node, blackM2: (s.water[w]!.skinM2 / 2) * WATER.emittedFrac, toRoofFrac: 0.5 })),
    ...(v.innerCover ? [{ node: at.row, blackM2: s.bedM2 * ROW_COVER.dry.emittedFrac, toRoofFrac }] : []),
  ];
};
