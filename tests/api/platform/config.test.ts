import { describe, expect, test } from '@jest/globals';
import { ConfigError, parseConfig, VARIABLES } from '../../../apps/api/src/platform/config/config.js';

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

  test.each([
    ['PORT', '-1'],
    ['PORT', '65536'],
    ['PORT', '80a'],
    ['LOG_LEVEL', 'loud'],
    ['DATABASE_POOL', '0'],
    ['LATHWORK_OPERATOR_TOKEN', 'short'],
    ['CURSOR_SECRET', 'short'],
    ['REPORT_SECRET', 'short'],
    ['REPORT_URL', 'ftp://x'],
    ['DATABASE_URL', 'mysql://x'],
    ['COMPUTE_THREADS', '1.5'],
    ['JOB_CONCURRENCY', 'many'],
    ['EMBEDDED_DURABLE', 'maybe'],
    ['SHUTDOWN_GRACE_S', '9999'],
  ])('%s=%s is named as a fault, without its value', (name, value) => {
    const faults = faultsOf({ ...GOOD, [name]: value });
    expect(faults[0]).toMatch(new RegExp(`^${name}: .+ wanted$`));
  });

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
