import type { GeometryResult, SiteInputs, StructureInputs } from '@lathwork/model';
import { AGE_LOSS_PER_Y, DIRT_FRAC, FILMS, FILM_J_PER_M2_K_PER_MM, FRAME_FRAC, LEAK_CM2_PER_M2, type FilmOptics } from '../data/covers.js';
import { FLOORS, LEAF, WATER, type FloorFinish } from '../data/materials-thermal.js';
import type { ShelterClass } from '../physics/leakage.js';
import { facingRectanglesFrac, skyShare } from '../physics/radiation.js';
import type { VentOpenings } from '../physics/ventilation.js';

/** A face of film with its share of light: boards and closed doors in it let none through. */
export interface LightFace {
  group: 0 | 1;
  azimuthDeg: number;
  tiltDeg: number;
  coverM2: number;
  lightM2: number;
}

export interface WaterClass {
  skinM2: number;
  topM2: number;
  sideShadowM2: number;
  heightM: number;
  storeJPerK: number;
  absorbedFrac: number;
}

/** The shelter as the night model sees it. Group 0 is roof, group 1 wall. */
export interface Shelter {
  floorM2: number;
  perimeterM: number;
  volumeM3: number;
  coverM2: readonly [number, number];
  skyShareFrac: readonly [number, number];
  roofCos: number;
  floorToRoofFrac: number;
  /** Share of the roof's inner face that looks at the walls. */
  roofToWallFrac: number;
  faces: readonly LightFace[];
  film: FilmOptics;
  filmStoreJPerM2K: number;
  sunFrac: number;
  shadedFrac: number;
  secondFilm: boolean;
  innerCover: boolean;
  bedM2: number;
  leafM2: number;
  water: readonly WaterClass[];
  /** Paths and beds together, where one column of soil stands for both. */
  floor: FloorFinish;
  /** Apart, where the beds lie under an inner cover: what is round them, and what is under it. */
  pathFloor: FloorFinish;
  bedFloor: FloorFinish;
  floorMoist: boolean;
  leakCm2: number;
  shelterClass: ShelterClass;
  vents: VentOpenings;
  pressureRatio: number;
}

/** What differs between the ways of running the same shelter. */
export interface Variant {
  secondFilm: boolean;
  innerCover: boolean;
  water: boolean;
}

const SHELTER_BY_EXPOSURE: Readonly<Record<SiteInputs['exposure'], ShelterClass>> = { B: 4, C: 3, D: 2 };

const weighted = (rows: readonly { weight: number; value: number }[]): number => {
  const total = rows.reduce((a, r) => a + r.weight, 0);
  return total > 0 ? rows.reduce((a, r) => a + r.weight * r.value, 0) / total : 0;
};

/** The wall a lean-to leans on carries no film: no light and no sky through it, and no heat either way. */
const filmFaces = (structure: StructureInputs, geometry: GeometryResult) =>
  geometry.faces.filter((f) => !(structure.kind === 'leanTo' && f.faceId === 'right') && f.grossM2 > 0);

const lightFaces = (structure: StructureInputs, geometry: GeometryResult): LightFace[] =>
  filmFaces(structure, geometry).map((f) => {
    const glazed = geometry.openings.filter((o) => o.wall === f.faceId && o.fits && o.glazing !== 'none').reduce((a, o) => a + o.areaM2, 0);
    return {
      group: f.role === 'roof' ? 0 : 1,
      azimuthDeg: f.azimuthDeg,
      tiltDeg: f.tiltDeg,
      coverM2: f.grossM2,
      lightM2: Math.min(f.grossM2, f.netM2 + glazed),
    };
  });

/** Free openings, split at half the height of the shelter and by wall. Openings that do not fit are not counted. */
export const ventOpenings = (geometry: GeometryResult): VentOpenings => {
  const free = geometry.openings
    .filter((o) => o.fits && o.freeAreaM2 > 0)
    .map((o) => ({ wall: o.wall, areaM2: o.freeAreaM2, atM: o.bottomM + o.heightM / 2, heightM: o.heightM }));
  const total = free.reduce((a, o) => a + o.areaM2, 0);
  const top = free.filter((o) => o.atM > geometry.ridgeM / 2);
  const low = free.filter((o) => o.atM <= geometry.ridgeM / 2);
  const sum = (rows: typeof free) => rows.reduce((a, o) => a + o.areaM2, 0);
  const centre = (rows: typeof free) => weighted(rows.map((o) => ({ weight: o.areaM2, value: o.atM })));
  const byWall = new Map<string, number>();
  for (const o of free) byWall.set(o.wall, (byWall.get(o.wall) ?? 0) + o.areaM2);
  const main = Math.max(0, ...byWall.values());
  return {
    topM2: sum(top),
    lowM2: sum(low),
    riseM: top.length > 0 && low.length > 0 ? Math.max(0, centre(top) - centre(low)) : 0,
    mainWallM2: main,
    otherWallsM2: total - main,
    openingHeightM: weighted(free.map((o) => ({ weight: o.areaM2, value: o.heightM }))),
  };
};

const waterClasses = (structure: StructureInputs): WaterClass[] =>
  structure.waterStores.map((w) => {
    const scale = Math.pow(w.volumeL / WATER.drumL, 1 / 3);
    const heightM = 0.88 * scale;
    const acrossM = 0.58 * scale;
    return {
      skinM2: WATER.drumM2 * scale * scale * w.count,
      topM2: (Math.PI / 4) * acrossM * acrossM * w.count,
      sideShadowM2: acrossM * heightM * w.count,
      heightM,
      storeJPerK: WATER.storeJPerLK * w.volumeL * w.count,
      absorbedFrac: WATER.absorbedFrac[w.colour],
    };
  });

/** Finish and open beds side by side: conductances and stores add by area. */
const mixedFloor = (finish: FloorFinish, bedFrac: number): FloorFinish => {
  const soil = FLOORS.soil;
  const mix = (a: number, b: number) => bedFrac * a + (1 - bedFrac) * b;
  const thin = 0.02;
  return {
    absorbedFrac: mix(soil.absorbedFrac, finish.absorbedFrac),
    resistanceM2KPerW: 1 / mix(1 / (soil.resistanceM2KPerW + thin), 1 / (finish.resistanceM2KPerW + thin)) - thin,
    storeJPerM2K: mix(soil.storeJPerM2K, finish.storeJPerM2K),
    wetFrac: mix(soil.wetFrac, finish.wetFrac),
  };
};

const viewFactors = (geometry: GeometryResult, roofM2: number, wallM2: number, structure: StructureInputs) => {
  const floorM2 = geometry.footprintM2;
  const wallHeightM = Math.max(wallM2 / geometry.perimeterM, 0.05);
  const floorToRoofFrac = roofM2 > 0 ? facingRectanglesFrac(structure.widthM, structure.lengthM, wallHeightM) : 0;
  const roofToFloor = roofM2 > 0 ? Math.min(1, (floorM2 * floorToRoofFrac) / roofM2) : 0;
  // A bent roof sees itself by what its flat opening leaves: 1 - opening/roof.
  const roofToItself = roofM2 > 0 ? Math.max(0, 1 - floorM2 / roofM2) : 0;
  return { floorToRoofFrac, roofToWallFrac: Math.max(0, 1 - roofToFloor - roofToItself) };
};

const sunThroughFrac = (structure: StructureInputs, film: FilmOptics): number => {
  // A film of unknown age is taken at half of a four-year life; the spread of the solar capture covers the rest.
  const ageY = structure.cover.ageY === 'unknown' ? 2 : structure.cover.ageY;
  return film.sunFrac * Math.max(0.6, 1 - AGE_LOSS_PER_Y * ageY) * FRAME_FRAC * DIRT_FRAC;
};

/** Reads the plan's shelter into the night model's terms. Pure bookkeeping: areas, shares, stores. */
export const shelterOf = (site: SiteInputs, structure: StructureInputs, geometry: GeometryResult): Shelter => {
  const faces = lightFaces(structure, geometry);
  const area = (g: 0 | 1) => faces.filter((f) => f.group === g).reduce((a, f) => a + f.coverM2, 0);
  const share = (g: 0 | 1) => weighted(faces.filter((f) => f.group === g).map((f) => ({ weight: f.coverM2, value: skyShare(f.tiltDeg) })));
  const film = FILMS[structure.cover.film];
  const floorM2 = geometry.footprintM2;
  const bedM2 = structure.bedsM2 > 0 ? Math.min(structure.bedsM2, 0.9 * floorM2) : 0.5 * floorM2;
  const roofTilt = weighted(faces.filter((f) => f.group === 0).map((f) => ({ weight: f.coverM2, value: f.tiltDeg })));
  return {
    floorM2,
    perimeterM: geometry.perimeterM,
    volumeM3: geometry.volumeM3,
    coverM2: [area(0), area(1)],
    skyShareFrac: [share(0), share(1)],
    roofCos: Math.cos((roofTilt * Math.PI) / 180),
    ...viewFactors(geometry, area(0), area(1), structure),
    faces,
    film,
    filmStoreJPerM2K: Math.max(FILM_J_PER_M2_K_PER_MM * structure.cover.thicknessMm, 100),
    sunFrac: sunThroughFrac(structure, film) * (1 - structure.cover.shadeFrac),
    shadedFrac: site.shadedFrac,
    secondFilm: structure.cover.secondFilm,
    innerCover: structure.cover.innerCover,
    bedM2,
    leafM2: Math.max(LEAF.ofBedsFrac * Math.min(structure.bedsM2, 0.9 * floorM2), LEAF.leastOfFloorFrac * floorM2),
    water: waterClasses(structure),
    floor: mixedFloor(FLOORS[structure.floor], Math.min(1, structure.bedsM2 / floorM2)),
    pathFloor: FLOORS[structure.floor],
    bedFloor: structure.bedsM2 > 0 ? FLOORS.soil : FLOORS[structure.floor],
    floorMoist: structure.floorMoist,
    leakCm2: LEAK_CM2_PER_M2[structure.airLeaks] * (area(0) + area(1)),
    shelterClass: SHELTER_BY_EXPOSURE[site.exposure],
    vents: ventOpenings(geometry),
    pressureRatio: Math.pow(1 - 2.25577e-5 * site.elevationM, 5.2559),
  };
};
