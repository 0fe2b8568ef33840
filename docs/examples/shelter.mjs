// What plan-and-print.mjs plans: an invented garden, written as people write it. A quantity is a number in the unit of
// its field's name, or a text with its own unit; what nobody has measured yet is "unknown", never a guess.
// @ts-check

/** @typedef {import('@lathwork/client').Schemas} Schemas */

/** @type {Schemas['GardenRequest']} */
export const garden = { name: 'Tool Library Garden', locale: 'en-US', currency: 'USD', unitSystem: 'us', invented: true };

/** @type {Schemas['SiteRequest']} */
export const site = {
  name: 'Behind the tool library',
  latitudeDeg: 40.06,
  longitudeDeg: -82.44,
  elevationM: '920 ft',
  exposure: 'B',
  nearHilltop: 'no',
  soilClass: '4A',
  frostDepthM: '32 in',
  // Copied from the sheet of the building office. Leave it "unknown" when you have none: the plan then says "not assessed".
  wind: {
    speedMPerS: '105 mph',
    averaging: 'gust3s',
    level: 'ultimate',
    codeEdition: 'ASCE 7-16',
    riskCategory: 'I',
    source: 'wind map reading, invented for this example',
    readOn: '2026-02-20',
  },
  snow: {
    loadPa: '20 psf',
    surface: 'ground',
    level: 'service',
    codeEdition: 'ASCE 7-16',
    source: 'snow map reading, invented for this example',
    readOn: '2026-02-20',
  },
  fallAcrossM: '1 in',
  fallAlongM: '-2 in',
  stormWindFromDeg: 270,
  permanentAnchors: 'allowed',
  glassRule: 'unknown',
  shadedFrac: 0.1,
};

/** @type {Schemas['StockItemRequest'][]} */
export const stock = [
  thing('EX-1', 'frame', 'frame.tubeSet', { widthMm: '10 ft', lengthMm: '20 ft' }),
  thing('EX-2', 'door', 'door', { widthMm: '30 in', heightMm: '78 in', thicknessMm: '1.375 in' }),
  thing('EX-3', 'window', 'window', { widthMm: '28 in', heightMm: '30 in', thicknessMm: '1.375 in', hazards: ['glassUnknown'] }),
  thing('EX-4', 'barrel', 'barrel.water', { volumeL: '55 gal', hazards: ['barrelContentsUnknown'] }),
  ...Array.from({ length: 8 }, (_, i) =>
    thing(`EX-1${i}`, 'board', 'board.38x89', { widthMm: 89, thicknessMm: 38, lengthMm: '8 ft', usableLengthMm: '7 ft 6 in', hazards: ['nails'] }),
  ),
];

/**
 * @param {string} tag
 * @param {Schemas['StockItemRequest']['kind']} kind
 * @param {Schemas['StockItemRequest']['material']} material
 * @param {Partial<Schemas['StockItemRequest']>} more
 * @returns {Schemas['StockItemRequest']}
 */
function thing(tag, kind, material, more) {
  const unmeasured = { widthMm: null, heightMm: null, thicknessMm: null, lengthMm: null, usableLengthMm: null, volumeL: null, ageY: null };
  return { tag, kind, material, grade: 'B', hazards: [], count: 1, replacement: null, ...unmeasured, ...more };
}

/** @type {Schemas['StructureRequest']} */
export const structure = {
  kind: 'roundArch',
  widthM: '10 ft',
  lengthM: '20 ft',
  eaveM: '4 ft',
  ridgeM: '7 ft 6 in',
  frontFacesDeg: 180,
  bowsAtM: ['0 ft', '4 ft', '8 ft', '12 ft', '16 ft', '20 ft'],
  measuredRaftersM: null,
  tube: { shape: 'round', outsideMm: '1.315 in', wallMm: '0.083 in', rust: 'surface' },
  frameMassKg: '210 lb',
  frameStockTag: 'EX-1',
  braced: 'endBays',
  openings: [
    {
      openingId: 'D1',
      kind: 'door',
      wall: 'front',
      offsetM: '3 ft 8 in',
      bottomM: 0,
      widthM: '32 in',
      heightM: '80 in',
      hinge: 'right',
      freeOpenFrac: 1,
      glazing: 'none',
      largestPaneM2: 0,
      stockTag: 'EX-2',
    },
    {
      openingId: 'W1',
      kind: 'window',
      wall: 'back',
      offsetM: '3 ft 9 in',
      bottomM: '3 ft',
      widthM: '30 in',
      heightM: '32 in',
      hinge: 'top',
      freeOpenFrac: 0.35,
      glazing: 'unknown',
      largestPaneM2: 'unknown',
      stockTag: 'EX-3',
    },
  ],
  cover: {
    film: 'polyethylene',
    thicknessMm: '6 mil',
    ageY: 0,
    rollWidthM: '20 ft',
    wrapM: '18 in',
    secondFilm: false,
    innerCover: true,
    shadeFrac: 0,
  },
  floor: 'mulch',
  floorMoist: true,
  bedsM2: '100 ft2',
  airLeaks: 'ordinary',
  waterStores: [{ stockTag: 'EX-4', volumeL: '50 gal', count: 1, colour: 'dark' }],
  anchor: {
    kind: 'drivenPipe',
    perPostCount: 1,
    depthM: '30 in',
    diameterM: '1.66 in',
    installTorqueNm: 'unknown',
    pulledToN: 'unknown',
    ballastKg: 'unknown',
    ballastIsWater: false,
  },
  hostWall: null,
};

/** @type {Schemas['PriceRequest'][]} */
export const prices = [
  { ...read(), material: 'film.greenhouse', unit: 'm2', packAmount: 37.16, packPrice: usd(119.0), pieceWidthM: '20 ft', pieceLengthM: '20 ft' },
  { ...read(), material: 'film.innerCover', unit: 'm2', packAmount: 46.45, packPrice: usd(24.5), pieceWidthM: '10 ft', pieceLengthM: '50 ft' },
  { ...read(), material: 'batten.19x38', unit: 'm', packAmount: 2.44, packPrice: usd(2.38), pieceWidthM: '1.5 in', pieceLengthM: '8 ft' },
  { ...read(), material: 'board.38x89', unit: 'm', packAmount: 2.44, packPrice: usd(3.65), pieceWidthM: '3.5 in', pieceLengthM: '8 ft' },
  { ...read(), material: 'screw.batten', unit: 'each', packAmount: 100, packPrice: usd(11.2), pieceWidthM: null, pieceLengthM: null },
  { ...read(), material: 'anchor.pipe', unit: 'each', packAmount: 1, packPrice: usd(9.4), pieceWidthM: null, pieceLengthM: null },
];

/** @param {number} dollars @returns {Schemas['MoneyRequest']} */
function usd(dollars) {
  return { minor: Math.round(dollars * 100), currency: 'USD' };
}

function read() {
  return { readOn: '2026-03-02', supplier: 'building yard' };
}

/** @type {Omit<Schemas['BuildRequest'], 'siteId' | 'structureId'>} */
export const build = {
  name: 'Seedling house',
  wishes: { purpose: 'seedStarting', nightTargetC: '40 degF', crops: ['lettuce', 'kale', 'tomato'], ventsOpenedBy: 'someoneAtNine' },
  crew: { people: 4, experience: 'mixed', startOn: '2026-03-28' },
  budget: {
    currency: 'USD',
    capMinor: 60_000,
    consumablesFrac: null,
    consumablesReason: null,
    contingencyFrac: null,
    contingencyReason: null,
    inKind: [],
  },
};
