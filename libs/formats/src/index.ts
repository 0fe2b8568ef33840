export type {
  AnnualFile,
  Answers,
  ClimateFile,
  FileCount,
  FilePlace,
  FileSource,
  FormatId,
  FrostDate,
  FrostThreshold,
  HourlyColumns,
  HourlyFile,
  HourlyGap,
  HourlyValue,
  MonthlyFile,
  MonthRecord,
  ReadOptions,
  ReadResult,
  SunHeight,
  SunOffset,
  YearMonth,
} from './climate-file.js';
export { FORMAT_IDS, HOURLY_VALUES } from './climate-file.js';
export { FAULT_CODES, REMARK_CODES, type FaultCode, type FileFault, type FileQuestion, type FileRemark, type RemarkCode } from './faults.js';
export { frostDatesOf, hourlyLowOf, toClimateInputs, type InputsContext, type InputsResult } from './inputs.js';
export { monthsOfHourlyFile } from './hourly-months.js';
export { DEFAULT_BYTES_LIMIT } from './lines.js';
export { ClimateReader, readClimateFile } from './reader.js';
export { HEAD_BYTES_ENOUGH, recognise, type Recognition } from './recognise.js';
export {
  climateInputsOf,
  parseStations,
  STATION_CREDIT,
  STATION_KIND,
  STATION_PERIOD,
  type LineFault,
  type StationRecord,
  type StationTable,
} from './stations.js';
