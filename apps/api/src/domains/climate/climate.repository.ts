import type { ClimateInputs } from '@lathwork/model';
import { Injectable } from '@nestjs/common';
import type { Db } from '../../platform/database/database.js';
import type { ClimateStation } from '../../platform/database/generated/client.js';

/** A station as a plan takes it, but for the distance, which belongs to a place. */
export type StationRecord = Omit<ClimateInputs, 'distanceM'>;

const toModel = (row: ClimateStation): StationRecord => ({
  stationId: row.id,
  stationName: row.name,
  country: row.country,
  stationLatitudeDeg: row.latitudeDeg,
  stationLongitudeDeg: row.longitudeDeg,
  stationElevationM: row.elevationM,
  period: row.period,
  kind: row.kind as ClimateInputs['kind'],
  credit: row.credit,
  months: row.months as unknown as ClimateInputs['months'],
  annualExtremeMinC: row.annualExtremeMinC,
  annualExtremeMinYearsCount: row.annualExtremeMinYearsCount,
});

@Injectable()
export class ClimateRepository {
  async find(db: Db, id: string): Promise<StationRecord | null> {
    const row = await db.climateStation.findUnique({ where: { id } });
    return row && toModel(row);
  }

  /** Nearest on a sphere, which orders well enough to choose the few that are then measured exactly. */
  async nearestOnSphere(db: Db, latitudeDeg: number, longitudeDeg: number, take: number): Promise<StationRecord[]> {
    const near = await db.$queryRaw<{ id: string }[]>`
      SELECT id FROM climate_stations
       ORDER BY power(sin(radians(latitude_deg - ${latitudeDeg}::float8) / 2), 2)
              + cos(radians(${latitudeDeg}::float8)) * cos(radians(latitude_deg)) * power(sin(radians(longitude_deg - ${longitudeDeg}::float8) / 2), 2), id
       LIMIT ${take}`;
    const rows = await db.climateStation.findMany({ where: { id: { in: near.map(({ id }) => id) } } });
    return rows.map(toModel);
  }
}
