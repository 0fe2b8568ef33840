import { computeGeometry } from '@lathwork/calc';
import { referenceTable, type ReferenceCheck } from '../../support/reference.js';
import { referenceCanopy, structureWith } from '../../support/structures.js';

const FT = 0.3048;
const canopy = () => computeGeometry({ structure: referenceCanopy }).result;
const arch = (widthM: number, eaveM: number, ridgeM: number, lengthM = 5) =>
  computeGeometry({ structure: structureWith({ kind: 'roundArch', widthM, eaveM, ridgeM, lengthM, bowsAtM: [0, lengthM] }) }).result;
const CASE = 'Quantities of the 10 x 20 ft reference canopy (6.5 ft eave, 2.5 ft rise, one door, four 2 x 3 ft windows), hand calculation of the trade list C1';
const check = (c: Omit<ReferenceCheck, 'room'>): ReferenceCheck => ({ room: 'geometry', ...c });

referenceTable('geometry against closed forms and the trade', [
  check({
    id: 'geom.c1.girth',
    kind: 'worked',
    source: CASE,
    unit: 'ft',
    expected: 24.2,
    tolerance: { rel: 0.02, why: 'printed to a tenth of a foot' },
    got: () => canopy().girthM / FT,
  }),
  check({
    id: 'geom.c1.film-width',
    kind: 'worked',
    source: CASE,
    unit: 'ft',
    expected: 27.2,
    tolerance: { rel: 0.02, why: 'printed to a tenth of a foot' },
    got: () => (canopy().filmSheets[0]?.widthM ?? 0) / FT,
  }),
  check({
    id: 'geom.c1.end-wall',
    kind: 'worked',
    source: CASE,
    unit: 'ft2',
    expected: 77.5,
    tolerance: { rel: 0.001, why: 'exact in closed form' },
    got: () => (canopy().faces.find((f) => f.faceId === 'front')?.grossM2 ?? 0) / FT ** 2,
  }),
  check({
    id: 'geom.c1.battens',
    kind: 'worked',
    source: CASE,
    unit: 'ft',
    expected: 200,
    tolerance: { rel: 0.02, why: 'printed as about 200 ft' },
    got: () => canopy().battenRuns.reduce((sum, r) => sum + r.lengthM, 0) / FT,
  }),
  check({
    id: 'geom.c1.batten-runs',
    kind: 'worked',
    source: CASE,
    unit: 'ft',
    expected: { base: 40, eave: 40, endProfile: 48, opening: 56, endSill: 17 },
    tolerance: { rel: 0.02, why: 'printed to whole feet' },
    got: () => {
      const sums: Record<string, number> = {};
      for (const r of canopy().battenRuns) sums[r.along] = (sums[r.along] ?? 0) + r.lengthM / FT;
      return sums;
    },
  }),
  check({
    id: 'earth.diag',
    kind: 'published',
    source: 'Right triangle, 10 x 20 ft: 22 ft 4-5/16 in (carpentry tables of squaring diagonals)',
    unit: 'ft',
    expected: 22.361,
    tolerance: { abs: 0.001, why: 'printed to a sixteenth of an inch' },
    got: () => canopy().groundDiagonalM / FT,
  }),
  check({
    id: 'earth.345',
    kind: 'practice',
    source: '3-4-5 triangle of the builder: 6 and 8 give 10',
    unit: 'm',
    expected: 10,
    tolerance: { abs: 1e-9, why: 'exact' },
    got: () => computeGeometry({ structure: structureWith({ widthM: 6, lengthM: 8, bowsAtM: [0, 8] }) }).result.groundDiagonalM,
  }),
  check({
    id: 'chain.h',
    kind: 'worked',
    source: 'Integrated screening example: 10 ft span, 6.5 ft eave, 20 degree pitch gives ridge 8.320 ft and mean roof height 7.410 ft',
    unit: 'ft; deg',
    expected: [7.41, 20],
    tolerance: { abs: 0.02, why: 'printed to three figures' },
    got: () => {
      const g = computeGeometry({ structure: { ...referenceCanopy, ridgeM: 8.32 * FT } }).result;
      return [g.meanRoofHeightM / FT, g.roofSlopeDeg];
    },
  }),
  check({
    id: 'geom.half-circle',
    kind: 'worked',
    source: 'Half circle of radius 2 m: arc 2 pi, area 2 pi (elementary geometry)',
    unit: 'm; m2; m3',
    expected: [2 * Math.PI, 2 * Math.PI, 10 * Math.PI, 10 * Math.PI],
    tolerance: { rel: 1e-9, why: 'closed form' },
    got: () => {
      const g = arch(4, 0, 2);
      return [g.girthM, g.faces.find((f) => f.faceId === 'front')?.grossM2 ?? 0, g.volumeM3, g.faces.find((f) => f.faceId === 'arch')?.grossM2 ?? 0];
    },
  }),
  check({
    id: 'geom.segment-120',
    kind: 'published',
    source:
      'Circle segments of unit radius, central angle 120 degrees: arc 2.0944, chord 1.7321, rise 0.5000, area 0.6142 (mensuration tables of engineering pocketbooks)',
    fromMemory: true,
    unit: 'm; m2',
    expected: [2.0944, 0.6142],
    tolerance: { abs: 0.0001, why: 'table printed to four decimals' },
    got: () => {
      const g = arch(Math.sqrt(3), 0, 0.5);
      return [g.girthM, g.faces.find((f) => f.faceId === 'front')?.grossM2 ?? 0];
    },
  }),
  check({
    id: 'geom.zone-strip',
    kind: 'published',
    source: 'ASCE 7-16 30.1: a = 10 % of least dimension or 0.4 h, not less than 4 % or 3 ft; a 10 x 20 ft shelter takes 3 ft',
    unit: 'ft',
    expected: 3,
    tolerance: { rel: 0.001, why: 'rule stated exactly, 3 ft kept as 0.914 m' },
    got: () => (canopy().battenRuns.find((r) => r.runId === 'baseA-1')?.lengthM ?? 0) / FT,
  }),
]);
