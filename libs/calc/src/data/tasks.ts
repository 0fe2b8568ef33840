import type { Stage, Task, TaskId } from '@lathwork/model';
import { cited } from '../sources/cite.js';

/** What the hours of a task grow with. */
export type Driver = 'area' | 'doors' | 'windows' | 'barrels';

export interface TaskFacts {
  taskId: TaskId;
  after: readonly TaskId[];
  day: Task['day'];
  crewMin: number;
  crewBest: number;
  /** Person-hours for the reference case: 10 x 20 ft salvaged canopy, one door, four windows, mixed crew. */
  lowH: number;
  likelyH: number;
  highH: number;
  driver: Driver;
  /** Share of the hours that stays the same however large the shelter is: setting out, fetching, squaring, one door. */
  fixedFrac: number;
  gate: Partial<Task['gate']>;
  tools: readonly string[];
}

const mph = (v: number): number => v * 0.44704;
const FRAME_WIND = cited(mph(15), 'm/s', 'JUDGEMENT-MATERIALS', 'frame work: gusts under 15 mph');
const END_WIND = cited(mph(10), 'm/s', 'JUDGEMENT-MATERIALS', 'end films: under 10 mph');
/** An expert's ceiling for a 30 x 96 ft sheet; a small sheet takes a little more. */
export const COVER_WIND_LARGE = cited(mph(5), 'm/s', 'COVER-DAY', 'spread film under 5 mph');
export const COVER_WIND_SMALL = cited(mph(8), 'm/s', 'JUDGEMENT-MATERIALS', '5 to 8 mph for a 10 x 20 ft cover');
export const SMALL_COVER_M2 = cited(25, 'm2', 'JUDGEMENT-MATERIALS', 'footprint up to which the small ceiling holds');
const PAINT_MIN_C = cited(10, 'degC', 'LOW-COST-PRACTICE', 'paint above 50 F');
const COVER_MIN_C = cited(15.6, 'degC', 'LOW-COST-PRACTICE', 'cover at about 60 to 80 F: warm, not hot');
const COVER_MAX_C = cited(26.7, 'degC', 'LOW-COST-PRACTICE', 'cover at about 60 to 80 F: warm, not hot');

/** People (fewest, best), person-hours (low, likely, high), and what they grow with (driver, fixed share). */
type Work = readonly [crew: readonly [number, number], hours: readonly [number, number, number], scale: readonly [Driver, number]];

const task = (
  taskId: TaskId,
  after: readonly TaskId[],
  day: Task['day'],
  [crew, hours, scale]: Work,
  gate: Partial<Task['gate']>,
  tools: string,
): TaskFacts => {
  for (const h of hours) cited(h, 'h', 'JUDGEMENT-MATERIALS', `task table, ${taskId}; range ratio set against 12 novice builds`, { min: 0, max: 24 });
  const fixedFrac = cited(scale[1], '1', 'JUDGEMENT-MATERIALS', `fixed share, ${taskId}`, { min: 0, max: 1 });
  return {
    taskId,
    after,
    day,
    crewMin: crew[0],
    crewBest: crew[1],
    lowH: hours[0],
    likelyH: hours[1],
    highH: hours[2],
    driver: scale[0],
    fixedFrac,
    gate,
    tools: tools.split(', '),
  };
};

/**
 * The twenty-four jobs of a build with what must come first. Stakes and posts break ground, so they wait for the
 * utility locate; the end walls come before the main cover; what must be done the same day stands in one stage.
 */
export const TASKS: readonly TaskFacts[] = [
  task(
    'permission',
    [],
    'paper',
    [
      [1, 1],
      [1, 2, 4],
      ['area', 1],
    ],
    {},
    'phone, sketch with dimensions',
  ),
  task(
    'intake',
    [],
    'prep',
    [
      [2, 2],
      [3, 6, 12],
      ['area', 0.6],
    ],
    { dry: true },
    'tape, caliper, awl, magnet, tags',
  ),
  task(
    'haulFrame',
    ['intake'],
    'prep',
    [
      [2, 3],
      [2, 4, 8],
      ['area', 0.6],
    ],
    { windMaxMPerS: FRAME_WIND },
    'sockets, penetrating oil, bags, marker',
  ),
  task(
    'cleanFrame',
    ['haulFrame'],
    'prep',
    [
      [1, 2],
      [1, 3, 6],
      ['area', 0.3],
    ],
    { dry: true, airMinC: PAINT_MIN_C },
    'wire brush, zinc paint, tape',
  ),
  task(
    'denail',
    ['intake'],
    'prep',
    [
      [2, 2],
      [3, 6, 12],
      ['area', 0.4],
    ],
    {},
    'bars, nippers, saw, magnet',
  ),
  task(
    'stakeOut',
    ['permission'],
    'ground',
    [
      [2, 2],
      [3, 6, 16],
      ['area', 0.6],
    ],
    { groundNot: ['frozen', 'saturated'], needs: ['writtenPermission', 'locateTicket'] },
    'shovel, string, water level, long tape',
  ),
  task(
    'drainage',
    ['stakeOut'],
    'ground',
    [
      [2, 3],
      [2, 4, 10],
      ['area', 0.5],
    ],
    { groundNot: ['saturated'], needs: ['locateTicket'] },
    'shovel, barrow, level',
  ),
  task(
    'sill',
    ['stakeOut'],
    'ground',
    [
      [2, 2],
      [2, 4, 6],
      ['area', 0.5],
    ],
    {},
    'saw, level, drill',
  ),
  task(
    'anchors',
    ['permission', 'sill'],
    'ground',
    [
      [2, 2],
      [1, 2, 5],
      ['area', 0.4],
    ],
    { groundNot: ['frozen'], needs: ['locateTicket'] },
    'bar, driver, pull scale or lever',
  ),
  task(
    'erect',
    ['cleanFrame', 'anchors'],
    'frame',
    [
      [3, 4],
      [2, 4, 6],
      ['area', 0.5],
    ],
    { windMaxMPerS: FRAME_WIND, needs: ['helpersOnSite'] },
    'step ladders, sockets, plumb line',
  ),
  task(
    'brace',
    ['erect'],
    'frame',
    [
      [2, 3],
      [2, 4, 8],
      ['area', 0.5],
    ],
    { windMaxMPerS: FRAME_WIND },
    'drill, clamps, cable cutter',
  ),
  task(
    'nailers',
    ['brace'],
    'frame',
    [
      [2, 2],
      [2, 4, 6],
      ['area', 0.5],
    ],
    {},
    'drill, straps, clamps',
  ),
  task(
    'endFrames',
    ['nailers', 'denail'],
    'frame',
    [
      [1, 2],
      [3, 6, 10],
      ['area', 0.9],
    ],
    {},
    'saw, square, drill',
  ),
  task(
    'doors',
    ['endFrames'],
    'cover',
    [
      [2, 2],
      [1.5, 3, 5],
      ['doors', 0],
    ],
    {},
    'shims, level, drill',
  ),
  task(
    'windows',
    ['endFrames'],
    'cover',
    [
      [2, 2],
      [2, 5, 8],
      ['windows', 0],
    ],
    {},
    'screws, drill, thick gloves',
  ),
  task(
    'smooth',
    ['nailers', 'endFrames'],
    'cover',
    [
      [1, 2],
      [1, 2, 3],
      ['area', 0.4],
    ],
    { dry: true, airMinC: PAINT_MIN_C },
    'file, tape, brush',
  ),
  task(
    'coverEnds',
    ['doors', 'windows', 'smooth'],
    'cover',
    [
      [2, 2],
      [2, 3, 5],
      ['area', 0.8],
    ],
    { windMaxMPerS: END_WIND },
    'stapler, lath, knife',
  ),
  task(
    'mainCover',
    ['coverEnds'],
    'cover',
    [
      [4, 6],
      [3, 6, 10],
      ['area', 0.5],
    ],
    { dry: true, airMinC: COVER_MIN_C, airMaxC: COVER_MAX_C, needs: ['helpersOnSite'] },
    'ropes, ladders, clamps',
  ),
  task(
    'battens',
    ['mainCover'],
    'cover',
    [
      [3, 4],
      [2, 4, 6],
      ['area', 0.4],
    ],
    { dry: true, airMinC: COVER_MIN_C, airMaxC: COVER_MAX_C, needs: ['helpersOnSite'] },
    'drills, saw, knife',
  ),
  task(
    'seal',
    ['battens'],
    'finish',
    [
      [1, 2],
      [1, 3, 6],
      ['area', 0.4],
    ],
    {},
    'shovel, snips',
  ),
  task(
    'water',
    ['battens'],
    'finish',
    [
      [1, 2],
      [1, 2, 4],
      ['barrels', 0.5],
    ],
    {},
    'level, drill',
  ),
  task(
    'floor',
    ['battens', 'drainage'],
    'finish',
    [
      [2, 4],
      [2, 6, 12],
      ['area', 0.2],
    ],
    {},
    'barrow, rake',
  ),
  task(
    'finish',
    ['seal', 'water'],
    'finish',
    [
      [1, 2],
      [1, 2, 3],
      ['area', 1],
    ],
    { needs: ['sunnyHour'] },
    'thermometer, camera, list',
  ),
  task(
    'hosting',
    ['finish', 'floor'],
    'finish',
    [
      [1, 2],
      [2, 4, 8],
      ['area', 0.7],
    ],
    {},
    'sign-in sheet, first-aid box, water',
  ),
];

/** The reference case that the hours stand for. */
export const REFERENCE_AREA_M2 = cited(18.58, 'm2', 'JUDGEMENT-MATERIALS', 'task table: 10 x 20 ft');
export const REFERENCE_DOORS = cited(1, '{count}', 'JUDGEMENT-MATERIALS', 'task table: one door');
export const REFERENCE_WINDOWS = cited(4, '{count}', 'JUDGEMENT-MATERIALS', 'task table: four windows');
export const REFERENCE_BARRELS = cited(2, '{count}', 'JUDGEMENT-MATERIALS', 'task table: gutter and a pair of barrels');

/** Hours of a crew against a mixed one. */
export const EXPERIENCE: Record<'novice' | 'mixed' | 'skilled', number> = {
  novice: cited(1.3, '1', 'JUDGEMENT-MATERIALS', 'novices against a mixed crew'),
  mixed: cited(1, '1', 'JUDGEMENT-MATERIALS', 'the task table itself'),
  skilled: cited(0.7, '1', 'JUDGEMENT-MATERIALS', 'a skilled pair took about a third of the novices on the same kit; half of that is kept'),
};

export const WORKING_DAY_H = cited(6, 'h', 'JUDGEMENT-MATERIALS', 'a volunteer day without arriving, eating and cleaning up');
/** More people than this for each square metre stand in each other's way. */
export const CROWD_PER_M2 = cited(0.54, '1/m2', 'JUDGEMENT-MATERIALS', 'at most ten on a 10 x 20 ft site');

export interface StageFacts {
  stageId: string;
  day: Stage['day'];
  tasks: readonly TaskId[];
  /** Take-off lines that this stage uses, by the beginning of their id. */
  lines: readonly string[];
}

/** One printed card each. */
export const STAGES: readonly StageFacts[] = [
  { stageId: 'paper', day: 'paper', tasks: ['permission'], lines: [] },
  { stageId: 'pile', day: 'prep', tasks: ['intake', 'denail'], lines: [] },
  { stageId: 'frameParts', day: 'prep', tasks: ['haulFrame', 'cleanFrame'], lines: ['frame'] },
  { stageId: 'setOut', day: 'ground', tasks: ['stakeOut', 'drainage'], lines: [] },
  { stageId: 'base', day: 'ground', tasks: ['sill', 'anchors'], lines: ['timber-sill', 'anchors'] },
  { stageId: 'frameUp', day: 'frame', tasks: ['erect', 'brace'], lines: ['brace-cable'] },
  { stageId: 'nailers', day: 'frame', tasks: ['nailers'], lines: ['timber-board', 'straps', 'screw-tube'] },
  { stageId: 'endFrames', day: 'frame', tasks: ['endFrames'], lines: ['screw-framing'] },
  { stageId: 'doorsWindows', day: 'cover', tasks: ['doors', 'windows'], lines: ['opening-', 'door-', 'window-'] },
  { stageId: 'ends', day: 'cover', tasks: ['smooth', 'coverEnds'], lines: ['contact-tape', 'paint', 'film-ends'] },
  { stageId: 'cover', day: 'cover', tasks: ['mainCover', 'battens'], lines: ['film-main', 'timber-batten', 'screw-batten', 'ropes'] },
  { stageId: 'sealWater', day: 'finish', tasks: ['seal', 'water'], lines: ['mesh', 'barrels'] },
  { stageId: 'floor', day: 'finish', tasks: ['floor'], lines: ['gravel', 'fabric'] },
  { stageId: 'handOver', day: 'finish', tasks: ['finish', 'hosting'], lines: ['thermometer', 'film-inner', 'shade'] },
];
