import { formatEighths, formatForce, formatLength, formatTemperature, roundChain, type ChainStep } from '@lathwork/units';
import type { UnitSystem } from './types.js';

/** One piece of a dimension chain. The rounding rest goes to gaps, never to an opening. */
export interface ChainPart {
  lengthM: number;
  kind: 'gap' | 'opening';
}

/** First and second unit of one dimension, as they are printed. */
export type LengthText = readonly [first: string, second: string];

/** Whole steps of one part each, so that they add up to the rounded overall. A chain of openings alone may spread its rest over them. */
export function roundParts(parts: readonly ChainPart[], step: ChainStep): number[] {
  const lengths = parts.map((p) => p.lengthM);
  const hasGap = parts.some((p) => p.kind === 'gap');
  return roundChain(
    lengths,
    lengths.reduce((a, b) => a + b, 0),
    step,
    parts.map((p) => hasGap && p.kind === 'opening'),
  ).parts;
}

/** Both units of every part of a chain, and of any stretch of it; each unit adds up on its own to the rounded overall. */
export function chainNumbers(parts: readonly ChainPart[], units: UnitSystem): { texts: LengthText[]; sum: (first: number, last: number) => LengthText } {
  const mm = roundParts(parts, 'mm');
  const eighths = roundParts(parts, 'eighthInch');
  const total = (values: readonly number[], first: number, last: number): number => values.slice(first, last + 1).reduce((a, b) => a + b, 0);
  const sum = (first: number, last: number): LengthText => {
    const metric = String(total(mm, first, last));
    const us = formatEighths(total(eighths, first, last));
    return units === 'us' ? [us, metric] : [metric, us];
  };
  return { texts: parts.map((_, i) => sum(i, i)), sum };
}
export const chainTexts = (parts: readonly ChainPart[], units: UnitSystem): LengthText[] => chainNumbers(parts, units).texts;

export const lengthText = (lengthM: number, units: UnitSystem): LengthText => chainTexts([{ lengthM, kind: 'gap' }], units)[0] ?? ['', ''];
/** `6′-8″ [2032]` or `2032 [6′-8″]`. */
export const pairText = ([first, second]: LengthText): string => `${first} [${second}]`;
export const lengthPair = (lengthM: number, units: UnitSystem): string => pairText(lengthText(lengthM, units));
/** With the unit named, for sentences: `2032 mm` or `6′-8″`. */
export const spokenLength = (lengthM: number, units: UnitSystem): string => plain(formatLength(lengthM, units));

/** Drawings set an ordinary space: a line of lettering never breaks. */
const plain = (s: string): string => s.replace(/\u00a0/g, ' ');
const MINUS = '−';
export const signed = (n: number): string => {
  const whole = Math.round(n);
  return whole < 0 ? `${MINUS}${-whole}` : String(whole + 0);
};
export const toF = (c: number): number => c * 1.8 + 32;
const other = (units: UnitSystem): UnitSystem => (units === 'us' ? 'metric' : 'us');
export const temperature = (c: number, units: UnitSystem): string => plain(formatTemperature(c, units));
/** `28 °F (−2 °C)`, first unit first. */
export const temperaturePair = (c: number, units: UnitSystem): string => `${temperature(c, units)} (${temperature(c, other(units))})`;
export const forceText = (newtons: number, units: UnitSystem): string => plain(formatForce(newtons, units));
