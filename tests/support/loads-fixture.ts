import type { GeometryResult, Point, SiteInputs, StructureInputs } from '@lathwork/model';

const FT = 0.3048;
const LB = 0.453_592_37;
const PSF = 47.880_26;
const MPH = 0.447_04;

const uuid = (n: number): string => `01900000-0000-7000-8000-${String(n).padStart(12, '0')}`;

/** The site of the integrated example: 105 mph gust, exposure C, 25 psf of ground snow. */
export const exampleSite = (over: Partial<SiteInputs> = {}): SiteInputs => ({
  siteId: uuid(1),
  latitudeDeg: 41,
  longitudeDeg: -95,
  elevationM: 300,
  timeZone: 'America/Chicago',
  exposure: 'C',
  nearHilltop: 'no',
  soilClass: '4A',
  frostDepthM: 0.6,
  wind: {
    speedMPerS: 105 * MPH,
    averaging: 'gust3s',
    level: 'ultimate',
    codeEdition: 'ASCE 7-16',
    riskCategory: 'I',
    source: 'map of the standard',
    readOn: '2026-01-01',
  },
  snow: { loadPa: 25 * PSF, surface: 'ground', level: 'service', codeEdition: 'ASCE 7-16', source: 'map of the standard', readOn: '2026-01-01' },
  fallAcrossM: 0,
  fallAlongM: 0,
  stormWindFromDeg: 'unknown',
  permanentAnchors: 'allowed',
  glassRule: 'allowed',
  shadedFrac: 0,
  ...over,
});

/** The frame of the integrated example: 10 x 20 ft, gable of 20 degrees, eave 6.5 ft, three frames at 10 ft, 450 lb. */
export const exampleStructure = (over: Partial<StructureInputs> = {}): StructureInputs => ({
  structureId: uuid(2),
  kind: 'gableCanopy',
  widthM: 10 * FT,
  lengthM: 20 * FT,
  eaveM: 6.5 * FT,
  ridgeM: (6.5 + 5 * Math.tan((20 * Math.PI) / 180)) * FT,
  frontFacesDeg: 90,
  bowsAtM: [0, 10 * FT, 20 * FT],
  measuredRaftersM: null,
  tube: { shape: 'round', outsideMm: 1.375 * 25.4, wallMm: 0.058 * 25.4, rust: 'none' },
  frameMassKg: 450 * LB,
  frameStockTag: null,
  braced: 'endBays',
  openings: [],
  cover: { film: 'polyethylene', thicknessMm: 0.15, ageY: 0, rollWidthM: 7.3, wrapM: 0.3, secondFilm: false, innerCover: false, shadeFrac: 0 },
  floor: 'soil',
  floorMoist: true,
  bedsM2: 10,
  airLeaks: 'ordinary',
  waterStores: [],
  anchor: {
    kind: 'auger',
    perPostCount: 1,
    depthM: 0.76,
    diameterM: 0.1,
    installTorqueNm: 250 * FT * LB * 9.806_65,
    pulledToN: 'unknown',
    ballastKg: 'unknown',
    ballastIsWater: false,
  },
  hostWall: null,
  ...over,
});

const profileOf = (s: StructureInputs): Point[] => {
  const at = (xM: number, zM: number): Point => ({ xM, yM: 0, zM });
  const { widthM: w, eaveM: e, ridgeM: r } = s;
  if (s.kind === 'gableCanopy') return [at(0, 0), at(0, e), at(w / 2, r), at(w, e), at(w, 0)];
  if (s.kind === 'leanTo') return [at(0, 0), at(0, e), at(w, r), at(w, 0)];
  const rise = r - e;
  const radius = ((w / 2) ** 2 + rise ** 2) / (2 * rise);
  const phi = 2 * Math.atan2(rise, w / 2);
  const arc = Array.from({ length: 33 }, (_, i) =>
    at(w / 2 + radius * Math.sin(-phi + (2 * phi * i) / 32), r - radius + radius * Math.cos(-phi + (2 * phi * i) / 32)),
  );
  return e > 0 ? [at(0, 0), ...arc, at(w, 0)] : arc;
};

/** A geometry worked by hand for the loads rooms: outline, posts, battens and nailers; the rest is left empty. */
export const geometryFixture = (s: StructureInputs): GeometryResult => {
  const rise = s.ridgeM - s.eaveM;
  const base = s.kind === 'leanTo' ? s.widthM : s.widthM / 2;
  const slopeM = Math.hypot(base, rise);
  const bows = [...s.bowsAtM].sort((a, b) => a - b);
  const bays = bows.slice(1).map((y, i) => y - (bows[i] ?? 0));
  const posts = (['A', 'B'] as const).flatMap((row) =>
    bows.map((y, i) => {
      const from = i === 0 ? 0 : (y + (bows[i - 1] ?? 0)) / 2;
      const to = i === bows.length - 1 ? s.lengthM : (y + (bows[i + 1] ?? 0)) / 2;
      return { postId: `${row}${i + 1}`, row, number: i + 1, at: { xM: row === 'A' ? 0 : s.widthM, yM: y, zM: 0 }, tributaryM: to - from };
    }),
  );
  const along = (id: string, role: 'nailer' | 'leg' | 'rafter', lengthM: number) => ({
    memberId: id,
    role,
    from: { xM: 0, yM: 0, zM: 0 },
    to: { xM: 0, yM: lengthM, zM: 0 },
    lengthM,
  });
  return {
    footprintM2: s.widthM * s.lengthM,
    perimeterM: 2 * (s.widthM + s.lengthM),
    volumeM3: 1,
    coverM2: 1,
    eaveM: s.eaveM,
    ridgeM: s.ridgeM,
    meanRoofHeightM: (s.eaveM + s.ridgeM) / 2,
    roofSlopeDeg: (Math.atan2(rise, base) * 180) / Math.PI,
    girthM: 2 * (s.eaveM + slopeM),
    groundDiagonalM: Math.hypot(s.widthM, s.lengthM),
    closureResidualM: 0,
    bowSpacingMaxM: Math.max(...bays),
    faces: [],
    posts,
    members: [
      ...bows.flatMap((_, i) => [
        along(`legA${i}`, 'leg', s.eaveM),
        along(`legB${i}`, 'leg', s.eaveM),
        along(`rafA${i}`, 'rafter', slopeM),
        along(`rafB${i}`, 'rafter', slopeM),
      ]),
      along('nailA', 'nailer', s.lengthM),
      along('nailB', 'nailer', s.lengthM),
    ],
    bowProfile: profileOf(s),
    openings: [],
    filmSheets: [],
    battenRuns: [
      { runId: 'baseA', along: 'base', zone: 'field', lengthM: s.lengthM - 2 * 0.9 },
      { runId: 'baseA-corner', along: 'base', zone: 'corner', lengthM: 0.9 },
      { runId: 'eaveA', along: 'eave', zone: 'edge', lengthM: s.lengthM },
      { runId: 'front', along: 'endProfile', zone: 'corner', lengthM: 2 * slopeM },
    ],
  };
};
