import type { ClimateInputs } from '@lathwork/model';
import { Injectable } from '@nestjs/common';
import type { Db } from '../../platform/database/database.js';
import { ClimateRepository, type StationRecord } from './climate.repository.js';
import { geodesicM } from './distance.js';

export interface Place {
  latitudeDeg: number;
  longitudeDeg: number;
}

export interface StationAt {
  station: StationRecord;
  distanceM: number;
}

// The sphere and the ellipsoid may order two stations differently when they are almost equally far.
const SPARE = 5;

/** What other domains may ask about climate. */
@Injectable()
export class ClimateRead {
  constructor(private readonly stations: ClimateRepository) {}

  async nearest(db: Db, place: Place, limit: number): Promise<StationAt[]> {
    const near = await this.stations.nearestOnSphere(db, place.latitudeDeg, place.longitudeDeg, limit + SPARE);
    return near
      .map((station) => ({ station, distanceM: geodesicM(place.latitudeDeg, place.longitudeDeg, station.stationLatitudeDeg, station.stationLongitudeDeg) }))
      .sort((a, b) => a.distanceM - b.distanceM)
      .slice(0, limit);
  }

  /** Whether there is such a station. */
  async has(db: Db, stationId: string): Promise<boolean> {
    return (await this.stations.find(db, stationId)) !== null;
  }

  /** The chosen station of a site, or the nearest one; null when the server has no station at all. */
  async stationFor(db: Db, site: Place & { stationId: string | null }): Promise<ClimateInputs | null> {
    const chosen = site.stationId === null ? null : await this.stations.find(db, site.stationId);
    const at = chosen
      ? { station: chosen, distanceM: geodesicM(site.latitudeDeg, site.longitudeDeg, chosen.stationLatitudeDeg, chosen.stationLongitudeDeg) }
      : (await this.nearest(db, site, 1))[0];
    return at ? { ...at.station, distanceM: Math.round(at.distanceM) } : null;
  }
}
