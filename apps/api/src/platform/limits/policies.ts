import { createHash } from 'node:crypto';

/** The classes of requests that are counted apart. The name stands in the headers and is never anybody's id. */
export type PolicyName = 'address' | 'credential' | 'garden' | 'costly';

/** So many permits in any window of this length. */
export interface Policy {
  name: PolicyName;
  quota: number;
  windowMs: number;
}

export type Policies = Readonly<Record<PolicyName, Policy>>;

/** Whom a policy counts, as the store knows it: nobody can be read from it without being guessed first. */
export const bucketOf = (policy: Policy, whom: string): string =>
  createHash('sha256').update(`${policy.name}\n${whom}`).digest().subarray(0, 16).toString('hex');

/** What came of asking for one permit. */
export interface Verdict {
  policy: Policy;
  allowed: boolean;
  /** Permits left now; never negative. */
  remaining: number;
  /** Until the oldest permits return. */
  returnsMs: number;
}
