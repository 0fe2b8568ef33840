import type { Hazard, MaterialKey, StructureKind, TaskId, Verdict } from '@lathwork/model';

/** Words that many pages share. Short sentences, plain words, one word for one thing. */
export const common = {
  page: 'Page {page} of {pages}',
  footer: '{number} rev {revision}, {date}',
  invented: 'Invented example: do not build from it',
  draft: 'DRAFT',
  reviewed: 'REVIEWED',
  draftFoot: 'Draft: not yet reviewed',
  reviewedFoot: 'Reviewed, not by an engineer',
  tape: 'Check: this bar is 100 mm long at 100 % print',
  tapeSheet: 'Check: this bar is 100 mm long at 100 % print. Build to the written sizes.',
  tapeLabel: 'Tape along the top of the page: the striped part is 100 mm long when printed at 100 percent.',
  continued: 'continued',
  goTo: 'Go to {target}',
  noRecord: 'no record',
  none: '\u2013',
  unknown: 'unknown',
  notAssessed: 'not assessed',
  priceUnknown: 'price unknown',
  low: 'low',
  likely: 'likely',
  high: 'high',
  stop: 'STOP',
  care: 'CARE',
  ask: 'ASK',
  note: 'NOTE',
  yes: 'yes',
  no: 'no',
  planService: 'plan service',
  notByEngineer: 'not by an engineer',
  partOf: 'Part {part} of {parts}',
} as const;

export const VERDICT_WORDS: Record<Verdict, string> = {
  doesNotPass: 'does not pass',
  marginal: 'marginal: get help',
  noRedFlag: 'no red flag in this screening',
  notAssessed: 'not assessed',
};

export const KIND_WORDS: Record<StructureKind, string> = { gableCanopy: 'Gable shelter', roundArch: 'Round-arch tunnel', leanTo: 'Lean-to shelter' };

export const MONTHS = ['January', 'February', 'March', 'April', 'May', 'June', 'July', 'August', 'September', 'October', 'November', 'December'] as const;
export const MONTHS_SHORT = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'] as const;
export const COMPASS = ['north', 'north-east', 'east', 'south-east', 'south', 'south-west', 'west', 'north-west'] as const;

export const MATERIAL_WORDS: Record<MaterialKey, string> = {
  'frame.tubeSet': 'Frame tubes, one set',
  'film.greenhouse': 'Greenhouse film',
  'film.utility': 'Utility film',
  'film.innerCover': 'Row cover for the crop',
  'batten.19x38': 'Batten 19 \u00d7 38 mm (3/4 \u00d7 1 1/2 in)',
  'board.38x89': 'Board 38 \u00d7 89 mm (1 1/2 \u00d7 3 1/2 in)',
  'board.38x140': 'Board 38 \u00d7 140 mm (1 1/2 \u00d7 5 1/2 in)',
  'sill.89x140': 'Sill timber 89 \u00d7 140 mm (3 1/2 \u00d7 5 1/2 in)',
  'screw.batten': 'Batten screws, outdoor',
  'screw.tube': 'Self-drilling tube screws',
  'screw.framing': 'Framing screws, outdoor',
  'strap.tube': 'Tube straps',
  'anchor.auger': 'Screw-in ground anchor',
  'anchor.pipe': 'Driven pipe anchor',
  'anchor.concreteBag': 'Bagged concrete',
  'anchor.sandbag': 'Ballast bags',
  'brace.cable': 'Bracing strap or cable',
  'tape.contact': 'Tape between tube and film',
  'paint.white': 'White water-based paint',
  door: 'Door',
  'door.hardware': 'Door hinges and latch',
  window: 'Window',
  'window.hardware': 'Window hinges and stay',
  'vent.panel': 'Vent panel',
  'seal.strip': 'Seal strip',
  'mesh.rodent': 'Rodent mesh',
  gravel: 'Gravel',
  'fabric.ground': 'Ground fabric',
  'barrel.water': 'Water barrel',
  rope: 'Rope',
  'thermometer.minMax': 'Min-max thermometer',
  'shade.cloth': 'Shade cloth',
  consumables: 'Blades, bits, gloves',
  contingency: 'Reserve',
};

export const GROUP_WORDS = {
  frame: 'Frame',
  film: 'Film and covers',
  timber: 'Timber and battens',
  openings: 'Doors, windows, vents',
  anchors: 'Anchors and braces',
  fixings: 'Screws, straps, tape',
  ground: 'Ground',
  water: 'Water',
  sundries: 'Sundries',
  consumables: 'Blades, bits, gloves',
  contingency: 'Reserve',
  inKind: 'Given or lent',
} as const;

export const AMOUNT_WORDS = { each: '', m: 'm', m2: 'm\u00b2', m3: 'm\u00b3', L: 'L', kg: 'kg', set: 'set', lump: '' } as const;

export const HAZARD_WORDS: Record<Hazard, string> = {
  leadPaintAssumed: 'old paint: treat it as lead',
  leadPaintFound: 'lead paint found',
  treatedWoodOld: 'old treated wood: never burn or sand',
  treatedWoodCopper: 'copper-treated wood: keep off the film',
  creosote: 'creosote: keep away from food and skin',
  glassUnknown: 'glass of unknown kind: treat it as glass that cuts',
  glassAnnealed: 'plain glass: it breaks into blades',
  barrelContentsUnknown: 'barrel contents unknown: do not cut or fill',
  mould: 'mould: mask and wash',
  asbestosPuttyPossible: 'putty may hold asbestos: do not sand',
  nails: 'nails: pull or bend every one',
  pvcContact: 'PVC touches film: wrap it',
};

export const TASK_WORDS: Record<TaskId, string> = {
  permission: 'Permission and buried lines',
  intake: 'Measure, grade and tag',
  haulFrame: 'Take down and haul the frame',
  cleanFrame: 'Clean and treat the frame',
  denail: 'Pull nails and sort boards',
  stakeOut: 'Level and stake out',
  drainage: 'Ditch, drain and gravel',
  sill: 'Set the sill level',
  anchors: 'Anchors in and pull-tested',
  erect: 'Stand the frame',
  brace: 'Brace the frame',
  nailers: 'Boards for the film',
  endFrames: 'Frame the end walls',
  doors: 'Hang the door',
  windows: 'Windows and vents',
  smooth: 'Smooth what touches film',
  coverEnds: 'Cover the end walls',
  mainCover: 'Pull the main cover over',
  battens: 'Battens, tension, trim',
  seal: 'Skirt, mesh and seal',
  water: 'Gutter and barrels',
  floor: 'Floor, paths and beds',
  finish: 'Test the vents, hand over',
  hosting: 'Brief, tidy up and thank',
};

/** For a card on which three or more jobs stand: one or two words each. */
export const TASK_SHORT: Record<TaskId, string> = {
  permission: 'Permission',
  intake: 'Measure and tag',
  haulFrame: 'Frame down',
  cleanFrame: 'Clean tubes',
  denail: 'Sort boards',
  stakeOut: 'Stake out',
  drainage: 'Drain',
  sill: 'Sill',
  anchors: 'Anchors',
  erect: 'Frame up',
  brace: 'Braces',
  nailers: 'Film boards',
  endFrames: 'End walls',
  doors: 'Door',
  windows: 'Windows',
  smooth: 'Smooth',
  coverEnds: 'End film',
  mainCover: 'Main cover',
  battens: 'Battens',
  seal: 'Seal',
  water: 'Barrels',
  floor: 'Floor',
  finish: 'Tests',
  hosting: 'Thanks',
};

export const DAY_WORDS = { paper: 'Paper day', prep: 'Prep day', ground: 'Ground day', frame: 'Frame day', cover: 'Cover day', finish: 'Finish day' } as const;

export const CROP_WORDS = {
  lettuce: 'Lettuce',
  spinach: 'Spinach',
  kale: 'Kale',
  pea: 'Peas',
  radish: 'Radish',
  carrot: 'Carrots',
  onion: 'Onions',
  broccoli: 'Broccoli',
  potato: 'Potatoes',
  tomato: 'Tomato',
  pepper: 'Pepper',
  cucumber: 'Cucumber',
  bean: 'Beans',
  basil: 'Basil',
} as const;
/** "Carrots are hurt", "Kale is hurt". */
export const PLURAL_CROPS: ReadonlySet<string> = new Set(['pea', 'carrot', 'onion', 'potato', 'bean']);

export const ANCHOR_WORDS = {
  none: 'no anchor',
  drivenPipe: 'driven pipe',
  auger: 'screw-in anchor',
  concretePier: 'concrete pier',
  ballast: 'ballast',
  groundPost: 'ground post',
} as const;
export const BASIS_WORDS = {
  pullCheck: 'a pull test on this ground',
  torque: 'the torque while screwing in',
  weight: 'its own weight',
  published: 'a published figure',
  none: 'nothing: unrated',
} as const;
export const QUALITY_WORDS = {
  published: 'published',
  measured: 'measured',
  practice: 'practice of the trade',
  judgement: 'our judgement',
  memory: 'from memory, not checked',
} as const;
export const SHEET_WORDS = {
  overTheTop: 'Over the top',
  roof: 'Roof',
  leftWall: 'Left wall',
  rightWall: 'Right wall',
  front: 'Front wall',
  back: 'Back wall',
} as const;
export const ZONE_WORDS = { field: 'Field', edge: 'Edge', corner: 'Corner' } as const;
export const USE_WORDS = {
  header: 'header',
  jamb: 'jamb',
  stud: 'stud',
  openingSill: 'sill of opening',
  sill: 'ground sill',
  nailer: 'nailer',
  baseboard: 'baseboard',
  batten: 'batten',
} as const;
export const WALL_WORDS = { front: 'front', back: 'back', left: 'left', right: 'right' } as const;
export const SOIL_WORDS = {
  '1': '1, rock',
  '2': '2, very dense',
  '3': '3, dense or stiff',
  '4A': '4A, medium',
  '4B': '4B, loose or soft',
  '5': '5, fill, peat or soft clay',
} as const;
