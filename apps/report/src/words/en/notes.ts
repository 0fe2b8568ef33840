import { HEAT_NOTES } from './notes-heat.js';
import { LOAD_NOTES } from './notes-load.js';
import { MONEY_NOTES } from './notes-money.js';
import { SHAPE_NOTES } from './notes-shape.js';
import { WORK_NOTES } from './notes-work.js';

/** Wording of every note code. Placeholders name the note's params; `subject` is what the note is about. */
export const NOTE_WORDS: Readonly<Record<string, string>> = { ...SHAPE_NOTES, ...HEAT_NOTES, ...MONEY_NOTES, ...WORK_NOTES, ...LOAD_NOTES };

/** The three ways a build ends badly, in a heading and one line. A risk's code is a note code; its room gives the heading. */
export const RISK_HEADS = {
  geometry: 'It does not fit together.',
  climate: 'The climate is unsure.',
  thermal: 'Heat or frost harms the crop.',
  wind: 'Wind lifts it.',
  snow: 'Snow flattens it.',
  anchorage: 'The anchors let go.',
  fastening: 'The film tears off.',
  cutting: 'Boards run short.',
  takeoff: 'Parts are missing.',
  budget: 'The money runs out.',
  schedule: 'The work takes too long.',
  safety: 'Someone gets hurt.',
} as const;
