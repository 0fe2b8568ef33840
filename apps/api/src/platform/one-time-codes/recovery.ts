import { createHash, randomInt } from 'node:crypto';

const COUNT = 10;
const LENGTH = 16;
/** Without letters that look like digits. 16 of them are 78 bits: enough against guessing, and tries are slowed. */
const LETTERS = 'abcdefghjkmnpqrstuvwxyz23456789';
const FORM = /^[a-hjkmnp-z2-9]{16}$/;

const one = (): string => Array.from({ length: LENGTH }, () => LETTERS[randomInt(LETTERS.length)]).join('');

const plain = (typed: string): string => typed.toLowerCase().replaceAll(/[\s-]/g, '');

const digest = (code: string): Buffer => createHash('sha256').update(`recovery ${code}`).digest();

/** Ten codes to be written down, each good once in place of the clock's. Shown once; kept as hashes. */
export const newRecoveryCodes = (): { codes: string[]; hashes: Buffer[] } => {
  const codes = Array.from({ length: COUNT }, one);
  return { codes: codes.map((code) => code.replace(/(.{4})(?=.)/g, '$1-')), hashes: codes.map(digest) };
};

/** The hash of a recovery code as it was typed, or null when it cannot be one. */
export const recoveryHash = (typed: string): Buffer | null => (typed.length <= 40 && FORM.test(plain(typed)) ? digest(plain(typed)) : null);
