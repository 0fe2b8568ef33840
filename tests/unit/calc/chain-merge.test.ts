import { describe, expect, test } from '@jest/globals';
import { mergeNotes, threeRisks } from '@lathwork/calc';
import type { Note, RoomName } from '@lathwork/model';

const note = (room: RoomName, severity: Note['severity'], code = `${room}.x`): Note => ({ code, severity, room, params: {} });

describe('merging what the rooms say', () => {
  test('the most severe first, else as the rooms spoke, and the least severe fall off beyond four hundred', () => {
    const notes = [
      note('budget', 'note'),
      note('wind', 'ask'),
      note('snow', 'care', 'snow.first'),
      note('snow', 'care', 'snow.second'),
      note('geometry', 'stop'),
    ];
    expect(mergeNotes(notes).map((n) => n.code)).toEqual(['geometry.x', 'snow.first', 'snow.second', 'wind.x', 'budget.x']);
    const many = mergeNotes([...Array.from({ length: 450 }, () => note('takeoff', 'note')), note('snow', 'stop')]);
    expect(many).toHaveLength(400);
    expect(many[0]?.code).toBe('snow.x');
  });

  test('three risks of three rooms: stops, then rooms that did not pass, then what ends such builds most often', () => {
    const notes = [
      note('budget', 'care'),
      note('anchorage', 'care'),
      note('anchorage', 'care', 'anchorage.y'),
      note('snow', 'care'),
      note('thermal', 'stop'),
      note('wind', 'ask'),
    ];
    expect(threeRisks(notes, { snow: 'doesNotPass', anchorage: 'noRedFlag' }).map((r) => r.code)).toEqual(['thermal.x', 'snow.x', 'budget.x']);
    expect(threeRisks(notes, { snow: 'marginal', anchorage: 'marginal' }).map((r) => r.code)).toEqual(['thermal.x', 'anchorage.x', 'snow.x']);
    expect(threeRisks([note('wind', 'ask'), note('budget', 'note')], {})).toEqual([]);
  });
});
