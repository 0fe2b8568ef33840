import { Inject, Injectable } from '@nestjs/common';
import type { Logger } from 'pino';
import { LOG } from '../logging/log.js';
import { PermitStore, type Grant } from './permit-store.js';
import { bucketOf, type Policy, type Verdict } from './policies.js';

/** Slices of a window, as `take_permits` counts them. A lease lives no longer than one. */
const SLICES = 50;
/** Part of the quota that one process may hold unused: two processes together strand at most 4 %. */
const LARGEST_LEASE = 0.02;
/** After a failure the store is left alone for so long. */
const STORE_PAUSE_MS = 1_000;
const KEEP_MS = 120_000;
const COMPLAIN_MS = 60_000;

interface Lease {
  left: number;
  slice: number;
  until: number;
  /** What the store had left when it was last asked. */
  stored: number;
  returnsAt: number;
  /** Asking before this cannot give anything. */
  emptyUntil: number;
  /** Used since the last refill, from which the size of the next lease follows. */
  used: number;
  refilledAt: number;
  waiting: number;
  refill: Promise<void> | null;
  alone: { since: number; given: number } | null;
}

const newLease = (now: number): Lease => ({
  left: 0,
  slice: 0,
  until: 0,
  stored: 0,
  returnsAt: now,
  emptyUntil: 0,
  used: 0,
  refilledAt: now,
  waiting: 0,
  refill: null,
  alone: null,
});

/**
 * Permits of this process. The shared count stands in the database, but a busy caller does not pay a round trip for
 * each request: the process leases some permits at once, twice as many each time the last ones were used up early, and
 * at most 2 % of the quota. A permit counts from the moment it is leased, so all processes together never give out more
 * than the quota; a lease ends after one slice (1/50 of the window), and what is left of it goes back with the next
 * question. What can be wrong is therefore one-sided: at most 2 % of the quota for each process lies there unused.
 * A refusal is remembered until the oldest permits return, so that a flood of refused requests asks nothing either.
 *
 * If the store does not answer, each process counts by itself with the same quota: a broken database is then told by
 * whatever needs it, and a read-only one still serves reads.
 */
@Injectable()
export class Leases {
  private readonly leases = new Map<string, Lease>();
  private storeDownUntil = 0;
  private complainedAt = -COMPLAIN_MS;
  private tidiedAt = performance.now();

  constructor(
    private readonly store: PermitStore,
    @Inject(LOG) private readonly log: Logger,
  ) {}

  /** One permit, at once when the lease has one. */
  take(policy: Policy, whom: string): Verdict | Promise<Verdict> {
    const name = bucketOf(policy, whom);
    const now = performance.now();
    if (now - this.tidiedAt > KEEP_MS) this.tidy(now);
    let lease = this.leases.get(name);
    if (!lease) this.leases.set(name, (lease = newLease(now)));
    return this.fromLease(policy, lease, now) ?? this.refilled(policy, name, lease);
  }

  private fromLease(policy: Policy, lease: Lease, now: number): Verdict | null {
    if (lease.left > 0 && now < lease.until) {
      lease.left -= 1;
      lease.used += 1;
      return this.verdict(policy, lease, true, now);
    }
    return now < lease.emptyUntil ? this.verdict(policy, lease, false, now) : null;
  }

  private verdict(policy: Policy, lease: Lease, allowed: boolean, now: number): Verdict {
    return { policy, allowed, remaining: allowed ? lease.stored + lease.left : 0, returnsMs: Math.max(0, lease.returnsAt - now) };
  }

  private async refilled(policy: Policy, name: string, lease: Lease): Promise<Verdict> {
    lease.waiting += 1;
    try {
      for (;;) {
        await (lease.refill ??= this.refill(policy, name, lease).finally(() => (lease.refill = null)));
        const verdict = this.fromLease(policy, lease, performance.now());
        if (verdict) return verdict;
      }
    } finally {
      lease.waiting -= 1;
    }
  }

  private async refill(policy: Policy, name: string, lease: Lease): Promise<void> {
    const sentAt = performance.now();
    const life = policy.windowMs / SLICES;
    // Used up before its time: twice as many. Ended with some left: as many as were used.
    const expected = lease.left === 0 && sentAt < lease.until ? lease.used * 2 : lease.used;
    const wanted = Math.max(lease.waiting, Math.min(expected, Math.max(1, Math.floor(policy.quota * LARGEST_LEASE))));
    const unused = lease.left;
    Object.assign(lease, { left: 0, used: 0, refilledAt: sentAt });
    const grant = await this.ask(policy, name, lease, { wanted, unused }, sentAt);
    // Counted from before the question, so that it ends within one slice of the moment the store counted it.
    lease.until = Math.max(sentAt + life, performance.now() + 1);
    Object.assign(lease, { left: grant.granted, slice: grant.slice, stored: grant.remaining, returnsAt: performance.now() + grant.returnsMs });
    if (grant.granted < wanted) lease.emptyUntil = performance.now() + Math.max(5, grant.returnsMs);
  }

  private async ask(policy: Policy, bucket: string, lease: Lease, { wanted, unused }: { wanted: number; unused: number }, now: number): Promise<Grant> {
    if (now >= this.storeDownUntil) {
      try {
        const grant = await this.store.take({ bucket, quota: policy.quota, windowMs: policy.windowMs, wanted, unused, unusedSlice: lease.slice });
        lease.alone = null;
        return grant;
      } catch (error) {
        this.storeDownUntil = performance.now() + STORE_PAUSE_MS;
        if (now - this.complainedAt > COMPLAIN_MS) {
          this.complainedAt = now;
          this.log.warn({ err: error }, 'permits are counted by this process alone: the shared count does not answer');
        }
      }
    }
    return countedAlone(policy, lease, wanted, now);
  }

  /** Forgets who has not asked for a while; their permits were counted already. */
  private tidy(now: number): void {
    this.tidiedAt = now;
    for (const [name, lease] of this.leases) if (lease.waiting === 0 && now - lease.refilledAt > KEEP_MS && now >= lease.emptyUntil) this.leases.delete(name);
  }
}

/** A plain window of this process, for as long as the store is away. */
const countedAlone = (policy: Policy, lease: Lease, wanted: number, now: number): Grant => {
  if (!lease.alone || now - lease.alone.since >= policy.windowMs) lease.alone = { since: now, given: 0 };
  const granted = Math.min(wanted, policy.quota - lease.alone.given);
  lease.alone.given += granted;
  return { granted, remaining: policy.quota - lease.alone.given, slice: 0, returnsMs: Math.ceil(lease.alone.since + policy.windowMs - now) };
};
