import { generateSecret, generateURI, verifySync } from 'otplib';

const PERIOD_S = 30;
/** A code that was typed just before the step ended still counts (RFC 6238, 5.2); one of a later step never does. */
const LATE_S = 5;

const DIGITS = /^\d{6}$/;

/** A new shared secret of 160 bits, in base 32. */
export const newTotpSecret = (): string => generateSecret({ length: 20 });

/** What an authenticator app reads from a QR code. */
export const totpUri = (secret: string, account: string): string => generateURI({ issuer: 'Lathwork', label: account, secret });

/** The step of the clock whose code this is, or null. A code of a step that was taken before is not taken again. */
export const totpStep = (secret: string, code: string, lastStep: number | null, now: Date): number | null => {
  if (!DIGITS.test(code)) return null;
  const epoch = Math.floor(now.getTime() / 1000);
  const result = verifySync({ secret, token: code, epoch, period: PERIOD_S, epochTolerance: [LATE_S, 0] });
  if (!result.valid || !('timeStep' in result)) return null;
  return lastStep !== null && result.timeStep <= lastStep ? null : result.timeStep;
};
