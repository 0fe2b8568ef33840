import { PEOPLE_REQUESTS } from './people.js';

/**
 * The requests that the description shows: one invented garden, from its first key to its printed plan. They belong together
 * and are replayed in order by a test, with these ids replaced by those that the server gave.
 */
export const EXAMPLE_IDS = {
  garden: '019a1c3e-0000-7000-8000-000000000001',
  site: '019a1c3e-0000-7000-8000-000000000002',
  structure: '019a1c3e-0000-7000-8000-000000000003',
  build: '019a1c3e-0000-7000-8000-000000000004',
  plan: '019a1c3e-0000-7000-8000-000000000005',
} as const;

type Json = Readonly<Record<string, unknown>>;

const STOCK = {
  kind: 'door',
  material: 'door',
  grade: 'B',
  hazards: ['leadPaintAssumed'],
  count: 1,
  widthMm: '32 in',
  heightMm: '80 in',
  thicknessMm: 44,
  lengthMm: null,
  usableLengthMm: null,
  volumeL: null,
  ageY: null,
  replacement: { minor: 9000, currency: 'USD' },
} as const;

const SITE: Json = {
  name: 'East field at the bend',
  latitudeDeg: 39.93,
  longitudeDeg: -104.58,
  elevationM: '5380 ft',
  timeZone: 'America/Denver',
  exposure: 'C',
  nearHilltop: 'no',
  soilClass: '4A',
  frostDepthM: '36 in',
  wind: {
    speedMPerS: '105 mph',
    averaging: 'gust3s',
    level: 'ultimate',
    codeEdition: 'ASCE 7-16',
    riskCategory: 'I',
    source: 'hazard map reading, invented for this example',
    readOn: '2026-02-12',
  },
  snow: {
    loadPa: '30 psf',
    surface: 'ground',
    level: 'service',
    codeEdition: 'ASCE 7-16',
    source: 'county snow table reading, invented for this example',
    readOn: '2026-02-12',
  },
  fallAcrossM: 0.08,
  fallAlongM: -0.12,
  stormWindFromDeg: 315,
  permanentAnchors: 'allowed',
  glassRule: 'allowed',
  shadedFrac: 0.05,
};

const STRUCTURE: Json = {
  name: 'Chicory plot: gable canopy',
  kind: 'gableCanopy',
  widthM: '10 ft',
  lengthM: '20 ft',
  eaveM: '6\' 6"',
  ridgeM: '9 ft',
  frontFacesDeg: 90,
  bowsAtM: [0, 2.032, 4.064, 6.096],
  measuredRaftersM: { leftM: 1.704, rightM: 1.702 },
  tube: { shape: 'round', outsideMm: 34.9, wallMm: 1.5, rust: 'surface' },
  frameMassKg: 95,
  frameStockTag: 'RB-001',
  braced: 'endBays',
  openings: [
    {
      openingId: 'D1',
      kind: 'door',
      wall: 'front',
      offsetM: 1.09,
      bottomM: 0,
      widthM: 0.865,
      heightM: 2.08,
      hinge: 'right',
      freeOpenFrac: 1,
      glazing: 'none',
      largestPaneM2: 0,
      stockTag: 'RB-003',
    },
  ],
  cover: { film: 'polyethylene', thicknessMm: '6 mil', ageY: 0, rollWidthM: '28 ft', wrapM: 0.457, secondFilm: false, innerCover: true, shadeFrac: 0 },
  floor: 'mulch',
  floorMoist: true,
  bedsM2: 9,
  airLeaks: 'ordinary',
  waterStores: [{ stockTag: 'RB-011', volumeL: '55 gal', count: 3, colour: 'dark' }],
  anchor: {
    kind: 'auger',
    perPostCount: 2,
    depthM: '30 in',
    diameterM: 0.15,
    installTorqueNm: 'unknown',
    pulledToN: 5600,
    ballastKg: 'unknown',
    ballastIsWater: false,
  },
  hostWall: null,
};

const BUILD: Json = {
  name: 'Chicory plot: gable canopy',
  siteId: EXAMPLE_IDS.site,
  structureId: EXAMPLE_IDS.structure,
  wishes: { purpose: 'longerSeason', nightTargetC: '32 degF', crops: ['spinach', 'kale', 'lettuce', 'tomato'], ventsOpenedBy: 'someoneAtNine' },
  crew: { people: 5, experience: 'mixed', startOn: '2026-04-18' },
  budget: {
    currency: 'USD',
    capMinor: 130_000,
    consumablesFrac: null,
    consumablesReason: null,
    contingencyFrac: null,
    contingencyReason: null,
    inKind: [{ label: 'Two loaned step ladders and a drill', value: { minor: 6000, currency: 'USD' } }],
    exchangeRates: [],
  },
};

/** One example for each operation that takes a body, by its id. */
export const REQUEST_EXAMPLES: Readonly<Record<string, Json>> = {
  ...PEOPLE_REQUESTS,
  createGarden: {
    name: 'Rabbitbrush Bend Community Garden',
    locale: 'en-US',
    currency: 'USD',
    unitSystem: 'us',
    invented: true,
    keyName: 'coordinator',
  },
  updateGarden: { name: 'Rabbitbrush Bend Garden', unitSystem: 'metric' },
  createKey: { name: 'tool shed tablet', scopes: ['stock:read', 'stock:write'], expiresOn: null },
  createSite: SITE,
  updateSite: { frostDepthM: '40 in', shadedFrac: '10 %' },
  createStructure: STRUCTURE,
  updateStructure: { lengthM: '20 ft', cover: { ageY: 1 } },
  createStockItem: { tag: 'RB-101', ...STOCK },
  createStockIntake: {
    items: [
      { tag: 'RB-003', ...STOCK },
      {
        ...{ tag: 'RB-011', kind: 'barrel', material: 'barrel.water', grade: 'A', hazards: [], count: 3 },
        ...{ widthMm: null, heightMm: null, thicknessMm: null, lengthMm: null, usableLengthMm: null },
        ...{ volumeL: '55 gal', ageY: null, replacement: null },
      },
    ],
  },
  updateStockItem: { grade: 'C', hazards: ['leadPaintFound'] },
  createBuild: BUILD,
  updateBuild: { wishes: { nightTargetC: 2 }, budget: { capMinor: 150_000 } },
  createClaim: { tag: 'RB-003' },
  createPrice: {
    material: 'film.greenhouse',
    unit: 'm2',
    packAmount: 260.1,
    packPrice: { minor: 51_500, currency: 'USD' },
    pieceWidthM: '28 ft',
    pieceLengthM: '100 ft',
    readOn: '2026-03-02',
    supplier: 'growing supplies',
  },
  updatePrice: { packPrice: { minor: 49_900, currency: 'USD' }, readOn: '2026-03-20' },
  createExchangeRate: { from: 'EUR', to: 'USD', rate: 1.09, readOn: '2026-03-02' },
  createPlan: { buildId: EXAMPLE_IDS.build, asOf: '2026-03-15' },
  createSpendRequest: { purpose: 'Two rolls of batten tape and a box of screws', amount: { minor: 4250, currency: 'USD' }, buildId: EXAMPLE_IDS.build },
  decideSpendRequest: { decision: 'approved', remark: 'Keep the receipt for the grant.' },
  createReview: { decision: 'changesWanted', reviewer: 'Sage, safety lead', comment: 'Tempered glass only above the beds.' },
  createAsBuilt: {
    observedOn: '2026-05-02',
    measures: [
      { subject: 'D1 opening width', lengthM: '34 in', pulledToN: null, remark: null },
      { subject: 'anchor at post A1', lengthM: null, pulledToN: 5600, remark: 'held for one minute' },
    ],
    remark: 'Built by five people on one weekend.',
  },
  createWebhook: { url: 'https://notices.example/garden', eventTypes: ['plan.ready', 'plan.stale', 'document.ready'], description: 'board at the gate' },
  updateWebhook: { eventTypes: ['plan.ready', 'plan.failed'] },
  exportGarden: { withFiles: false },
  createDocument: { planId: EXAMPLE_IDS.plan, kind: 'planBook', language: 'en', paper: 'letter', units: 'us' },
};

/** What can be sent as a parameter, by its place and name. */
export const PARAMETER_EXAMPLES: Readonly<Record<string, unknown>> = {
  'query near': '39.93,-104.58',
  'query elevationM': 1640,
  'query limit': 20,
  'query fromRevision': 1,
  'query toRevision': 1,
  'query showsPeople': false,
  'header If-Match': '"1"',
  'header Idempotency-Key': '7b0c1a52-6f0e-4c52-9d2e-0d8f3f1f6a11',
  'header Prefer': 'wait=10',
};
