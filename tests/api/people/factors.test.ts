import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { generateSync } from 'otplib';
import { startApi, type TestApi } from '../../support/api-app.js';
import { asAdmin, lastMailTo, PASSWORD, problemOf, send, signedUp, signIn, type SignedUp } from '../../support/people.js';

let api: TestApi;

beforeAll(async () => {
  api = await startApi({ env: { SIGN_UPS_PER_HOUR: '1000' } });
});
afterAll(() => api.stop());

/** The code of now; steps later or earlier for those that must be refused. */
const codeOf = (secret: string, steps = 0): string => generateSync({ secret, epoch: Math.floor(Date.now() / 1000) + steps * 30 });

/** As if the code of this step had not been taken yet: tests do not wait half a minute. */
const forgetStep = (email: string) =>
  asAdmin(api, 'UPDATE account_factors SET last_step = last_step - 10 WHERE account_id = (SELECT id FROM accounts WHERE email = $1)', [email]);

const withFactor = async (): Promise<SignedUp & { secret: string; recovery: string[] }> => {
  const person = await signedUp(api);
  const begun = await send(person.http, '/v1/account/factor', { password: PASSWORD });
  expect(begun.status).toBe(201);
  const { secret } = begun.body as { secret: string };
  const set = await send(person.http, '/v1/account/factor/confirm', { code: codeOf(secret) });
  expect(set.status).toBe(200);
  const { token, recoveryCodes } = set.body as { token: string; recoveryCodes: string[] };
  return { ...person, token, http: api.as(token), secret, recovery: recoveryCodes };
};

const ask = (email: string, code?: string) => send(api.anyone, '/v1/sessions', { email, password: PASSWORD, as: 'token', ...(code ? { code } : {}) });

describe('setting a second factor', () => {
  it('needs the password and a first code, tells its owner, and replaces the session', async () => {
    const person = await signedUp(api);
    expect((await person.http.get('/v1/account/factor')).body).toEqual({ state: 'none', recoveryCodesLeftCount: 0 });
    expect(problemOf(await send(person.http, '/v1/account/factor', { password: 'not the password at all' }))).toBe('password-wrong');
    const { secret, uri } = (await send(person.http, '/v1/account/factor', { password: PASSWORD })).body as { secret: string; uri: string };
    const parsed = new URL(uri);
    expect([parsed.protocol, parsed.host, parsed.searchParams.get('secret'), parsed.searchParams.get('issuer')]).toEqual([
      'otpauth:',
      'totp',
      secret,
      'Lathwork',
    ]);
    // 160 bits in base 32.
    expect(secret).toMatch(/^[A-Z2-7]{32}$/);
    expect((await person.http.get('/v1/account/factor')).body).toMatchObject({ state: 'begun' });
    // Begun is not set: the password alone still opens.
    await signIn(api, person.email, PASSWORD);
    const wrong = codeOf(secret, 40);
    expect(problemOf(await send(person.http, '/v1/account/factor/confirm', { code: wrong }))).toBe('password-wrong');
    const set = await send(person.http, '/v1/account/factor/confirm', { code: codeOf(secret) });
    const { token, recoveryCodes } = set.body as { token: string; recoveryCodes: string[] };
    expect(new Set(recoveryCodes).size).toBe(10);
    expect((await person.http.get('/v1/account')).status).toBe(401);
    expect((await api.as(token).get('/v1/account')).body).toMatchObject({ secondFactor: true });
    expect((await lastMailTo(api, person.email)).subject).toBe('A second factor was set');
    expect(problemOf(await send(api.as(token), '/v1/account/factor', { password: PASSWORD }))).toBe('conflict');
  });

  it('keeps the secret sealed for its account and the recovery codes as hashes', async () => {
    const [one, two] = [await withFactor(), await withFactor()];
    const dump = JSON.stringify(await asAdmin(api, 'SELECT f::text AS row FROM account_factors f'));
    for (const { secret, recovery } of [one, two])
      for (const plain of [secret, ...recovery, ...recovery.map((code) => code.replaceAll('-', ''))]) {
        expect(dump).not.toContain(plain);
        expect(dump).not.toContain(Buffer.from(plain).toString('hex'));
      }
    // The sealed secret of one account opens nothing in the place of another's.
    await asAdmin(
      api,
      `UPDATE account_factors f SET secret_sealed = (SELECT secret_sealed FROM account_factors g JOIN accounts a ON a.id = g.account_id WHERE a.email = $1)
        FROM accounts a WHERE a.id = f.account_id AND a.email = $2`,
      [one.email, two.email],
    );
    expect((await ask(two.email, codeOf(one.secret))).status).toBe(500);
  });
});

describe('signing in with a second factor', () => {
  it('API2: needs the code after the password, and tells nothing to who lacks the password', async () => {
    const person = await withFactor();
    await forgetStep(person.email);
    expect(problemOf(await ask(person.email))).toBe('code-required');
    expect(problemOf(await send(api.anyone, '/v1/sessions', { email: person.email, password: 'not the password at all' }))).toBe('sign-in-failed');
    for (const wrong of [codeOf(person.secret, 2), codeOf(person.secret, -3), 'abcdef', '12345', '000 000'])
      expect([wrong, problemOf(await ask(person.email, wrong))]).toEqual([wrong, 'sign-in-failed']);
    expect((await ask(person.email, codeOf(person.secret))).status).toBe(201);
  });

  it('API2: takes a code once, also when many come together', async () => {
    const person = await withFactor();
    await forgetStep(person.email);
    const code = codeOf(person.secret);
    const answers = await Promise.all([1, 2, 3, 4, 5].map(() => ask(person.email, code)));
    expect(answers.filter(({ status }) => status === 201)).toHaveLength(1);
    expect(answers.filter((answer) => problemOf(answer) === 'sign-in-failed')).toHaveLength(4);
  });

  it('takes each recovery code once, as it was written down', async () => {
    const person = await withFactor();
    const [first = '', second = ''] = person.recovery;
    expect((await ask(person.email, first)).status).toBe(201);
    expect(problemOf(await ask(person.email, first))).toBe('sign-in-failed');
    expect((await ask(person.email, second.toUpperCase().replaceAll('-', ' '))).status).toBe(201);
    expect((await person.http.get('/v1/account/factor')).body).toEqual({ state: 'set', recoveryCodesLeftCount: 8 });
  });

  it('gives new recovery codes, which end the old', async () => {
    const person = await withFactor();
    await forgetStep(person.email);
    const renewed = await send(person.http, '/v1/account/factor/recovery-codes', { password: PASSWORD, code: codeOf(person.secret) });
    const { recoveryCodes } = renewed.body as { recoveryCodes: string[] };
    expect(problemOf(await ask(person.email, person.recovery[0] as string))).toBe('sign-in-failed');
    expect((await ask(person.email, recoveryCodes[0] as string)).status).toBe(201);
  });

  it('is removed with password and code together only, and asked for at a change of the password', async () => {
    const person = await withFactor();
    await forgetStep(person.email);
    for (const body of [
      { password: PASSWORD, code: '000000' },
      { password: 'not the password at all', code: person.recovery[0] },
    ])
      expect(problemOf(await send(person.http, '/v1/account/factor/removal', body))).toBe('password-wrong');
    expect(problemOf(await send(person.http, '/v1/account/password', { password: PASSWORD, newPassword: 'a long row of thirsty beans' }))).toBe(
      'password-wrong',
    );
    const removed = await send(person.http, '/v1/account/factor/removal', { password: PASSWORD, code: codeOf(person.secret) });
    expect(removed.status).toBe(200);
    expect((await ask(person.email)).status).toBe(201);
    expect((await lastMailTo(api, person.email)).subject).toBe('The second factor was removed');
  });

  it('slows down who guesses codes with the right password', async () => {
    const person = await withFactor();
    const answers = [];
    for (let i = 0; i < 14; i += 1) answers.push(problemOf(await ask(person.email, String(100_000 + i))));
    expect(answers.slice(0, 10).every((key) => key === 'sign-in-failed')).toBe(true);
    expect(answers.filter((key) => key === 'slowed-down').length).toBeGreaterThanOrEqual(2);
  });
});
