import { describe, expect, it } from '@jest/globals';
import { isId, newId } from '../../../apps/api/src/platform/database/ids.js';

const UUID_V7 = /^[0-9a-f]{8}-[0-9a-f]{4}-7[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/;
const millisecondOf = (id: string): number => Number.parseInt(id.replaceAll('-', '').slice(0, 12), 16);

describe('ids', () => {
  it('A22: a hundred thousand are all different, lower case, of version 7 and the right variant, with the time they were made', () => {
    const before = Date.now();
    const ids = Array.from({ length: 100_000 }, newId);
    const after = Date.now();
    expect(ids.filter((id) => !UUID_V7.test(id) || !isId(id))).toEqual([]);
    expect(new Set(ids).size).toBe(ids.length);
    expect(ids.filter((id) => millisecondOf(id) < before || millisecondOf(id) > after + 1)).toEqual([]);
  });

  it('A22: they sort in the order in which they were made', () => {
    const ids = Array.from({ length: 100_000 }, newId);
    expect(ids.findIndex((id, i) => i > 0 && id <= (ids[i - 1] ?? ''))).toBe(-1);
  });

  it('A22: what only looks like one is told apart', () => {
    const id = newId();
    for (const wrong of [id.toUpperCase(), `{${id}}`, `urn:uuid:${id}`, id.replaceAll('-', ''), `${id} `, id.slice(1), `${id}0`, '', null, 7])
      expect([wrong, isId(wrong)]).toEqual([wrong, false]);
  });
});
