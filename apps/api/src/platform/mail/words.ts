/** Every sentence that goes out by mail. A second language is a second entry; whoever has none of these reads English. */
export interface Letter {
  subject: string;
  lines: readonly string[];
}

export interface LetterParams {
  name: string;
  code: string;
  garden: string;
  roles: string;
  validMin: number;
  validDays: number;
}

export type LetterKind = 'confirm' | 'alreadyThere' | 'reset' | 'passwordChanged' | 'factorSet' | 'factorRemoved' | 'invitation';

type Words = Readonly<Record<LetterKind, (params: LetterParams) => Letter>>;

const ignore = 'If this was not you, do nothing: without the code nothing happens.';
const alarm = 'If this was not you, ask for a new password at once: whoever did it is signed in as you.';

const en: Words = {
  confirm: ({ name, code, validMin }) => ({
    subject: 'Confirm your mail address',
    lines: [
      `Hello ${name},`,
      'somebody made an account with this mail address. If it was you, confirm it with this code and your password:',
      code,
      `The code is good once, for ${validMin} minutes.`,
      ignore,
    ],
  }),
  alreadyThere: ({ name }) => ({
    subject: 'You have an account already',
    lines: [
      `Hello ${name},`,
      'somebody tried to make an account with this mail address. You have one already: sign in, or ask for a new password.',
      'If this was not you, nothing needs to be done.',
    ],
  }),
  reset: ({ name, code, validMin }) => ({
    subject: 'Set a new password',
    lines: [
      `Hello ${name},`,
      'somebody asked for a new password for your account. Set one with this code:',
      code,
      `The code is good once, for ${validMin} minutes.`,
      ignore,
    ],
  }),
  passwordChanged: ({ name }) => ({
    subject: 'Your password was changed',
    lines: [`Hello ${name},`, 'the password of your account was changed, and everybody who was signed in with the old one was signed out.', alarm],
  }),
  factorSet: ({ name }) => ({
    subject: 'A second factor was set',
    lines: [`Hello ${name},`, 'from now on your account is opened with a code as well as the password.', alarm],
  }),
  factorRemoved: ({ name }) => ({
    subject: 'The second factor was removed',
    lines: [`Hello ${name},`, 'your account is opened with the password alone again.', alarm],
  }),
  invitation: ({ garden, roles, code, validDays }) => ({
    subject: `Invitation to ${garden}`,
    lines: [
      'Hello,',
      `you are invited to the garden ${garden} as: ${roles}.`,
      'Sign in, or make an account with this mail address, and take the invitation with this code:',
      code,
      `The code is good once, for ${validDays} days.`,
      'If you do not know the garden, do nothing.',
    ],
  }),
};

const LANGUAGES: Readonly<Record<string, Words>> = { en };

/** One line, whatever was typed: a name with a line break in it must not begin a new header or paragraph. */
const oneLine = (text: string): string => text.replaceAll(/[\p{Cc}\p{Zl}\p{Zp}]+/gu, ' ').trim();

/** Short lines go out as they are, so that a message in a file can be read without a mail program. */
const wrapped = (paragraph: string): string =>
  paragraph
    .split(' ')
    .reduce<string[]>((lines, word) => {
      const last = lines.at(-1);
      if (last === undefined || last.length + 1 + word.length > 72) lines.push(word);
      else lines[lines.length - 1] = `${last} ${word}`;
      return lines;
    }, [])
    .join('\n');

const NOTHING: LetterParams = { name: '', code: '', garden: '', roles: '', validMin: 0, validDays: 0 };

export const letter = (kind: LetterKind, locale: string, params: Partial<LetterParams>): { subject: string; body: string } => {
  const words = LANGUAGES[locale.split('-')[0] ?? ''] ?? en;
  const clean = Object.fromEntries(Object.entries({ ...NOTHING, ...params }).map(([key, value]) => [key, typeof value === 'string' ? oneLine(value) : value]));
  const { subject, lines } = words[kind](clean as unknown as LetterParams);
  return { subject: oneLine(subject).slice(0, 200), body: `${lines.map(wrapped).join('\n\n')}\n` };
};
