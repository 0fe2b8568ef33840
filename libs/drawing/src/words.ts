/** Every word that is set inside a drawing. Another language passes its own table. Keep them short: they stand in small places. */
export interface Words {
  elevation: { front: string; back: string; left: string; right: string };
  plan: string;
  section: string;
  anchorMap: string;
  filmLayout: string;
  fastening: string;
  compass: readonly [string, string, string, string, string, string, string, string];
  north: string;
  stormWind: string;
  stormWindUnknown: string;
  ridgeAbove: string;
  crownAbove: string;
  hostWall: string;
  bed: string;
  notToScale: string;
  depth: string;
  pulled: string;
  lift: string;
  notAssessed: string;
  diagonal: string;
  fallOfRoof: string;
  girth: string;
  posts: string;
  framePicture: string;
  rafter: string;
  eave: string;
  sheet: Record<'overTheTop' | 'roof' | 'leftWall' | 'rightWall' | 'front' | 'back', string>;
  strips: string;
  seam: string;
  lap: string;
  offcut: string;
  /** As in `N2 to N6, 5 boards`. */
  to: string;
  boards: string;
  /** By material key: how a board is named on its cut diagram. */
  boardNames: Readonly<Record<string, string>>;
  zone: { field: string; edge: string; corner: string };
  screwsEvery: string;
  months: readonly string[];
  noRecord: string;
  outside: string;
  insideBare: string;
  underCover: string;
  allShut: string;
  opened: string;
  dayHigh: string;
  nightLow: string;
  coldNight: string;
  frost: string;
  lastFrost: string;
  firstFrost: string;
  frostUsual: string;
  frostHardlyEver: string;
  freeHorizon: string;
  pastObstacles: string;
  sunToExpect: string;
  hoursADay: string;
  sun: string;
  rain: string;
  perDay: string;
  hourOfDay: string;
  range: string;
  fromPile: string;
  toBuy: string;
  given: string;
  limit: string;
  none: string;
  lineKey: Record<'cut' | 'vis' | 'thin' | 'hid' | 'over' | 'axis' | 'temp' | 'grid', string>;
  /** As in `6 equal, 7315`. */
  equal: string;
  wide: string;
  long: string;
  high: string;
  feet: string;
  metres: string;
}

export const ENGLISH: Words = {
  elevation: { front: 'Front elevation', back: 'Back elevation', left: 'Left elevation', right: 'Right elevation' },
  plan: 'Plan',
  section: 'Section across',
  anchorMap: 'Anchor map',
  filmLayout: 'Film sheets',
  fastening: 'Batten screws',
  compass: ['north', 'north-east', 'east', 'south-east', 'south', 'south-west', 'west', 'north-west'],
  north: 'N',
  stormWind: 'storm wind',
  stormWindUnknown: 'storm wind unknown',
  ridgeAbove: 'ridge above',
  crownAbove: 'crown above',
  hostWall: 'host wall',
  bed: 'Bed',
  notToScale: 'not to scale',
  depth: 'depth',
  pulled: 'pulled to',
  lift: 'lift',
  notAssessed: 'not assessed',
  diagonal: 'diagonal',
  fallOfRoof: 'roof slope',
  girth: 'over the top',
  posts: 'posts',
  framePicture: 'The frame on this day',
  rafter: 'rafter',
  eave: 'eave',
  sheet: { overTheTop: 'Over the top', roof: 'Roof', leftWall: 'Left wall', rightWall: 'Right wall', front: 'Front', back: 'Back' },
  strips: 'strips',
  seam: 'seam',
  lap: 'lap',
  offcut: 'left over',
  to: 'to',
  boards: 'boards',
  boardNames: { 'batten.19x38': 'batten 19 x 38', 'board.38x89': 'board 38 x 89', 'board.38x140': 'board 38 x 140', 'sill.89x140': 'sill 89 x 140' },
  zone: { field: 'field', edge: 'edge', corner: 'corner' },
  screwsEvery: 'screw every',
  months: ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'],
  noRecord: 'no record',
  outside: 'outside',
  insideBare: 'inside, bare',
  underCover: 'inside, under the inner cover',
  allShut: 'all shut',
  opened: 'door and vents open',
  dayHigh: 'day high',
  nightLow: 'night low',
  coldNight: 'coldest night',
  frost: 'frost',
  lastFrost: 'last frost',
  firstFrost: 'first frost',
  frostUsual: 'frost usual',
  frostHardlyEver: 'frost in 1 year of 10, or fewer',
  freeHorizon: 'free horizon, clear sky',
  pastObstacles: 'past the obstacles, clear sky',
  sunToExpect: 'to expect, clouds counted',
  hoursADay: 'hours a day',
  sun: 'sun',
  rain: 'rain and melted snow',
  perDay: 'a day',
  hourOfDay: 'hour of the day, sun time',
  range: 'likely range',
  fromPile: 'from the pile',
  toBuy: 'to buy',
  given: 'given or lent',
  limit: 'limit',
  none: 'none',
  lineKey: {
    cut: 'cut edge, ground',
    vis: 'edge you can see',
    thin: 'dimension, leader',
    hid: 'hidden edge, limit',
    over: 'above the cut',
    axis: 'centre line, grid',
    temp: 'temporary',
    grid: 'help line',
  },
  equal: 'equal',
  wide: 'wide',
  long: 'long',
  high: 'high',
  feet: 'ft',
  metres: 'm',
};
