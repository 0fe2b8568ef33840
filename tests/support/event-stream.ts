import { request, type IncomingHttpHeaders, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { createParser } from 'eventsource-parser';

export interface StreamEvent {
  id: number;
  name: string;
  data: { jobId: string; state: string; progress: number; stage: string | null; attemptCount: number; at: string };
}

export interface OpenStream {
  status: number;
  headers: IncomingHttpHeaders;
  events: StreamEvent[];
  comments: string[];
  text: () => string;
  /** Resolves when the server has ended the answer, or the socket is gone. */
  closed: Promise<void>;
  /** Waits until so many events have come, or the stream is over. */
  until(count: number): Promise<void>;
  /** Cuts the socket. */
  drop(): void;
}

/** Opens a stream of events over a socket of its own; another library than ours reads it. */
export const openStream = (server: Server, path: string, headers: Record<string, string>): Promise<OpenStream> =>
  new Promise((resolve, reject) => {
    const asking = request({ host: '127.0.0.1', port: (server.address() as AddressInfo).port, path, headers, agent: false }, (response) => {
      const [events, comments]: [StreamEvent[], string[]] = [[], []];
      let text = '';
      let isOver = false;
      let tell: () => void = () => undefined;
      const parser = createParser({
        onEvent: ({ id, event, data }) => events.push({ id: Number(id), name: event ?? '', data: JSON.parse(data) as StreamEvent['data'] }),
        onComment: (comment) => comments.push(comment),
      });
      response.setEncoding('utf8').on('data', (chunk: string) => {
        text += chunk;
        if (response.headers['content-type']?.startsWith('text/event-stream') === true) parser.feed(chunk);
        tell();
      });
      const closed = new Promise<void>((done) =>
        response.on('close', () => {
          isOver = true;
          tell();
          done();
        }),
      );
      response.on('error', () => undefined);
      const until = async (count: number): Promise<void> => {
        while (!isOver && events.length < count) await new Promise<void>((woken) => (tell = woken));
      };
      resolve({
        status: response.statusCode ?? 0,
        headers: response.headers,
        events,
        comments,
        text: () => text,
        closed,
        until,
        drop: () => response.destroy(),
      });
    });
    asking.on('error', reject);
    asking.end();
  });
