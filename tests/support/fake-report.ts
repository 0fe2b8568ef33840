import { createHash } from 'node:crypto';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';

const PDF = Buffer.from('%PDF-1.7\n% three pages, in a manner of speaking\n%%EOF\n');

/** A report app that sets nothing and always has the same three pages ready. */
export const startFakeReport = async (): Promise<{ url: string; stop(): Promise<void> }> => {
  const server: Server = createServer((request, response) => {
    request.resume().on('end', () => {
      const sha256 = createHash('sha256').update(PDF).digest('hex');
      response.writeHead(200, { 'Content-Type': 'application/pdf', 'X-Pages': '3', 'X-Sha256': sha256, 'X-Engine-Version': 'fake-1' }).end(PDF);
    });
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  return {
    url: `http://127.0.0.1:${(server.address() as AddressInfo).port}`,
    stop: () => new Promise((resolve) => void server.close(() => resolve())),
  };
};
