import { computeCutting, computeGeometry, computeTakeOff, type TakeOffInput } from '@lathwork/calc';
import type { AnchorageResult, FasteningResult, PlanInputs, StockItem } from '@lathwork/model';

/** A stand-in for the loads rooms, so that the material rooms can be tried alone: one screw each 300 mm of batten. */
export const plainFastening = (battenM: number): FasteningResult => ({
  verdict: 'notAssessed',
  screw: { diameterMm: 4.2, lengthMm: 51, threadInWoodMm: 30, gauge: '8' },
  woodGravityRatio: 0.42,
  zones: [],
  screwsCount: Math.ceil(battenM / 0.3),
  battenM,
  tubeScrewsCount: 60,
});

export const plainAnchorage: AnchorageResult = {
  verdict: 'notAssessed',
  rated: false,
  anchorKind: 'auger',
  capacityEachN: null,
  factorOfSafety: null,
  capacityBasis: 'none',
  posts: [],
  wouldHold: [],
  slidingForceN: null,
  worstPostId: null,
  worstDemandN: null,
};

/** Inputs of the take-off for a plan, with geometry and cutting as computed. */
export const takeOffInputOf = (inputs: PlanInputs): TakeOffInput => {
  const { structure, stock, prices, asOf, budget } = inputs;
  const geometry = computeGeometry({ structure }).result;
  const fastening = plainFastening(geometry.battenRuns.reduce((sum, r) => sum + r.lengthM, 0));
  const cutting = computeCutting({ structure, geometry, stock, prices }).result;
  return { structure, geometry, fastening, anchorage: plainAnchorage, cutting, stock, prices, asOf, currency: budget.currency, rates: budget.exchangeRates };
};

export const takeOffOf = (inputs: PlanInputs) => computeTakeOff(takeOffInputOf(inputs));

export const stockItem = (over: Partial<StockItem>): StockItem => ({
  stockId: '00000000-0000-7000-8000-00ff00000001',
  tag: 'XX-001',
  kind: 'other',
  material: 'rope',
  grade: 'A',
  hazards: [],
  count: 1,
  widthMm: null,
  heightMm: null,
  thicknessMm: null,
  lengthMm: null,
  usableLengthMm: null,
  volumeL: null,
  ageY: null,
  replacement: null,
  ...over,
});
