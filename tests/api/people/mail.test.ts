import { createServer, type Server, type Socket } from 'node:net';
import type { AddressInfo } from 'node:net';
import { Writable } from 'node:stream';
import { afterAll, afterEach, beforeEach, describe, expect, it } from '@jest/globals';
import { pino } from 'pino';
import { makeLog } from '../../../apps/api/src/platform/logging/log.js';
import { LOG } from '../../../apps/api/src/platform/logging/log.js';
import { letter } from '../../../apps/api/src/platform/mail/words.js';
import { MailSender } from '../../../apps/api/src/platform/mail/sender.js';
import { startApi, type TestApi } from '../../support/api-app.js';
import { asAdmin, mailTo, newAddress, PASSWORD, send } from '../../support/people.js';

interface Received {
  from: string;
  to: string[];
  data: string;
}

/** Just enough of RFC 5321 to take a message; `refuse` is the answer to the recipient instead. */
class MailServer {
  readonly received: Received[] = [];
  refuse: string | null = null;
  private readonly server: Server = createServer((socket) => this.talk(socket));

  async start(): Promise<string> {
    await new Promise<void>((resolve) => this.server.listen(0, '127.0.0.1', resolve));
    return `smtp://127.0.0.1:${(this.server.address() as AddressInfo).port}?ignoreTLS=true`;
  }

  stop(): void {
    this.server.close();
  }

  private talk(socket: Socket): void {
    let [from, to, data, rest]: [string, string[], string | null, string] = ['', [], null, ''];
    const say = (line: string): void => void socket.write(`${line}\r\n`);
    const line = (text: string): void => {
      if (data !== null) {
        if (text !== '.') {
          data += `${text.replace(/^\./, '')}\r\n`;
          return;
        }
        this.received.push({ from, to, data });
        data = null;
        return say('250 taken');
      }
      if (/^EHLO|^HELO/i.test(text)) return say('250 mail.test');
      if (/^MAIL FROM:/i.test(text)) [from, to] = [text.slice(10), []];
      else if (/^RCPT TO:/i.test(text)) {
        if (this.refuse) return say(this.refuse);
        to.push(text.slice(8));
      } else if (/^DATA/i.test(text)) {
        data = '';
        return say('354 go on');
      } else if (/^QUIT/i.test(text)) return void socket.end('221 bye\r\n');
      say('250 fine');
    };
    socket.on('error', () => undefined);
    socket.on('data', (chunk) => {
      rest += chunk.toString();
      for (let end = rest.indexOf('\r\n'); end >= 0; end = rest.indexOf('\r\n')) {
        const one = rest.slice(0, end);
        rest = rest.slice(end + 2);
        line(one);
      }
    });
    say('220 mail.test');
  }
}

let mailServer: MailServer;
let api: TestApi;

beforeEach(async () => {
  mailServer = new MailServer();
  api = await startApi({ env: { SMTP_URL: await mailServer.start(), MAIL_FROM: 'Lathwork <garden@example.org>' } });
});
afterEach(async () => {
  mailServer.stop();
  await api.stop();
});
afterAll(() => undefined);

const rowOf = (email: string) =>
  asAdmin<{ state: string; attempts: number; wait: number; body: string; last_error: string | null }>(
    api,
    'SELECT state, attempts, extract(epoch FROM next_attempt_at - now())::int AS wait, body, last_error FROM mail_outbox WHERE recipient = $1',
    [email],
  );

const makeDue = () => asAdmin(api, `UPDATE mail_outbox SET next_attempt_at = now() WHERE state = 'queued'`);

const signUp = async (): Promise<string> => {
  const email = newAddress();
  expect((await send(api.anyone, '/v1/accounts', { email, password: PASSWORD, name: 'Sorrel' })).status).toBe(202);
  return email;
};

describe('mail to a server', () => {
  it('is one message to one address, and is sent once, whoever looks at the same time', async () => {
    const email = await signUp();
    const sender = api.get(MailSender);
    await Promise.all([sender.sendDue(), sender.sendDue(), sender.sendDue()]);
    expect(mailServer.received).toHaveLength(1);
    const [message] = mailServer.received;
    expect(message?.to).toEqual([`<${email}>`]);
    expect(message?.data).toMatch(/^From: Lathwork <garden@example\.org>\r$/m);
    expect(message?.data).toMatch(/^Message-ID: <[0-9a-f-]{36}@lathwork>\r$/m);
    expect(message?.data).toMatch(/^Auto-Submitted: auto-generated\r$/m);
    expect(await rowOf(email)).toMatchObject([{ state: 'sent', body: '', attempts: 1, last_error: null }]);
  });

  it('is tried again later, later still, and given up after a day and more', async () => {
    const email = await signUp();
    mailServer.refuse = '451 not now';
    const waits: number[] = [];
    for (let tries = 1; tries <= 7; tries += 1) {
      await makeDue();
      expect(await api.get(MailSender).sendDue()).toBe(1);
      const [row] = await rowOf(email);
      expect(row?.attempts).toBe(tries);
      if (tries < 7) {
        expect(row).toMatchObject({ state: 'queued', last_error: expect.stringContaining('451') });
        waits.push(row?.wait as number);
        // Not due yet: nobody sends.
        expect(await api.get(MailSender).sendDue()).toBe(0);
      } else expect(row).toMatchObject({ state: 'failed', body: '' });
    }
    expect([...waits].sort((a, b) => a - b)).toEqual(waits);
    expect(waits.reduce((sum, one) => sum + one, 0)).toBeGreaterThan(86_400);
  });

  it('goes out when the server is back', async () => {
    const email = await signUp();
    mailServer.refuse = '451 not now';
    await api.get(MailSender).sendDue();
    mailServer.refuse = null;
    await makeDue();
    await api.get(MailSender).sendDue();
    expect(mailServer.received.map(({ to }) => to)).toEqual([[`<${email}>`]]);
  });

  it('is not tried again where the server says that there is no such address', async () => {
    const email = await signUp();
    mailServer.refuse = '550 no such person';
    await api.get(MailSender).sendDue();
    expect(await rowOf(email)).toMatchObject([{ state: 'failed', attempts: 1, body: '' }]);
  });
});

describe('what stands in the log', () => {
  it('S17: no address, code, password or token, whatever happens', async () => {
    const lines: string[] = [];
    const log = api.app.get<ReturnType<typeof pino>>(LOG);
    const to = new Writable({ write: (chunk: Buffer, _coding, done) => (lines.push(chunk.toString()), done()) });
    const loud = makeLog('debug', to);
    for (const level of ['info', 'warn', 'error'] as const) log[level] = loud[level].bind(loud) as never;
    const email = await signUp();
    mailServer.refuse = `451 not now, ${email}`;
    await api.get(MailSender).sendDue();
    mailServer.refuse = null;
    await makeDue();
    await api.get(MailSender).sendDue();
    const code = /^[A-Za-z0-9_-]{43}\r$/m.exec(mailServer.received[0]?.data ?? '')?.[0].trim() as string;
    await send(api.anyone, '/v1/accounts/confirm', { code, password: PASSWORD });
    const { token } = (await send(api.anyone, '/v1/sessions', { email, password: PASSWORD, as: 'token' })).body as { token: string };
    await api.as(token).get(`/v1/account?token=${token}`);
    await send(api.anyone, '/v1/sessions', { email, password: 'wrong guess of all' });
    expect(lines.join('')).toContain('mail sent');
    expect(lines.length).toBeGreaterThan(4);
    for (const secret of [email, code, token, PASSWORD, 'wrong guess of all']) expect(lines.join('')).not.toContain(secret);
  });
});

describe('words', () => {
  it('are there for every letter, in English where there is no other language, on one line each', () => {
    for (const kind of ['confirm', 'alreadyThere', 'reset', 'passwordChanged', 'factorSet', 'factorRemoved', 'invitation'] as const)
      for (const locale of ['en', 'en-GB', 'es', 'xx'])
        for (const { subject, body } of [
          letter(kind, locale, { name: 'Sorrel', garden: 'Yarrow\r\nBcc: x@example.org', code: 'c0de', roles: 'member', validMin: 30, validDays: 7 }),
        ]) {
          expect(subject).toMatch(/^[^\r\n]{5,200}$/);
          expect(body).not.toMatch(/\r|undefined|NaN/);
          expect(body.split('\n').some((line) => line.startsWith('Bcc'))).toBe(false);
        }
  });

  it('a long name of a garden still gives a subject that fits', () => {
    expect(letter('invitation', 'en', { garden: 'y'.repeat(400) }).subject).toHaveLength(200);
  });
});

// The file transport is what every other test of people reads its mail from; here only that nothing is left half-written.
describe('mail into files', () => {
  it('is written whole, for the server’s own account alone', async () => {
    const plain = await startApi();
    try {
      const email = newAddress();
      await send(plain.anyone, '/v1/accounts', { email, password: PASSWORD, name: 'Sorrel' });
      expect(await mailTo(plain, email)).toHaveLength(1);
      const { readdir, stat } = await import('node:fs/promises');
      const names = await readdir(plain.config.mailDir);
      expect(names.every((name) => /^[0-9a-f-]{36}\.eml$/.test(name))).toBe(true);
      for (const name of names) expect((await stat(`${plain.config.mailDir}/${name}`)).mode & 0o077).toBe(0);
    } finally {
      await plain.stop();
    }
  });
});
