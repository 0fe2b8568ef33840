import { spawnSync } from 'node:child_process';
import { chmodSync, chownSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { BrowserFile } from './chromium.js';

/** What the machine lets us add around the browser, and the folder it may write in. */
export interface Confinement {
  executablePath: string;
  /** The only folder the browser's account owns: its profile and temporary files, wiped when the browser ends. */
  folder: string;
  layers: readonly ('otherUser' | 'noNetwork')[];
  wipe: () => void;
}

const ACCOUNTS = ['nobody', 'daemon'];

function account(): { uid: number; gid: number } | null {
  const rows = readFileSync('/etc/passwd', 'utf8')
    .split('\n')
    .map((line) => line.split(':'));
  const row = ACCOUNTS.map((name) => rows.find((r) => r[0] === name)).find((r) => r !== undefined);
  return row === undefined ? null : { uid: Number(row[2]), gid: Number(row[3]) };
}

const quote = (text: string): string => `'${text.replaceAll("'", `'\\''`)}'`;

/** Each way is tried on the browser itself (it only has to say its version), the strongest first. */
const WAYS: readonly { layers: Confinement['layers']; command: (uid: number, gid: number) => string }[] = [
  { layers: ['otherUser', 'noNetwork'], command: (uid, gid) => `unshare --net -- setpriv --reuid=${uid} --regid=${gid} --clear-groups --no-new-privs --` },
  { layers: ['otherUser'], command: (uid, gid) => `setpriv --reuid=${uid} --regid=${gid} --clear-groups --no-new-privs --` },
];

/**
 * As root on Linux the browser is handed to an account that owns nothing, in a network namespace without a network.
 * The commands replace themselves, so the process that is started stays the browser's own. Null where the machine does
 * not allow it (another system, an ordinary user, a container without the right): the other layers stand anyway.
 */
export function confine(file: BrowserFile): Confinement | null {
  if (process.platform !== 'linux' || process.getuid?.() !== 0) return null;
  const as = account();
  if (as === null) return null;
  const outer = mkdtempSync(join(tmpdir(), 'lathwork-render-'));
  const wipe = (): void => rmSync(outer, { recursive: true, force: true });
  chmodSync(outer, 0o755);
  const folder = mkdtempSync(join(outer, 'own-'));
  chownSync(folder, as.uid, as.gid);
  const executablePath = join(outer, 'browser');
  for (const { layers, command } of WAYS) {
    writeFileSync(executablePath, `#!/bin/sh\nexec ${command(as.uid, as.gid)} ${quote(file.executablePath)} "$@"\n`, { mode: 0o755 });
    const probe = spawnSync(executablePath, ['--version'], { env: { ...file.env, HOME: folder }, cwd: '/', timeout: 10_000 });
    if (probe.status === 0) return { executablePath, folder, layers, wipe };
  }
  wipe();
  return null;
}
