import type { ClimateInputs, ClimateResult, HourlyDay, Note, SiteInputs } from '@lathwork/model';
import { heightChangeK } from '../physics/air.js';
import type { SourceId } from '../sources/bibliography.js';
import { cited } from '../sources/cite.js';
import { climateNotes } from './climate-notes.js';
import { clearHourlyDay, siteMonths, type SiteMonth } from './climate-months.js';
import { degreeDaysOf, frostOf, hardinessOf } from './climate-frost.js';
import { coldestMonthOf, designNightOf, hemisphereOf, hottestMonthOf, missingLikelyColdest, stationDoubtK } from './climate-night.js';
import { sunHoursOf } from './climate-sun.js';
import { outsideValidity, type RoomModel, type RoomOutput } from './room.js';

const SOURCES = [
  'DWD-CLIMAT',
  'STATION-SPREAD',
  'SPENCER-1971',
  'IQBAL-1983',
  'DUFFIE-BECKMAN-5',
  'FAO-56',
  'ERBS-1982',
  'COLLARES-RABL-1979',
  'CESARACCIO-2001',
  'ASHRAE-F09-14',
  'ASHRAE-F17-1',
  'ICAO-7488',
  'STATION-PAIRS',
  'STATION-DEW',
  'STATION-SUN',
  'TYPICAL-YEARS',
  'THOM-SHAW-1958',
  'THOM-1954',
  'PHZM-2012',
  'CLIMATE-JUDGEMENT',
] as const satisfies readonly SourceId[];

export const CLIMATE_MODEL = {
  room: 'climate',
  title: 'Station means carried to the site',
  sources: SOURCES,
  ranges: {
    latitudeDeg: { unit: 'deg', min: -90, max: 90, sourceId: 'SPENCER-1971', safety: true },
    elevationM: { unit: 'm', min: -430, max: 6000, sourceId: 'FAO-56', safety: false },
  },
} as const satisfies RoomModel<'latitudeDeg' | 'elevationM'>;

/** A station nearer than the first pair speaks for the site; one beyond the second does not, and nothing is promised from it. */
export const STATION_FIT = {
  farM: cited(300_000, 'm', 'CLIMATE-JUDGEMENT', 'distance beyond which a station is called far'),
  farUpM: cited(500, 'm', 'CLIMATE-JUDGEMENT', 'height difference beyond which a station is called far'),
  tooFarM: cited(1_000_000, 'm', 'CLIMATE-JUDGEMENT', 'distance beyond which coordinates are likely swapped'),
  tooFarUpM: cited(1500, 'm', 'CLIMATE-JUDGEMENT', 'height difference of about 10 K by the lapse rate'),
} as const;

/** A shelter is kept shut while nights as cold as this are still to be expected. */
const SHUT_BELOW_C = cited(5, 'degC', 'CLIMATE-JUDGEMENT', 'cold-tender crops want a shut shelter below it', { min: 2, max: 8 });
/** Rough rise inside a shut film house on a clear day, K for each MJ/m2 of level sun: ranks months, is never printed. */
const SHUT_RISE_K_M2_PER_MJ = cited(1, 'K.m2/MJ', 'CLIMATE-JUDGEMENT', 'per MJ/m2; shut frames at 45 to 50 degC on clear spring days of 20 to 25 MJ/m2', {
  min: 0.5,
  max: 2,
});

const fitOf = (distanceM: number, upM: number): ClimateResult['stationFit'] => {
  const up = Math.abs(upM);
  if (distanceM > STATION_FIT.tooFarM || up > STATION_FIT.tooFarUpM) return 'tooFar';
  return distanceM > STATION_FIT.farM || up > STATION_FIT.farUpM ? 'far' : 'near';
};

const CHART_START = { north: 8, south: 2, equatorial: 1 } as const;

const clearDaysOf = (site: SiteInputs, months: readonly SiteMonth[]): HourlyDay[] =>
  months.flatMap(({ month, rangeK }) =>
    rangeK === null || month.sunnyDayMaxC === null ? [] : [clearHourlyDay(site, month, month.sunnyDayMaxC - rangeK, month.sunnyDayMaxC)],
  );

const coldNightsOf = (site: SiteInputs, months: readonly SiteMonth[]): HourlyDay[] =>
  months.flatMap(({ month, rangeK }) =>
    rangeK === null || month.coldNightC === null ? [] : [clearHourlyDay(site, month, month.coldNightC, month.coldNightC + rangeK)],
  );

/**
 * Gives: the month most likely to cook plants while nights still call for a shut shelter.
 * Model: of the months whose cold night is at or under 5 degC, the one with the greatest sum of its sunny-day maximum
 *   and one kelvin for each MJ/m2 of clear sun. With no such month all months with a record are ranked.
 */
const cookingMonth = (months: readonly SiteMonth[]): { month: number | null; nightsShut: boolean } => {
  const known = months.map((m) => m.month).filter((m) => m.hasRecord);
  const shut = known.filter((m) => m.coldNightC !== null && m.coldNightC <= SHUT_BELOW_C);
  const score = (m: (typeof known)[number]) => (m.sunnyDayMaxC ?? -Infinity) + SHUT_RISE_K_M2_PER_MJ * m.clearSkyMJPerM2;
  const best = (shut.length > 0 ? shut : known).reduce<(typeof known)[number] | null>((a, m) => (a === null || score(m) > score(a) ? m : a), null);
  return { month: best?.month ?? null, nightsShut: shut.length > 0 };
};

/**
 * Gives: the site's year: months, a design cold night, clear days and cold nights by the hour.
 * Model and source: station means (DWD-CLIMAT) moved by 6.5 K/km (ICAO-7488); sun by FAO-56 eq. 35 from sunshine hours
 *   or eq. 50 from the daily range, clear sun by eq. 37; hours by COLLARES-RABL-1979, ERBS-1982 and CESARACCIO-2001;
 *   design night as in climate-night.ts.
 * Assumptions: the nearest station's weather; free horizon; the mean day of IQBAL-1983 stands for its month.
 * Validity: latitude -90 to 90, heights from -430 m. A missing month stays missing. No night is promised when a missing
 *   month is likely the coldest, or the station is too far.
 * Fields: degC at the site's height, MJ/m2 a day on the level, W/m2 at mid-hours of solar time.
 * References: the ids above.
 */
export const computeClimate = ({ site, climate }: { site: SiteInputs; climate: ClimateInputs }): RoomOutput<ClimateResult> => {
  const upM = site.elevationM - climate.stationElevationM;
  const months = siteMonths(site, climate);
  const outside = outsideValidity(CLIMATE_MODEL, { latitudeDeg: site.latitudeDeg, elevationM: site.elevationM });
  const stationFit = fitOf(climate.distanceM, upM);
  const hemisphere = hemisphereOf(site.latitudeDeg);
  const suspects = missingLikelyColdest(months, site.latitudeDeg);
  const found = suspects.length > 0 || stationFit === 'tooFar' || outside.some((n) => n.severity === 'stop') ? null : designNightOf(site, climate, months);
  const cooking = cookingMonth(months);
  const clearDays = clearDaysOf(site, months);
  const result: ClimateResult = {
    hemisphere,
    chartStartMonth: CHART_START[hemisphere],
    months: months.map((m) => m.month),
    monthsWithRecordCount: months.filter((m) => m.month.hasRecord).length,
    coldestMonth: coldestMonthOf(months)?.month.month ?? null,
    hottestMonth: hottestMonthOf(months)?.month.month ?? null,
    designNight: found?.night ?? null,
    clearDay: clearDays.find((d) => d.month === cooking.month) ?? null,
    clearDays,
    coldNights: coldNightsOf(site, months),
    stationDistanceM: climate.distanceM,
    heightDifferenceM: upM,
    heightCorrectionK: heightChangeK(upM),
    stationFit,
    stationDoubtK: stationDoubtK(climate, heightChangeK(upM)),
    frost: stationFit === 'tooFar' ? null : frostOf(months, climate, heightChangeK(upM)),
    hardiness: found && hardinessOf(found.night.lowC, found.meanDoubtK),
    degreeDays: degreeDaysOf(months, climate),
    sunHours: sunHoursOf(site, climate),
    sunHoursBasis: site.obstacles === undefined ? 'freeHorizon' : 'obstacles',
    overheating: cooking.month === null ? null : { month: cooking.month, nightsShut: cooking.nightsShut },
  };
  const notes: Note[] = [...outside, ...climateNotes({ climate, result, months, suspects, nightsShut: cooking.nightsShut })];
  return { result, notes, sources: [...SOURCES] };
};
