import { randomUUID } from 'node:crypto';
import { STATUS_CODES, type Server } from 'node:http';
import type { Duplex } from 'node:stream';
import type { ProblemKey } from './catalogue.js';
import { Problem } from './problem.js';

const KEYS: Readonly<Record<string, ProblemKey>> = {
  HPE_HEADER_OVERFLOW: 'headers-too-large',
  ERR_HTTP_REQUEST_TIMEOUT: 'request-too-slow',
};

const textOf = (problem: Problem, fixed: Readonly<Record<string, string>>): string => {
  const requestId = randomUUID();
  const body = JSON.stringify({ ...problem.toBody(), requestId });
  const headers = {
    ...fixed,
    'X-Request-Id': requestId,
    'Content-Type': 'application/problem+json; charset=utf-8',
    'Content-Length': String(Buffer.byteLength(body)),
    Connection: 'close',
  };
  const lines = Object.entries(headers).map(([name, value]) => `${name}: ${value}\r\n`);
  return `HTTP/1.1 ${problem.status} ${STATUS_CODES[problem.status] ?? ''}\r\n${lines.join('')}\r\n${body}`;
};

/** What is not even HTTP never meets the application. It is answered here, in the same form as every other refusal. */
export const refuseBroken = (server: Server, fixed: Readonly<Record<string, string>>): void => {
  server.on('clientError', (error: Error & { code?: string }, socket: Duplex) => {
    // Nobody is there any more, or an answer is on its way: a second one would be taken for a part of it.
    const begun = (socket as Duplex & { _httpMessage?: { headersSent: boolean } | null })._httpMessage?.headersSent ?? false;
    if (error.code === 'ECONNRESET' || !socket.writable || begun) {
      socket.destroy();
      return;
    }
    socket.end(textOf(new Problem(KEYS[error.code ?? ''] ?? 'malformed-request'), fixed));
  });
};
