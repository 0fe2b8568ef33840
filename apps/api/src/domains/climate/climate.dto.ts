import { ClimateInputsSchema, type ClimateInputs } from '@lathwork/model';
import { Injectable, type PipeTransform } from '@nestjs/common';
import { Transform } from 'class-transformer';
import { ApiProperty } from '@nestjs/swagger';
import { fieldRule, passStandIns } from '../../platform/http/field-rule.js';
import { namedSchema, S } from '../../platform/http/response-schema.js';
import { fail } from '../../platform/problems/problem.js';
import { fieldsOf } from '../shared/resource.js';
import type { StationAt } from './climate.read.js';
import type { StationRecord } from './climate.repository.js';

const NUMBER = String.raw`-?\d{1,3}(?:\.\d{1,10})?`;
const PLACE = new RegExp(`^(${NUMBER}),(${NUMBER})$`);

const placeOf = (text: string): [number, number] | null => {
  const [, latitude, longitude] = PLACE.exec(text) ?? [];
  return latitude !== undefined && longitude !== undefined ? [Number(latitude), Number(longitude)] : null;
};

export class NearQuery {
  @fieldRule((value) => {
    const place = typeof value === 'string' && value.length <= 60 ? placeOf(value) : null;
    if (!place)
      return { code: 'wrong-form', detail: 'Latitude and longitude in degrees are wanted, with a comma between.', remedy: 'Write for example 39.93,-104.58.' };
    const inRange = Math.abs(place[0]) <= 90 && Math.abs(place[1]) <= 180;
    return inRange
      ? null
      : {
          code: 'out-of-range',
          detail: 'Latitude must be -90 to 90 and longitude -180 to 180; they may be swapped.',
          unit: 'deg',
          allowed: '-90 to 90, -180 to 180',
        };
  })
  @ApiProperty({
    type: 'string',
    maxLength: 60,
    pattern: PLACE.source,
    description: 'Latitude and longitude in degrees, north and east positive',
    example: '39.93,-104.58',
  })
  near!: string;

  @passStandIns({ optional: true })
  @fieldRule((value) =>
    typeof value === 'number' && Number.isInteger(value) && value >= 1 && value <= 50
      ? null
      : { code: 'out-of-range', detail: 'The limit must be a whole number from 1 to 50.', allowed: '1 to 50' },
  )
  @Transform(({ value }: { value: unknown }) => (typeof value === 'string' && /^\d{1,4}$/.test(value) ? Number(value) : value))
  @ApiProperty({ required: false, type: 'integer', minimum: 1, maximum: 50, default: 5 })
  limit?: number;

  @passStandIns({ optional: true })
  @fieldRule((value) =>
    typeof value === 'number' && value >= -430 && value <= 9000
      ? null
      : { code: 'out-of-range', detail: 'A height of -430 to 9000 m is wanted.', unit: 'm', allowed: '-430 to 9000 m' },
  )
  @Transform(({ value }: { value: unknown }) => (typeof value === 'string' && /^-?\d{1,4}(\.\d{1,3})?$/.test(value) ? Number(value) : value))
  @ApiProperty({
    required: false,
    type: 'number',
    minimum: -430,
    maximum: 9000,
    description: 'Height of the place, to tell how much higher or lower each station lies',
  })
  elevationM?: number;

  place(): { latitudeDeg: number; longitudeDeg: number } {
    const [latitudeDeg, longitudeDeg] = placeOf(this.near) ?? [Number.NaN, Number.NaN];
    return { latitudeDeg, longitudeDeg };
  }
}

const { distanceM: _distance, ...STATION } = fieldsOf(ClimateInputsSchema, 'none');
export const StationSchema = namedSchema('Station', S.object(STATION));

export interface NearStation {
  stationId: string;
  stationName: string;
  country: string;
  latitudeDeg: number;
  longitudeDeg: number;
  elevationM: number;
  distanceM: number;
  heightDifferenceM: number | null;
  period: string;
}

export const NearStationsSchema = namedSchema(
  'NearStations',
  S.object({
    items: S.list(
      S.object({
        stationId: S.text(40),
        stationName: S.text(120),
        country: S.text(80),
        latitudeDeg: S.number('deg', -90, 90),
        longitudeDeg: S.number('deg', -180, 180),
        elevationM: S.number('m', -430, 9000),
        distanceM: S.number('m', 0, 20_100_000),
        heightDifferenceM: S.orNull(S.number('m', -10_000, 10_000)),
        period: S.text(40),
      }),
      50,
    ),
  }),
);

export const toStationResponse = (station: StationRecord): Omit<ClimateInputs, 'distanceM'> => ({
  stationId: station.stationId,
  stationName: station.stationName,
  country: station.country,
  stationLatitudeDeg: station.stationLatitudeDeg,
  stationLongitudeDeg: station.stationLongitudeDeg,
  stationElevationM: station.stationElevationM,
  period: station.period,
  kind: station.kind,
  credit: station.credit,
  months: station.months,
  annualExtremeMinC: station.annualExtremeMinC,
  annualExtremeMinYearsCount: station.annualExtremeMinYearsCount,
});

/** Height difference is the place's height less the station's: positive means that the place lies higher. */
export const toNearStation = ({ station, distanceM }: StationAt, placeElevationM: number | null): NearStation => ({
  stationId: station.stationId,
  stationName: station.stationName,
  country: station.country,
  latitudeDeg: station.stationLatitudeDeg,
  longitudeDeg: station.stationLongitudeDeg,
  elevationM: station.stationElevationM,
  distanceM: Math.round(distanceM),
  heightDifferenceM: placeElevationM === null ? null : placeElevationM - station.stationElevationM,
  period: station.period,
});

/** Station ids are short codes of their publishers, not ids of ours. */
@Injectable()
export class StationIdPipe implements PipeTransform<string, string> {
  transform(value: string): string {
    return /^[\w.:-]{1,40}$/.test(value) ? value : fail('not-found', { what: 'climate station' });
  }
}
