import { createClient, type ClientOptions, type LathworkClient } from '@lathwork/client';

/** One request as it went out. */
export interface Sent {
  method: string;
  path: string;
  query: string;
  headers: Headers;
  body: unknown;
}

export interface Fake {
  api: LathworkClient;
  sent: Sent[];
  /** The waits that were asked for, in milliseconds. */
  slept: number[];
}

type Turn = Response | Error | ((sent: Sent) => Response | Error | Promise<Response>);

export const json = (status: number, body: unknown, headers: Record<string, string> = {}): Response =>
  new Response(JSON.stringify(body), { status, headers: { 'content-type': 'application/json', ...headers } });

export const problem = (status: number, key: string, more: Record<string, unknown> = {}, headers: Record<string, string> = {}): Response =>
  new Response(JSON.stringify({ type: `/v1/problems/${key}`, title: `Title of ${key}`, status, detail: `Detail of ${key}.`, remedy: 'Mend it.', ...more }), {
    status,
    headers: { 'content-type': 'application/problem+json', ...headers },
  });

/**
 * A client whose network is a list of turns, whose clock moves only by sleeping, and whose chance is always one half.
 * A request beyond the last turn is a fault of the test.
 */
export const fakeApi = (turns: Turn[], options: Partial<ClientOptions> = {}): Fake => {
  const [sent, slept]: [Sent[], number[]] = [[], []];
  let clockMs = 0;
  let keys = 0;
  const fetch = async (request: Request): Promise<Response> => {
    const url = new URL(request.url);
    const text = await request.text();
    const one = { method: request.method, path: url.pathname, query: url.search, headers: request.headers, body: text === '' ? null : JSON.parse(text) };
    sent.push(one);
    const turn = turns.shift();
    if (turn === undefined) throw new Error(`nothing was prepared for ${one.method} ${one.path}`);
    const outcome = typeof turn === 'function' ? await turn(one) : turn;
    if (outcome instanceof Error) throw outcome;
    return outcome;
  };
  const sleep = (ms: number, signal: AbortSignal | null): Promise<void> => {
    signal?.throwIfAborted();
    slept.push(ms);
    clockMs += ms;
    return Promise.resolve();
  };
  const api = createClient({
    baseUrl: 'https://api.example',
    key: 'lw_test',
    fetch,
    ...options,
    surroundings: { sleep, random: () => 0.5, newKey: () => `key-${++keys}`, elapsedMs: () => clockMs, ...options.surroundings },
  });
  return { api, sent, slept };
};
