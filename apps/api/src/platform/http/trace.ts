import { randomBytes } from 'node:crypto';

/** Where a request stands in a trace that may have begun elsewhere (W3C Trace Context). */
export interface Trace {
  traceId: string;
  /** This part of the work; whoever is asked from here gets it as parent. */
  spanId: string;
  sampled: boolean;
}

const FORM = /^([0-9a-f]{2})-([0-9a-f]{32})-([0-9a-f]{16})-([0-9a-f]{2})(-.*)?$/;
const isZero = (hex: string): boolean => /^0+$/.test(hex);

const hex = (bytes: number): string => {
  for (;;) {
    const text = randomBytes(bytes).toString('hex');
    if (!isZero(text)) return text;
  }
};

/** The trace that a `traceparent` tells of, or null when it is not one: then it is as if none had come. */
export const parseTraceparent = (text: string | undefined): { traceId: string; parentId: string; sampled: boolean } | null => {
  const match = FORM.exec(text ?? '');
  if (!match || (text ?? '').length > 512) return null;
  const [, version = '', traceId = '', parentId = '', flags = '', more] = match;
  // Version ff is forbidden, version 00 has exactly four parts, and later versions may only add to them.
  if (version === 'ff' || (version === '00' && more !== undefined) || isZero(traceId) || isZero(parentId)) return null;
  return { traceId, parentId, sampled: (Number.parseInt(flags, 16) & 1) === 1 };
};

/** A part of the trace that came in, or the beginning of a new one. */
export const traceFrom = (traceparent: string | undefined): Trace => {
  const parent = parseTraceparent(traceparent);
  return { traceId: parent?.traceId ?? hex(16), spanId: hex(8), sampled: parent?.sampled ?? false };
};

export const traceparentOf = ({ traceId, spanId, sampled }: Trace): string => `00-${traceId}-${spanId}-${sampled ? '01' : '00'}`;
