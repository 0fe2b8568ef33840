import type { ServerResponse } from 'node:http';

export interface Problem {
  status: number;
  title: string;
  detail?: string;
  [extension: string]: unknown;
}

/** RFC 9457. The type names the kind of problem, not a page on the network. */
export function sendProblem(response: ServerResponse, key: string, problem: Problem, headers: Record<string, string> = {}): void {
  if (response.headersSent) {
    response.destroy();
    return;
  }
  const body = JSON.stringify({ type: `urn:lathwork:report:${key}`, ...problem });
  response.writeHead(problem.status, {
    'content-type': 'application/problem+json',
    'content-length': Buffer.byteLength(body),
    'cache-control': 'no-store',
    ...headers,
  });
  response.end(body);
}
