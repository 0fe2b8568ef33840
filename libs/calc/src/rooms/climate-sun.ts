import type { ClimateInputs, SiteInputs, SunHours } from '@lathwork/model';
import { seenSun, skyLine } from '../physics/horizon.js';
import { DAYS_IN_MONTH, MEAN_DAYS, daylightH } from '../physics/sun.js';

/**
 * Gives: hours of direct sun on the plot on each month's mean day: over a free horizon, past the obstacles, and to be expected.
 * Model: seenSun with the sky line of the site's obstacles; expected hours are the cleared ones times the station's bright
 *   share of its daylight. Assumptions: bright hours fall evenly over the day; obstacles are solid in every season.
 * Validity: every latitude. A site whose obstacles nobody has listed is taken as free, and says so.
 */
export const sunHoursOf = (site: Pick<SiteInputs, 'latitudeDeg' | 'obstacles'>, climate: ClimateInputs): SunHours[] => {
  const line = skyLine(site.obstacles ?? []);
  return MEAN_DAYS.map((dayOfYear, i) => {
    const seen = seenSun({ latitudeDeg: site.latitudeDeg, dayOfYear, line });
    const sunshineH = climate.months[i]?.sunshineH ?? null;
    const lightH = daylightH(climate.stationLatitudeDeg, dayOfYear) * (DAYS_IN_MONTH[i] ?? 30);
    const bright = sunshineH === null ? null : lightH > 0 ? Math.min(1, sunshineH / lightH) : 0;
    return { month: i + 1, ...seen, brightH: bright === null ? null : seen.clearedH * bright };
  });
};
