import { readdir, readFile, rm } from 'node:fs/promises';
import { join } from 'node:path';
import type { Config } from '../config/config.js';

/** The address that a message in a file went to, without a display name. */
const recipientOf = (message: string): string => (/^To: {0,4}<?([^<>\r\n]{1,320})>?\r?$/im.exec(message)?.[1] ?? '').trim().toLowerCase();

/** Where mail is written into files because there is no mail server: takes away what went to one address. */
export const forgetMailFiles = async ({ smtpUrl, mailDir }: Pick<Config, 'smtpUrl' | 'mailDir'>, address: string): Promise<void> => {
  if (smtpUrl !== null) return;
  const names = await readdir(mailDir).catch(() => []);
  for (const name of names.filter((one) => /\.eml(\.part)?$/.test(one))) {
    const file = join(mailDir, name);
    const message = await readFile(file, 'utf8').catch(() => '');
    if (recipientOf(message) === address.toLowerCase()) await rm(file, { force: true });
  }
};
