import { computeTakeOff } from '@lathwork/calc';
import { inlandCanopy } from '../../support/gardens.js';
import { takeOffInputOf } from '../../support/material-rooms.js';
import { referenceTable, type ReferenceCheck } from '../../support/reference.js';
import { referenceCanopy, structureWith } from '../../support/structures.js';

const FT = 0.3048;
const YD3 = 0.764554858;
const lines = (structure: typeof referenceCanopy) => computeTakeOff(takeOffInputOf({ ...inlandCanopy, structure })).result.lines;
const want = (structure: typeof referenceCanopy, lineId: string, what: 'need' | 'wanted') => lines(structure).find((l) => l.lineId === lineId)?.[what] ?? NaN;
const gravel = (widthFt: number, lengthFt: number) =>
  structureWith({ floor: 'gravel', widthM: widthFt * FT, lengthM: lengthFt * FT, bowsAtM: [0, lengthFt * FT] });
const check = (c: Omit<ReferenceCheck, 'room'>): ReferenceCheck => ({ room: 'takeoff', ...c });
const CASE = 'Reference canopy 10 x 20 ft, hand take-off of the trade list C1';

referenceTable('take-off against the trade', [
  check({
    id: 'take.c1.battens-net',
    kind: 'worked',
    source: CASE,
    unit: 'ft',
    expected: 200,
    tolerance: { rel: 0.02, why: 'printed as about 200 ft net' },
    got: () => want(referenceCanopy, 'timber-batten', 'need') / FT,
  }),
  check({
    id: 'take.c1.battens-order',
    kind: 'worked',
    source: CASE,
    unit: 'ft',
    expected: 230,
    tolerance: { rel: 0.04, why: 'printed as an order of 230 ft; the cutting plan may want a board or two more' },
    got: () => want(referenceCanopy, 'timber-batten', 'wanted') / FT,
  }),
  check({
    id: 'take.c1.film-ends',
    kind: 'worked',
    source: CASE,
    unit: 'ft2',
    expected: 155,
    tolerance: { rel: 0.005, why: '2 x 77.5 ft2 in closed form' },
    got: () => want(referenceCanopy, 'film-ends', 'need') / FT ** 2,
  }),
  check({
    id: 'take.c1.gravel',
    kind: 'published',
    source: 'Gravel coverage tables: 2 in over 200 ft2 is 1.25 yd3 before compaction',
    unit: 'yd3',
    expected: 1.25,
    tolerance: { rel: 0.03, why: 'table rounds up; depth kept as 50 mm for 2 in (50.8)' },
    got: () => want({ ...referenceCanopy, floor: 'gravel' }, 'gravel', 'need') / YD3,
  }),
  check({
    id: 'earth.gravel.coverage-2in',
    kind: 'published',
    source: 'Gravel coverage tables: 2 in over 100 ft2 is 0.62 yd3, with 10 % 0.68 yd3',
    unit: 'yd3',
    expected: [0.62, 0.68],
    tolerance: { rel: 0.03, why: 'two figures printed; depth kept as 50 mm' },
    got: () => [want(gravel(10, 10), 'gravel', 'need') / YD3, want(gravel(10, 10), 'gravel', 'wanted') / YD3],
  }),
]);
