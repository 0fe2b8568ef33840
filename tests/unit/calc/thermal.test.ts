import { describe, expect, test } from '@jest/globals';
import { computeThermal, THERMAL_MODEL } from '@lathwork/calc';
import { CROP_KEYS, ThermalResultSchema } from '@lathwork/model';
import { Ajv } from 'ajv';
import { canopy, canopyGeometry, climate, site, thermalInput, wishes } from '../../support/thermal-fixture.js';
import { CROPS } from '../../../libs/calc/src/data/crops.js';
import { nightVerdict } from '../../../libs/calc/src/rooms/thermal-judge.js';
import { shelterOf, ventOpenings } from '../../../libs/calc/src/rooms/thermal-shelter.js';

const codes = (x: ReturnType<typeof computeThermal>) => x.notes.map((n) => n.code);
const full = computeThermal(thermalInput());

describe('thermal room', () => {
  test('its result is what the contract says, and every source it names exists', () => {
    const ajv = new Ajv({ strict: false });
    const valid = ajv.compile(ThermalResultSchema);
    expect(valid(full.result) ? [] : valid.errors).toEqual([]);
    expect(full.sources).toEqual(expect.arrayContaining(['KUSUDA-1965', 'THERMAL-JUDGEMENT']));
    expect(full.result.drivers).toHaveLength(8);
    expect(Math.abs(full.result.drivers[0]!.rankRatio)).toBeGreaterThanOrEqual(Math.abs(full.result.drivers[1]!.rankRatio));
  });

  test('no design night: not assessed, no night, but months with a record are still given', () => {
    const weather = climate({ latitudeDeg: 40, meanC: 9, swingK: 12, rangeK: 13, designLowC: -14, clearMonth: 4 });
    const months = weather.months.map((m) => (m.month === 1 ? { ...m, hasRecord: false, tMaxC: null, tMinC: null } : m));
    const out = computeThermal(
      thermalInput({
        climate: {
          ...weather,
          designNight: null,
          months,
          coldNights: weather.coldNights.filter((d) => d.month !== 1),
          clearDays: weather.clearDays.filter((d) => d.month !== 1),
        },
      }),
    );
    expect(out.result.verdict).toBe('notAssessed');
    expect(out.result.designNights).toEqual([]);
    expect(out.result.drivers).toEqual([]);
    expect(out.result.months.map((m) => m.month)).toEqual([2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12]);
    expect(out.result.crops.every((c) => c.belowFrac === null)).toBe(true);
    expect(codes(out)).toContain('thermal.no-design-night');
  });

  test('the verdict follows the range: likely end, middle, neither', () => {
    const rows = full.result.designNights;
    const low = rows.find((n) => n.variant === 'asPlanned')!.insideLowC;
    expect(nightVerdict(rows, low.p10 - 0.01)).toBe('noRedFlag');
    expect(nightVerdict(rows, (low.p10 + low.p50) / 2)).toBe('marginal');
    expect(nightVerdict(rows, low.p50 + 0.01)).toBe('doesNotPass');
    expect(nightVerdict([], 0)).toBe('notAssessed');
    expect(nightVerdict(rows, null)).toBe('notAssessed');
  });

  test('notes: crops at risk by name, shut heat, nobody who opens', () => {
    const out = computeThermal(
      thermalInput({
        wishes: wishes({ ventsOpenedBy: 'nobody', crops: ['tomato'] }),
        climate: climate({ latitudeDeg: 40, meanC: 12, swingK: 10, rangeK: 14, designLowC: -8, clearMonth: 6 }),
      }),
    );
    expect(out.notes.find((n) => n.code === 'thermal.crop-at-risk')).toMatchObject({ subject: 'tomato', params: { crop: 'tomato' } });
    expect(out.notes.find((n) => n.code === 'thermal.cooks-when-shut')?.severity).toBe('stop');
    expect(codes(out)).toContain('thermal.nobody-opens');
  });

  test("a decked floor says that it keeps the soil's heat from the air", () => {
    expect(codes(computeThermal(thermalInput({ structure: canopy({ floor: 'decking' }) })))).toContain('thermal.no-floor-heat');
    expect(codes(full)).not.toContain('thermal.no-floor-heat');
  });

  test("outside the model's range it says so", () => {
    const out = computeThermal(thermalInput({ site: site({ elevationM: 6000 }) }));
    expect(out.notes.find((n) => n.code === 'thermal.outside-validity')).toMatchObject({
      subject: 'elevationM',
      params: { max: THERMAL_MODEL.ranges.elevationM.max },
    });
  });

  test('colder than the sky models were made for: no night is given', () => {
    const out = computeThermal(thermalInput({ climate: climate({ latitudeDeg: 65, meanC: -15, swingK: 25, rangeK: 8, designLowC: -52, clearMonth: 5 }) }));
    expect(out.result.verdict).toBe('notAssessed');
    expect(out.result.designNights).toEqual([]);
    expect(out.notes.find((n) => n.code === 'thermal.outside-validity')).toMatchObject({ severity: 'stop', subject: 'outsideLowC' });
  });

  test('openings are split at half height and by wall; one that does not fit is not counted', () => {
    const geometry = canopyGeometry();
    const v = ventOpenings(geometry);
    expect(v.lowM2).toBeCloseTo(0.9 * 1.9, 6);
    expect(v.topM2).toBeCloseTo(0.9 * 0.6 * 0.5, 6);
    expect(v.riseM).toBeCloseTo(1.8 - 0.95, 6);
    expect(ventOpenings({ ...geometry, openings: geometry.openings.map((o) => ({ ...o, fits: false })) }).mainWallM2).toBe(0);
  });

  test('the host wall of a lean-to counts neither as film nor as light', () => {
    const shelter = shelterOf(site(), canopy({ kind: 'leanTo' }), canopyGeometry());
    expect(shelter.faces.map((f) => f.azimuthDeg)).not.toContain(undefined);
    expect(shelter.faces).toHaveLength(5);
  });

  test('every crop has its limits in order', () => {
    for (const crop of CROP_KEYS) {
      expect(CROPS[crop].usuallyKilledC).toBeLessThan(CROPS[crop].damageBeginsC);
      expect(CROPS[crop].damageBeginsC).toBeLessThan(CROPS[crop].heatHurtsC);
    }
  });

  test('the southern hemisphere gives the same shelter the same night, mirrored', () => {
    const out = computeThermal(
      thermalInput({
        site: site({ latitudeDeg: -40 }),
        climate: climate({ latitudeDeg: -40, meanC: 9, swingK: 12, rangeK: 13, designLowC: -14, clearMonth: 10 }),
      }),
    );
    const n = (r: typeof out) => r.result.designNights[0]!.liftK.p50;
    expect(Math.abs(n(out) - n(full))).toBeLessThan(0.6);
  });
});
