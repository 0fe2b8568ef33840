import { cited } from '../sources/cite.js';

/** Allowances over the net need. Judgement unless a source is named; the reason is printed beside each. */
export const WASTE = {
  battenCuttingFrac: cited(0.15, '1', 'JUDGEMENT-MATERIALS', 'lath: 15 % new, 25 % reclaimed (reclaimed lengths here are usable lengths already)', {
    min: 0.1,
    max: 0.25,
  }),
  screwSparesFrac: cited(0.15, '1', 'JUDGEMENT-MATERIALS', 'self-drilling screws 15 %', { min: 0.1, max: 0.2 }),
  fixingSparesFrac: cited(0.1, '1', 'JUDGEMENT-MATERIALS', 'framing screws, straps, cable 10 %', { min: 0.05, max: 0.15 }),
  fabricLapFrac: cited(0.1, '1', 'LOW-COST-PRACTICE', 'ground fabric: 12 in laps'),
  meshLapFrac: cited(0.05, '1', 'LOW-COST-PRACTICE', 'mesh: 6 in laps'),
  gravelCompactionFrac: cited(0.1, '1', 'LOW-COST-PRACTICE', 'gravel: add 10 % for compaction'),
  innerCoverFrac: cited(0.1, '1', 'JUDGEMENT-MATERIALS', 'row cover 10 %'),
  concreteFrac: cited(0.1, '1', 'JUDGEMENT-MATERIALS', 'bags 10 %'),
} as const;

export const ALLOWANCE = {
  /** One anchor more than posts need: one always meets a stone. */
  spareAnchorsCount: cited(1, '{count}', 'LOW-COST-PRACTICE', 'anchors: one spare'),
  /** Straps: one at each sill and one at each eave board, for every post. */
  strapsPerPostCount: cited(2, '{count}', 'JUDGEMENT-MATERIALS', 'one at the sill, one at the eave board'),
  framingScrewsPerPartCount: cited(6, '{count}', 'JUDGEMENT-MATERIALS', 'three at each end of a piece of framing'),
  contactTapeRollM: cited(20, 'm', 'JUDGEMENT-MATERIALS', 'length of one roll of contact tape'),
  paintLPerM2: cited(0.1, 'L/m2', 'JUDGEMENT-MATERIALS', 'light latex, one coat, 10 m2 a litre'),
  nailerGirthM: cited(0.127, 'm', 'JUDGEMENT-MATERIALS', 'two faces of a 38 x 89 nailer touch film'),
  gravelDepthM: cited(0.05, 'm', 'LOW-COST-PRACTICE', 'floor gravel 2 in'),
  concreteBagM3: cited(0.0127, 'm3', 'JUDGEMENT-MATERIALS', '60 lb bag of dry mix gives about 0.45 ft3; from memory'),
  sandbagKg: cited(20, 'kg', 'JUDGEMENT-MATERIALS', 'a bag one person lifts'),
  barrelHoldsKg: cited(208, 'kg', 'JUDGEMENT-MATERIALS', '55 US gallon barrel of water'),
  ropesCount: cited(2, '{count}', 'COVER-DAY', 'ropes tied to padded knots at both ends of the sheet'),
  /** A price older than a year is old. */
  priceFreshD: cited(365, 'd', 'JUDGEMENT-MATERIALS', 'twelve months'),
  /** A used film that may still be the main cover is known to be at most this old. */
  mainCoverAgeMaxY: cited(1, 'a', 'UCONN-FILM', 'greenhouse film lasts four seasons; one is spent'),
} as const;
