import type { SiteInputs } from '@lathwork/model';
import { Injectable } from '@nestjs/common';
import type { Db } from '../../platform/database/database.js';
import type { Outline } from '../../platform/http/outline-field.js';
import { groundOf } from './sites.dto.js';
import { SitesRepository } from './sites.repository.js';

/** A plan knows the place to 0.01 degrees, about a kilometre: enough for sun and climate, too coarse for a doorstep. */
const coarse = (deg: number): number => Math.round(deg * 100) / 100;

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
}

/** What other domains may ask about sites. */
@Injectable()
export class SitesRead {
  constructor(private readonly sites: SitesRepository) {}

  async state(db: Db, id: string): Promise<'missing' | 'archived' | 'active'> {
    const site = await this.sites.find(db, id);
    return site === null ? 'missing' : site.archivedAt === null ? 'active' : 'archived';
  }

  async label(db: Db, id: string): Promise<string | null> {
    return (await this.sites.find(db, id))?.name ?? null;
  }

  async all(db: Db, most: number): Promise<SiteOnMap[]> {
    const sites = await this.sites.list(db, { archived: false }, { after: null, take: most });
    return sites.map(({ id, name, latitudeDeg, longitudeDeg, elevationM, outline }) => ({ id, name, latitudeDeg, longitudeDeg, elevationM, outline }));
  }

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
