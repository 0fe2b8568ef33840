import { computeClimate, sourcesOf } from '@lathwork/calc';
import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/access/actor.js';
import { Database } from '../../platform/database/database.js';
import { fail } from '../../platform/problems/problem.js';
import { ClimateRead } from '../climate/climate.read.js';
import { must } from '../shared/change.js';
import { stationOf, type SiteClimateResponse } from './site-climate.dto.js';
import { SitesRead } from './sites.read.js';

/** The climate at a site, by the very room that a plan goes through, from the place as a plan knows it. */
@Injectable()
export class SiteClimateService {
  constructor(
    private readonly database: Database,
    private readonly sites: SitesRead,
    private readonly climate: ClimateRead,
  ) {}

  async show(actor: Actor, id: string): Promise<SiteClimateResponse> {
    const { site, station } = await this.database.readSnapshot(actor, async (db) => {
      const { inputs, stationId } = must(await this.sites.forPlan(db, id), 'site');
      return { site: inputs, station: await this.climate.stationFor(db, { ...inputs, stationId }) };
    });
    if (!station) return fail('inputs-contradict', { reason: 'This server has no climate station to compute with.' });
    // About a millisecond: not worth a thread.
    const { result, notes, sources } = computeClimate({ site, climate: station });
    return { siteId: id, station: stationOf(station), climate: result, notes, sources: sourcesOf(sources) };
  }
}
