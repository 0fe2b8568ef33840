import ipaddr from 'ipaddr.js';

// Global unicast is what has been given out of 2000::/3 (IANA, IPv6 address space). Everything outside of it, such as the
// old IPv4-compatible form ::a.b.c.d, is nobody's public address, whatever a list of exceptions says.
const GLOBAL_UNICAST = ipaddr.IPv6.parseCIDR('2000::/3');

/**
 * Whether an address is one that belongs to somebody on the public internet. Loopback, private, link-local, carrier and
 * reserved ranges are not; nor are the forms that carry an IPv4 address inside (mapped, NAT64, 6to4, Teredo), because
 * where they lead is decided by somebody else. An IPv4-mapped address is judged as the IPv4 address that it is.
 */
export const isPublicAddress = (text: string): boolean => {
  // Only the canonical forms: inet_aton's others (decimal, octal, hexadecimal, short) are read in different ways.
  if (!ipaddr.IPv4.isValidFourPartDecimal(text) && !ipaddr.IPv6.isValid(text)) return false;
  if (text.includes('%')) return false;
  const address = ipaddr.process(text);
  if (address instanceof ipaddr.IPv4) return address.range() === 'unicast';
  return address.range() === 'unicast' && address.match(GLOBAL_UNICAST);
};

export const isLoopbackAddress = (text: string): boolean => ipaddr.isValid(text) && ipaddr.process(text).range() === 'loopback';
