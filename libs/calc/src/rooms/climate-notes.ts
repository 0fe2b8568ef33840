import type { ClimateInputs, ClimateResult, Note } from '@lathwork/model';
import { SUN_DOUBT_FRAC } from '../physics/sky.js';
import { stationSpreadK, type SiteMonth } from './climate-months.js';

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
    doubtK: result.stationDoubtK ?? 0,
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
  const overClear = numbers(months, (m) => m.radiationOver);
  const byRule = numbers(months, (m) => m.month.dewPointBasis === 'nightRule');
  return [
    ...missing.map((month) => note('month-missing', 'care', { month, recordCount }, `month ${month}`)),
    ...(wrong.length > 0 ? [note('month-contradicts', 'ask', { months: names(wrong) })] : []),
    ...(over.length > 0 ? [note('sunshine-over-daylight', 'care', { months: names(over) })] : []),
    ...(overClear.length > 0 ? [note('radiation-over-clear', 'ask', { months: names(overClear) })] : []),
    ...(byRule.length > 0 ? [note('dew-from-nights', 'note', { months: names(byRule), doubtK: worstDew(months) })] : []),
  ];
};

const worstDew = (months: readonly SiteMonth[]): number =>
  Math.max(...months.map((m) => (m.month.dewPointBasis === 'nightRule' ? (m.month.dewPointDoubtK ?? 0) : 0)));

const frostNotes = ({ result }: Said): Note[] => {
  const frost = result.frost ?? null;
  if (frost === null) return [note('frost-unknown', 'ask', { recordCount: result.monthsWithRecordCount })];
  const yearsFrac = frost.yearsWithFrostFrac;
  return [
    ...(frost.pattern === 'never' ? [note('frost-hardly-ever', 'note', { yearsFrac })] : []),
    ...(frost.pattern === 'allYear' ? [note('frost-in-every-month', 'care', {})] : []),
    ...(frost.pattern === 'someYears' ? [note('frost-some-years', 'note', { yearsFrac })] : []),
    ...(frost.basis === 'published'
      ? [note('frost-published', 'note', { doubtD: frost.doubtD })]
      : frost.pattern === 'everyYear' || frost.pattern === 'someYears'
        ? [note('frost-estimated', 'note', { doubtD: frost.doubtD })]
        : []),
  ];
};

const plotNotes = ({ result }: Said): Note[] => {
  if (result.sunHoursBasis !== 'obstacles') return [note('sun-hours-open', 'note', {})];
  const hours = result.sunHours ?? [];
  const dark = hours.filter((h) => h.openH > 0 && h.lostFrac >= 0.5).map((h) => h.month);
  return dark.length > 0 ? [note('plot-shaded', 'care', { months: names(dark) })] : [];
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
      radiationMonthsCount: by('radiation'),
      sunshineMonthsCount: by('sunshineHours'),
      rangeMonthsCount: by('temperatureRange'),
      noneMonthsCount: by('none'),
      radiationDoubtFrac: SUN_DOUBT_FRAC.radiation,
      sunshineDoubtFrac: SUN_DOUBT_FRAC.sunshineHours,
      rangeDoubtFrac: SUN_DOUBT_FRAC.temperatureRange,
    }),
    ...(result.monthsWithRecordCount > 0 ? [note('sunny-day-estimated', 'note', { monthsCount: result.monthsWithRecordCount })] : []),
    ...(dark.length > 0 ? [note('polar-night', 'note', { months: names(dark) })] : []),
    ...(!nightsShut && result.monthsWithRecordCount > 0 ? [note('no-shut-nights', 'note', { month: result.clearDay?.month ?? 0 })] : []),
  ];
};

/** All the climate room has to say; docs/notes/climate.md lists the codes. */
export const climateNotes = (said: Said): Note[] => [
  ...stationNotes(said),
  ...recordNotes(said),
  ...nightNotes(said),
  ...frostNotes(said),
  ...sunNotes(said),
  ...plotNotes(said),
];
