import { createServer, type IncomingHttpHeaders, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { Webhook } from 'standardwebhooks';

export interface Received {
  path: string;
  headers: IncomingHttpHeaders;
  body: string;
}

export interface Receiver {
  url: string;
  /** Everything that came, in its order. */
  received: Received[];
  /** What is answered from now on: a status, or whatever is done with the response. */
  answer: number | ((response: ServerResponse, path: string) => void);
  stop(): Promise<void>;
}

/** The other side of a webhook. */
export const startReceiver = async (): Promise<Receiver> => {
  const server = createServer((request, response) => {
    const chunks: Buffer[] = [];
    request.on('data', (chunk: Buffer) => chunks.push(chunk));
    request.on('end', () => {
      const path = request.url ?? '';
      receiver.received.push({ path, headers: request.headers, body: Buffer.concat(chunks).toString() });
      if (typeof receiver.answer === 'number') response.writeHead(receiver.answer).end();
      else receiver.answer(response, path);
    });
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const receiver: Receiver = {
    url: `http://127.0.0.1:${(server.address() as AddressInfo).port}`,
    received: [],
    answer: 204,
    stop: () => {
      server.closeAllConnections();
      return new Promise((resolve) => void server.close(() => resolve()));
    },
  };
  return receiver;
};

/** What the reference library makes of it with this secret at this moment; null when it does not accept it. */
export const verified = (secret: string, { headers, body }: Received, at: Date = new Date()): Record<string, unknown> | null => {
  const now = Date.now;
  Date.now = () => at.getTime();
  try {
    return new Webhook(secret).verify(body, headers as Record<string, string>) as Record<string, unknown>;
  } catch {
    return null;
  } finally {
    Date.now = now;
  }
};
