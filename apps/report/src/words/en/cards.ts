import type { TaskId } from '@lathwork/model';

export interface TaskCardWords {
  steps: readonly string[];
  stop: readonly string[];
  care?: string;
  done: string;
  /** What is measured or counted before the next stage; {diagonal} is the ground diagonal. */
  sign: readonly string[];
}

/** What to do in each job, as orders. Two to four steps; each names one thing that can be seen. */
export const TASK_CARDS: Record<TaskId, TaskCardWords> = {
  permission: {
    steps: ['Show this book to the building office. Write down who said what.', 'Order the marking of buried lines. Wait for the answer.'],
    stop: ['The office says no, or has not answered.'],
    done: 'the permission and the line ticket are on paper',
    sign: ['Ticket number'],
  },
  intake: {
    steps: ['Measure each thing twice. Write the size on its tag.', 'Give each thing a grade. Tie the tag on.', 'Put doubtful glass and old paint apart.'],
    stop: ['A barrel smells or nobody knows what it held.'],
    care: 'Old paint may hold lead. Do not sand or scrape it dry.',
    done: 'every thing on the yard list has its tag',
    sign: ['Things tagged'],
  },
  haulFrame: {
    steps: ['Mark each joint before you undo it.', 'Take the frame down from the top, bolts in one bag.'],
    stop: ['A tube is kinked or rusted through.'],
    care: 'Tube ends cut. Cap or tape them before you lift.',
    done: 'all tubes lie sorted on site',
    sign: ['Tubes counted'],
  },
  cleanFrame: {
    steps: ['Brush loose rust off. Wipe the dust away.', 'Paint bare steel. Let it dry.'],
    stop: ['Rust goes through the tube wall.'],
    done: 'no loose rust is left',
    sign: ['Bad tubes found'],
  },
  denail: {
    steps: ['Pull or bend every nail at once.', 'Sort boards by length. Cut off split ends.', 'Cut the parts by the cut list, longest first.'],
    stop: ['A board is painted and nobody knows the paint.'],
    care: 'Wear shoes with hard soles and eye glasses.',
    done: 'no nail stands up in the stack',
    sign: ['Parts cut, all lettered'],
  },
  stakeOut: {
    steps: ['Clear and level the ground.', 'Peg the first long side along the string.', 'Set the other corners. Both diagonals must match.'],
    stop: ['The line ticket is not here.'],
    done: 'both diagonals match',
    sign: ['Diagonal A-B, {diagonal}', 'Other diagonal, same'],
  },
  drainage: {
    steps: ['Dig the ditch on the uphill side.', 'Lead the water well past the shelter.'],
    stop: ['You hit a pipe, a cable or a warning tape.'],
    done: 'poured water runs away from the shelter',
    sign: ['Ditch falls all the way'],
  },
  sill: {
    steps: ['Lay the sill on the string line.', 'Level it all round. Check the diagonals again.'],
    stop: ['The diagonals no longer match.'],
    done: 'the level shows true on every side',
    sign: ['Diagonal, {diagonal}', 'Other diagonal, same'],
  },
  anchors: {
    steps: ['Set an anchor at each post on the anchor map.', 'Pull-test each one. Hold the load for one minute.', 'Write each result in the anchor log.'],
    stop: ['An anchor creeps or pulls out.', 'You hit a pipe, a cable or a warning tape.'],
    care: 'Keep your face and feet clear of a loaded strap.',
    done: 'every anchor has held its load',
    sign: ['Anchors held', 'Lowest pull'],
  },
  erect: {
    steps: [
      'Lay all bows flat, feet at their marks.',
      'Stand bow 1. Hold it until both ropes are tied.',
      'Stand the next bow. Join it hand tight.',
      'Tie each foot to its anchor before you go on.',
    ],
    stop: ['A tube is kinked or a joint will not seat.', 'Someone would have to climb on the frame.'],
    care: 'Tube ends cut. Cap or tape them before you lift.',
    done: 'it stands with every foot tied',
    sign: ['Feet tied'],
  },
  brace: {
    steps: [
      'Cross-brace the first bay now, on both sides.',
      'Measure both ground diagonals. Shift feet until they match.',
      'Plumb each leg. Tighten all bolts.',
    ],
    stop: ['The frame rocks and is left alone.'],
    done: 'it stands square and stiff with the ropes off',
    sign: ['Diagonal A-B, {diagonal}', 'Other diagonal, same', 'Bolts tight'],
  },
  nailers: {
    steps: ['Strap the boards to the tubes where battens will go.', 'Keep screw tips and bolt ends away from the film side.'],
    stop: [],
    done: 'no sharp end points at the film',
    sign: ['Boards fixed'],
  },
  endFrames: {
    steps: ['Put the end frames together flat on the ground.', 'Lift each one in and fix it to the bow.'],
    stop: ['The door frame is out of square.'],
    done: 'each opening has its rough size',
    sign: ['Door opening checked'],
  },
  doors: {
    steps: ['Set the door on shims. Check it swings clear.', 'Fit the latch. It must hold in wind.'],
    stop: [],
    done: 'the door opens and shuts with one hand',
    sign: ['Door gap even'],
  },
  windows: {
    steps: ['Check each pane for a mark in its corner.', 'Set the windows and vents. Fit the stays.'],
    stop: ['A pane is cracked.'],
    care: 'No mark in the corner? Treat the pane as glass that cuts.',
    done: 'each vent stays open by itself',
    sign: ['Vents that open'],
  },
  smooth: {
    steps: ['File off burrs. Tape every tube that will touch film.', 'Paint wood that touches film white. Let it dry.'],
    stop: [],
    done: 'a rag slides over all of it without a snag',
    sign: ['Snags left'],
  },
  coverEnds: {
    steps: ['Hang the end film. Fix it at the top middle first.', 'Work down and out. Roll the edge round a batten.'],
    stop: ['The film flaps out of your hands.'],
    done: 'the end film is snug, without cuts',
    sign: ['Tears taped'],
  },
  mainCover: {
    steps: [
      'Lay the film along one long side. Tie ropes to padded knots.',
      'Pull all ropes together, slowly, over the top.',
      'Square it. Leave the same edge on both sides.',
      'Fix the middle of each end first.',
    ],
    stop: ['The film lifts a person or a rope slips.', 'Someone is inside the film when it fills.'],
    care: 'If the wind takes the film, let go. Do not ride it.',
    done: 'the film lies square with the same edge on both sides',
    sign: ['Edge left', 'Edge right'],
  },
  battens: {
    steps: [
      'Start at the middle of each run. Work outward.',
      'Roll the film round the batten. Screw at the spacing of the film page.',
      'Trim only when all is fixed.',
    ],
    stop: ['A batten splits or a screw spins.'],
    done: 'the film is snug, not drum tight, and all screws are in',
    sign: ['Screws in', 'Loose spots'],
  },
  seal: {
    steps: ['Bury or weight the skirt.', 'Set mesh against rodents. Seal gaps at the door.'],
    stop: [],
    done: 'no daylight shows along the ground',
    sign: ['Gaps closed'],
  },
  water: {
    steps: ['Set the barrels on flat ground, where the plan shows them.', 'Fill them. Put the lids on.'],
    stop: ['A barrel has no known past.'],
    care: 'A full barrel weighs more than two people. Never shift it full.',
    done: 'the barrels are full and lidded',
    sign: ['Barrels filled'],
  },
  floor: { steps: ['Lay the path. Keep it wide enough for a barrow.', 'Fill the beds.'], stop: [], done: 'the path is flat and clear', sign: ['Path width'] },
  finish: {
    steps: [
      'Hang the thermometer out of the sun, at crop height.',
      'Shut all at noon for one hour. Then open all. Write both peaks down.',
      'Name who opens and who shuts.',
    ],
    stop: ['A vent will not open.'],
    done: 'one name stands on the door for each day of the week',
    sign: ['Peak, shut', 'Peak, opened'],
  },
  hosting: {
    steps: ['Sign people in. Say the safety rules out loud.', 'Count the tools back in. Thank everyone.'],
    stop: [],
    done: 'all tools are back and all people are home',
    sign: ['Tools back'],
  },
};

/** Tools by the key the schedule gives; a key without a word here is printed with its own letters set apart. */
export const TOOL_WORDS: Record<string, string> = {
  phone: 'Phone',
  tape: 'Tape, 8 m (25 ft)',
  tags: 'Tags and marker',
  pryBar: 'Pry bar',
  nippers: 'Nippers',
  saw: 'Saw',
  string: 'String and pegs',
  waterLevel: 'Water level',
  level: 'Level, 1.2 m (4 ft)',
  shovel: 'Shovel',
  barrow: 'Wheelbarrow',
  bar: 'Digging bar',
  driver: 'Post driver',
  springScale: 'Pull scale and lever',
  ladder: '2 step ladders',
  sockets: '2 socket sets',
  drill: 'Drill and bits',
  clamps: 'Clamps',
  shims: 'Shims',
  ropes: '4 ropes, 9 m (30 ft)',
  thermometer: 'Thermometer',
  square: 'Square',
  file: 'File',
  brush: 'Brush',
  stapler: 'Stapler',
  snips: 'Snips',
  knife: 'Knife',
  gloves: 'Gloves and eye glasses for each',
  wireBrush: 'Wire brush',
  penetratingOil: 'Penetrating oil',
  caliper: 'Caliper',
  awl: 'Awl',
  magnet: 'Magnet',
  bags: 'Bags for bolts',
  marker: 'Marker',
  sketch: 'Sketch of the site',
  puttyKnife: 'Putty knife',
  screwdriver: 'Screwdriver',
  camera: 'Camera',
};

/** Every card carries these, whatever the schedule lists. */
export const ALWAYS_TOOLS: readonly string[] = ['Gloves and eye glasses for each', 'First-aid box and a charged phone'];

export const STORM_CARD = {
  storm: {
    title: 'Storm coming',
    items: [
      'Shut every door and vent. Latch them.',
      'Pick up all loose things around it.',
      'Check anchors, straps and battens by hand.',
      'Go home. Nobody stays inside.',
    ],
  },
  after: {
    title: 'After the storm',
    items: [
      'Look from outside first. Things out of line mean trouble.',
      'Check each anchor. Tighten loose straps.',
      'Tape tears the same day.',
      'Take photos before you repair.',
    ],
  },
  snow: {
    title: 'Snow',
    items: [
      'Clear it from outside, from the ground, middle first.',
      'Keep both sides even.',
      'Pad the tool. Never poke the film.',
      'Nobody stays inside while it is loaded. If a tube bends, go away at once.',
    ],
  },
  heat: {
    title: 'Heat and sun',
    items: [
      'Open both ends by 9 on every sunny morning, also in frost.',
      'Read the thermometer at noon.',
      'Water people before plants.',
      'Nobody works inside when it is hotter than outside by much.',
    ],
  },
  gate: 'Numbers of this shelter',
} as const;

export const GENERAL_SAFETY: readonly string[] = [
  'Say stop when you see trouble. Everyone may say it.',
  'No one climbs on the frame. Use a ladder that another holds.',
  'If the wind takes the film, let go.',
  'Wear gloves for tubes and glass. Wear eye glasses for cutting.',
  'Know the address of this place. Keep the way open for help.',
];

export const GLOSSARY: readonly (readonly [string, string])[] = [
  ['Anchor', 'holds the frame down against the wind'],
  ['Batten', 'a thin strip that clamps film to wood'],
  ['Bow', 'one cross-frame: two legs and what joins them'],
  ['Brace', 'a slanting strap or tube that stops the frame racking'],
  ['Design night', 'the cold night the plan counts with'],
  ['Eave', 'the line where wall and roof meet'],
  ['Girth', 'the way over the top of a bow, ground to ground'],
  ['Header', 'the beam over an opening'],
  ['Inner cover', 'a row cover laid over the crop at dusk'],
  ['Kerf', 'the wood a saw cut turns to dust'],
  ['Likely range', 'low to high; about 8 years in 10 fall inside'],
  ['Nailer', 'a board fixed to tube so that battens can be screwed on'],
  ['Offcut', 'what is left of a board'],
  ['Pull test', 'pulling an anchor to its load and holding it there'],
  ['Ridge', 'the top line of the roof'],
  ['Rough size', 'the hole in the frame, a little larger than the door'],
  ['Screening', 'a check that looks for trouble; it proves nothing strong'],
  ['Service level', 'the load of a bad storm, without extra margin'],
  ['Sill', 'the timber under the frame'],
  ['Uplift', 'the pull of the wind that lifts the shelter'],
];
