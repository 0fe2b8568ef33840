import { isIP } from 'node:net';
import { Inject, Injectable } from '@nestjs/common';
import type { Request, Response } from 'express';
import ipaddr from 'ipaddr.js';
import { NIL_ID, type Actor } from '../access/actor.js';
import { CONFIG, type Config } from '../config/config.js';
import { Problem } from '../problems/problem.js';
import { Metrics } from '../metrics/metrics.js';
import { limitHeaders, retryAfterOf } from './headers.js';
import { Leases } from './leases.js';
import type { Policy, Verdict } from './policies.js';

/** Whoever has one address of an IPv6 network usually has all of its last 64 bits. */
export const networkOf = (address: string): string => {
  if (isIP(address) === 0) return 'unknown';
  const parsed = ipaddr.process(address);
  return parsed.kind() === 'ipv4' ? parsed.toString() : `${parsed.toNormalizedString().split(':').slice(0, 4).join(':')}::/64`;
};

/** Takes the permits a request needs, notes them in its answer, and refuses it when one is not to be had. */
@Injectable()
export class RateLimits {
  /** What was taken for a request so far: the fields of its answer tell all of it. */
  private readonly taken = new WeakMap<Request, Verdict[]>();

  constructor(
    private readonly leases: Leases,
    private readonly metrics: Metrics,
    @Inject(CONFIG) private readonly config: Config,
  ) {}

  /** Before anything is known of the caller but the address. */
  ofAddress(request: Request, response: Response): void | Promise<void> {
    return this.takeAll(request, response, [[this.config.limits.address, networkOf(request.ip ?? '')]]);
  }

  /** Once it is known who asks: the credential (of a person all sessions together), the garden, and for a costly request that too. */
  ofActor(request: Request, response: Response, actor: Actor, costly: boolean): void | Promise<void> {
    const { limits } = this.config;
    const garden = actor.gardenId === NIL_ID ? null : actor.gardenId;
    const who = actor.accountId ?? actor.credentialId;
    const wishes: [Policy, string][] = [[limits.credential, who]];
    if (garden) wishes.push([limits.garden, garden]);
    if (costly) wishes.push([limits.costly, garden ?? who]);
    return this.takeAll(request, response, wishes);
  }

  private takeAll(request: Request, response: Response, wishes: readonly [Policy, string][]): void | Promise<void> {
    const verdicts = wishes.map(([policy, whom]) => this.leases.take(policy, whom));
    const ready = verdicts.filter((verdict): verdict is Verdict => !(verdict instanceof Promise));
    // The usual case costs no turn of the event loop.
    if (ready.length === verdicts.length) return this.note(request, response, ready);
    return Promise.all(verdicts).then((all) => this.note(request, response, all));
  }

  private note(request: Request, response: Response, verdicts: readonly Verdict[]): void {
    const all = [...(this.taken.get(request) ?? []), ...verdicts];
    this.taken.set(request, all);
    response.set(limitHeaders(all));
    const refused = all.filter(({ allowed }) => !allowed);
    const [longest] = [...refused].sort((a, b) => b.returnsMs - a.returnsMs);
    if (!longest) return;
    for (const { policy } of refused) this.metrics.refusals.inc({ policy: policy.name });
    const { name, quota, windowMs } = longest.policy;
    throw new Problem(
      'rate-limited',
      { policy: name, quota, windowS: windowMs / 1000 },
      [],
      { 'Retry-After': retryAfterOf(longest) },
      {
        'violated-policies': refused.map(({ policy }) => policy.name),
      },
    );
  }
}
