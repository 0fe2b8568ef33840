import { connect, createServer, type AddressInfo, type Socket } from 'node:net';

/** A door in front of a database server: it can be pointed elsewhere, shut, or hold back every byte. */
export interface DatabaseProxy {
  /** The same address, through the door. */
  through(url: string): string;
  pointAt(port: number): void;
  /** Every connection is cut and new ones are refused. */
  shut(): void;
  /** Connections stay and nothing comes through any more. */
  stall(): void;
  open(): void;
  close(): void;
}

export const databaseProxy = async (): Promise<DatabaseProxy> => {
  let target = 0;
  let mode: 'open' | 'shut' | 'stalled' = 'open';
  const sockets = new Set<Socket>();
  const keep = (socket: Socket, other: () => Socket | undefined): void => {
    sockets.add(socket);
    if (mode === 'stalled') socket.pause();
    socket.on('error', () => undefined);
    socket.on('close', () => {
      sockets.delete(socket);
      other()?.destroy();
    });
  };
  const server = createServer((inside) => {
    if (mode === 'shut') return void inside.destroy();
    const outside = connect(target, '127.0.0.1');
    keep(inside, () => outside);
    keep(outside, () => inside);
    inside.on('data', (bytes: Buffer) => outside.write(bytes));
    outside.on('data', (bytes: Buffer) => inside.write(bytes));
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const { port } = server.address() as AddressInfo;
  return {
    through: (url) => Object.assign(new URL(url), { port: String(port) }).href,
    pointAt(to) {
      target = to;
    },
    shut() {
      mode = 'shut';
      for (const socket of sockets) socket.destroy();
    },
    stall() {
      mode = 'stalled';
      for (const socket of sockets) socket.pause();
    },
    open() {
      mode = 'open';
      for (const socket of sockets) socket.resume();
    },
    close() {
      for (const socket of sockets) socket.destroy();
      server.close();
    },
  };
};
