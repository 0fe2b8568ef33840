import { INPUTS_SCHEMA_VERSION, type BudgetInputs, type ExchangeRate, type PlanInputs } from '@lathwork/model';
import { Injectable } from '@nestjs/common';
import { DateTime } from 'luxon';
import type { Db } from '../../platform/database/database.js';
import { inputsFaults } from '../../platform/compute/inputs-check.js';
import { fail } from '../../platform/problems/problem.js';
import { BuildsRead } from '../builds/builds.read.js';
import { ClimateRead } from '../climate/climate.read.js';
import { PricesRead } from '../prices/prices.read.js';
import { StockRead } from '../stock/stock.read.js';
import { PlaceAndShelterRead } from './place-and-shelter.js';

/** Everything of a plan but what is only known when its row is written. */
export type CollectedInputs = Omit<PlanInputs, 'planId' | 'revision' | 'seed'>;

/** The last check before inputs are kept for good: they are what the published schema says. */
export const checkInputs = (inputs: PlanInputs): PlanInputs => {
  const faults = inputsFaults(inputs);
  return faults.length === 0 ? inputs : fail('inputs-contradict', { reason: 'What is stored for this build does not make complete plan inputs.' }, faults);
};

/** The seed of every random draw of one plan, taken from its id, so that the same plan can be computed again. */
export const seedOf = (planId: string): number => Number.parseInt(planId.replaceAll('-', '').slice(-8), 16);

/** Walks through the other domains' read doors once and brings back one value. */
@Injectable()
export class PlanInputsReader {
  constructor(
    private readonly builds: BuildsRead,
    private readonly placeAndShelter: PlaceAndShelterRead,
    private readonly climate: ClimateRead,
    private readonly stock: StockRead,
    private readonly prices: PricesRead,
  ) {}

  async collect(db: Db, gardenId: string, buildId: string, asOf: string | null): Promise<CollectedInputs> {
    const build = await this.builds.mustBeActive(db, buildId);
    const { site, stationId, structure } = await this.placeAndShelter.of(db, build);
    const climate = await this.climate.stationFor(db, { latitudeDeg: site.latitudeDeg, longitudeDeg: site.longitudeDeg, stationId });
    if (!climate) return fail('inputs-contradict', { reason: 'This server has no climate station to compute with.' });
    return {
      schemaVersion: INPUTS_SCHEMA_VERSION,
      buildId,
      gardenId,
      asOf: asOf ?? DateTime.now().setZone(site.timeZone).toFormat('yyyy-MM-dd'),
      site,
      climate,
      structure,
      wishes: build.wishes,
      crew: build.crew,
      stock: await this.stock.claimedFor(db, buildId),
      prices: await this.prices.forPlan(db),
      budget: withRates(build.budget, await this.prices.ratesForPlan(db)),
    };
  }
}

// The build's own rate for a pair of currencies goes before the garden's.
const withRates = (budget: BudgetInputs, rates: readonly ExchangeRate[]): BudgetInputs => {
  const own = new Set(budget.exchangeRates.map(({ from, to }) => `${from}>${to}`));
  return { ...budget, exchangeRates: [...budget.exchangeRates, ...rates.filter(({ from, to }) => !own.has(`${from}>${to}`))].slice(0, 20) };
};
