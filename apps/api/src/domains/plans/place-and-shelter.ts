import type { SiteInputs, StructureInputs } from '@lathwork/model';
import { Injectable } from '@nestjs/common';
import type { Db } from '../../platform/database/database.js';
import { fail } from '../../platform/problems/problem.js';
import { SitesRead } from '../sites/sites.read.js';
import { StructuresRead } from '../structures/structures.read.js';

/** The two things that a build stands on, as a plan takes them. */
@Injectable()
export class PlaceAndShelterRead {
  constructor(
    private readonly sites: SitesRead,
    private readonly structures: StructuresRead,
  ) {}

  async of(db: Db, build: { siteId: string; structureId: string }): Promise<{ site: SiteInputs; stationId: string | null; structure: StructureInputs }> {
    if ((await this.sites.state(db, build.siteId)) === 'archived') fail('archived', { what: 'site of this build' });
    if ((await this.structures.state(db, build.structureId)) === 'archived') fail('archived', { what: 'structure of this build' });
    const [site, structure] = [await this.sites.forPlan(db, build.siteId), await this.structures.forPlan(db, build.structureId)];
    if (!site || !structure) return fail('not-found', { what: site ? 'structure' : 'site' });
    return { site: site.inputs, stationId: site.stationId, structure };
  }
}
