// Starts the product as a user would run it: the report app and the API (with its embedded database) as two
// processes on loopback, and stops what it started.
import { spawn } from 'node:child_process';
import { randomBytes } from 'node:crypto';
import { createWriteStream, mkdirSync, readFileSync } from 'node:fs';
import { createServer } from 'node:net';
import { join } from 'node:path';
import { root } from './steps.mjs';

const secret = () => randomBytes(32).toString('base64url');

export const freePort = () =>
  new Promise((resolve, reject) => {
    const server = createServer().on('error', reject);
    server.listen(0, '127.0.0.1', () => {
      const { port } = server.address();
      server.close(() => resolve(port));
    });
  });

function launch(name, script, env) {
  const logs = join(root, '.data', 'logs');
  mkdirSync(logs, { recursive: true });
  const file = join(logs, `${name}.log`);
  const log = createWriteStream(file);
  const child = spawn(process.execPath, [join(root, script)], { cwd: root, env: { ...process.env, ...env }, stdio: ['ignore', 'pipe', 'pipe'] });
  child.stdout.pipe(log);
  child.stderr.pipe(log);
  const ended = new Promise((resolve) => child.once('exit', (code) => resolve(code ?? 1)));
  let exit;
  void ended.then((code) => (exit = code));
  return {
    name,
    child,
    ended,
    failure: () => (exit === undefined ? undefined : new Error(`${name} ended with ${exit}; its last lines:\n${readFileSync(file, 'utf8').slice(-3000)}`)),
  };
}

async function ready(service, url, timeoutMs = 120_000) {
  for (const until = performance.now() + timeoutMs; performance.now() < until;) {
    if (service.failure()) throw service.failure();
    const answer = await fetch(url, { signal: AbortSignal.timeout(2000) }).catch(() => undefined);
    if (answer?.ok) return;
    await new Promise((r) => setTimeout(r, 50));
  }
  throw new Error(`${service.name} did not get ready within ${timeoutMs / 1000} s; see .data/logs/${service.name}.log`);
}

async function stopAll(services) {
  for (const { child, ended, failure } of services) {
    if (failure()) continue;
    child.kill('SIGTERM');
    const late = setTimeout(() => child.kill('SIGKILL'), 30_000);
    await ended;
    clearTimeout(late);
  }
}

/**
 * @param {{ apiPort?: number, embeddedDir?: string, durable?: boolean, logLevel?: string }} options
 * @returns {Promise<{ apiUrl: string, reportUrl: string, reportSecret: string, operatorToken: string, stop: () => Promise<void>, ended: Promise<unknown> }>}
 */
export async function startProduct({ apiPort, embeddedDir, durable = true, logLevel = 'warn' } = {}) {
  const [reportPort, port] = [await freePort(), apiPort ?? (await freePort())];
  const [reportSecret, operatorToken] = [secret(), secret()];
  const reportUrl = `http://127.0.0.1:${reportPort}`;
  const apiUrl = `http://127.0.0.1:${port}`;
  const report = launch('report', 'apps/report/dist/main.js', {
    REPORT_HOST: '127.0.0.1',
    REPORT_PORT: String(reportPort),
    REPORT_SECRET: reportSecret,
    REPORT_LOG_LEVEL: 'info',
  });
  const api = launch('api', 'apps/api/dist/main.js', {
    HOST: '127.0.0.1',
    PORT: String(port),
    LOG_LEVEL: logLevel,
    REPORT_URL: reportUrl,
    REPORT_SECRET: reportSecret,
    LATHWORK_OPERATOR_TOKEN: operatorToken,
    EMBEDDED_DURABLE: durable ? 'yes' : 'no',
    ...(embeddedDir ? { EMBEDDED_DIR: embeddedDir } : {}),
  });
  const stop = () => stopAll([api, report]);
  try {
    await Promise.all([ready(report, `${reportUrl}/readyz`), ready(api, `${apiUrl}/readyz`)]);
  } catch (e) {
    await stop();
    throw e;
  }
  return { apiUrl, reportUrl, reportSecret, operatorToken, stop, ended: Promise.race([api.ended, report.ended]) };
}
