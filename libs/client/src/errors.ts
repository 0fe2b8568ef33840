import { retryAfterMs } from './retry-after.js';
import type { FieldFault } from './schemas.js';

/** What was asked. Never with its query: a query may hold coordinates, and errors end up in logs. */
export interface Asked {
  method: string;
  path: string;
}

/**
 * A refusal of the API (RFC 9457). Decide by `key` (it is stable), show `detail` and `remedy` to people, and keep
 * `requestId` for whoever runs the server.
 */
export class ProblemError extends Error {
  override readonly name = 'ProblemError';
  readonly status: number;
  /** Address of the page that tells what can be done, for example `/v1/problems/stock-short`. */
  readonly type: string;
  /** Last part of the type, for example `stock-short`. */
  readonly key: string;
  readonly title: string;
  readonly detail: string;
  readonly remedy: string | null;
  /** One entry for each wrong field, with a JSON Pointer into the body that was sent. */
  readonly errors: readonly FieldFault[];
  readonly requestId: string | null;
  /** How long the server wants to be left alone; null when it did not say. */
  readonly retryAfterS: number | null;
  /** The whole body: some problems carry more, such as the builds that already hold a thing. */
  readonly body: Readonly<Record<string, unknown>>;

  constructor(
    readonly asked: Asked,
    response: Response,
    text: string,
  ) {
    const body = objectIn(text);
    const field = (name: string): string | null => (typeof body[name] === 'string' ? body[name] : null);
    const errors = Array.isArray(body['errors']) ? (body['errors'] as FieldFault[]) : [];
    const title = field('title') ?? (response.statusText || 'No problem was named');
    const detail = field('detail') ?? '';
    const faults = errors.map((fault) => `\n    ${fault.pointer}: ${fault.detail}`).join('');
    super(`${asked.method} ${asked.path}: ${response.status} ${title}${detail ? `. ${detail}` : ''}${faults}`);
    const afterMs = retryAfterMs(response.headers);
    this.status = response.status;
    this.type = field('type') ?? 'about:blank';
    this.key = this.type.split('/').at(-1) ?? '';
    this.title = title;
    this.detail = detail;
    this.remedy = field('remedy');
    this.errors = errors;
    this.requestId = field('requestId') ?? response.headers.get('x-request-id');
    this.retryAfterS = afterMs === null ? null : afterMs / 1000;
    this.body = body;
  }
}

/** A gateway between us and the API may answer with anything: what is no JSON object says nothing. */
const objectIn = (text: string): Record<string, unknown> => {
  try {
    const value: unknown = JSON.parse(text);
    return typeof value === 'object' && value !== null && !Array.isArray(value) ? (value as Record<string, unknown>) : {};
  } catch {
    return {};
  }
};

/** No whole answer came: no connection, a connection that broke, or the time for one attempt was over. `cause` tells which. */
export class ConnectionError extends Error {
  override readonly name = 'ConnectionError';

  constructor(
    readonly asked: Asked,
    /** How often it was tried. A request that might do its work twice is tried once only. */
    readonly attempts: number,
    cause: unknown,
  ) {
    super(`${asked.method} ${asked.path}: no answer after ${attempts} ${attempts === 1 ? 'attempt' : 'attempts'}: ${reasonOf(cause)}`, { cause });
  }
}

const reasonOf = (cause: unknown): string => {
  if (!(cause instanceof Error)) return String(cause);
  return cause.cause instanceof Error ? `${cause.message} (${cause.cause.message})` : cause.message;
};

/** A plan or a document that ended in failure. Its problem tells why; asking again as it is will fail again. */
export class FailedError extends Error {
  override readonly name = 'FailedError';

  constructor(
    readonly what: string,
    readonly id: string,
    readonly problem: Readonly<Record<string, unknown>> | null,
  ) {
    const said = [problem?.['title'], problem?.['detail']].filter((part) => typeof part === 'string').join('. ');
    super(`the ${what} ${id} failed${said ? `: ${said}` : ''}`);
  }
}

/** It was not ready when the time to wait was over. It goes on: ask for it again by its id. */
export class NotReadyError extends Error {
  override readonly name = 'NotReadyError';

  constructor(
    readonly what: string,
    readonly id: string,
    readonly waitedMs: number,
  ) {
    super(`the ${what} ${id} is not ready after ${Math.round(waitedMs / 1000)} s`);
  }
}
