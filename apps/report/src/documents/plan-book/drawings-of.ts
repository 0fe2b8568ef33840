import { anchorMap, climateChart, dayPeaks, elevation, monthlyNights, planView, section, type Mark, type MarkTarget, type Shelter, type UnitSystem } from '@lathwork/drawing';
import type { MaterialKey } from '@lathwork/model';
import type { Drawings } from './drawings.js';
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

const only = (marks: readonly Mark[], targets: readonly MarkTarget[]): Mark[] => marks.filter((m) => targets.includes(m.target));

export function drawingsOf(ctx: Context): Drawings {
  const shelter: Shelter = { geometry: ctx.result.geometry, structure: ctx.inputs.structure };
  const units: UnitSystem = ctx.request.options.units;
  const marks = marksOf(ctx);
  const view = { shelter, units };
  const startMonth = ctx.result.climate.chartStartMonth;
  return {
    elevation: (side, boxMm, heading) => elevation({ ...view, boxMm, view: side, heading, marks: only(marks, side === 'front' ? ['tube', 'film', 'batten', 'sill'] : ['film', 'brace', 'sill']) }),
    planView: (boxMm) => planView({ ...view, boxMm, stormWindFromDeg: ctx.inputs.site.stormWindFromDeg, marks: only(marks, ['barrel']) }),
    section: (boxMm) => section({ ...view, boxMm }),
    anchorMap: (boxMm) => anchorMap({ ...view, boxMm, anchorage: ctx.result.anchorage }),
    pictorial: () => null,
    filmLayout: () => null,
    framePicture: () => null,
    cutDiagrams: () => [],
    climateChart: (boxMm) => climateChart({ units, boxMm, months: ctx.result.climate.months, precipitationMm: ctx.inputs.climate.months.map((m) => m.precipitationMm), startMonth }),
    nightsChart: (boxMm, limits) => monthlyNights({ units, boxMm, months: ctx.result.thermal.months, startMonth, limits: limits.map((l) => ({ label: l.label, valueC: l.limitC })) }),
    daysChart: (boxMm, limit) => dayPeaks({ units, boxMm, months: ctx.result.thermal.months, startMonth, limits: limit === null ? [] : [{ label: limit.label, valueC: limit.limitC }] }),
  };
}
