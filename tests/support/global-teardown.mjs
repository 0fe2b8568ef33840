// Stops the database server of this run, if any test file started one, and removes its folder.
import { existsSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';

export const isAlive = (pid) => {
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    return error.code === 'EPERM';
  }
};

export const removeServer = async (dir) => {
  const lock = join(dir, 'pgdata', 'postmaster.pid');
  if (existsSync(lock)) {
    const pid = Number(readFileSync(lock, 'utf8').split('\n')[0]);
    if (isAlive(pid)) process.kill(pid, 'SIGINT');
    for (const until = Date.now() + 10_000; existsSync(lock) && Date.now() < until;) await sleep(20);
  }
  rmSync(dir, { recursive: true, force: true });
};

export default async function tearDown() {
  if (process.env.LATHWORK_TEST_DATABASE_DIR) await removeServer(process.env.LATHWORK_TEST_DATABASE_DIR);
}
