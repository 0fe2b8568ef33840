import type { Request, Response } from 'express';
import { Problem } from '../../platform/problems/problem.js';
import type { JobEventRecord } from './jobs.repository.js';

/** The number of the last event the client has seen: 0 at the first visit. It cannot have seen what has not happened. */
export const lastEventIdOf = (request: Request, newest: number): number => {
  const header = request.get('last-event-id')?.trim();
  if (header === undefined || header === '') return 0;
  const number = /^\d{1,9}$/.test(header) ? Number(header) : Number.NaN;
  if (number <= newest) return number;
  throw new Problem('validation-failed', { count: 1 }, [
    { pointer: '/Last-Event-ID', in: 'header', code: 'not-an-event', detail: 'The id of an event of this job is wanted.', allowed: `0 to ${newest}` },
  ]);
};

/** One event in the form of the HTML standard, section 9.2. JSON holds no line break, so one data line is enough. */
export const writeEvent = (response: Response, jobId: string, event: JobEventRecord, name: 'progress' | 'end'): void => {
  const data = { jobId, state: event.state, progress: event.progress, stage: event.stage, attemptCount: event.attempt, at: event.at };
  response.write(`id: ${event.number}\nevent: ${name}\ndata: ${JSON.stringify(data)}\n\n`);
};

export const writeComment = (response: Response, text: string): void => {
  response.write(`: ${text}\n\n`);
};
