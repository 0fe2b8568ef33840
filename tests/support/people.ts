import { readdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import pg from 'pg';
import { MailSender } from '../../apps/api/src/platform/mail/sender.js';
import type { TestApi } from './api-app.js';
import { HttpClient } from './http-client.js';

export const PASSWORD = 'five barrows under a bridge';
export const OTHER_PASSWORD = 'nine thirsty cabbages in May';

export interface TestMail {
  to: string;
  subject: string;
  text: string;
  /** The code it brings, or the empty text. */
  code: string;
  raw: string;
}

const header = (raw: string, name: string): string =>
  (new RegExp(`^${name}: (.*(?:\r\n[ \t].*)*)`, 'mi').exec(raw)?.[1] ?? '').replaceAll(/\r\n[ \t]/g, ' ').trim();

const plain = (raw: string): string => {
  const body = raw.slice(raw.indexOf('\r\n\r\n') + 4);
  const coding = header(raw, 'Content-Transfer-Encoding');
  if (coding === 'base64') return Buffer.from(body, 'base64').toString('utf8');
  if (coding !== 'quoted-printable') return body;
  const bytes = body.replaceAll('=\r\n', '').replaceAll(/=([0-9A-F]{2})/g, (_all, hex: string) => String.fromCharCode(parseInt(hex, 16)));
  return Buffer.from(bytes, 'latin1').toString('utf8');
};

/** Sends what waits, and reads all that ever went to an address, oldest first. */
export const mailTo = async (api: TestApi, address: string): Promise<TestMail[]> => {
  await api.get(MailSender).sendDue();
  const names = (await readdir(api.config.mailDir).catch(() => [])).filter((name) => name.endsWith('.eml')).sort();
  const all = await Promise.all(names.map((name) => readFile(join(api.config.mailDir, name), 'utf8')));
  return all
    .filter((raw) => header(raw, 'To') === address)
    .map((raw) => {
      const text = plain(raw);
      return { to: address, subject: header(raw, 'Subject'), text, code: /^[A-Za-z0-9_-]{43}\r?$/m.exec(text)?.[0].trim() ?? '', raw };
    });
};

export const lastMailTo = async (api: TestApi, address: string): Promise<TestMail> => {
  const mail = (await mailTo(api, address)).at(-1);
  if (!mail) throw new Error(`no mail went to ${address}`);
  return mail;
};

/** The body of a request as a program sends it, without an idempotency key. */
export const send = (http: HttpClient, path: string, body: object, method: 'post' | 'delete' = 'post') => http.request(method, path).send(body);

let count = 0;
export const newAddress = (): string => `gardener.${Date.now().toString(36)}.${(count += 1)}@example.org`;

export interface SignedUp {
  email: string;
  password: string;
  name: string;
  token: string;
  http: HttpClient;
}

/** Signs up, confirms and signs in, the way a person does. */
export const signedUp = async (api: TestApi, name = 'Sorrel Hedgerow', email = newAddress()): Promise<SignedUp> => {
  const asked = await send(api.anyone, '/v1/accounts', { email, password: PASSWORD, name });
  if (asked.status !== 202) throw new Error(`sign-up: ${asked.status} ${asked.text}`);
  const { code } = await lastMailTo(api, email);
  const confirmed = await send(api.anyone, '/v1/accounts/confirm', { code, password: PASSWORD });
  if (confirmed.status !== 204) throw new Error(`confirm: ${confirmed.status} ${confirmed.text}`);
  const token = await signIn(api, email, PASSWORD);
  return { email, password: PASSWORD, name, token, http: api.as(token) };
};

export const signIn = async (api: TestApi, email: string, password: string, code?: string): Promise<string> => {
  const answer = await send(api.anyone, '/v1/sessions', { email, password, as: 'token', ...(code ? { code } : {}) });
  if (answer.status !== 201) throw new Error(`sign-in: ${answer.status} ${answer.text}`);
  return (answer.body as { token: string }).token;
};

/** A request of a person within a garden. */
export const inGardenOf = (http: HttpClient, gardenId: string, method: 'get' | 'post' | 'patch' | 'delete', path: string) =>
  http.request(method, path).set('Lathwork-Garden', gardenId);

/** One statement as the administrator of the database: to move clocks and to look behind the walls. */
export const asAdmin = async <T extends pg.QueryResultRow>(api: TestApi, sql: string, values: unknown[] = []): Promise<T[]> => {
  const client = new pg.Client({ connectionString: api.database.adminUrl });
  await client.connect();
  try {
    return (await client.query<T>(sql, values)).rows;
  } finally {
    await client.end();
  }
};

export const problemOf = (answer: { body: unknown }): string => ((answer.body as { type?: string }).type ?? '').replace('/v1/problems/', '');
