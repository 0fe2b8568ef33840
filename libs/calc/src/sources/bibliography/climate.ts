import type { BibliographyEntry } from '../bibliography-entry.js';

export const climateSources = {
  'DWD-CLIMAT': {
    title: 'National CLIMAT reports: monthly means 2003 to 2021 by station. Datenbasis: Deutscher Wetterdienst, Einzelwerte gemittelt',
    publisher: 'Deutscher Wetterdienst, Climate Data Center (GeoNutzV / CC BY 4.0)',
    year: 2021,
    quality: 'published',
  },
  'STATION-SPREAD': {
    title: 'Spread of nights about their monthly mean, stations of the CLIMAT means 2003 to 2021',
    publisher: 'Counted for this screening; data: Deutscher Wetterdienst',
    year: 2021,
    quality: 'measured',
  },
  'SPENCER-1971': {
    title: 'Spencer: Fourier series representation of the position of the sun',
    publisher: 'Search 2(5):172',
    year: 1971,
    quality: 'published',
  },
  'DUFFIE-BECKMAN-5': {
    title: 'Duffie, Beckman, Blair: Solar Engineering of Thermal Processes, 5th edition',
    publisher: 'Wiley',
    year: 2020,
    quality: 'published',
  },
  'IQBAL-1983': {
    title: 'Iqbal: An Introduction to Solar Radiation',
    publisher: 'Academic Press',
    year: 1983,
    quality: 'published',
  },
  'ERBS-1982': {
    title: 'Erbs, Klein, Duffie: Estimation of the diffuse radiation fraction',
    publisher: 'Solar Energy 28(4):293-302',
    year: 1982,
    quality: 'published',
  },
  'COLLARES-RABL-1979': {
    title: 'Collares-Pereira, Rabl: The average distribution of solar radiation',
    publisher: 'Solar Energy 22:155-164',
    year: 1979,
    quality: 'published',
  },
  'REINDL-1990': {
    title: 'Reindl, Beckman, Duffie: Evaluation of hourly tilted surface radiation models',
    publisher: 'Solar Energy 45(1):9-17',
    year: 1990,
    quality: 'published',
  },
  'FAO-56': {
    title: 'Allen, Pereira, Raes, Smith: Crop evapotranspiration, Irrigation and Drainage Paper 56',
    publisher: 'Food and Agriculture Organization',
    year: 1998,
    quality: 'published',
  },
  'CESARACCIO-2001': {
    title: 'Cesaraccio, Spano, Duce, Snyder: An improved model for determining degree-day values from daily temperature data',
    publisher: 'International Journal of Biometeorology 45:161-169',
    year: 2001,
    quality: 'published',
  },
  'ASHRAE-F09-14': {
    title: 'ASHRAE Handbook of Fundamentals, chapter 14, table 6: fractions of the daily range',
    publisher: 'ASHRAE',
    year: 2009,
    supersededBy: 'ASHRAE Fundamentals 2021',
    quality: 'published',
  },
  'ICAO-7488': {
    title: 'Manual of the ICAO Standard Atmosphere, Doc 7488',
    publisher: 'International Civil Aviation Organization',
    year: 1993,
    quality: 'memory',
  },
  'CLIMATE-JUDGEMENT': { title: 'Climate choices of this screening; no measurement for this place', publisher: 'Judgement', year: null, quality: 'judgement' },
} as const satisfies Record<string, BibliographyEntry>;
