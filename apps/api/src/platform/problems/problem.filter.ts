import { Catch, HttpException, type ArgumentsHost, type ExceptionFilter } from '@nestjs/common';
import type { Request, Response } from 'express';
import type { Logger } from 'pino';
import { contextOrNull } from '../http/context.js';
import type { RouteTable } from '../http/route-table.js';
import type { ProblemKey } from './catalogue.js';
import { Problem } from './problem.js';

const UNREACHABLE = new Set([
  'ECONNREFUSED',
  'ECONNRESET',
  'ETIMEDOUT',
  '57P01',
  '57P02',
  '57P03',
  '53300',
  '3D000',
  '08006',
  '08001',
  'P1001',
  'P1002',
  'P1008',
  'P1017',
  'P2024',
  'P2028',
  'P2037',
]);

/** The database runs and does not do what is asked: it is read-only or full for now, or gave up after its time limit. */
const UNABLE: Readonly<Record<string, ProblemKey>> = {
  '25006': 'read-only',
  '53100': 'storage-full',
  '53200': 'unavailable',
  '57014': 'timed-out',
  '25P03': 'timed-out',
  '40001': 'unavailable',
  '40P01': 'unavailable',
};

interface Linked {
  code?: string;
  originalCode?: string;
  cause?: unknown;
  meta?: { driverAdapterError?: unknown };
}

/** Everybody else's requests hold all connections. */
const NO_CONNECTION = /timeout exceeded when trying to connect|Unable to start a transaction in the given time/i;

const isOverloaded = (error: unknown, depth = 0): boolean => {
  if (typeof error !== 'object' || error === null || depth > 5) return false;
  const { code, message, cause, meta } = error as Linked & { message?: string };
  if (code === 'P2024' || NO_CONNECTION.test(message ?? '')) return true;
  return isOverloaded(cause, depth + 1) || isOverloaded(meta?.driverAdapterError, depth + 1);
};

const unableKey = (error: unknown, depth = 0): ProblemKey | null => {
  if (typeof error !== 'object' || error === null || depth > 5) return null;
  const { code, originalCode, cause, meta } = error as Linked;
  return UNABLE[code ?? ''] ?? UNABLE[originalCode ?? ''] ?? unableKey(cause, depth + 1) ?? unableKey(meta?.driverAdapterError, depth + 1);
};

/** Whether an error, or what caused it, says that the database could not be reached. */
const isUnreachable = (error: unknown, depth = 0): boolean => {
  if (typeof error !== 'object' || error === null || depth > 5) return false;
  const { code, originalCode, message, cause, meta } = error as {
    code?: string;
    originalCode?: string;
    message?: string;
    cause?: unknown;
    meta?: { driverAdapterError?: unknown };
  };
  if ((code && UNREACHABLE.has(code)) || (originalCode && UNREACHABLE.has(originalCode))) return true;
  if (message && /connection (terminated|timeout)|timeout exceeded when trying to connect|server closed the connection/i.test(message)) return true;
  return isUnreachable(cause, depth + 1) || isUnreachable(meta?.driverAdapterError, depth + 1);
};

const ROW_SECURITY = /violates row-level security policy/;

/** Whether row security refused a change: the row is visible, and not the caller's to change. */
const isRefusedByRow = (error: unknown, depth = 0): boolean => {
  if (typeof error !== 'object' || error === null || depth > 5) return false;
  const { message, cause, meta } = error as { message?: string; cause?: unknown; meta?: { driverAdapterError?: unknown } };
  return ROW_SECURITY.test(message ?? '') || isRefusedByRow(cause, depth + 1) || isRefusedByRow(meta?.driverAdapterError, depth + 1);
};

const ofHttp = (error: HttpException): Problem => {
  const status = error.getStatus();
  if (status === 404) return new Problem('route-unknown');
  if (status === 413) return new Problem('body-too-large', { limit: 1_048_576 });
  return status < 500 ? new Problem('malformed-request') : new Problem('internal');
};

/** Any error as a problem of the catalogue. Nothing of an unknown error gets out. */
export const toProblem = (error: unknown): Problem => {
  if (error instanceof Problem) return error;
  if (error instanceof HttpException) return ofHttp(error);
  if (error instanceof URIError) return new Problem('malformed-request');
  if (isRefusedByRow(error)) return new Problem('not-yours');
  const unable = unableKey(error);
  if (unable) return new Problem(unable, unable === 'timed-out' ? { what: 'The database' } : {}, [], { 'Retry-After': unable === 'unavailable' ? '1' : '10' });
  if (isOverloaded(error)) return new Problem('timed-out', { what: 'Waiting for the database' }, [], { 'Retry-After': '2' });
  return isUnreachable(error) ? new Problem('unavailable', {}, [], { 'Retry-After': '2' }) : new Problem('internal');
};

/** The only place where a refusal becomes HTTP: problem+json by RFC 9457, for everything. */
@Catch()
export class ProblemFilter implements ExceptionFilter {
  /** Known once the application has started. */
  routes: RouteTable | null = null;

  constructor(private readonly log: Logger) {}

  catch(error: unknown, host: ArgumentsHost): void {
    const http = host.switchToHttp();
    this.answer(error, http.getRequest<Request>(), http.getResponse<Response>());
  }

  answer(error: unknown, request: Request, response: Response): void {
    const problem = this.problemOf(error, request);
    const requestId = contextOrNull()?.requestId ?? String(response.getHeader('X-Request-Id') ?? '');
    if (problem.status >= 500) this.log.error({ err: error, requestId, problem: problem.key }, 'request failed');
    if (response.headersSent) {
      response.destroy();
      return;
    }
    for (const name of ['ETag', 'Location', 'Link']) response.removeHeader(name);
    response.set(problem.headers);
    const text = JSON.stringify({ ...problem.toBody(), requestId });
    response.status(problem.status).type('application/problem+json');
    // For HEAD it sends the headers of the text, without the text.
    response.send(text);
  }

  /** The framework says "not found" for a wrong method too; whoever asked is told which methods there are. */
  private problemOf(error: unknown, request: Request): Problem {
    const allowed = error instanceof HttpException && error.getStatus() === 404 ? (this.routes?.allowed(request) ?? []) : [];
    return allowed.length > 0 ? new Problem('method-not-allowed', { method: request.method }, [], { Allow: allowed.join(', ') }) : toProblem(error);
  }
}
