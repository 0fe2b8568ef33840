import { describe, expect, test } from '@jest/globals';
import fc from 'fast-check';
import {
  anchorMap,
  elevation,
  fastenZones,
  filmLayout,
  framePicture,
  pictorial,
  planView,
  section,
  type Box,
  type Drawing,
  type FramePart,
  type Mark,
  type Shelter,
  type UnitSystem,
} from '@lathwork/drawing';
import type { AnchorageResult, FasteningResult } from '@lathwork/model';
import { collisions, lettersOf, outside, readSvg } from '../../unit/drawing/svg-reader.js';
import { wildShelters } from './wild-shelters.js';

const units = fc.constantFrom<UnitSystem>('us', 'metric');
const VIEWS = ['front', 'back', 'left', 'right'] as const;
/** Fields of the plan book's drawing sheets: A4 and Letter on their side, less margins, title strip and padding. */
const FIELDS: readonly Box[] = [
  { wMm: 265, hMm: 146 },
  { wMm: 247, hMm: 152 },
];
/** Shares of the width that a view gets beside another. */
const SHARES = [1, 0.72, 0.55, 0.4, 0.35, 0.25];
const boxes = fc.tuple(fc.constantFrom(...FIELDS), fc.constantFrom(...SHARES)).map(([f, share]): Box => ({ wMm: f.wMm * share, hMm: f.hMm }));
const MARKS: readonly Mark[] = [
  { label: 'F1', source: 'buy', target: 'film' },
  { label: 'T1', source: 'pile', target: 'tube' },
  { label: 'P1', source: 'buy', target: 'sill' },
  { label: 'C1', source: 'buy', target: 'batten' },
  { label: 'X1', source: 'buy', target: 'brace' },
];
const labels = MARKS.map((m) => m.label);

function sound(d: Drawing, box: Box): void {
  readSvg(d.svg);
  expect(d.svg).not.toMatch(/NaN|Infinity|undefined|null/);
  expect(collisions(d.svg)).toEqual([]);
  expect(outside(d.svg, d.widthMm, d.heightMm)).toEqual([]);
  expect(strokesOutside(d)).toEqual([]);
  expect(d.widthMm).toBeLessThanOrEqual(box.wMm + 1e-6);
  expect(d.heightMm).toBeLessThanOrEqual(box.hMm + 1e-6);
  expect(d.alt.length).toBeGreaterThanOrEqual(5);
  expect(d.scale === null).toBe(d.fit === 'notToScale');
}
/** Corners of straight paths that leave the paper. */
const strokesOutside = (d: Drawing): string[] =>
  readSvg(d.svg)
    .filter((t) => t.name === 'path')
    .map((t) => t.attributes['d'] ?? '')
    .filter((path) =>
      [...path.matchAll(/[ML](-?[\d.]+) (-?[\d.]+)/g)].some(
        ([, x, y]) => Number(x) < -0.1 || Number(y) < -0.1 || Number(x) > d.widthMm + 0.1 || Number(y) > d.heightMm + 0.1,
      ),
    );
const textsOf = (d: Drawing): string[] => lettersOf(d.svg).map((l) => l.text);

/** Every number of a dimension that a view may print, in whole millimetres: what the model says, and nothing else. */
const whole = (lengthM: number): string => String(Math.round(lengthM * 1000));
const isWritten = (texts: readonly string[], lengthM: number): boolean =>
  texts.some((t) => t === whole(lengthM) || t.startsWith(`${whole(lengthM)} [`) || t.startsWith(`${whole(lengthM)} `));
/** Both units of one label say the same length: 1/16 inch and half a millimetre of rounding, and what a chain spreads over its parts. */
const PAIR = /^(?:\d+ × )?(?:\d+ equal, )?(\d+) \[(?:(\d+)′-)?(\d+)?(?: ?(\d)\/(\d))?″\]$/;
function pairsAgree(texts: readonly string[]): void {
  for (const t of texts) {
    const m = PAIR.exec(t);
    if (m === null) continue;
    const inches = Number(m[2] ?? 0) * 12 + Number(m[3] ?? 0) + (m[4] === undefined ? 0 : Number(m[4]) / Number(m[5]));
    expect(Math.abs(inches * 25.4 - Number(m[1]))).toBeLessThan(8);
  }
}

const anchorageOf = (shelter: Shelter): AnchorageResult => ({
  verdict: 'notAssessed',
  rated: false,
  anchorKind: 'auger',
  capacityEachN: null,
  factorOfSafety: null,
  capacityBasis: 'none',
  posts: shelter.geometry.posts.map((p, i) => ({
    postId: p.postId,
    demandN: i % 5 === 0 ? null : 700 + 90 * i,
    capacityN: null,
    demandRatio: null,
    verdict: 'notAssessed',
  })),
  wouldHold: [],
  slidingForceN: null,
  worstPostId: 'A1',
  worstDemandN: 900,
});
const ZONES = (['corner', 'edge', 'field'] as const).map((zone, i) => ({ zone, spacingMm: 150 + 75 * i }));
const all = (list: readonly FramePart[]): ReadonlySet<FramePart> => new Set(list);

describe('drawings of any shelter the contract lets through', () => {
  test('400 sides: each is drawn, whatever the box; marks without a place are listed', () => {
    const fits = { whole: 0, reduced: 0, notToScale: 0 };
    fc.assert(
      fc.property(wildShelters, units, fc.constantFrom(...VIEWS), boxes, fc.boolean(), (shelter, u, view, boxMm, heading) => {
        const d = elevation({ view, shelter, units: u, boxMm, heading, marks: MARKS });
        sound(d, boxMm);
        fits[d.fit] += 1;
        const texts = textsOf(d);
        for (const label of d.unplaced) expect(texts).not.toContain(label);
        const own = shelter.geometry.openings.filter((o) => o.wall === view && o.fits).map((o) => o.openingId);
        for (const id of own) expect(texts.includes(id) || d.unplaced.includes(id)).toBe(true);
        expect(d.unplaced.every((label) => labels.includes(label) || own.includes(label))).toBe(true);
        if (u === 'us') return;
        pairsAgree(texts);
        expect(isWritten(texts, view === 'front' || view === 'back' ? shelter.structure.widthM : shelter.structure.lengthM)).toBe(true);
        expect(isWritten(texts, shelter.geometry.ridgeM)).toBe(true);
      }),
      { numRuns: 400, endOnFailure: true, seed: 31 },
    );
    // The sketch is the last resort, not the rule.
    expect(fits.whole).toBeGreaterThan(250);
    expect(fits.notToScale).toBeLessThan(100);
  });

  test('plans, with and without heading', () => {
    fc.assert(
      fc.property(wildShelters, units, boxes, fc.boolean(), (shelter, u, boxMm, bare) => {
        const d = planView({ shelter, units: u, boxMm, stormWindFromDeg: 230, bare, marks: [{ label: 'M1', source: 'pile', target: 'barrel' }] });
        sound(d, boxMm);
        if (u === 'us') return;
        const texts = textsOf(d);
        pairsAgree(texts);
        expect(isWritten(texts, shelter.structure.widthM)).toBe(true);
        expect(isWritten(texts, shelter.structure.lengthM)).toBe(true);
      }),
      { numRuns: 50, endOnFailure: true, seed: 32 },
    );
  });

  test('section, anchor map, film sheets, screw zones', () => {
    fc.assert(
      fc.property(wildShelters, units, boxes, fc.boolean(), (shelter, u, boxMm, blanks) => {
        sound(section({ shelter, units: u, boxMm }), boxMm);
        sound(anchorMap({ shelter, units: u, boxMm, blanks, heading: blanks, anchorage: anchorageOf(shelter) }), boxMm);
        if (shelter.geometry.filmSheets.length > 0) sound(filmLayout({ shelter, units: u, boxMm }), boxMm);
        const zones = fastenZones({ shelter, units: u, boxMm, fastening: { zones: ZONES } as unknown as FasteningResult });
        sound({ ...zones, scale: null, fit: 'notToScale' }, boxMm);
      }),
      { numRuns: 60, endOnFailure: true, seed: 33 },
    );
  });

  test('the finished shelter and the frame of a stage', () => {
    fc.assert(
      fc.property(wildShelters, units, fc.constantFrom({ wMm: 178, hMm: 70 }, { wMm: 104, hMm: 74 }, { wMm: 104, hMm: 40 }), (shelter, u, boxMm) => {
        for (const d of [
          pictorial({ shelter, units: u, boxMm }),
          framePicture({
            shelter,
            units: u,
            boxMm,
            today: all(['leg', 'rafter', 'bow', 'ridge', 'brace', 'film']),
            standing: all(['sill', 'anchor', 'opening']),
            temporary: all(['rope']),
            marks: MARKS,
          }),
        ])
          sound({ ...d, fit: 'notToScale' }, boxMm);
      }),
      { numRuns: 25, endOnFailure: true, seed: 34 },
    );
  });
});
