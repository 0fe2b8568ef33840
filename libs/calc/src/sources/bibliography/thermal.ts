import type { BibliographyEntry } from '../bibliography-entry.js';

/** Sources of the thermal room. `memory` marks figures recalled from a text that could not be opened; they are printed as such. */
export const thermalSources = {
  'ASHRAE-F17-1': { title: 'ASHRAE Handbook of Fundamentals, chapter 1: Psychrometrics', publisher: 'ASHRAE', year: 2017, quality: 'published' },
  'ASHRAE-F09-16': {
    title: 'ASHRAE Handbook of Fundamentals, chapter 16: Ventilation and Infiltration',
    publisher: 'ASHRAE',
    year: 2009,
    supersededBy: 'ASHRAE Fundamentals 2021',
    quality: 'published',
  },
  'EP-ENG-REF': {
    title: 'EnergyPlus Engineering Reference: climate, infiltration and ventilation, inside and outside heat balance',
    publisher: 'US Department of Energy',
    year: 2023,
    quality: 'published',
  },
  'EP-IO-REF': {
    title: 'EnergyPlus Input Output Reference: group Airflow, effective leakage area coefficients',
    publisher: 'US Department of Energy',
    year: 2023,
    quality: 'published',
  },
  'CLARK-ALLEN-1978': {
    title: 'Clark and Allen, The estimation of atmospheric radiation for clear and cloudy skies',
    publisher: 'Proc. 2nd National Passive Solar Conference',
    year: 1978,
    quality: 'published',
  },
  'BERDAHL-MARTIN-1984': { title: 'Berdahl and Martin, Emissivity of clear skies', publisher: 'Solar Energy 32(5)', year: 1984, quality: 'memory' },
  'WALTON-1983': {
    title: 'Walton, Thermal Analysis Research Program Reference Manual, NBSIR 83-2655',
    publisher: 'National Bureau of Standards',
    year: 1983,
    quality: 'published',
  },
  'KUSUDA-1965': {
    title: 'Kusuda and Achenbach, Earth temperature and thermal diffusivity at selected stations in the United States',
    publisher: 'ASHRAE Transactions 71(1)',
    year: 1965,
    quality: 'published',
  },
  'ISO-13370': { title: 'ISO 13370 Thermal performance of buildings: heat transfer via the ground', publisher: 'ISO', year: 2017, quality: 'published' },
  'WATMUFF-1977': {
    title: 'Watmuff, Charters and Proctor, Solar and wind induced external coefficients for solar collectors',
    publisher: "Revue internationale d'heliotechnique",
    year: 1977,
    quality: 'memory',
  },
  'BOULARD-BAILLE-1995': {
    title: 'Boulard and Baille, Modelling of air exchange rate in a greenhouse equipped with continuous roof vents',
    publisher: 'Journal of Agricultural Engineering Research 61',
    year: 1995,
    quality: 'memory',
  },
  'NRAES-33': {
    title: 'Aldrich and Bartok, Greenhouse Engineering, NRAES-33: cover properties and heat loss form',
    publisher: 'Northeast Regional Agricultural Engineering Service',
    year: 1994,
    quality: 'memory',
  },
  'HEAT-TRANSFER-TEXTS': {
    title: 'Laminar natural convection in air, simplified textbook form',
    publisher: 'Heat transfer handbooks',
    year: null,
    quality: 'memory',
  },
  'FILM-EXT': {
    title: 'Bulletins on infrared film, condensation and double film',
    publisher: 'University extension services',
    year: 2015,
    quality: 'published',
  },
  'BARTOK-2015-VENT': {
    title: 'Bartok: Natural ventilation of greenhouses',
    publisher: 'Greenhouse Management',
    year: 2015,
    quality: 'published',
  },
  'FROST-CLASSES-2022': {
    title: 'Frost resistance classes of crop tissue, table 2',
    publisher: 'PubMed Central, PMC10202904',
    year: 2023,
    quality: 'published',
  },
  'PURDUE-HO-203': { title: 'HO-203, Susceptibility of vegetables to light and hard frost', publisher: 'Purdue Extension', year: null, quality: 'published' },
  'FAO-FROST-2005': {
    title: 'Snyder and de Melo-Abreu, Frost Protection: fundamentals, practice and economics',
    publisher: 'FAO',
    year: 2005,
    quality: 'published',
  },
  'CROP-LIMITS-MEMORY': {
    title: 'Crop damage, kill and heat limits used by growers, from memory',
    publisher: 'Grower practice',
    year: null,
    quality: 'memory',
  },
  'SAVAGE-1980': {
    title: 'Savage, Plastic tunnel temperatures (abstract)',
    publisher: 'Agrochemophysica 12:5-13',
    year: 1980,
    quality: 'measured',
  },
  'LHS-1979': {
    title: 'McKay, Beckman and Conover, A comparison of three methods for selecting values of input variables',
    publisher: 'Technometrics 21(2)',
    year: 1979,
    quality: 'published',
  },
  'THERMAL-JUDGEMENT': {
    title: 'Thermal choices of this screening for low-cost film shelters; no measurement found',
    publisher: 'Judgement',
    year: null,
    quality: 'judgement',
  },
  'THERMAL-MEMORY': {
    title: 'Property values in common engineering use, from memory',
    publisher: 'Engineering handbooks',
    year: null,
    quality: 'memory',
  },
} as const satisfies Record<string, BibliographyEntry>;
