import { describe, expect, test } from '@jest/globals';
import fc from 'fast-check';
import {
  anchorMap,
  elevation,
  filmLayout,
  framePicture,
  pictorial,
  planView,
  section,
  type Drawing,
  type FramePart,
  type Mark,
  type UnitSystem,
} from '@lathwork/drawing';
import type { AnchorageResult } from '@lathwork/model';
import { closedPaths, collisions, lettersOf, outside, readSvg } from '../../unit/drawing/svg-reader.js';
import { shelters } from './shelters.js';

const BOX = { wMm: 255, hMm: 177 };
const MARKS: readonly Mark[] = [
  { label: 'F1', source: 'buy', target: 'film' },
  { label: 'T1', source: 'pile', target: 'tube' },
  { label: 'P1', source: 'buy', target: 'sill' },
  { label: 'C1', source: 'buy', target: 'batten' },
  { label: 'X1', source: 'buy', target: 'brace' },
];
const units = fc.constantFrom<UnitSystem>('us', 'metric');
const VIEWS = ['front', 'back', 'left', 'right'] as const;

/** What must hold of every drawing there is. */
function sound(d: Drawing): void {
  readSvg(d.svg);
  expect(d.svg).not.toMatch(/NaN|Infinity|undefined|null/);
  expect(d.alt.length).toBeGreaterThanOrEqual(5);
  expect(d.alt.length).toBeLessThanOrEqual(250);
  expect(collisions(d.svg)).toEqual([]);
  expect(outside(d.svg, d.widthMm, d.heightMm)).toEqual([]);
}
const within = (d: Drawing, box: { wMm: number; hMm: number }): void => {
  expect(d.widthMm).toBeLessThanOrEqual(box.wMm + 1e-6);
  expect(d.heightMm).toBeLessThanOrEqual(box.hMm + 1e-6);
};

describe('drawings of random shelters', () => {
  test('1,000 shelters: no letter of an elevation lies over another, none leaves the paper, the file is well formed', () => {
    fc.assert(
      fc.property(shelters, units, fc.constantFrom(...VIEWS), (shelter, u, view) => {
        const d = elevation({ view, shelter, units: u, boxMm: BOX, marks: MARKS });
        sound(d);
        within(d, BOX);
      }),
      { numRuns: 1000, endOnFailure: true, seed: 1 },
    );
  });

  test('the same of the plan', () => {
    fc.assert(
      fc.property(shelters, units, fc.oneof(fc.integer({ min: 0, max: 359 }), fc.constant('unknown' as const)), (shelter, u, stormWindFromDeg) => {
        const d = planView({ shelter, units: u, boxMm: BOX, stormWindFromDeg, marks: [{ label: 'M1', source: 'pile', target: 'barrel' }] });
        sound(d);
        within(d, BOX);
        expect(d.svg.includes('unknown</text>')).toBe(stormWindFromDeg === 'unknown');
        const bare = planView({ shelter, units: u, boxMm: BOX, stormWindFromDeg, bare: true });
        sound(bare);
        within(bare, BOX);
      }),
      { numRuns: 250, endOnFailure: true, seed: 2 },
    );
  });

  test('openings are drawn true to scale: every rough opening is a rectangle of its own size', () => {
    fc.assert(
      fc.property(shelters, units, fc.constantFrom(...VIEWS), (shelter, u, view) => {
        const d = elevation({ view, shelter, units: u, boxMm: BOX });
        const k = 1000 / (d.scale?.denominator ?? NaN);
        const boxes = closedPaths(d.svg, 'face').map((p) => [
          Math.max(...p.map((c) => c[0] ?? 0)) - Math.min(...p.map((c) => c[0] ?? 0)),
          Math.max(...p.map((c) => c[1] ?? 0)) - Math.min(...p.map((c) => c[1] ?? 0)),
        ]);
        for (const o of shelter.geometry.openings.filter((x) => x.wall === view && x.fits)) {
          expect(boxes.some(([w = 0, h = 0]) => Math.abs(w - o.widthM * k) < 0.003 && Math.abs(h - o.heightM * k) < 0.003)).toBe(true);
        }
      }),
      { numRuns: 300, endOnFailure: true, seed: 3 },
    );
  });

  test('every opening, the overall length and the ridge are written with the number of the model', () => {
    const isWritten = (texts: readonly string[], lengthM: number): boolean => {
      const mm = String(Math.round(lengthM * 1000));
      return texts.some((t) => t === mm || t.startsWith(`${mm} [`));
    };
    fc.assert(
      fc.property(shelters, fc.constantFrom(...VIEWS), (shelter, view) => {
        const texts = lettersOf(elevation({ view, shelter, units: 'metric', boxMm: BOX }).svg).map((l) => l.text);
        const span = view === 'front' || view === 'back' ? shelter.structure.widthM : shelter.structure.lengthM;
        expect(isWritten(texts, span)).toBe(true);
        expect(isWritten(texts, shelter.structure.ridgeM)).toBe(true);
        const here = shelter.geometry.openings.filter((o) => o.wall === view && o.fits);
        for (const o of here) {
          expect(isWritten(texts, o.heightM)).toBe(true);
          const sharesItsPlace = here.some((p) => p !== o && p.offsetM < o.offsetM + o.widthM && o.offsetM < p.offsetM + p.widthM);
          if (!sharesItsPlace) expect(isWritten(texts, o.widthM)).toBe(true);
        }
      }),
      { numRuns: 300, endOnFailure: true, seed: 5 },
    );
  });

  test('section, anchor map, film sheets, picture and stage picture are sound', () => {
    const all = (list: readonly FramePart[]): ReadonlySet<FramePart> => new Set(list);
    fc.assert(
      fc.property(shelters, units, (shelter, u) => {
        const anchorage: AnchorageResult = {
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
        };
        const tall = { wMm: 178, hMm: 245 };
        for (const d of [
          section({ shelter, units: u, boxMm: tall }),
          anchorMap({ shelter, units: u, boxMm: tall, anchorage }),
          filmLayout({ shelter, units: u, boxMm: tall }),
        ]) {
          sound(d);
          within(d, tall);
        }
        sound(pictorial({ shelter, units: u, boxMm: { wMm: 105, hMm: 62 } }));
        sound(
          framePicture({
            shelter,
            units: u,
            boxMm: { wMm: 104, hMm: 74 },
            today: all(['leg', 'rafter', 'bow', 'ridge', 'brace']),
            standing: all(['sill', 'anchor']),
            temporary: all(['rope']),
            marks: [
              { label: 'T1', source: 'pile', target: 'tube' },
              { label: 'R1', source: 'buy', target: 'rope' },
            ],
          }),
        );
      }),
      { numRuns: 150, endOnFailure: true, seed: 4 },
    );
  });
});
