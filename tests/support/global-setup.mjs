// Names a folder for this run's database server. Nothing is started here: the first test file that asks for a
// database starts it (tests/support/template-database.ts), so that runs without one pay nothing.
import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

export default function setUp() {
  process.env.LATHWORK_TEST_DATABASE_DIR = mkdtempSync(join(tmpdir(), 'lathwork-tests-'));
}
