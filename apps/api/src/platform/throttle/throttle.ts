import { createHash } from 'node:crypto';
import { Inject, Injectable } from '@nestjs/common';
import type { Request } from 'express';
import ipaddr from 'ipaddr.js';
import type pg from 'pg';
import { POOL } from '../database/pool.js';
import { Problem } from '../problems/problem.js';

/** How tries are slowed: the first so many are free, each later one waits twice as long as the one before. */
export interface Slowing {
  freeCount: number;
  longestWaitS: number;
  /** After so long without a try all is forgotten. */
  forgetS: number;
}

export interface Quota {
  limit: number;
  stretchS: number;
  /** What is counted, for whoever is refused. */
  what: string;
}

/** A key of the table of tries: a hash, so that the table names nobody. */
const keyOf = (kind: string, who: string): Buffer => createHash('sha256').update(`${kind}\n${who}`).digest();

/** The network address of a caller, as far as one household or office has it: all of IPv4, the first 64 bits of IPv6. */
export const networkOf = (request: Request): string => {
  const text = request.ip ?? '';
  if (!ipaddr.isValid(text)) return 'unknown';
  const address = ipaddr.process(text);
  return address.kind() === 'ipv4' ? address.toString() : address.toByteArray().slice(0, 8).join('.');
};

const retryAfter = (seconds: number): Record<string, string> => ({ 'Retry-After': String(seconds) });

/**
 * Counts tries in the database, so that it holds for all processes together. A try is counted before it is made: of
 * many that arrive at once none slips through. Each count stands by itself, whatever becomes of the request.
 */
@Injectable()
export class Throttle {
  constructor(@Inject(POOL) private readonly pool: pg.Pool) {}

  /** Takes a try, or refuses with the time to wait. */
  async slow(kind: string, who: string, { freeCount, longestWaitS, forgetS }: Slowing): Promise<void> {
    const wait = await this.ask('SELECT take_attempt($1, $2, $3, $4) AS wait', [keyOf(kind, who), freeCount, longestWaitS, forgetS]);
    if (wait > 0) throw new Problem('slowed-down', {}, [], retryAfter(wait));
  }

  /** The try was right: what went before is forgotten. */
  async forgive(kind: string, who: string): Promise<void> {
    await this.pool.query({ name: 'forgive-attempts', text: 'SELECT forgive_attempts($1)', values: [keyOf(kind, who)] });
  }

  /** Takes one of the quota and gives 0, or gives the seconds until there is more. */
  take(kind: string, who: string, { limit, stretchS }: Quota): Promise<number> {
    return this.ask('SELECT take_quota($1, $2, $3) AS wait', [keyOf(kind, who), limit, stretchS]);
  }

  /** Takes one of the quota, or refuses. */
  async mustHave(kind: string, who: string, quota: Quota): Promise<void> {
    const wait = await this.take(kind, who, quota);
    if (wait > 0) throw usedUp(quota, wait);
  }

  private async ask(text: string, values: unknown[]): Promise<number> {
    const { rows } = await this.pool.query<{ wait: number }>({ name: text.slice(0, 30), text, values });
    return rows[0]?.wait ?? 0;
  }
}

export const usedUp = ({ limit, what }: Quota, wait: number): Problem => new Problem('quota-used-up', { limit, what }, [], retryAfter(wait));
