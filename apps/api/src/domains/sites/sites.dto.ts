import { SiteInputsSchema, SOIL_CLASSES, type SiteInputs } from '@lathwork/model';
import { PartialType } from '@nestjs/swagger';
import { OUTLINE_SCHEMA, OutlineField, type Outline } from '../../platform/http/outline-field.js';
import { QuantityField } from '../../platform/http/quantity-field.js';
import { namedSchema, S } from '../../platform/http/response-schema.js';
import { BooleanField, ChoiceField, DayField, ListField, ObjectField, Shape, TextField } from '../shared/fields.js';
import { AS_TYPED, fieldsOf, KEPT, keptOf, OWNED, ownedOf } from '../shared/resource.js';
import type { SiteFields, SiteRecord } from './sites.repository.js';

type YesNo = 'yes' | 'no' | 'unknown';
type Permission = 'allowed' | 'forbidden' | 'unknown';

@Shape('WindBasisRequest', 'A wind speed means nothing without its basis.')
export class WindBasisDto {
  @QuantityField('m/s', { min: 5, max: 83.4, description: 'Above 300 km/h is refused: look for a slip of the unit' }) speedMPerS!: number;
  @ChoiceField(['gust3s', 'mean10min', 'fastestMile']) averaging!: 'gust3s' | 'mean10min' | 'fastestMile';
  @ChoiceField(['ultimate', 'service']) level!: 'ultimate' | 'service';
  @TextField(60) codeEdition!: string;
  @ChoiceField(['I', 'II', 'III', 'IV', 'none']) riskCategory!: 'I' | 'II' | 'III' | 'IV' | 'none';
  @TextField(200) source!: string;
  @DayField() readOn!: string;
}

@Shape('SnowBasisRequest')
export class SnowBasisDto {
  @QuantityField('Pa', { min: 0, max: 30_000 }) loadPa!: number;
  @ChoiceField(['ground', 'roof']) surface!: 'ground' | 'roof';
  @ChoiceField(['ultimate', 'service']) level!: 'ultimate' | 'service';
  @TextField(60) codeEdition!: string;
  @TextField(200) source!: string;
  @DayField() readOn!: string;
}

@Shape('ObstacleRequest', 'Something that shades the plot: a wall, a tree, a hill, as seen from the plot.')
export class ObstacleDto {
  @QuantityField('deg', { min: 0, max: 360, description: 'From the plot to its middle, clockwise from north' }) bearingDeg!: number;
  @QuantityField('m', { min: 0.5, max: 5000 }) distanceM!: number;
  @QuantityField('m', { min: 0.1, max: 5000 }) widthM!: number;
  @QuantityField('m', { min: 0, max: 2000, description: 'Above the ground of the plot' }) heightM!: number;
}

@Shape('SiteRequest', 'A place. Exact coordinates stay in this record; plans see them rounded to 0.01 degrees.')
export class SiteDto {
  @TextField(200, { description: 'A label for the place, not a home address' }) name!: string;
  @QuantityField('deg', { min: -90, max: 90 }) latitudeDeg!: number;
  @QuantityField('deg', { min: -180, max: 180 }) longitudeDeg!: number;
  @QuantityField('m', { min: -430, max: 9000, description: 'Height above the sea; below it is valid' }) elevationM!: number;
  @TextField(60, { optional: true, description: 'IANA zone; found from the coordinates when left out' }) timeZone?: string | null;
  @TextField(40, { optional: true, description: 'Climate station to use in place of the nearest' }) stationId?: string | null;
  @ChoiceField(['B', 'C', 'D']) exposure!: 'B' | 'C' | 'D';
  @ChoiceField(['no', 'yes', 'unknown']) nearHilltop!: YesNo;
  @ChoiceField(SOIL_CLASSES, { unknown: true }) soilClass!: (typeof SOIL_CLASSES)[number] | 'unknown';
  @QuantityField('m', { min: 0, max: 4, unknown: true }) frostDepthM!: number | 'unknown';
  @ObjectField(() => WindBasisDto, { unknown: true }) wind!: WindBasisDto | 'unknown';
  @ObjectField(() => SnowBasisDto, { unknown: true }) snow!: SnowBasisDto | 'unknown';
  @QuantityField('m', { min: -5, max: 5, unknown: true, description: 'Fall across the ridge, signed' }) fallAcrossM!: number | 'unknown';
  @QuantityField('m', { min: -10, max: 10, unknown: true, description: 'Fall along the ridge, signed' }) fallAlongM!: number | 'unknown';
  @QuantityField('deg', { min: 0, max: 360, unknown: true }) stormWindFromDeg!: number | 'unknown';
  @ChoiceField(['allowed', 'forbidden', 'unknown']) permanentAnchors!: Permission;
  @ChoiceField(['allowed', 'forbidden', 'unknown']) glassRule!: Permission;
  @QuantityField('1', { min: 0, max: 1, description: 'Share of direct sun lost to neighbours and trees over the year' }) shadedFrac!: number;
  @ListField(() => ObstacleDto, { max: 40 }, { optional: true, description: 'What shades the plot; left out: not measured; an empty list: a free horizon' })
  obstacles?: ObstacleDto[] | null;
  @OutlineField({ optional: true, description: 'Where the plot lies; at most 5 km from its point. Plans never see it' }) outline?: Outline | null;
  @BooleanField({ optional: true, description: 'Confirms a place farther than 300 km from every climate station' }) confirmFar?: boolean | null;
  @BooleanField({ optional: true, description: 'Whether the other members see it and a coordinator may change it; left out: no' }) shared?: boolean | null;
}

@Shape('SitePatch', 'Merge patch (RFC 7396): only the fields to change; the result is checked as a whole.')
export class SitePatchDto extends PartialType(SiteDto) {}

export type SiteResponse = SiteRecord & { coordinatesExact: boolean };

export const SiteSchema = namedSchema(
  'Site',
  S.object({
    ...KEPT,
    ...OWNED,
    name: S.text(200),
    stationId: S.orNull(S.text(40)),
    outline: S.orNull(OUTLINE_SCHEMA),
    ...fieldsOf(SiteInputsSchema, 'siteId'),
    coordinatesExact: { ...S.flag(), description: 'false: rounded to 0.01 degrees and without the outline, because you may not see the exact place' },
    asTyped: AS_TYPED,
  }),
);

type Ground = Omit<SiteInputs, 'siteId' | 'latitudeDeg' | 'longitudeDeg' | 'elevationM' | 'timeZone'>;
type GroundOfRequest = Omit<Ground, 'obstacles'> & { obstacles?: Ground['obstacles'] | null };

/** What is known of the ground, each field listed, without where it lies. */
export const groundOf = (from: GroundOfRequest): Ground => ({
  exposure: from.exposure,
  nearHilltop: from.nearHilltop,
  soilClass: from.soilClass,
  frostDepthM: from.frostDepthM,
  wind: from.wind === 'unknown' ? 'unknown' : { ...from.wind },
  snow: from.snow === 'unknown' ? 'unknown' : { ...from.snow },
  fallAcrossM: from.fallAcrossM,
  fallAlongM: from.fallAlongM,
  stormWindFromDeg: from.stormWindFromDeg,
  permanentAnchors: from.permanentAnchors,
  glassRule: from.glassRule,
  shadedFrac: from.shadedFrac,
  // Not measured is not a free horizon: only what was said is kept.
  ...(from.obstacles ? { obstacles: from.obstacles.map(({ bearingDeg, distanceM, widthM, heightM }) => ({ bearingDeg, distanceM, widthM, heightM })) } : {}),
});

/** The record in the shape of the request, for a merge patch to work on. */
export const toRequest = (site: SiteRecord): Omit<SiteFields, 'asTyped'> => ({
  name: site.name,
  latitudeDeg: site.latitudeDeg,
  longitudeDeg: site.longitudeDeg,
  elevationM: site.elevationM,
  timeZone: site.timeZone,
  stationId: site.stationId,
  outline: site.outline,
  shared: site.shared,
  ...groundOf(site),
});

/** About a kilometre: enough for sun and climate, too coarse for a doorstep. */
export const coarse = (deg: number): number => Math.round(deg * 100) / 100;

const PLACE = /^\/(latitudeDeg|longitudeDeg|outline)(\/|$)/;

/** The same site to within about a kilometre, without its outline and without what was typed of its place. */
export const coarsened = <T extends Pick<SiteRecord, 'latitudeDeg' | 'longitudeDeg' | 'outline' | 'asTyped'>>(site: T): T => ({
  ...site,
  latitudeDeg: coarse(site.latitudeDeg),
  longitudeDeg: coarse(site.longitudeDeg),
  outline: null,
  asTyped: Object.fromEntries(Object.entries(site.asTyped).filter(([pointer]) => !PLACE.test(pointer))),
});

export const toResponse = (record: SiteRecord, exact: boolean): SiteResponse => {
  const site = exact ? record : coarsened(record);
  return { ...keptOf(site), ...ownedOf(site), ...toRequest(site), coordinatesExact: exact, asTyped: site.asTyped };
};
