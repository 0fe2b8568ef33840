import { Injectable, type BeforeApplicationShutdown } from '@nestjs/common';
import type { Response } from 'express';
import type { Actor } from '../../platform/access/actor.js';
import type { Asked } from '../../platform/access/access.guard.js';
import { StillAllowed } from '../../platform/access/still-allowed.js';
import { Database } from '../../platform/database/database.js';
import { JobFeed } from '../../platform/jobs/feed.js';
import { Problem } from '../../platform/problems/problem.js';
import { must } from '../shared/change.js';
import { lastEventIdOf, writeComment, writeEvent } from './event-stream.js';
import { JobsRepository, type JobEventRecord, type JobRecord } from './jobs.repository.js';

const OPERATION = 'streamJobEvents';
/** A revoked key ends its streams within a second. */
const RECHECK_MS = 500;
/** How often a stream looks by itself, should the bell be out of order. */
const POLL_MS = 1000;
/** Proxies give up on a silent connection; the specification asks for a comment line about every 15 seconds. */
const COMMENT_MS = 10_000;
const STREAMS_EACH = 10;
const BATCH = 100;

const isLast = (event: JobEventRecord): boolean => event.state !== 'queued' && event.state !== 'running';

interface Stream {
  actor: Actor;
  token: string;
  jobId: string;
  response: Response;
  lastNumber: number;
  /** Wakes the stream up at once. */
  wake: () => void;
  closed: boolean;
}

/**
 * Tells the events of a job as they come (server-sent events). They are read from the table in the order of their
 * numbers, so whoever comes back with the last number it saw gets what follows: nothing missing, nothing twice.
 */
@Injectable()
export class JobStreams implements BeforeApplicationShutdown {
  private readonly open = new Set<Stream>();
  private stopping = false;

  constructor(
    private readonly database: Database,
    private readonly jobs: JobsRepository,
    private readonly feed: JobFeed,
    private readonly access: StillAllowed,
  ) {}

  async serve(actor: Actor, request: Asked, response: Response, jobId: string): Promise<void> {
    const job: JobRecord = must(await this.database.readSnapshot(actor, (db) => this.jobs.find(db, jobId)), 'job');
    const lastNumber = lastEventIdOf(request, job.eventCount);
    // To a client that has seen the end, 204 says: do not come back.
    if (job.finishedAt !== null && lastNumber >= job.eventCount) return void response.status(204).end();
    const mine = [...this.open].filter(({ actor: { credentialId } }) => credentialId === actor.credentialId);
    if (mine.length >= STREAMS_EACH)
      throw new Problem('too-many-requests', { what: `At most ${STREAMS_EACH} streams may be open at once.` }, [], { 'Retry-After': '5' });
    // Not by Express, which adds a charset: these streams are UTF-8 by definition.
    response.setHeader('Content-Type', 'text/event-stream').setHeader('X-Accel-Buffering', 'no').setHeader('Connection', 'keep-alive');
    response.flushHeaders();
    if (request.method === 'HEAD') return void response.end();
    await this.run({ actor, token: request.credential ?? '', jobId, response, lastNumber, wake: () => undefined, closed: false });
  }

  private async run(stream: Stream): Promise<void> {
    const close = (): void => {
      stream.closed = true;
      stream.wake();
    };
    stream.response.on('close', close);
    stream.response.on('error', close);
    let rung = true;
    const off = this.feed.onChange(stream.jobId, () => {
      rung = true;
      stream.wake();
    });
    this.open.add(stream);
    let [readAt, checkedAt, wroteAt] = [0, performance.now(), performance.now()];
    try {
      while (!stream.closed && !this.stopping) {
        const now = performance.now();
        if (now - checkedAt >= RECHECK_MS) {
          checkedAt = now;
          if (!(await this.mayGoOn(stream))) break;
        }
        if (rung || now - readAt >= POLL_MS) {
          rung = false;
          readAt = now;
          const told = await this.tell(stream);
          if (told > 0) wroteAt = now;
          if (told < 0) break;
          if (told === BATCH) rung = true;
        }
        if (now - wroteAt >= COMMENT_MS) {
          wroteAt = now;
          writeComment(stream.response, 'still here');
        }
        if (!rung) await this.pause(stream, () => rung);
      }
    } catch {
      // Nothing can be said any more in an answer that has begun; the client comes back and asks again.
    } finally {
      off();
      this.open.delete(stream);
      stream.response.end();
    }
  }

  private async mayGoOn(stream: Stream): Promise<boolean> {
    const actor = await this.access.actorNow(stream.actor, stream.token, OPERATION);
    if (!actor) return false;
    stream.actor = actor;
    return (await this.database.readSnapshot(actor, (db) => this.jobs.find(db, stream.jobId))) !== null;
  }

  /** Writes what is new and says how much that was; -1 when the last event was among it. */
  private async tell(stream: Stream): Promise<number> {
    const events = await this.database.readSnapshot(stream.actor, (db) => this.jobs.eventsAfter(db, stream.jobId, stream.lastNumber, BATCH));
    for (const event of events) {
      if (stream.closed) return -1;
      writeEvent(stream.response, stream.jobId, event, isLast(event) ? 'end' : 'progress');
      stream.lastNumber = event.number;
      if (isLast(event)) return -1;
    }
    return events.length;
  }

  private async pause(stream: Stream, woken: () => boolean): Promise<void> {
    await new Promise<void>((resolve) => {
      const timer = setTimeout(resolve, RECHECK_MS);
      stream.wake = () => {
        clearTimeout(timer);
        resolve();
      };
      // The bell may have rung between the last look and here.
      if (woken() || stream.closed) stream.wake();
    });
    stream.wake = () => undefined;
  }

  /** Streams end before the server waits for its connections. */
  beforeApplicationShutdown(): void {
    this.stopping = true;
    for (const stream of this.open) {
      stream.closed = true;
      stream.wake();
    }
  }
}
