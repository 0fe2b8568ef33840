import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/access/actor.js';
import type { Db } from '../../platform/database/database.js';
import { etagOf, etagOfParts } from '../../platform/http/etag.js';
import { ConsentsRead } from '../privacy/consents.read.js';
import type { Owned } from '../shared/resource.js';
import { toResponse, type SiteResponse } from './sites.dto.js';
import type { SiteRecord } from './sites.repository.js';

type OfSite = Pick<Owned, 'ownerMemberId'>;

/** Whether somebody sees where a site lies exactly, beside its owner's consent, which is asked for by `exactOf`. */
const seesExact = (actor: Actor, { ownerMemberId }: OfSite): boolean => {
  if (actor.kind === 'person') return actor.roles.includes('coordinator') || (ownerMemberId !== null && ownerMemberId === actor.memberId);
  if (!actor.scopes.includes('sites:exact')) return false;
  // A key opens no more than the member who made it may see now.
  const maker = actor.principalId === actor.keyId ? null : actor.principalId;
  return maker === null || actor.roles.includes('coordinator') || ownerMemberId === maker;
};

/** The tag of a form of a site: the coarse one is another answer than the exact one, and a cache must not mix them up. */
export const etagOfSite = (site: { version: number }, exact: boolean): string => (exact ? etagOf(site) : etagOfParts(site.version, 'coarse'));

/** Sites as whoever asks may see them. Exact coordinates are private unless their owner has agreed to more. */
@Injectable()
export class SiteViews {
  constructor(private readonly consents: ConsentsRead) {}

  /** For each of these sites, whether its exact place may be told. */
  async exactOf(db: Db, actor: Actor, sites: readonly OfSite[]): Promise<boolean[]> {
    const seen = sites.map((site) => seesExact(actor, site));
    const owners = [...new Set(sites.flatMap(({ ownerMemberId }, i) => (seen[i] || ownerMemberId === null ? [] : [ownerMemberId])))];
    // What a key may tell is said by its scopes alone: agreeing was to people.
    const agreed = actor.kind === 'person' ? await this.consents.givenBy(db, actor, owners, 'exactLocation') : new Set<string>();
    return sites.map(({ ownerMemberId }, i) => seen[i] === true || (ownerMemberId !== null && agreed.has(ownerMemberId)));
  }

  async of(db: Db, actor: Actor, sites: readonly SiteRecord[]): Promise<SiteResponse[]> {
    const exact = await this.exactOf(db, actor, sites);
    return sites.map((site, i) => toResponse(site, exact[i] ?? false));
  }

  async one(db: Db, actor: Actor, site: SiteRecord): Promise<SiteResponse> {
    const [exact] = await this.exactOf(db, actor, [site]);
    return toResponse(site, exact ?? false);
  }
}
