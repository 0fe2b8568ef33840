import type { GeometryResult } from '@lathwork/model';

export type {
  AnchorageResult,
  ClimateMonth,
  CutBoard,
  FasteningResult,
  GeometryResult,
  NightRun,
  PlacedOpening,
  Point,
  StructureInputs,
  SunHours,
  TakeOffLine,
  ThermalMonth,
} from '@lathwork/model';
export type Member = GeometryResult['members'][number];
export type Post = GeometryResult['posts'][number];
export type BattenRun = GeometryResult['battenRuns'][number];
export type FilmSheet = GeometryResult['filmSheets'][number];
