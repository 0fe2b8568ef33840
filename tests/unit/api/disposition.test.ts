import { describe, expect, it } from '@jest/globals';
import { attachment, fileNameOf } from '../../../apps/api/src/platform/files/disposition.js';
import { ACCEPTED, REFUSED } from '../../support/nasty-strings.js';

/** The name that a browser takes: the extended one if there is one (RFC 6266, 4.3; RFC 8187, 3.2). */
const nameIn = (header: string): string => {
  const extended = /filename\*=UTF-8''([^;]*)$/.exec(header)?.[1];
  return extended === undefined ? (/filename="([^"]*)"/.exec(header)?.[1] ?? '') : decodeURIComponent(extended);
};
// What no common file system takes.
const UNFIT = /[/\\:*?"<>|\u0000-\u001f\u007f-\u009f\u2028\u2029\u202a-\u202e\u2066-\u2069]/u; // eslint-disable-line no-control-regex

describe('a file name in a header', () => {
  it('S20: every text of the corpus makes a header of printable ASCII, in one piece', () => {
    for (const text of [...ACCEPTED, ...REFUSED.map(([one]) => one)]) {
      const header = attachment(fileNameOf(text, 'csv'));
      expect([text, header]).toEqual([text, expect.stringMatching(/^attachment; filename="[^"\\%]*"(; filename\*=UTF-8''[A-Za-z0-9!#$&+.^_`|~%-]+)?$/)]);
      expect(header).toMatch(/^[\x20-\x7e]+$/);
    }
  });

  it('S20: a text that may be a file name comes back as it was; the rest keeps all it may', () => {
    const kept = ACCEPTED.filter((text) => !UNFIT.test(text) && !/^[\s.]|[\s.]$/.test(text) && [...text].length <= 120 && text.normalize('NFC') === text);
    expect(kept.length).toBeGreaterThan(100);
    for (const text of kept) expect(nameIn(attachment(fileNameOf(text, 'ics')))).toBe(`${text}.ics`);
  });

  it('S20: no name leads out of a folder, hides itself, or turns its ending round', () => {
    for (const text of [...ACCEPTED, ...REFUSED.map(([one]) => one)]) {
      const name = nameIn(attachment(fileNameOf(text, 'csv')));
      expect([text, UNFIT.test(name), name.startsWith('.'), name.endsWith('.csv'), name.length > 4]).toEqual([text, false, false, true, true]);
    }
  });
});
