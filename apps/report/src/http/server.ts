import { createHash, timingSafeEqual } from 'node:crypto';
import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import type { DocumentRequest } from '@lathwork/model';
import { QueueFullError } from '../print/queue.js';
import { OverflowError, RenderTimeoutError } from '../print/render.js';
import type { Rendered } from '../print/renderer.js';
import { MissingGlyphError } from '../theme/fonts.js';
import { sendProblem } from './problem.js';
import { checkRequest } from './validate.js';

/** `info` for what was done, `error` for what failed. */
export type LogEvent = (level: 'info' | 'error', event: Record<string, unknown>, message: string) => void;

export interface ServerParts {
  secret: string;
  bodyLimitBytes: number;
  render: (request: DocumentRequest) => Promise<Rendered>;
  isReady: () => Promise<boolean>;
  log: LogEvent;
}

class BodyTooLargeError extends Error {}

/** Compared as digests of equal length, so that neither content nor length shows in the time it takes. */
function isAuthorised(header: string | undefined, secret: string): boolean {
  const digest = (text: string): Buffer => createHash('sha256').update(text).digest();
  return timingSafeEqual(digest(header ?? ''), digest(`Bearer ${secret}`));
}

async function readBody(request: IncomingMessage, limit: number): Promise<Buffer> {
  if (Number(request.headers['content-length'] ?? 0) > limit) throw new BodyTooLargeError();
  const chunks: Buffer[] = [];
  let size = 0;
  for await (const chunk of request as AsyncIterable<Buffer>) {
    size += chunk.length;
    if (size > limit) throw new BodyTooLargeError();
    chunks.push(chunk);
  }
  return Buffer.concat(chunks);
}

function answerFailure(response: ServerResponse, error: unknown, parts: ServerParts): void {
  if (error instanceof BodyTooLargeError)
    return sendProblem(response, 'too-large', { status: 413, title: 'The body is too large', limitBytes: parts.bodyLimitBytes }, { connection: 'close' });
  if (error instanceof QueueFullError)
    return sendProblem(response, 'busy', { status: 503, title: 'Too many documents are waiting', detail: 'Try again later.' }, { 'retry-after': '5' });
  if (error instanceof MissingGlyphError)
    return sendProblem(response, 'cannot-set', {
      status: 422,
      title: 'A character cannot be set',
      detail: `${error.message}. Write the name in letters the fonts have.`,
      characters: error.characters,
    });
  if (error instanceof OverflowError)
    return sendProblem(response, 'does-not-fit', { status: 422, title: 'The content does not fit its page', detail: error.message });
  if (error instanceof Error && error.name === 'DoesNotFitError')
    return sendProblem(response, 'does-not-fit', { status: 422, title: 'A drawing does not fit its place', detail: error.message });
  if (error instanceof RenderTimeoutError) return sendProblem(response, 'too-slow', { status: 504, title: 'The document took too long' });
  parts.log('error', { error: error instanceof Error ? (error.stack ?? error.message) : String(error) }, 'render failed');
  return sendProblem(response, 'failed', { status: 500, title: 'The document could not be made' });
}

async function documents(request: IncomingMessage, response: ServerResponse, parts: ServerParts): Promise<void> {
  if (!isAuthorised(request.headers.authorization, parts.secret)) {
    request.resume();
    return sendProblem(response, 'unauthorised', { status: 401, title: 'The secret is missing or wrong' }, { 'www-authenticate': 'Bearer' });
  }
  const body = await readBody(request, parts.bodyLimitBytes);
  let parsed: unknown;
  try {
    parsed = JSON.parse(body.toString('utf8'));
  } catch {
    return sendProblem(response, 'bad-body', { status: 400, title: 'The body is not JSON' });
  }
  const checked = checkRequest(parsed);
  if (!checked.ok) return sendProblem(response, 'bad-body', { status: 400, title: 'The body does not match the contract', faults: checked.faults });
  const done = await parts.render(checked.request);
  response.writeHead(200, {
    'content-type': 'application/pdf',
    'content-length': done.bytes.length,
    'x-pages': String(done.pages),
    'x-sha256': done.sha256,
    'x-engine-version': done.engineVersion,
    'cache-control': 'no-store',
  });
  response.end(done.bytes);
  parts.log(
    'info',
    { pages: done.pages, bytes: done.bytes.length, plan: checked.request.inputs.planId, revision: checked.request.inputs.revision },
    'document made',
  );
}

async function route(request: IncomingMessage, response: ServerResponse, parts: ServerParts): Promise<void> {
  const path = (request.url ?? '/').split('?')[0];
  const text = (status: number, words: string): void => {
    response.writeHead(status, { 'content-type': 'text/plain; charset=utf-8' });
    response.end(words);
  };
  if (path === '/livez' && request.method === 'GET') return text(200, 'alive');
  if (path === '/readyz' && request.method === 'GET') return (await parts.isReady()) ? text(200, 'ready') : text(503, 'not ready');
  if (path !== '/documents') return sendProblem(response, 'not-found', { status: 404, title: 'There is nothing here' });
  if (request.method !== 'POST') return sendProblem(response, 'method', { status: 405, title: 'Only POST' }, { allow: 'POST' });
  try {
    await documents(request, response, parts);
  } catch (error) {
    answerFailure(response, error, parts);
  }
}

export function createReportServer(parts: ServerParts): Server {
  const server = createServer((request, response) => {
    void route(request, response, parts).catch((error: unknown) => answerFailure(response, error, parts));
  });
  server.requestTimeout = 60_000;
  server.headersTimeout = 10_000;
  return server;
}
