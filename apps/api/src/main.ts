import { PlainError, readConfig } from './platform/config/config.js';

const refuse = (error: unknown): never => {
  process.stderr.write(`${error instanceof PlainError ? error.message : `could not start: ${error instanceof Error ? error.message : String(error)}`}\n`);
  process.exit(1);
};

/** The configuration comes first: what is wrong with it is said before anything else is even loaded. */
const main = async (): Promise<void> => {
  const config = readConfig();
  const { serve } = await import('./serve.js');
  await serve(config, refuse);
};

main().catch(refuse);
