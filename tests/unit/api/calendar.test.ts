import { describe, expect, it } from '@jest/globals';
import ICAL from 'ical.js';
import { calendarOf, type CalendarPlan } from '../../../apps/api/src/domains/documents/calendar.js';
import { ACCEPTED } from '../../support/nasty-strings.js';
import { sampleResult } from '../../support/sample-result.js';

const plan = (changes: Partial<CalendarPlan> = {}): CalendarPlan => ({
  buildId: '019a0000-0000-7000-8000-000000000001',
  revision: 3,
  createdAt: '2026-03-01T12:34:56.789Z',
  buildName: 'Arch of the yarrow plot',
  siteName: 'East field',
  schedule: sampleResult().schedule,
  startsOn: '2026-04-04',
  everyD: 1,
  dayH: 6,
  ...changes,
});

const read = (text: string): ICAL.Event[] => {
  const calendar = new ICAL.Component(ICAL.parse(text) as unknown[]);
  expect(calendar.getFirstPropertyValue('version')).toBe('2.0');
  expect(String(calendar.getFirstPropertyValue('prodid'))).not.toBe('');
  return calendar.getAllSubcomponents('vevent').map((one) => new ICAL.Event(one));
};

/** RFC 5545, 3.1, on the bytes themselves: every line ends in CRLF, none is longer than 75 octets, and no character is cut in two. */
const expectWellFolded = (text: string): void => {
  expect(text.endsWith('\r\n')).toBe(true);
  expect(text.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/);
  for (const line of text.split('\r\n')) {
    expect(Buffer.byteLength(line)).toBeLessThanOrEqual(75);
    expect(Buffer.from(line).toString('utf8')).toBe(line);
    expect(line).not.toMatch(/\p{Surrogate}/u);
  }
};

const SPANISH = 'Invernadero del Niño: plantación, reparación y puesta en marcha; día tras día, señora Ñandú 🌱🏗️ — sección ñ ñ ñ ñ';

describe('the calendar of a plan', () => {
  it('A26: each stage stands on the days on which its hours fall, as whole days', () => {
    const { stages, tasks } = sampleResult().schedule;
    const events = read(calendarOf(plan()));
    expect(stages.length).toBeGreaterThan(0);
    expect(new Set(events.map(({ uid }) => uid)).size).toBe(events.length);
    for (const stage of stages) {
      const own = tasks.filter(({ taskId }) => stage.tasks.includes(taskId));
      const days = events.filter(({ uid }) => uid.includes(`.${stage.stageId}.`)).map(({ startDate }) => startDate.toString());
      if (own.length === 0) {
        expect(days).toEqual([]);
        continue;
      }
      const first = Math.floor(Math.min(...own.map((one) => one.earliestStartH)) / 6);
      expect(days[0]).toBe(new Date(Date.UTC(2026, 3, 4 + first)).toISOString().slice(0, 10));
    }
    for (const { startDate, endDate } of events) {
      expect(startDate.isDate).toBe(true);
      expect(endDate.subtractDate(startDate).toSeconds()).toBe(86_400);
    }
  });

  it('A26: once a week, over the end of a month, a leap day and a change of clocks, the days are seven apart', () => {
    const events = read(calendarOf(plan({ startsOn: '2028-02-26', everyD: 7, dayH: 1 })));
    const days = [...new Set(events.map(({ startDate }) => startDate.toString()))].sort();
    expect(days.length).toBeGreaterThan(5);
    for (const day of days) expect(((Date.parse(day) - Date.parse('2028-02-26')) / 86_400_000) % 7).toBe(0);
  });

  it('A26: UID is the same in every revision, SEQUENCE rises with it, and DTSTAMP is the moment of the revision in UTC', () => {
    const [third, fourth] = [calendarOf(plan()), calendarOf(plan({ revision: 4, createdAt: '2026-03-02T01:02:03.000Z', startsOn: '2026-05-02' }))];
    expect(read(fourth).map(({ uid }) => uid)).toEqual(read(third).map(({ uid }) => uid));
    expect(new Set(read(third).map(({ sequence }) => sequence))).toEqual(new Set([3]));
    expect(new Set(read(fourth).map(({ sequence }) => sequence))).toEqual(new Set([4]));
    expect(new Set(third.match(/^DTSTAMP:.*$/gm))).toEqual(new Set(['DTSTAMP:20260301T123456Z\r'.trim()]));
    expect(calendarOf(plan())).toBe(third);
  });

  it('A26: lines are folded at 75 octets, not characters, in Spanish and with emoji, and read back whole', () => {
    const text = calendarOf(plan({ buildName: SPANISH, siteName: `${SPANISH} 🏴󠁧󠁢󠁳󠁣󠁴󠁿` }));
    expectWellFolded(text);
    expect(text.split('\r\n').some((line) => line.startsWith(' '))).toBe(true);
    const events = read(text);
    for (const { summary, location } of events) {
      expect(summary.endsWith(`: ${SPANISH}`)).toBe(true);
      expect(location).toBe(`${SPANISH} 🏴󠁧󠁢󠁳󠁣󠁴󠁿`);
    }
  });

  it('S20: no text of the corpus gets out of its line, and each is read back as it was', () => {
    for (const name of ACCEPTED) {
      const text = calendarOf(plan({ buildName: name, siteName: name }));
      expectWellFolded(text);
      const [event] = read(text);
      expect([name, event?.location, event?.summary.endsWith(`: ${name}`)]).toEqual([name, name, true]);
    }
  });

  it('S20: line ends and other control characters make no new line and no new property', () => {
    const text = calendarOf(plan({ buildName: 'a\r\nEND:VEVENT\r\nBEGIN:VALARM\u0007', siteName: 'x\nATTENDEE:mailto:x@example.org' }));
    expectWellFolded(text);
    expect(text).not.toMatch(/^(ATTENDEE|BEGIN:VALARM)/m);
    expect(read(text)[0]?.location).toBe('x\nATTENDEE:mailto:x@example.org');
  });
});
