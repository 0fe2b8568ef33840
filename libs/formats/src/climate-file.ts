import type { ClimateMonthInputs } from '@lathwork/model';
import type { FileFault, FileRemark } from './faults.js';

/** The published formats that are read, by the id that is stored beside the figures. */
export const FORMAT_IDS = [
  'ncei-normals-monthly',
  'ncei-normals-annual',
  'wmo-clino',
  'metoffice-historic',
  'epw',
  'tmy3',
  'nasa-power-csv',
  'nasa-power-json',
  'own-months',
  'own-hours',
] as const;
export type FormatId = (typeof FORMAT_IDS)[number];

/** Where a file's place is said to be. `null` is "the file does not say". */
export interface FilePlace {
  stationId: string | null;
  stationName: string;
  country: string | null;
  latitudeDeg: number;
  longitudeDeg: number;
  elevationM: number | null;
  /** Lead of the file's clock on universal time; hourly files only. */
  zoneH: number | null;
}

/** Who says so, about which years, and on what terms. The hash of the bytes is taken by whoever holds the bytes. */
export interface FileSource {
  formatId: FormatId;
  /** Layout or edition within the format, such as "1991-2020". */
  variant: string;
  publisher: string;
  /** The years behind the figures as the file states them, or null. */
  period: string | null;
  kind: 'normals' | 'means' | 'typicalYear' | 'ownRecord';
  licenceNote: string;
  /** What must be printed beside the figures. */
  credit: string;
  /** Lines of the header that say where the data come from, as they stand. */
  statements: string[];
}

/** One calendar month. Every member may be null, which is "no record": nothing is filled in from neighbours. */
export interface MonthRecord extends ClimateMonthInputs {
  tMeanC: number | null;
  /** Spread of the month's mean lowest temperature from year to year (not from day to day). */
  tMinYearToYearK: number | null;
  snowfallMm: number | null;
  /** Days with a lowest temperature at or below freezing. */
  frostDaysD: number | null;
  windMPerS: number | null;
  relativeHumidityFrac: number | null;
  /** Sun on the flat of the month's mean day. */
  radiationMJPerM2: number | null;
  /** Spread of the month's nights about their mean; never the spread from year to year. */
  nightDeviationK: number | null;
  /** The lowest and highest temperature ever met in this month within the period. */
  recordMinC: number | null;
  recordMaxC: number | null;
  /** Years behind the temperatures. */
  yearsCount: number | null;
}

export interface MonthlyFile {
  kind: 'monthly';
  place: FilePlace;
  source: FileSource;
  /** January to December. */
  months: MonthRecord[];
  /** Mean of the coldest night of each year, where the file has it. */
  annualExtremeMinC: number | null;
  annualExtremeMinYearsCount: number | null;
  /** The months by year where the file has them (a historic station), else empty. */
  series: YearMonth[];
}

/** One month of one year, from a file that runs through many years. */
export interface YearMonth {
  year: number;
  month: number;
  tMaxC: number | null;
  tMinC: number | null;
  frostDaysD: number | null;
  precipitationMm: number | null;
  sunshineH: number | null;
  estimated: boolean;
  provisional: boolean;
}

/**
 * A date with a chance beside it. `day365` runs on over the turn of the year: for a first autumn freeze 372 is 7 January of
 * the next year, for a last spring freeze -11 is 20 December of the year before.
 */
export interface FrostDate {
  chanceFrac: number;
  month: number;
  day: number;
  day365: number;
}

export interface FrostThreshold {
  thresholdC: number;
  /** Chance of a freeze on or after the date: dates fall as the chance rises. */
  lastSpring: FrostDate[];
  /** Chance of a freeze on or before the date: dates rise with the chance. */
  firstAutumn: FrostDate[];
  /** Chance of a season free of such a freeze at least so long. */
  seasons: { chanceFrac: number; lengthD: number }[];
  /** True where the publisher says that frost is possible all year, so that no date can be given. */
  frostAllYear: boolean;
}

export interface AnnualFile {
  kind: 'annual';
  place: FilePlace;
  source: FileSource;
  tMeanC: number | null;
  tMaxC: number | null;
  tMinC: number | null;
  precipitationMm: number | null;
  snowfallMm: number | null;
  frostDaysD: number | null;
  frost: FrostThreshold[];
}

/** Columns of an hourly year; an absent row or value is null. Row k is the hour that ends at `hourEnding[k]` (1 to 24). */
export interface HourlyColumns {
  /** The year a row was taken from; typical years mix them. */
  year: (number | null)[];
  month: number[];
  day: number[];
  hourEnding: number[];
  airC: (number | null)[];
  dewPointC: (number | null)[];
  relativeHumidityFrac: (number | null)[];
  pressurePa: (number | null)[];
  skyInfraredWPerM2: (number | null)[];
  globalWPerM2: (number | null)[];
  beamNormalWPerM2: (number | null)[];
  diffuseWPerM2: (number | null)[];
  windFromDeg: (number | null)[];
  windMPerS: (number | null)[];
  totalCloudFrac: (number | null)[];
  opaqueCloudFrac: (number | null)[];
  snowDepthM: (number | null)[];
  albedoFrac: (number | null)[];
  rainMm: (number | null)[];
}
export const HOURLY_VALUES = [
  'airC',
  'dewPointC',
  'relativeHumidityFrac',
  'pressurePa',
  'skyInfraredWPerM2',
  'globalWPerM2',
  'beamNormalWPerM2',
  'diffuseWPerM2',
  'windFromDeg',
  'windMPerS',
  'totalCloudFrac',
  'opaqueCloudFrac',
  'snowDepthM',
  'albedoFrac',
  'rainMm',
] as const satisfies readonly (keyof HourlyColumns)[];
export type HourlyValue = (typeof HOURLY_VALUES)[number];

/**
 * Where the sun stood for a row, found by closing global = diffuse + direct x cos(zenith). The sun's hour is
 * `hourEnding + offsetH`; -0.5 is the middle of the hour. Null members: it could not be found, for the reason given.
 */
export interface SunOffset {
  offsetH: number | null;
  /** Mean absolute misfit at the best offset, and at the middle of the hour for comparison. */
  residualWPerM2: number | null;
  residualMidHourWPerM2: number | null;
  hoursCount: number;
  reason: 'found' | 'no-sun-function' | 'no-radiation' | 'too-few-hours' | 'does-not-close' | 'at-the-edge';
}

export interface HourlyGap {
  /** Line after which hours are absent, how many, and the first absent hour. */
  afterLine: number;
  hoursCount: number;
  month: number;
  day: number;
  hourEnding: number;
}

export interface HourlyFile {
  kind: 'hourly';
  place: FilePlace;
  source: FileSource;
  hours: HourlyColumns;
  /** 8,760, or 8,784 where the file has a 29 February. */
  slotsCount: number;
  rowsReadCount: number;
  missingHoursCount: number;
  /** The first gaps, at most fifty. */
  gaps: HourlyGap[];
  /** For each value: hours whose row is there and whose value is missing. */
  missingValues: Record<HourlyValue, number>;
  sunOffset: SunOffset;
  /** Computed temperatures in the header of an hourly file: means from the surface to the depth, not at the depth. */
  groundTemperatures: { depthM: number; monthsC: number[] }[];
}

export type ClimateFile = MonthlyFile | AnnualFile | HourlyFile;

/** What was sent, counted. */
export interface FileCount {
  bytesCount: number;
  linesCount: number;
  encoding: 'ascii' | 'utf-8' | 'latin-1';
}

/** Records or faults, never half of each. */
export type ReadResult =
  | { outcome: 'records'; formatId: FormatId; file: ClimateFile; remarks: FileRemark[]; counted: FileCount }
  | {
      outcome: 'faults';
      formatId: FormatId | null;
      /** The first faults; `faultsCount` counts them all. */
      faults: FileFault[];
      faultsCount: number;
      /** The last line that was read without a fault; 0 where none was. */
      lastGoodLine: number;
      remarks: FileRemark[];
      counted: FileCount;
    };

/** Cosine of the sun's zenith angle at a clock hour of a day without leap days (1 to 365). Passed in: this library has no astronomy. */
export type SunHeight = (at: { latitudeDeg: number; longitudeDeg: number; zoneH: number; dayOfYear: number; clockH: number }) => number;

/** Answers to questions that an earlier reading asked. */
export interface Answers {
  /** What the temperatures truly are, whatever the file says. */
  temperatureUnit?: 'celsius' | 'fahrenheit';
  coordinates?: 'asWritten' | 'interchanged';
  /** NASA POWER: what T2M_MAX and T2M_MIN of this file are. */
  powerMaxMin?: 'dailyMean' | 'monthExtreme';
}

export interface ReadOptions {
  bytesLimit?: number;
  lineBytesLimit?: number;
  /** Faults told in full; the rest are counted. */
  faultsLimit?: number;
  /** Absent hours up to which an hourly year is still taken. */
  missingHoursLimit?: number;
  /** Take this format instead of recognising it. */
  formatId?: FormatId;
  answers?: Answers;
  /** Without it the sun's offset of hourly files is not found. */
  sunHeight?: SunHeight;
  /** Years of a historic station that make the means. */
  meansFromYear?: number;
  meansToYear?: number;
  /** Fewer years than this give no mean for a month. */
  meansLeastYears?: number;
  /** Told about every so many lines with the lines and bytes so far. */
  onProgress?: (at: { bytesCount: number; linesCount: number }) => void;
  progressEveryLines?: number;
}
