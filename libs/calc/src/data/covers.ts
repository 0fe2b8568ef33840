import type { StructureInputs } from '@lathwork/model';
import { cited } from '../sources/cite.js';

/** What a sheet does with heat rays: share let through and emissivity; the rest is thrown back. */
export interface LongWave {
  throughFrac: number;
  emittedFrac: number;
}

export interface FilmOptics {
  /** Share of the sun that passes straight on, clean and new. */
  sunFrac: number;
  dry: LongWave;
  /** Under a full sheet of condensed water. */
  wet: LongWave;
}

const wet: LongWave = {
  throughFrac: cited(0.1, '1', 'NRAES-33', 'wetted polyethylene, long-wave transmission', { min: 0.05, max: 0.15 }),
  emittedFrac: cited(0.85, '1', 'NRAES-33', 'wetted polyethylene, emissivity', { min: 0.8, max: 0.95 }),
};

/** Films by kind. A found sheet is taken as worn utility film until someone looks. */
export const FILMS: Readonly<Record<StructureInputs['cover']['film'], FilmOptics>> = {
  polyethylene: {
    sunFrac: cited(0.88, '1', 'NRAES-33', 'single polyethylene, sun', { min: 0.87, max: 0.9 }),
    dry: {
      throughFrac: cited(0.75, '1', 'FILM-EXT', 'polyethylene lets through up to 74 % of heat rays', { min: 0.5, max: 0.8 }),
      emittedFrac: cited(0.15, '1', 'NRAES-33', 'dry polyethylene, emissivity'),
    },
    wet,
  },
  polyethyleneInfrared: {
    sunFrac: cited(0.855, '1', 'NRAES-33', 'infrared polyethylene, sun', { min: 0.83, max: 0.88 }),
    dry: {
      throughFrac: cited(0.25, '1', 'NRAES-33', 'infrared polyethylene, long-wave', { min: 0.2, max: 0.3 }),
      emittedFrac: cited(0.65, '1', 'NRAES-33', 'infrared polyethylene, emissivity'),
    },
    wet,
  },
  utility: {
    sunFrac: cited(0.85, '1', 'NRAES-33', 'construction film, sun', { min: 0.7, max: 0.88 }),
    dry: {
      throughFrac: cited(0.75, '1', 'NRAES-33', 'construction film, long-wave', { min: 0.5, max: 0.8 }),
      emittedFrac: cited(0.15, '1', 'NRAES-33', 'construction film, emissivity'),
    },
    wet,
  },
  found: {
    sunFrac: cited(0.77, '1', 'NRAES-33', 'woven or reinforced reclaimed polyethylene, sun', { min: 0.7, max: 0.85 }),
    dry: {
      throughFrac: cited(0.55, '1', 'NRAES-33', 'woven or reinforced reclaimed polyethylene, long-wave', { min: 0.4, max: 0.7 }),
      emittedFrac: cited(0.35, '1', 'NRAES-33', 'woven polyethylene, emissivity'),
    },
    wet,
  },
};

/** A light spun row cover over the crop. */
export const ROW_COVER = {
  dry: {
    throughFrac: cited(0.5, '1', 'THERMAL-JUDGEMENT', 'row cover, long-wave', { min: 0.3, max: 0.7 }),
    emittedFrac: cited(0.4, '1', 'THERMAL-JUDGEMENT', 'row cover, emissivity', { min: 0.25, max: 0.6 }),
  },
  /** Air that passes the cloth and its edges, as conductance per area. */
  leakWPerM2K: cited(1, 'W/(m2.K)', 'THERMAL-JUDGEMENT', 'air through a light row cover and under its edges', { min: 0.5, max: 2 }),
} as const;

/** Light kept out by frame and battens, and by dust. */
export const FRAME_FRAC = cited(0.9, '1', 'NRAES-33', 'frame factor', { min: 0.85, max: 0.95 });
export const DIRT_FRAC = cited(0.92, '1', 'NRAES-33', 'dust and drip', { min: 0.85, max: 0.95 });
/** Light lost by film for each year of age. */
export const AGE_LOSS_PER_Y = cited(0.015, '1/a', 'THERMAL-JUDGEMENT', 'sun lost per year of film age', { min: 0.005, max: 0.03 });
export const FILM_ABSORBED_FRAC = cited(0.05, '1', 'THERMAL-MEMORY', 'sun taken up by clear film', { min: 0.02, max: 0.1 });
/** Convection across the gap of two films; heat rays are carried apart. */
export const GAP_W_PER_M2_K = cited(1.8, 'W/(m2.K)', 'THERMAL-MEMORY', 'convection in a gap of some centimetres between films', { min: 1.2, max: 2.5 });
/** A second film fixed by hand is not tight: damp air reaches the outer film too, which shows this share of the inner film's wetness. */
export const GAP_WET_FRAC = cited(0.5, '1', 'THERMAL-JUDGEMENT', 'nothing measured; 0 would be a gap blown with outside air', { min: 0, max: 1 });
/** Sheet mass as heat store: 0.15 mm at 920 kg/m3 and 2.3 kJ/(kg K), times thickness in mm. */
export const FILM_J_PER_M2_K_PER_MM = 920 * 2300 * 1e-3;

/** Gaps at 4 Pa for each square metre of cover, cm2. Ordinary makes about two air changes an hour at 5 K and a light wind. */
export const LEAK_CM2_PER_M2: Readonly<Record<StructureInputs['airLeaks'], number>> = {
  sealed: cited(4, 'cm2/m2', 'THERMAL-JUDGEMENT', 'about 1 air change; no published measurement of home-built film shelters found', { min: 2, max: 8 }),
  ordinary: cited(9, 'cm2/m2', 'THERMAL-JUDGEMENT', 'about 2 air changes', { min: 4.5, max: 18 }),
  gappy: cited(22, 'cm2/m2', 'THERMAL-JUDGEMENT', 'about 4 to 6 air changes', { min: 11, max: 44 }),
};
/** The leak area may be half or double of its class (5 to 95 per cent). */
export const LEAK_SPREAD = 2;

/** Free vent opening wanted, as a share of the floor. */
export const VENT_WANTED_FRAC = cited(
  0.2,
  '1',
  'BARTOK-2015-VENT',
  'roof and side vents each 15 to 20 per cent of the floor; 20 per cent in total is the least for small houses',
  { min: 0.15, max: 0.4 },
);
