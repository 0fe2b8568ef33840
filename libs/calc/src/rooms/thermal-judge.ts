import type { ClimateResult, CropKey, GeometryResult, Note, StructureInputs, ThermalResult, Verdict, Wishes } from '@lathwork/model';
import { VENT_WANTED_FRAC } from '../data/covers.js';
import { CROPS } from '../data/crops.js';
import type { Ensemble } from './thermal-ensemble.js';
import { ventOpenings } from './thermal-shelter.js';

const note = (code: string, severity: Note['severity'], params: Note['params'] = {}, subject?: string): Note => ({
  code: `thermal.${code}`,
  severity,
  room: 'thermal',
  params,
  ...(subject === undefined ? {} : { subject }),
});

/** Night target against the run as planned. No target asked for, or no night given: there is nothing to hold it against. */
export const nightVerdict = (nights: ThermalResult['designNights'], targetC: number | null): Verdict => {
  const planned = nights.find((n) => n.variant === 'asPlanned');
  if (!planned || targetC === null) return 'notAssessed';
  if (planned.insideLowC.p10 >= targetC) return 'noRedFlag';
  return planned.insideLowC.p50 >= targetC ? 'marginal' : 'doesNotPass';
};

/** Limits of the crops wished for, with the share of draws whose leaf falls below the cold ones. */
export const cropLimits = (crops: readonly CropKey[], planned: Ensemble | null): ThermalResult['crops'] =>
  crops.flatMap((crop) => {
    const c = CROPS[crop];
    const below = (limitC: number) => (planned ? planned.leafMinC.filter((t) => t < limitC).length / planned.leafMinC.length : null);
    return [
      { crop, kind: 'damageBegins' as const, limitC: c.damageBeginsC, belowFrac: below(c.damageBeginsC) },
      { crop, kind: 'usuallyKilled' as const, limitC: c.usuallyKilledC, belowFrac: below(c.usuallyKilledC) },
      { crop, kind: 'heatHurts' as const, limitC: c.heatHurtsC, belowFrac: null },
    ];
  });

export const ventSummary = (geometry: GeometryResult): ThermalResult['vents'] => {
  const v = ventOpenings(geometry);
  const freeM2 = v.topM2 + v.lowM2;
  return { freeM2, topM2: v.topM2, lowM2: v.lowM2, floorFrac: freeM2 / geometry.footprintM2, wantedFrac: VENT_WANTED_FRAC };
};

const nightNotes = (result: ThermalResult, structure: StructureInputs, wishes: Wishes, climate: ClimateResult): Note[] => {
  if (climate.designNight === null) return [note('no-design-night', 'stop', {})];
  const notes: Note[] = [];
  const planned = result.designNights.find((n) => n.variant === 'asPlanned');
  const bare = result.designNights.find((n) => n.variant === 'bare');
  if (!planned || !bare) return notes;
  if (planned.liftK.p50 < 4)
    notes.push(note('night-gain-small', 'care', { liftP10K: planned.liftK.p10, liftP50K: planned.liftK.p50, liftP90K: planned.liftK.p90 }));
  if (planned.liftK.p10 < 0) notes.push(note('colder-inside-possible', 'care', { liftP10K: planned.liftK.p10 }));
  if (planned.leafLowC.p50 < planned.insideLowC.p50 - 0.5)
    notes.push(note('leaf-colder-than-air', 'note', { belowAirK: planned.insideLowC.p50 - planned.leafLowC.p50 }));
  const covered = result.designNights.find((n) => n.variant === 'innerCover');
  if (covered && !structure.cover.innerCover && covered.insideLowC.p50 < planned.insideLowC.p50 + 0.5)
    notes.push(note('inner-cover-gains-little', 'note', { gainK: covered.insideLowC.p50 - planned.insideLowC.p50 }));
  if (wishes.nightTargetC === null) notes.push(note('no-night-target', 'ask', {}));
  else if (result.verdict !== 'noRedFlag')
    notes.push(note('target-not-met', 'care', { targetC: wishes.nightTargetC, insideP10C: planned.insideLowC.p10, insideP50C: planned.insideLowC.p50 }));
  for (const c of result.crops)
    if (c.kind === 'damageBegins' && c.belowFrac !== null && c.belowFrac > 0.1)
      notes.push(note('crop-at-risk', 'care', { crop: c.crop, limitC: c.limitC, belowFrac: c.belowFrac }, c.crop));
  return notes;
};

/** From this air on a shut shelter cooks most crops within hours. */
const COOKS_C = 35;

const dayNotes = (result: ThermalResult, wishes: Wishes): Note[] => {
  const notes: Note[] = [];
  const closed = result.clearDays.find((d) => d.variant === 'closed');
  const opened = result.clearDays.find((d) => d.variant === 'opened');
  if (closed && closed.insideHighC.p50 >= COOKS_C)
    notes.push(
      note('cooks-when-shut', wishes.ventsOpenedBy === 'nobody' ? 'stop' : 'care', { peakP50C: closed.insideHighC.p50, outsideHighC: closed.outsideHighC }),
    );
  if (opened && opened.insideHighC.p50 >= COOKS_C) notes.push(note('hot-when-open', 'care', { peakP50C: opened.insideHighC.p50 }));
  if (result.vents.floorFrac < result.vents.wantedFrac)
    notes.push(note('vents-too-small', 'care', { floorFrac: result.vents.floorFrac, wantedFrac: result.vents.wantedFrac }));
  if (result.vents.freeM2 > 0 && result.vents.topM2 === 0) notes.push(note('no-top-vent', 'care', {}));
  if (wishes.ventsOpenedBy === 'nobody') notes.push(note('nobody-opens', 'care', {}));
  return notes;
};

const shelterNotes = (structure: StructureInputs): Note[] => {
  const notes: Note[] = [];
  if (structure.floor === 'decking' || structure.floor === 'mulch') notes.push(note('no-floor-heat', 'care', { floor: structure.floor }));
  if (!structure.floorMoist) notes.push(note('dry-floor', 'note', {}));
  if (structure.kind === 'leanTo') notes.push(note('host-wall-left-out', 'note', {}));
  if (structure.cover.ageY === 'unknown') notes.push(note('film-age-unknown', 'ask', {}));
  if (structure.waterStores.length === 0) notes.push(note('no-water-store', 'note', {}));
  return notes;
};

/** Everything the thermal room has to say beside its numbers. */
export const thermalNotes = (result: ThermalResult, structure: StructureInputs, wishes: Wishes, climate: ClimateResult): Note[] => [
  ...nightNotes(result, structure, wishes, climate),
  ...dayNotes(result, wishes),
  ...shelterNotes(structure),
];
