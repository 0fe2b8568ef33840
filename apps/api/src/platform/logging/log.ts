import { pino, type DestinationStream, type Logger } from 'pino';

export const LOG = Symbol('log');

/** Keys whose values never reach a log line, at the first two levels of an object. */
const HIDDEN = [
  'authorization',
  'cookie',
  'password',
  'secret',
  'token',
  'key',
  'apiKey',
  'latitudeDeg',
  'longitudeDeg',
  'connectionString',
  'url',
  'ownerUrl',
];

/** JSON lines on standard output. Escaping by JSON means that no input can forge a line. */
export const makeLog = (level: string, to?: DestinationStream): Logger =>
  pino(
    {
      level,
      base: null,
      timestamp: pino.stdTimeFunctions.isoTime,
      redact: { paths: HIDDEN.flatMap((key) => [key, `*.${key}`, `*.*.${key}`]), censor: '[hidden]' },
      serializers: { err: errorOf },
    },
    to ?? pino.destination({ fd: 1, sync: true }),
  );

/** An error without the values that were in the query or the request: its kind, code and stack. */
const errorOf = (error: unknown): object => {
  if (!(error instanceof Error)) return { kind: typeof error };
  const { code } = error as { code?: string };
  const where = (error.stack ?? '')
    .split('\n')
    .filter((line) => /^\s+at /.test(line))
    .slice(0, 12)
    .map((line) => line.trim());
  const message = error.message
    .replaceAll(/postgres(ql)?:\/\/\S+/g, '[address]')
    .split('\n')
    .at(-1)
    ?.slice(0, 300);
  return { kind: error.name, ...(code ? { code } : {}), message, where, ...(error.cause instanceof Error ? { cause: error.cause.message.slice(0, 300) } : {}) };
};
