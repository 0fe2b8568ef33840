import { pino } from 'pino';
import { createApp } from './app.js';
import { loadConfig } from './config.js';

const config = loadConfig();
const logger = pino({ level: config.logLevel });
const app = createApp(config, (level, event, message) => logger[level](event, message));

app.server.listen(config.port, config.host, () => logger.info({ address: app.server.address() }, 'report app listens'));

let stopping = false;
const stop = (signal: string): void => {
  if (stopping) return;
  stopping = true;
  logger.info({ signal }, 'stopping: running documents are finished first');
  app.stop().then(
    () => process.exit(0),
    (error: unknown) => {
      logger.error({ error: String(error) }, 'did not stop cleanly');
      process.exit(1);
    },
  );
};
process.on('SIGTERM', () => stop('SIGTERM'));
process.on('SIGINT', () => stop('SIGINT'));
