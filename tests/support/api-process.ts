import { spawn, type ChildProcess } from 'node:child_process';
import { setTimeout as sleep } from 'node:timers/promises';

// The compiled program, started as people start it. `npm test` compiles it first.
const MAIN = 'apps/api/dist/main.js';

export interface Started {
  child: ChildProcess;
  port: number;
  url: string;
  lines: string[];
  exit: Promise<number | null>;
}

const running: ChildProcess[] = [];

const launch = (env: Record<string, string>) => {
  const child = spawn(process.execPath, [MAIN], { env: { PATH: process.env['PATH'] ?? '', PORT: '0', ...env }, stdio: ['ignore', 'pipe', 'pipe'] });
  running.push(child);
  const out = { lines: [] as string[], errors: '' };
  child.stdout.on('data', (chunk: Buffer) => out.lines.push(...chunk.toString().split('\n').filter(Boolean)));
  child.stderr.on('data', (chunk: Buffer) => (out.errors += chunk.toString()));
  // Closed comes after exited: then everything that it said has been read.
  const exit = new Promise<number | null>((resolve) => child.once('close', (code) => resolve(code)));
  return { child, out, exit };
};

/** Starts it where it must not start, and gives what it said. */
export const refused = async (env: Record<string, string>): Promise<{ code: number | null; errors: string }> => {
  const { out, exit } = launch(env);
  return { code: await exit, errors: out.errors };
};

export const start = async (env: Record<string, string>): Promise<Started> => {
  const { child, out, exit } = launch(env);
  for (const until = Date.now() + 60_000; ; await sleep(25)) {
    const line = out.lines.find((one) => one.includes('"msg":"listening"'));
    if (line) {
      const { port } = JSON.parse(line) as { port: number };
      return { child, port, url: `http://127.0.0.1:${port}`, lines: out.lines, exit };
    }
    if (child.exitCode !== null || Date.now() > until) throw new Error(`did not start: ${out.errors}`);
  }
};

/** Ends whatever a test left running. */
export const killAll = (): void => {
  for (const child of running) if (child.exitCode === null) child.kill('SIGKILL');
};
