// From a mail address to a garden of one's own.
// @ts-check
import { readdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { createInterface } from 'node:readline/promises';
import { setTimeout as pause } from 'node:timers/promises';
import { ProblemError } from '@lathwork/client';

/** @typedef {import('@lathwork/client').LathworkClient} Client */
/** @typedef {import('@lathwork/client').Schemas['SignUpRequest']} Person */

/**
 * Signs in; whoever cannot yet makes an account first, and confirms it by the code of the mail. The API does not tell
 * strangers whether there is an account, so a wrong password looks the same and ends here with no mail.
 * @param {Client} api a client without credentials
 * @param {Person} person
 * @returns {Promise<Client>} the API as this person sees it
 */
export async function enter(api, person) {
  try {
    return await signIn(api, person);
  } catch (error) {
    if (!(error instanceof ProblemError && error.key === 'sign-in-failed')) throw error;
  }
  const { email, password } = person;
  await api.post('/v1/accounts', { body: person });
  await api.post('/v1/accounts/confirm', { body: { code: await codeFromMail(email), password } });
  return signIn(api, person);
}

/**
 * A program asks for a token and sends it with every request; a browser takes the cookie instead.
 * @param {Client} api
 * @param {Pick<Person, 'email' | 'password'>} person
 */
export async function signIn(api, { email, password }) {
  const { token } = await api.post('/v1/sessions', { body: { email, password, as: 'token' } });
  if (token === null) throw new Error('no token was given');
  return api.as({ session: token });
}

/**
 * Makes a garden; whoever makes it is its coordinator. A person may work in several, so each request names one.
 * @param {Client} api
 * @param {import('@lathwork/client').Schemas['GardenRequest']} garden
 */
export async function makeGarden(api, garden) {
  const made = await api.post('/v1/gardens', { body: garden });
  return api.as({ garden: made.garden.id });
}

/**
 * The code that came by mail: asked for on the terminal, or read from the folder into which a server without a mail
 * server writes its mail (MAIL_DIR there and here).
 * @param {string} email
 */
async function codeFromMail(email) {
  const folder = process.env['MAIL_DIR'];
  if (folder) return codeFromFolder(folder, email);
  const terminal = createInterface({ input: process.stdin, output: process.stdout });
  const code = await terminal.question(`The code that was sent to ${email}: `);
  terminal.close();
  return code.trim();
}

/**
 * @param {string} folder
 * @param {string} email
 */
async function codeFromFolder(folder, email) {
  for (let tries = 0; tries < 50; tries++) {
    const names = (await readdir(folder).catch(() => [])).filter((name) => name.endsWith('.eml'));
    // Names rise with time: the newest mail comes first.
    for (const name of names.sort().reverse()) {
      const mail = await readFile(join(folder, name), 'utf8');
      const code = /^To: (.*?)\r?$/m.exec(mail)?.[1] === email ? /^([\w-]{43})\r?$/m.exec(mail)?.[1] : undefined;
      if (code) return code;
    }
    await pause(200);
  }
  throw new Error(`no mail for ${email} came to ${folder}`);
}
