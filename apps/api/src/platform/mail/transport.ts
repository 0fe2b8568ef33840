import { mkdir, rename, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { createTransport } from 'nodemailer';
import type { Config } from '../config/config.js';

export interface Message {
  id: string;
  to: string;
  subject: string;
  body: string;
}

/** Sends one message, or throws. */
export type Send = (message: Message) => Promise<void>;

/** The recipient as an address alone: nothing in it is read as a list or as another header. */
const envelope = (from: string, { id, to, subject, body }: Message) => ({
  from,
  to: { name: '', address: to },
  subject,
  text: body,
  messageId: `<${id}@lathwork>`,
  headers: { 'Auto-Submitted': 'auto-generated' },
  disableFileAccess: true,
  disableUrlAccess: true,
});

/** Writes each message whole into a folder, for where there is no mail server. Only the server's own account reads it. */
const toFiles = (from: string, dir: string): Send => {
  const transport = createTransport({ streamTransport: true, buffer: true, newline: 'windows' });
  return async (message) => {
    const { message: bytes } = await transport.sendMail(envelope(from, message));
    await mkdir(dir, { recursive: true, mode: 0o700 });
    const file = join(dir, `${message.id}.eml`);
    await writeFile(`${file}.part`, bytes as Buffer, { mode: 0o600 });
    await rename(`${file}.part`, file);
  };
};

const toServer = (from: string, url: string): Send => {
  const transport = createTransport({ url, connectionTimeout: 10_000, greetingTimeout: 10_000, socketTimeout: 30_000, dnsTimeout: 10_000 });
  return async (message) => {
    await transport.sendMail(envelope(from, message));
  };
};

export const transportOf = ({ smtpUrl, mailFrom, mailDir }: Config): Send => (smtpUrl === null ? toFiles(mailFrom, mailDir) : toServer(mailFrom, smtpUrl));
