import { describe, expect, test } from '@jest/globals';
import { computeGeometry } from '@lathwork/calc';
import { STRUCTURE_KINDS, WALLS, type StructureInputs } from '@lathwork/model';
import fc from 'fast-check';
import { notFinite } from '../support/finite.js';
import { opening, structureWith } from '../support/structures.js';

const shelters = fc
  .record({
    kind: fc.constantFrom(...STRUCTURE_KINDS),
    widthM: fc.double({ min: 0.9, max: 12, noNaN: true }),
    lengthM: fc.double({ min: 0.9, max: 60, noNaN: true }),
    eaveM: fc.oneof(fc.constant(0), fc.double({ min: 0.2, max: 3.9, noNaN: true })),
    riseM: fc.double({ min: 0.3, max: 3, noNaN: true }),
    frontFacesDeg: fc.double({ min: 0, max: 360, noNaN: true }),
    wall: fc.constantFrom(...WALLS),
    offsetM: fc.double({ min: 0, max: 12, noNaN: true }),
    bottomM: fc.double({ min: 0, max: 3, noNaN: true }),
    sizeM: fc.double({ min: 0.1, max: 2.5, noNaN: true }),
  })
  .map(({ riseM, wall, offsetM, bottomM, sizeM, ...s }): StructureInputs =>
    structureWith({
      ...s,
      ridgeM: s.eaveM + riseM,
      bowsAtM: [0, s.lengthM / 2, s.lengthM],
      openings: [opening({ wall, offsetM, bottomM, widthM: sizeM, heightM: sizeM })],
    }),
  );

/** Area inside a closed polygon of the bow's plane. */
const shoelace = (points: readonly { xM: number; zM: number }[]): number =>
  Math.abs(
    points.reduce((sum, a, i) => {
      const b = points[(i + 1) % points.length] ?? a;
      return sum + a.xM * b.zM - b.xM * a.zM;
    }, 0),
  ) / 2;

const polyline = (points: readonly { xM: number; zM: number }[]): number =>
  points.slice(1).reduce((sum, b, i) => sum + Math.hypot(b.xM - (points[i]?.xM ?? 0), b.zM - (points[i]?.zM ?? 0)), 0);

describe('geometry, whatever the shelter', () => {
  test('volume is the area inside the drawn bow times the length', () => {
    fc.assert(
      fc.property(shelters, (structure) => {
        const { result } = computeGeometry({ structure });
        const drawn = shoelace(result.bowProfile) * structure.lengthM;
        // The drawn arch is a polygon of 32 chords inside its arc; the longest arc drawn misses under 0.5 %.
        expect(Math.abs(result.volumeM3 - drawn)).toBeLessThanOrEqual(0.005 * result.volumeM3);
        expect(result.volumeM3).toBeGreaterThanOrEqual(drawn - 1e-9);
      }),
    );
  });

  test('the girth is the length of the drawn bow and never under the chord', () => {
    fc.assert(
      fc.property(shelters, (structure) => {
        const { result } = computeGeometry({ structure });
        expect(result.girthM).toBeGreaterThanOrEqual(structure.widthM - 1e-9);
        // A lean-to's film ends on the host wall: the drawn foot line on that side carries none.
        const drawn = polyline(structure.kind === 'leanTo' ? result.bowProfile.slice(0, -1) : result.bowProfile);
        expect(Math.abs(result.girthM - drawn)).toBeLessThanOrEqual(0.005 * drawn);
      }),
    );
  });

  test('openings lie within their walls, and no face gives away more than it has', () => {
    fc.assert(
      fc.property(shelters, (structure) => {
        const { result, notes } = computeGeometry({ structure });
        for (const f of result.faces) {
          expect(f.netM2).toBeGreaterThanOrEqual(-1e-6);
          expect(f.openingsM2 + f.netM2).toBeCloseTo(f.grossM2, 9);
        }
        const o = result.openings[0];
        // Either it fits, or a stop note says why.
        expect(o?.fits).toBe(!notes.some((n) => n.severity === 'stop' && n.subject === 'W1'));
        if (o?.fits) expect(o.headroomM).toBeGreaterThan(-1e-3);
      }),
    );
  });

  test('mirrored left to right, a gable or an arch has the same areas', () => {
    fc.assert(
      fc.property(
        shelters.filter((s) => s.kind !== 'leanTo'),
        (structure) => {
          const [o] = structure.openings;
          if (!o) throw new Error('no opening');
          const side = o.wall === 'left' || o.wall === 'right';
          const wallM = side ? structure.lengthM : structure.widthM;
          fc.pre(o.offsetM + o.widthM <= wallM);
          const wall = o.wall === 'left' ? 'right' : o.wall === 'right' ? 'left' : o.wall;
          const mirrored = computeGeometry({ structure: { ...structure, openings: [{ ...o, wall, offsetM: wallM - o.offsetM - o.widthM }] } }).result;
          const plain = computeGeometry({ structure }).result;
          expect(mirrored.openings[0]?.fits).toBe(plain.openings[0]?.fits);
          expect(mirrored.openings[0]?.headroomM).toBeCloseTo(plain.openings[0]?.headroomM ?? NaN, 6);
          expect(mirrored.coverM2).toBeCloseTo(plain.coverM2, 9);
        },
      ),
    );
  });

  test('no number is missing, and members are as long as their ends are apart', () => {
    fc.assert(
      fc.property(shelters, (structure) => {
        const { result } = computeGeometry({ structure });
        expect(notFinite(result)).toEqual([]);
        for (const m of result.members.filter((x) => x.role !== 'bow' && x.role !== 'header')) {
          expect(m.lengthM).toBeCloseTo(Math.hypot(m.from.xM - m.to.xM, m.from.yM - m.to.yM, m.from.zM - m.to.zM), 9);
        }
        expect(new Set(result.members.map((m) => m.memberId)).size).toBe(result.members.length);
        expect(new Set(result.battenRuns.map((r) => r.runId)).size).toBe(result.battenRuns.length);
      }),
    );
  });
});
