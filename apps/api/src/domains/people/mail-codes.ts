import { createHash, randomBytes } from 'node:crypto';

const BYTES = 32;

export const mailCodeHash = (code: string): Uint8Array<ArrayBuffer> => new Uint8Array(createHash('sha256').update(code).digest());

/** 256 random bits for a mail; only their hash is kept. */
export const newMailCode = (): { code: string; sha256: Uint8Array<ArrayBuffer> } => {
  const code = randomBytes(BYTES).toString('base64url');
  return { code, sha256: mailCodeHash(code) };
};
