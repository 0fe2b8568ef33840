import type { Verdict } from './policies.js';

const seconds = (ms: number): number => Math.max(0, Math.ceil(ms / 1000));

/** The two fields of the RateLimit draft, as structured fields: what holds, and what is left. */
export const limitHeaders = (verdicts: readonly Verdict[]): Record<string, string> => ({
  'RateLimit-Policy': verdicts.map(({ policy }) => `"${policy.name}";q=${policy.quota};w=${seconds(policy.windowMs)}`).join(', '),
  RateLimit: verdicts.map(({ policy, remaining, returnsMs }) => `"${policy.name}";r=${Math.max(0, remaining)};t=${seconds(returnsMs)}`).join(', '),
});

/** Never before the permits return, and never at once. */
export const retryAfterOf = ({ returnsMs }: Verdict): string => String(Math.max(1, seconds(returnsMs)));
