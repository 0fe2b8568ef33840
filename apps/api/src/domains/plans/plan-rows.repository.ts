import { Prisma } from '../../platform/database/generated/client.js';
import type { Step } from '../shared/resource.js';

/** One plan as it is read: all that a reader is told of it comes with one question. */
export interface PlanRow {
  id: string;
  build_id: string;
  revision: number;
  state: string;
  as_of: string;
  inputs_sha256: string;
  attempt: number;
  problem: unknown;
  created_by_id: string | null;
  created_at: Date;
  started_at: Date | null;
  finished_at: Date | null;
  stale: { reason: string; subject: string | null; since: string }[] | null;
  reviews: { id: string; decision: 'reviewed' | 'changesWanted'; reviewer: string; comment: string | null; createdAt: string }[] | null;
  as_built_count: number;
}

// The inputs and the result are large and asked for on their own. What stands beside a plan is gathered per plan, along
// the index on (garden_id, plan_id): the tables beside it may be of any size.
const PLAN = Prisma.sql`SELECT p.id, p.build_id, p.revision, p.state, p.as_of::text, p.inputs_sha256, p.attempt, p.problem, p.created_by_id,
    p.created_at, p.started_at, p.finished_at,
    (SELECT jsonb_agg(jsonb_build_object('reason', s.reason, 'subject', s.subject, 'since', to_char(s.created_at AT TIME ZONE 'UTC', 'YYYY-MM-DD"T"HH24:MI:SS.MS"Z"')) ORDER BY s.id)
       FROM (SELECT * FROM plan_staleness o WHERE o.garden_id = p.garden_id AND o.plan_id = p.id ORDER BY o.id LIMIT 50) s) AS stale,
    (SELECT jsonb_agg(jsonb_build_object('id', r.id, 'decision', r.decision, 'reviewer', r.reviewer, 'comment', r.comment,
         'createdAt', to_char(r.created_at AT TIME ZONE 'UTC', 'YYYY-MM-DD"T"HH24:MI:SS.MS"Z"')) ORDER BY r.id)
       FROM (SELECT * FROM plan_reviews o WHERE o.garden_id = p.garden_id AND o.plan_id = p.id ORDER BY o.id LIMIT 50) r) AS reviews,
    (SELECT count(*)::int FROM plan_as_builts a WHERE a.garden_id = p.garden_id AND a.plan_id = p.id) AS as_built_count`;

/** Row security adds the garden: the two together are the primary key. */
export const planSql = (id: string): Prisma.Sql => Prisma.sql`${PLAN},
    (SELECT (f.result ->> 'reviewBlocked')::boolean FROM plan_results f WHERE f.garden_id = p.garden_id AND f.plan_id = p.id AND p.state = 'ready') AS review_blocked
  FROM plan_revisions p WHERE p.id = ${id}::uuid`;

const PAGE = Prisma.sql`${PLAN} FROM plan_revisions p`;

export const plansSql = (buildId: string | null, { after, take }: Step): Prisma.Sql => {
  const wheres = [...(buildId ? [Prisma.sql`p.build_id = ${buildId}::uuid`] : []), ...(after ? [Prisma.sql`p.id > ${after}::uuid`] : [])];
  const where = wheres.length > 0 ? Prisma.sql`WHERE ${Prisma.join(wheres, ' AND ')}` : Prisma.empty;
  return Prisma.sql`${PAGE} ${where} ORDER BY p.id LIMIT ${take}`;
};

/** The stored text goes out as it is: reading it into objects to write it out again would cost more than the question. */
export interface ResultRow {
  state: string;
  text: string | null;
  schema_version: number | null;
  engine_version: string | null;
}

export const resultSql = (id: string): Prisma.Sql =>
  Prisma.sql`SELECT p.state, f.result::text AS text, f.schema_version, f.engine_version
    FROM plan_revisions p LEFT JOIN plan_results f ON f.garden_id = p.garden_id AND f.plan_id = p.id AND p.state = 'ready' WHERE p.id = ${id}::uuid`;
