import type { ClimateResult, GeometryResult, HourlyDay, SiteInputs, StructureInputs, Wishes } from '@lathwork/model';
import type { ThermalInput } from '@lathwork/calc';

/** Small hand-made inputs for the thermal room, independent of the climate and geometry rooms. */

const RAD = Math.PI / 180;
const MID_DAY = [17, 47, 75, 105, 135, 162, 198, 228, 258, 288, 318, 344];

/** A clear day: a sine of air temperature (low at 6, high at 15 solar time) and a simple clear-sky sun (Meinel air mass form). */
export const clearDay = (x: { month: number; latitudeDeg: number; lowC: number; highC: number; dewPointC?: number; dark?: boolean }): HourlyDay => {
  const day = MID_DAY[x.month - 1] ?? 17;
  const dec = 23.45 * Math.sin(((360 * (284 + day)) / 365) * RAD) * RAD;
  const lat = x.latitudeDeg * RAD;
  const hours = Array.from({ length: 24 }, (_, h) => h + 0.5);
  const up = hours.map((h) => Math.sin(lat) * Math.sin(dec) + Math.cos(lat) * Math.cos(dec) * Math.cos((h - 12) * 15 * RAD));
  const beam = up.map((s) => (s > 0.02 && !x.dark ? 1353 * Math.pow(0.7, Math.pow(1 / s, 0.678)) : 0));
  const diffuse = up.map((s, h) => (beam[h]! > 0 ? 40 + 60 * s : 0));
  const rise = (h: number) => (h >= 6 && h <= 15 ? Math.sin((Math.PI / 2) * ((h - 6) / 9)) : Math.cos((Math.PI / 2) * (((h - 15 + 24) % 24) / 15)));
  return {
    month: x.month,
    dayOfYear: day,
    airC: hours.map((h) => x.lowC + (x.highC - x.lowC) * Math.max(0, rise(h === 5.5 || h === 6.5 ? 6 : h))),
    dewPointC: x.dewPointC ?? x.lowC - 1,
    globalWPerM2: up.map((s, h) => beam[h]! * Math.max(0, s) + diffuse[h]!),
    beamNormalWPerM2: beam,
    diffuseWPerM2: diffuse,
  };
};

/** Twelve months as a sine about a mean, `swingK` half the difference of July and January means. */
export const climate = (x: { latitudeDeg: number; meanC: number; swingK: number; rangeK: number; designLowC: number; clearMonth: number }): ClimateResult => {
  const mean = (m: number) => x.meanC - x.swingK * Math.cos(((m - 1) * 30 * RAD) as number) * (x.latitudeDeg < 0 ? -1 : 1);
  const months = Array.from({ length: 12 }, (_, i) => i + 1);
  const coldest = x.latitudeDeg < 0 ? 7 : 1;
  const sunny = (m: number) => clearDay({ month: m, latitudeDeg: x.latitudeDeg, lowC: mean(m) - x.rangeK / 2, highC: mean(m) + x.rangeK / 2 + 3 });
  const cold = (m: number) => clearDay({ month: m, latitudeDeg: x.latitudeDeg, lowC: mean(m) - x.rangeK / 2 - 6, highC: mean(m) + x.rangeK / 2 - 4 });
  return {
    hemisphere: x.latitudeDeg < 0 ? 'south' : 'north',
    chartStartMonth: x.latitudeDeg < 0 ? 2 : 8,
    months: months.map((m) => ({
      month: m,
      hasRecord: true,
      tMaxC: mean(m) + x.rangeK / 2,
      tMinC: mean(m) - x.rangeK / 2,
      dewPointC: mean(m) - x.rangeK / 2,
      coldNightC: mean(m) - x.rangeK / 2 - 6,
      coldNightBasis: 'estimated',
      sunnyDayMaxC: mean(m) + x.rangeK / 2 + 3,
      daylightH: 12,
      sunMJPerM2: 12,
      sunBasis: 'temperatureRange',
      clearSkyMJPerM2: 15,
    })),
    monthsWithRecordCount: 12,
    coldestMonth: coldest,
    hottestMonth: coldest === 1 ? 7 : 1,
    designNight: {
      basis: 'monthlyMeanLessSpread',
      lowC: x.designLowC,
      doubtK: 3,
      day: clearDay({ month: coldest, latitudeDeg: x.latitudeDeg, lowC: x.designLowC, highC: x.designLowC + 11 }),
    },
    clearDay: sunny(x.clearMonth),
    clearDays: months.map(sunny),
    coldNights: months.map(cold),
    stationDistanceM: 1000,
    heightDifferenceM: 0,
    heightCorrectionK: 0,
    stationFit: 'near',
  };
};

const vent = (
  openingId: string,
  wall: 'front' | 'back',
  bottomM: number,
  widthM: number,
  heightM: number,
  freeOpenFrac: number,
): GeometryResult['openings'][number] => ({
  openingId,
  kind: openingId.startsWith('D') ? 'door' : 'vent',
  wall,
  offsetM: 0.5,
  bottomM,
  widthM,
  heightM,
  hinge: 'left',
  freeOpenFrac,
  glazing: 'plastic',
  largestPaneM2: 'unknown',
  stockTag: null,
  fits: true,
  headroomM: 2,
  areaM2: widthM * heightM,
  freeAreaM2: widthM * heightM * freeOpenFrac,
  corners: [],
});

/** The 10 x 20 ft canopy of the worked heat-loss example: walls 6.5 ft, ridge 9.2 ft. */
export const canopyGeometry = (
  openings: GeometryResult['openings'] = [vent('D1', 'front', 0, 0.9, 1.9, 1), vent('V1', 'back', 1.5, 0.9, 0.6, 0.5)],
): GeometryResult => {
  const w = 3.048;
  const l = 6.096;
  const e = 1.981;
  const r = 2.804;
  const rafter = Math.hypot(w / 2, r - e);
  const tilt = Math.atan2(r - e, w / 2) / RAD;
  const end = w * e + (w * (r - e)) / 2;
  const face = (faceId: GeometryResult['faces'][number]['faceId'], role: 'roof' | 'wall', azimuthDeg: number, tiltDeg: number, grossM2: number) => ({
    faceId,
    role,
    azimuthDeg,
    tiltDeg,
    grossM2,
    openingsM2: 0,
    netM2: grossM2,
    corners: [],
  });
  return {
    footprintM2: w * l,
    perimeterM: 2 * (w + l),
    volumeM3: end * l,
    coverM2: 2 * end + 2 * l * (e + rafter),
    eaveM: e,
    ridgeM: r,
    meanRoofHeightM: (e + r) / 2,
    roofSlopeDeg: tilt,
    girthM: 2 * (e + rafter),
    groundDiagonalM: Math.hypot(w, l),
    closureResidualM: 0,
    bowSpacingMaxM: 3.05,
    faces: [
      face('front', 'wall', 90, 90, end),
      face('back', 'wall', 270, 90, end),
      face('left', 'wall', 180, 90, l * e),
      face('right', 'wall', 0, 90, l * e),
      face('roofLeft', 'roof', 180, tilt, l * rafter),
      face('roofRight', 'roof', 0, tilt, l * rafter),
    ],
    posts: [],
    members: [],
    bowProfile: [],
    openings,
    filmSheets: [],
    battenRuns: [],
  };
};

export const canopy = (change: Partial<StructureInputs> = {}): StructureInputs => ({
  structureId: '00000000-0000-4000-8000-000000000001',
  kind: 'gableCanopy',
  widthM: 3.048,
  lengthM: 6.096,
  eaveM: 1.981,
  ridgeM: 2.804,
  frontFacesDeg: 90,
  bowsAtM: [0, 3.048, 6.096],
  measuredRaftersM: null,
  tube: { shape: 'round', outsideMm: 38, wallMm: 1.5, rust: 'surface' },
  frameMassKg: 60,
  frameStockTag: null,
  braced: 'endBays',
  openings: [],
  cover: { film: 'polyethylene', thicknessMm: 0.15, ageY: 0, rollWidthM: 6, wrapM: 0.45, secondFilm: false, innerCover: false, shadeFrac: 0 },
  floor: 'soil',
  floorMoist: true,
  bedsM2: 8,
  airLeaks: 'ordinary',
  waterStores: [],
  anchor: {
    kind: 'auger',
    perPostCount: 1,
    depthM: 0.7,
    diameterM: 0.1,
    installTorqueNm: 'unknown',
    pulledToN: 'unknown',
    ballastKg: 'unknown',
    ballastIsWater: false,
  },
  hostWall: null,
  ...change,
});

export const site = (change: Partial<SiteInputs> = {}): SiteInputs => ({
  siteId: '00000000-0000-4000-8000-000000000002',
  latitudeDeg: 40,
  longitudeDeg: -105,
  elevationM: 300,
  timeZone: 'UTC',
  exposure: 'C',
  nearHilltop: 'no',
  soilClass: '3',
  frostDepthM: 'unknown',
  wind: 'unknown',
  snow: 'unknown',
  fallAcrossM: 0,
  fallAlongM: 0,
  stormWindFromDeg: 'unknown',
  permanentAnchors: 'allowed',
  glassRule: 'allowed',
  shadedFrac: 0,
  ...change,
});

export const wishes = (change: Partial<Wishes> = {}): Wishes => ({
  purpose: 'overwintering',
  nightTargetC: 0,
  crops: ['lettuce', 'kale', 'tomato'],
  ventsOpenedBy: 'someoneAtNine',
  ...change,
});

/** A cold inland place at 40 N: design night -14 C, annual mean 9 C, sunny March. */
export const thermalInput = (change: Partial<ThermalInput> = {}): ThermalInput => ({
  site: site(),
  climate: climate({ latitudeDeg: 40, meanC: 9, swingK: 12, rangeK: 13, designLowC: -14, clearMonth: 4 }),
  structure: canopy(),
  geometry: canopyGeometry(),
  wishes: wishes(),
  seed: 7,
  ...change,
});
