import { etagOfParts } from '../../platform/http/etag.js';
import { PageQuery } from '../../platform/http/page.js';
import { namedSchema, S } from '../../platform/http/response-schema.js';
import { JOB_STATES, type JobState } from '../../platform/jobs/job-rows.js';
import type { ProblemBody } from '../../platform/problems/problem.js';
import { ChoiceQuery } from '../shared/queries.dto.js';
import { subjectOf } from './job-kinds.js';
import type { JobRecord } from './jobs.repository.js';

export class JobListQuery extends PageQuery {
  @ChoiceQuery(JOB_STATES, 'Only jobs in this state') state?: JobState;
}

export interface JobResponse {
  id: string;
  kind: string;
  subject: { type: string; id: string } | null;
  state: JobState;
  progress: number;
  stage: string | null;
  attemptCount: number;
  problem: ProblemBody | null;
  createdAt: string;
  startedAt: string | null;
  finishedAt: string | null;
  links: { self: string; events: string; subject: string | null; result: string | null };
}

export const JobSchema = namedSchema(
  'Job',
  S.object({
    id: S.id(),
    kind: { ...S.text(60), description: 'What is done, such as compute-plan or render-document; more kinds will come' },
    subject: S.orNull(S.object({ type: S.text(60), id: S.id() })),
    state: S.choice(...JOB_STATES),
    progress: { ...S.whole(0, 100), description: 'Hundredths of the way; never falls' },
    stage: S.orNull({ ...S.text(40), description: 'A word for what the job is at' }),
    attemptCount: S.whole(0, 1000),
    problem: S.orNull({ $ref: '#/components/schemas/Problem' }),
    createdAt: S.moment(),
    startedAt: S.orNull(S.moment()),
    finishedAt: S.orNull(S.moment()),
    links: S.object({ self: S.text(200), events: S.text(200), subject: S.orNull(S.text(200)), result: S.orNull(S.text(200)) }),
  }),
);

export const toResponse = (job: JobRecord): JobResponse => {
  const subject = subjectOf(job.kind, job.id);
  const self = `/v1/jobs/${job.id}`;
  return {
    id: job.id,
    kind: job.kind,
    subject: subject && { type: subject.type, id: subject.id },
    state: job.state,
    progress: job.progress,
    stage: job.stage,
    attemptCount: job.attempt,
    problem: job.problem,
    createdAt: job.createdAt,
    startedAt: job.startedAt,
    finishedAt: job.finishedAt,
    links: { self, events: `${self}/events`, subject: subject?.self ?? null, result: job.state === 'succeeded' ? (subject?.result ?? null) : null },
  };
};

export const etagOfJob = (job: JobRecord): string => etagOfParts(job.id, job.eventCount);
