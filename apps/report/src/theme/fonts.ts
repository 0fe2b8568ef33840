import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { charactersOf } from './woff2-cmap.js';

const WEIGHTS = [400, 500, 700] as const;
/** Parts of the typeface as published; the first is always set, the others only when a text needs them. */
const SUBSETS = ['latin', 'latin-ext', 'vietnamese', 'greek', 'greek-ext', 'cyrillic', 'cyrillic-ext'] as const;
type Subset = (typeof SUBSETS)[number];

const require = createRequire(import.meta.url);
const fileOf = (subset: Subset, weight: number): Buffer =>
  readFileSync(require.resolve(`@fontsource/source-sans-3/files/source-sans-3-${subset}-${weight}-normal.woff2`));

interface LoadedSubset {
  subset: Subset;
  characters: ReadonlySet<number>;
  files: ReadonlyMap<number, string>;
  range: string;
}

function rangeText(characters: ReadonlySet<number>): string {
  const sorted = [...characters].sort((a, b) => a - b);
  const runs: [number, number][] = [];
  for (const code of sorted) {
    const last = runs.at(-1);
    if (last !== undefined && last[1] === code - 1) last[1] = code;
    else runs.push([code, code]);
  }
  return runs.map(([from, to]) => (from === to ? `U+${from.toString(16)}` : `U+${from.toString(16)}-${to.toString(16)}`)).join(',');
}

let loaded: readonly LoadedSubset[] | null = null;
function subsets(): readonly LoadedSubset[] {
  loaded ??= SUBSETS.map((subset) => {
    const buffers = WEIGHTS.map((weight) => [weight, fileOf(subset, weight)] as const);
    const perWeight = buffers.map(([, buffer]) => charactersOf(buffer));
    // A character counts only when every weight has it: a title is set in bold.
    const characters = new Set([...(perWeight[0] ?? [])].filter((code) => perWeight.every((set) => set.has(code))));
    return { subset, characters, files: new Map(buffers.map(([weight, buffer]) => [weight, buffer.toString('base64')])), range: rangeText(characters) };
  });
  return loaded;
}

/** Characters that take no ink and may pass: line ends and the soft hyphen are handled by the browser. */
const INKLESS = new Set([0x09, 0x0a, 0x0d, 0xad]);

/** Marks that turn or hide text around them. Some fonts hold a blank glyph for them, but a name that reads otherwise than it prints is refused. */
const isHidden = (code: number): boolean =>
  code < 0x20 ||
  (code >= 0x7f && code < 0xa0) ||
  (code >= 0x200b && code <= 0x200f) ||
  (code >= 0x202a && code <= 0x202e) ||
  (code >= 0x2060 && code <= 0x206f) ||
  code === 0xfeff;

/** A character no font here can set. Printing a gap instead would change a name without a word. */
export class MissingGlyphError extends Error {
  constructor(readonly characters: readonly string[]) {
    super(`the fonts have no glyph for ${characters.join(', ')}`);
  }
}

const describe = (code: number): string => {
  const hex = `U+${code.toString(16).toUpperCase().padStart(4, '0')}`;
  const character = String.fromCodePoint(code);
  // A control or direction mark is named by its number only: shown as itself it would hide or turn the message.
  return /[\p{L}\p{N}\p{S}\p{P}]/u.test(character) ? `${character} (${hex})` : hex;
};

/** Font faces for exactly this text, as inline data; refuses text that has a character without a glyph. */
export function fontFacesFor(text: string): string {
  const needed = new Set([...text].map((character) => character.codePointAt(0) ?? 0).filter((code) => !INKLESS.has(code)));
  const chosen = new Set<LoadedSubset>();
  const missing: number[] = [];
  for (const code of needed) {
    const home = isHidden(code) ? undefined : subsets().find((subset) => subset.characters.has(code));
    if (home === undefined) missing.push(code);
    else chosen.add(home);
  }
  if (missing.length > 0) throw new MissingGlyphError(missing.slice(0, 20).map(describe));
  return subsets()
    .filter((subset) => subset.subset === 'latin' || chosen.has(subset))
    .flatMap((subset) =>
      WEIGHTS.map(
        (weight) =>
          `@font-face{font-family:"Source Sans 3";font-weight:${weight};src:url(data:font/woff2;base64,${subset.files.get(weight) ?? ''}) format("woff2");unicode-range:${subset.range}}`,
      ),
    )
    .join('');
}

let fingerprint: string | null = null;
/** Short hash of all font files, part of the engine version: another font makes another file. */
export function fontsFingerprint(): string {
  if (fingerprint === null) {
    const hash = createHash('sha256');
    for (const subset of subsets()) for (const file of subset.files.values()) hash.update(file);
    fingerprint = hash.digest('hex').slice(0, 8);
  }
  return fingerprint;
}
