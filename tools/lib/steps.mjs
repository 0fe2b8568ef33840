// Progress that a person can read: what is being done, how long it took, and where a failure's output lies.
import { spawn } from 'node:child_process';
import { appendFileSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

export const root = join(dirname(fileURLToPath(import.meta.url)), '..', '..');
export const seconds = (ms) => `${(ms / 1000).toFixed(1)} s`;

/** Runs one named step and prints its time. Progress goes to stderr so that a command's own output stays clean. */
export async function step(title, work) {
  const started = performance.now();
  process.stderr.write(`- ${title} ...\n`);
  try {
    const value = await work();
    process.stderr.write(`  done in ${seconds(performance.now() - started)}\n`);
    return value;
  } catch (e) {
    process.stderr.write(`  FAILED after ${seconds(performance.now() - started)}\n`);
    throw e;
  }
}

/** Runs a command from the project's root. `log` keeps its output in a file that is shown only when it fails. */
export function run(command, args, { env = {}, log, quiet = false, cwd = root } = {}) {
  return new Promise((resolve, reject) => {
    const file = log ? join(root, '.data', 'logs', log) : undefined;
    if (file) {
      mkdirSync(dirname(file), { recursive: true });
      writeFileSync(file, '');
    }
    const child = spawn(command, args, { cwd, env: { ...process.env, ...env }, stdio: ['ignore', 'pipe', 'pipe'] });
    let out = '';
    const take = (stream) => (chunk) => {
      if (stream === 'stdout') out += chunk;
      if (file) appendFileSync(file, chunk);
      else if (!quiet) process.stderr.write(chunk);
    };
    child.stdout.on('data', take('stdout'));
    child.stderr.on('data', take('stderr'));
    child.on('error', reject);
    child.on('close', (code) => {
      if (code === 0) return resolve(out);
      if (file) process.stderr.write(readFileSync(file, 'utf8').slice(-6000) + '\n');
      reject(new Error(`${command.split('/').pop()} ${args.slice(0, 3).join(' ')} ended with ${code}`));
    });
  });
}

export const node = (args, options) => run(process.execPath, args, options);
