import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from '@jest/globals';
import { ROOMS } from '@lathwork/model';

const ROOMS_FOLDER = join(process.cwd(), 'libs', 'calc', 'src', 'rooms');
const NOTES_FOLDER = join(process.cwd(), 'docs', 'notes');

/** Codes that stand in a room's source. The take-off's pool writes its codes with the room left off. */
const written = (room: string): Set<string> => {
  const text = readdirSync(ROOMS_FOLDER)
    .filter((f) => f.startsWith(room))
    .map((f) => readFileSync(join(ROOMS_FOLDER, f), 'utf8'))
    .join('\n');
  const whole = [...text.matchAll(new RegExp(`'(${room}\\.[a-z0-9-]+)'`, 'g'))].map((m) => m[1] ?? '');
  const short = [...text.matchAll(/\bnote\(\s*'([a-z0-9-]+)'/g)].map((m) => `${room}.${m[1] ?? ''}`);
  return new Set([...whole, ...(room === 'takeoff' ? short : [])]);
};

const listed = (room: string): Set<string> => {
  const text = readFileSync(join(NOTES_FOLDER, `${room}.md`), 'utf8');
  return new Set([...text.matchAll(new RegExp(`^\\|?\\s*\`?(${room}\\.[a-z0-9-]+)\`?\\s*\\|`, 'gm'))].map((m) => m[1] ?? ''));
};

describe.each(['geometry', 'cutting', 'takeoff', 'budget', 'schedule', 'safety'] satisfies (typeof ROOMS)[number][])('the notes of the %s room', (room) => {
  test('are all in its list', () => {
    expect(written(room).size).toBeGreaterThan(1);
    expect([...written(room)].filter((code) => !listed(room).has(code))).toEqual([]);
  });

  test('and its list holds no code that nothing gives', () => {
    expect([...listed(room)].filter((code) => !code.endsWith('.outside-validity') && !written(room).has(code))).toEqual([]);
  });
});

test('every room has a list', () => {
  const files = readdirSync(NOTES_FOLDER);
  expect(ROOMS.filter((room) => !files.includes(`${room}.md`))).toEqual([]);
});
