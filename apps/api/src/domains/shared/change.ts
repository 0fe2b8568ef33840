import type { Actor } from '../../platform/access/actor.js';
import { audit } from '../../platform/database/audit.js';
import type { Db } from '../../platform/database/database.js';
import { assertMatch, etagOf } from '../../platform/http/etag.js';
import { mergePatch } from '../../platform/http/merge-patch.js';
import { collectAsTyped, type AsTyped } from '../../platform/http/quantity-field.js';
import { found, type Answer, type Reply } from '../../platform/http/reply.js';
import { parseWhole } from '../../platform/http/validate.js';
import { fail } from '../../platform/problems/problem.js';
import type { Kept, Owned } from './resource.js';

type Class<T> = new () => T;

/** The row, or "not found". A row of another garden does not exist here, so both answers are the same. */
export const must = <T>(row: T | null, what: string): T => row ?? fail('not-found', { what });

export const mustNotBeArchived = (record: Kept, what: string): void => {
  if (record.archivedAt !== null) fail('archived', { what });
};

/** The row as it is now, or "changed meanwhile": somebody else was quicker. */
export const mustBeNewest = <T>(row: T | null): T => row ?? fail('version-stale');

export const made = (folder: string, body: { id: string; version: number }): Answer => ({
  status: 201,
  body,
  location: `${folder}/${body.id}`,
  etag: etagOf(body),
});

export const shown = (body: { version: number }): Reply => found(body, etagOf(body));

/** The record after a merge patch, checked as a whole, with what was typed. `before` has the shape of the request class. */
export const patched = <T extends object>(shape: Class<T>, before: object, typedBefore: AsTyped, patch: unknown): { dto: T; asTyped: AsTyped } => {
  const merged = mergePatch(before, patch);
  const dto = parseWhole(shape, merged);
  return { dto, asTyped: { ...keepTyped(typedBefore, before, dto), ...collectAsTyped(merged, dto) } };
};

// What was typed stays beside a number only as long as the number itself stays.
const keepTyped = (typed: AsTyped, before: object, now: object): AsTyped =>
  Object.fromEntries(Object.entries(typed).filter(([pointer]) => at(before, pointer) === at(now, pointer)));

const at = (value: unknown, pointer: string): unknown =>
  pointer
    .split('/')
    .slice(1)
    .reduce<unknown>((inside, key) => (typeof inside === 'object' && inside !== null ? (inside as Record<string, unknown>)[key] : undefined), value);

/** Sharing is for the owner to decide; a coordinator may change what is shared, but neither share nor hide it. */
export const mustBeFreeToShare = (actor: Actor, was: Owned, shared: boolean): void => {
  if (shared === was.shared || actor.reach === 'all' || was.ownerMemberId === actor.memberId) return;
  fail('validation-failed', { count: 1 }, [
    { pointer: '/shared', code: 'not-yours', detail: 'Only its owner may share this or take it back.', remedy: 'Leave "shared" as it is, or ask the owner.' },
  ]);
};

/** What people call a kind of thing, as the name of its kind: "stock item" is stockItem. */
const kindOf = (what: string): string => what.replaceAll(/ (\w)/g, (_space, letter: string) => letter.toUpperCase());

interface Archivable<R extends Kept> {
  find(db: Db, id: string): Promise<R | null>;
  setArchived(db: Db, was: R, archivedAt: Date | null): Promise<R | null>;
}

/** Archives or restores one record. Doing it twice changes nothing. */
export const archive = async <R extends Kept>(
  db: Db,
  actor: Actor,
  rows: Archivable<R>,
  about: { what: string; id: string; ifMatch: string | undefined; archived: boolean },
): Promise<R> => {
  const was = must(await rows.find(db, about.id), about.what);
  assertMatch(about.ifMatch, was);
  if ((was.archivedAt !== null) === about.archived) return was;
  const now = mustBeNewest(await rows.setArchived(db, was, about.archived ? new Date() : null));
  await audit(db, actor, {
    action: `${kindOf(about.what)}.${about.archived ? 'archive' : 'restore'}`,
    objectType: kindOf(about.what),
    objectId: was.id,
    before: was,
    after: now,
  });
  return now;
};

const isUniqueViolation = (error: unknown): boolean => (error as { code?: string } | null)?.code === 'P2002';

/** A name that is taken is the caller's matter, not a fault of the server. */
export const nameFree = async <T>(what: string, name: string, write: Promise<T>): Promise<T> => {
  try {
    return await write;
  } catch (error) {
    if (isUniqueViolation(error)) return fail('name-taken', { what, name });
    throw error;
  }
};
