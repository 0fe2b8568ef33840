import { describe, expect, test } from '@jest/globals';
import type { PlanInputs, TakeOffLine } from '@lathwork/model';
import { FOUR_GARDENS, inlandCanopy, inlandTunnel, southernCanopy } from '../../support/gardens.js';
import { stockItem, takeOffOf } from '../../support/material-rooms.js';

const lineOf = (inputs: PlanInputs, lineId: string): TakeOffLine => {
  const line = takeOffOf(inputs).result.lines.find((l) => l.lineId === lineId);
  if (!line) throw new Error(`no line ${lineId}`);
  return line;
};
const notesOf = (inputs: PlanInputs, code: string) => takeOffOf(inputs).notes.filter((n) => n.code === code);

describe('take-off', () => {
  test.each(FOUR_GARDENS)('%s: lines add up, packs are whole and enough, no tag stands twice, grade X nowhere', (_name, inputs) => {
    const { result } = takeOffOf(inputs);
    const tags = result.lines.flatMap((l) => l.reclaimed.map((r) => r.tag));
    expect(new Set(tags).size).toBe(tags.length);
    const rejected = inputs.stock.filter((i) => i.grade === 'X').map((i) => i.tag);
    expect(tags.filter((t) => rejected.includes(t))).toEqual([]);
    for (const l of result.lines) {
      const pile = l.reclaimed.reduce((sum, r) => sum + r.amount, 0);
      expect(pile + l.toBuy).toBeGreaterThanOrEqual(l.wanted - 1e-6);
      expect(l.wanted).toBeGreaterThanOrEqual(l.need - 1e-9);
      if (l.priceId !== null) {
        expect(l.boughtAmount).toBeGreaterThanOrEqual(l.toBuy - 1e-6);
        expect(l.boughtAmount - (l.packAmount ?? 0)).toBeLessThan(l.toBuy);
        const price = inputs.prices.find((p) => p.priceId === l.priceId);
        expect(l.cash?.minor).toBe(l.packs * (price?.packPrice.minor ?? NaN));
      } else if (l.toBuy > 0) expect(l.cash).toBeNull();
      else expect(l.cash).toEqual({ minor: 0, currency: inputs.budget.currency });
    }
    expect(result.unpricedCount).toBe(result.lines.filter((l) => l.cash === null).length);
    expect(new Set(result.lines.map((l) => l.lineId)).size).toBe(result.lines.length);
  });

  test('the film is taken from the roll in its full width, the two ends side by side', () => {
    // Roll 8.534 m: one strip of 6.096 + 2 x 0.457 = 7.010 m over the top; ends 2.743 + 0.914 = 3.657 m long, 2 x 3.962 m wide side by side.
    expect(lineOf(inlandCanopy, 'film-main').wanted).toBeCloseTo(8.534 * 7.01, 2);
    expect(lineOf(inlandCanopy, 'film-ends').wanted).toBeCloseTo(8.534 * 3.657, 2);
  });

  test('film of unknown age, though in the pile, is never the main cover and says what it is good for', () => {
    const { result, notes } = takeOffOf(inlandTunnel);
    const film = inlandTunnel.stock.filter((i) => i.kind === 'film').map((i) => i.tag);
    expect(result.lines.filter((l) => l.material.startsWith('film.') && l.lineId !== 'film-inner').flatMap((l) => l.reclaimed)).toEqual([]);
    expect(notes.filter((n) => n.code === 'takeoff.film-not-main-cover').map((n) => n.subject)).toEqual(
      film.filter((t) => inlandTunnel.stock.some((i) => i.tag === t && i.material === 'film.greenhouse')),
    );
    const found: PlanInputs = {
      ...inlandCanopy,
      structure: { ...inlandCanopy.structure, cover: { ...inlandCanopy.structure.cover, film: 'found', ageY: 'unknown' } },
    };
    expect(notesOf(found, 'takeoff.found-film-bought-new')).toHaveLength(1);
    expect(lineOf(found, 'film-main').material).toBe('film.greenhouse');
  });

  test('a sound year-old film that covers the sheet whole may be the main cover', () => {
    const film = stockItem({ tag: 'FI-001', kind: 'film', material: 'film.greenhouse', widthMm: 9000, lengthMm: 7500, ageY: 1 });
    expect(lineOf({ ...inlandCanopy, stock: [...inlandCanopy.stock, film] }, 'film-main').reclaimed.map((r) => r.tag)).toEqual(['FI-001']);
    expect(lineOf({ ...inlandCanopy, stock: [...inlandCanopy.stock, { ...film, ageY: 2 }] }, 'film-main').reclaimed).toEqual([]);
    expect(lineOf({ ...inlandCanopy, stock: [...inlandCanopy.stock, { ...film, widthMm: 8000, lengthMm: 7000 }] }, 'film-main').reclaimed).toEqual([]);
  });

  test('a chosen door that was rejected is not used: stop note, and a door on the list to buy', () => {
    const inputs: PlanInputs = { ...inlandCanopy, stock: inlandCanopy.stock.map((i) => (i.kind === 'door' ? { ...i, grade: 'X' as const } : i)) };
    expect(lineOf(inputs, 'opening-D1')).toMatchObject({ reclaimed: [], toBuy: 1, packs: 1 });
    expect(notesOf(inputs, 'takeoff.chosen-item-refused')).toMatchObject([{ severity: 'stop', params: { reason: 'gradeX' } }]);
    const gone: PlanInputs = { ...inlandCanopy, stock: inlandCanopy.stock.filter((i) => i.kind !== 'door') };
    expect(notesOf(gone, 'takeoff.tag-not-held')).toHaveLength(1);
  });

  test('a door larger than its opening stops', () => {
    const inputs: PlanInputs = { ...inlandCanopy, stock: inlandCanopy.stock.map((i) => (i.kind === 'door' ? { ...i, widthMm: 915 } : i)) };
    expect(notesOf(inputs, 'takeoff.item-larger-than-opening')[0]?.params['overM']).toBeCloseTo(0.05, 6);
  });

  test('a price in another currency is kept in it until a dated rate turns it', () => {
    expect(lineOf(southernCanopy, 'contact-tape').cash?.currency).toBe('AUD');
    expect(notesOf(southernCanopy, 'takeoff.price-in-other-currency').map((n) => n.subject)).toEqual(['contact-tape']);
    const rated: PlanInputs = {
      ...southernCanopy,
      budget: { ...southernCanopy.budget, exchangeRates: [{ from: 'AUD', to: 'NZD', rate: 1.1, readOn: '2026-03-01' }] },
    };
    const line = lineOf(rated, 'contact-tape');
    expect(line.cash).toEqual({ minor: Math.round(line.packs * 800 * 1.1), currency: 'NZD' });
    expect(notesOf(rated, 'takeoff.price-converted')[0]?.params['readOn']).toBe('2026-03-01');
  });

  test('old and undated prices are used and flagged', () => {
    const { result, notes } = takeOffOf({ ...inlandCanopy, structure: { ...inlandCanopy.structure, floor: 'gravel' } });
    expect(result.lines.filter((l) => l.priceStale).map((l) => l.lineId)).toEqual(['screw-framing', 'gravel']);
    expect(notes.find((n) => n.code === 'takeoff.price-stale')?.params['lineIds']).toEqual(['screw-framing']);
    expect(notes.find((n) => n.code === 'takeoff.price-undated')?.params['lineIds']).toEqual(['gravel']);
  });

  test('without a price the cash is null, never zero', () => {
    const { result, notes } = takeOffOf({ ...inlandCanopy, prices: [] });
    const buying = result.lines.filter((l) => l.toBuy > 0);
    expect(buying.length).toBeGreaterThan(5);
    expect(buying.every((l) => l.cash === null)).toBe(true);
    expect(notes.find((n) => n.code === 'takeoff.price-unknown')?.params['linesCount']).toBe(buying.length);
  });

  test('a barrel of unknown contents holds no water for this plan', () => {
    const bad = stockItem({ tag: 'BB-001', kind: 'barrel', material: 'barrel.water', hazards: ['barrelContentsUnknown'], count: 9, volumeL: 208 });
    expect(lineOf({ ...inlandCanopy, stock: [...inlandCanopy.stock.filter((i) => i.kind !== 'barrel'), bad] }, 'barrels').reclaimed).toEqual([]);
  });
});
