import { GAP_WET_FRAC, GAP_W_PER_M2_K, ROW_COVER } from '../data/covers.js';
import { LEAF, SOIL, WATER } from '../data/materials-thermal.js';
import { bodyWPerM2K, buoyantWPerM2K, outsideWPerM2K, stableWPerM2K, uprightWPerM2K } from '../physics/convection.js';
import { diffusivityM2PerDay, edgeWPerK, kusudaC, SOIL_DEEP_M, SOIL_LAYERS_M, type GroundYear } from '../physics/ground.js';
import { leakageM3PerS } from '../physics/leakage.js';
import { HeatNetwork } from '../physics/network.js';
import { longWaveSlope } from '../physics/radiation.js';
import { ventM3PerS } from '../physics/ventilation.js';
import type { Draw } from './thermal-draws.js';
import { STEPS_PER_DAY, STEP_MIN, type Forcing } from './thermal-forcing.js';
import { nodesOf, raysOf, type Nodes } from './thermal-nodes.js';
import type { Shelter, Variant } from './thermal-shelter.js';
import { PSYCHROMETRIC_PA_PER_K, saturationPa, slopeAtPaPerK } from './thermal-vapour.js';

/** Taken once: looked up millions of times in a plan. */
const { min, max } = Math;

const STEP_S = STEP_MIN * 60;
const SOIL_TO_LEAF = LEAF.emittedFrac * SOIL.emittedFrac;
/** Water on a film that counts as a full sheet, kg/m2, and what runs off above it. */
const FULL_SHEET_KG_PER_M2 = 0.05;
const VAPORISING_J_PER_KG = 2.45e6;
const PARKED_WPERM2K = 200;
const RHO_CP_SEA = 1.2 * 1006;

export type Opening = 'never' | 'nineToFive' | 'whenWarm';

/** What one day of one draw leaves behind, W and degC; arrays are reused by the next draw. */
export interface DayTrace {
  airC: Float64Array;
  leafC: Float64Array;
  largestResidualW: number;
}

/**
 * One shelter run in one way. All arrays are made here once; `step` allocates nothing.
 * Order of a step: conductances from the last step's temperatures, one implicit solve, then film wetness. What the
 * wetness needed of the new temperatures is kept for the next step, and the soil is folded into the floor once a run.
 */
export class ThermalRun {
  readonly nodes: Nodes;
  readonly network: HeatNetwork;
  readonly trace: DayTrace = { airC: new Float64Array(STEPS_PER_DAY), leafC: new Float64Array(STEPS_PER_DAY), largestResidualW: 0 };
  /** Water on the inner face of roof and wall film (0, 1) and on the outer face (2, 3), kg/m2. */
  private readonly filmKg = new Float64Array(4);
  private readonly eps = new Float64Array(4);
  private readonly through = new Float64Array(4);
  /** Of the inner faces of roof and wall film (0, 1) and the outer film (2, 3): saturation pressure at their last temperature. */
  private readonly facePa = new Float64Array(4);
  /** Convection of the inner faces with the air, W/(m2 K). */
  private readonly faceWPerM2K = new Float64Array(2);
  /** Convection of each floor with the air over it, W/(m2 K). */
  private readonly floorWPerM2K = new Float64Array(2);
  /** Inner faces of roof and wall: the second film's where there is one. */
  private readonly inner: readonly [number, number];
  private readonly gamma: number;
  /** Faces inside that send heat rays, and the black area that each turns to roof and to walls, m2. */
  private readonly rayNode: readonly number[];
  private readonly rayM2: Float64Array;
  private airFlowM3PerS = 0;
  private windMPerS = 0;
  private outsideWPerM2K = 0;
  private skyC = 0;
  private outC = 0;
  private rowOn = false;
  private draw!: Draw;
  private f!: Forcing;

  constructor(
    private readonly s: Shelter,
    private readonly variant: Variant,
    private readonly opening: Opening,
  ) {
    this.nodes = nodesOf(s, variant);
    this.network = new HeatNetwork(this.nodes.size, this.nodes.capacity);
    const [roof = 0, wall = 0] = variant.secondFilm ? this.nodes.second : this.nodes.film;
    this.inner = [roof, wall];
    this.gamma = PSYCHROMETRIC_PA_PER_K * s.pressureRatio;
    const rays = raysOf(s, variant, this.nodes);
    this.rayNode = rays.map((r) => r.node);
    this.rayM2 = Float64Array.from(rays.flatMap((r) => [r.blackM2 * r.toRoofFrac, r.blackM2 * (1 - r.toRoofFrac)]));
  }

  /** Sets soil from the year's wave and everything else from the day's mean air. */
  start(f: Forcing, ground: GroundYear): void {
    const t = this.network.temperature;
    t.fill(f.meanAirC);
    for (const column of this.nodes.soil) column.forEach((node, layer) => (t[node] = this.soilC(ground, f.dayOfYear, MID_DEPTH_M[layer] ?? 0)));
    this.filmKg.fill(0);
    this.airFlowM3PerS = 0;
  }

  /** Copies a finished state, moved by what this draw says of the deep soil (all of it at depth, none at the surface). */
  startFrom(state: Float64Array, deepSoilK: number): void {
    const t = this.network.temperature;
    t.set(state);
    for (const column of this.nodes.soil) column.forEach((node, layer) => (t[node] = t[node]! + deepSoilK * ((MID_DEPTH_M[layer] ?? 0) / SOIL_DEEP_M)));
    this.filmKg.fill(0);
    this.airFlowM3PerS = 0;
  }

  /** Repeats the day and leaves the last one in the trace. */
  run(f: Forcing, ground: GroundYear, draw: Draw, days: number): DayTrace {
    this.f = f;
    this.draw = draw;
    this.foldSoil(ground);
    this.readFaces();
    this.trace.largestResidualW = 0;
    for (let d = 0; d < days; d++) for (let k = 0; k < STEPS_PER_DAY; k++) this.step(k);
    return this.trace;
  }

  private soilC(ground: GroundYear, day: number, depthM: number): number {
    return kusudaC(ground, depthM, day, diffusivityM2PerDay(1.2, SOIL.moistJPerM3K));
  }

  private step(k: number): void {
    const n = this.network;
    const f = this.f;
    const at = this.nodes;
    this.outC = f.airC[k]!;
    this.skyC = min(this.outC, f.skyC[k]! + this.draw.skyPosition * f.skySpreadK[k]!);
    this.rowOn = this.variant.innerCover && f.sunUp[k] === 0;
    this.windMPerS = this.draw.windMPerS * (1 + 0.5 * f.dayShape[k]!);
    this.outsideWPerM2K = outsideWPerM2K(this.windMPerS);
    this.setFilm();
    n.begin(STEP_S);
    this.longWave();
    this.convection();
    this.outsideDew(k);
    this.airAndVapour(k);
    this.sun(k);
    n.solve();
    this.trace.largestResidualW = max(this.trace.largestResidualW, n.residualW());
    this.readFaces();
    this.wetFilm(k);
    this.trace.airC[k] = n.temperature[at.cropAir]!;
    this.trace.leafC[k] = n.temperature[at.leaf]!;
  }

  /** Heat-ray properties of the outer (0, 1) and second (2, 3) film of roof and wall, by how wet the inner face is. */
  private setFilm(): void {
    const { dry, wet } = this.s.film;
    for (let g = 0; g < 2; g++) {
      const w = this.draw.wetFilmFrac * this.sheetFrac(g);
      const dew = this.draw.wetFilmFrac * this.sheetFrac(g + 2);
      const wetOuter = 1 - (1 - dew) * (1 - (this.variant.secondFilm ? GAP_WET_FRAC : 1) * w);
      this.eps[g] = dry.emittedFrac + wetOuter * (wet.emittedFrac - dry.emittedFrac);
      this.through[g] = dry.throughFrac + wetOuter * (wet.throughFrac - dry.throughFrac);
      this.eps[g + 2] = dry.emittedFrac + w * (wet.emittedFrac - dry.emittedFrac);
      this.through[g + 2] = dry.throughFrac + w * (wet.throughFrac - dry.throughFrac);
    }
  }

  private sheetFrac(face: number): number {
    return min(1, this.filmKg[face]! / FULL_SHEET_KG_PER_M2);
  }

  /** The soil of one draw does not change from step to step: its columns are given to the network once, deepest layer first. */
  private foldSoil(ground: GroundYear): void {
    const n = this.network;
    const at = this.nodes;
    const k = this.draw.soilWPerMK;
    const top = this.s.floorMoist ? k : k * SOIL.dryTopFactor;
    const day = this.f.dayOfYear;
    n.hold(at.soil.length * SOIL_LAYERS_M.length);
    for (let c = 0; c < at.soil.length; c++) {
      const column = at.soil[c]!;
      const area = at.soilM2[c]!;
      const last = column.length - 1;
      n.heldBoundary(column[last]!, (area * k) / (SOIL_DEEP_M - MID_DEPTH_M[last]!), this.soilC(ground, day, SOIL_DEEP_M) + this.draw.deepSoilK);
      for (let i = last; i > 0; i--) {
        const upper = SOIL_LAYERS_M[i - 1]! / 2 / (i - 1 < 3 ? top : k);
        const lower = SOIL_LAYERS_M[i]! / 2 / (i < 3 ? top : k);
        n.heldLink(column[i]!, column[i - 1]!, area / (upper + lower));
      }
      n.heldLink(column[0]!, at.floor[c]!, area / (at.finish[c]!.resistanceM2KPerW + SOIL_LAYERS_M[0] / 2 / top));
    }
    // Soil just outside the edge follows neither the season alone nor the day alone: half and half.
    const edgeC = 0.5 * this.soilC(ground, day, 0.2) + 0.5 * this.f.meanAirC;
    n.heldBoundary(at.soil[0]![2]!, edgeWPerK(this.s.floorM2, this.s.perimeterM, k), edgeC);
    n.fold(STEP_S);
  }

  /** Pressures and convection at the faces of the film, from the temperatures just found. */
  private readFaces(): void {
    const t = this.network.temperature;
    const at = this.nodes;
    for (let g = 0; g < 2; g++) {
      const inner = this.inner[g as 0 | 1];
      this.facePa[g] = saturationPa(t[inner]!);
      this.facePa[g + 2] = this.variant.secondFilm ? saturationPa(t[at.film[g]!]!) : this.facePa[g]!;
      this.faceWPerM2K[g] = g === 0 ? this.level(at.air, inner, this.s.roofCos) : uprightWPerM2K(t[inner]! - t[at.air]!);
    }
  }

  /** A face inside sends heat rays to each film in its way, and what they let through on to the sky and the ground outside. */
  private radiate(r: number, underRow: boolean): void {
    const { network: n, nodes: at, eps, through, rayM2 } = this;
    const t = n.temperature;
    const node = this.rayNode[r]!;
    const ti = t[node]!;
    let pass = 1;
    if (underRow) {
      n.link(node, at.row, (rayM2[2 * r]! + rayM2[2 * r + 1]!) * ROW_COVER.dry.emittedFrac * longWaveSlope(ti, t[at.row]!));
      pass = ROW_COVER.dry.throughFrac;
    }
    let toSky = 0;
    let toGround = 0;
    for (let g = 0; g < 2; g++) {
      let part = pass * rayM2[2 * r + g]!;
      if (part === 0) continue;
      const film = at.film[g]!;
      if (this.variant.secondFilm) {
        const second = at.second[g]!;
        n.link(node, second, part * eps[g + 2]! * longWaveSlope(ti, t[second]!));
        part *= through[g + 2]!;
      }
      n.link(node, film, part * eps[g]! * longWaveSlope(ti, t[film]!));
      part *= through[g]!;
      const share = this.s.skyShareFrac[g as 0 | 1];
      toSky += part * share;
      toGround += part * (1 - share);
    }
    this.outward(node, ti, toSky, toGround);
  }

  /** Heat rays of black areas (m2) to the sky and to the ground outside, which is as warm as the air. */
  private outward(node: number, ti: number, toSkyM2: number, toGroundM2: number): void {
    const sky = toSkyM2 * longWaveSlope(ti, this.skyC);
    const ground = toGroundM2 * longWaveSlope(ti, this.outC);
    this.network.boundaries(node, sky + ground, sky * this.skyC + ground * this.outC);
  }

  private longWave(): void {
    const { network: n, nodes: at, s } = this;
    const t = n.temperature;
    const leafFloor = at.floor.length - 1;
    for (let c = 0; c <= leafFloor; c++) this.radiate(c, this.rowOn && c === leafFloor);
    this.radiate(leafFloor + 1, this.rowOn);
    n.link(at.leaf, at.floor[leafFloor]!, s.leafM2 * SOIL_TO_LEAF * longWaveSlope(t[at.leaf]!, t[at.floor[leafFloor]!]!));
    for (let w = 0; w < at.water.length; w++) {
      const node = at.water[w]!;
      this.radiate(leafFloor + 2 + w, false);
      n.link(node, at.floor[0]!, (s.water[w]!.skinM2 / 2) * WATER.emittedFrac * SOIL.emittedFrac * longWaveSlope(t[node]!, t[at.floor[0]!]!));
    }
    if (this.rowOn) this.radiate(this.rayNode.length - 1, false);
    this.filmLongWave();
  }

  private filmLongWave(): void {
    const { network: n, nodes: at, s } = this;
    const t = n.temperature;
    const inner = this.inner;
    const e0 = this.eps[this.variant.secondFilm ? 2 : 0]!;
    const e1 = this.eps[this.variant.secondFilm ? 3 : 1]!;
    n.link(inner[0], inner[1], s.coverM2[0] * s.roofToWallFrac * e0 * e1 * longWaveSlope(t[inner[0]]!, t[inner[1]]!));
    for (let g = 0; g < 2; g++) {
      const area = s.coverM2[g as 0 | 1];
      const share = s.skyShareFrac[g as 0 | 1];
      const film = at.film[g]!;
      const own = area * this.eps[g]!;
      this.outward(film, t[film]!, own * share, own * (1 - share));
      if (!this.variant.secondFilm) continue;
      const second = at.second[g]!;
      const back = 1 - (1 - this.eps[g]! - this.through[g]!) * (1 - this.eps[g + 2]! - this.through[g + 2]!);
      n.link(second, film, (area * this.eps[g + 2]! * this.eps[g]! * longWaveSlope(t[second]!, t[film]!)) / max(back, 0.1));
      const past = area * this.eps[g + 2]! * this.through[g]!;
      this.outward(second, t[second]!, past * share, past * (1 - share));
    }
  }

  private level(below: number, above: number, cosTilt: number): number {
    const t = this.network.temperature;
    const d = t[below]! - t[above]!;
    return d > 0 ? buoyantWPerM2K(d, cosTilt) : stableWPerM2K(d, cosTilt);
  }

  private convection(): void {
    const { network: n, nodes: at, s } = this;
    const t = n.temperature;
    const air = at.air;
    const last = at.floor.length - 1;
    for (let c = 0; c <= last; c++) {
      const over = c === last ? at.cropAir : air;
      const h = this.level(at.floor[c]!, over, 1);
      this.floorWPerM2K[c] = h;
      n.link(at.floor[c]!, over, at.soilM2[c]! * h * this.draw.massFactor);
    }
    n.link(at.leaf, at.cropAir, 2 * s.leafM2 * bodyWPerM2K(t[at.leaf]! - t[at.cropAir]!, LEAF.lengthM));
    for (let w = 0; w < at.water.length; w++) {
      n.link(at.water[w]!, air, s.water[w]!.skinM2 * bodyWPerM2K(t[at.water[w]!]! - t[air]!, s.water[w]!.heightM) * this.draw.massFactor);
    }
    for (let g = 0; g < 2; g++) {
      const area = s.coverM2[g as 0 | 1];
      const inner = this.inner[g as 0 | 1];
      n.link(inner, air, area * this.faceWPerM2K[g]!);
      if (this.variant.secondFilm) n.link(inner, at.film[g]!, area * GAP_W_PER_M2_K);
      n.boundary(at.film[g]!, area * this.outsideWPerM2K, this.outC);
    }
    if (this.variant.innerCover) {
      n.link(at.cropAir, at.row, s.bedM2 * this.level(at.cropAir, at.row, 1));
      n.link(at.row, air, s.bedM2 * this.level(at.row, air, 1));
      n.link(at.cropAir, air, s.bedM2 * (this.rowOn ? ROW_COVER.leakWPerM2K : PARKED_WPERM2K));
    }
  }

  private ventsOpen(k: number): boolean {
    const hour = ((k + 1) * STEP_MIN) / 60;
    if (this.opening === 'nineToFive') return hour > 9 && hour <= 17;
    return this.opening === 'whenWarm' && this.f.sunUp[k] === 1 && this.network.temperature[this.nodes.air]! > 20;
  }

  private airAndVapour(k: number): void {
    const { network: n, nodes: at, s } = this;
    const t = n.temperature;
    const ti = t[at.air]!;
    let flow = leakageM3PerS(s.leakCm2 * this.draw.leakFactor, ti - this.outC, this.windMPerS, s.shelterClass);
    if (this.ventsOpen(k)) flow += ventM3PerS(s.vents, ti, this.outC, this.windMPerS);
    // Half of the last step's flow: buoyancy and temperature would otherwise chase each other.
    this.airFlowM3PerS = 0.5 * flow + 0.5 * this.airFlowM3PerS;
    const g = RHO_CP_SEA * s.pressureRatio * (293.15 / (this.outC + 273.15)) * this.airFlowM3PerS;
    n.boundary(at.air, g, this.outC);
    n.boundary(at.vapour, g, this.f.dampPa[k]! / this.gamma);
    if (s.floorMoist) {
      for (let c = 0; c < at.floor.length; c++) {
        const floor = at.floor[c]!;
        this.exchange(floor, saturationPa(t[floor]!), at.soilM2[c]! * at.finish[c]!.wetFrac * this.floorWPerM2K[c]!);
      }
    }
    for (let c = 0; c < 2; c++) {
      const condensing = t[at.vapour]! * this.gamma > this.facePa[c]!;
      if (!condensing && this.filmKg[c]! <= 0) continue;
      const wetM2 = s.coverM2[c as 0 | 1] * (condensing ? 1 : this.sheetFrac(c));
      this.exchange(this.inner[c as 0 | 1], this.facePa[c]!, wetM2 * this.faceWPerM2K[c]!);
    }
  }

  /** Dew and rime on the outer face give heat to a film that is colder than the dew point, and take it back in the morning. */
  private outsideDew(k: number): void {
    const { network: n, nodes: at, s } = this;
    const damp = this.f.dampPa[k]!;
    for (let g = 0; g < 2; g++) {
      const held = this.facePa[g + 2]!;
      const wetPart = damp > held ? 1 : this.sheetFrac(g + 2);
      if (wetPart <= 0) continue;
      const film = at.film[g]!;
      const t = n.temperature[film]!;
      const slope = slopeAtPaPerK(t, held);
      n.boundary(film, (s.coverM2[g as 0 | 1] * this.outsideWPerM2K * wetPart * slope) / this.gamma, t + (damp - held) / slope);
    }
  }

  /** Vapour between a wet face and the air, as heat (Lewis relation), linear about the face's last temperature. */
  private exchange(node: number, facePa: number, conductance: number): void {
    const t = this.network.temperature[node]!;
    const slope = slopeAtPaPerK(t, facePa) / this.gamma;
    this.network.linkToLast(node, conductance * (facePa / this.gamma - slope * t), conductance * slope, conductance);
  }

  private sun(k: number): void {
    const f = this.f;
    const level = f.floorWPerM2[k]! * this.draw.solarFactor;
    if (f.sunUp[k] === 0 && level <= 0) return;
    const { network: n, nodes: at, s } = this;
    const leaf = level * s.leafM2 * LEAF.absorbedFrac;
    n.gain(at.leaf, leaf * (1 - LEAF.evaporatedFrac));
    n.gain(at.vapour, leaf * LEAF.evaporatedFrac);
    const last = at.floor.length - 1;
    const dimmed = max(0, 1 - (this.variant.water ? (f.shadowW[k]! * this.draw.solarFactor) / max(level * s.floorM2, 1) : 0));
    for (let c = 0; c <= last; c++) n.gain(at.floor[c]!, level * dimmed * at.finish[c]!.absorbedFrac * max(0, at.soilM2[c]! - (c === last ? s.leafM2 : 0)));
    for (let w = 0; w < at.water.length; w++) n.gain(at.water[w]!, f.waterW[w]![k]! * this.draw.solarFactor);
    n.gain(at.air, f.airW[k]! * this.draw.solarFactor);
    n.gain(at.film[0]!, f.roofW[k]!);
    n.gain(at.film[1]!, f.wallW[k]!);
  }

  /** Dew on a film grows while the air beside it is damper than the film, and dries off by day. */
  private wetFilm(k: number): void {
    const vapour = this.network.temperature[this.nodes.vapour]!;
    const outsideDamp = this.f.dampPa[k]! / this.gamma;
    for (let g = 0; g < 2; g++) {
      this.gather(g, this.faceWPerM2K[g]! * (vapour - this.facePa[g]! / this.gamma));
      this.gather(g + 2, this.outsideWPerM2K * (outsideDamp - this.facePa[g + 2]! / this.gamma));
    }
  }

  private gather(face: number, heatWPerM2: number): void {
    const part = heatWPerM2 > 0 ? 1 : this.sheetFrac(face);
    this.filmKg[face] = min(max(this.filmKg[face]! + (part * heatWPerM2 * STEP_S) / VAPORISING_J_PER_KG, 0), 3 * FULL_SHEET_KG_PER_M2);
  }
}

/** Depth of the middle of each soil layer. */
const MID_DEPTH_M = SOIL_LAYERS_M.map((d, i) => SOIL_LAYERS_M.slice(0, i).reduce((a, b) => a + b, 0) + d / 2);
