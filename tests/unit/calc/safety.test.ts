import { describe, expect, test } from '@jest/globals';
import { allSources, computeSafety, SAFETY_RULES, type SafetyInput } from '@lathwork/calc';
import { TASK_IDS, type Hazard, type StructureInputs } from '@lathwork/model';
import { inlandCanopy } from '../../support/gardens.js';
import { plainAnchorage, stockItem } from '../../support/material-rooms.js';
import { safetyInput, type SafetyOver } from '../../support/safety-fixture.js';
import { opening, structureWith } from '../../support/structures.js';

const notes = (over?: SafetyOver) => computeSafety(safetyInput(over)).notes;
const has = (code: string, over?: SafetyOver) => notes(over).some((n) => n.code === `safety.${code}`);
const glazed = (over: Parameters<typeof opening>[0]) => structureWith({ openings: [opening({ glazing: 'unknown', ...over })] });

describe('each safety note, exactly when its condition holds', () => {
  test.each([
    ['lead-paint', 'leadPaintAssumed'],
    ['lead-paint', 'leadPaintFound'],
    ['treated-wood-old', 'treatedWoodOld'],
    ['creosote', 'creosote'],
    ['treated-wood-copper', 'treatedWoodCopper'],
    ['barrel-contents-unknown', 'barrelContentsUnknown'],
    ['asbestos-putty', 'asbestosPuttyPossible'],
    ['mould', 'mould'],
    ['nails', 'nails'],
    ['film-touches-pvc', 'pvcContact'],
  ] satisfies [string, Hazard][])('%s with %s in the pile and not without', (code, hazard) => {
    const found = notes({ stock: [stockItem({ tag: 'ZZ-1', hazards: [hazard] }), stockItem({ tag: 'ZZ-2' })] }).filter((n) => n.code === `safety.${code}`);
    expect(found.map((n) => n.params['tags'])).toEqual([['ZZ-1']]);
    expect(has(code)).toBe(false);
  });

  test('glass of unknown kind counts as annealed: low, overhead, in a door, beside a door, or large', () => {
    const place = (structure: StructureInputs) =>
      notes({ structure }).find((n) => n.code === 'safety.glass-hazardous-place' && n.subject === 'W1')?.params['places'];
    expect(place(glazed({ bottomM: 0.4 }))).toEqual(['low']);
    expect(place(glazed({ bottomM: 0.9 }))).toBeUndefined();
    expect(place(glazed({ offsetM: 1.2, bottomM: 2.0, heightM: 0.4 }))).toEqual(['overhead']);
    expect(place(glazed({ bottomM: 0.9, widthM: 1, heightM: 1, largestPaneM2: 0.9 }))).toEqual(['large']);
    expect(place(glazed({ bottomM: 0.9, widthM: 1, heightM: 1, largestPaneM2: 'unknown' }))).toEqual(['large']);
    const door = opening({ openingId: 'D1', kind: 'door', offsetM: 1.5, bottomM: 0, widthM: 0.8, heightM: 2, glazing: 'none' });
    expect(place(structureWith({ openings: [opening({ glazing: 'annealed', offsetM: 0.5, widthM: 0.6 }), door] }))).toEqual(['besideDoor']);
    const glassDoor = structureWith({ openings: [{ ...door, glazing: 'unknown', largestPaneM2: 0.5 }] });
    expect(notes({ structure: glassDoor }).find((n) => n.code === 'safety.glass-hazardous-place')).toMatchObject({
      severity: 'stop',
      subject: 'D1',
      params: { places: ['inDoor'] },
    });
  });

  test('safety glass and plastic may sit low', () => {
    for (const glazing of ['tempered', 'laminated', 'plastic', 'none'] as const)
      expect(has('glass-hazardous-place', { structure: glazed({ glazing, bottomM: 0.2 }) })).toBe(false);
  });

  test('a site rule against glass stops glass and leaves plastic alone', () => {
    const site = { ...inlandCanopy.site, glassRule: 'forbidden' as const };
    expect(has('glass-forbidden-by-site', { site, structure: glazed({ glazing: 'tempered' }) })).toBe(true);
    expect(has('glass-forbidden-by-site', { site, structure: glazed({ glazing: 'plastic' }) })).toBe(false);
    expect(has('glass-forbidden-by-site', { structure: glazed({}) })).toBe(false);
    expect(has('glass-rule-unknown', { site: { ...site, glassRule: 'unknown' }, structure: glazed({}) })).toBe(true);
    expect(has('glass-rule-unknown', { site: { ...site, glassRule: 'unknown' } })).toBe(false);
  });

  test('digging waits for the locate; a water-held frame does not dig', () => {
    expect(notes().find((n) => n.code === 'safety.locate-before-digging')).toMatchObject({ beforeTask: 'stakeOut' });
    expect(has('locate-before-digging', { structure: structureWith({ anchor: { ...inlandCanopy.structure.anchor, kind: 'ballast' } }) })).toBe(false);
  });

  test('water brings electricity and barrel notes; without water there are none', () => {
    const dry = structureWith({ waterStores: [] });
    expect([has('electricity-near-water'), has('fill-barrels-in-place')]).toEqual([true, true]);
    expect([has('electricity-near-water', { structure: dry }), has('fill-barrels-in-place', { structure: dry })]).toEqual([false, false]);
  });

  test('heat, heater, snow and anchors follow the other rooms', () => {
    const day = (p50: number) => ({
      thermal: { designNights: [], clearDays: [{ insideHighC: { p10: p50, p50, p90: p50 } }] } as unknown as SafetyInput['thermal'],
    });
    expect(has('heat-inside', day(45))).toBe(true);
    expect(has('heat-inside', day(30))).toBe(false);
    expect(has('no-unvented-heater', { climate: { designNight: { lowC: -5 } } as SafetyInput['climate'] })).toBe(true);
    expect(has('no-unvented-heater', { climate: { designNight: { lowC: 5 } } as SafetyInput['climate'] })).toBe(false);
    expect(
      notes({ snow: { groundPa: 900, clearAt: null } as SafetyInput['snow'] }).find((n) => n.code === 'safety.clear-snow-from-outside')?.params['atAnyBuildUp'],
    ).toBe(true);
    expect(has('clear-snow-from-outside')).toBe(false);
    expect(has('unrated-for-wind', { anchorage: plainAnchorage })).toBe(true);
    expect(has('unrated-for-wind')).toBe(false);
  });

  test('a rule against anchors is shown beside the wind that asks for them', () => {
    const site = { ...inlandCanopy.site, permanentAnchors: 'forbidden' as const };
    expect(has('anchors-forbidden-but-needed', { site, wind: { totalUpliftN: 4000 } as SafetyInput['wind'] })).toBe(true);
    expect(has('anchors-forbidden-but-needed', { site, wind: { totalUpliftN: 0 } as SafetyInput['wind'] })).toBe(false);
    expect(has('anchors-forbidden-but-needed', { wind: { totalUpliftN: 4000 } as SafetyInput['wind'] })).toBe(false);
  });

  test('low frames need no ladder, braced and sound ones no warning, two doors are two ways out', () => {
    expect([has('ladder'), has('ladder', { structure: structureWith({ eaveM: 1.2, ridgeM: 1.9 }) })]).toEqual([true, false]);
    expect([has('unbraced'), has('unbraced', { structure: structureWith({ braced: 'unknown' }) })]).toEqual([false, true]);
    expect([has('rust-pitted'), has('rust-pitted', { structure: structureWith({ tube: { ...inlandCanopy.structure.tube, rust: 'pitted' } }) })]).toEqual([
      false,
      true,
    ]);
    const door = opening({ openingId: 'D1', kind: 'door', offsetM: 1, bottomM: 0, widthM: 0.8, heightM: 2 });
    expect(has('one-way-out', { structure: structureWith({ openings: [door] }) })).toBe(true);
    expect(has('one-way-out', { structure: structureWith({ openings: [door, { ...door, openingId: 'D2', wall: 'back' }] }) })).toBe(false);
  });
});

test('every rule names a task of the schedule and a source of the bibliography', () => {
  const known = allSources().map((s) => s.sourceId);
  for (const rule of SAFETY_RULES) {
    expect(TASK_IDS).toContain(rule.beforeTask);
    expect(known).toContain(rule.sourceId);
  }
  expect(new Set(SAFETY_RULES.map((r) => r.code)).size).toBe(SAFETY_RULES.length);
});
