import type { SiteInputs } from '@lathwork/model';
import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/access/actor.js';
import type { Db } from '../../platform/database/database.js';
import type { Outline } from '../../platform/http/outline-field.js';
import { SiteViews } from './site-views.js';
import { coarse, coarsened, groundOf } from './sites.dto.js';
import { SitesRepository } from './sites.repository.js';

export interface SiteForPlan {
  inputs: SiteInputs;
  stationId: string | null;
}

/** A site as a map shows it, to whoever may see the site itself. */
export interface SiteOnMap {
  id: string;
  name: string;
  latitudeDeg: number;
  longitudeDeg: number;
  elevationM: number;
  outline: Outline | null;
  coordinatesExact: boolean;
}

/** What other domains may ask about sites. */
@Injectable()
export class SitesRead {
  constructor(
    private readonly sites: SitesRepository,
    private readonly views: SiteViews,
  ) {}

  async state(db: Db, id: string): Promise<'missing' | 'archived' | 'active'> {
    const site = await this.sites.find(db, id);
    return site === null ? 'missing' : site.archivedAt === null ? 'active' : 'archived';
  }

  async label(db: Db, id: string): Promise<string | null> {
    return (await this.sites.find(db, id))?.name ?? null;
  }

  async all(db: Db, actor: Actor, most: number): Promise<SiteOnMap[]> {
    const sites = await this.sites.list(db, { archived: false }, { after: null, take: most });
    const exact = await this.views.exactOf(db, actor, sites);
    return sites.map((site, i) => {
      const coordinatesExact = exact[i] === true;
      const { id, name, latitudeDeg, longitudeDeg, elevationM, outline } = coordinatesExact ? site : coarsened(site);
      return { id, name, latitudeDeg, longitudeDeg, elevationM, outline, coordinatesExact };
    });
  }

  /** A plan knows the place to 0.01 degrees. */
  async forPlan(db: Db, id: string): Promise<SiteForPlan | null> {
    const site = await this.sites.find(db, id);
    if (!site) return null;
    return {
      inputs: {
        siteId: site.id,
        latitudeDeg: coarse(site.latitudeDeg),
        longitudeDeg: coarse(site.longitudeDeg),
        elevationM: site.elevationM,
        timeZone: site.timeZone,
        ...groundOf(site),
      },
      stationId: site.stationId,
    };
  }
}
