import type { Drawing } from '@lathwork/drawing';
import type { NightRun, Stage } from '@lathwork/model';
import type { Limit } from './view/nights.view.js';

export interface Box {
  wMm: number;
  hMm: number;
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
  climateChart: (box: Box, withRain: boolean) => Drawing | null;
  nightsChart: (box: Box, limits: readonly Limit[]) => Drawing | null;
  nightCurve: (box: Box, run: NightRun, limits: readonly Limit[]) => Drawing | null;
  ratioBars: (box: Box, rows: readonly { label: string; ratio: number | null }[]) => Drawing | null;
  daysChart: (box: Box, limit: Limit | null) => Drawing | null;
}
