import type { LoggerService } from '@nestjs/common';
import type { Logger } from 'pino';

const textOf = (message: unknown): string => (message instanceof Error ? message.message : String(message)).split('\n')[0]?.slice(0, 300) ?? '';

/** What the framework has to say goes to the same log in the same form; its chatter at the start goes nowhere. */
export const frameworkLog = (log: Logger): LoggerService => {
  const part = 'framework';
  return {
    log: (message: unknown) => log.debug({ part }, textOf(message)),
    warn: (message: unknown) => log.warn({ part }, textOf(message)),
    error: (message: unknown) => log.error({ part }, textOf(message)),
    fatal: (message: unknown) => log.error({ part }, textOf(message)),
  };
};
