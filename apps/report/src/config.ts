import { homedir, tmpdir } from 'node:os';
import { join } from 'node:path';

export interface ReportConfig {
  secret: string;
  host: string;
  port: number;
  browserPath: string | null;
  cacheFolder: string;
  concurrency: number;
  queueLimit: number;
  timeoutMs: number;
  bodyLimitBytes: number;
  logLevel: string;
}

const LEAST_SECRET_LENGTH = 16;

function integer(name: string, text: string | undefined, fallback: number, min: number, max: number): number {
  if (text === undefined || text === '') return fallback;
  const value = Number(text);
  if (!Number.isInteger(value) || value < min || value > max) throw new Error(`${name} must be a whole number from ${min} to ${max}`);
  return value;
}

/** Every variable of this app, read once. Nothing else looks at the environment. */
export function readConfig(env: Readonly<Record<string, string | undefined>>): ReportConfig {
  const secret = env['REPORT_SECRET'] ?? '';
  if (secret.length < LEAST_SECRET_LENGTH) throw new Error(`REPORT_SECRET must be set and have at least ${LEAST_SECRET_LENGTH} characters`);
  // Root's home is closed to the account that root hands the browser to.
  const ownCache = process.getuid?.() === 0 ? '/var/cache' : join(homedir() || tmpdir(), '.cache');
  const cacheHome = env['XDG_CACHE_HOME'] ?? ownCache;
  const named = env['PUPPETEER_EXECUTABLE_PATH'];
  return {
    secret,
    host: env['REPORT_HOST'] ?? '127.0.0.1',
    port: integer('REPORT_PORT', env['REPORT_PORT'], 3001, 0, 65_535),
    browserPath: named === undefined || named === '' ? null : named,
    cacheFolder: join(cacheHome, 'lathwork'),
    concurrency: integer('REPORT_CONCURRENCY', env['REPORT_CONCURRENCY'], 1, 1, 4),
    queueLimit: integer('REPORT_QUEUE_LIMIT', env['REPORT_QUEUE_LIMIT'], 16, 0, 1000),
    timeoutMs: integer('REPORT_TIMEOUT_MS', env['REPORT_TIMEOUT_MS'], 30_000, 1000, 120_000),
    bodyLimitBytes: integer('REPORT_BODY_LIMIT_BYTES', env['REPORT_BODY_LIMIT_BYTES'], 8 * 1024 * 1024, 1024, 64 * 1024 * 1024),
    logLevel: env['REPORT_LOG_LEVEL'] ?? 'info',
  };
}

export const loadConfig = (): ReportConfig => readConfig(process.env);
