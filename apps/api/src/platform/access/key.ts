import { createHash, randomInt, timingSafeEqual } from 'node:crypto';
import { crc32 } from 'node:zlib';

const BASE62 = '0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz';
const RANDOM_LENGTH = 30;
const CHECKSUM_LENGTH = 6;
const VISIBLE_LENGTH = 8;
const FORM = /^(lw|lws)_([0-9A-Za-z]{30})([0-9A-Za-z]{6})$/;

/** CRC-32 in base 62: it cannot protect anything, it lets a mistyped key be refused without asking the database. */
const checksum = (text: string): string => {
  let rest = crc32(text);
  let out = '';
  for (let place = 0; place < CHECKSUM_LENGTH; place += 1) {
    out = BASE62[rest % 62] + out;
    rest = Math.floor(rest / 62);
  }
  return out;
};

export const sha256 = (text: string): Buffer => createHash('sha256').update(text).digest();

/** The beginning of a key that may be shown and stored in the clear. */
export const prefixOf = (key: string): string => key.slice(0, 'lw_'.length + VISIBLE_LENGTH);

export interface NewKey {
  /** Shown once, stored nowhere. */
  key: string;
  prefix: string;
  sha256: Buffer;
}

const randomText = (): string => Array.from({ length: RANDOM_LENGTH }, () => BASE62[randomInt(62)]).join('');

const make = (kind: 'lw' | 'lws'): NewKey => {
  const random = randomText();
  const key = `${kind}_${random}${checksum(random)}`;
  return { key, prefix: prefixOf(key), sha256: sha256(key) };
};

const isOf = (kind: 'lw' | 'lws', text: string): boolean => {
  const match = FORM.exec(text);
  return match !== null && match[1] === kind && checksum(match[2] ?? '') === match[3];
};

/** Makes a key: about 178 random bits, 131 of them hidden behind the visible prefix. */
export const makeKey = (): NewKey => make('lw');

/** Makes the token of a session, in the form of a key and never to be taken for one. */
export const makeSessionToken = (): NewKey => make('lws');

/** Whether a text can be a key at all. */
export const isWellFormedKey = (text: string): boolean => isOf('lw', text);

/** Whether a text can be the token of a session at all. */
export const isSessionToken = (text: string): boolean => isOf('lws', text);

/** Compares in constant time, whatever the lengths. */
export const sameSecret = (given: string, expected: string): boolean => timingSafeEqual(sha256(given), sha256(expected));
export const sameDigest = (given: Uint8Array, expected: Uint8Array): boolean => given.length === expected.length && timingSafeEqual(given, expected);
