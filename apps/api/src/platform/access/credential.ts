import type { Request } from 'express';

/** The cookie of a signed-in browser. The prefix makes browsers hold it to this host, to TLS and to the whole path. */
export const SESSION_COOKIE = '__Host-lathwork-session';

const BEARER = /^Bearer +([\x21-\x7e]{1,200})$/i;

export interface Credential {
  token: string;
  /** A browser sends a cookie by itself, so only then must the request prove that it comes from the same site. */
  from: 'header' | 'cookie';
}

const cookieOf = (header: string, name: string): string | undefined => {
  for (const part of header.split(';')) {
    const at = part.indexOf('=');
    if (at > 0 && part.slice(0, at).trim() === name) return part.slice(at + 1).trim();
  }
  return undefined;
};

/** What the request shows: the Authorization header, or else the session cookie. Nothing in the address counts. */
export const credentialOf = (request: Request): Credential | null => {
  const header = request.get('authorization');
  if (header !== undefined) {
    const token = BEARER.exec(header)?.[1];
    return token === undefined ? null : { token, from: 'header' };
  }
  const token = cookieOf(request.get('cookie') ?? '', SESSION_COOKIE);
  return token === undefined || token === '' ? null : { token, from: 'cookie' };
};
