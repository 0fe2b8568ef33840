import { describe, expect, test } from '@jest/globals';
import { computePlan } from '@lathwork/calc';
import { PlanResultSchema, type ClimateInputs, type PlanInputs, type PlanResult } from '@lathwork/model';
import { Ajv } from 'ajv';
import addFormatsModule from 'ajv-formats';
import { notFinite } from '../support/finite.js';
import { canberraMeans } from '../support/climates.js';
import { inlandCanopy, inlandTunnel, southernCanopy } from '../support/gardens.js';
import { stockItem } from '../support/material-rooms.js';
import { opening } from '../support/structures.js';

const ajv = new Ajv({ allErrors: true, strict: false });
(addFormatsModule as unknown as (a: Ajv) => void)(ajv);
const validate = ajv.compile(PlanResultSchema);

/*
 * Bad input, the answer it gets, and the tests that hold it to that. A row's first test stands where the thing is decided.
 *
 * number without a unit    refused, and told what to type   unit/units/parse "m: "1.94" is no-unit"; api/sites "refuses a typed number without a unit, and says what would do"
 * door taller than eave    stop, shortfall, four ways out,   unit/calc/geometry "a door taller than the eave of a side wall stops with the shortfall ..."; here "a door taller than the eave ..."
 *                          neither drawn nor counted
 * roll under the girth     lapped seam or parts apart,       unit/calc/geometry "a roll narrower than the girth gives lapped strips and both remedies, never only a wider roll";
 *                          more film; never "buy wider"      here "a roll narrower than the girth ..."
 * missing climate month    left empty, said; the coldest     unit/calc/climate "a missing month stays missing, is said, and the others go on" and "... missing: no night is promised and a
 *                          blocks the night                  stop says why" (both hemispheres); here "a missing month stays empty ..."
 * item claimed twice       one gets it, 409 names holder     api/stock "gives one door to exactly one of twenty that ask at once", "tells who holds it, since when, and what else ...";
 *                                                            here "a thing chosen twice serves one opening; the other is told"
 * snow, tube unknown       no capacity, clear early, props,  reference/snow; here "snow on a frame of unknown tube: ..."
 *                          somebody to look, review blocked
 * below the sea            valid from -430 m                 reference/climate "x-psychrolib-pressure" (-430 to 9,000 m); unit/calc/climate "below the sea is a place like any other";
 *                                                            api/sites "takes ground below the sea ..."; here "a site below the sea is as good as another"
 * latitude, longitude      out of range, or far from every   api/sites "refuses swapped latitude and longitude out of range, and asks where they are far from everywhere";
 * swapped                  station, so asked                 unit/calc/climate "a latitude that is not on the globe is outside the model"
 */

const known = new Map<PlanInputs, PlanResult>();

/** A plan that is whole whatever went in: the contract is kept and no number is missing without saying so. Each input is computed once. */
const plan = (inputs: PlanInputs): PlanResult => {
  const before = known.get(inputs);
  if (before) return before;
  const result = computePlan(inputs, { engineVersion: 'test' });
  validate(result);
  expect(validate.errors ?? []).toEqual([]);
  expect(notFinite(result)).toEqual([]);
  known.set(inputs, result);
  return result;
};
const codes = (result: PlanResult) => result.notes.map((n) => n.code);
const withStructure = (inputs: PlanInputs, over: Partial<PlanInputs['structure']>): PlanInputs => ({ ...inputs, structure: { ...inputs.structure, ...over } });
const withoutMonth = (climate: ClimateInputs, month: number): ClimateInputs => ({
  ...climate,
  months: climate.months.map((m, i) =>
    i === month - 1 ? { tMaxC: null, tMinC: null, vapourPressurePa: null, precipitationMm: null, sunshineH: null, absoluteMinMeanC: null } : m,
  ),
});

describe('nasty inputs, answered as the trade wants them answered', () => {
  test('a door taller than the eave stops the plan with its shortfall and is neither drawn nor counted', () => {
    const tall = opening({
      openingId: 'D1',
      kind: 'door',
      wall: 'left',
      offsetM: 1,
      bottomM: 0,
      widthM: 0.865,
      heightM: 2.08,
      glazing: 'none',
      freeOpenFrac: 1,
      stockTag: 'RB-003',
    });
    const result = plan(withStructure(inlandCanopy, { openings: [tall] }));
    expect(result.reviewBlocked).toBe(true);
    expect(result.notes.find((n) => n.code === 'geometry.opening-too-tall')?.params['shortfallM']).toBeCloseTo(2.08 - 1.981, 3);
    expect(result.geometry.openings[0]).toMatchObject({ fits: false, corners: [] });
    expect(result.takeOff.lines.map((l) => l.lineId)).not.toContain('opening-D1');
    expect(result.cutting.parts.filter((p) => p.forOpening === 'D1')).toEqual([]);
  });

  test('a roll narrower than the girth gives seams and more film, and names a way without a wider roll', () => {
    const narrow = plan(withStructure(inlandCanopy, { cover: { ...inlandCanopy.structure.cover, rollWidthM: 3 } }));
    const wide = plan(inlandCanopy);
    const film = (r: PlanResult) => r.takeOff.lines.find((l) => l.lineId === 'film-main')?.wanted ?? NaN;
    const over = narrow.geometry.filmSheets[0];
    expect(over?.seams).toBe((over?.strips ?? 0) - 1);
    expect(over?.seams).toBeGreaterThan(0);
    expect(over?.seamLapM).toBeGreaterThanOrEqual(0.3);
    expect(film(narrow)).toBeGreaterThan(film(wide));
    expect(narrow.notes.find((n) => n.code === 'geometry.roll-narrower-than-girth')?.params['remedies']).toEqual([
      'lappedSeamOnRigidMember',
      'roofAndWallsSeparate',
    ]);
  });

  test('a missing month stays empty; if it is likely the coldest, no night is promised', () => {
    const summer = plan({ ...inlandCanopy, climate: withoutMonth(inlandCanopy.climate, 7) });
    expect(summer.climate.months[6]).toMatchObject({ hasRecord: false, tMinC: null });
    expect(summer.climate.monthsWithRecordCount).toBe(11);
    expect(codes(summer)).toContain('climate.month-missing');
    expect(summer.climate.designNight).not.toBeNull();
    const winter = plan({ ...inlandCanopy, climate: { ...withoutMonth(inlandCanopy.climate, 1), annualExtremeMinC: null, annualExtremeMinYearsCount: null } });
    expect(winter.climate.designNight).toBeNull();
    expect(winter.thermal.verdict).toBe('notAssessed');
    expect(winter.reviewBlocked).toBe(true);
  });

  test('south of the equator July is winter', () => {
    const result = plan({
      ...southernCanopy,
      climate: canberraMeans,
      site: { ...southernCanopy.site, latitudeDeg: -35.3, longitudeDeg: 149.2, elevationM: 578 },
    });
    expect(result.climate.hemisphere).toBe('south');
    expect(result.climate.coldestMonth).toBe(7);
    expect(result.climate.chartStartMonth).toBe(2);
  });

  test('snow on a frame of unknown tube: no capacity, clear at any build-up, review blocked', () => {
    const result = plan(inlandTunnel);
    expect(inlandTunnel.structure.tube.wallMm).toBe('unknown');
    expect(result.snow).toMatchObject({ verdict: 'notAssessed', bowCapacityNm: null, clearAt: null });
    expect(result.notes.find((n) => n.code === 'safety.clear-snow-from-outside')?.params['atAnyBuildUp']).toBe(true);
    expect(result.reviewBlocked).toBe(true);
  });

  test('a site below the sea is as good as another', () => {
    const result = plan({ ...inlandCanopy, site: { ...inlandCanopy.site, elevationM: -420 }, climate: { ...inlandCanopy.climate, stationElevationM: -400 } });
    expect(result.climate.heightDifferenceM).toBe(-20);
    expect(result.climate.designNight).not.toBeNull();
    expect(codes(result).filter((c) => c === 'climate.outside-validity' || c === 'thermal.outside-validity')).toEqual([]);
  });

  test('a fall below the datum is valid', () => {
    expect(codes(plan({ ...inlandCanopy, site: { ...inlandCanopy.site, fallAcrossM: -0.4, fallAlongM: -1 } }))).toEqual(codes(plan(inlandCanopy)));
  });

  test('glass of unknown kind counts as annealed: it stops a door, and still lets its light through', () => {
    const [door, ...rest] = inlandCanopy.structure.openings;
    if (!door) throw new Error('no door');
    const result = plan(withStructure(inlandCanopy, { openings: [{ ...door, glazing: 'unknown', largestPaneM2: 0.4 }, ...rest] }));
    expect(result.notes.find((n) => n.code === 'safety.glass-hazardous-place')).toMatchObject({
      severity: 'stop',
      subject: 'D1',
      params: { places: ['inDoor'] },
    });
    expect(result.geometry.openings.find((o) => o.openingId === 'D1')?.fits).toBe(true);
  });

  test('film of unknown age is no main cover: new film is on the list, the old one is named for other use', () => {
    const pile = stockItem({ tag: 'OF-001', kind: 'film', material: 'film.greenhouse', grade: 'B', widthMm: 12_000, lengthMm: 12_000, ageY: 'unknown' });
    const result = plan({
      ...withStructure(inlandCanopy, { cover: { ...inlandCanopy.structure.cover, film: 'found', ageY: 'unknown' } }),
      stock: [...inlandCanopy.stock, pile],
    });
    const line = result.takeOff.lines.find((l) => l.lineId === 'film-main');
    expect(line).toMatchObject({ reclaimed: [], material: 'film.greenhouse' });
    expect(result.notes.filter((n) => n.code === 'takeoff.film-not-main-cover').map((n) => n.subject)).toEqual(['OF-001']);
  });

  test('a price in another currency is never added to the total without a dated rate', () => {
    const result = plan(southernCanopy);
    expect(result.budget.otherCurrencies).toEqual([{ minor: expect.any(Number), currency: 'AUD' }]);
    expect(result.budget.verdict).toBe('notAssessed');
    const rated = plan({
      ...southernCanopy,
      budget: { ...southernCanopy.budget, exchangeRates: [{ from: 'AUD', to: 'NZD', rate: 1.1, readOn: '2026-03-01' }] },
    });
    expect(rated.budget.otherCurrencies).toEqual([]);
    expect(rated.budget.cashMinor).toBeGreaterThan(result.budget.cashMinor);
  });

  test('cap zero: kept by a plan wholly from the pile, missed by one that buys', () => {
    const missed = plan({ ...inlandCanopy, budget: { ...inlandCanopy.budget, capMinor: 0 } });
    expect(missed.budget.verdict).toBe('overCap');
    // A pile that holds everything this plan would otherwise buy: the needs are read off the plan itself.
    const give = missed.takeOff.lines.map((l, i) => {
      const wide = { widthMm: 20_000, lengthMm: l.lineId.startsWith('timber') ? 6_000 : 100_000 };
      return stockItem({
        tag: `PILE-${i}`,
        stockId: `00000000-0000-7000-8000-00fe${i.toString(16).padStart(8, '0')}`,
        kind: 'other',
        material: l.material,
        count: 600,
        volumeL: 5000,
        ageY: l.group === 'film' ? 0 : null,
        ...wide,
      });
    });
    const chosen = inlandCanopy.stock.filter((i) => ['frame', 'door', 'window'].includes(i.kind));
    const result = plan({ ...withStructure(inlandCanopy, {}), stock: [...chosen, ...give], budget: { ...inlandCanopy.budget, capMinor: 0 } });
    expect(result.takeOff.lines.filter((l) => l.toBuy > 0).map((l) => l.lineId)).toEqual([]);
    expect(result.budget).toMatchObject({ verdict: 'withinCap', cashMinor: 0, overCapMinor: 0 });
  });

  test('a thing chosen twice serves one opening; the other is told', () => {
    const [, first, second] = inlandCanopy.structure.openings;
    if (!first || !second) throw new Error('two windows are needed');
    const result = plan(withStructure(inlandCanopy, { openings: [first, { ...second, stockTag: first.stockTag }] }));
    expect(result.takeOff.lines.flatMap((l) => l.reclaimed.map((r) => r.tag)).filter((t) => t === first.stockTag)).toHaveLength(1);
    expect(result.notes.find((n) => n.code === 'takeoff.tag-wanted-twice')).toMatchObject({ severity: 'stop', subject: first.stockTag });
  });

  test('no anchors, no doors, no stock, no prices, nothing known: still a whole plan that promises nothing', () => {
    const bare = plan({
      ...withStructure(inlandCanopy, {
        openings: [],
        frameMassKg: 'unknown',
        braced: 'unknown',
        tube: { shape: 'round', outsideMm: 'unknown', wallMm: 'unknown', rust: 'unknown' },
        anchor: {
          kind: 'none',
          perPostCount: 0,
          depthM: 'unknown',
          diameterM: 'unknown',
          installTorqueNm: 'unknown',
          pulledToN: 'unknown',
          ballastKg: 'unknown',
          ballastIsWater: false,
        },
      }),
      site: { ...inlandCanopy.site, wind: 'unknown', snow: 'unknown', soilClass: 'unknown', frostDepthM: 'unknown' },
      stock: [],
      prices: [],
    });
    expect([bare.wind.verdict, bare.snow.verdict]).toEqual(['notAssessed', 'notAssessed']);
    expect(bare.anchorage.verdict).not.toBe('noRedFlag');
    expect(bare.budget.verdict).not.toBe('withinCap');
    expect(bare.reviewBlocked).toBe(true);
  });
});
