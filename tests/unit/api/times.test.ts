import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import ICAL from 'ical.js';
import { calendarOf } from '../../../apps/api/src/domains/documents/calendar.js';
import { isDay } from '../../../apps/api/src/domains/shared/fields.js';
import { dateToDay, dayToDate } from '../../../apps/api/src/domains/shared/resource.js';
import { sampleResult } from '../../support/sample-result.js';

// Run as it is and again in other zones by tests/contract/time-zones.test.ts: none of it may depend on where the server stands.

const DAYS_OF_MONTH = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
const isLeap = (year: number): boolean => year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0);
const lengthOf = (year: number, month: number): number => (month === 2 && isLeap(year) ? 29 : (DAYS_OF_MONTH[month - 1] ?? 0));
const written = (year: number, month: number, day: number): string =>
  `${String(year).padStart(4, '0')}-${String(month).padStart(2, '0')}-${String(day).padStart(2, '0')}`;

/** The day after, by counting alone. */
const dayAfter = (text: string): string => {
  const [year = 0, month = 0, day = 0] = text.split('-').map(Number);
  if (day < lengthOf(year, month)) return written(year, month, day + 1);
  return month < 12 ? written(year, month + 1, 1) : written(year + 1, 1, 1);
};

const someDay = fc
  .tuple(fc.integer({ min: 1000, max: 9999 }), fc.integer({ min: 1, max: 12 }), fc.integer({ min: 1, max: 31 }))
  .map(([year, month, day]) => written(year, month, Math.min(day, lengthOf(year, month))));

/** Days on which clocks change somewhere, leap days, and the ends of the calendar. */
const SPECIAL = [
  '2026-03-08',
  '2026-03-29',
  '2026-10-25',
  '2026-11-01',
  '1986-01-01',
  '2028-02-29',
  '2000-02-29',
  '2400-02-29',
  '9999-12-31',
  '1000-01-01',
  '2026-04-05',
  '2026-09-27',
];

describe('days', () => {
  it('A21: a day is kept and given back as the same day, over leap days, changes of clocks and the year 9999', () => {
    for (const day of SPECIAL) expect([day, dateToDay(dayToDate(day)), isDay(day)]).toEqual([day, day, true]);
    fc.assert(
      fc.property(someDay, (day) => {
        expect(dateToDay(dayToDate(day))).toBe(day);
        expect(isDay(day)).toBe(true);
      }),
      { numRuns: 1000 },
    );
  });

  it('A21: a day that is none is refused, and never rolled over', () => {
    for (const wrong of [
      '2026-02-29',
      '2100-02-29',
      '1900-02-29',
      '2026-02-30',
      '2026-04-31',
      '2026-13-01',
      '2026-00-10',
      '2026-01-00',
      '10000-01-01',
      '2026-1-1',
      '20260101',
      '2026-01-01T00:00:00Z',
      ' 2026-01-01',
      '2026-01-01 ',
      '2026-01-0１',
    ])
      expect([wrong, isDay(wrong)]).toEqual([wrong, false]);
    fc.assert(
      fc.property(fc.integer({ min: 1000, max: 9999 }), fc.integer({ min: 1, max: 12 }), fc.integer({ min: 1, max: 3 }), (year, month, beyond) => {
        expect(isDay(written(year, month, lengthOf(year, month) + beyond))).toBe(false);
      }),
    );
  });

  it('A21: the days of a calendar are counted alike from every first day, whatever clocks do', () => {
    const { schedule } = sampleResult();
    /** How many days after the first each event begins, found by counting. */
    const offsets = (startsOn: string): number[] => {
      const about = { buildId: 'b', revision: 1, createdAt: '2026-01-01T00:00:00.000Z', buildName: 'b', siteName: 's', everyD: 1, dayH: 1 };
      const events = new ICAL.Component(ICAL.parse(calendarOf({ ...about, schedule, startsOn })) as unknown[]).getAllSubcomponents('vevent');
      const counted = new Map<string, number>();
      for (let i = 0, day = startsOn; i < 120; i += 1, day = dayAfter(day)) counted.set(day, i);
      for (const event of events) expect(String(event.getFirstPropertyValue('dtend'))).toBe(dayAfter(String(event.getFirstPropertyValue('dtstart'))));
      return events.map((event) => counted.get(String(event.getFirstPropertyValue('dtstart'))) ?? Number.NaN);
    };
    const usual = offsets('2001-06-01');
    expect(new Set(usual).size).toBeGreaterThan(5);
    const first = fc.oneof(fc.constantFrom(...SPECIAL), someDay).filter((day) => day < '9900');
    fc.assert(
      fc.property(first, (startsOn) => expect(offsets(startsOn)).toEqual(usual)),
      { numRuns: 60 },
    );
  });
});
