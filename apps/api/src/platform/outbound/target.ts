import { isIP } from 'node:net';
import { isLoopbackAddress } from './addresses.js';

export interface TargetRules {
  /** Ports that may be called. */
  ports: readonly number[];
  /** For development only: http and any port to this very machine. */
  loopback: boolean;
}

export interface Target {
  url: URL;
  host: string;
  port: number;
  /** Allowed only because it leads to this machine; its addresses must all be loopback. */
  loopback: boolean;
}

const LONGEST = 2000;
// Letters, digits and the signs of RFC 3986, without the backslash that some readers take for a slash.
const PLAIN = /^[A-Za-z0-9\-._~:/?#[\]@!$&'()*+,;=%]+$/;
const AUTHORITY = /^[a-z][a-z0-9+.-]*:\/\/([^/?#]*)/i;
const NAME = /^(?=.{1,253}$)(?:[a-z0-9](?:[a-z0-9-]{0,61}[a-z0-9])?\.)+[a-z][a-z0-9-]{0,61}[a-z0-9]$/;
const INSIDE = /(?:^|\.)(?:localhost|local|internal|intranet|lan|home|corp|private|test|invalid|onion|arpa)$/;

const portOf = (url: URL): number => (url.port === '' ? (url.protocol === 'https:' ? 443 : 80) : Number(url.port));

/** The host as a resolver or a socket takes it. */
const hostOf = (url: URL): string => url.hostname.replace(/^\[(.*)\]$/, '$1');

const isThisMachine = (host: string): boolean => host === 'localhost' || isLoopbackAddress(host);

/**
 * Reads an address that a user gave. Returns the reason when this server would not call it. Two readers of one address
 * must never disagree, so what is written is compared with what was understood: a host that is read as another one
 * (numbers in octal, full-width letters, percent signs, a user before an at sign) is refused.
 */
export const readTarget = (text: string, rules: TargetRules): Target | string => {
  if (text.length > LONGEST || !PLAIN.test(text) || !URL.canParse(text)) return 'It is not an address written in plain signs.';
  const url = new URL(text);
  const authority = AUTHORITY.exec(text)?.[1] ?? '';
  if (url.username !== '' || url.password !== '' || authority.includes('@')) return 'It holds a user name or a password.';
  if (text.includes('#')) return 'It has a fragment.';
  const host = hostOf(url);
  const written = authority
    .replace(/:\d*$/, '')
    .replace(/^\[(.*)\]$/, '$1')
    .toLowerCase();
  if (written !== host) return 'Its host is written in an unusual way; write a name in plain letters.';
  const target = { url, host, port: portOf(url), loopback: false };
  if (rules.loopback && isThisMachine(host) && (url.protocol === 'http:' || url.protocol === 'https:')) return { ...target, loopback: true };
  if (url.protocol !== 'https:') return 'It is not https.';
  if (!rules.ports.includes(target.port)) return `Port ${target.port} is not one that this server calls.`;
  if (isIP(host) === 0 && (!NAME.test(host) || INSIDE.test(host))) return 'Its host is not a public name.';
  return target;
};
