import type { Note } from '@lathwork/model';
import { NOTE_WORDS } from './en/notes.js';
import { MATERIAL_WORDS, MONTHS, TASK_WORDS } from './en/common.js';
import { KEY_WORDS } from './en/notes-shape.js';
import { decimal, hours, money, percent, whole, type Figures } from './figures.js';
import { fill, listing } from './fill.js';

type ParamValue = Note['params'][string];

/** How a number prints is read from the unit at the end of its name; longest suffix first. */
const BY_SUFFIX: readonly [string, (value: number, fig: Figures) => string][] = [
  ['MPerS', (v, f) => f.speed(v)],
  ['NPerM', (v, f) => f.lineLoad(v)],
  ['MJPerM2', (v) => `${decimal(v, 1)}\u00a0MJ/m\u00b2`],
  ['WPerK', (v) => `${whole(v)}\u00a0W/K`],
  ['KgPerM3', (v) => `${whole(v)}\u00a0kg/m\u00b3`],
  ['PerH', (v) => `${decimal(v, 1)} an hour`],
  ['Count', (v) => whole(v)],
  ['Ratio', (v) => percent(v)],
  ['Frac', (v) => percent(v)],
  ['Deg', (v) => `${whole(v)}\u00b0`],
  ['Mm', (v, f) => f.spacing(v)],
  ['M2', (v, f) => f.area(v)],
  ['M3', (v) => `${decimal(v, 1)}\u00a0m\u00b3`],
  ['Nm', (v, f) => f.moment(v)],
  ['Pa', (v, f) => f.pressure(v)],
  ['Kg', (v, f) => f.mass(v)],
  ['Min', (v) => `${whole(v)} minutes`],
  ['Y', (v) => `${decimal(v, v % 1 === 0 ? 0 : 1)} years`],
  ['D', (v) => `${whole(v)} days`],
  ['H', (v) => `${hours(v)} hours`],
  ['M', (v, f) => f.length(v)],
  ['N', (v, f) => f.force(v)],
  ['C', (v, f) => f.temperature(v)],
  ['K', (v, f) => f.difference(v)],
  ['L', (v, f) => f.volume(v)],
  ['W', (v) => `${whole(v)}\u00a0W`],
];

const wordOf = (text: string): string =>
  KEY_WORDS[text] ?? (MATERIAL_WORDS as Record<string, string>)[text] ?? (TASK_WORDS as Record<string, string>)[text] ?? text;

/** Months come as numbers, alone or in a list. */
const monthWord = (value: number | string): string => MONTHS[Number(value) - 1] ?? String(value);

export function paramText(name: string, value: ParamValue, fig: Figures): string {
  if (name === 'month' && !Array.isArray(value)) return monthWord(value as number | string);
  if (name === 'months' && Array.isArray(value)) return listing(value.map(monthWord));
  if (typeof value === 'number') {
    const rule = BY_SUFFIX.find(([suffix]) => name.endsWith(suffix));
    return rule === undefined ? decimal(value, value % 1 === 0 ? 0 : 1) : rule[1](value, fig);
  }
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  return Array.isArray(value) ? listing(value.map(wordOf)) : wordOf(value);
}

/** A code that has no wording yet is printed as it is, with its values: a warning must never be dropped for want of words. */
function unworded(note: Note, params: Readonly<Record<string, string>>): string {
  const values = Object.entries(params).map(([key, value]) => `${key} ${value}`);
  return `${note.subject === undefined ? '' : `${note.subject}: `}${note.code}${values.length === 0 ? '' : ` (${values.join(', ')})`}.`;
}

export function noteText(note: Note, fig: Figures): string {
  const currency = note.params['currency'];
  const params = Object.fromEntries(
    Object.entries(note.params).map(([key, value]) => [
      key,
      typeof value === 'number' && key.endsWith('Minor')
        ? money({ minor: value, currency: typeof currency === 'string' ? currency : '' }).trim()
        : paramText(key, value, fig),
    ]),
  );
  const wording = NOTE_WORDS[note.code];
  if (wording === undefined) return unworded(note, params);
  try {
    return fill(wording, { subject: wordOf(note.subject ?? ''), ...params });
  } catch {
    return unworded(note, params);
  }
}
