import { describe, expect, test } from '@jest/globals';
import { allSources } from '@lathwork/calc';

const sources = allSources();
const idsOf = (rows: typeof sources) => rows.map((s) => s.sourceId);

describe('the bibliography, as it is printed', () => {
  test('every entry has a short title and a publisher', () => {
    expect(sources.length).toBeGreaterThan(80);
    expect(idsOf(sources.filter((s) => s.title.length < 8 || s.title.length > 130))).toEqual([]);
    expect(idsOf(sources.filter((s) => s.publisher.length < 3 || s.publisher.length > 80))).toEqual([]);
    expect(idsOf(sources.filter((s) => !/^[A-Z0-9]/.test(s.title) || !/^[A-Z]/.test(s.publisher)))).toEqual([]);
    expect(new Set(sources.map((s) => s.title)).size).toBe(sources.length);
  });

  test('what was chosen here says so, and has no year of its own', () => {
    const chosen = sources.filter((s) => /choices of this screening/i.test(s.title));
    expect(idsOf(chosen).sort()).toEqual(['CLIMATE-JUDGEMENT', 'JUDGEMENT-LOADS', 'JUDGEMENT-MATERIALS', 'THERMAL-JUDGEMENT']);
    expect(chosen.every((s) => s.quality === 'judgement' && s.year === null)).toBe(true);
    expect(idsOf(sources.filter((s) => s.quality === 'judgement' && !chosen.includes(s)))).toEqual([]);
  });

  test('what is from memory says so by its quality', () => {
    expect(idsOf(sources.filter((s) => /from memory|recalled/i.test(s.title) && s.quality !== 'memory'))).toEqual([]);
  });

  test('a year that stands in the title or the number of a standard is the year of the entry', () => {
    const stated = sources.flatMap((s) => {
      const m = /\b(?:EN \d+(?:-\d+)*|ISO \d+):(\d{4})/.exec(s.title);
      return m ? [{ sourceId: s.sourceId, year: s.year, printed: Number(m[1]) }] : [];
    });
    expect(stated.length).toBeGreaterThan(3);
    expect(stated.filter((s) => s.year !== s.printed)).toEqual([]);
  });

  test('no entry speaks of how this text came about', () => {
    expect(
      idsOf(
        sources.filter((s) =>
          /\b(opened|not opened|shared|session|reference file|this project|section [0-9]+ of reference)\b/i.test(`${s.title} ${s.publisher}`),
        ),
      ),
    ).toEqual([]);
  });
});
