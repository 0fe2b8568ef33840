import { computeSafety, type SafetyInput } from '@lathwork/calc';
import type { Opening, StructureInputs } from '@lathwork/model';
import { referenceTable, type ReferenceCheck } from '../../support/reference.js';
import { safetyInput } from '../../support/safety-fixture.js';
import { opening, structureWith } from '../../support/structures.js';

const IN = 0.0254;
const FT2 = 0.09290304;
const notes = (structure: StructureInputs, insideC = 0) => {
  const clearDays = [{ insideHighC: { p10: insideC, p50: insideC, p90: insideC } }];
  return computeSafety(safetyInput({ structure, thermal: { designNights: [], clearDays } as unknown as SafetyInput['thermal'] })).notes;
};
const places = (over: Partial<Opening>): boolean =>
  notes(structureWith({ openings: [opening({ glazing: 'annealed', largestPaneM2: 0.1, ...over })] })).some((n) => n.code === 'safety.glass-hazardous-place');
const param = (code: string, key: string, structure = structureWith({})): number => Number(notes(structure, 60).find((n) => n.code === code)?.params[key]);
const check = (c: Omit<ReferenceCheck, 'room'>): ReferenceCheck => ({ room: 'safety', ...c });

referenceTable('safety rules against their printed thresholds', [
  check({
    id: 'haz.glazing.thresholds',
    kind: 'published',
    source: 'IRC 2015 R308.4.2 and R308.4.3: within 24 in of a door with bottom edge under 60 in; pane over 9 ft2; bottom edge under 18 in',
    unit: 'note given just inside and not just outside of each limit',
    expected: [true, false, true, false, true, false],
    tolerance: { abs: 0, why: 'printed limits; tried a quarter inch (or a hundredth of a square foot) to each side' },
    got: () => {
      const door = (gapIn: number) =>
        notes(
          structureWith({
            openings: [
              opening({ openingId: 'D1', kind: 'door', offsetM: 0.8, bottomM: 0, widthM: 0.8, heightM: 2, glazing: 'none' }),
              opening({ glazing: 'annealed', largestPaneM2: 0.1, offsetM: 1.6 + gapIn * IN, bottomM: 0.9, widthM: 0.4 }),
            ],
          }),
        ).some((n) => n.code === 'safety.glass-hazardous-place');
      return [
        door(23.75),
        door(24.25),
        places({ largestPaneM2: 9.01 * FT2 }),
        places({ largestPaneM2: 8.98 * FT2 }),
        places({ bottomM: 17.75 * IN }),
        places({ bottomM: 18.25 * IN }),
      ];
    },
  }),
  check({
    id: 'haz.niosh',
    kind: 'published',
    source: 'NIOSH 94-110 lifting equation: RWL for H 15 in, V 20 in, D 30 in is 27.7 lb',
    unit: 'lb',
    expected: 27.7,
    tolerance: { abs: 0.1, why: 'printed to a tenth' },
    got: () =>
      param(
        'safety.lift-together',
        'aloneKg',
        structureWith({ openings: [opening({ openingId: 'D1', kind: 'door', offsetM: 1, bottomM: 0, widthM: 0.8, heightM: 2 })] }),
      ) / 0.45359237,
  }),
  check({
    id: 'haz.heat_bands',
    kind: 'published',
    source: 'OSHA heat index guide: bands at 91, 103 and 115 F',
    unit: 'degF',
    expected: 103,
    tolerance: { abs: 0.1, why: 'limit kept to a tenth of a degree Celsius' },
    got: () => param('safety.heat-inside', 'dangerC') * 1.8 + 32,
  }),
  check({
    id: 'permit.irc',
    kind: 'published',
    source: 'IRC 2021 R105.2: 200 ft2 (2009 and later), 120 ft2 before',
    unit: 'ft2',
    expected: [200, 120],
    tolerance: { abs: 0.1, why: 'kept to a hundredth of a square metre' },
    got: () => [param('safety.permit-ask', 'usualLimitM2') / FT2, param('safety.permit-ask', 'olderLimitM2') / FT2],
  }),
  check({
    id: 'haz.dig-hand',
    kind: 'published',
    source: 'One-call centres (811): dig by hand within 24 in of a mark; order two to three working days ahead',
    unit: 'in; days',
    expected: [24, 3],
    tolerance: { abs: 0.05, why: 'kept to the centimetre' },
    got: () => [param('safety.locate-before-digging', 'handDigM') / IN, param('safety.locate-before-digging', 'waitD')],
  }),
]);
