import { cited } from '../sources/cite.js';

const PSI = 6894.757;

/** Reference design values of 2 to 4 in lumber, Pa; specific gravity as printed. */
export interface WoodGrade {
  bendingPa: number;
  tensionPa: number;
  shearPa: number;
  acrossGrainPa: number;
  alongGrainPa: number;
  modulusPa: number;
  leastModulusPa: number;
  gravityRatio: number;
}
/** In the order of the table: Fb, Ft, Fv, Fc across, Fc along, E, Emin (psi), G. */
const grade = (...[fb, ft, fv, fcp, fc, e, emin, g]: [number, number, number, number, number, number, number, number]): WoodGrade => {
  const pa = (psi: number) => cited(psi * PSI, 'Pa', 'NDS-2015', 'supplement table 4A');
  return {
    bendingPa: pa(fb),
    tensionPa: pa(ft),
    shearPa: pa(fv),
    acrossGrainPa: pa(fcp),
    alongGrainPa: pa(fc),
    modulusPa: pa(e),
    leastModulusPa: pa(emin),
    gravityRatio: cited(g, '1', 'NDS-2015', 'table 12.3.3A', { min: 0.3, max: 0.8 }),
  };
};
export const WOOD_GRADES = {
  sprucePineFirNo2: grade(875, 450, 135, 425, 1150, 1.4e6, 510_000, 0.42),
  douglasFirLarchNo2: grade(900, 575, 180, 625, 1350, 1.6e6, 580_000, 0.5),
  hemFirNo2: grade(850, 525, 150, 405, 1300, 1.3e6, 470_000, 0.43),
  westernCedarNo2: grade(700, 425, 155, 425, 650, 1e6, 370_000, 0.36),
  sprucePineFirStud: grade(675, 350, 135, 425, 725, 1.2e6, 440_000, 0.42),
  sprucePineFirNo3: grade(500, 250, 135, 425, 650, 1.2e6, 440_000, 0.42),
} as const;

/** Size factor on bending by depth of a 2 in member, load duration, repetitive members. */
export const SIZE_FACTOR = {
  '2x4': cited(1.5, '1', 'NDS-2015', 'table 4A, CF'),
  '2x6': cited(1.3, '1', 'NDS-2015', 'table 4A, CF'),
  '2x8': cited(1.2, '1', 'NDS-2015', 'table 4A, CF'),
  '2x10': cited(1.1, '1', 'NDS-2015', 'table 4A, CF'),
  '2x12': cited(1, '1', 'NDS-2015', 'table 4A, CF'),
} as const;
export const DURATION = {
  permanent: cited(0.9, '1', 'NDS-2015', '2.3.2'),
  floor: cited(1, '1', 'NDS-2015', '2.3.2'),
  snow: cited(1.15, '1', 'NDS-2015', '2.3.2'),
  wind: cited(1.6, '1', 'NDS-2015', '2.3.2'),
} as const;
export const REPETITIVE = cited(1.15, '1', 'NDS-2015', '4.3.9');
export const WET_WITHDRAWAL = cited(0.7, '1', 'NDS-MEMORY', 'table 11.3.3, screws and lags');
/** Reclaimed wood of unknown kind: the lightest that is plausible. */
export const RECLAIMED_GRAVITY = cited(0.36, '1', 'JUDGEMENT-LOADS', 'reclaimed wood: western cedars and southern spruce of NDS table 12.3.3A');
