import type {
  AnchorageResult,
  ClimateResult,
  GeometryResult,
  Hazard,
  Note,
  PlacedOpening,
  SiteInputs,
  SnowResult,
  StockItem,
  StructureInputs,
  TaskId,
  ThermalResult,
  WindResult,
} from '@lathwork/model';
import { HAZARD_LIMITS as LIMIT } from '../data/hazards.js';
import type { SourceId } from '../sources/bibliography.js';

/** Everything a rule may look at. */
export interface SafetyInput {
  site: SiteInputs;
  structure: StructureInputs;
  geometry: GeometryResult;
  stock: readonly StockItem[];
  climate: ClimateResult;
  wind: WindResult;
  snow: SnowResult;
  anchorage: AnchorageResult;
  thermal: ThermalResult;
}

/** What a rule found: one entry for each thing it is about. */
export interface Finding {
  subject?: string;
  params?: Note['params'];
  /** Where one finding weighs more than the rule's usual. */
  severity?: Note['severity'];
}

/** One rule as data: when it holds, how much it weighs, before which task it must be read, and who says so. */
export interface SafetyRule {
  code: string;
  severity: Note['severity'];
  beforeTask: TaskId;
  sourceId: SourceId;
  /** Empty: the condition does not hold and nothing is printed. */
  when: (input: SafetyInput) => Finding[];
}

/** Glass that breaks into shards. Unknown glass counts as annealed until somebody finds the etched mark. */
const breaksIntoShards = (o: PlacedOpening): boolean => o.glazing === 'annealed' || o.glazing === 'unknown' || o.glazing === 'wired';
const isGlass = (o: PlacedOpening): boolean => o.glazing !== 'none' && o.glazing !== 'plastic';

const nearDoor = (o: PlacedOpening, all: readonly PlacedOpening[]): boolean =>
  all.some(
    (d) =>
      d.kind === 'door' &&
      d.wall === o.wall &&
      d.openingId !== o.openingId &&
      o.offsetM < d.offsetM + d.widthM + LIMIT.nearDoorM &&
      d.offsetM < o.offsetM + o.widthM + LIMIT.nearDoorM,
  );

const where = (o: PlacedOpening, all: readonly PlacedOpening[]): string[] => {
  const large = o.largestPaneM2 === 'unknown' ? o.areaM2 > LIMIT.paneAreaM2 : o.largestPaneM2 > LIMIT.paneAreaM2;
  return [
    ...(o.kind === 'door' ? ['inDoor'] : []),
    ...(o.kind !== 'door' && o.bottomM < LIMIT.paneBottomM ? ['low'] : []),
    ...(o.kind !== 'door' && o.bottomM >= LIMIT.overheadBottomM ? ['overhead'] : []),
    ...(o.kind !== 'door' && o.bottomM < LIMIT.nearDoorBottomM && nearDoor(o, all) ? ['besideDoor'] : []),
    ...(large ? ['large'] : []),
  ];
};

const glass = (input: SafetyInput): Finding[] =>
  input.geometry.openings.filter(breaksIntoShards).flatMap((o) => {
    const places = where(o, input.geometry.openings);
    return places.length > 0 ? [{ subject: o.openingId, params: { glazing: o.glazing, places } }] : [];
  });

const openingsWhere =
  (test: (o: PlacedOpening) => boolean) =>
  (input: SafetyInput): Finding[] =>
    input.geometry.openings.filter(test).map((o) => ({ subject: o.openingId, params: { glazing: o.glazing } }));

/** One finding for all things with a hazard, their tags in the params: a page of the same sentence is not read. */
const hazard =
  (...kinds: Hazard[]) =>
  (input: SafetyInput): Finding[] => {
    const tags = input.stock.filter((i) => i.hazards.some((h) => kinds.includes(h))).map((i) => i.tag);
    return tags.length > 0 ? [{ params: { tags, itemsCount: tags.length } }] : [];
  };

const once = (holds: boolean, params: Note['params'] = {}, severity?: Note['severity']): Finding[] =>
  holds ? [{ params, ...(severity ? { severity } : {}) }] : [];

const digs = (s: StructureInputs): boolean => ['auger', 'drivenPipe', 'concretePier', 'groundPost'].includes(s.anchor.kind);
const holdsWater = (s: StructureInputs): boolean => s.waterStores.length > 0 || (s.anchor.kind === 'ballast' && s.anchor.ballastIsWater);

const hottest = ({ thermal }: SafetyInput): number => Math.max(-Infinity, ...thermal.clearDays.map((d) => d.insideHighC.p50));

const GLASS: SafetyRule[] = [
  {
    code: 'safety.glass-forbidden-by-site',
    severity: 'stop',
    beforeTask: 'permission',
    sourceId: 'JUDGEMENT-MATERIALS',
    when: (i) => (i.site.glassRule === 'forbidden' ? openingsWhere(isGlass)(i) : []),
  },
  {
    code: 'safety.glass-rule-unknown',
    severity: 'ask',
    beforeTask: 'permission',
    sourceId: 'JUDGEMENT-MATERIALS',
    when: (i) => once(i.site.glassRule === 'unknown' && i.geometry.openings.some(isGlass)),
  },
  { code: 'safety.glass-hazardous-place', severity: 'stop', beforeTask: 'windows', sourceId: 'IRC-R308', when: glass },
  {
    code: 'safety.glass-unknown-as-annealed',
    severity: 'ask',
    beforeTask: 'intake',
    sourceId: 'CFR-1201',
    when: openingsWhere((o) => o.glazing === 'unknown'),
  },
  {
    code: 'safety.glass-handling',
    severity: 'care',
    beforeTask: 'windows',
    sourceId: 'IRC-R308',
    when: (i) => once(i.geometry.openings.some(isGlass) || hazard('glassAnnealed', 'glassUnknown')(i).length > 0),
  },
  {
    code: 'safety.glass-tempered-never-cut',
    severity: 'care',
    beforeTask: 'windows',
    sourceId: 'IRC-R308',
    when: openingsWhere((o) => o.glazing === 'tempered'),
  },
];

const MATERIAL: SafetyRule[] = [
  { code: 'safety.lead-paint', severity: 'care', beforeTask: 'denail', sourceId: 'EPA-RRP', when: hazard('leadPaintAssumed', 'leadPaintFound') },
  { code: 'safety.treated-wood-old', severity: 'stop', beforeTask: 'denail', sourceId: 'EPA-CCA', when: hazard('treatedWoodOld') },
  { code: 'safety.creosote', severity: 'stop', beforeTask: 'denail', sourceId: 'JUDGEMENT-MATERIALS', when: hazard('creosote') },
  { code: 'safety.treated-wood-copper', severity: 'care', beforeTask: 'sill', sourceId: 'UCONN-FILM', when: hazard('treatedWoodCopper') },
  { code: 'safety.barrel-contents-unknown', severity: 'stop', beforeTask: 'water', sourceId: 'JUDGEMENT-MATERIALS', when: hazard('barrelContentsUnknown') },
  { code: 'safety.asbestos-putty', severity: 'stop', beforeTask: 'intake', sourceId: 'EUOSHA-ASBESTOS', when: hazard('asbestosPuttyPossible') },
  { code: 'safety.mould', severity: 'care', beforeTask: 'intake', sourceId: 'JUDGEMENT-MATERIALS', when: hazard('mould') },
  { code: 'safety.nails', severity: 'care', beforeTask: 'denail', sourceId: 'LOW-COST-PRACTICE', when: hazard('nails') },
  { code: 'safety.film-touches-pvc', severity: 'care', beforeTask: 'mainCover', sourceId: 'UCONN-FILM', when: hazard('pvcContact') },
];

const WORK: SafetyRule[] = [
  {
    code: 'safety.locate-before-digging',
    severity: 'care',
    beforeTask: 'stakeOut',
    sourceId: 'LOCATE-811',
    when: (i) => once(digs(i.structure), { waitD: LIMIT.locateWaitD, handDigM: LIMIT.handDigM, anchor: i.structure.anchor.kind }),
  },
  {
    code: 'safety.ladder',
    severity: 'care',
    beforeTask: 'erect',
    sourceId: 'OSHA-LADDER',
    when: (i) => once(i.geometry.ridgeM > LIMIT.ladderFromM, { ridgeM: i.geometry.ridgeM, windMaxMPerS: LIMIT.ladderWindMPerS }),
  },
  {
    code: 'safety.film-in-wind',
    severity: 'care',
    beforeTask: 'mainCover',
    sourceId: 'COVER-DAY',
    when: (i) => once(i.geometry.coverM2 > 0, { windMaxMPerS: LIMIT.filmWindMPerS, sheetM2: Math.max(0, ...i.geometry.filmSheets.map((f) => f.cutAreaM2)) }),
  },
  {
    code: 'safety.lift-together',
    severity: 'care',
    beforeTask: 'doors',
    sourceId: 'NIOSH-LIFT',
    when: (i) =>
      i.geometry.openings
        .filter((o) => o.kind === 'door' && o.areaM2 * LIMIT.doorMassPerM2Kg > LIMIT.liftAloneKg)
        .map((o) => ({ subject: o.openingId, params: { massKg: o.areaM2 * LIMIT.doorMassPerM2Kg, aloneKg: LIMIT.liftAloneKg } })),
  },
  {
    code: 'safety.fill-barrels-in-place',
    severity: 'care',
    beforeTask: 'water',
    sourceId: 'NIOSH-LIFT',
    when: (i) => once(holdsWater(i.structure), { fullKg: LIMIT.barrelFullKg }),
  },
  {
    code: 'safety.tube-ends',
    severity: 'care',
    beforeTask: 'smooth',
    sourceId: 'LOW-COST-PRACTICE',
    when: (i) => once(i.geometry.members.some((m) => m.role === 'leg' || m.role === 'bow' || m.role === 'rafter')),
  },
  {
    code: 'safety.unbraced',
    severity: 'care',
    beforeTask: 'brace',
    sourceId: 'LOW-COST-PRACTICE',
    when: (i) => once(i.structure.braced === 'none' || i.structure.braced === 'unknown', { braced: i.structure.braced }),
  },
  {
    code: 'safety.rust-pitted',
    severity: 'stop',
    beforeTask: 'cleanFrame',
    sourceId: 'JUDGEMENT-MATERIALS',
    when: (i) => once(i.structure.tube.rust === 'pitted'),
  },
];

const USE: SafetyRule[] = [
  { code: 'safety.electricity-near-water', severity: 'care', beforeTask: 'water', sourceId: 'NEC-210', when: (i) => once(holdsWater(i.structure)) },
  {
    code: 'safety.no-unvented-heater',
    severity: 'care',
    beforeTask: 'finish',
    sourceId: 'OSU-AEX790',
    // Whoever expects frost inside will think of a heater.
    when: (i) =>
      once(
        i.thermal.designNights.some((n) => n.variant === 'bare' && n.insideLowC.p50 < 0) || (i.climate.designNight !== null && i.climate.designNight.lowC < 0),
      ),
  },
  {
    code: 'safety.heat-inside',
    severity: 'care',
    beforeTask: 'finish',
    sourceId: 'OSHA-HEAT',
    when: (i) => once(hottest(i) > LIMIT.heatInsideC, { insideC: hottest(i), dangerC: LIMIT.heatDangerC, dangerous: hottest(i) > LIMIT.heatDangerC }),
  },
  {
    code: 'safety.clear-snow-from-outside',
    severity: 'care',
    beforeTask: 'finish',
    sourceId: 'SNOW-CLEARING',
    when: (i) =>
      once(
        (i.snow.groundPa ?? 0) > 0 || i.site.snow === 'unknown',
        i.snow.clearAt === null ? { atAnyBuildUp: true } : { atAnyBuildUp: false, lightM: i.snow.clearAt.lightM, wetM: i.snow.clearAt.wetM },
      ),
  },
  {
    code: 'safety.unrated-for-wind',
    severity: 'stop',
    beforeTask: 'anchors',
    sourceId: 'FEMA-P85',
    when: (i) => once(!i.anchorage.rated, { anchor: i.structure.anchor.kind }),
  },
  {
    code: 'safety.one-way-out',
    severity: 'care',
    beforeTask: 'endFrames',
    sourceId: 'JUDGEMENT-MATERIALS',
    when: (i) =>
      once(i.geometry.openings.filter((o) => o.kind === 'door' && o.fits).length < 2, {
        doorsCount: i.geometry.openings.filter((o) => o.kind === 'door' && o.fits).length,
      }),
  },
];

const PAPER: SafetyRule[] = [
  {
    code: 'safety.anchors-forbidden-but-needed',
    severity: 'ask',
    beforeTask: 'permission',
    sourceId: 'FEMA-P85',
    when: (i) =>
      once(i.site.permanentAnchors === 'forbidden' && (i.wind.totalUpliftN ?? 1) > 0, {
        anchor: i.structure.anchor.kind,
        removable: ['drivenPipe', 'auger', 'ballast'],
      }),
  },
  {
    code: 'safety.anchor-rule-unknown',
    severity: 'ask',
    beforeTask: 'permission',
    sourceId: 'JUDGEMENT-MATERIALS',
    when: (i) => once(i.site.permanentAnchors === 'unknown'),
  },
  {
    code: 'safety.permit-ask',
    severity: 'ask',
    beforeTask: 'permission',
    sourceId: 'IRC-R105',
    when: (i) =>
      once(true, {
        areaM2: i.geometry.footprintM2,
        usualLimitM2: LIMIT.permitAreaM2,
        olderLimitM2: LIMIT.permitAreaOldM2,
        overLimit: i.geometry.footprintM2 > LIMIT.permitAreaM2,
      }),
  },
  {
    code: 'safety.host-roof-sheds-snow',
    severity: 'stop',
    beforeTask: 'permission',
    sourceId: 'SNOW-CLEARING',
    when: (i) => once(i.structure.hostWall?.roofShedsOntoIt === 'yes' && ((i.snow.groundPa ?? 0) > 0 || i.site.snow === 'unknown')),
  },
];

/** All rules, in the order in which a build meets them. */
export const SAFETY_RULES: readonly SafetyRule[] = [...PAPER, ...GLASS, ...MATERIAL, ...WORK, ...USE];
