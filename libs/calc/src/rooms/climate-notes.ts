import type { ClimateInputs, ClimateResult, Note } from '@lathwork/model';
import { HARGREAVES } from '../physics/sky.js';
import { cited } from '../sources/cite.js';
import { stationSpreadK, type SiteMonth } from './climate-months.js';

/** Doubt of the monthly sun by its basis, as a share of it. */
const SUNSHINE_DOUBT_FRAC = cited(0.1, '1', 'CLIMATE-JUDGEMENT', 'general coefficients of FAO-56 eq. 35 used without local fit', { min: 0.05, max: 0.2 });
const RANGE_DOUBT_FRAC = cited(0.15, '1', 'CLIMATE-JUDGEMENT', 'inland and coastal coefficient lie 9 per cent either side; the rest is the method', {
  min: (HARGREAVES.coast - HARGREAVES.inland) / 2 / HARGREAVES.between,
  max: 0.25,
});

interface Said {
  climate: ClimateInputs;
  result: ClimateResult;
  months: readonly SiteMonth[];
  suspects: readonly number[];
  nightsShut: boolean;
}

const note = (code: string, severity: Note['severity'], params: Note['params'], subject?: string): Note => ({
  code: `climate.${code}`,
  severity,
  room: 'climate',
  params,
  ...(subject === undefined ? {} : { subject }),
});

const names = (months: readonly number[]): string[] => months.map(String);
const numbers = (months: readonly SiteMonth[], when: (m: SiteMonth) => boolean): number[] => months.filter(when).map((m) => m.month.month);

const stationNotes = ({ climate, result }: Said): Note[] => {
  const params = {
    station: climate.stationName,
    distanceM: result.stationDistanceM,
    heightDifferenceM: result.heightDifferenceM,
    heightCorrectionK: result.heightCorrectionK,
  };
  const out = [note('station', 'note', { ...params, period: climate.period, kind: climate.kind })];
  if (result.stationFit === 'far') out.push(note('far-station', 'ask', params));
  if (result.stationFit === 'tooFar') out.push(note('station-too-far', 'ask', params));
  return out;
};

const recordNotes = ({ result, months }: Said): Note[] => {
  const missing = numbers(months, (m) => !m.month.hasRecord);
  const recordCount = result.monthsWithRecordCount;
  const wrong = numbers(months, (m) => m.contradicts);
  const over = numbers(months, (m) => m.sunshineOver);
  return [
    ...missing.map((month) => note('month-missing', 'care', { month, recordCount }, `month ${month}`)),
    ...(wrong.length > 0 ? [note('month-contradicts', 'ask', { months: names(wrong) })] : []),
    ...(over.length > 0 ? [note('sunshine-over-daylight', 'care', { months: names(over) })] : []),
  ];
};

const nightNotes = ({ climate, result, months, suspects }: Said): Note[] => {
  const night = result.designNight;
  const recordCount = result.monthsWithRecordCount;
  if (!night) {
    const reason =
      recordCount === 0 ? 'noRecord' : suspects.length > 0 ? 'coldestMonthMissing' : result.stationFit === 'tooFar' ? 'stationTooFar' : 'outsideValidity';
    return [note('night-blocked', 'stop', { reason, months: names(suspects), recordCount })];
  }
  const estimated = numbers(months, (m) => m.month.coldNightBasis === 'estimated');
  const spread = stationSpreadK(climate.months);
  return [
    note('night-basis', 'note', {
      basis: night.basis,
      lowC: night.lowC,
      doubtK: night.doubtK,
      recordCount,
      yearsCount: climate.annualExtremeMinYearsCount ?? 0,
    }),
    ...(estimated.length > 0 ? [note('cold-night-estimated', 'note', { months: names(estimated), spreadK: spread.spreadK, ownSpread: spread.own })] : []),
  ];
};

const sunNotes = ({ result, nightsShut }: Said): Note[] => {
  const by = (basis: string) => result.months.filter((m) => m.sunBasis === basis).length;
  const dark = result.months.filter((m) => m.daylightH === 0).map((m) => m.month);
  return [
    note('sun-basis', 'note', {
      sunshineMonthsCount: by('sunshineHours'),
      rangeMonthsCount: by('temperatureRange'),
      noneMonthsCount: by('none'),
      sunshineDoubtFrac: SUNSHINE_DOUBT_FRAC,
      rangeDoubtFrac: RANGE_DOUBT_FRAC,
    }),
    ...(result.monthsWithRecordCount > 0 ? [note('sunny-day-estimated', 'note', { monthsCount: result.monthsWithRecordCount })] : []),
    ...(dark.length > 0 ? [note('polar-night', 'note', { months: names(dark) })] : []),
    ...(!nightsShut && result.monthsWithRecordCount > 0 ? [note('no-shut-nights', 'note', { month: result.clearDay?.month ?? 0 })] : []),
  ];
};

/** All the climate room has to say; docs/notes/climate.md lists the codes. */
export const climateNotes = (said: Said): Note[] => [...stationNotes(said), ...recordNotes(said), ...nightNotes(said), ...sunNotes(said)];
