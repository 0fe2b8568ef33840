import type { Note, SiteInputs, WindBasis } from '@lathwork/model';
import { GUST_LIMIT_MPERS, GUST_OVER_TEN_MINUTES, SERVICE_WIND } from '../data/wind-coefficients.js';
import { notesOf } from './room.js';

/** How the wind of a site enters the calculation, or why it cannot. */
export type WindApproach =
  | { standard: 'ASCE 7-16'; gustMPerS: number; conversion: string; notes: Note[] }
  | { standard: 'EN 1991-1-4'; basicMPerS: number; conversion: string; notes: Note[] }
  | { standard: 'none'; conversion: string; notes: Note[] };

const note = notesOf('wind');
const refused = (conversion: string, notes: Note[]): WindApproach => ({ standard: 'none', conversion, notes });

const isEuropean = (edition: string): boolean => /\bEN\b|1991|eurocode/i.test(edition);
const isAmerican = (edition: string): boolean => /ASCE|IBC|IRC|\bUBC\b/i.test(edition);

const europeanApproach = (wind: WindBasis): WindApproach => {
  if (wind.averaging !== 'mean10min') {
    return refused('not converted', [note('basis-ask', 'ask', { averaging: wind.averaging, codeEdition: wind.codeEdition, wanted: 'mean10min' })]);
  }
  // EN maps give the characteristic (service) value; a reading marked ultimate is used as it is, which errs on the cautious side.
  return { standard: 'EN 1991-1-4', basicMPerS: wind.speedMPerS, conversion: 'ten-minute mean used as the basic wind speed of EN 1991-1-4', notes: [] };
};

const americanApproach = (wind: WindBasis): WindApproach => {
  if (wind.averaging === 'fastestMile') {
    return refused('not converted', [note('basis-ask', 'ask', { averaging: wind.averaging, codeEdition: wind.codeEdition, wanted: 'gust3s' })]);
  }
  const notes: Note[] = [];
  const steps: string[] = [];
  let gustMPerS: number = wind.speedMPerS;
  if (wind.averaging === 'mean10min') {
    gustMPerS *= GUST_OVER_TEN_MINUTES;
    steps.push('ten-minute mean times 1.55');
    notes.push(note('mean-to-gust', 'care', { meanMPerS: wind.speedMPerS, gustMPerS, gustRatio: GUST_OVER_TEN_MINUTES }));
  }
  if (wind.level === 'service') {
    const serviceMPerS = gustMPerS;
    gustMPerS = ultimateFromServiceMPerS(serviceMPerS);
    steps.push('service speed divided by the square root of 0.6');
    notes.push(note('service-to-ultimate', 'note', { serviceMPerS, gustMPerS }));
  }
  if (!isAmerican(wind.codeEdition)) notes.push(note('code-not-held', 'ask', { codeEdition: wind.codeEdition, used: 'ASCE 7-16' }));
  return { standard: 'ASCE 7-16', gustMPerS, conversion: steps.length === 0 ? 'used as given' : steps.join(', '), notes };
};

/** Vasd = V sqrt(0.6), both ways round (IBC 1609.3.1). */
export const serviceFromUltimateMPerS = (ultimateMPerS: number): number => ultimateMPerS * Math.sqrt(SERVICE_WIND);
export const ultimateFromServiceMPerS = (serviceMPerS: number): number => serviceMPerS / Math.sqrt(SERVICE_WIND);

/**
 * Reads the wind of the site with its basis. Only a 3-second ultimate gust is taken as it stands; the rest is converted
 * by a published relation or refused with a question, never guessed.
 */
export const windApproach = (site: SiteInputs): WindApproach => {
  if (site.wind === 'unknown') return refused('wind unknown', [note('unknown-ask', 'ask')]);
  const approach = isEuropean(site.wind.codeEdition) ? europeanApproach(site.wind) : americanApproach(site.wind);
  const speedMPerS = approach.standard === 'ASCE 7-16' ? approach.gustMPerS : site.wind.speedMPerS;
  if (speedMPerS > GUST_LIMIT_MPERS) return refused('refused', [note('gust-refused', 'stop', { gustMPerS: speedMPerS, limitMPerS: GUST_LIMIT_MPERS })]);
  if (site.nearHilltop === 'yes') return refused('near a hilltop', [...approach.notes, note('hilltop-ask', 'ask', { nearHilltop: 'yes' })]);
  return site.nearHilltop === 'unknown' ? { ...approach, notes: [...approach.notes, note('hilltop-ask', 'ask', { nearHilltop: 'unknown' })] } : approach;
};
