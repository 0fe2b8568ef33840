import type { ThermalResult } from '@lathwork/model';
import { LEAK_SPREAD } from '../data/covers.js';
import { latinHypercube, lognormalFactorAt, normalAt, seededGenerator, triangularAt, uniformAt } from '../physics/sampling.js';
import { cited } from '../sources/cite.js';

export type DriverName = ThermalResult['drivers'][number]['input'];

/** One joint guess of everything that nobody measured. */
export interface Draw {
  /** Times the leak area of the class. */
  leakFactor: number;
  windMPerS: number;
  /** -1 coldest sky, 1 warmest. */
  skyPosition: number;
  /** Share of the change from dry to wet film that a wetted film shows. */
  wetFilmFrac: number;
  soilWPerMK: number;
  deepSoilK: number;
  solarFactor: number;
  /** Times convection between air and floor or water. */
  massFactor: number;
}

/** Spreads of the inputs: low, likely, high. */
export const SPREADS = {
  windMPerS: [
    cited(0.3, 'm/s', 'THERMAL-JUDGEMENT', 'clear night, at the shelter, low'),
    cited(1.2, 'm/s', 'THERMAL-JUDGEMENT', 'likely'),
    cited(3.5, 'm/s', 'THERMAL-JUDGEMENT', 'high'),
  ],
  soilWPerMK: [
    cited(0.6, 'W/(m.K)', 'THERMAL-MEMORY', 'soil, low'),
    cited(1.2, 'W/(m.K)', 'THERMAL-MEMORY', 'soil, likely'),
    cited(1.8, 'W/(m.K)', 'THERMAL-MEMORY', 'soil, high'),
  ],
  deepSoilK: cited(3, 'K', 'THERMAL-JUDGEMENT', 'deep soil against the wave of the air, 5 to 95 per cent'),
  solar: [cited(0.8, '1', 'THERMAL-JUDGEMENT', 'solar capture, low'), 1, cited(1.1, '1', 'THERMAL-JUDGEMENT', 'solar capture, high')],
  mass: [cited(0.7, '1', 'THERMAL-JUDGEMENT', 'mass coupling, low'), 1, cited(1.3, '1', 'THERMAL-JUDGEMENT', 'mass coupling, high')],
} as const;

export const CENTRAL: Draw = {
  leakFactor: 1,
  windMPerS: SPREADS.windMPerS[1],
  skyPosition: 0,
  wetFilmFrac: 0.5,
  soilWPerMK: SPREADS.soilWPerMK[1],
  deepSoilK: 0,
  solarFactor: 1,
  massFactor: 1,
};

/** Inputs in the order of the hypercube's columns, by the names a plan prints. */
export const DRIVER_OF: readonly { name: DriverName; value: (d: Draw) => number }[] = [
  { name: 'airLeaks', value: (d) => d.leakFactor },
  { name: 'wind', value: (d) => d.windMPerS },
  { name: 'sky', value: (d) => d.skyPosition },
  { name: 'filmState', value: (d) => d.wetFilmFrac },
  { name: 'soilConductivity', value: (d) => d.soilWPerMK },
  { name: 'deepSoil', value: (d) => d.deepSoilK },
  { name: 'solarCapture', value: (d) => d.solarFactor },
  { name: 'massCoupling', value: (d) => d.massFactor },
];

/** Joint draws by Latin hypercube from a seed: the same seed gives the same plan. */
export const drawsOf = (count: number, seed: number): Draw[] =>
  latinHypercube(count, DRIVER_OF.length, seededGenerator(seed)).map((p) => ({
    leakFactor: lognormalFactorAt(p[0]!, LEAK_SPREAD),
    windMPerS: triangularAt(p[1]!, ...SPREADS.windMPerS),
    skyPosition: uniformAt(p[2]!, -1, 1),
    wetFilmFrac: uniformAt(p[3]!, 0, 1),
    soilWPerMK: triangularAt(p[4]!, ...SPREADS.soilWPerMK),
    deepSoilK: (normalAt(p[5]!) * SPREADS.deepSoilK) / 1.6448536269514722,
    solarFactor: triangularAt(p[6]!, ...SPREADS.solar),
    massFactor: triangularAt(p[7]!, ...SPREADS.mass),
  }));
