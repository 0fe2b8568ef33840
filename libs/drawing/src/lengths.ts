import { DoesNotFitError, type UnitSystem } from './types.js';

/** One piece of a dimension chain. The rounding rest goes to gaps, never to an opening. */
export interface ChainPart {
  lengthM: number;
  kind: 'gap' | 'opening';
}

/** First and second unit of one dimension, as they are printed. */
export type LengthText = readonly [first: string, second: string];

const INCH_M = 0.0254;
const EIGHTH_M = INCH_M / 8;
const MM_M = 0.001;

/** `6′-10 1/2″` from eighths of an inch; the foot is left out below one foot. Full-size figures: small fractions fill in when copied. */
export function feetInches(eighths: number): string {
  const whole = Math.floor(eighths / 8);
  const feet = Math.floor(whole / 12);
  const inches = whole % 12;
  const rest = eighths % 8;
  const fraction = rest === 0 ? '' : rest % 4 === 0 ? '1/2' : rest % 2 === 0 ? `${rest / 2}/4` : `${rest}/8`;
  const inchText = fraction === '' ? String(inches) : inches === 0 ? fraction : `${inches} ${fraction}`;
  return feet === 0 ? `${inchText}″` : `${feet}′-${inchText}″`;
}

/** Whole steps of one part each, so that they add up to the rounded overall. */
export function roundParts(parts: readonly ChainPart[], stepM: number): number[] {
  const steps = parts.map((p) => Math.round(p.lengthM / stepM));
  const overall = Math.round(parts.reduce((sum, p) => sum + p.lengthM, 0) / stepM);
  let rest = overall - steps.reduce((a, b) => a + b, 0);
  const gaps = parts.map((_, i) => i).filter((i) => parts[i]?.kind === 'gap');
  const order = gaps.length > 0 ? gaps : parts.map((_, i) => i);
  // The widest gap first; a chain with more rest than gaps goes round again.
  order.sort((a, b) => (parts[b]?.lengthM ?? 0) - (parts[a]?.lengthM ?? 0));
  for (let i = 0; rest !== 0 && order.length > 0; i++) {
    const at = order[i % order.length] ?? 0;
    steps[at] = (steps[at] ?? 0) + Math.sign(rest);
    rest -= Math.sign(rest);
  }
  if (steps.some((s) => s < 0)) throw new DoesNotFitError('a chain has a part too short to carry its rounding');
  return steps;
}

/** Both units of every part of a chain; each unit adds up on its own to the rounded overall. */
export function chainTexts(parts: readonly ChainPart[], units: UnitSystem): LengthText[] {
  const mm = roundParts(parts, MM_M);
  const eighths = roundParts(parts, EIGHTH_M);
  return parts.map((_, i) => {
    const metric = String(mm[i] ?? 0);
    const us = feetInches(eighths[i] ?? 0);
    return units === 'us' ? [us, metric] : [metric, us];
  });
}

export const lengthText = (lengthM: number, units: UnitSystem): LengthText => chainTexts([{ lengthM, kind: 'gap' }], units)[0] ?? ['', ''];
/** `6′-8″ [2032]` or `2032 [6′-8″]`. */
export const pairText = ([first, second]: LengthText): string => `${first} [${second}]`;
export const lengthPair = (lengthM: number, units: UnitSystem): string => pairText(lengthText(lengthM, units));
/** With the unit named, for sentences: `2032 mm` or `6′-8″`. */
export const spokenLength = (lengthM: number, units: UnitSystem): string => (units === 'us' ? feetInches(Math.round(lengthM / EIGHTH_M)) : `${Math.round(lengthM * 1000)} mm`);

const MINUS = '−';
export const signed = (n: number): string => {
  const whole = Math.round(n);
  return whole < 0 ? `${MINUS}${-whole}` : String(whole);
};
export const toF = (c: number): number => c * 1.8 + 32;
/** `28 °F (−2 °C)`, first unit first. */
export const temperaturePair = (c: number, units: UnitSystem): string => (units === 'us' ? `${signed(toF(c))} °F (${signed(c)} °C)` : `${signed(c)} °C (${signed(toF(c))} °F)`);
export const temperature = (c: number, units: UnitSystem): string => (units === 'us' ? `${signed(toF(c))} °F` : `${signed(c)} °C`);

const POUND_FORCE_N = 4.448222;
/** Force to three figures, as a load that nobody knows better: `1,570 lb` or `7.0 kN`. */
export const forceText = (newtons: number, units: UnitSystem): string => {
  if (units === 'metric') return newtons >= 9950 ? `${Math.round(newtons / 1000)} kN` : `${(newtons / 1000).toFixed(1)} kN`;
  const pounds = newtons / POUND_FORCE_N;
  const rounded = pounds >= 1000 ? Math.round(pounds / 10) * 10 : Math.round(pounds);
  return `${String(rounded).replace(/\B(?=(\d{3})+$)/g, ',')} lb`;
};
