import { existsSync } from 'node:fs';
import { join, resolve } from 'node:path';

/** Where the open data files lie: LATHWORK_DATA, else the folder beside the project. They are never needed to run the product. */
export const dataFolder = (): string => resolve(process.env['LATHWORK_DATA'] ?? join(process.cwd(), '..', 'shared', 'data'));

/** A data file's path, or the reason why a check that wants it is skipped. */
export const dataFile = (name: string): { path: string; skip: string | undefined } => {
  const path = join(dataFolder(), name);
  return { path, skip: existsSync(path) ? undefined : `${name} is not in the data folder (set LATHWORK_DATA)` };
};
