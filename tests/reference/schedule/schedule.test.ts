import { computeGeometry, computeSchedule } from '@lathwork/calc';
import type { Crew, ScheduleResult, StructureInputs } from '@lathwork/model';
import { referenceTable, type ReferenceCheck } from '../../support/reference.js';
import { opening, referenceCanopy, structureWith } from '../../support/structures.js';
import { inlandCanopy } from '../../support/gardens.js';

const FT = 0.3048;
const planned = (structure: StructureInputs, crew: Crew): ScheduleResult =>
  computeSchedule({ structure, geometry: computeGeometry({ structure }).result, takeOff: { lines: [], unpricedCount: 0 }, crew }).result;
const mixed: Crew = { people: 6, experience: 'mixed', startOn: null };
const barrels = (count: number) => [{ stockTag: null, volumeL: 208, count, colour: 'dark' as const }];
const reference = () => planned({ ...referenceCanopy, waterStores: barrels(2) }, mixed);
/** The kit that twelve novice farms put up: 30 x 96 ft, one door at each end. */
const kit = (people: Crew['experience']) => {
  const lengthM = 96 * FT;
  const door = opening({ kind: 'door', bottomM: 0, widthM: 1, heightM: 2, offsetM: 4, glazing: 'none' });
  return planned(
    structureWith({
      kind: 'roundArch',
      widthM: 30 * FT,
      lengthM,
      eaveM: 1.2,
      ridgeM: 4.2,
      bowsAtM: Array.from({ length: 25 }, (_, i) => (lengthM * i) / 24),
      openings: [
        { ...door, openingId: 'D1' },
        { ...door, openingId: 'D2', wall: 'back' },
      ],
      waterStores: [],
      cover: inlandCanopy.structure.cover,
    }),
    { people: 6, experience: people, startOn: null },
  );
};
const structureHours = (r: ScheduleResult) => r.tasks.filter((t) => t.number >= 8 && t.number <= 19).reduce((sum, t) => sum + t.personHours.likelyH, 0);
const check = (c: Omit<ReferenceCheck, 'room'>): ReferenceCheck => ({ room: 'schedule', ...c });
const TABLE = 'Task table of the trade for a 10 x 20 ft salvaged canopy, one door, four windows (D2)';

referenceTable('schedule against the trade', [
  check({
    id: 'sched.d2.total',
    kind: 'practice',
    source: TABLE,
    unit: 'person-hours',
    expected: { lowH: 45.5, likelyH: 95, highH: 179 },
    tolerance: { rel: 0.005, why: 'sums of the table; 18.58 m2 stands for 200 ft2' },
    got: () => reference().totalHours,
  }),
  check({
    id: 'sched.d2.structure',
    kind: 'practice',
    source: `${TABLE}, tasks 8 to 19`,
    unit: 'person-hours',
    expected: 47,
    tolerance: { rel: 0.005, why: 'sum of the table' },
    got: () => structureHours(reference()),
  }),
  check({
    id: 'sched.msu.kit',
    kind: 'published',
    source: 'Michigan State University Extension Bulletin E3138 (2010): 12 novice crews on 30 x 96 ft kits took 114 to 420 person-hours (mean 237)',
    unit: 'person-hours',
    expected: 267,
    tolerance: {
      abs: 153,
      why: 'the published range itself, 114 to 420; hours here are of salvaged frames and scaled 14 times from a small case, so they lie above the mean of kits',
    },
    got: () => structureHours(kit('novice')),
  }),
  check({
    id: 'sched.d2.path',
    kind: 'practice',
    source: `${TABLE}: what must follow what, from the permission to the battens`,
    unit: 'order of tasks',
    expected: ['permission', 'stakeOut', 'sill', 'anchors', 'erect', 'brace', 'nailers', 'endFrames', 'coverEnds', 'mainCover', 'battens'],
    tolerance: { abs: 0, why: 'order; the table names the doors between end frames and end films, by its own hours the windows take longer' },
    got: () => reference().criticalPath.filter((t) => !['doors', 'windows', 'seal', 'water', 'floor', 'finish', 'hosting'].includes(t)),
  }),
]);
