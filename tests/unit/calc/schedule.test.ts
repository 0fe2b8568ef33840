import { describe, expect, test } from '@jest/globals';
import { computeGeometry, computeSchedule } from '@lathwork/calc';
import { TASK_IDS, type PlanInputs } from '@lathwork/model';
import { FOUR_GARDENS, inlandCanopy, inlandTunnel } from '../../support/gardens.js';
import { takeOffOf } from '../../support/material-rooms.js';

const schedule = ({ structure, crew, ...inputs }: PlanInputs) =>
  computeSchedule({ structure, geometry: computeGeometry({ structure }).result, takeOff: takeOffOf({ structure, crew, ...inputs }).result, crew });

describe('schedule', () => {
  test.each(FOUR_GARDENS)('%s: twenty-four tasks in a valid order, each on one card, every part on one card', (_name, inputs) => {
    const { result } = schedule(inputs);
    expect(result.tasks.map((t) => t.taskId)).toEqual([...TASK_IDS]);
    const endOf = new Map(result.tasks.map((t) => [t.taskId, t.earliestStartH + t.clockH]));
    for (const t of result.tasks) {
      for (const before of t.after) expect(t.earliestStartH).toBeGreaterThanOrEqual((endOf.get(before) ?? Infinity) - 1e-9);
      expect(t.personHours.lowH).toBeLessThanOrEqual(t.personHours.likelyH);
      expect(t.personHours.likelyH).toBeLessThanOrEqual(t.personHours.highH);
    }
    expect(result.stages.length).toBeGreaterThanOrEqual(10);
    expect(result.stages.length).toBeLessThanOrEqual(14);
    expect(result.stages.flatMap((s) => s.tasks).sort()).toEqual([...TASK_IDS].sort());
    expect(result.stages.flatMap((s) => s.parts.map((p) => p.lineId)).sort()).toEqual(
      takeOffOf(inputs)
        .result.lines.map((l) => l.lineId)
        .sort(),
    );
  });

  test('the critical path is a chain of followers as long as the whole', () => {
    const { result } = schedule(inlandCanopy);
    const tasks = new Map(result.tasks.map((t) => [t.taskId, t]));
    for (const [i, id] of result.criticalPath.entries()) if (i > 0) expect(tasks.get(id)?.after).toContain(result.criticalPath[i - 1]);
    const clock = result.criticalPath.reduce((sum, id) => sum + (tasks.get(id)?.clockH ?? NaN), 0);
    expect(clock).toBeCloseTo(Math.max(...result.tasks.map((t) => t.earliestStartH + t.clockH)), 9);
  });

  test('nothing breaks ground without the locate ticket, and film waits for calm, dry and warm', () => {
    const { result } = schedule(inlandCanopy);
    const gate = (id: string) => result.tasks.find((t) => t.taskId === id)?.gate;
    for (const id of ['stakeOut', 'drainage', 'anchors']) expect(gate(id)?.needs).toContain('locateTicket');
    expect(gate('mainCover')).toMatchObject({ dry: true, airMinC: 15.6, airMaxC: 26.7 });
    // 8 mph for a small sheet, 5 mph for a larger one.
    expect(gate('mainCover')?.windMaxMPerS).toBeCloseTo(3.576, 3);
    expect(schedule(inlandTunnel).result.tasks.find((t) => t.taskId === 'mainCover')?.gate.windMaxMPerS).toBeCloseTo(2.235, 3);
  });

  test('too few people are said task by task, and do not make the task slower than its least crew', () => {
    const alone = schedule({ ...inlandCanopy, crew: { people: 1, experience: 'mixed', startOn: null } });
    expect(alone.notes.filter((n) => n.code === 'schedule.crew-too-small').map((n) => n.subject)).toContain('mainCover');
    const cover = alone.result.tasks.find((t) => t.taskId === 'mainCover');
    expect(cover?.clockH).toBeCloseTo((cover?.personHours.likelyH ?? NaN) / 4, 9);
  });

  test('without a door nobody hangs one; novices take longer than skilled people', () => {
    const doorless = schedule({ ...inlandCanopy, structure: { ...inlandCanopy.structure, openings: [] } });
    expect(doorless.result.tasks.find((t) => t.taskId === 'doors')?.personHours.highH).toBe(0);
    const hours = (experience: 'novice' | 'skilled') => schedule({ ...inlandCanopy, crew: { ...inlandCanopy.crew, experience } }).result.totalHours.likelyH;
    expect(hours('novice')).toBeGreaterThan(hours('skilled'));
  });
});
