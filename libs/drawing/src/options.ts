import type { AnchorageResult, ClimateMonth, CutBoard, FasteningResult, Member, NightRun, SunHours, ThermalMonth } from './model-types.js';
import type { Box, LimitLine, LineType, Mark, Scale, Shelter, UnitSystem, ViewOptions } from './types.js';
import type { Words } from './words.js';

export interface ElevationOptions extends ViewOptions {
  view: 'front' | 'back' | 'left' | 'right';
  /** Openings get their marks by themselves; these are the other ones. */
  marks?: readonly Mark[];
  /** False leaves out eave and ridge where another sheet of the set gives them. Default true. */
  heights?: boolean;
}

export interface PlanOptions extends ViewOptions {
  /** Where the storm wind comes from. Unknown: no arrow, and the words say so. */
  stormWindFromDeg: number | 'unknown';
  marks?: readonly Mark[];
  /** Upright, without heading, north and storm wind, the width written inside: the sheet sets the rest beside it. */
  bare?: boolean;
}

export interface AnchorMapOptions extends ViewOptions {
  anchorage: AnchorageResult;
  /** False where a table beside the map has room for what was measured. Default true. */
  blanks?: boolean;
}

/** What a stage card can show as worked on. */
export type FramePart = Member['role'] | 'anchor' | 'film' | 'opening' | 'rope' | 'batten' | 'ground';

export interface FramePictureOptions {
  shelter: Shelter;
  units: UnitSystem;
  boxMm: Box;
  today: ReadonlySet<FramePart>;
  standing: ReadonlySet<FramePart>;
  temporary: ReadonlySet<FramePart>;
  marks?: readonly Mark[];
  words?: Words;
}

export type FilmLayoutOptions = ViewOptions;

export interface CutDiagramOptions {
  boards: readonly CutBoard[];
  units: UnitSystem;
  widthMm: number;
  /** Boards that do not fit under each other go to the next drawing. */
  maxHeightMm: number;
  words?: Words;
}

export interface FastenZonesOptions extends ViewOptions {
  fastening: FasteningResult;
}

interface ChartOptions {
  units: UnitSystem;
  boxMm: Box;
  words?: Words;
}

export interface NightChartOptions extends ChartOptions {
  months: readonly ThermalMonth[];
  /** 8 in the north, 2 in the south, so that winter lies whole. */
  startMonth: number;
  limits: readonly LimitLine[];
}

export type DayChartOptions = NightChartOptions;

export interface NightCurveOptions extends ChartOptions {
  run: NightRun;
  limits: readonly LimitLine[];
}

export interface ClimateChartOptions extends ChartOptions {
  months: readonly ClimateMonth[];
  /** False leaves the bars of the sun out. Default true. */
  sun?: boolean;
  /** January to December, as the station gives it; null is "no record". */
  precipitationMm: readonly (number | null)[];
  startMonth: number;
}

/** Days of the year, 1 January is 1. Null: so few years have a frost that the date does not exist. */
export interface FrostDays {
  p10: number | null;
  p50: number | null;
  p90: number | null;
}

export interface FrostBarOptions {
  lastDayD: FrostDays;
  firstDayD: FrostDays;
  /** First month of the bar: the cold season lies at its two ends, so that the season without frost is whole. */
  startMonth: number;
  widthMm: number;
  words?: Words;
}

export interface SunHoursOptions {
  hours: readonly SunHours[];
  startMonth: number;
  boxMm: Box;
  /** Room at the left for the scale: as wide as the first column of the table below, so that months line up. */
  leftMm: number;
  words?: Words;
}

export interface RangeRow {
  lowC: number;
  likelyC: number;
  highC: number;
}

export interface RangeStripOptions {
  /** Null leaves the row empty: its table cell says why. */
  rows: readonly (RangeRow | null)[];
  limits: readonly LimitLine[];
  widthMm: number;
  rowHeightMm: number;
  units: UnitSystem;
  words?: Words;
}

export interface BudgetBarsOptions {
  rows: readonly { label: string; reclaimedMinor: number; cashMinor: number; inKindMinor: number }[];
  /** Sets an amount of minor units as text, with or without its currency. */
  money: (minor: number) => string;
  boxMm: Box;
  words?: Words;
}

export interface RatioBarsOptions {
  /** Demand over capacity. Null: not assessed. */
  rows: readonly { label: string; ratio: number | null }[];
  boxMm: Box;
  words?: Words;
}

export interface StripOptions {
  widthMm: number;
  words?: Words;
}

export interface LineKeyOptions extends StripOptions {
  types: readonly LineType[];
}

export interface ScaleBarOptions extends StripOptions {
  scale: Scale;
}
