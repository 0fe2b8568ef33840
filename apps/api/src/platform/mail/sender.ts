import { Inject, Injectable, type OnModuleInit } from '@nestjs/common';
import type pg from 'pg';
import type { Logger } from 'pino';
import { CONFIG, type Config } from '../config/config.js';
import { POOL } from '../database/pool.js';
import { Tasks, type Loop } from '../jobs/jobs.js';
import { LOG } from '../logging/log.js';
import { Sealer } from '../sealing/sealer.js';
import { MAIL_SEAL } from './outbox.js';
import { transportOf, type Send } from './transport.js';

const LOOK_MS = 2_000;
const AT_ONCE = 5;
const MINUTE_MS = 60_000;
/** After the first try and each later one; after the last the mail is given up. */
const AGAIN_AFTER_MS = [1, 5, 30, 2 * 60, 8 * 60, 24 * 60].map((minutes) => minutes * MINUTE_MS);

interface MailRow {
  id: string;
  recipient: string;
  subject: string;
  body: string;
  attempts: number;
}

/** What went wrong, without the address or what the mail server repeats of the message. */
const reasonOf = (error: unknown): string => {
  const { code, responseCode } = (error ?? {}) as { code?: unknown; responseCode?: unknown };
  return [code, responseCode].filter((part) => typeof part === 'string' || typeof part === 'number').join(' ') || 'unknown';
};

/** A mail server that says 5xx to an address will say it again. */
const isFinal = (error: unknown): boolean => {
  const { responseCode } = (error ?? {}) as { responseCode?: unknown };
  return typeof responseCode === 'number' && responseCode >= 500 && responseCode < 600;
};

/** Sends what waits in the outbox, beside the job queue. A crash between sending and noting sends twice, under one Message-ID. */
@Injectable()
export class MailSender implements OnModuleInit, Loop {
  private readonly send: Send;
  private timer: NodeJS.Timeout | null = null;
  private sending: Promise<unknown> = Promise.resolve();

  constructor(
    private readonly tasks: Tasks,
    private readonly sealer: Sealer,
    @Inject(POOL) private readonly pool: pg.Pool,
    @Inject(CONFIG) config: Config,
    @Inject(LOG) private readonly log: Logger,
  ) {
    this.send = transportOf(config);
  }

  onModuleInit(): void {
    this.tasks.loops.push(this);
  }

  start(): void {
    const look = (): void => {
      this.sending = this.sendDue()
        .catch((error: unknown) => this.log.warn({ err: error }, 'mail could not be looked after'))
        .finally(() => {
          if (this.timer) this.timer = setTimeout(look, LOOK_MS).unref();
        });
    };
    this.timer = setTimeout(look, 0).unref();
  }

  async stop(): Promise<void> {
    if (this.timer) clearTimeout(this.timer);
    this.timer = null;
    await this.sending;
  }

  /** Sends all that is due now; tells how many tries that were. */
  async sendDue(): Promise<number> {
    for (let count = 0; ;) {
      const { rows } = await this.pool.query<MailRow>({ name: 'claim-mail', text: 'SELECT * FROM claim_mail($1)', values: [AT_ONCE] });
      if (rows.length === 0) return count;
      await Promise.all(rows.map((row) => this.sendOne(row)));
      count += rows.length;
    }
  }

  private async sendOne(row: MailRow): Promise<void> {
    try {
      const body = this.sealer.open(MAIL_SEAL, row.id, Buffer.from(row.body, 'base64url'));
      await this.send({ id: row.id, to: row.recipient, subject: row.subject, body });
      await this.end(row, true, null, null);
      this.log.info({ mailId: row.id, try: row.attempts }, 'mail sent');
    } catch (error) {
      const wait = isFinal(error) ? undefined : AGAIN_AFTER_MS[row.attempts - 1];
      const reason = reasonOf(error);
      this.log[wait === undefined ? 'error' : 'warn'](
        { mailId: row.id, try: row.attempts, reason },
        wait === undefined ? 'mail given up' : 'mail not sent yet',
      );
      await this.end(row, false, reason, wait === undefined ? null : new Date(Date.now() + wait));
    }
  }

  private async end(row: MailRow, sent: boolean, reason: string | null, retryAt: Date | null): Promise<void> {
    await this.pool.query({ name: 'end-mail', text: 'SELECT end_mail($1, $2, $3, $4, $5)', values: [row.id, row.attempts, sent, reason, retryAt] });
  }
}
