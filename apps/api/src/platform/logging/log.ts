import { pino, type DestinationStream, type Logger } from 'pino';
import { originOrNull } from '../http/context.js';
import { scrub, scrubText } from './scrub.js';

export const LOG = Symbol('log');

/** Whatever is logged while a request is answered, or a job runs that one asked for, says which. */
const origin = (): object => {
  const found = originOrNull();
  return found ? { requestId: found.requestId, traceId: found.trace.traceId, spanId: found.trace.spanId } : {};
};

/**
 * JSON lines on standard output. Escaping by JSON means that no input can forge a line, and everything is scrubbed on
 * its way: members by their name, texts by their look. What is logged is meant to hold ids only; this is the second wall.
 */
export const makeLog = (level: string, to?: DestinationStream): Logger =>
  pino(
    {
      level,
      base: null,
      timestamp: pino.stdTimeFunctions.isoTime,
      mixin: origin,
      mixinMergeStrategy: (line, more) => ({ ...more, ...line }),
      formatters: { log: scrub },
      hooks: {
        logMethod(inputs, method) {
          const clean = inputs.map((one: unknown) => (typeof one === 'string' ? scrubText(one) : one)) as typeof inputs;
          // A bare error would put its message into the line as it stands.
          if ((clean[0] as unknown) instanceof Error) method.apply(this, [{ err: clean[0] }, 'error']);
          else method.apply(this, clean);
        },
      },
    },
    to ?? pino.destination({ fd: 1, sync: true }),
  );
