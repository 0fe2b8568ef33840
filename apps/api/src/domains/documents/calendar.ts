import type { ScheduleResult, Stage, TaskId } from '@lathwork/model';
import { ICalCalendar } from 'ical-generator';
import { DateTime } from 'luxon';

export const CALENDAR_TYPE = 'text/calendar; charset=utf-8';

const STAGES: Readonly<Record<string, string>> = {
  paper: 'Permission and buried lines',
  pile: 'Sort the pile',
  frameParts: 'Fetch and clean the frame',
  setOut: 'Stake out and drain',
  base: 'Sill and anchors',
  frameUp: 'Stand and brace the frame',
  nailers: 'Boards for the film',
  endFrames: 'Frame the end walls',
  doorsWindows: 'Door, windows and vents',
  ends: 'Cover the end walls',
  cover: 'Pull the main cover over',
  sealWater: 'Seal, gutter and barrels',
  floor: 'Floor, paths and beds',
  handOver: 'Test, hand over and thank',
};

export interface CalendarPlan {
  buildId: string;
  revision: number;
  /** When the revision was asked for: the same plan gives the same file. */
  createdAt: string;
  buildName: string;
  siteName: string;
  schedule: ScheduleResult;
  /** First work day. */
  startsOn: string;
  /** From one work day to the next: 1 is day after day, 7 is once a week. */
  everyD: number;
  /** Hours that are worked on one day. */
  dayH: number;
}

interface WorkDay {
  stage: Stage;
  /** Which of the days of its stage this is, from 1. */
  part: number;
  parts: number;
  on: DateTime;
}

const hoursOf = (stage: Stage, schedule: ScheduleResult): { startH: number; endH: number } | null => {
  const tasks = schedule.tasks.filter(({ taskId }) => stage.tasks.includes(taskId));
  if (tasks.length === 0) return null;
  return { startH: Math.min(...tasks.map((one) => one.earliestStartH)), endH: Math.max(...tasks.map((one) => one.earliestStartH + one.clockH)) };
};

/** A stage stands on each day on which some of its hours fall. A stage without hours stands on the day it is due. */
const daysOf = (plan: CalendarPlan): WorkDay[] =>
  plan.schedule.stages.flatMap((stage) => {
    const hours = hoursOf(stage, plan.schedule);
    if (!hours) return [];
    const first = Math.floor(hours.startH / plan.dayH + 1e-9);
    const last = Math.max(first, Math.ceil(hours.endH / plan.dayH - 1e-9) - 1);
    const parts = last - first + 1;
    return Array.from({ length: parts }, (_none, i) => ({
      stage,
      part: i + 1,
      parts,
      on: DateTime.fromISO(plan.startsOn, { zone: 'utc' }).plus({ days: (first + i) * plan.everyD }),
    }));
  });

const gatesOf = (ids: readonly TaskId[], { tasks }: ScheduleResult): string[] => {
  const own = tasks.filter(({ taskId }) => ids.includes(taskId));
  const winds = own.flatMap(({ gate }) => (gate.windMaxMPerS === null ? [] : [gate.windMaxMPerS]));
  const crew = Math.max(1, ...own.map(({ crewMin }) => crewMin));
  return [
    `People: at least ${crew}.`,
    ...(winds.length > 0 ? [`Not in wind above ${Math.round(Math.min(...winds) * 10) / 10} m/s.`] : []),
    ...(own.some(({ gate }) => gate.dry) ? ['Dry weather only.'] : []),
    ...(own.some(({ gate }) => gate.needs.includes('locateTicket')) ? ['Buried lines must be marked first.'] : []),
    ...(own.some(({ gate }) => gate.needs.includes('writtenPermission')) ? ['Written permission must be there.'] : []),
  ];
};

// Line ends are one kind in a calendar, and no other control character may stand in one (RFC 5545, 3.3.11).
// eslint-disable-next-line no-control-regex -- control characters are exactly what is taken out
const plain = (text: string): string => text.replaceAll(/\r\n?/g, '\n').replaceAll(/[\u0000-\u0008\u000b-\u001f\u007f]/g, '');

/**
 * The work days of a plan as a calendar (RFC 5545). Days and no hours: a volunteer day begins when people come. An event
 * keeps its UID from revision to revision, and its SEQUENCE is the revision, so that a calendar puts the new in place of the old.
 */
export const calendarOf = (plan: CalendarPlan): string => {
  // No name of the calendar itself: the library writes that one as it is, with commas and line ends.
  const calendar = new ICalCalendar({ prodId: { company: 'Lathwork', product: 'Plan calendar', language: 'EN' } });
  for (const { stage, part, parts, on } of daysOf(plan)) {
    const title = STAGES[stage.stageId] ?? stage.stageId;
    calendar.createEvent({
      id: `${plan.buildId}.${stage.stageId}.${part}@lathwork`,
      sequence: plan.revision,
      stamp: DateTime.fromISO(plan.createdAt, { zone: 'utc' }),
      start: on,
      end: on.plus({ days: 1 }),
      allDay: true,
      summary: plain(`${title}${parts > 1 ? ` (${part} of ${parts})` : ''}: ${plan.buildName}`),
      location: plain(plan.siteName),
      description: [`Stage ${stage.stageNumber}.`, ...gatesOf(stage.tasks, plan.schedule), `Plan revision ${plan.revision}. The plan book says how.`].join(
        '\n',
      ),
    });
  }
  const text = calendar.toString();
  return text.endsWith('\r\n') ? text : `${text}\r\n`;
};
