import { createHmac, timingSafeEqual } from 'node:crypto';
import { ApiProperty } from '@nestjs/swagger';
import { Transform } from 'class-transformer';
import { fail } from '../problems/problem.js';
import { context, type RequestContext } from './context.js';
import { fieldRule, passStandIns } from './field-rule.js';

export const PAGE_LIMIT = { default: 20, max: 100 } as const;

const isLimit = (value: unknown): boolean => typeof value === 'number' && Number.isInteger(value) && value >= 1 && value <= PAGE_LIMIT.max;

/** How much of a list, and from where. Extend it with the list's own filters. */
export class PageQuery {
  @passStandIns({ optional: true })
  @fieldRule((value) => (isLimit(value) ? null : { code: 'out-of-range', detail: 'The limit must be a whole number from 1 to 100.', allowed: '1 to 100' }))
  @Transform(({ value }: { value: unknown }) => (typeof value === 'string' && /^\d{1,9}$/.test(value) ? Number(value) : value))
  @ApiProperty({ required: false, type: 'integer', minimum: 1, maximum: 100, default: 20 })
  limit: number = PAGE_LIMIT.default;

  @passStandIns({ optional: true })
  @fieldRule((value) => (typeof value === 'string' && value.length <= 500 ? null : { code: 'wrong-form', detail: 'A cursor of an earlier answer is wanted.' }))
  @ApiProperty({ required: false, type: 'string', maxLength: 500, description: 'from "next" of an earlier page' })
  cursor?: string;
}

/** One page; the interceptor adds the Link header. */
export class Page<T> {
  constructor(
    readonly items: readonly T[],
    /** Cursor of the next page, or null at the end. */
    readonly next: string | null,
  ) {}
}

/** What a cursor is good for: this garden, this address, these filters. */
const scopeOf = (from: RequestContext): string => {
  const filters = [...from.query].filter(([name]) => name !== 'cursor' && name !== 'limit').sort();
  return JSON.stringify([from.actor?.gardenId ?? null, from.path, filters]);
};

const sign = (key: string, from: RequestContext): Buffer =>
  createHmac('sha256', from.cursorSecret)
    .update(`${scopeOf(from)}\n${key}`)
    .digest()
    .subarray(0, 16);

const write = (key: string): string => Buffer.concat([sign(key, context()), Buffer.from(key, 'utf8')]).toString('base64url');

/** The key after which this page begins, or null for the first page. Refuses a cursor of another garden, list or filter. */
export const afterOf = (query: PageQuery): string | null => {
  if (query.cursor === undefined) return null;
  const bytes = Buffer.from(query.cursor, 'base64url');
  const key = bytes.subarray(16).toString('utf8');
  // Several texts decode to the same bytes; only the one that was given out counts.
  const genuine = bytes.length > 16 && bytes.toString('base64url') === query.cursor && timingSafeEqual(sign(key, context()), bytes.subarray(0, 16));
  return genuine ? key : fail('cursor-invalid');
};

/**
 * Makes a page of rows that were read with `take: limit + 1`, in the order of their key and beginning after
 * `afterOf(query)`. Map the rows before or after: only `keyOf` looks at them.
 */
export const toPage = <T>(rows: readonly T[], limit: number, keyOf: (row: T) => string, _query: PageQuery): Page<T> => {
  const items = rows.slice(0, limit);
  const last = items.at(-1);
  return new Page(items, rows.length > limit && last !== undefined ? write(keyOf(last)) : null);
};

/** The same page with other items. */
export const mapPage = <T, R>(page: Page<T>, map: (row: T) => R): Page<R> => new Page(page.items.map(map), page.next);
