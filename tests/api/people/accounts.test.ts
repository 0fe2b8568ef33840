import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { startApi, type TestApi } from '../../support/api-app.js';
import { asAdmin, lastMailTo, mailTo, newAddress, OTHER_PASSWORD, PASSWORD, problemOf, send, signedUp, signIn } from '../../support/people.js';

let api: TestApi;

beforeAll(async () => {
  api = await startApi({ env: { SIGN_UPS_PER_HOUR: '1000' } });
});
afterAll(() => api.stop());

const signUp = (email: string, more: object = {}) => send(api.anyone, '/v1/accounts', { email, password: PASSWORD, name: 'Sorrel Hedgerow', ...more });

describe('signing up', () => {
  it('brings a code by mail; with the code and the password the account opens', async () => {
    const email = newAddress();
    const asked = await signUp(email.toUpperCase());
    expect([asked.status, asked.text]).toEqual([202, '']);
    expect(problemOf(await send(api.anyone, '/v1/sessions', { email, password: PASSWORD }))).toBe('email-unconfirmed');
    const mail = await lastMailTo(api, email);
    expect(mail.subject).toBe('Confirm your mail address');
    expect(mail.code).toHaveLength(43);
    expect(problemOf(await send(api.anyone, '/v1/accounts/confirm', { code: mail.code, password: OTHER_PASSWORD }))).toBe('password-wrong');
    expect((await send(api.anyone, '/v1/accounts/confirm', { code: mail.code, password: PASSWORD })).status).toBe(204);
    expect(problemOf(await send(api.anyone, '/v1/accounts/confirm', { code: mail.code, password: PASSWORD }))).toBe('code-of-mail-invalid');
    const http = api.as(await signIn(api, email, PASSWORD));
    expect((await http.get('/v1/account')).body).toMatchObject({ email, emailConfirmed: true, name: 'Sorrel Hedgerow', locale: 'en', secondFactor: false });
  });

  it('answers the same for an address that has an account, and tells its owner by mail', async () => {
    const person = await signedUp(api);
    const [known, unknown] = [await signUp(person.email, { name: 'Somebody else' }), await signUp(newAddress())];
    expect([known.status, known.text, Object.keys(known.headers).sort()]).toEqual([unknown.status, unknown.text, Object.keys(unknown.headers).sort()]);
    const mail = await lastMailTo(api, person.email);
    expect(mail.subject).toBe('You have an account already');
    expect(mail.code).toBe('');
    expect((await person.http.get('/v1/account')).body).toMatchObject({ name: person.name });
    await signIn(api, person.email, PASSWORD);
  });

  it('counts the last sign-up of an address that nobody has confirmed, with its own code', async () => {
    const email = newAddress();
    await signUp(email, { password: OTHER_PASSWORD, name: 'A stranger' });
    const first = await lastMailTo(api, email);
    await signUp(email);
    const second = await lastMailTo(api, email);
    expect(problemOf(await send(api.anyone, '/v1/accounts/confirm', { code: first.code, password: OTHER_PASSWORD }))).toBe('code-of-mail-invalid');
    expect((await send(api.anyone, '/v1/accounts/confirm', { code: second.code, password: PASSWORD })).status).toBe(204);
  });

  it('fills nobody’s mailbox', async () => {
    const person = await signedUp(api);
    const before = (await mailTo(api, person.email)).length;
    for (let i = 0; i < 6; i += 1) expect((await signUp(person.email)).status).toBe(202);
    expect((await mailTo(api, person.email)).length - before).toBe(3);
  });

  it('S12: refuses weak passwords with the reason, at every place that takes a new one', async () => {
    const email = newAddress();
    for (const [password, code] of [
      ['short', 'too-short'],
      ['Password123!', 'common-password'],
      [email.split('@')[0] as string, 'guessable-password'],
    ] as const)
      expect((await signUp(email, { password })).body).toMatchObject({ type: '/v1/problems/validation-failed', errors: [{ pointer: '/password', code }] });
    const { http } = await signedUp(api);
    expect((await send(http, '/v1/account/password', { password: PASSWORD, newPassword: 'qwertyuiop' })).body).toMatchObject({
      errors: [{ pointer: '/newPassword', code: 'common-password' }],
    });
  });

  it('takes no address that could carry a header, a list or a name', async () => {
    for (const email of [
      'a@b',
      'a b@example.org',
      'a@example.org\r\nBcc: c@example.org',
      'a@example.org,c@example.org',
      'A <a@example.org>',
      '"a"@example.org',
      'ä@example.org',
    ])
      expect([email, (await signUp(email)).status]).toEqual([email, 400]);
  });

  it('keeps a name with line breaks out of mail: it is refused, and nothing is sent', async () => {
    const email = newAddress();
    const answer = await signUp(email, { name: 'Sorrel\r\nBcc: everybody@example.org\r\n\r\nClick here' });
    expect([answer.status, (answer.body as { errors: { pointer: string }[] }).errors.map(({ pointer }) => pointer)]).toEqual([400, ['/name']]);
    expect(await mailTo(api, email)).toEqual([]);
  });

  it('API6: stops a script: so many an hour from one address, however many accounts', async () => {
    const limited = await startApi({ env: { SIGN_UPS_PER_HOUR: '4' } });
    try {
      const answers = [];
      for (let i = 0; i < 8; i += 1) answers.push(await send(limited.anyone, '/v1/accounts', { email: newAddress(), password: PASSWORD, name: 'x' }));
      expect(answers.map(({ status }) => status)).toEqual([202, 202, 202, 202, 429, 429, 429, 429]);
      expect(problemOf(answers[4] as { body: unknown })).toBe('quota-used-up');
      expect(Number(answers[4]?.headers['retry-after'])).toBeGreaterThan(3000);
      expect(await asAdmin(limited, 'SELECT count(*)::int AS n FROM accounts')).toEqual([{ n: 4 }]);
    } finally {
      await limited.stop();
    }
  });
});

describe('the account', () => {
  it('is changed by version, name and language only', async () => {
    const { http } = await signedUp(api);
    const etag = (await http.get('/v1/account')).headers['etag'] as string;
    expect((await http.patch('/v1/account', etag, { name: 'Tansy', locale: 'es' })).body).toMatchObject({ name: 'Tansy', locale: 'es' });
    expect((await http.patch('/v1/account', etag, { name: 'late' })).status).toBe(412);
    const now = (await http.get('/v1/account')).headers['etag'] as string;
    for (const field of ['email', 'id', 'emailConfirmed', 'secondFactor', 'passwordPhc', 'version'])
      expect([field, (await http.patch('/v1/account', now, { [field]: 'x' })).status]).toEqual([field, 400]);
  });

  it('API3: shows exactly its own fields, never a hash', async () => {
    const { http } = await signedUp(api);
    expect(Object.keys((await http.get('/v1/account')).body as object).sort()).toEqual(
      ['createdAt', 'email', 'emailConfirmed', 'id', 'locale', 'name', 'secondFactor', 'updatedAt', 'version'].sort(),
    );
  });

  it('S16: tells its owner what happened to it, newest first', async () => {
    const { http, email } = await signedUp(api);
    await send(api.anyone, '/v1/sessions', { email, password: 'wrong for certain' });
    const { items } = (await http.get('/v1/account/events')).body as { items: { action: string; requestId: string }[] };
    expect(items.map(({ action }) => action)).toEqual(['session.refuse', 'session.create', 'account.confirm', 'account.create']);
    expect(items.every(({ requestId }) => requestId !== null)).toBe(true);
  });

  it('is for its person: a key and the operator are sent away', async () => {
    const { http } = await api.garden();
    for (const path of ['/v1/account', '/v1/sessions', '/v1/account/gardens', '/v1/account/factor', '/v1/account/events']) {
      expect([path, problemOf(await http.get(path))]).toEqual([path, 'person-only']);
      expect([path, problemOf(await api.operator.get(path))]).toEqual([path, 'person-only']);
      expect([path, (await api.anyone.get(path)).status]).toEqual([path, 401]);
    }
  });
});

describe('a lost password', () => {
  it('API2: is set anew with a code that is good once; everybody is signed out', async () => {
    const person = await signedUp(api);
    expect((await send(api.anyone, '/v1/password-resets', { email: person.email })).status).toBe(202);
    const { code, subject } = await lastMailTo(api, person.email);
    expect(subject).toBe('Set a new password');
    expect((await send(api.anyone, '/v1/password-resets/redeem', { code, password: 'short' })).status).toBe(400);
    const both = await Promise.all([1, 2, 3].map(() => send(api.anyone, '/v1/password-resets/redeem', { code, password: OTHER_PASSWORD })));
    expect(both.map(({ status }) => status).sort()).toEqual([204, 422, 422]);
    expect((await person.http.get('/v1/account')).status).toBe(401);
    expect(problemOf(await send(api.anyone, '/v1/sessions', { email: person.email, password: PASSWORD }))).toBe('sign-in-failed');
    await signIn(api, person.email, OTHER_PASSWORD);
    expect((await lastMailTo(api, person.email)).subject).toBe('Your password was changed');
  });

  it('API2: codes live for an hour at most, and a newer one ends the older', async () => {
    const person = await signedUp(api);
    await send(api.anyone, '/v1/password-resets', { email: person.email });
    const first = await lastMailTo(api, person.email);
    await send(api.anyone, '/v1/password-resets', { email: person.email });
    const second = await lastMailTo(api, person.email);
    expect(problemOf(await send(api.anyone, '/v1/password-resets/redeem', { code: first.code, password: OTHER_PASSWORD }))).toBe('code-of-mail-invalid');
    const [row] = await asAdmin<{ s: number }>(
      api,
      `SELECT extract(epoch FROM t.expires_at - t.created_at)::int AS s FROM account_tokens t JOIN accounts a ON a.id = t.account_id
        WHERE a.email = $1 AND t.purpose = 'reset' AND t.used_at IS NULL`,
      [person.email],
    );
    expect(row?.s).toBeLessThanOrEqual(3600);
    await asAdmin(api, `UPDATE account_tokens SET expires_at = now() - interval '1 second' WHERE account_id = (SELECT id FROM accounts WHERE email = $1)`, [
      person.email,
    ]);
    expect(problemOf(await send(api.anyone, '/v1/password-resets/redeem', { code: second.code, password: OTHER_PASSWORD }))).toBe('code-of-mail-invalid');
  });

  it('API2: is answered the same for an address that nobody has, and sends nothing', async () => {
    const person = await signedUp(api);
    const nobody = newAddress();
    const [known, unknown] = [
      await send(api.anyone, '/v1/password-resets', { email: person.email }),
      await send(api.anyone, '/v1/password-resets', { email: nobody }),
    ];
    expect([unknown.status, unknown.text, Object.keys(unknown.headers).sort()]).toEqual([known.status, known.text, Object.keys(known.headers).sort()]);
    expect(await mailTo(api, nobody)).toEqual([]);
  });

  it('API6: sends three mails an hour to one account, and its owner sees that there were more', async () => {
    const person = await signedUp(api);
    const before = (await mailTo(api, person.email)).length;
    for (let i = 0; i < 6; i += 1) expect((await send(api.anyone, '/v1/password-resets', { email: person.email })).status).toBe(202);
    expect((await mailTo(api, person.email)).length - before).toBe(3);
    const { items } = (await person.http.get('/v1/account/events')).body as { items: { action: string }[] };
    expect(items.filter(({ action }) => action === 'password.reset-refuse')).toHaveLength(3);
  });

  it('a confirmation code does not set a password', async () => {
    const email = newAddress();
    await signUp(email);
    const { code } = await lastMailTo(api, email);
    expect(problemOf(await send(api.anyone, '/v1/password-resets/redeem', { code, password: OTHER_PASSWORD }))).toBe('code-of-mail-invalid');
  });
});

describe('what the database and the mail keep', () => {
  it('S11, S15, S17: no password, code or token stands in any row in the clear', async () => {
    const person = await signedUp(api);
    await send(api.anyone, '/v1/password-resets', { email: person.email });
    const waiting = newAddress();
    await signUp(waiting);
    const codes = [(await lastMailTo(api, person.email)).code, person.token, PASSWORD];
    const tables = await asAdmin<{ name: string }>(
      api,
      `SELECT format('%I.%I', schemaname, tablename) AS name FROM pg_tables WHERE schemaname IN ('public', 'graphile_worker')`,
    );
    expect(tables.length).toBeGreaterThan(20);
    for (const { name } of tables)
      for (const secret of codes.flatMap((one) => [one, Buffer.from(one).toString('hex')]))
        expect([name, await asAdmin(api, `SELECT count(*)::int AS n FROM ${name} t WHERE position($1 in t::text) > 0`, [secret])]).toEqual([name, [{ n: 0 }]]);
  });

  it('a mail that waits is sealed, and one that was sent has no body', async () => {
    const email = newAddress();
    await signUp(email);
    const rows = () => asAdmin<{ body: string; state: string }>(api, 'SELECT body, state FROM mail_outbox WHERE recipient = $1', [email]);
    const [before] = await rows();
    expect(before?.state).toBe('queued');
    expect(Buffer.from(before?.body ?? '', 'base64url').toString('latin1')).not.toContain('Hello');
    await mailTo(api, email);
    expect(await rows()).toEqual([{ body: '', state: 'sent' }]);
  });

  it('S11: the stored hash is Argon2id at today’s strength; an older one is replaced at the next sign-in', async () => {
    const person = await signedUp(api);
    const phc = async (): Promise<string> =>
      (await asAdmin<{ p: string }>(api, 'SELECT password_phc AS p FROM accounts WHERE email = $1', [person.email]))[0]?.p ?? '';
    expect(await phc()).toMatch(/^\$argon2id\$v=19\$m=47104,t=1,p=1\$/);
    const { hash } = await import('@node-rs/argon2');
    await asAdmin(api, 'UPDATE accounts SET password_phc = $2 WHERE email = $1', [person.email, await hash(PASSWORD, { memoryCost: 19_456, timeCost: 2 })]);
    await signIn(api, person.email, PASSWORD);
    expect(await phc()).toMatch(/^\$argon2id\$v=19\$m=47104,t=1,p=1\$/);
    await signIn(api, person.email, PASSWORD);
  });
});

describe('by invitation only', () => {
  it('takes who was invited, under the invited address', async () => {
    const closed = await startApi({ env: { LATHWORK_SIGN_UP: 'invited' } });
    try {
      const { http } = await closed.garden();
      const email = newAddress();
      await http.post('/v1/invitations', { email, roles: ['member'] });
      const { code } = await lastMailTo(closed, email);
      const ask = (body: object) => send(closed.anyone, '/v1/accounts', { password: PASSWORD, name: 'Tansy', ...body });
      expect(problemOf(await ask({ email }))).toBe('sign-up-invited-only');
      expect(problemOf(await ask({ email: newAddress(), invitation: code }))).toBe('sign-up-invited-only');
      expect(problemOf(await ask({ email, invitation: `${code.slice(0, -1)}${code.endsWith('A') ? 'B' : 'A'}` }))).toBe('sign-up-invited-only');
      expect((await ask({ email, invitation: code })).status).toBe(202);
      expect((await lastMailTo(closed, email)).subject).toBe('Confirm your mail address');
    } finally {
      await closed.stop();
    }
  });
});
