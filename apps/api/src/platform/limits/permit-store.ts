import { Inject, Injectable, type OnApplicationShutdown } from '@nestjs/common';
import type pg from 'pg';
import { SIDE_POOL } from '../database/pool.js';

export interface Wish {
  bucket: string;
  quota: number;
  windowMs: number;
  wanted: number;
  /** Permits of an earlier lease that nobody used, and the slice they were taken in. */
  unused: number;
  unusedSlice: number;
}

export interface Grant {
  granted: number;
  remaining: number;
  slice: number;
  returnsMs: number;
}

interface Row {
  place: number;
  granted: number;
  remaining: number;
  in_slice: string;
  returns_ms: number;
}

interface Waiting {
  wish: Wish;
  resolve: (grant: Grant) => void;
  reject: (error: unknown) => void;
}

const MOST_AT_ONCE = 500;
const SWEEP_MS = 60_000;

/**
 * The shared count of permits. All wishes that come while one round trip is under way go out together with the next,
 * so that this process never has more than one question open, however many ask.
 */
@Injectable()
export class PermitStore implements OnApplicationShutdown {
  private waiting: Waiting[] = [];
  private busy = false;
  private sweptAt = performance.now();

  constructor(@Inject(SIDE_POOL) private readonly pool: pg.Pool) {}

  take(wish: Wish): Promise<Grant> {
    return new Promise((resolve, reject) => {
      this.waiting.push({ wish, resolve, reject });
      if (!this.busy) {
        this.busy = true;
        queueMicrotask(() => void this.work());
      }
    });
  }

  async onApplicationShutdown(): Promise<void> {
    if (!this.pool.ended) await this.pool.end();
  }

  private async work(): Promise<void> {
    while (this.waiting.length > 0) {
      const batch = this.waiting.splice(0, MOST_AT_ONCE);
      try {
        const grants = await this.ask(batch.map(({ wish }) => wish));
        batch.forEach(({ resolve, reject }, at) => {
          const grant = grants.get(at);
          if (grant) resolve(grant);
          else reject(new Error('a bucket got no answer'));
        });
      } catch (error) {
        for (const { reject } of batch) reject(error);
      }
    }
    this.busy = false;
  }

  private async ask(wishes: readonly Wish[]): Promise<Map<number, Grant>> {
    const now = performance.now();
    const sweep = now - this.sweptAt > SWEEP_MS;
    if (sweep) this.sweptAt = now;
    const { rows } = await this.pool.query<Row>({
      name: 'take-permits',
      text: 'SELECT * FROM take_permits($1::bytea[], $2::int[], $3::int[], $4::int[], $5::int[], $6::bigint[], $7)',
      values: [
        wishes.map(({ bucket }) => Buffer.from(bucket, 'hex')),
        wishes.map(({ quota }) => quota),
        wishes.map(({ windowMs }) => windowMs),
        wishes.map(({ wanted }) => wanted),
        wishes.map(({ unused }) => unused),
        wishes.map(({ unusedSlice }) => unusedSlice),
        sweep,
      ],
    });
    return new Map(
      rows.map((row) => [row.place - 1, { granted: row.granted, remaining: row.remaining, slice: Number(row.in_slice), returnsMs: row.returns_ms }]),
    );
  }
}
