import type { Drawing } from '@lathwork/drawing';
import type { Frost, NightRun, Stage, SunHours } from '@lathwork/model';
import type { Limit } from './view/nights.view.js';

export interface Box {
  wMm: number;
  hMm: number;
}

/** Rows of bars under the band of the temperatures. */
export interface ClimatePanels {
  sun: boolean;
  rain: boolean;
}

/** The drawings of one plan, each made to the room a page has for it. */
export interface Drawings {
  pictorial: (box: Box) => Drawing | null;
  elevation: (side: 'front' | 'back' | 'left' | 'right', box: Box, how: { heading: boolean; heights?: boolean }) => Drawing;
  planView: (box: Box) => Drawing;
  /** The plan without heading and arrows, for a sheet that sets them beside it. */
  barePlan: (box: Box) => Drawing;
  section: (box: Box) => Drawing;
  anchorMap: (box: Box, how: { blanks: boolean; heading: boolean }) => Drawing;
  fastenZones: (box: Box) => Drawing | null;
  filmLayout: (box: Box) => Drawing | null;
  framePicture: (stage: Stage, box: Box) => Drawing | null;
  cutDiagrams: (box: Box) => readonly Drawing[];
  climateChart: (box: Box, panels: ClimatePanels) => Drawing | null;
  frostBar: (widthMm: number, bar: { frost: Frost; startMonth: number }) => Drawing;
  sunHours: (box: Box, hours: readonly SunHours[], leftMm: number) => Drawing;
  nightsChart: (box: Box, limits: readonly Limit[]) => Drawing | null;
  nightCurve: (box: Box, run: NightRun, limits: readonly Limit[]) => Drawing | null;
  ratioBars: (box: Box, rows: readonly { label: string; ratio: number | null }[]) => Drawing | null;
  daysChart: (box: Box, limit: Limit | null) => Drawing | null;
}
