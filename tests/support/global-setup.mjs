// Names a folder for this run's database server. Nothing is started here: the first test file that asks for a
// database starts it (tests/support/template-database.ts), so that runs without one pay nothing.
import { mkdtempSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { isAlive, removeServer } from './global-teardown.mjs';

const PREFIX = 'lathwork-tests-';

/** A run that was killed could not stop its server: it is stopped here, once the run that started it is gone. */
const sweep = async () => {
  for (const name of readdirSync(tmpdir()).filter((one) => one.startsWith(PREFIX))) {
    const dir = join(tmpdir(), name);
    try {
      if (!isAlive(Number(readFileSync(join(dir, 'run'), 'utf8')))) await removeServer(dir);
    } catch {
      // Made by somebody else, or being removed at this moment.
    }
  }
};

export default async function setUp() {
  await sweep();
  const dir = mkdtempSync(join(tmpdir(), PREFIX));
  writeFileSync(join(dir, 'run'), String(process.pid));
  process.env.LATHWORK_TEST_DATABASE_DIR = dir;
}
