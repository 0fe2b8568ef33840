import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from '@jest/globals';
import { computePlan } from '@lathwork/calc';
import { PlanResultSchema, ROOMS, type PlanInputs, type PlanResult, type RoomName } from '@lathwork/model';
import { Ajv } from 'ajv';
import addFormatsModule from 'ajv-formats';
import { notFinite } from '../support/finite.js';
import { FOUR_GARDENS } from '../support/gardens.js';

const ajv = new Ajv({ allErrors: true, strict: false });
(addFormatsModule as unknown as (a: Ajv) => void)(ajv);
const validate = ajv.compile(PlanResultSchema);
const errorsOf = (plan: PlanResult): string[] => (validate(plan) ? [] : (validate.errors ?? []).map((e) => `${e.instancePath} ${e.message ?? ''}`));

/** Every note code that docs/notes tells the report's author about, by room. */
const listed = new Set(
  readdirSync(join(process.cwd(), 'docs', 'notes')).flatMap((file) =>
    [...readFileSync(join(process.cwd(), 'docs', 'notes', file), 'utf8').matchAll(/^\|?\s*`?([a-z]+\.[a-z0-9.-]+)`?\s*\|/gm)].map((m) => m[1]),
  ),
);

interface Walked {
  plan: PlanResult;
  rooms: [RoomName, string][];
}

const walks = new Map<string, Walked>();
const walkOf = (name: string, inputs: PlanInputs): Walked => {
  const known = walks.get(name);
  if (known) return known;
  const rooms: Walked['rooms'] = [];
  const walked = { plan: computePlan(inputs, { engineVersion: 'test', onRoom: (room, phase) => rooms.push([room, phase]) }), rooms };
  walks.set(name, walked);
  return walked;
};
const planOf = (name: string, inputs: PlanInputs): PlanResult => walkOf(name, inputs).plan;

describe.each(FOUR_GARDENS)('the plan of the %s', (name, inputs) => {
  test('is whole: it keeps the contract and holds no NaN', () => {
    const plan = planOf(name, inputs);
    expect(errorsOf(plan)).toEqual([]);
    expect(notFinite(plan)).toEqual([]);
    // What JSON would turn into null without a word is caught here too.
    expect(JSON.parse(JSON.stringify(plan))).toEqual(plan);
  });

  test('says only what the lists of notes explain, the most severe first', () => {
    const { notes } = planOf(name, inputs);
    expect(notes.length).toBeGreaterThan(5);
    expect(notes.map((n) => n.code).filter((code) => !listed.has(code))).toEqual([]);
    const weights = notes.map((n) => ['stop', 'care', 'ask', 'note'].indexOf(n.severity));
    expect(weights).toEqual([...weights].sort((a, b) => a - b));
  });

  test('uses every reclaimed tag once at most, and cuts what it lists', () => {
    const { takeOff, cutting } = planOf(name, inputs);
    const tags = takeOff.lines.flatMap((l) => l.reclaimed.map((r) => r.tag));
    expect(tags.length).toBeGreaterThan(5);
    expect(new Set(tags).size).toBe(tags.length);
    for (const board of cutting.boards) if (board.stockTag !== null) expect(tags).toContain(board.stockTag);
  });

  test('names three risks of three rooms, each among its notes, and every source it used', () => {
    const { risks, notes, sources, reviewBlocked } = planOf(name, inputs);
    expect(risks).toHaveLength(3);
    expect(new Set(risks.map((r) => r.room)).size).toBe(3);
    for (const risk of risks)
      expect(notes.some((n) => n.code === risk.code && n.room === risk.room && (n.severity === 'stop' || n.severity === 'care'))).toBe(true);
    expect(reviewBlocked).toBe(notes.some((n) => n.severity === 'stop'));
    expect(new Set(sources.map((s) => s.sourceId)).size).toBe(sources.length);
    expect(sources.length).toBeGreaterThan(10);
  });

  test('was made by the rooms in the stated order, each once', () => {
    expect(walkOf(name, inputs).rooms).toEqual(
      ROOMS.flatMap((room) => [
        [room, 'start'],
        [room, 'end'],
      ]),
    );
  });
});

test('gardens on one pile share no thing', () => {
  const [canopy, tunnel] = FOUR_GARDENS.map(([name, inputs]) => planOf(name, inputs).takeOff.lines.flatMap((l) => l.reclaimed.map((r) => r.tag)));
  expect((canopy ?? []).filter((tag) => (tunnel ?? []).includes(tag))).toEqual([]);
});
