import { ClimateResultSchema, NoteSchema, SourceSchema, type ClimateInputs, type ClimateResult, type Note, type Source } from '@lathwork/model';
import { namedSchema, S } from '../../platform/http/response-schema.js';

export interface SiteClimateResponse {
  siteId: string;
  /** Whose record it is carried from, and what may be said of it. */
  station: Pick<ClimateInputs, 'stationId' | 'stationName' | 'country' | 'period' | 'kind' | 'credit' | 'distanceM'>;
  climate: ClimateResult;
  notes: Note[];
  sources: Source[];
}

export const SiteClimateSchema = namedSchema(
  'SiteClimate',
  S.object({
    siteId: S.id(),
    station: S.object({
      stationId: S.text(40),
      stationName: S.text(120),
      country: S.text(80),
      period: S.text(40),
      kind: S.choice('means', 'normals'),
      credit: S.text(200),
      distanceM: S.number('m', 0, 20_100_000),
    }),
    climate: S.model(ClimateResultSchema),
    notes: S.list(S.model(NoteSchema), 100),
    sources: S.list(S.model(SourceSchema), 100),
  }),
);

export const stationOf = (from: ClimateInputs): SiteClimateResponse['station'] => ({
  stationId: from.stationId,
  stationName: from.stationName,
  country: from.country,
  period: from.period,
  kind: from.kind,
  credit: from.credit,
  distanceM: from.distanceM,
});
