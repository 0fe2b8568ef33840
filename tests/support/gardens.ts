import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { BudgetInputs, ClimateInputs, Crew, DocumentOptions, PlanInputs, Price, SiteInputs, StockItem, StructureInputs, Wishes } from '@lathwork/model';
import { denverMeans, invercargillMeans, stornowayMeans } from './climates.js';

/** One invented build of an example garden, as the seed file holds it. */
export interface ExampleBuild {
  name: string;
  structure: Omit<StructureInputs, 'structureId'>;
  wishes: Wishes;
  crew: Crew;
  budget: BudgetInputs;
  claims: string[];
}

/** The shape of prisma/seed/example/*.json. Ids are given when the file is loaded. */
export interface ExampleGarden {
  garden: { name: string; locale: string; currency: string; unitSystem: 'us' | 'metric'; invented: true };
  site: Omit<SiteInputs, 'siteId'> & { name: string };
  stock: Omit<StockItem, 'stockId'>[];
  prices: Omit<Price, 'priceId'>[];
  builds: ExampleBuild[];
  documents: { build: string; paper: DocumentOptions['paper']; units: DocumentOptions['units'] }[];
}

export const EXAMPLE_GARDENS = ['cold-inland', 'maritime', 'southern'] as const;
export type ExampleGardenName = (typeof EXAMPLE_GARDENS)[number];

export const exampleGarden = (name: ExampleGardenName): ExampleGarden =>
  JSON.parse(readFileSync(join(process.cwd(), 'prisma', 'seed', 'example', `${name}.json`), 'utf8')) as ExampleGarden;

/** A fixed id: the group tells what it is of, the number which one. */
const fixedId = (group: number, number: number): string =>
  `00000000-0000-7000-8000-${group.toString(16).padStart(4, '0')}${number.toString(16).padStart(8, '0')}`;

/** The plan inputs of one build: its claimed items only, as the read of a real build gives them. */
export const planInputsOf = (garden: ExampleGarden, gardenNumber: number, buildIndex: number, climate: ClimateInputs): PlanInputs => {
  const build = garden.builds[buildIndex];
  if (!build) throw new Error(`${garden.garden.name} has no build ${buildIndex}`);
  const { name: _siteName, ...site } = garden.site;
  const claimed = new Set(build.claims);
  return {
    schemaVersion: 1,
    planId: fixedId(0x10 + gardenNumber, buildIndex + 1),
    buildId: fixedId(0x20 + gardenNumber, buildIndex + 1),
    gardenId: fixedId(0x30 + gardenNumber, 1),
    revision: 1,
    asOf: '2026-03-15',
    site: { siteId: fixedId(0x40 + gardenNumber, 1), ...site },
    climate,
    structure: { structureId: fixedId(0x50 + gardenNumber, buildIndex + 1), ...build.structure },
    wishes: build.wishes,
    crew: build.crew,
    stock: garden.stock.map((item, i) => ({ stockId: fixedId(0x60 + gardenNumber, i + 1), ...item })).filter((item) => claimed.has(item.tag)),
    prices: garden.prices.map((price, i) => ({ priceId: fixedId(0x70 + gardenNumber, i + 1), ...price })),
    budget: build.budget,
    seed: 20_260_315,
  };
};

const cold = exampleGarden('cold-inland');
export const inlandCanopy: PlanInputs = planInputsOf(cold, 1, 0, denverMeans);
export const inlandTunnel: PlanInputs = planInputsOf(cold, 1, 1, denverMeans);
export const maritimeLeanTo: PlanInputs = planInputsOf(exampleGarden('maritime'), 2, 0, stornowayMeans);
export const southernCanopy: PlanInputs = planInputsOf(exampleGarden('southern'), 3, 0, invercargillMeans);

export const FOUR_GARDENS: readonly [string, PlanInputs][] = [
  ['inland canopy', inlandCanopy],
  ['inland tunnel', inlandTunnel],
  ['maritime lean-to', maritimeLeanTo],
  ['southern canopy', southernCanopy],
];
