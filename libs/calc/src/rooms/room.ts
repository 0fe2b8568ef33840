import type { Note, RoomName } from '@lathwork/model';
import type { UnitSymbol } from '@lathwork/units';
import type { SourceId } from '../sources/bibliography.js';

/** What every room gives back: its value, what it has to say, and the sources it leaned on. */
export interface RoomOutput<T> {
  result: T;
  notes: Note[];
  sources: SourceId[];
}

/** The range of an input that a room's model is valid for. The check reads this very object. */
export interface ValidityRange {
  unit: UnitSymbol;
  min: number;
  max: number;
  sourceId: SourceId;
  /** Outside the range and `safety`: the room answers "not assessed" and gives no number. */
  safety: boolean;
}

/** The card that hangs beside each room's function: what it takes, where it holds, where it comes from. */
export interface RoomModel<K extends string = string> {
  room: RoomName;
  title: string;
  ranges: Record<K, ValidityRange>;
  sources: readonly SourceId[];
}

/** Notes for the values that lie outside the model's ranges. An empty list means all lie inside. */
export const outsideValidity = <K extends string>(model: RoomModel<K>, values: Record<K, number>): Note[] =>
  (Object.keys(model.ranges) as K[]).flatMap((key) => {
    const { min, max, unit, safety } = model.ranges[key];
    const value = values[key];
    if (value >= min && value <= max) return [];
    return [
      {
        code: `${model.room}.outside-validity`,
        severity: safety ? 'stop' : 'care',
        room: model.room,
        subject: key,
        params: { value, min, max, unit, safety },
      } satisfies Note,
    ];
  });

/** Maker of a room's notes: code (the room goes in front), severity, params; with a task, they are to be read before it starts. */
export const notesOf =
  (room: RoomName, beforeTask?: NonNullable<Note['beforeTask']>) =>
  (code: string, severity: Note['severity'], params: Note['params'] = {}): Note => ({
    code: `${room}.${code}`,
    severity,
    room,
    params,
    ...(beforeTask === undefined ? {} : { beforeTask }),
  });

/** Sum of one figure of each member. */
export const sumOf = <T>(list: readonly T[], of: (t: T) => number): number => list.reduce((n, t) => n + of(t), 0);
