/**
 * Budget: cash, reclaimed value and in-kind value, with the two lines that no budget may lack.
 *
 * Gives: a line for each group of the take-off, consumables, contingency and in-kind help; totals, range and the cap.
 * Model: sums in whole minor units. Consumables are a share of what is bought, with a least amount as soon as anything
 *   is bought; contingency is a share of bought materials and consumables, larger the more of the plan is salvaged.
 * Assumes: the share of salvage is reclaimed worth over reclaimed worth and cash.
 * Validity: one currency; amounts in other currencies without a dated rate are kept apart and never added, and a cap
 *   cannot be called kept while a price is missing or stands in another currency.
 * Fields: minor units of the currency; shares as fractions.
 * References: LOW-COST-PRACTICE (a "$50" tunnel came to just under $150 by its small fittings), JUDGEMENT-MATERIALS.
 */
import type { BudgetInputs, BudgetResult, Money, Note, TakeOffLine, TakeOffResult } from '@lathwork/model';
import { cited } from '../sources/cite.js';
import { outsideValidity, type RoomModel, type RoomOutput, sumOf } from './room.js';

export const BUDGET_MODEL = {
  room: 'budget',
  title: 'Three columns, consumables and contingency always present',
  ranges: {
    consumablesFrac: { unit: '1', min: 0.1, max: 0.15, sourceId: 'JUDGEMENT-MATERIALS', safety: false },
    contingencyFrac: { unit: '1', min: 0.1, max: 0.25, sourceId: 'JUDGEMENT-MATERIALS', safety: false },
  },
  sources: ['JUDGEMENT-MATERIALS', 'LOW-COST-PRACTICE'],
} as const satisfies RoomModel<'consumablesFrac' | 'contingencyFrac'>;

const CONSUMABLES_NEW = cited(0.1, '1', 'JUDGEMENT-MATERIALS', 'consumables 10-15 % of bought materials', { min: 0.1, max: 0.15 });
const CONSUMABLES_SALVAGE = cited(0.15, '1', 'JUDGEMENT-MATERIALS', 'consumables 10-15 % of bought materials', { min: 0.1, max: 0.15 });
/** Thirty dollars, and thirty of whatever the currency is: drill bits and gloves cost some such amount everywhere. */
const CONSUMABLES_LEAST_MINOR = cited(3000, '{minor currency unit}', 'JUDGEMENT-MATERIALS', 'at least $30');
const CONTINGENCY_NEW = cited(0.1, '1', 'JUDGEMENT-MATERIALS', '10 % for a plan of new material');
const CONTINGENCY_MIXED = cited(0.2, '1', 'JUDGEMENT-MATERIALS', '20-25 % for a salvage plan', { min: 0.2, max: 0.25 });
const CONTINGENCY_SALVAGE = cited(0.25, '1', 'JUDGEMENT-MATERIALS', '20-25 % for a salvage plan', { min: 0.2, max: 0.25 });
/** From here on a plan counts as a salvage plan, and as one that is mostly salvage. */
const SALVAGE_FROM = cited(0.2, '1', 'JUDGEMENT-MATERIALS', 'share of salvage in the value of the materials');
const MOSTLY_SALVAGE_FROM = cited(0.5, '1', 'JUDGEMENT-MATERIALS', 'share of salvage in the value of the materials');

export interface BudgetRoomInput {
  takeOff: TakeOffResult;
  budget: BudgetInputs;
}

type Line = BudgetResult['lines'][number];

const groupLines = (lines: readonly TakeOffLine[], currency: string): Line[] =>
  [...new Set(lines.map((l) => l.group))].map((group) => {
    const own = lines.filter((l) => l.group === group);
    return {
      group,
      reclaimedMinor: sumOf(
        own.flatMap((l) => l.reclaimed),
        (r) => (r.worth?.currency === currency ? r.worth.minor : 0),
      ),
      cashMinor: sumOf(own, (l) => (l.cash?.currency === currency ? l.cash.minor : 0)),
      inKindMinor: 0,
    };
  });

/** Cash in currencies that no dated rate turns into the plan's, one amount for each. */
const foreign = (lines: readonly TakeOffLine[], inKind: readonly Money[], currency: string): Money[] => {
  const totals = new Map<string, number>();
  for (const money of [...lines.flatMap((l) => l.cash ?? []), ...inKind])
    if (money.currency !== currency && money.minor !== 0) totals.set(money.currency, (totals.get(money.currency) ?? 0) + money.minor);
  return [...totals].sort(([a], [b]) => a.localeCompare(b)).map(([code, minor]) => ({ minor, currency: code }));
};

const shares = (
  budget: BudgetInputs,
  salvageFrac: number,
): { consumablesFrac: number; contingencyFrac: number; consumablesDefault: number; contingencyDefault: number } => {
  const consumablesDefault = salvageFrac < SALVAGE_FROM ? CONSUMABLES_NEW : CONSUMABLES_SALVAGE;
  const contingencyDefault = salvageFrac < SALVAGE_FROM ? CONTINGENCY_NEW : salvageFrac < MOSTLY_SALVAGE_FROM ? CONTINGENCY_MIXED : CONTINGENCY_SALVAGE;
  return {
    consumablesFrac: budget.consumablesFrac ?? consumablesDefault,
    contingencyFrac: budget.contingencyFrac ?? contingencyDefault,
    consumablesDefault,
    contingencyDefault,
  };
};

/** Both lines stay even at nothing; lowering one wants a reason, and the reason is printed. */
const loweredNotes = (budget: BudgetInputs, s: ReturnType<typeof shares>): Note[] => {
  const one = (what: 'consumables' | 'contingency', set: number, usual: number, reason: string | null): Note[] => {
    if (set >= usual) return [];
    const params = { setFrac: set, usualFrac: usual, ...(reason === null ? {} : { reason }) };
    return [
      {
        code: reason === null ? 'budget.share-lowered-without-reason' : 'budget.share-lowered',
        severity: reason === null ? 'ask' : 'note',
        room: 'budget',
        subject: what,
        params,
      },
    ];
  };
  return [
    ...one('consumables', s.consumablesFrac, s.consumablesDefault, budget.consumablesReason),
    ...one('contingency', s.contingencyFrac, s.contingencyDefault, budget.contingencyReason),
  ];
};

const moneyNotes = (result: BudgetResult, boughtMinor: number): Note[] => {
  const about = { room: 'budget' } as const;
  const notes: Note[] = [];
  if (result.verdict === 'overCap')
    notes.push({
      ...about,
      code: 'budget.over-cap',
      severity: 'care',
      params: { overCapMinor: result.overCapMinor, cashMinor: result.cashMinor, capMinor: result.capMinor ?? 0, currency: result.currency },
    });
  if (result.verdict === 'notAssessed')
    notes.push({
      ...about,
      code: 'budget.cap-not-assessed',
      severity: 'ask',
      params: { unpricedCount: result.unpricedCount, otherCurrenciesCount: result.otherCurrencies.length },
    });
  if (result.otherCurrencies.length > 0)
    notes.push({ ...about, code: 'budget.other-currencies-apart', severity: 'ask', params: { currencies: result.otherCurrencies.map((m) => m.currency) } });
  if (boughtMinor === 0 && result.unpricedCount === 0)
    notes.push({ ...about, code: 'budget.nothing-bought', severity: 'note', params: { reclaimedMinor: result.reclaimedMinor, currency: result.currency } });
  return notes;
};

const verdictOf = (capMinor: number | null, cashMinor: number, complete: boolean): BudgetResult['verdict'] => {
  if (capMinor === null) return 'noCap';
  if (cashMinor > capMinor) return 'overCap';
  return complete ? 'withinCap' : 'notAssessed';
};

export const computeBudget = ({ takeOff, budget }: BudgetRoomInput): RoomOutput<BudgetResult> => {
  const { currency, capMinor } = budget;
  const groups = groupLines(takeOff.lines, currency);
  const inKindMinor = sumOf(
    budget.inKind.filter((k) => k.value.currency === currency),
    (k) => k.value.minor,
  );
  const reclaimedMinor = sumOf(groups, (l) => l.reclaimedMinor);
  const boughtMinor = sumOf(groups, (l) => l.cashMinor);
  const otherCurrencies = foreign(
    takeOff.lines,
    budget.inKind.map((k) => k.value),
    currency,
  );
  const s = shares(budget, reclaimedMinor + boughtMinor > 0 ? reclaimedMinor / (reclaimedMinor + boughtMinor) : 0);
  // The least amount is for plans that buy something, unless the builder set the share to nothing with a reason.
  const least = boughtMinor > 0 && budget.consumablesFrac === null ? CONSUMABLES_LEAST_MINOR : 0;
  const consumablesMinor = Math.max(Math.round(boughtMinor * s.consumablesFrac), least);
  const contingencyMinor = Math.round((boughtMinor + consumablesMinor) * s.contingencyFrac);
  const cashMinor = boughtMinor + consumablesMinor + contingencyMinor;
  const complete = takeOff.unpricedCount === 0 && otherCurrencies.length === 0;
  const dates = takeOff.lines.flatMap((l) => (l.toBuy > 0 && l.priceReadOn !== null ? [l.priceReadOn] : [])).sort();
  const result: BudgetResult = {
    verdict: verdictOf(capMinor, cashMinor, complete),
    currency,
    lines: [
      ...groups,
      { group: 'consumables', reclaimedMinor: 0, cashMinor: consumablesMinor, inKindMinor: 0 },
      { group: 'contingency', reclaimedMinor: 0, cashMinor: contingencyMinor, inKindMinor: 0 },
      { group: 'inKind', reclaimedMinor: 0, cashMinor: 0, inKindMinor },
    ],
    consumablesFrac: s.consumablesFrac,
    contingencyFrac: s.contingencyFrac,
    reclaimedMinor,
    cashMinor,
    inKindMinor,
    cashLowMinor: boughtMinor + consumablesMinor,
    cashHighMinor: cashMinor + contingencyMinor,
    capMinor,
    overCapMinor: capMinor === null ? 0 : Math.max(cashMinor - capMinor, 0),
    unpricedCount: takeOff.unpricedCount,
    otherCurrencies,
    oldestPriceOn: dates[0] ?? null,
  };
  const validity = outsideValidity(BUDGET_MODEL, { consumablesFrac: s.consumablesFrac, contingencyFrac: s.contingencyFrac });
  return { result, notes: [...moneyNotes(result, boughtMinor), ...loweredNotes(budget, s), ...validity], sources: [...BUDGET_MODEL.sources] };
};
