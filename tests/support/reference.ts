import { appendFileSync, mkdirSync } from 'node:fs';
import { dirname } from 'node:path';
import { describe, expect, test } from '@jest/globals';
import type { RoomName } from '@lathwork/model';

/**
 * published: a printed number (source, table, units as printed). practice: a fact of the trade, no source.
 * worked: a hand calculation in docs/worked. cross-check: an independent general-purpose library with its version.
 * regression: our own frozen output; it never counts as evidence.
 */
export type CheckKind = 'published' | 'practice' | 'worked' | 'cross-check' | 'regression';

export type CheckValue = number | string | boolean | null | readonly CheckValue[] | { readonly [key: string]: CheckValue };

export interface Tolerance {
  abs?: number;
  rel?: number;
  /** Why it may differ by that much: the digits printed, the method, the age of the table. */
  why: string;
}

export interface ReferenceCheck {
  id: string;
  room: RoomName | 'physics' | 'units';
  kind: CheckKind;
  source: string;
  /** True where the expected value was written down from memory and not read from an opened text. */
  fromMemory?: boolean;
  unit: string;
  expected: CheckValue;
  tolerance: Tolerance;
  got: () => CheckValue;
  /** A reason for not running it here (a data file that is not on this machine). */
  skip?: string | undefined;
}

const kindOf = (v: CheckValue): string => (v === null ? 'null' : Array.isArray(v) ? 'list' : typeof v);

/** Differences between what was got and what was expected, member by member; empty when all agree. */
export const differences = (got: CheckValue, expected: CheckValue, tol: Tolerance, at = 'value'): string[] => {
  if (kindOf(got) !== kindOf(expected)) return [`${at}: got ${kindOf(got)} ${JSON.stringify(got)}, expected ${kindOf(expected)} ${JSON.stringify(expected)}`];
  if (typeof expected === 'number' && typeof got === 'number') {
    const allowed = Math.max(tol.abs ?? 0, (tol.rel ?? 0) * Math.abs(expected));
    return Math.abs(got - expected) <= allowed + 1e-12 && Number.isFinite(got) ? [] : [`${at}: got ${got}, expected ${expected} within ${allowed}`];
  }
  if (typeof expected === 'string' && typeof got === 'string' && /^\d\d:\d\d:\d\d$/.test(expected)) {
    const seconds = (s: string) => s.split(':').reduce((a, p) => a * 60 + Number(p), 0);
    return differences(seconds(got), seconds(expected), tol, at);
  }
  if (Array.isArray(expected) && Array.isArray(got)) {
    if (got.length !== expected.length) return [`${at}: got ${got.length} members, expected ${expected.length}`];
    return expected.flatMap((e: CheckValue, i) => differences(got[i] as CheckValue, e, tol, `${at}[${i}]`));
  }
  if (typeof expected === 'object' && expected !== null && typeof got === 'object' && got !== null) {
    const g = got as Record<string, CheckValue>;
    return Object.entries(expected as Record<string, CheckValue>).flatMap(([key, e]) =>
      key in g ? differences(g[key] as CheckValue, e, tol, `${at}.${key}`) : [`${at}.${key}: missing`],
    );
  }
  return got === expected ? [] : [`${at}: got ${JSON.stringify(got)}, expected ${JSON.stringify(expected)}`];
};

const record = (row: Record<string, unknown>): void => {
  const file = process.env['LATHWORK_EVIDENCE'];
  if (!file) return;
  mkdirSync(dirname(file), { recursive: true });
  appendFileSync(file, JSON.stringify(row) + '\n');
};

/** Runs a table of reference checks. Refuses an empty table, a missing source and a check without a stated tolerance. */
export const referenceTable = (title: string, checks: readonly ReferenceCheck[]): void => {
  describe(title, () => {
    if (checks.length === 0) throw new Error(`${title}: the table is empty`);
    const ids = new Set<string>();
    for (const c of checks) {
      if (ids.has(c.id)) throw new Error(`${title}: id ${c.id} stands twice`);
      ids.add(c.id);
      if (c.source.trim().length < 4) throw new Error(`${title}: ${c.id} has no source`);
      if (c.tolerance.why.trim().length < 4) throw new Error(`${title}: ${c.id} does not say why its tolerance is what it is`);
      const row = {
        id: c.id,
        room: c.room,
        kind: c.kind,
        source: c.source,
        fromMemory: c.fromMemory ?? false,
        unit: c.unit,
        expected: c.expected,
        tolerance: c.tolerance,
      };
      if (c.skip) {
        record({ ...row, got: null, pass: null, skipped: c.skip });
        test.skip(`${c.id} (${c.kind}): ${c.skip}`, () => undefined);
        continue;
      }
      test(`${c.id} (${c.kind}, ${c.source.slice(0, 70)})`, () => {
        const got = c.got();
        const wrong = differences(got, c.expected, c.tolerance);
        record({ ...row, got, pass: wrong.length === 0 });
        expect(wrong).toEqual([]);
      });
    }
  });
};
