import type { ClimateMonth, CutPart, HourlyDay, Member, Note, PlanInputs, PlanResult, Point, Stage, TakeOffLine, Task, ThermalMonth } from '@lathwork/model';
import { sampleInputs } from './sample-inputs.js';

/**
 * A whole plan result made by hand, for tests of the report alone. Its figures are invented: they are neither
 * computed nor evidence of anything.
 */
const around = (p50: number, half: number): { p10: number; p50: number; p90: number } => ({ p10: p50 - half, p50, p90: p50 + half });
const hours = <T>(of: (hour: number) => T): T[] => Array.from({ length: 24 }, (_, hour) => of(hour));
const at = (xM: number, yM: number, zM: number): Point => ({ xM, yM, zM });

const day = (month: number, low: number, high: number): HourlyDay => ({
  month,
  dayOfYear: month * 30 - 15,
  airC: hours((h) => low + ((high - low) * (1 - Math.cos(((h - 4) * Math.PI) / 12))) / 2),
  dewPointC: low - 2,
  globalWPerM2: hours((h) => Math.max(0, 700 * Math.sin(((h - 6) * Math.PI) / 12))),
  beamNormalWPerM2: hours((h) => (h > 6 && h < 18 ? 600 : 0)),
  diffuseWPerM2: hours((h) => (h > 6 && h < 18 ? 90 : 0)),
});

function geometry(inputs: PlanInputs): PlanResult['geometry'] {
  const { widthM: w, lengthM: l, eaveM: e, ridgeM: r, bowsAtM, openings } = inputs.structure;
  const members: Member[] = bowsAtM.flatMap((y, i) => [
    { memberId: `LA${i + 1}`, role: 'leg' as const, from: at(0, y, 0), to: at(0, y, e), lengthM: e },
    { memberId: `LB${i + 1}`, role: 'leg' as const, from: at(w, y, 0), to: at(w, y, e), lengthM: e },
    { memberId: `RA${i + 1}`, role: 'rafter' as const, from: at(0, y, e), to: at(w / 2, y, r), lengthM: 1.704 },
    { memberId: `RB${i + 1}`, role: 'rafter' as const, from: at(w, y, e), to: at(w / 2, y, r), lengthM: 1.704 },
  ]);
  members.push(
    { memberId: 'RI1', role: 'ridge', from: at(w / 2, 0, r), to: at(w / 2, l, r), lengthM: l },
    { memberId: 'EA1', role: 'eave', from: at(0, 0, e), to: at(0, l, e), lengthM: l },
    { memberId: 'EB1', role: 'eave', from: at(w, 0, e), to: at(w, l, e), lengthM: l },
    { memberId: 'X1', role: 'brace', from: at(0, 0, 0), to: at(0, bowsAtM[1] ?? 2, e), lengthM: 2.84 },
    { memberId: 'X2', role: 'brace', from: at(w, 0, 0), to: at(w, bowsAtM[1] ?? 2, e), lengthM: 2.84 },
  );
  const front = [at(0, 0, 0), at(w, 0, 0), at(w, 0, e), at(w / 2, 0, r), at(0, 0, e)];
  return {
    footprintM2: w * l,
    perimeterM: 2 * (w + l),
    volumeM3: w * l * ((e + r) / 2),
    coverM2: 59.4,
    eaveM: e,
    ridgeM: r,
    meanRoofHeightM: (e + r) / 2,
    roofSlopeDeg: 26.6,
    girthM: 7.37,
    groundDiagonalM: Math.hypot(w, l),
    closureResidualM: 0,
    bowSpacingMaxM: 2.032,
    faces: [
      { faceId: 'front', role: 'wall', azimuthDeg: 90, tiltDeg: 90, grossM2: 7.2, openingsM2: 2.92, netM2: 4.28, corners: front },
      { faceId: 'back', role: 'wall', azimuthDeg: 270, tiltDeg: 90, grossM2: 7.2, openingsM2: 0.24, netM2: 6.96, corners: front.map((p) => ({ ...p, yM: l })) },
      {
        faceId: 'left',
        role: 'wall',
        azimuthDeg: 180,
        tiltDeg: 90,
        grossM2: 12.08,
        openingsM2: 0,
        netM2: 12.08,
        corners: [at(0, 0, 0), at(0, l, 0), at(0, l, e), at(0, 0, e)],
      },
      {
        faceId: 'right',
        role: 'wall',
        azimuthDeg: 0,
        tiltDeg: 90,
        grossM2: 12.08,
        openingsM2: 0,
        netM2: 12.08,
        corners: [at(w, 0, 0), at(w, l, 0), at(w, l, e), at(w, 0, e)],
      },
      {
        faceId: 'roofLeft',
        role: 'roof',
        azimuthDeg: 180,
        tiltDeg: 26.6,
        grossM2: 10.4,
        openingsM2: 0,
        netM2: 10.4,
        corners: [at(0, 0, e), at(0, l, e), at(w / 2, l, r), at(w / 2, 0, r)],
      },
      {
        faceId: 'roofRight',
        role: 'roof',
        azimuthDeg: 0,
        tiltDeg: 26.6,
        grossM2: 10.4,
        openingsM2: 0,
        netM2: 10.4,
        corners: [at(w, 0, e), at(w, l, e), at(w / 2, l, r), at(w / 2, 0, r)],
      },
    ],
    posts: bowsAtM.flatMap((y, i) =>
      (['A', 'B'] as const).map((row) => ({
        postId: `${row}${i + 1}`,
        row,
        number: i + 1,
        at: at(row === 'A' ? 0 : w, y, 0),
        tributaryM: i === 0 || i === bowsAtM.length - 1 ? 1.016 : 2.032,
      })),
    ),
    members,
    bowProfile: [at(0, 0, 0), at(0, 0, e), at(w / 2, 0, r), at(w, 0, e), at(w, 0, 0)],
    openings: openings.map((o) => ({
      ...o,
      fits: true,
      headroomM: 0.2,
      areaM2: o.widthM * o.heightM,
      freeAreaM2: o.widthM * o.heightM * o.freeOpenFrac,
      corners: [
        at(o.offsetM, o.wall === 'back' ? l : 0, o.bottomM),
        at(o.offsetM + o.widthM, o.wall === 'back' ? l : 0, o.bottomM),
        at(o.offsetM + o.widthM, o.wall === 'back' ? l : 0, o.bottomM + o.heightM),
        at(o.offsetM, o.wall === 'back' ? l : 0, o.bottomM + o.heightM),
      ],
    })),
    filmSheets: [
      { sheetId: 'F1', covers: 'overTheTop', lengthM: 6.7, widthM: 7.97, strips: 2, seams: 1, seamLapM: 0.3, cutAreaM2: 56.3 },
      { sheetId: 'F2', covers: 'front', lengthM: 3.65, widthM: 3.35, strips: 1, seams: 0, seamLapM: 0, cutAreaM2: 12.2 },
      { sheetId: 'F3', covers: 'back', lengthM: 3.65, widthM: 3.35, strips: 1, seams: 0, seamLapM: 0, cutAreaM2: 12.2 },
    ],
    battenRuns: [
      { runId: 'base-left', along: 'base', zone: 'edge', lengthM: l },
      { runId: 'base-right', along: 'base', zone: 'edge', lengthM: l },
      { runId: 'eave-left', along: 'eave', zone: 'field', lengthM: l },
      { runId: 'eave-right', along: 'eave', zone: 'field', lengthM: l },
      { runId: 'end-front', along: 'endProfile', zone: 'corner', lengthM: 7.37 },
      { runId: 'end-back', along: 'endProfile', zone: 'corner', lengthM: 7.37 },
    ],
  };
}

function climate(inputs: PlanInputs): PlanResult['climate'] {
  const months: ClimateMonth[] = inputs.climate.months.map((m, i) => ({
    month: i + 1,
    hasRecord: m.tMinC !== null,
    tMaxC: m.tMaxC,
    tMinC: m.tMinC,
    dewPointC: m.tMinC === null ? null : m.tMinC - 2,
    coldNightC: m.absoluteMinMeanC,
    coldNightBasis: m.absoluteMinMeanC === null ? 'none' : 'recorded',
    sunnyDayMaxC: m.tMaxC === null ? null : m.tMaxC + 6,
    daylightH: 12 + 3.5 * Math.sin(((i - 2.3) * Math.PI) / 6),
    sunMJPerM2: m.tMaxC === null ? null : 14 + 9 * Math.sin(((i - 2.3) * Math.PI) / 6),
    sunBasis: m.tMaxC === null ? 'none' : 'sunshineHours',
    clearSkyMJPerM2: 19 + 11 * Math.sin(((i - 2.3) * Math.PI) / 6),
  }));
  const recorded = months.filter((m) => m.hasRecord);
  return {
    hemisphere: 'north',
    chartStartMonth: 8,
    months,
    monthsWithRecordCount: recorded.length,
    coldestMonth: 1,
    hottestMonth: 7,
    designNight: { basis: 'annualExtremeMinimum', lowC: -34, doubtK: 2, day: day(1, -34, -22) },
    clearDay: day(4, 3, 19),
    clearDays: recorded.map((m) => day(m.month, m.tMinC ?? 0, m.sunnyDayMaxC ?? 0)),
    coldNights: recorded.map((m) => day(m.month, m.coldNightC ?? 0, m.tMaxC ?? 0)),
    stationDistanceM: inputs.climate.distanceM,
    heightDifferenceM: inputs.site.elevationM - inputs.climate.stationElevationM,
    heightCorrectionK: -0.06,
    stationFit: 'near',
  };
}

function thermal(c: PlanResult['climate']): PlanResult['thermal'] {
  const months: ThermalMonth[] = c.months.map((m) => ({
    month: m.month,
    outsideLowC: m.coldNightC,
    insideLowC: m.coldNightC === null ? null : around(m.coldNightC + 1, 1),
    innerCoverLowC: m.coldNightC === null ? null : around(m.coldNightC + 4, 1.5),
    outsideHighC: m.sunnyDayMaxC,
    closedHighC: m.sunnyDayMaxC === null ? null : around(m.sunnyDayMaxC + 23, 5),
    openedHighC: m.sunnyDayMaxC === null ? null : around(m.sunnyDayMaxC + 6, 2),
  }));
  const curve = (low: number, high: number): PlanResult['thermal']['designNights'][number]['curve'] => {
    const air = day(1, low, high).airC;
    return { outsideC: air, p10C: air.map((t) => t + 0.2), p50C: air.map((t) => t + 1), p90C: air.map((t) => t + 2) };
  };
  return {
    verdict: 'marginal',
    draws: 200,
    seed: 7,
    nodes: 6,
    stepMin: 15,
    designNights: [
      { variant: 'bare', outsideLowC: -34, insideLowC: around(-33, 1), leafLowC: around(-34, 1), liftK: around(1, 1), curve: curve(-34, -22) },
      { variant: 'innerCover', outsideLowC: -34, insideLowC: around(-30, 1.5), leafLowC: around(-30.5, 1.5), liftK: around(4, 1.5), curve: curve(-34, -22) },
    ],
    clearDays: [
      { variant: 'closed', outsideHighC: 19, insideHighC: around(42, 5), riseK: around(23, 5), curve: curve(3, 19) },
      { variant: 'opened', outsideHighC: 19, insideHighC: around(25, 2), riseK: around(6, 2), curve: curve(3, 19) },
    ],
    months,
    crops: [
      { crop: 'lettuce', kind: 'damageBegins', limitC: -2, belowFrac: 1 },
      { crop: 'spinach', kind: 'usuallyKilled', limitC: -11, belowFrac: 1 },
      { crop: 'tomato', kind: 'damageBegins', limitC: 0, belowFrac: 1 },
      { crop: 'tomato', kind: 'heatHurts', limitC: 38, belowFrac: null },
    ],
    drivers: [
      { input: 'airLeaks', rankRatio: -0.62 },
      { input: 'sky', rankRatio: 0.41 },
    ],
    vents: { freeM2: 2.3, topM2: 0.1, lowM2: 2.2, floorFrac: 0.124, wantedFrac: 0.2 },
    lossWPerK: 412,
    leakageAirChangesPerH: 1.5,
    largestResidualW: 0.0004,
  };
}

function loads(g: PlanResult['geometry']): Pick<PlanResult, 'wind' | 'snow' | 'anchorage' | 'fastening'> {
  const uplift = (postId: string): number => (/[14]$/.test(postId) ? 900 : 1720);
  return {
    wind: {
      verdict: 'marginal',
      standard: 'ASCE 7-16',
      gustMPerS: 46.9,
      conversion: 'as given',
      velocityPressurePa: 980,
      meanRoofHeightM: g.meanRoofHeightM,
      deadLoadN: 900,
      cases: [
        {
          caseId: 'normalFromLeft/enclosed',
          direction: 'normalFromLeft',
          enclosure: 'enclosed',
          upliftN: 12_400,
          shearN: 9100,
          overturningNm: 17_000,
          surfaces: [{ surface: 'roofLeft', cp: -0.9, netPa: -940 }],
        },
        {
          caseId: 'parallel/partiallyEnclosed',
          direction: 'parallel',
          enclosure: 'partiallyEnclosed',
          upliftN: 17_500,
          shearN: 5200,
          overturningNm: 21_000,
          surfaces: [{ surface: 'roofLeft', cp: -0.9, netPa: -1260 }],
        },
      ],
      posts: g.posts.map((p) => ({ postId: p.postId, upliftN: uplift(p.postId), horizontalN: 700, governedBy: 'parallel/partiallyEnclosed' })),
      totalUpliftN: 17_500,
      liftsUnanchoredAtMPerS: 10.6,
      zones: [
        { zone: 'field', surface: 'roof', suctionPa: 620 },
        { zone: 'edge', surface: 'roof', suctionPa: 890 },
        { zone: 'corner', surface: 'roof', suctionPa: 1240 },
      ],
    },
    snow: {
      verdict: 'notAssessed',
      standard: 'ASCE 7-16',
      groundPa: 1680,
      flatRoofPa: 1410,
      slopedPa: 1300,
      unbalancedPa: null,
      factors: { exposure: 1, thermal: 1.2, importance: 0.8, slope: 0.92 },
      bowMomentNm: 820,
      bowCapacityNm: null,
      clearAt: null,
      driftFlag: false,
    },
    anchorage: {
      verdict: 'marginal',
      rated: true,
      anchorKind: 'auger',
      capacityEachN: 1800,
      factorOfSafety: 1.5,
      capacityBasis: 'pullCheck',
      posts: g.posts.map((p) => ({
        postId: p.postId,
        demandN: uplift(p.postId),
        capacityN: 1800,
        demandRatio: uplift(p.postId) / 1800,
        verdict: uplift(p.postId) > 1620 ? ('marginal' as const) : ('noRedFlag' as const),
      })),
      wouldHold: [
        { kind: 'augerTorque', torqueNm: 160, massKg: null, count: null },
        { kind: 'ballast', torqueNm: null, massKg: 351, count: 2 },
        { kind: 'concretePier', torqueNm: null, massKg: 240, count: null },
      ],
      slidingForceN: 5600,
      worstPostId: 'A2',
      worstDemandN: 1720,
    },
    fastening: {
      verdict: 'noRedFlag',
      screw: { diameterMm: 4.2, lengthMm: 38, threadInWoodMm: 19, gauge: '8' },
      woodGravityRatio: 0.42,
      zones: [
        { zone: 'field', suctionPa: 620, lineLoadNPerM: 480, screwCapacityN: 330, spacingMm: 300, cappedBy: 'practice', runM: 12.2, screws: 42 },
        { zone: 'edge', suctionPa: 890, lineLoadNPerM: 910, screwCapacityN: 330, spacingMm: 250, cappedBy: 'strength', runM: 12.2, screws: 50 },
        { zone: 'corner', suctionPa: 1240, lineLoadNPerM: 1260, screwCapacityN: 330, spacingMm: 200, cappedBy: 'strength', runM: 14.7, screws: 75 },
      ],
      screwsCount: 167,
      battenM: 39.1,
      tubeScrewsCount: 64,
    },
  };
}

const line = (
  lineId: string,
  group: TakeOffLine['group'],
  material: TakeOffLine['material'],
  mark: string | null,
  unit: TakeOffLine['unit'],
  need: number,
  have: number,
  cash: number | null,
  tag: string | null,
): TakeOffLine => ({
  lineId,
  group,
  material,
  mark,
  unit,
  need,
  wasteFrac: 0.1,
  wasteReason: 'cuttingEnds',
  wanted: need * 1.1,
  reclaimed: tag === null ? [] : [{ tag, amount: have, worth: { minor: have * 1000, currency: 'USD' } }],
  toBuy: Math.max(0, need * 1.1 - have),
  packs: have >= need ? 0 : 1,
  packAmount: have >= need ? null : need * 1.2,
  boughtAmount: have >= need ? 0 : need * 1.2,
  cash: cash === null ? null : { minor: cash * 100, currency: 'USD' },
  priceId: null,
  supplier: cash === null || cash === 0 ? null : 'Yard on the corner',
  priceReadOn: cash === null || cash === 0 ? null : '2026-03-12',
  priceStale: false,
});

function materials(inputs: PlanInputs): Pick<PlanResult, 'takeOff' | 'cutting' | 'budget'> {
  const lines: TakeOffLine[] = [
    line('frame', 'frame', 'frame.tubeSet', 'T1', 'set', 1, 1, 0, 'FR-1'),
    line('film', 'film', 'film.greenhouse', 'F1', 'm2', 81, 0, 96, null),
    line('inner', 'film', 'film.innerCover', 'F2', 'm2', 20, 0, 18, null),
    line('studs', 'timber', 'board.38x89', 'C2', 'm', 24, 12.6, 38, 'BD-1'),
    line('sill', 'timber', 'board.38x140', 'P1', 'm', 18.3, 0, null, null),
    line('batten', 'timber', 'batten.19x38', 'C1', 'm', 39.1, 0, 44, null),
    line('door', 'openings', 'door', 'D1', 'each', 1, 1, 0, 'DR-1'),
    line('windows', 'openings', 'window', 'W1', 'each', 2, 2, 0, 'WN-1'),
    line('vent', 'openings', 'vent.panel', 'V1', 'each', 1, 0, 22, null),
    line('anchors', 'anchors', 'anchor.auger', 'G1', 'each', 8, 0, 124, null),
    line('brace', 'anchors', 'brace.cable', 'X1', 'm', 23, 0, 30, null),
    line('screws', 'fixings', 'screw.batten', 'H1', 'each', 167, 0, 15, null),
    line('tube-screws', 'fixings', 'screw.tube', 'H2', 'each', 64, 0, 12, null),
    line('barrels', 'water', 'barrel.water', 'M1', 'each', 3, 3, 0, 'BR-1'),
    line('thermo', 'sundries', 'thermometer.minMax', null, 'each', 1, 0, 14, null),
  ];
  const part = (letter: string, use: CutPart['use'], forOpening: string | null, lengthMm: number, count: number): CutPart => ({
    letter,
    partId: `${use}-${letter}`,
    use,
    forOpening,
    material: 'board.38x89',
    lengthMm,
    count,
  });
  const parts = [
    part('A', 'header', 'D1', 940, 2),
    part('B', 'jamb', 'D1', 2096, 2),
    part('C', 'stud', 'W1', 1981, 2),
    part('D', 'openingSill', 'W1', 711, 1),
    part('E', 'openingSill', 'W2', 610, 1),
  ];
  return {
    takeOff: { lines, unpricedCount: 1 },
    cutting: {
      parts,
      boards: [
        { boardId: 'BD-1/1', stockTag: 'BD-1', material: 'board.38x89', lengthMm: 2300, kerfMm: 3, cuts: [{ letter: 'B', lengthMm: 2096 }], offcutMm: 201 },
        { boardId: 'BD-1/2', stockTag: 'BD-1', material: 'board.38x89', lengthMm: 2300, kerfMm: 3, cuts: [{ letter: 'B', lengthMm: 2096 }], offcutMm: 201 },
        {
          boardId: 'new/1',
          stockTag: null,
          material: 'board.38x89',
          lengthMm: 2440,
          kerfMm: 3,
          cuts: [
            { letter: 'A', lengthMm: 940 },
            { letter: 'A', lengthMm: 940 },
          ],
          offcutMm: 554,
        },
        { boardId: 'new/2', stockTag: null, material: 'board.38x89', lengthMm: 2440, kerfMm: 3, cuts: [{ letter: 'C', lengthMm: 1981 }], offcutMm: 456 },
        { boardId: 'new/3', stockTag: null, material: 'board.38x89', lengthMm: 2440, kerfMm: 3, cuts: [{ letter: 'C', lengthMm: 1981 }], offcutMm: 456 },
      ],
      unplaced: [{ ...part('D', 'openingSill', 'W1', 711, 1) }],
      method: 'firstFitDecreasing',
      wasteFrac: 0.16,
      lowerBoundBoards: 3,
      boughtBoards: 3,
    },
    budget: {
      verdict: 'withinCap',
      currency: 'USD',
      lines: [
        { group: 'frame', reclaimedMinor: 9000, cashMinor: 0, inKindMinor: 0 },
        { group: 'film', reclaimedMinor: 0, cashMinor: 11_400, inKindMinor: 0 },
        { group: 'timber', reclaimedMinor: 3600, cashMinor: 8200, inKindMinor: 0 },
        { group: 'openings', reclaimedMinor: 9000, cashMinor: 2200, inKindMinor: 0 },
        { group: 'anchors', reclaimedMinor: 0, cashMinor: 15_400, inKindMinor: 0 },
        { group: 'fixings', reclaimedMinor: 0, cashMinor: 2700, inKindMinor: 0 },
        { group: 'water', reclaimedMinor: 3000, cashMinor: 0, inKindMinor: 0 },
        { group: 'sundries', reclaimedMinor: 0, cashMinor: 1400, inKindMinor: 0 },
        { group: 'consumables', reclaimedMinor: 0, cashMinor: 3300, inKindMinor: 0 },
        { group: 'contingency', reclaimedMinor: 0, cashMinor: 6700, inKindMinor: 0 },
        { group: 'inKind', reclaimedMinor: 0, cashMinor: 0, inKindMinor: 6000 },
      ],
      consumablesFrac: 0.08,
      contingencyFrac: 0.15,
      reclaimedMinor: 24_600,
      cashMinor: 51_300,
      inKindMinor: 6000,
      cashLowMinor: 44_600,
      cashHighMinor: 58_000,
      capMinor: inputs.budget.capMinor,
      overCapMinor: 0,
      unpricedCount: 1,
      otherCurrencies: [],
      oldestPriceOn: '2026-03-12',
    },
  };
}

const task = (
  taskId: Task['taskId'],
  number: number,
  after: Task['after'],
  dayOf: Task['day'],
  likelyH: number,
  windMaxMPerS: number | null,
  tools: string[],
  needs: Task['gate']['needs'] = [],
): Task => ({
  taskId,
  number,
  after,
  day: dayOf,
  crewMin: 2,
  crewBest: 4,
  personHours: { lowH: likelyH / 2, likelyH, highH: likelyH * 2 },
  clockH: likelyH / 4,
  earliestStartH: number,
  critical: true,
  gate: { windMaxMPerS, dry: windMaxMPerS !== null, airMinC: null, airMaxC: null, groundNot: [], needs },
  tools,
});

function schedule(): PlanResult['schedule'] {
  const tasks = [
    task('permission', 1, [], 'paper', 2, null, ['phone']),
    task('intake', 2, [], 'prep', 6, null, ['tape', 'tags']),
    task('denail', 3, ['intake'], 'prep', 6, null, ['pryBar', 'saw']),
    task('stakeOut', 4, ['permission'], 'ground', 6, null, ['string', 'tape', 'waterLevel']),
    task('anchors', 5, ['stakeOut'], 'ground', 2, null, ['bar', 'springScale'], ['locateTicket']),
    task('erect', 6, ['anchors'], 'frame', 4, 6.7, ['ladder', 'sockets']),
    task('brace', 7, ['erect'], 'frame', 4, 6.7, ['drill', 'clamps']),
    task('doors', 8, ['brace'], 'frame', 3, null, ['shims', 'level']),
    task('mainCover', 9, ['doors'], 'cover', 6, 3.1, ['ropes', 'ladder', 'clamps'], ['helpersOnSite']),
    task('battens', 10, ['mainCover'], 'cover', 4, 3.1, ['drill']),
    task('finish', 11, ['battens'], 'finish', 2, null, ['thermometer'], ['sunnyHour']),
  ];
  const stage = (stageNumber: number, stageId: string, dayOf: Stage['day'], ids: Stage['tasks'], parts: Stage['parts']): Stage => ({
    stageNumber,
    stageId,
    day: dayOf,
    tasks: ids,
    parts,
  });
  return {
    tasks,
    stages: [
      stage(1, 'paper', 'paper', ['permission'], []),
      stage(2, 'prep', 'prep', ['intake', 'denail'], []),
      stage(3, 'ground', 'ground', ['stakeOut', 'anchors'], [{ mark: 'G1', lineId: 'anchors' }]),
      stage(
        4,
        'frame',
        'frame',
        ['erect', 'brace'],
        [
          { mark: 'T1', lineId: 'frame' },
          { mark: 'X1', lineId: 'brace' },
        ],
      ),
      stage(
        5,
        'doors',
        'frame',
        ['doors'],
        [
          { mark: 'D1', lineId: 'door' },
          { mark: 'W1', lineId: 'windows' },
        ],
      ),
      stage(
        6,
        'cover',
        'cover',
        ['mainCover', 'battens'],
        [
          { mark: 'F1', lineId: 'film' },
          { mark: 'C1', lineId: 'batten' },
        ],
      ),
      stage(7, 'finish', 'finish', ['finish'], [{ mark: null, lineId: 'thermo' }]),
    ],
    totalHours: { lowH: 22.5, likelyH: 45, highH: 90 },
    criticalPath: ['permission', 'stakeOut', 'anchors', 'erect', 'brace', 'doors', 'mainCover', 'battens', 'finish'],
    workDays: { low: 3, likely: 5, high: 8 },
    crewMin: 2,
    crewBest: 4,
  };
}

const note = (code: string, severity: Note['severity'], room: Note['room'], params: Note['params'] = {}, extra: Partial<Note> = {}): Note => ({
  code,
  severity,
  room,
  params,
  ...extra,
});

/** Stock and people as the sample inputs have them. */
export function sampleResult(inputs: PlanInputs = sampleInputs()): PlanResult {
  const g = geometry(inputs);
  const c = climate(inputs);
  return {
    schemaVersion: 1,
    engineVersion: 'sample-0.1.0',
    planId: inputs.planId,
    revision: inputs.revision,
    geometry: g,
    climate: c,
    thermal: thermal(c),
    ...loads(g),
    ...materials(inputs),
    schedule: schedule(),
    notes: [
      note('sample.unworded-code', 'ask', 'snow', { tubeWallMm: 1.2 }, { subject: 'T1', beforeTask: 'erect' }),
      note('sample.other-code', 'care', 'wind', { gustMPerS: 46.9 }, { beforeTask: 'mainCover' }),
    ],
    risks: [
      { room: 'wind', code: 'wind.lifts' },
      { room: 'thermal', code: 'thermal.cooks' },
      { room: 'snow', code: 'snow.flattens' },
    ],
    reviewBlocked: false,
    sources: [
      {
        sourceId: 'ASCE-7-16',
        title: 'Minimum Design Loads and Associated Criteria for Buildings and Other Structures',
        publisher: 'American Society of Civil Engineers',
        year: 2017,
        supersededBy: 'ASCE 7-22',
        quality: 'published',
      },
      {
        sourceId: 'NDS-2018',
        title: 'National Design Specification for Wood Construction',
        publisher: 'American Wood Council',
        year: 2018,
        quality: 'published',
      },
      { sourceId: 'JUDGE-CREW', title: 'Crew sizes and hours of small volunteer builds', publisher: 'this project', year: 2026, quality: 'judgement' },
      { sourceId: 'MEM-1', title: 'Heat limits of fruiting crops', publisher: 'extension practice', year: null, quality: 'memory' },
    ],
  };
}
