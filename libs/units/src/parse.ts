import { SPELLINGS, type Spelling } from './factors.js';
import { formatFeetInches } from './format.js';
import type { UnitSymbol } from './quantity.js';

export type ParseFaultCode = 'empty' | 'no-unit' | 'not-a-number' | 'unknown-unit' | 'ambiguous' | 'out-of-range';

export interface ParseWarning {
  code: 'confirm-reading';
  /** The reading to confirm, written out. */
  reading: string;
  message: string;
}

/** What was typed, read into SI; or why it was not, with what to type instead. */
export type ParsedQuantity =
  { ok: true; value: number; asTyped: string; warning?: ParseWarning } | { ok: false; code: ParseFaultCode; message: string; asTyped: string };

const EXAMPLES: Partial<Record<UnitSymbol, readonly string[]>> = {
  m: ['10 ft', `6' 4-1/2"`, '3.048 m'],
  mm: ['38 mm', '6 mil', '1 1/2 in'],
  m2: ['200 sq ft', '18.6 m2'],
  m3: ['1570 ft3', '44.5 m3'],
  L: ['55 gal', '208 L'],
  kg: ['40 lb', '18 kg'],
  N: ['500 lb', '2.2 kN'],
  'N/m': ['20 plf', '290 N/m'],
  'N.m': ['250 ft-lb', '340 N.m'],
  Pa: ['30 psf', '1.44 kPa'],
  'm/s': ['105 mph', '47 m/s'],
  'm3/s': ['800 cfm', '0.38 m3/s'],
  degC: ['28 degF', '-2 degC'],
  K: ['4 K', '7 degF'],
  deg: ['30 deg', '0.5 rad'],
  '1': ['0.25', '25 %'],
};

/** One typed text that a field of this unit would take; for messages and for documents. */
export const exampleOf = (unit: UnitSymbol): string => EXAMPLES[unit]?.[0] ?? `1 ${SPELLINGS[unit]?.[0]?.names[0] ?? unit}`.trim();

const remedy = (unit: UnitSymbol): string =>
  `Type a number with its unit, for example ${(EXAMPLES[unit] ?? [exampleOf(unit)]).map((e) => `"${e}"`).join(' or ')}.`;

const VULGAR: Readonly<Record<string, string>> = {
  '½': '1/2',
  '¼': '1/4',
  '¾': '3/4',
  '⅓': '1/3',
  '⅔': '2/3',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
  '⅕': '1/5',
  '⅖': '2/5',
  '⅗': '3/5',
  '⅘': '4/5',
  '⅙': '1/6',
  '⅚': '5/6',
};

/** One spelling for the marks that keyboards and word processors put in place of each other. */
const tidy = (text: string): string =>
  text
    .trim()
    .replace(/[½¼¾⅓⅔⅛⅜⅝⅞⅕⅖⅗⅘⅙⅚]/g, (mark) => ` ${VULGAR[mark] ?? ''} `)
    .replace(/[\u2212\u2012\u2013\u2014]/g, '-')
    .replace(/''|[\u2033\u201c\u201d]/g, '"')
    .replace(/[\u2032\u2018\u2019]/g, "'")
    .replace(/\u2044/g, '/')
    .replace(/[\u00a0\u2007\u2009\u202f]/g, ' ')
    .replace(/\s+/g, ' ')
    .trim();

const unitKey = (text: string): string =>
  text
    .toLowerCase()
    .replace(/[\u00b5\u03bc]/g, 'u')
    .replace(/²|\^2/g, '2')
    .replace(/³|\^3/g, '3')
    .replace(/[\u00b7\u22c5*]/g, '.')
    .replace(/°\s*/g, 'deg')
    .replace(/\.$/, '')
    .replace(/\s+/g, ' ')
    .trim();

type Read = { value: number } | { code: 'not-a-number' | 'ambiguous' };

const SPLIT = /^([-+]?)\s*(\d[\d.,]*(?:[ -]+\d+\/\d+|\/\d+)?|\.\d+)\s*(.*)$/s;

/** A decimal point or comma, or groups of thousands. `1,234` may be either and is refused; `0,125` and `1,94` may not. */
const readDecimal = (text: string): Read => {
  if (/^(\d+|\d+\.\d+|\.\d+|\d+\.)$/.test(text)) return { value: Number(text) };
  if (/^\d{1,3}(,\d{3})+\.\d+$/.test(text) || /^\d{1,3}(,\d{3}){2,}$/.test(text)) return { value: Number(text.replaceAll(',', '')) };
  if (/^\d{1,3}(\.\d{3})+,\d+$/.test(text) || /^\d{1,3}(\.\d{3}){2,}$/.test(text)) return { value: Number(text.replaceAll('.', '').replace(',', '.')) };
  if (/^[1-9]\d{0,2},\d{3}$/.test(text)) return { code: 'ambiguous' };
  if (/^\d+,\d+$/.test(text)) return { value: Number(text.replace(',', '.')) };
  return { code: 'not-a-number' };
};

/** A decimal, a fraction, or a whole number with a fraction: 4.5, 1/2, 4 1/2, 4-1/2. */
const readNumber = (text: string): Read => {
  const mixed = /^(?:(\d+)[ -]+)?(\d+)\/(\d+)$/.exec(text);
  if (!mixed) return readDecimal(text);
  const below = Number(mixed[3]);
  return below === 0 ? { code: 'not-a-number' } : { value: Number(mixed[1] ?? 0) + Number(mixed[2]) / below };
};

/** On tidied text, where no two spaces follow each other. */
const FEET_INCHES = /^([-+]?) ?(\d[\d.,]*) ?(?:'|ft\.?|feet|foot) ?-? ?(\d[\d.,]*(?:[ -]+\d+\/\d+|\/\d+)?) ?(?:"|in\.?|inch|inches)?$/i;

const fault = (code: ParseFaultCode, asTyped: string, message: string): ParsedQuantity => ({ ok: false, code, asTyped, message });

const numberFault = (code: 'not-a-number' | 'ambiguous', unit: UnitSymbol, asTyped: string): ParsedQuantity =>
  code === 'ambiguous'
    ? fault(code, asTyped, `"${asTyped}" may mean a decimal comma or thousands. Write it with a decimal point, or without the comma.`)
    : fault(code, asTyped, `"${asTyped}" does not begin with a number that can be read. ${remedy(unit)}`);

/** Without a zero that has a sign, and only if it is a number a computer can hold. */
const accept = (value: number, unit: UnitSymbol, asTyped: string, warning?: ParseWarning): ParsedQuantity => {
  if (!Number.isFinite(value) || Math.abs(value) > 1e12) return fault('out-of-range', asTyped, `"${asTyped}" is far too large. ${remedy(unit)}`);
  return { ok: true, value: value === 0 ? 0 : value, asTyped, ...(warning ? { warning } : {}) };
};

/** Feet and inches in one text. Twelve inches or more after feet are read, but asked back: they are a slip more often than not. */
const parseFeetInches = (unit: 'm' | 'mm', parts: RegExpExecArray, asTyped: string): ParsedQuantity => {
  const feet = readNumber(parts[2] ?? '');
  const inches = readNumber(parts[3] ?? '');
  if (!('value' in feet)) return numberFault(feet.code, unit, asTyped);
  if (!('value' in inches)) return numberFault(inches.code, unit, asTyped);
  if (!Number.isInteger(feet.value))
    return fault('ambiguous', asTyped, `"${asTyped}" has a part of a foot and inches as well. Write whole feet and inches, or feet alone.`);
  const metres = ((parts[1] === '-' ? -1 : 1) * (feet.value * 12 + inches.value) * 254) / 10_000;
  const reading = inches.value >= 12 ? formatFeetInches(metres) : undefined;
  const warning: ParseWarning | undefined =
    reading === undefined
      ? undefined
      : {
          code: 'confirm-reading',
          reading,
          message: `"${asTyped}" has twelve inches or more after the feet. It was read as ${reading}: confirm it or type it again.`,
        };
  return accept(unit === 'mm' ? metres * 1000 : metres, unit, asTyped, warning);
};

const spellingOf = (table: readonly Spelling[], name: string): Spelling | undefined => table.find((s) => s.names.includes(name));

/**
 * Reads what a person typed for a field of this unit. A bare number is refused wherever a unit is possible, because a
 * bare 3 may be feet or metres; a decimal comma is taken where it cannot be a thousands mark.
 */
export const parseQuantity = (unit: UnitSymbol, typed: string): ParsedQuantity => {
  const text = tidy(typed);
  if (text === '') return fault('empty', typed, `Nothing was typed. ${remedy(unit)}`);
  const feetInches = unit === 'm' || unit === 'mm' ? FEET_INCHES.exec(text) : null;
  if (feetInches && (unit === 'm' || unit === 'mm')) return parseFeetInches(unit, feetInches, typed);
  const parts = SPLIT.exec(text);
  if (!parts) return numberFault('not-a-number', unit, typed);
  const number = readNumber((parts[2] ?? '').trim());
  if (!('value' in number)) return numberFault(number.code, unit, typed);
  const name = unitKey(parts[3] ?? '');
  const spelling = spellingOf(SPELLINGS[unit] ?? [{ names: [unitKey(unit)], factor: 1 }], name);
  if (!spelling) {
    if (name === '') return fault('no-unit', typed, `"${typed}" has no unit, and a bare number may mean any. ${remedy(unit)}`);
    return fault('unknown-unit', typed, `"${(parts[3] ?? '').trim()}" is not a unit that fits here. ${remedy(unit)}`);
  }
  const signed = parts[1] === '-' ? -number.value : number.value;
  return accept((signed + (spelling.offset ?? 0)) * spelling.factor, unit, typed);
};

export const parseLength = (typed: string): ParsedQuantity => parseQuantity('m', typed);
export const parseFilmThickness = (typed: string): ParsedQuantity => parseQuantity('mm', typed);
export const parseTemperature = (typed: string): ParsedQuantity => parseQuantity('degC', typed);
export const parseTemperatureDifference = (typed: string): ParsedQuantity => parseQuantity('K', typed);
