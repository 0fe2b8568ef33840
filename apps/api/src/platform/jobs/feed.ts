import { EventEmitter } from 'node:events';
import { Inject, Injectable, type BeforeApplicationShutdown } from '@nestjs/common';
import pg from 'pg';
import type { Logger } from 'pino';
import { ADDRESSES, type Addresses } from '../database/addresses.js';
import { LOG } from '../logging/log.js';
import type { JobState } from './job-rows.js';

const CHANNEL = 'lathwork_jobs';
const RECONNECT_MS = 1000;

type Listener = (state: JobState) => void;

/**
 * Hears of changes to jobs the moment they are committed, over one connection of its own that serves nothing else. It
 * is a bell, not a messenger: what changed is read from the tables, and who listens also looks by itself now and then,
 * so that a lost connection only makes them slower.
 */
@Injectable()
export class JobFeed implements BeforeApplicationShutdown {
  private readonly bell = new EventEmitter().setMaxListeners(0);
  private client: pg.Client | null = null;
  private connecting = false;
  private stopped = false;

  constructor(
    @Inject(ADDRESSES) private readonly addresses: Addresses,
    @Inject(LOG) private readonly log: Logger,
  ) {}

  /** Calls at every change of one job, until the returned function is called. */
  onChange(jobId: string, listener: Listener): () => void {
    this.bell.on(jobId, listener);
    this.connect();
    return () => void this.bell.off(jobId, listener);
  }

  private connect(): void {
    if (this.client || this.connecting || this.stopped) return;
    this.connecting = true;
    void this.open()
      .catch((error: unknown) => {
        this.log.warn({ err: error }, 'changes of jobs are not heard of at once');
        setTimeout(() => this.connect(), RECONNECT_MS).unref();
      })
      .finally(() => {
        this.connecting = false;
      });
  }

  private async open(): Promise<void> {
    const client = new pg.Client({ connectionString: this.addresses.url, keepAlive: true, application_name: 'lathwork-feed' });
    const lost = (): void => {
      if (this.client !== client) return;
      this.client = null;
      setTimeout(() => this.connect(), RECONNECT_MS).unref();
    };
    client.on('error', lost);
    client.on('end', lost);
    client.on('notification', ({ payload }) => {
      const [id = '', state = ''] = (payload ?? '').split(' ');
      this.bell.emit(id, state as JobState);
    });
    await client.connect();
    await client.query(`LISTEN ${CHANNEL}`);
    if (this.stopped) return client.end();
    this.client = client;
  }

  async beforeApplicationShutdown(): Promise<void> {
    this.stopped = true;
    const client = this.client;
    this.client = null;
    await client?.end().catch(() => undefined);
  }
}
