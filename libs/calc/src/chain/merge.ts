import type { Note, PlanResult, RoomName, Verdict } from '@lathwork/model';

const SEVERITY: readonly Note['severity'][] = ['stop', 'care', 'ask', 'note'];
/** As many as the result may hold. Only the least severe fall off the end. */
const NOTES_MAX = 400;

/** All rooms' notes, most severe first; within one severity in the order of the rooms. */
export const mergeNotes = (notes: readonly Note[]): Note[] =>
  [...notes].sort((a, b) => SEVERITY.indexOf(a.severity) - SEVERITY.indexOf(b.severity)).slice(0, NOTES_MAX);

/**
 * How often the subject of a room is what ends such a build badly, worst first: canopies fly off, then roofs go down
 * under snow, then somebody is hurt, then parts do not fit, then plants cook or freeze; money and hours end few.
 */
const ENDS_BADLY: readonly RoomName[] = [
  'anchorage',
  'wind',
  'snow',
  'safety',
  'geometry',
  'thermal',
  'fastening',
  'takeoff',
  'schedule',
  'budget',
  'cutting',
  'climate',
];

const VERDICT_WEIGHT: Record<Verdict, number> = { doesNotPass: 0, notAssessed: 1, marginal: 2, noRedFlag: 3 };

/**
 * The three things most likely to end this build badly. The rule: of the notes that stop or warn, the worst severity
 * first, then those of a room whose screening did not pass before those of one that could not judge, then the room's
 * place in the list above, then the order in which the room said it; one for each room, so that three risks are three
 * different things.
 */
export const threeRisks = (notes: readonly Note[], verdicts: Partial<Record<RoomName, Verdict>>): PlanResult['risks'] => {
  const weight = ({ severity, room }: Note): number => {
    const verdict = verdicts[room];
    return SEVERITY.indexOf(severity) * 1000 + (verdict === undefined ? VERDICT_WEIGHT.marginal : VERDICT_WEIGHT[verdict]) * 100 + ENDS_BADLY.indexOf(room);
  };
  const ranked = notes.filter((n) => n.severity === 'stop' || n.severity === 'care').sort((a, b) => weight(a) - weight(b));
  const risks: PlanResult['risks'] = [];
  for (const { room, code } of ranked) if (risks.length < 3 && !risks.some((r) => r.room === room)) risks.push({ room, code });
  return risks;
};
