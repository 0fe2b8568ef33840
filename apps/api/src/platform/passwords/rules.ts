import type { FieldFault } from '../problems/problem.js';
import { isCommon } from './common.js';

export const PASSWORD_LENGTH = { min: 8, advised: 15, max: 256 } as const;

const PRODUCT = 'lathwork';
const SHORTEST_CONTEXT_WORD = 4;

/** What an intruder knows about the person without having met them. */
export interface About {
  email?: string;
  name?: string;
}

const contextWords = ({ email = '', name = '' }: About): string[] => {
  const local = email.slice(0, Math.max(0, email.lastIndexOf('@')));
  const parts = [local, ...local.split(/[^\p{L}\p{N}]+/u), name, ...name.split(/[^\p{L}\p{N}]+/u), PRODUCT];
  const words = parts.map((part) => part.toLowerCase()).filter((part) => [...part].length >= SHORTEST_CONTEXT_WORD);
  // The longest first, so that a part never hides the whole.
  return [...new Set(words)].sort((a, b) => b.length - a.length);
};

const countOf = (text: string): number => [...text].length;

const withoutContext = (password: string, about: About): string =>
  contextWords(about).reduce((rest, word) => rest.replaceAll(word, ''), password.toLowerCase());

/**
 * What is wrong with a new password, or null. Length counts, composition does not: no capital, digit or sign is asked
 * for. Nothing of the password is changed: not trimmed, not cut, not normalised, so that what was typed is what counts.
 * Source: OWASP ASVS 5.0, 6.2.1 to 6.2.11.
 */
export const passwordFault = (password: string, about: About): Omit<FieldFault, 'pointer'> | null => {
  const { min, max, advised } = PASSWORD_LENGTH;
  const length = countOf(password);
  const allowed = `${min} to ${max} characters`;
  if (length < min) return { code: 'too-short', detail: `A password needs at least ${min} characters; ${advised} or more are better.`, allowed };
  if (length > max) return { code: 'too-long', detail: `A password has at most ${max} characters.`, allowed };
  if (isCommon(password))
    return { code: 'common-password', detail: 'This password is among the first that are tried.', remedy: 'Take several words that do not belong together.' };
  if (countOf(withoutContext(password, about)) < min && withoutContext(password, about) !== password.toLowerCase())
    return {
      code: 'guessable-password',
      detail: 'The password is little more than your name, your mail address or the name of this program.',
      remedy: 'Take several words that have nothing to do with you.',
    };
  return null;
};
