import { S, type JsonSchema } from '../../platform/http/response-schema.js';

/** What every kept record tells about itself. */
export interface Kept {
  id: string;
  version: number;
  createdAt: string;
  updatedAt: string;
  archivedAt: string | null;
}

export const KEPT: Record<string, JsonSchema> = {
  id: S.id(),
  version: S.whole(1, 2_147_483_647),
  createdAt: S.moment(),
  updatedAt: S.moment(),
  archivedAt: S.orNull(S.moment()),
};

/** Whose a record is. Nobody's: the garden's own. Shared: the other members see it, and a coordinator may change it. */
export interface Owned {
  ownerMemberId: string | null;
  shared: boolean;
}

export const OWNED: Record<string, JsonSchema> = { ownerMemberId: S.orNull(S.id()), shared: S.flag() };

/** Of a row or of a record: the same two fields. */
export const ownedOf = (from: Owned): Owned => ({ ownerMemberId: from.ownerMemberId, shared: from.shared });

/** The garden and the owner of something new: a person's own, or the garden's when a key made it. */
export interface Ownership {
  gardenId: string;
  ownerMemberId: string | null;
}

export const ownershipOf = ({ gardenId, memberId }: { gardenId: string; memberId: string | null }): Ownership => ({ gardenId, ownerMemberId: memberId });

export const AS_TYPED: JsonSchema = {
  type: 'object',
  description: 'Texts as they were typed where a number is kept, by JSON Pointer',
  additionalProperties: S.text(40),
  maxProperties: 400,
};

interface KeptRow {
  id: string;
  version: number;
  createdAt: Date;
  updatedAt: Date;
  archivedAt: Date | null;
}

export const toKept = (row: KeptRow): Kept => ({
  id: row.id,
  version: row.version,
  createdAt: row.createdAt.toISOString(),
  updatedAt: row.updatedAt.toISOString(),
  archivedAt: row.archivedAt?.toISOString() ?? null,
});

export const keptOf = (record: Kept): Kept => ({
  id: record.id,
  version: record.version,
  createdAt: record.createdAt,
  updatedAt: record.updatedAt,
  archivedAt: record.archivedAt,
});

/** A calendar day as the database keeps it, and back. */
export const dayToDate = (day: string): Date => new Date(`${day}T00:00:00Z`);
export const dateToDay = (date: Date): string => date.toISOString().slice(0, 10);

/** The fields of a model schema without its own id, for a response that says `id`. */
export const fieldsOf = (schema: object, without: string): Record<string, JsonSchema> => {
  const whole = S.model(schema);
  const required = new Set(whole['required'] as string[] | undefined);
  const { [without]: _own, ...fields } = (whole['properties'] ?? {}) as Record<string, JsonSchema>;
  return Object.fromEntries(Object.entries(fields).map(([name, field]) => [name, required.has(name) ? field : S.sometimes(field)]));
};

/** One step of a walk through a list: rows after an id, oldest first. */
export interface Step {
  after: string | null;
  take: number;
}

export interface ListFilter {
  archived: boolean;
}
