import {
  anchorMap,
  climateChart,
  cutDiagrams,
  dayPeaks,
  elevation,
  fastenZones,
  filmLayout,
  framePicture,
  frostBar,
  monthlyNights,
  nightCurve,
  pictorial,
  planView,
  ratioBars,
  section,
  sunHoursChart,
  type Drawing,
  type FramePart,
  type Mark,
  type MarkTarget,
  type Shelter,
  type UnitSystem,
} from '@lathwork/drawing';
import type { MaterialKey, Stage, TaskId } from '@lathwork/model';
import type { Box, Drawings } from './drawings.js';
import type { Context } from './view/context.js';

/** What a line of the take-off is, on a drawing. Things without a place on it have no mark there. */
const TARGETS: Partial<Record<MaterialKey, MarkTarget>> = {
  'frame.tubeSet': 'tube',
  'film.greenhouse': 'film',
  'film.utility': 'film',
  'batten.19x38': 'batten',
  'sill.89x140': 'sill',
  'board.38x140': 'sill',
  'brace.cable': 'brace',
  'anchor.auger': 'anchor',
  'anchor.pipe': 'anchor',
  'anchor.concreteBag': 'anchor',
  'anchor.sandbag': 'anchor',
  'barrel.water': 'barrel',
};

/** The marks of the take-off, once for each kind of thing. */
export function marksOf(ctx: Context): Mark[] {
  const marks: Mark[] = [];
  for (const line of ctx.result.takeOff.lines) {
    const target = TARGETS[line.material];
    if (target === undefined || line.mark === null || marks.some((m) => m.target === target)) continue;
    marks.push({ label: line.mark, source: line.reclaimed.length > 0 ? 'pile' : 'buy', target });
  }
  return marks;
}

const STEP_MM = 4;
const MOST_STEPS = 16;

/** A chart whose words do not fit gets more height, never smaller words; the page then makes room by a shorter version. */
function tallEnough(box: Box, draw: (box: Box) => Drawing): Drawing {
  for (let step = 0; ; step += 1) {
    const drawing = draw({ wMm: box.wMm, hMm: box.hMm + step * STEP_MM });
    if (drawing.unplaced.length === 0 || step >= MOST_STEPS) return drawing;
  }
}

/** The same drawing is asked for more than once while a page is fitted; it is made once. */
function remembered<A extends readonly unknown[], R>(draw: (...args: A) => R): (...args: A) => R {
  const made = new Map<string, R>();
  return (...args) => {
    const key = JSON.stringify(args);
    const known = made.get(key);
    if (known !== undefined) return known;
    const drawing = draw(...args);
    made.set(key, drawing);
    return drawing;
  };
}

const only = (marks: readonly Mark[], targets: readonly MarkTarget[]): Mark[] => marks.filter((m) => targets.includes(m.target));

/** What each job puts up: it is drawn thick on its own card and thin on the cards that follow. */
const BUILT_BY: Partial<Record<TaskId, readonly FramePart[]>> = {
  stakeOut: ['ground'],
  sill: ['sill'],
  anchors: ['anchor'],
  erect: ['leg', 'rafter', 'bow', 'ridge', 'eave'],
  brace: ['brace', 'knee'],
  nailers: ['nailer'],
  endFrames: ['stud', 'header', 'jamb', 'openingSill'],
  doors: ['opening'],
  windows: ['opening'],
  coverEnds: ['film'],
  mainCover: ['film'],
  battens: ['batten'],
};
const TEMPORARY: Partial<Record<TaskId, readonly FramePart[]>> = { erect: ['rope'] };

const built = (tasks: readonly TaskId[]): FramePart[] => tasks.flatMap((task) => [...(BUILT_BY[task] ?? [])]);

/** Today's work, what stands already, and what goes away again. */
function partsOn(ctx: Context, stage: Stage): { today: ReadonlySet<FramePart>; standing: ReadonlySet<FramePart>; temporary: ReadonlySet<FramePart> } {
  const before = ctx.result.schedule.stages.filter((s) => s.stageNumber < stage.stageNumber).flatMap((s) => s.tasks);
  const today = new Set(built(stage.tasks));
  const standing = new Set(built(before).filter((part) => !today.has(part)));
  return { today, standing, temporary: new Set(stage.tasks.flatMap((task) => [...(TEMPORARY[task] ?? [])])) };
}

const PART_OF_TARGET: readonly [MarkTarget, readonly FramePart[]][] = [
  ['tube', ['leg', 'bow']],
  ['brace', ['brace']],
  ['anchor', ['anchor']],
  ['film', ['film']],
  ['batten', ['batten']],
  ['sill', ['sill']],
];
/** Only what is worked on today is marked. */
const marksToday = (marks: readonly Mark[], today: ReadonlySet<FramePart>): Mark[] =>
  marks.filter((m) => PART_OF_TARGET.some(([target, parts]) => target === m.target && parts.some((part) => today.has(part))));

export function drawingsOf(ctx: Context): Drawings {
  const d = drawingsFor(ctx);
  return {
    pictorial: remembered(d.pictorial),
    elevation: remembered(d.elevation),
    planView: remembered(d.planView),
    barePlan: remembered(d.barePlan),
    section: remembered(d.section),
    fastenZones: remembered(d.fastenZones),
    anchorMap: remembered(d.anchorMap),
    filmLayout: remembered(d.filmLayout),
    framePicture: remembered(d.framePicture),
    cutDiagrams: remembered(d.cutDiagrams),
    climateChart: remembered(d.climateChart),
    frostBar: remembered(d.frostBar),
    sunHours: remembered(d.sunHours),
    nightsChart: remembered(d.nightsChart),
    daysChart: remembered(d.daysChart),
    nightCurve: remembered(d.nightCurve),
    ratioBars: remembered(d.ratioBars),
  };
}

function drawingsFor(ctx: Context): Drawings {
  const shelter: Shelter = { geometry: ctx.result.geometry, structure: ctx.inputs.structure };
  const units: UnitSystem = ctx.request.options.units;
  const marks = marksOf(ctx);
  const view = { shelter, units };
  const picture = (box: Box): Drawing => tallEnough(box, (boxMm) => pictorial({ ...view, boxMm, heading: false }));
  const startMonth = ctx.result.climate.chartStartMonth;
  return {
    elevation: (side, boxMm, how) =>
      elevation({ ...view, boxMm, view: side, ...how, marks: only(marks, side === 'front' ? ['tube', 'film', 'batten', 'sill'] : ['film', 'brace', 'sill']) }),
    planView: (boxMm) => planView({ ...view, boxMm, stormWindFromDeg: ctx.inputs.site.stormWindFromDeg, marks: only(marks, ['barrel']) }),
    barePlan: (boxMm) => planView({ ...view, boxMm, bare: true, stormWindFromDeg: ctx.inputs.site.stormWindFromDeg, marks: only(marks, ['barrel']) }),
    section: (boxMm) => section({ ...view, boxMm }),
    anchorMap: (boxMm, how) => anchorMap({ ...view, boxMm, ...how, anchorage: ctx.result.anchorage }),
    fastenZones: (boxMm) => (ctx.result.fastening.zones.length === 0 ? null : fastenZones({ ...view, boxMm, fastening: ctx.result.fastening })),
    pictorial: (box) => picture(box),
    filmLayout: (boxMm) => (ctx.result.geometry.filmSheets.length === 0 ? null : filmLayout({ ...view, boxMm })),
    framePicture: (stage, boxMm) => {
      const parts = partsOn(ctx, stage);
      // In a small picture a mark may find no place; the parts list beside it names the same things.
      // A day that builds nothing (papers, sorting, handing over) shows the finished shelter: it is what the work is for.
      return parts.today.size === 0 ? picture(boxMm) : framePicture({ ...view, boxMm, ...parts, marks: marksToday(marks, parts.today) });
    },
    cutDiagrams: (boxMm) => cutDiagrams({ boards: ctx.result.cutting.boards, units, widthMm: boxMm.wMm, maxHeightMm: boxMm.hMm }),
    climateChart: (box, panels) =>
      tallEnough(box, (boxMm) =>
        climateChart({
          units,
          boxMm,
          months: ctx.result.climate.months,
          sun: panels.sun,
          precipitationMm: ctx.inputs.climate.months.map((m) => (panels.rain ? m.precipitationMm : null)),
          startMonth,
        }),
      ),
    frostBar: (widthMm, { frost, startMonth: from }) => frostBar({ widthMm, startMonth: from, lastDayD: frost.lastDayD, firstDayD: frost.firstDayD }),
    sunHours: (box, hours, leftMm) => tallEnough(box, (boxMm) => sunHoursChart({ boxMm, hours, leftMm, startMonth })),
    nightsChart: (box, limits) =>
      tallEnough(box, (boxMm) =>
        monthlyNights({ units, boxMm, months: ctx.result.thermal.months, startMonth, limits: limits.map((l) => ({ label: l.label, valueC: l.limitC })) }),
      ),
    nightCurve: (box, run, limits) =>
      tallEnough(box, (boxMm) => nightCurve({ units, boxMm, run, limits: limits.map((l) => ({ label: l.label, valueC: l.limitC })) })),
    ratioBars: (boxMm, rows) => (rows.every((r) => r.ratio === null) ? null : ratioBars({ rows, boxMm })),
    daysChart: (box, limit) =>
      tallEnough(box, (boxMm) =>
        dayPeaks({ units, boxMm, months: ctx.result.thermal.months, startMonth, limits: limit === null ? [] : [{ label: limit.label, valueC: limit.limitC }] }),
      ),
  };
}
