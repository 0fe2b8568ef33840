import { randomBytes } from 'node:crypto';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Policies, PolicyName } from '../limits/policies.js';

/** Everything the API is told from outside. Parsed once at start; nothing else reads the environment. */
export interface Config {
  host: string;
  port: number;
  logLevel: string;
  /** Null: the embedded server of `embeddedDir` is started instead. */
  database: { url: string; ownerUrl: string; queueUrl: string } | null;
  embeddedDir: string;
  embeddedDurable: boolean;
  databasePool: number;
  /** Null: no garden can be made over HTTP. */
  operatorToken: string | null;
  cursorSecret: string;
  /** Where browsers reach this server; null: whatever host the request names. */
  publicOrigin: string | null;
  sessionIdleMs: number;
  sessionLifeMs: number;
  gardensPerAccount: number;
  /** Who may make an account: anybody, or whoever was invited to a garden. */
  signUp: 'open' | 'invited';
  signUpsPerHour: number;
  invitationsPerDay: number;
  resetsPerHour: number;
  /** Seals what must be read again: second factors and mail that waits. Null: a secret is kept in the data folder. */
  accountSecret: string | null;
  dataDir: string;
  /** Null: mail is written into files instead. */
  smtpUrl: string | null;
  mailFrom: string;
  mailDir: string;
  reportUrl: string;
  reportSecret: string;
  reportTimeoutMs: number;
  computeThreads: number;
  computeTimeoutMs: number;
  jobConcurrency: number;
  shutdownGraceMs: number;
  waitLimitMs: number;
  /** Ports of other servers that events may be sent to. */
  outboundPorts: readonly number[];
  /** For development: events may be sent to this very machine, over http and to any port. */
  outboundLoopback: boolean;
  /** How many requests each class may make in a window. */
  limits: Policies;
  /** Costly jobs of one garden: so many at once, so many more in line. */
  jobQuota: { running: number; waiting: number };
  /** Reverse proxies in front whose word about the caller's address is taken. */
  trustedProxies: number;
  /** Null: no numbers on the server's own address. */
  metricsToken: string | null;
  /** Null: no port of its own for the numbers. */
  metricsPort: number | null;
  drainDelayMs: number;
  queueAgeLimitMs: number;
  diskFreeMinBytes: number;
}

export const CONFIG = Symbol('config');

type Environment = Readonly<Record<string, string | undefined>>;
type Parse<T> = (text: string) => T | Error;

const wholeNumber =
  (min: number, max: number): Parse<number> =>
  (text) => {
    const value = Number(text);
    return /^\d+$/.test(text) && value >= min && value <= max ? value : new Error(`a whole number from ${min} to ${max} is wanted`);
  };

const secret: Parse<string> = (text) => (text.length >= 32 ? text : new Error('at least 32 characters are wanted'));

const urlOf =
  (...protocols: string[]): Parse<string> =>
  (text) =>
    URL.canParse(text) && protocols.includes(new URL(text).protocol)
      ? text
      : new Error(`an address that begins with ${protocols.map((one) => `${one}//`).join(' or ')} is wanted`);

const choice =
  <const C extends string>(...choices: C[]): Parse<C> =>
  (text) =>
    choices.find((one) => one === text) ?? new Error(`one of ${choices.join(', ')} is wanted`);

const anyText: Parse<string> = (text) => text;

const hostName: Parse<string> = (text) => (/^[\w.:%-]{1,253}$/.test(text) ? text : new Error('a name or an address of this machine is wanted'));

/** An address alone or with a name before it; nothing that could begin another header. */
const sender: Parse<string> = (text) =>
  /^[^<>\r\n"]{0,100}<[^<>\s@]{1,64}@[^<>\s@]{1,190}>$|^[^<>\s@"]{1,64}@[^<>\s@]{1,190}$/.test(text)
    ? text
    : new Error('a mail address is wanted, alone or like Garden <garden@example.org>');

const portList: Parse<readonly number[]> = (text) => {
  const ports = text.split(',').map((part) => Number(part.trim()));
  return ports.every((port) => Number.isInteger(port) && port >= 1 && port <= 65_535) ? ports : new Error('port numbers with commas between them are wanted');
};

const yesOrNo: Parse<boolean> = (text) => (text === 'yes' ? true : text === 'no' ? false : new Error('yes or no is wanted'));

/** As root, a folder of the machine; else beside the code. */
const dataDir = (): string => (process.getuid?.() === 0 ? '/var/lib/lathwork' : join(fileURLToPath(new URL('../../../../../', import.meta.url)), '.data'));

/** Of the embedded server: as root, a folder that the server's own account can enter. */
const defaultDir = (): string => (process.getuid?.() === 0 ? dataDir() : join(dataDir(), 'postgres'));

/** The one list of variables: name, how it is read, what it means. The documentation is made from it. */
export const VARIABLES = {
  HOST: { parse: hostName, fallback: '127.0.0.1', about: 'address to listen on' },
  PORT: { parse: wholeNumber(0, 65_535), fallback: '8080', about: 'port to listen on; 0 takes any free one' },
  LOG_LEVEL: { parse: choice('fatal', 'error', 'warn', 'info', 'debug', 'silent'), fallback: 'info', about: 'least serious line that is logged' },
  DATABASE_URL: { parse: urlOf('postgresql:', 'postgres:'), fallback: '', about: 'application role; empty starts the embedded server' },
  DATABASE_OWNER_URL: { parse: urlOf('postgresql:', 'postgres:'), fallback: '', about: 'role that owns the tables: migrations' },
  DATABASE_QUEUE_URL: { parse: urlOf('postgresql:', 'postgres:'), fallback: '', about: "job runner's queue connection; empty takes the owner's" },
  DATABASE_POOL: { parse: wholeNumber(1, 200), fallback: '10', about: 'connections of the application role' },
  EMBEDDED_DIR: { parse: anyText, fallback: '', about: 'folder of the embedded server; empty chooses one' },
  EMBEDDED_DURABLE: { parse: yesOrNo, fallback: 'yes', about: 'no: the embedded server skips fsync (throw-away data only)' },
  LATHWORK_OPERATOR_TOKEN: { parse: secret, fallback: '', about: 'may make gardens; empty switches that route off' },
  CURSOR_SECRET: { parse: secret, fallback: '', about: 'signs page cursors; empty makes a new one at each start' },
  PUBLIC_ORIGIN: {
    parse: urlOf('http:', 'https:'),
    fallback: '',
    about: 'address by which browsers reach this server, such as https://garden.example; empty takes the host of the request',
  },
  SESSION_IDLE_MIN: { parse: wholeNumber(1, 1440), fallback: '30', about: 'a session ends when it is not used for so many minutes' },
  SESSION_LIFE_H: { parse: wholeNumber(1, 720), fallback: '12', about: 'a session ends after so many hours, used or not' },
  LATHWORK_SIGN_UP: { parse: choice('open', 'invited'), fallback: 'open', about: 'who may make an account: anybody, or only who was invited to a garden' },
  SIGN_UPS_PER_HOUR: { parse: wholeNumber(1, 10_000), fallback: '20', about: 'accounts that may be asked for from one network address in an hour' },
  INVITATIONS_PER_DAY: { parse: wholeNumber(1, 10_000), fallback: '50', about: 'invitations that one garden may send in a day' },
  RESETS_PER_HOUR: { parse: wholeNumber(1, 100), fallback: '3', about: 'password mails that one account gets in an hour' },
  ACCOUNT_SECRET: {
    parse: secret,
    fallback: '',
    about: 'seals second factors and waiting mail; the same for all processes; empty keeps one in the data folder',
  },
  SMTP_URL: { parse: urlOf('smtp:', 'smtps:'), fallback: '', about: 'mail server, with name and password if it wants them; empty writes mail into files' },
  MAIL_FROM: { parse: sender, fallback: 'Lathwork <lathwork@localhost>', about: 'sender of all mail' },
  MAIL_DIR: { parse: anyText, fallback: '', about: 'folder for mail files where there is no mail server; empty takes outbox in the data folder' },
  GARDENS_PER_ACCOUNT: { parse: wholeNumber(0, 1000), fallback: '5', about: 'gardens one person may be in and still make another' },
  REPORT_URL: { parse: urlOf('http:', 'https:'), fallback: 'http://127.0.0.1:8081', about: 'where the report app listens' },
  REPORT_SECRET: { parse: secret, fallback: null, about: 'shared with the report app' },
  REPORT_TIMEOUT_S: { parse: wholeNumber(1, 600), fallback: '120', about: 'longest wait for one document' },
  COMPUTE_THREADS: { parse: wholeNumber(1, 64), fallback: '1', about: 'plans computed at once' },
  COMPUTE_TIMEOUT_S: { parse: wholeNumber(1, 3600), fallback: '120', about: 'longest time for one plan' },
  JOB_CONCURRENCY: { parse: wholeNumber(1, 64), fallback: '2', about: 'jobs worked on at once' },
  SHUTDOWN_GRACE_S: { parse: wholeNumber(0, 300), fallback: '20', about: 'time that running requests and jobs get at the end' },
  WAIT_LIMIT_S: { parse: wholeNumber(0, 60), fallback: '30', about: 'longest Prefer: wait that is honoured' },
  OUTBOUND_PORTS: { parse: portList, fallback: '443', about: 'ports of other servers that webhooks may name' },
  OUTBOUND_LOOPBACK: { parse: yesOrNo, fallback: 'no', about: 'yes (development only): webhooks may name this machine, over http too' },
  RATE_WINDOW_S: { parse: wholeNumber(1, 3600), fallback: '60', about: 'length of the window of all request limits' },
  RATE_PER_ADDRESS: {
    parse: wholeNumber(1, 1_000_000_000),
    fallback: '3000',
    about: 'requests from one address (IPv6: one /64) in a window, before anything else is known',
  },
  RATE_PER_CREDENTIAL: { parse: wholeNumber(1, 1_000_000_000), fallback: '1500', about: 'requests of one key, or of one person, in a window' },
  RATE_PER_GARDEN: { parse: wholeNumber(1, 1_000_000_000), fallback: '6000', about: 'requests of one garden in a window' },
  RATE_COSTLY: { parse: wholeNumber(1, 1_000_000_000), fallback: '120', about: 'plans, documents and exports that one garden may ask for in a window' },
  JOBS_RUNNING: { parse: wholeNumber(1, 64), fallback: '2', about: 'costly jobs of one garden that run at once' },
  JOBS_WAITING: { parse: wholeNumber(0, 10_000), fallback: '10', about: 'costly jobs of one garden that wait behind those' },
  TRUSTED_PROXIES: { parse: wholeNumber(0, 10), fallback: '0', about: 'reverse proxies in front whose X-Forwarded-For is believed' },
  METRICS_TOKEN: { parse: secret, fallback: '', about: 'bearer token of GET /metrics; empty switches that address off' },
  METRICS_PORT: { parse: wholeNumber(1, 65_535), fallback: '', about: 'port on 127.0.0.1 that serves /metrics without a token; empty opens none' },
  DRAIN_DELAY_S: { parse: wholeNumber(0, 60), fallback: '2', about: 'at the end: time in which readyz says no and requests are still taken' },
  QUEUE_AGE_LIMIT_S: { parse: wholeNumber(1, 86_400), fallback: '900', about: 'readyz tells when a job has waited longer than this' },
  DISK_FREE_MIN_MB: { parse: wholeNumber(0, 1_000_000), fallback: '256', about: 'readyz says no when the data folder has less room' },
} as const satisfies Record<string, { parse: Parse<unknown>; fallback: string | null; about: string }>;

type Name = keyof typeof VARIABLES;
type Value<N extends Name> = Exclude<ReturnType<(typeof VARIABLES)[N]['parse']>, Error>;

/** Why the program does not start, in words for whoever starts it: said as it stands. */
export class PlainError extends Error {}

/** All that is wrong with the environment, said at once. */
export class ConfigError extends PlainError {
  constructor(readonly faults: readonly string[]) {
    super(`the configuration has ${faults.length} ${faults.length === 1 ? 'fault' : 'faults'}:\n${faults.map((fault) => `  - ${fault}`).join('\n')}`);
  }
}

const limitsOf = (windowMs: number, quotas: Readonly<Record<PolicyName, number>>): Policies => {
  const policy = (name: PolicyName) => ({ name, quota: quotas[name], windowMs });
  return { address: policy('address'), credential: policy('credential'), garden: policy('garden'), costly: policy('costly') };
};

interface Reader {
  read<N extends Name>(name: N): Value<N> | null;
  must<N extends Name>(name: N): Value<N>;
}

/** Accounts, sessions and mail. */
const peopleOf = ({ read, must }: Reader) => ({
  publicOrigin: read('PUBLIC_ORIGIN')?.replace(/(?<!\/)\/+$/, '') ?? null,
  sessionIdleMs: must('SESSION_IDLE_MIN') * 60_000,
  sessionLifeMs: must('SESSION_LIFE_H') * 3_600_000,
  gardensPerAccount: must('GARDENS_PER_ACCOUNT'),
  signUp: must('LATHWORK_SIGN_UP'),
  signUpsPerHour: must('SIGN_UPS_PER_HOUR'),
  invitationsPerDay: must('INVITATIONS_PER_DAY'),
  resetsPerHour: must('RESETS_PER_HOUR'),
  accountSecret: read('ACCOUNT_SECRET'),
  dataDir: dataDir(),
  smtpUrl: read('SMTP_URL'),
  mailFrom: must('MAIL_FROM'),
  mailDir: read('MAIL_DIR') ?? join(dataDir(), 'outbox'),
});

export const parseConfig = (env: Environment): Config => {
  const faults: string[] = [];
  const read = <N extends Name>(name: N): Value<N> | null => {
    const text = env[name]?.trim() || VARIABLES[name].fallback;
    if (text === null) faults.push(`${name} is missing: ${VARIABLES[name].about}`);
    if (!text) return null;
    const value = VARIABLES[name].parse(text);
    if (!(value instanceof Error)) return value as Value<N>;
    faults.push(`${name}: ${value.message}`);
    return null;
  };
  const must = <N extends Name>(name: N): Value<N> => read(name) as Value<N>;
  const [url, ownerUrl, queueUrl] = [read('DATABASE_URL'), read('DATABASE_OWNER_URL'), read('DATABASE_QUEUE_URL')];
  if (env['DATABASE_URL'] && !env['DATABASE_OWNER_URL']) faults.push('DATABASE_OWNER_URL is missing: DATABASE_URL is set, so migrations need it');
  if (!env['DATABASE_URL'] && (env['DATABASE_OWNER_URL'] || env['DATABASE_QUEUE_URL'])) faults.push('DATABASE_URL is missing: another database address is set');
  const config: Config = {
    host: must('HOST'),
    port: must('PORT'),
    logLevel: must('LOG_LEVEL'),
    database: url && ownerUrl ? { url, ownerUrl, queueUrl: queueUrl ?? ownerUrl } : null,
    embeddedDir: read('EMBEDDED_DIR') ?? defaultDir(),
    embeddedDurable: must('EMBEDDED_DURABLE'),
    databasePool: must('DATABASE_POOL'),
    operatorToken: read('LATHWORK_OPERATOR_TOKEN'),
    cursorSecret: read('CURSOR_SECRET') ?? randomBytes(32).toString('base64url'),
    ...peopleOf({ read, must }),
    reportUrl: must('REPORT_URL'),
    reportSecret: must('REPORT_SECRET'),
    reportTimeoutMs: must('REPORT_TIMEOUT_S') * 1000,
    computeThreads: must('COMPUTE_THREADS'),
    computeTimeoutMs: must('COMPUTE_TIMEOUT_S') * 1000,
    jobConcurrency: must('JOB_CONCURRENCY'),
    shutdownGraceMs: must('SHUTDOWN_GRACE_S') * 1000,
    waitLimitMs: must('WAIT_LIMIT_S') * 1000,
    outboundPorts: must('OUTBOUND_PORTS'),
    outboundLoopback: must('OUTBOUND_LOOPBACK'),
    limits: limitsOf(must('RATE_WINDOW_S') * 1000, {
      address: must('RATE_PER_ADDRESS'),
      credential: must('RATE_PER_CREDENTIAL'),
      garden: must('RATE_PER_GARDEN'),
      costly: must('RATE_COSTLY'),
    }),
    jobQuota: { running: must('JOBS_RUNNING'), waiting: must('JOBS_WAITING') },
    trustedProxies: must('TRUSTED_PROXIES'),
    metricsToken: read('METRICS_TOKEN'),
    metricsPort: read('METRICS_PORT'),
    drainDelayMs: must('DRAIN_DELAY_S') * 1000,
    queueAgeLimitMs: must('QUEUE_AGE_LIMIT_S') * 1000,
    diskFreeMinBytes: must('DISK_FREE_MIN_MB') * 1_048_576,
  };
  if (faults.length > 0) throw new ConfigError(faults);
  return config;
};

export const readConfig = (): Config => parseConfig(process.env);
