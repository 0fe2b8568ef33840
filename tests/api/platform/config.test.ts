import { createServer, type AddressInfo } from 'node:net';
import { afterAll, describe, expect, test } from '@jest/globals';
import { ConfigError, parseConfig, VARIABLES } from '../../../apps/api/src/platform/config/config.js';
import { killAll, refused } from '../../support/api-process.js';
import { freshDatabase } from '../../support/template-database.js';

const SECRET = 's'.repeat(32);
const GOOD = { REPORT_SECRET: SECRET };
const faultsOf = (env: Record<string, string>): readonly string[] => {
  try {
    parseConfig(env);
    return [];
  } catch (error) {
    return (error as ConfigError).faults;
  }
};

/** Values that each variable refuses; none for a variable that takes any text. A new variable must be put down here. */
const BAD: Record<keyof typeof VARIABLES, readonly string[]> = {
  HOST: ['two words', 'http://x'],
  PORT: ['-1', '65536', '80a'],
  LOG_LEVEL: ['loud'],
  DATABASE_URL: ['mysql://x', 'nowhere'],
  DATABASE_OWNER_URL: ['mysql://x'],
  DATABASE_QUEUE_URL: ['mysql://x'],
  DATABASE_POOL: ['0', '201'],
  EMBEDDED_DIR: [],
  EMBEDDED_DURABLE: ['maybe'],
  LATHWORK_OPERATOR_TOKEN: ['short'],
  CURSOR_SECRET: ['short'],
  PUBLIC_ORIGIN: ['ftp://x'],
  SESSION_IDLE_MIN: ['0'],
  SESSION_LIFE_H: ['0'],
  LATHWORK_SIGN_UP: ['sometimes'],
  SIGN_UPS_PER_HOUR: ['none'],
  INVITATIONS_PER_DAY: ['none'],
  RESETS_PER_HOUR: ['none'],
  ACCOUNT_SECRET: ['short'],
  SMTP_URL: ['http://x'],
  MAIL_FROM: ['nobody'],
  MAIL_DIR: [],
  GARDENS_PER_ACCOUNT: ['-1'],
  REPORT_URL: ['ftp://x'],
  REPORT_SECRET: ['short'],
  REPORT_TIMEOUT_S: ['0'],
  COMPUTE_THREADS: ['1.5'],
  COMPUTE_TIMEOUT_S: ['0'],
  JOB_CONCURRENCY: ['many'],
  SHUTDOWN_GRACE_S: ['9999'],
  WAIT_LIMIT_S: ['61'],
  OUTBOUND_PORTS: ['https', '0'],
  OUTBOUND_LOOPBACK: ['maybe'],
  RATE_WINDOW_S: ['0', '3601'],
  RATE_PER_ADDRESS: ['0', '1e3'],
  RATE_PER_CREDENTIAL: ['0'],
  RATE_PER_GARDEN: ['0'],
  RATE_COSTLY: ['0', '2000000000'],
  JOBS_RUNNING: ['0'],
  JOBS_WAITING: ['-1'],
  TRUSTED_PROXIES: ['yes', '11'],
  METRICS_TOKEN: ['short'],
  METRICS_PORT: ['0'],
  DRAIN_DELAY_S: ['61'],
  QUEUE_AGE_LIMIT_S: ['0'],
  DISK_FREE_MIN_MB: ['-1'],
};

describe('configuration', () => {
  test('one secret is enough to start with the embedded server', () => {
    expect(parseConfig(GOOD)).toMatchObject({ host: '127.0.0.1', port: 8080, database: null, operatorToken: null, reportSecret: SECRET });
  });

  test('there is no secret by default', () => {
    expect(faultsOf({})).toEqual([expect.stringContaining('REPORT_SECRET is missing')]);
    const [one, two] = [parseConfig(GOOD), parseConfig(GOOD)];
    expect(one.cursorSecret).not.toBe(two.cursorSecret);
    for (const [name, { fallback }] of Object.entries(VARIABLES)) if (/SECRET|TOKEN/.test(name)) expect([name, fallback || null]).toEqual([name, null]);
  });

  test('an own server needs both roles; the queue takes the owner unless told', () => {
    const [url, owner, queue] = ['postgresql://a@h/d', 'postgresql://o@h/d', 'postgresql://q@h/d'];
    expect(faultsOf({ ...GOOD, DATABASE_URL: url })).toEqual([expect.stringContaining('DATABASE_OWNER_URL is missing')]);
    expect(faultsOf({ ...GOOD, DATABASE_OWNER_URL: owner })).toEqual([expect.stringContaining('DATABASE_URL is missing')]);
    expect(parseConfig({ ...GOOD, DATABASE_URL: url, DATABASE_OWNER_URL: owner }).database).toEqual({ url, ownerUrl: owner, queueUrl: owner });
    expect(parseConfig({ ...GOOD, DATABASE_URL: url, DATABASE_OWNER_URL: owner, DATABASE_QUEUE_URL: queue }).database?.queueUrl).toBe(queue);
  });

  test('A39: the table below has a line for every variable', () => expect(Object.keys(BAD).sort()).toEqual(Object.keys(VARIABLES).sort()));

  test.each(Object.entries(BAD).flatMap(([name, values]) => values.map((value) => [name, value] as const)))(
    'A39: %s=%s is named as a fault, without its value',
    (name, value) => {
      const faults = faultsOf({ ...GOOD, [name]: value });
      expect(faults[0]).toMatch(new RegExp(`^${name}: .+ (wanted|given)`));
      if (value.length > 3) expect(faults.join()).not.toContain(value);
    },
  );

  test('all faults are told at once, and no secret among them', () => {
    const error = (() => {
      try {
        return parseConfig({ PORT: 'x', LOG_LEVEL: 'y', LATHWORK_OPERATOR_TOKEN: 'canary-token' });
      } catch (thrown) {
        return thrown as ConfigError;
      }
    })() as ConfigError;
    expect(error.faults).toHaveLength(4);
    expect(error.message).toMatch(/^the configuration has 4 faults:\n {2}- LOG_LEVEL|PORT/);
    expect(error.message).not.toContain('canary');
  });
});

describe('the program', () => {
  afterAll(killAll);

  /** At most three at once: each is a process of its own. */
  const inTurn = async <T>(items: readonly T[], work: (item: T) => Promise<void>): Promise<void> => {
    const rest = [...items];
    const worker = async (): Promise<void> => {
      for (let next = rest.shift(); next !== undefined; next = rest.shift()) await work(next);
    };
    await Promise.all([worker(), worker(), worker()]);
  };

  test('A39: started with any variable bad, or without the one it needs, it says one clear message and ends with 1', async () => {
    const cases: Record<string, string>[] = [
      {},
      ...Object.entries(BAD).flatMap(([name, [value]]) => (value === undefined ? [] : [{ ...GOOD, [name]: value }])),
    ];
    expect(cases.length).toBeGreaterThan(40);
    const odd: string[] = [];
    await inTurn(cases, async (env) => {
      const name = Object.keys(env).at(-1) ?? 'REPORT_SECRET';
      const { code, errors } = await refused(env);
      const [head, ...faults] = errors.trimEnd().split('\n');
      const clear = code === 1 && /^the configuration has \d faults?:$/.test(head ?? '') && faults.some((line) => line.startsWith(`  - ${name}`));
      if (!clear || faults.some((line) => !line.startsWith('  - '))) odd.push(`${name}: ${code} ${errors}`);
    });
    expect(odd).toEqual([]);
  }, 180_000);

  test('A39: a port that is taken is said in one line, and the code is 1', async () => {
    const other = createServer().listen(0, '127.0.0.1');
    await new Promise((resolve) => other.once('listening', resolve));
    const { port } = other.address() as AddressInfo;
    const database = await freshDatabase();
    const env = { ...GOOD, DATABASE_URL: database.url, DATABASE_OWNER_URL: database.ownerUrl };
    for (const taken of [{ PORT: String(port) }, { METRICS_PORT: String(port) }]) {
      const { code, errors } = await refused({ ...env, ...taken });
      expect([code, errors]).toEqual([1, expect.stringMatching(/^could not start: .*EADDRINUSE[^\n]*\n$/)]);
    }
    other.close();
    await database.drop();
  }, 60_000);
});
