import { cited } from '../sources/cite.js';

/** Thresholds of the safety rules. Each rule in the safety room names the same source. */
export const HAZARD_LIMITS = {
  paneInDoorM2: cited(0.836, 'm2', 'CFR-1201', '1201.4: 9 ft2 splits the classes of glass in doors'),
  paneAreaM2: cited(0.836, 'm2', 'IRC-R308', 'R308.4.3: pane over 9 ft2'),
  paneBottomM: cited(0.457, 'm', 'IRC-R308', 'R308.4.3: bottom edge under 18 in'),
  nearDoorM: cited(0.61, 'm', 'IRC-R308', 'R308.4.2: within 24 in of a door'),
  nearDoorBottomM: cited(1.524, 'm', 'IRC-R308', 'R308.4.2: bottom edge under 60 in'),
  /** Glass whose top stands above this is over somebody's head inside a small shelter. */
  overheadBottomM: cited(2, 'm', 'JUDGEMENT-MATERIALS', 'a pane whose bottom edge is above head height'),
  ladderFromM: cited(2.1, 'm', 'JUDGEMENT-MATERIALS', 'what stands higher cannot be reached from the ground'),
  /** Glass and doors heavier than one person should lift: the lifting equation with the load held 15 in out. */
  liftAloneKg: cited(12.6, 'kg', 'NIOSH-LIFT', 'RWL for H 15, V 20, D 30 in: 27.7 lb'),
  doorMassPerM2Kg: cited(18, 'kg', 'JUDGEMENT-MATERIALS', 'solid wooden door of 40 mm, per m2'),
  barrelFullKg: cited(208, 'kg', 'NIOSH-LIFT', '55 gal drum of water 459 lb: fill in place'),
  filmWindMPerS: cited(2.24, 'm/s', 'COVER-DAY', 'spread film under 5 mph'),
  ladderWindMPerS: cited(9, 'm/s', 'JUDGEMENT-MATERIALS', 'no film work over about 20 mph'),
  /** Inside air at which people, not only plants, are at risk. */
  heatInsideC: cited(32.8, 'degC', 'OSHA-HEAT', 'bands begin at a heat index of 91 F'),
  heatDangerC: cited(39.4, 'degC', 'OSHA-HEAT', 'heat index 103 F'),
  handDigM: cited(0.61, 'm', 'LOCATE-811', 'hand-dig within 24 in of a mark'),
  locateWaitD: cited(3, 'd', 'LOCATE-811', 'two to three working days ahead', { min: 2, max: 3 }),
  permitAreaM2: cited(18.58, 'm2', 'IRC-R105', 'R105.2: 200 ft2'),
  permitAreaOldM2: cited(11.15, 'm2', 'IRC-R105', 'R105.2 before 2009: 120 ft2'),
} as const;
