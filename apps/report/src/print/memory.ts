import { readdirSync, readFileSync } from 'node:fs';

const PAGE_BYTES = 4096;

/** Resident bytes of a process and all its children, from /proc; null where there is no /proc. Shared pages count more than once. */
export function treeResidentBytes(rootPid: number): number | null {
  const children = new Map<number, number[]>();
  const resident = new Map<number, number>();
  let entries: string[];
  try {
    entries = readdirSync('/proc').filter((name) => /^\d+$/.test(name));
  } catch {
    return null;
  }
  for (const name of entries) {
    try {
      const stat = readFileSync(`/proc/${name}/stat`, 'utf8');
      const fields = stat.slice(stat.lastIndexOf(')') + 2).split(' ');
      const parent = Number(fields[1]);
      children.set(parent, [...(children.get(parent) ?? []), Number(name)]);
      resident.set(Number(name), Number(fields[21]) * PAGE_BYTES);
    } catch {
      // The process ended while we were reading.
    }
  }
  const sum = (pid: number): number => (resident.get(pid) ?? 0) + (children.get(pid) ?? []).reduce((total, child) => total + sum(child), 0);
  return resident.has(rootPid) ? sum(rootPid) : null;
}
